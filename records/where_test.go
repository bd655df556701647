package records

import (
	"testing"
	"testing/fstest"
)

// A blank cell has a place: its file and line, and its name in a spreadsheet.
func TestWhere(t *testing.T) {
	book, problems := Load(fstest.MapFS{"sowings.csv": {Data: []byte("crop,batch,note,variety,sown,tray,trays,planned\nleek,a,\"two\nlines\",x,2025-03-01,T,1,\nleek,b,,x,2025-03-02,T,1,\n")}})
	if len(book.Sowings) != 2 {
		t.Fatal(problems)
	}
	b := book.Sowings[1].At
	for column, want := range map[string]Pos{
		"planned": {File: "sowings.csv", Line: 4, Cell: "H3"},
		"note":    {File: "sowings.csv", Line: 4, Cell: "C3"},
		"wanted":  {File: "sowings.csv", Line: 4}, // no such column yet
	} {
		if got := book.Where(b, "sowings.csv", column); got != want {
			t.Errorf("%s: %+v, want %+v", column, got, want)
		}
	}
	if got := book.Where(b, "counts.csv", "batch"); got != (Pos{File: "counts.csv", Line: 4}) {
		t.Errorf("of a log that is not there: %+v", got)
	}
	if got := book.Where(At{}, "sowings.csv", "batch"); got != (Pos{}) {
		t.Errorf("of a row made in Go: %+v", got)
	}
}
