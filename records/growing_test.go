package records

import (
	"bytes"
	"encoding/csv"
	"slices"
	"strings"
	"testing"
)

// asOf is a log as it stood on a day: rows of later days are not there, nor what is
// written into a sowing's row later.
func asOf(t *testing.T, log Log, text string, day Date) string {
	t.Helper()
	rows, err := csv.NewReader(strings.NewReader(text)).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	at := func(row []string, col string) *string {
		if i := slices.Index(rows[0], col); i >= 0 {
			return &row[i]
		}
		return new(string)
	}
	after := func(cell string) bool {
		part, _ := splitTime(cell)
		d, ok := ParseISO(part)
		return ok && d > day
	}
	main := map[string]string{"sowings.csv": "sown", "trays.csv": "bought", "lots.csv": "bought", "chamber.csv": "time"}[log.Name]
	if main == "" {
		main = "date"
	}
	kept := rows[:1]
	for _, row := range rows[1:] {
		if after(*at(row, main)) {
			continue
		}
		if log.Name == "sowings.csv" {
			if after(*at(row, "chamber_out")) {
				*at(row, "chamber_out") = ""
			}
			if out := at(row, "set_out"); after(*out) {
				*out, *at(row, "plants_out"), *at(row, "surplus") = "", "", ""
			}
		}
		kept = append(kept, row)
	}
	var b bytes.Buffer
	if err := csv.NewWriter(&b).WriteAll(kept); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// A book that grows day by day, through winters and springs, never cries wolf: on no day
// of the example is there a warning but the one that is meant.
func TestGrowingBookNeverCriesWolf(t *testing.T) {
	files := exampleFiles(t, "ottermoss")
	step := Date(31)
	if testing.Short() {
		step = 97
	}
	for day := NewDate(2023, 2, 8); day < NewDate(2026, 5, 20); day += step {
		then := map[string]string{}
		for name, text := range files {
			then[name] = text
			if name != "book.csv" {
				then[name] = asOf(t, logOf(name), text, day)
			}
		}
		_, problems := load(then)
		for _, p := range problems {
			if p.Check != "repeats" {
				t.Errorf("on %s: %v", day, p)
			}
		}
	}
}
