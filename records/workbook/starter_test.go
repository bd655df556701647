package workbook

import (
	"bytes"
	"slices"
	"strings"
	"testing"

	"github.com/xuri/excelize/v2"
)

var starters = []Table{
	{Name: "trays", Columns: []Column{{Head: "tray", Says: "the code", Required: true, Width: 9, Form: AsTyped}, {Head: "kind", Form: AsTyped, Width: 12, Words: []string{"air-pruning", "solid-wall"}}},
		Rows: [][]Cell{{{Text, "007"}}, {{Text, "S72"}, {Text, "solid-wall"}}}},
	{Name: "sowings", Columns: []Column{{Head: "sown", Form: Day, Width: 12}, {Head: "tray", From: "trays!A", Width: 9}, {Head: "at", Form: DayAndTime, Width: 17}, {Head: "trays", Width: 8}},
		Rows: [][]Cell{{{Moment, "2025-03-31"}, {Text, "007"}, {Moment, "2025-03-31 07:00"}, {Number, "2.5"}}}},
}

// What is written is read the same, and is the same bytes each time.
func TestWrite(t *testing.T) {
	raw, err := Write(starters, "sowings")
	if err != nil {
		t.Fatal(err)
	}
	again, err := Write(starters, "sowings")
	if err != nil || !bytes.Equal(raw, again) {
		t.Error("the same tables are other bytes", err)
	}
	b, err := Read(raw, all)
	if err != nil || len(b.Sheets) != 2 || b.Sheets[0].Bad != nil {
		t.Fatal(b, err)
	}
	wantRow(t, b.Sheets[0].Rows[0], 1, Cell{Text, "tray"}, Cell{Text, "kind"})
	wantRow(t, b.Sheets[0].Rows[1], 2, Cell{Text, "007"})
	wantRow(t, b.Sheets[1].Rows[1], 2, starters[1].Rows[0]...)
}

// opened is a workbook of tables as another maker's reader opens it.
func opened(t *testing.T, tables []Table) *excelize.File {
	t.Helper()
	raw, err := Write(tables, "sowings")
	if err != nil {
		t.Fatal(err)
	}
	f, err := excelize.OpenReader(bytes.NewReader(raw))
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { _ = f.Close() })
	return f
}

// Heads are frozen and say what their column holds; lists, widths and forms are there
// for the grower's own rows; no macro is.
func TestWriteForms(t *testing.T) {
	f := opened(t, starters)
	if panes, err := f.GetPanes("trays"); err != nil || !panes.Freeze || panes.YSplit != 1 || f.GetActiveSheetIndex() != 1 {
		t.Errorf("panes %+v, %v", panes, err)
	}
	if says, err := f.GetComments("trays"); err != nil || len(says) != 1 || says[0].Cell != "A1" || !strings.Contains(says[0].Text, "the code") {
		t.Errorf("comments %+v, %v", says, err)
	}
	lists := map[string]string{}
	for _, sheet := range f.GetSheetList() {
		rules, err := f.GetDataValidations(sheet)
		if err != nil {
			t.Fatal(err)
		}
		for _, r := range rules {
			if r.ShowErrorMessage {
				t.Errorf("%s %s keeps other words out", sheet, r.Sqref)
			}
			lists[sheet+" "+r.Sqref] = r.Formula1
		}
	}
	if w := `"air-pruning,solid-wall"`; len(lists) != 2 || lists["trays B2:B5000"] != w {
		t.Errorf("lists %v", lists)
	}
	if got := lists["sowings B2:B5000"]; got != "OFFSET(trays!$A$1,1,0,MAX(1,COUNTA(trays!$A:$A)-1),1)" {
		t.Errorf("list %s", got)
	}
	if width, err := f.GetColWidth("sowings", "C"); err != nil || width != 17 {
		t.Error(width, err)
	}
	for at, want := range map[string]string{"A9": "yyyy-mm-dd", "C9": "yyyy-mm-dd hh:mm"} { // of rows to come
		id, err := f.GetCellStyle("sowings", at)
		if err != nil {
			t.Fatal(err)
		}
		if s, err := f.GetStyle(id); err != nil || s.CustomNumFmt == nil || *s.CustomNumFmt != want {
			t.Errorf("%s: %+v, %v", at, s, err)
		}
	}
	f.Pkg.Range(func(name, _ any) bool {
		if strings.Contains(strings.ToLower(name.(string)), "vba") {
			t.Errorf("a macro: %s", name)
		}
		return true
	})
}

// The words of a column that repeats them are listed once, in a hidden sheet of formulas
// that is worked out as the workbook is opened. Another program's reckoning of the formulas
// gives the words; that of a spreadsheet is tried where one is (InOffice).
func TestWriteListsOnce(t *testing.T) {
	twice := []Table{{Name: "sowings", Columns: []Column{{Head: "crop", From: "sowings!A", Once: true}, {Head: "again", From: "sowings!A", Once: true}},
		Rows: [][]Cell{{{Text, "kale"}}, {{Text, "leek"}}, {{Text, "kale"}}, {{Text, "chard"}}}}}
	f := opened(t, twice)
	if shown, err := f.GetSheetVisible(ListsSheet); err != nil || shown {
		t.Error("the sheet of lists is shown", err)
	}
	rules, err := f.GetDataValidations("sowings")
	want := "OFFSET('drop-down lists'!$B$1,1,0,MAX(1,MIN(500,'drop-down lists'!$A$5000)),1)"
	if err != nil || len(rules) != 2 || rules[0].Formula1 != want || rules[1].Formula1 != want {
		t.Errorf("lists %+v, %v", rules, err)
	}
	for at, want := range map[string]string{"A2": "1", "A3": "2", "A4": "2", "A5": "3", "A6": "3"} {
		if got, err := f.CalcCellValue(ListsSheet, at); err != nil || got != want {
			t.Errorf("%s: %s, want %s, %v", at, got, want, err)
		}
	}
}

// What cannot be written is said and not left out.
func TestWriteFails(t *testing.T) {
	for _, c := range []Cell{{Moment, "soon"}, {Number, "six"}} {
		bad := slices.Clone(starters)
		bad[0].Rows = [][]Cell{{c}}
		if _, err := Write(bad, "sowings"); err == nil {
			t.Errorf("%v was written", c)
		}
	}
}
