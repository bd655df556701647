package workbook

import (
	"bytes"
	"errors"
	"math"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/xuri/excelize/v2"
)

// all wants every sheet.
func all(string) bool { return true }

// sheetOf reads the only sheet of a workbook.
func sheetOf(t *testing.T, raw []byte) Sheet {
	t.Helper()
	b, err := Read(raw, all)
	if err != nil {
		t.Fatal(err)
	}
	if len(b.Sheets) != 1 || b.Sheets[0].Bad != nil {
		t.Fatalf("got %+v", b.Sheets)
	}
	return b.Sheets[0]
}

// made is a workbook that another maker writes.
func made(t *testing.T, fill func(f *excelize.File)) []byte {
	t.Helper()
	f := excelize.NewFile()
	defer f.Close()
	fill(f)
	b, err := f.WriteToBuffer()
	if err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// set writes a value, in a built-in or an own form where one is given.
func set(t *testing.T, f *excelize.File, at string, value any, form ...any) {
	t.Helper()
	if err := f.SetCellValue("Sheet1", at, value); err != nil {
		t.Fatal(err)
	}
	for _, of := range form {
		s := &excelize.Style{}
		switch of := of.(type) {
		case int:
			s.NumFmt = of
		case string:
			s.CustomNumFmt = &of
		}
		id, err := f.NewStyle(s)
		if err := errors.Join(err, f.SetCellStyle("Sheet1", at, at, id)); err != nil {
			t.Fatal(err)
		}
	}
}

// wantRow compares a row's cells.
func wantRow(t *testing.T, got Row, number int, want ...Cell) {
	t.Helper()
	if got.Number != number || !slices.Equal(got.Cells, want) {
		t.Errorf("row %d: got %d %v, want %v", number, got.Number, got.Cells, want)
	}
}

// Cells of every kind, as a program with shared texts writes them: what counts is
// stored, not how it is shown.
func TestXLSXKinds(t *testing.T) {
	s := sheetOf(t, made(t, func(f *excelize.File) {
		set(t, f, "A1", " kale ")
		set(t, f, "B1", math.Nextafter(0.3, 1)) // what 0.1 + 0.2 comes to
		set(t, f, "C1", 1234.5, 4)              // shown as 1,234.50
		set(t, f, "D1", 0.575, 9)               // shown as 58%
		set(t, f, "E1", 45747, 14)              // 31 March 2025, shown month first
		set(t, f, "F1", 45747.2916666667)       // no form: a number, whatever it may mean
		set(t, f, "G1", 45747.2916666667, `d\.m\.yy`)
		set(t, f, "H1", true)
		set(t, f, "I1", 0.3125, "h:mm")
		set(t, f, "J1", 2.5, `0.0 "days"`)
		set(t, f, "K1", 3.0, `[$-409]#,##0.00 [Red]`)
		set(t, f, "L1", 1.5, "[h]:mm")
		set(t, f, "N3", "after blanks")
	}))
	wantRow(t, s.Rows[0], 1, Cell{Text, " kale "}, Cell{Number, "0.3"}, Cell{Number, "1234.5"}, Cell{Percent, "57.5%"},
		Cell{Moment, "2025-03-31"}, Cell{Number, "45747.2916666667"}, Cell{Moment, "2025-03-31 07:00"}, Cell{Bool, "yes"},
		Cell{Moment, "07:30"}, Cell{Number, "2.5"}, Cell{Number, "3"}, Cell{Moment, "36:00"})
	if len(s.Rows) != 2 || s.Rows[1].Number != 3 || s.Rows[1].Cells[13].Text != "after blanks" || s.Rows[1].Cells[0].Kind != Blank {
		t.Errorf("got %+v", s.Rows[1:])
	}
}

// A workbook that counts days from 1904 says so, and its days are 1462 later.
func TestXLSX1904(t *testing.T) {
	s := sheetOf(t, made(t, func(f *excelize.File) {
		yes := true
		if err := f.SetWorkbookProps(&excelize.WorkbookPropsOptions{Date1904: &yes}); err != nil {
			t.Fatal(err)
		}
		set(t, f, "A1", 45747-1462, 14)
		set(t, f, "B1", 45747-1462+0.75, 22)
	}))
	wantRow(t, s.Rows[0], 1, Cell{Moment, "2025-03-31"}, Cell{Moment, "2025-03-31 18:00"})
}

// Hidden rows and columns are read, merges are listed, formulas count by their stored
// result, and one without a result is told from a blank.
func TestXLSXSheet(t *testing.T) {
	s := sheetOf(t, made(t, func(f *excelize.File) {
		set(t, f, "A1", "shown")
		set(t, f, "A2", "hidden")
		set(t, f, "C4", 7)
		err := errors.Join(f.SetRowVisible("Sheet1", 2, false), f.SetColVisible("Sheet1", "C", false), f.MergeCell("Sheet1", "A5", "B6"),
			f.SetCellFormula("Sheet1", "B4", "C4*2"))
		if err != nil {
			t.Fatal(err)
		}
	}))
	wantRow(t, s.Rows[1], 2, Cell{Text, "hidden"})
	wantRow(t, s.Rows[2], 4, Cell{}, Cell{Unsolved, ""}, Cell{Number, "7"})
	if !slices.Equal(s.Merged, []Area{{5, 0, 6, 1}}) {
		t.Errorf("merged %v", s.Merged)
	}
}

// Sheets that are not wanted are named and not read.
func TestOtherSheets(t *testing.T) {
	raw := made(t, func(f *excelize.File) {
		set(t, f, "A1", 1)
		if _, err := f.NewSheet("plans"); err != nil {
			t.Fatal(err)
		}
		if err := f.SetCellInt("plans", "A1", 2); err != nil {
			t.Fatal(err)
		}
	})
	b, err := Read(raw, func(name string) bool { return name == "plans" })
	if err != nil || len(b.Sheets) != 2 || b.Sheets[0].Name != "Sheet1" || b.Sheets[0].Rows != nil || len(b.Sheets[1].Rows) != 1 {
		t.Errorf("got %+v, %v", b, err)
	}
}

// The first day is 1 January 1900, the day after 28 February is 1 March: what every
// spreadsheet shows for 1, 59 and 61, which holds 1900 for a leap year.
func TestFirstDays(t *testing.T) {
	for x, want := range map[float64]string{1: "1900-01-01", 59: "1900-02-28", 61: "1900-03-01", 2958465: "9999-12-31"} {
		if got := serialCell(x, false, true); got != (Cell{Moment, want}) {
			t.Errorf("%v: got %v", x, got)
		}
	}
	for _, x := range []float64{-1, 2958466, 1e300} {
		if got := serialCell(x, false, true); got.Kind != Number {
			t.Errorf("%v: got %v", x, got)
		}
	}
	for d := range 40000 { // and every day from there is the one after
		want := time.Date(1900, 3, 1+d, 0, 0, 0, 0, time.UTC).Format(time.DateOnly)
		if got := serialCell(float64(61+d), false, true).Text; got != want {
			t.Fatalf("%d: got %s, want %s", 61+d, got, want)
		}
	}
}

// What is no workbook says what it is instead and how to mend it.
func TestUnread(t *testing.T) {
	good := made(t, func(f *excelize.File) { set(t, f, "A1", "x") })
	for _, c := range []struct {
		raw  []byte
		want string
	}{
		{nil, "the workbook is empty"},
		{[]byte("batch,sown\nA,2025-03-01\n"), "this is no workbook"},
		{append(slices.Clone(oldFormat), "more"...), "older format .xls, or has a password"},
		{good[:len(good)/2], "only a part of one"},
		{archive(t, map[string]string{"photo.jpg": "x"}), "this is no workbook"},
		{archive(t, map[string]string{"xl/workbook.xml": "<workbook><sheets>"}), "damaged: workbook.xml: XML syntax error"},
		{archive(t, map[string]string{"xl/workbook.xml": "<workbook/>"}), "has no sheets"},
		{archive(t, map[string]string{"content.xml": "<x/>"}), "has no sheets"},
		{archive(t, map[string]string{"content.xml": "\x00\x01", "META-INF/manifest.xml": "<encryption-data/>"}), "has a password"},
		{slices.Concat(good, make([]byte, MostBytes)), "larger than 64 MB"},
	} {
		_, err := Read(c.raw, all)
		var u Unread
		if !errors.As(err, &u) || !strings.Contains(u.Found, c.want) || u.Remedy == "" {
			t.Errorf("got %v, want %q", err, c.want)
		}
	}
}

// A small file that says it unpacks to much is refused before it is unpacked, and one
// that unpacks to more than it says is stopped there.
func TestBomb(t *testing.T) {
	for size, want := range map[uint64]string{mostUnpacked + 1: "unpacks to more than 128 MB", 1 << 63: "unpacks to more than 128 MB", 10: "damaged: zip: not a valid zip file"} {
		raw := lyingArchive(t, "content.xml", size)
		if _, err := Read(raw, all); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%d bytes: got %v, want %q", size, err, want)
		}
	}
}

// A byte that is changed anywhere is a message or does no harm, and never a fault; so is
// a file that was saved by half.
func TestDamaged(t *testing.T) {
	for name, raw := range map[string][]byte{"xlsx": xlsxOf(t, someRows, someTexts), "ods": odsOf(t, someTables)} {
		refused := 0
		for i := 0; i < len(raw); i += 3 {
			b := bytes.Clone(raw)
			b[i] ^= 0x41
			for _, damaged := range [][]byte{b, b[:i]} {
				if _, err := Read(damaged, all); err != nil {
					refused++
				}
			}
		}
		if refused < len(raw)/3 { // no half of an archive is one, and most bytes are under a checksum
			t.Errorf("%s: %d of %d refused", name, refused, 2*len(raw)/3)
		}
	}
}
