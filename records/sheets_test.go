package records

import (
	"bytes"
	"encoding/csv"
	"errors"
	"io/fs"
	"os"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/xuri/excelize/v2"

	"traybook/records/workbook"
)

// typing is how a test types cells that read as CSV writes them.
type typing func(t *testing.T, f *excelize.File, sheet, at, text string)

// sheetsFrom makes a workbook of CSV files: a sheet for each.
func sheetsFrom(t *testing.T, files map[string]string, put typing) []byte {
	t.Helper()
	f := excelize.NewFile()
	defer f.Close()
	for name, text := range files {
		sheet := strings.TrimSuffix(name, ".csv")
		_, err := f.NewSheet(sheet)
		rows, e := csv.NewReader(strings.NewReader(text)).ReadAll()
		if err := errors.Join(err, e); err != nil {
			t.Fatal(err)
		}
		for i, row := range rows {
			for col, text := range row {
				at, err := excelize.CoordinatesToCellName(col+1, i+1)
				if err != nil {
					t.Fatal(err)
				}
				put(t, f, sheet, at, text)
			}
		}
	}
	b, err := f.WriteToBuffer()
	if err := errors.Join(err, f.DeleteSheet("Sheet1")); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// asText types everything as text; asTyped types days, numbers and percents as such.
func asText(t *testing.T, f *excelize.File, sheet, at, text string) {
	t.Helper()
	if err := f.SetCellStr(sheet, at, text); err != nil {
		t.Fatal(err)
	}
}

func asTyped(t *testing.T, f *excelize.File, sheet, at, text string) {
	t.Helper()
	day, isDay := ParseISO(text)
	x, err := strconv.ParseFloat(strings.TrimSuffix(text, "%"), 64)
	style := &excelize.Style{}
	switch {
	case isDay:
		style.NumFmt, err = 14, f.SetCellInt(sheet, at, int64(day-NewDate(1899, 12, 30)))
	case err == nil && strings.HasSuffix(text, "%"):
		style.NumFmt, err = 9, f.SetCellFloat(sheet, at, x/100, -1, 64)
	case err == nil:
		err = f.SetCellFloat(sheet, at, x, -1, 64)
	default:
		asText(t, f, sheet, at, text)
		return
	}
	id, e := f.NewStyle(style)
	if err := errors.Join(err, e, f.SetCellStyle(sheet, at, at, id)); err != nil {
		t.Fatal(err)
	}
}

// csvOf reads the logs of a folder.
func csvOf(t *testing.T, folder string) map[string]string {
	t.Helper()
	files := map[string]string{}
	for _, l := range Logs {
		b, err := os.ReadFile(folder + "/" + l.Name)
		if err == nil {
			files[l.Name] = string(b)
		} else if !errors.Is(err, fs.ErrNotExist) {
			t.Fatal(err)
		}
	}
	return files
}

// The same rows in sheets make the same book as in CSV files, typed or not, and the same
// messages but for their places.
func TestSheetsAreTheSameBook(t *testing.T) {
	for _, folder := range []string{"../examples/tiny", "../examples/ottermoss-broken", "../examples/ottermoss"} {
		files := csvOf(t, folder)
		want, said := Load(os.DirFS(folder))
		for name, put := range map[string]typing{"text": asText, "typed": asTyped} {
			got, problems := LoadWorkbook("FARM.xlsx", sheetsFrom(t, files, put), os.DirFS(folder))
			if !got.Workbook() || want.Workbook() {
				t.Errorf("%s, %s: a workbook %t, a folder %t", folder, name, got.Workbook(), want.Workbook())
			}
			for log, w := range written(want) {
				if g := written(got)[log]; g != w {
					t.Errorf("%s, %s: %s differs: got\n%s\nwant\n%s", folder, name, log, g, w)
				}
			}
			if !reflect.DeepEqual(got.Settings, want.Settings) || !slices.Equal(got.Notes, want.Notes) {
				t.Errorf("%s, %s: settings %+v\nwant %+v", folder, name, got.Settings, want.Settings)
			}
			if g, w := unplaced(problems), unplaced(said); !slices.Equal(g, w) {
				t.Errorf("%s, %s: got %q\nwant %q", folder, name, g, w)
			}
		}
	}
}

// unplaced are problems without their words: a file shows "112.00" where a sheet holds
// 112, and calls its rows lines.
func unplaced(problems []Problem) []string {
	var all []string
	for _, p := range problems {
		all = append(all, p.Check+" "+strings.TrimSuffix(p.File, ".csv")+" "+p.Cell)
	}
	slices.Sort(all)
	return all
}

// loadSheets reads sheets that a test fills cell by cell, beside a batch A of 72 cells.
func loadSheets(t *testing.T, fill func(f *excelize.File) error) (*Book, []Problem) {
	t.Helper()
	return LoadWorkbook("FARM.xlsx", filled(t, fill), nil)
}

func filled(t *testing.T, fill func(f *excelize.File) error) []byte {
	t.Helper()
	f := excelize.NewFile()
	defer f.Close()
	err := errors.Join(f.SetSheetName("Sheet1", "sowings"),
		row1(f, "sowings", 1, "batch", "sown", "crop", "variety", "tray", "trays", "cells"), row1(f, "sowings", 2, "A", "2025-03-01", "kale", "X", "Q", 1, 72))
	b, e := &bytes.Buffer{}, fill(f)
	if err := errors.Join(err, e); err != nil {
		t.Fatal(err)
	}
	if err := f.Write(b); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// row1 types one row, in a sheet of its own where there is none yet.
func row1(f *excelize.File, sheet string, n int, cells ...any) error {
	_, err := f.NewSheet(sheet)
	return errors.Join(err, f.SetSheetRow(sheet, "A"+strconv.Itoa(n), &cells))
}

// Numbers are what their cells hold, whatever sign the book has before fractions; texts
// are read by that sign.
func TestTypedNumbersKnowTheirPoint(t *testing.T) {
	for sign, text := range map[string]string{"comma": "1.234,5", "point": "1,234.5"} {
		b, problems := loadSheets(t, func(f *excelize.File) error {
			return errors.Join(row1(f, "book", 1, "setting", "value"), row1(f, "book", 2, "wage", 19.125), row1(f, "book", 3, "decimal", sign),
				row1(f, "book", 4, "legal_minimum", true),
				row1(f, "costs", 1, "date", "category", "amount"), row1(f, "costs", 2, "2025-03-01", "mix", 1234.5), row1(f, "costs", 3, "2025-03-02", "mix", text),
				row1(f, "costs", 4, "2025-03-03", "mix", 1.125))
		})
		if len(problems) > 0 || b.Settings.Wage != Known(19.125) || !b.Settings.LegalMinimum {
			t.Fatal(sign, problems, b.Settings)
		}
		for i, want := range []float64{1234.5, 1234.5, 1.125} {
			if got := b.Costs[i].Amount; got != Known(want) {
				t.Errorf("%s: got %v, want %v", sign, got, want)
			}
		}
	}
}

// A percent is a percent, typed or written, and never a share.
func TestTypedPercent(t *testing.T) {
	b, problems := loadSheets(t, func(f *excelize.File) error {
		id, err := f.NewStyle(&excelize.Style{NumFmt: 10})
		return errors.Join(err, row1(f, "lots", 1, "lot", "crop", "variety", "germ_label"), row1(f, "lots", 2, "L", "kale", "X", 0.85),
			f.SetCellStyle("lots", "D2", "D2", id), row1(f, "lots", 3, "M", "kale", "X", "85 %"), row1(f, "lots", 4, "N", "kale", "X", 85), row1(f, "lots", 5, "O", "kale", "X", 0.85))
	})
	for _, l := range b.Lots {
		if l.GermLabel != Known(0.85) {
			t.Errorf("%s: got %v", l.Code, l.GermLabel)
		}
	}
	if len(b.Lots) != 3 || len(problems) != 1 || problems[0].Place() != "lots!D5" || !strings.Contains(problems[0].String(), "not a share such as 0.95") {
		t.Error(len(b.Lots), problems)
	}
}

// What cannot be read in a workbook alone, each at its cell.
func TestSheetProblems(t *testing.T) {
	merge := func(from, to string) func(f *excelize.File) error {
		return func(f *excelize.File) error {
			return errors.Join(row1(f, "counts", 1, "batch", "date", "emerged"), row1(f, "counts", 2, "A", "2025-03-10", 60),
				row1(f, "counts", 3, "A", "2025-03-12", 61), f.MergeCell("counts", from, to))
		}
	}
	for name, c := range map[string]struct {
		fill func(f *excelize.File) error
		want []string
	}{
		"merged across rows": {merge("A2", "A3"), []string{
			"error merged: counts!A2: the cells A2:A3 are merged; a cell of its own for each row and column is expected; unmerge them, and write into each what belongs there",
			"error merged: counts!A3: the cells A2:A3 are merged; "}},
		"merged beside the columns": {merge("E3", "F3"), []string{"error merged: counts!E3: the cells E3:F3"}},
		"merged below the rows":     {merge("A5", "F9"), nil},
		"merged head":               {merge("B1", "C1"), []string{"fatal header: counts: the header cannot be read", "error merged: counts!B1: the cells B1:C1"}},
		"merged title": {func(f *excelize.File) error {
			return errors.Join(row1(f, "counts", 1, "Counts of 2025"), f.MergeCell("counts", "A1", "D1"), row1(f, "counts", 2, "batch", "date", "emerged"))
		}, []string{"fatal header: counts!A2: the columns' names stand in row 2; delete what stands above"}},
		"errors and formulas": {func(f *excelize.File) error {
			return errors.Join(row1(f, "counts", 1, "batch", "date", "emerged", "mine"), row1(f, "counts", 2, "A", "2025-03-10", 60), f.SetCellFormula("counts", "C3", "C2+1"),
				row1(f, "counts", 3, "A", "2025-03-12"), f.SetCellFormula("counts", "D2", "1/0"), f.SetCellFormula("counts", "A4", "A3"))
		}, []string{"error formula: counts!C3: the cell holds a formula without a result; a formula with its result is expected; open the workbook in the spreadsheet and save it again",
			"error formula: counts!A4: ", "error blank: counts!B4"}},
		"a number for a day": {func(f *excelize.File) error {
			return errors.Join(row1(f, "counts", 1, "batch", "date", "emerged"), row1(f, "counts", 2, "A", 45726, 60))
		}, []string{`error date: counts!B2: read "45726"; a date such as 2025-03-31 is expected; a spreadsheet's number of a day: it would be 2025-03-10`}},
		"cells without a name": {func(f *excelize.File) error {
			return errors.Join(row1(f, "counts", 1, "batch", "date", "emerged"), row1(f, "counts", 2, "A", "2025-03-10", 60, "", "beside"))
		}, []string{"warning unnamed-column: counts!E1: column E has cells and no name"}},
		"a copy and a misnamed sheet": {func(f *excelize.File) error {
			return errors.Join(row1(f, " Counts", 1, "batch", "date", "emerged"), row1(f, " Counts", 2, "A", "2025-03-10", 60), row1(f, "counts (2)", 1, "x"), row1(f, "scores 2025", 1, "x"), row1(f, "plans", 1, "x"))
		}, []string{`warning near-file: counts (2): the sheet is not read; it is taken for a copy of " Counts"`, `warning near-file: scores 2025: the sheet is not read; it is taken for scores`}},
		"far too wide": {func(f *excelize.File) error {
			return errors.Join(row1(f, "counts", 1, "batch", "date", "emerged"), f.SetCellInt("counts", "ZZ2", 1), f.SetCellStr("counts", "A3", strings.Repeat("x", 10_001)))
		}, []string{"error size: counts!GS2: the row has more than 200 cells", "error size: counts!A3: the cell is longer than 10 kB"}},
		"header alone": {func(f *excelize.File) error {
			return errors.Join(row1(f, "trays", 1, "tray", "kind", "cells"), row1(f, "counts", 1, "batch", "day"))
		}, nil},
		"still empty": {func(f *excelize.File) error { _, err := f.NewSheet("counts"); return err }, nil},
	} {
		t.Run(name, func(t *testing.T) {
			_, problems := loadSheets(t, c.fill)
			words := map[Severity]string{Warning: "warning", Error: "error", Fatal: "fatal"}
			for i, p := range problems {
				if got := words[p.Severity] + " " + p.Check + ": " + p.String(); i >= len(c.want) || !strings.HasPrefix(got, c.want[i]) {
					t.Errorf("got %s", got)
				}
			}
			if len(problems) < len(c.want) {
				t.Errorf("got %v, want %q", problems, c.want)
			}
		})
	}
}

// A workbook without sowings, and one that cannot be read, are said by their name.
func TestNoWorkbook(t *testing.T) {
	for _, c := range []struct {
		raw  []byte
		want string
	}{
		{[]byte("batch,sown\n"), "FARM.xlsx: this is no workbook, or only a part of one; a workbook with a sheet for each log is expected; save the book as .xlsx or .ods"},
		{filled(t, func(f *excelize.File) error { return f.SetSheetName("sowings", "2025") }), "FARM.xlsx: the workbook has no sheet sowings with anything in it"},
	} {
		b, problems := LoadWorkbook("FARM.xlsx", c.raw, nil)
		if len(problems) != 1 || problems[0].Severity != Fatal || !strings.HasPrefix(problems[0].String(), c.want) || len(b.Sowings) > 0 {
			t.Errorf("got %v, want %s", problems, c.want)
		}
	}
}

// Sheets are matched without case and spaces; others are named and not read; notes
// stand beside the workbook.
func TestSheetNames(t *testing.T) {
	raw := filled(t, func(f *excelize.File) error {
		return errors.Join(f.SetSheetName("sowings", "So wings "), row1(f, "COUNTS", 1, "batch", "date", "emerged"), row1(f, "COUNTS", 2, "A", "2025-03-10", 60), row1(f, "plans", 1, "x"))
	})
	b, problems := LoadWorkbook("FARM.xlsx", raw, fstest.MapFS{"notes/2025.md": {Data: []byte("# Wet")}})
	if len(problems) > 0 || len(b.Sowings) != 1 || len(b.Counts) != 1 || len(b.Notes) != 1 || !slices.Equal(b.OtherSheets, []string{"plans"}) {
		t.Errorf("%v, %+v", problems, b)
	}
	if at := b.Where(b.Counts[0].At, "counts.csv", "batch"); at != (Pos{File: "COUNTS", Line: 2, Cell: "A2", Sheet: true}) || at.Place() != "COUNTS!A2" {
		t.Errorf("got %+v", at)
	}
}

// FuzzSheets reads sheets of any row twice below a header, the first cell of which is any
// too, with any cells merged: no panic, every problem on one line in the sheet, no row
// lost.
func FuzzSheets(f *testing.F) {
	text, number, moment, fault, blank := uint8(workbook.Text), uint8(workbook.Number), uint8(workbook.Moment), uint8(workbook.Fault), uint8(workbook.Blank)
	f.Add(uint8(3), "batch", "A", text, "2025-03-10", moment, "60", number, uint8(0), uint8(0))
	f.Add(uint8(0), "setting", "wage", text, "1.5", number, "#N/A", fault, uint8(0), uint8(0))
	f.Add(uint8(7), "date", "", fault, "", fault, "", fault, uint8(2), uint8(1))
	f.Add(uint8(7), "", " ", text, "", blank, "\u00a0", text, uint8(1), uint8(0))
	f.Add(uint8(1), "BATCH (#)", "A\nB,2025-03-01,kale,X,Q,1", text, "1899-12-31", moment, "07:30", moment, uint8(3), uint8(3))
	f.Fuzz(func(t *testing.T, which uint8, head, a string, ka uint8, b string, kb uint8, c string, kc, mergedRow, mergedCol uint8) {
		log := Logs[int(which)%len(Logs)]
		cells := []workbook.Cell{{Kind: workbook.Kind(ka % 8), Text: a}, {Kind: workbook.Kind(kb % 8), Text: b}, {Kind: workbook.Kind(kc % 8), Text: c}}
		names := requiredOf(log)
		for _, col := range log.Columns {
			if !col.Required {
				names = append(names, col.Name)
			}
		}
		names[0] = head
		sheet := workbook.Sheet{Name: log.Sheet(), Rows: []workbook.Row{textRow(1, names...), {Number: 3, Cells: cells}, {Number: 4, Cells: cells}}}
		if mergedRow > 0 {
			sheet.Merged = []workbook.Area{{Row: int(mergedRow), Col: int(mergedCol), LastRow: int(mergedRow) + 1, LastCol: int(mergedCol) + 1}}
		}
		sheets := []workbook.Sheet{{Name: "sowings", Rows: []workbook.Row{textRow(1, "batch", "sown", "crop", "variety", "tray", "trays"), textRow(2, "A", "2025-03-01", "kale", "X", "Q", "1")}}}
		if log.Name == "sowings.csv" {
			sheets = nil
		}
		book, problems := readBook(&sheetsOf{name: "FARM.xlsx", book: &workbook.Book{Sheets: append(sheets, sheet)}})
		for _, p := range problems {
			if p.Found == "" || strings.ContainsAny(p.String(), "\n\r\x00") || p.Sheet && p.Line > 4 {
				t.Errorf("no clear line: %q", p.String())
			}
		}
		addUp(t, book)
		something := func(c workbook.Cell) bool { return unknown(c) || strings.TrimSpace(c.Text) != "" }
		if i := slices.IndexFunc(book.Files, func(f File) bool { return f.Name == log.Name }); i >= 0 && slices.ContainsFunc(cells, something) && book.Files[i].Rows != 2 {
			t.Errorf("%d rows of 2: %q", book.Files[i].Rows, cells)
		}
	})
}

func textRow(n int, cells ...string) workbook.Row {
	r := workbook.Row{Number: n}
	for _, c := range cells {
		r.Cells = append(r.Cells, workbook.Cell{Kind: workbook.Text, Text: c})
	}
	return r
}
