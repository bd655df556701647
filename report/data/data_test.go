package data

import (
	"fmt"
	"math"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
)

// published reads the list of data files, a copy of the one that users are given: a line
// a file, with its key columns and its others; what stands in brackets explains.
func published(t *testing.T) []string {
	t.Helper()
	text, err := os.ReadFile("testdata/outputs.txt")
	if err != nil {
		t.Fatal(err)
	}
	var files []string
	for _, line := range strings.Split(strings.TrimSpace(string(text)), "\n")[2:] {
		cells := strings.Split(strings.Trim(bracketed.ReplaceAllString(line, ""), "| "), " | ")
		keys := strings.Split(cells[1], ",")
		files = append(files, fmt.Sprintf("%s %d %s,%s", cells[0], len(keys), strings.TrimSpace(cells[1]), strings.TrimSpace(cells[2])))
	}
	return files
}

var bracketed = regexp.MustCompile(` *\([^)]*\)`)

// The published files, their order and columns: whoever reads data/ relies on them.
func TestColumnsAreThePublishedOnes(t *testing.T) {
	r, err := report.New(&records.Book{}, nil, report.Options{})
	if err != nil {
		t.Fatal(err)
	}
	want, files := published(t), slices.Collect(Files(r))
	if len(files) != len(want) {
		t.Errorf("%d files, %d published", len(files), len(want))
	}
	for i, f := range files[:min(len(files), len(want))] {
		if got := fmt.Sprintf("%s %d %s", f.Name, f.Keys, strings.Join(f.Columns, ",")); got != want[i] {
			t.Errorf("columns differ:\n%s\n%s", got, want[i])
		}
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
		{str("\tx"), "'\tx"},
		{str("\uff1dSUM(A1)"), "'\uff1dSUM(A1)"},
		{str("\uff0b1"), "'\uff0b1"},
		{str("\uff0d1"), "'\uff0d1"},
		{str("\uff20a"), "'\uff20a"},
		{str("étage"), "étage"},
		{str("a=b"), "a=b"},
		{num(-1.5), "-1.5"},
		{date(records.NewDate(2025, 3, 9)), "2025-03-09"},
		{date(0), ""},
	}
	for _, tt := range tests {
		if got := newLine(1).of([]Cell{tt.cell}); got[0] != tt.want {
			t.Errorf("got %q, want %q", got, tt.want)
		}
	}
}

// A number is written as strconv writes it in full, whole or not, and beside others.
func TestNumbersInFull(t *testing.T) {
	var row []Cell
	var want []string
	for _, v := range []float64{0, 1, -1, 0.1, -2.5, 1e15, 1<<53 - 1, 1 << 53, 1<<53 + 2, -(1 << 53), 1e22, 1e300, 5e-324, math.Inf(1), math.Inf(-1), math.NaN()} {
		row, want = append(row, num(v), str("text")), append(want, strconv.FormatFloat(v, 'f', -1, 64), "text")
	}
	if got := newLine(len(row)).of(row); !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}

// Rows stand by their key: numbers as numbers, text by bytes, empty first.
func TestRowsAreSortedByKey(t *testing.T) {
	type row struct {
		date, place string
	}
	f := table("in_use", 2, []row{{"2025-04-01", "b"}, {"2025-04-01", "B"}, {"2024-04-01", "z"}},
		column[row]{"date", func(r row) Cell { return str(r.date) }}, column[row]{"place", func(r row) Cell { return str(r.place) }})
	var got []string
	for row := range f.Rows() {
		got = append(got, row[1].String())
	}
	if f.Len != 3 || strings.Join(got, " ") != "z B b" {
		t.Errorf("%d rows, order %q", f.Len, got)
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
