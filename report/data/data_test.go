package data

import (
	"fmt"
	"math"
	"os"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
)

// The published columns of every data file: whoever reads data/ relies on them.
func TestColumnsAreThePublishedOnes(t *testing.T) {
	want, err := os.ReadFile("testdata/columns.txt")
	if err != nil {
		t.Fatal(err)
	}
	var got strings.Builder
	r, err := report.New(&records.Book{}, nil, report.Options{})
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range Files(r) {
		fmt.Fprintf(&got, "%s %d %s\n", f.Name, f.Keys, strings.Join(f.Columns, ","))
	}
	if got.String() != string(want) {
		t.Errorf("columns differ:\n%s", got.String())
	}
}

func TestCells(t *testing.T) {
	tests := []struct {
		cell Cell
		want string
	}{
		{num(1.0 / 3), "0.3333333333333333"},
		{num(1234567.25), "1234567.25"},
		{num(math.Copysign(0, -1)), "0"},
		{num(1e-9), "0.000000001"},
		{maybe(records.Maybe[float64]{}), ""},
		{maybeYes(records.Known(false)), "no"},
		{str("=cmd|' /C calc'!A0"), "'=cmd|' /C calc'!A0"},
		{str("+1"), "'+1"},
		{str("-x"), "'-x"},
		{str("@a"), "'@a"},
		{num(-1.5), "-1.5"},
		{date(records.NewDate(2025, 3, 9)), "2025-03-09"},
		{date(0), ""},
	}
	for _, tt := range tests {
		if got := tt.cell.csv(); got != tt.want {
			t.Errorf("got %q, want %q", got, tt.want)
		}
	}
}

// Rows stand by their key: numbers as numbers, text by bytes, empty first.
func TestRowsAreSortedByKey(t *testing.T) {
	type row struct {
		date, place string
	}
	f := table("in_use", 2, []row{{"2025-04-01", "b"}, {"2025-04-01", "B"}, {"2024-04-01", "z"}},
		column[row]{"date", func(r row) Cell { return str(r.date) }}, column[row]{"place", func(r row) Cell { return str(r.place) }})
	if got := fmt.Sprint(f.Rows[0][1], f.Rows[1][1], f.Rows[2][1]); got != "z B b" {
		t.Errorf("order %q", got)
	}
	if compare(num(9), num(10)) >= 0 || compare(Cell{}, num(-1)) >= 0 || compare(num(5), str("5")) >= 0 {
		t.Error("cells out of order")
	}
}

func TestCSVQuotes(t *testing.T) {
	f := table("x", 1, []string{"a,\"b\"\nc"}, column[string]{"name", func(s string) Cell { return str(s) }})
	got, err := f.CSV()
	if err != nil || string(got) != "name\r\n\"a,\"\"b\"\"\r\nc\"\r\n" {
		t.Errorf("%q %v", got, err)
	}
}
