package data

import (
	"bytes"
	"encoding/csv"
	"flag"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"testing"

	"traybook/records"
	"traybook/report"
)

var update = flag.Bool("update", false, "rewrite the expected data files")

// The data files of the tiny book, whose figures are worked out by hand in package
// report's tests: here every column is held to its place and its digits.
func TestTinyBooksData(t *testing.T) {
	book, problems := records.Load(os.DirFS("../../examples/tiny"))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	r, err := report.New(book, problems, report.Options{})
	if err != nil {
		t.Fatal(err)
	}
	for f := range Files(r) {
		got, err := f.CSV()
		if err != nil {
			t.Fatal(err)
		}
		name := filepath.Join("testdata", "tiny", f.Name+".csv")
		if *update {
			if err := os.WriteFile(name, got, 0o644); err != nil {
				t.Fatal(err)
			}
			continue
		}
		want, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		if !alike(readAll(t, got), readAll(t, want)) {
			t.Errorf("%s differs:\n%s", name, got)
		}
	}
}

func readAll(t *testing.T, body []byte) [][]string {
	t.Helper()
	rows, err := csv.NewReader(bytes.NewReader(body)).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return rows
}

// alike compares cell by cell; numbers may differ by what processors round.
func alike(a, b [][]string) bool {
	same := func(x, y string) bool {
		m, errM := strconv.ParseFloat(x, 64)
		n, errN := strconv.ParseFloat(y, 64)
		return x == y || errM == nil && errN == nil && math.Abs(m-n) <= 1e-9
	}
	return slices.EqualFunc(a, b, func(r, s []string) bool { return slices.EqualFunc(r, s, same) })
}

// Every row of every file of the example farm has as many cells as columns and a key
// that no other row has.
func TestKeysTellRowsApart(t *testing.T) {
	book, problems := records.Load(os.DirFS("../../examples/ottermoss"))
	r, err := report.New(book, problems, report.Options{})
	if err != nil {
		t.Fatal(err)
	}
	for f := range Files(r) {
		seen := map[string]bool{}
		for row := range f.Rows() {
			key := ""
			for _, c := range row[:f.Keys] {
				key += c.String() + "\x00"
			}
			if seen[key] || len(row) != len(f.Columns) {
				t.Errorf("%s: key %q twice, or %d cells", f.Name, key, len(row))
			}
			seen[key] = true
		}
		if f.Len == 0 {
			t.Errorf("%s: the example has no row", f.Name)
		}
	}
}
