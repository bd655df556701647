package main

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"sync"
	"testing"
)

// officeProgram opens and saves workbooks as a grower's spreadsheet does.
const officeProgram = "soffice"

// officeHome is the settings folder of the spreadsheet, made once for all tests, with
// the macro in it: a first start fills it and takes seconds.
var officeHome = sync.OnceValues(func() (string, error) {
	home := filepath.Join(scratch, "office")
	if err := inOffice(home, "--convert-to", "csv", "--outdir", scratch, filepath.Join("..", "..", "examples", "tiny", "trays.csv")); err != nil {
		return "", err
	}
	return home, os.WriteFile(filepath.Join(home, "user", "basic", "Standard", "Module1.xba"), []byte(addRow), 0o644)
})

// inOffice runs the spreadsheet without a window.
func inOffice(home string, args ...string) error {
	args = append([]string{"--headless", "--norestore", "-env:UserInstallation=file://" + home}, args...)
	return exec.Command(officeProgram, args...).Run()
}

// office is the settings folder of the spreadsheet; without one the test is skipped, or
// fails where no test may be.
func office(t *testing.T) string {
	t.Helper()
	if _, err := exec.LookPath(officeProgram); err != nil {
		if os.Getenv("TRAYBOOK_NO_SKIP") != "" {
			t.Fatal(err)
		}
		t.Skip("no LibreOffice to open a workbook with")
	}
	home, err := officeHome()
	if err != nil {
		t.Fatal(err)
	}
	return home
}

// saved opens a workbook in the spreadsheet and saves it as another kind.
func saved(t *testing.T, name, kind string) string {
	t.Helper()
	dir := t.TempDir()
	if err := inOffice(office(t), "--convert-to", kind, "--outdir", dir, name); err != nil {
		t.Fatal(err)
	}
	base := filepath.Base(name)
	return filepath.Join(dir, strings.TrimSuffix(base, filepath.Ext(base))+"."+kind)
}

// withRow opens a workbook in the spreadsheet, types a row at the end of the sheet
// counts, a formula in it, and saves it under another name.
func withRow(t *testing.T, name, to, filter string) {
	t.Helper()
	home := office(t)
	if err := inOffice(home, "macro:///Standard.Module1.AddRow(file://"+name+",file://"+to+","+filter+")"); err != nil {
		t.Fatal(err)
	}
}

// offered opens a workbook in the spreadsheet, takes the first row of a sheet out, types a
// word below the others of a column, which is named by its number from 0, and saves what the
// drop-down list there then offers as sheet "offered" under another name.
func offered(t *testing.T, name, to, sheet string, col, rows int, word string) {
	t.Helper()
	home := office(t)
	if err := inOffice(home, fmt.Sprintf("macro:///Standard.Module1.Offered(file://%s,file://%s,%s,%d,%d,%s)", name, to, sheet, col, rows, word)); err != nil {
		t.Fatal(err)
	}
}

const addRow = `<?xml version="1.0" encoding="UTF-8"?>
<script:module xmlns:script="http://openoffice.org/2000/script" script:name="Module1" script:language="StarBasic">
Sub AddRow(book As String, target As String, filter As String)
  Dim hidden(0) As New com.sun.star.beans.PropertyValue
  hidden(0).Name = "Hidden"
  hidden(0).Value = True
  doc = StarDesktop.loadComponentFromURL(book, "_blank", 0, hidden())
  sheet = doc.Sheets.getByName("counts")
  row = 1
  Do While sheet.getCellByPosition(0, row).String &lt;&gt; ""
    row = row + 1
  Loop
  sheet.getCellByPosition(0, row).String = "T1"
  sheet.getCellByPosition(1, row).Formula = "2026-03-24"
  sheet.getCellByPosition(4, row).Formula = "=E3+2"
  Dim how(0) As New com.sun.star.beans.PropertyValue
  how(0).Name = "FilterName"
  how(0).Value = filter
  doc.storeToURL(target, how())
  doc.close(True)
End Sub
Sub Offered(book As String, target As String, log As String, col As String, rows As String, word As String)
  Dim hidden(0) As New com.sun.star.beans.PropertyValue
  hidden(0).Name = "Hidden"
  hidden(0).Value = True
  doc = StarDesktop.loadComponentFromURL(book, "_blank", 0, hidden())
  sheet = doc.Sheets.getByName(log)
  sheet.Rows.removeByIndex(1, 1)
  cell = sheet.getCellByPosition(CInt(col), CInt(rows))
  cell.String = word
  list = cell.Validation.getFormula1()
  doc.Sheets.insertNewByName("offered", 0)
  told = doc.Sheets.getByName("offered")
  told.getCellByPosition(0, 0).Formula = "=ROWS(" &amp; list &amp; ")"
  For i = 1 To 40
    told.getCellByPosition(0, i).Formula = "=IFERROR(INDEX(" &amp; list &amp; ";" &amp; i &amp; ");"""")"
  Next
  Dim how(0) As New com.sun.star.beans.PropertyValue
  how(0).Name = "FilterName"
  how(0).Value = "Calc MS Excel 2007 XML"
  doc.storeToURL(target, how())
  doc.close(True)
End Sub
</script:module>
`
