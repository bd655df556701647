package estimate

import (
	"encoding/csv"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// A row is one line of a file in testdata, by column name.
type row map[string]string

// rows reads a file of testdata; its sources are in testdata/README.txt.
func rows(t *testing.T, name string) []row {
	t.Helper()
	f, err := os.Open(filepath.Join("testdata", name))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	lines, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var all []row
	for _, line := range lines[1:] {
		r := row{}
		for i, column := range lines[0] {
			r[column] = line[i]
		}
		all = append(all, r)
	}
	return all
}

func (r row) number(t *testing.T, column string) float64 {
	t.Helper()
	return number(t, r[column])
}

// numbers reads a cell that holds several, set apart by semicolons.
func (r row) numbers(t *testing.T, column string) []float64 {
	t.Helper()
	var all []float64
	for _, text := range strings.Split(r[column], ";") {
		all = append(all, number(t, text))
	}
	return all
}

func number(t *testing.T, text string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// expected reads the values of NAME_expected.csv by case and quantity.
func expected(t *testing.T, name string) func(caseName, quantity string) float64 {
	t.Helper()
	values := map[[2]string]string{}
	for _, r := range rows(t, name+"_expected.csv") {
		values[[2]string{r["case"], r["quantity"]}] = r["value"]
	}
	return func(caseName, quantity string) float64 {
		t.Helper()
		text, ok := values[[2]string{caseName, quantity}]
		if !ok {
			t.Fatalf("%s_expected.csv has no %s of %s", name, quantity, caseName)
		}
		return number(t, text)
	}
}

// near fails unless got lies within tolerance of want.
func near(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) && got != want {
		t.Errorf("%s: got %.15g, want %.15g within %g", what, got, want, tolerance)
	}
}
