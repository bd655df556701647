package report

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// A book with nothing in it has no figure and no fault.
func TestEmptyBook(t *testing.T) {
	r, err := New(&records.Book{}, nil, Options{})
	if err != nil || len(r.Records)+len(r.Germination.Emergence)+len(r.Week) > 0 {
		t.Fatalf("got %+v, %v", r, err)
	}
	if _, err := New(&records.Book{}, nil, Options{Season: 2031}); err == nil {
		t.Error("a season without sowings was reviewed")
	}
}

// A batch is found by its code, with all that the rooms know of it; another code finds
// nothing.
func TestRecordByCode(t *testing.T) {
	b := booktest.New(t)
	for _, code := range []string{"b", "a", "c"} {
		b.Sow(code, "2025-03-01", "orache", "x", "AIR", 1)
	}
	r := reportOf(b)
	for i, code := range []string{"a", "b", "c"} {
		if one := r.Record(code); one != r.Records[i] || one.Code != code || one.Batch != r.Batches.Of(code) {
			t.Errorf("%s: %+v", code, one)
		}
	}
	if one := r.Record("d"); one != nil {
		t.Errorf("d: %+v", one)
	}
}

// Problems told later stand among the others in order, in a report of their own.
func TestWithProblems(t *testing.T) {
	at := func(file string, line int) records.Problem {
		return records.Problem{Pos: records.Pos{File: file, Line: line}}
	}
	r, err := New(&records.Book{}, []records.Problem{at("counts.csv", 2), at("sowings.csv", 9)}, Options{})
	if err != nil {
		t.Fatal(err)
	}
	all := r.With([]records.Problem{at("notes/2025.md", 4), at("counts.csv", 1)}).Problems
	var got []string
	for _, p := range all {
		got = append(got, fmt.Sprint(p.File, ":", p.Line))
	}
	if want := "[counts.csv:1 counts.csv:2 notes/2025.md:4 sowings.csv:9]"; fmt.Sprint(got) != want || len(r.Problems) != 2 {
		t.Errorf("got %v, want %s; %d before", got, want, len(r.Problems))
	}
}
