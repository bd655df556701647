package records

import (
	"strings"
	"testing"
)

// What there is too much of is said in one line, and nothing is lost without one: the
// rows of findings that are not told are left out like the others; a file that is none of
// ours is given up.
func TestTooMuchOfAKind(t *testing.T) {
	for name, c := range map[string]struct {
		row  string
		n    int
		rows int    // of the log as it is counted; -1: it is not read
		want string // a problem of the log as a whole
	}{
		"cells":        {"A,2025-03-10,6O\n", mostOfAKind + 5, mostOfAKind + 6, "counts.csv: 10,005 cells or rows have this mistake, of which the first 10,000 are listed; a log of this kind is expected; is this the right file?"},
		"marks":        {"A,2025-03-10,6\"0\n", mostFaults + 5, mostFaults, "counts.csv: 10000 rows or more cannot be read, and the rest was not tried; a CSV file is expected; is this the right file?"},
		"blank lines":  {"\n", mostLines, -1, "counts.csv: the file has more than 2,000,000 lines; a log of up to that many is expected; is this the right file?"},
		"just as many": {"A,2025-03-10,6O\n", mostOfAKind, mostOfAKind + 1, ""},
	} {
		files := map[string]string{"sowings.csv": oneSowing, "counts.csv": "batch,date,emerged\n" + strings.Repeat(c.row, c.n) + "A,2025-03-11,60\n"}
		b, problems := load(files)
		said, found := false, 0
		for _, p := range problems {
			said = said || p.String() == c.want
			found += 1 + p.More
		}
		if name == "cells" && found != c.n {
			t.Errorf("%d findings counted, want %d", found, c.n)
		}
		if said != (c.want != "") || len(problems) > mostOfAKind+1 {
			t.Errorf("%s: %d problems, first %v", name, len(problems), problems[0])
		}
		rows := -1
		for _, f := range b.Files {
			if f.Name == "counts.csv" {
				rows = f.Rows
			}
		}
		if rows != c.rows {
			t.Errorf("%s: %d rows, want %d", name, rows, c.rows)
		}
		addUp(t, b)
	}
}

// A log that names something new in row after row is given up with one line: every name is
// kept, and so many are none.
func TestTooManyNames(t *testing.T) {
	var counts strings.Builder
	counts.WriteString("batch,date,emerged\n")
	for i := range mostNames + 2*rowsAhead {
		counts.WriteString("X" + itoa(i) + ",2025-03-10,6\n")
	}
	b, problems := load(map[string]string{"sowings.csv": oneSowing, "counts.csv": counts.String(), "scores.csv": "batch,date,looked,usable\nB,2025-03-10,6,6\n"})
	if len(problems) != 1 || problems[0].Severity != Fatal || !strings.HasPrefix(problems[0].String(), "counts.csv: more than 500,000 different names of batches, crops, causes and the like by row 500,") {
		t.Errorf("%d problems, first %v", len(problems), problems[0])
	}
	if len(b.Counts) > mostNames+rowsAhead {
		t.Error("read to the end")
	}
}
