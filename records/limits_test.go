package records

import (
	"fmt"
	"io/fs"
	"runtime"
	"strings"
	"testing"
	"testing/fstest"
	"time"
)

// Up to the limit all is read; beyond it an error says so at its place, and the rows
// around it are read.
func TestLimits(t *testing.T) {
	counts := func(row string) map[string]string {
		return map[string]string{"sowings.csv": oneSowing, "counts.csv": "batch,date,emerged,note\nA,2025-03-08,50,\n" + row + "\nA,2025-03-10,60,\n"}
	}
	x := func(n int) string { return strings.Repeat("x", n) }
	long := ""
	for i := range 2000 {
		long += fmt.Sprintf("\nA,2025-03-10,60,look %d", i)
	}
	for name, c := range map[string]struct {
		files map[string]string
		want  string // how the one problem begins; empty: none
		rows  int    // counts read
	}{
		"a long cell":           {counts("A,2025-03-09,55," + x(mostOfCell)), "", 3},
		"too long a cell":       {counts("A,2025-03-09,55," + x(mostOfCell+1)), "counts.csv:3:17: A3: the cell is longer than 10 kB", 2},
		"too long, quoted":      {counts(`A,2025-03-09,55,"` + x(mostOfCell+1) + `"`), "counts.csv:3:17: A3: the quoted cell is longer than 10 kB", 2},
		"as wide as a sheet":    {counts("A,2025-03-09,55," + strings.Repeat(",", 16_000)), "", 3},
		"far too wide":          {counts("A,2025-03-09,55," + strings.Repeat(",", 60_000)), "counts.csv:3:20014: A3: the row has more than 200 cells", 2},
		"too wide":              {counts("A,2025-03-09,55," + strings.Repeat("a,", 198)), "counts.csv:3:411: A3: the row has more than 200 cells", 2},
		"a megabyte of notes":   {map[string]string{"sowings.csv": oneSowing, "notes/2025.md": x(mostOfNotes)}, "", 0},
		"too large notes":       {map[string]string{"sowings.csv": oneSowing, "notes/2025.md": x(mostOfNotes + 1)}, "notes/2025.md: the file is of 1 MB", 0},
		"a quote left open":     {counts(`A,2025-03-09,55,"late` + long), "counts.csv:3:17: A3: the quoted cell is longer than 10 kB", 2002},
		"a mark inside a cell":  {counts(`A,2025-03-09,55,5" pot` + long), "counts.csv:3:18: A3: a quotation mark stands inside a cell", 2002},
		"a pair of marks":       {counts(`A,2025-03-09,55,"` + strings.Repeat(`""`, mostOfCell/2) + `"`), "counts.csv:3:17: A3: the quoted cell is longer", 2},
		"a header far too wide": {map[string]string{"sowings.csv": oneSowing, "counts.csv": "batch,date,emerged" + strings.Repeat(",", 10_000) + "\nA,2025-03-08,50\n"}, "", 1},
	} {
		b, problems := load(c.files)
		if c.want == "" && len(problems) > 0 || c.want != "" && (len(problems) != 1 || !strings.HasPrefix(problems[0].String(), c.want) || problems[0].Severity != Error) {
			t.Errorf("%s: %v", name, problems)
		}
		if len(b.Counts) != c.rows {
			t.Errorf("%s: %d counts read, want %d", name, len(b.Counts), c.rows)
		}
	}
}

// vast is a folder whose counts are said to be of so many bytes.
type vast struct {
	fs.FS
	size int64
}

type vastInfo struct {
	fs.FileInfo
	size int64
}

func (v vastInfo) Size() int64 { return v.size }

func (v vast) Stat(name string) (fs.FileInfo, error) {
	info, err := fs.Stat(v.FS, name)
	if err == nil && name == "counts.csv" {
		info = vastInfo{info, v.size}
	}
	return info, err
}

// A log of more than 64 MB is not even opened.
func TestLogBeyondLimit(t *testing.T) {
	folder := fstest.MapFS{"sowings.csv": {Data: []byte(oneSowing)}, "counts.csv": {Data: []byte("batch,date,emerged\n")}}
	for size, fatal := range map[int64]bool{mostOfLog: false, mostOfLog + 1: true} {
		_, problems := Load(vast{folder, size})
		if got := len(problems) == 1 && problems[0].Severity == Fatal && strings.HasPrefix(problems[0].Found, "the file is of 64 MB"); got != fatal {
			t.Errorf("%d bytes: %v", size, problems)
		}
	}
}

// A row of tens of megabytes is passed over without taking them into memory many times.
func TestVastRow(t *testing.T) {
	if testing.Short() {
		t.Skip()
	}
	for name, row := range map[string]string{"cells": strings.Repeat(",", 30_000_000), "one cell": strings.Repeat("x", 30_000_000), "quotes": strings.Repeat(`""`, 15_000_000)} {
		began := time.Now()
		var before, after runtime.MemStats
		files := map[string]string{"sowings.csv": oneSowing, "counts.csv": "batch,date,emerged\nA,2025-03-08,50\n" + row + "\nA,2025-03-09,60\n"}
		runtime.ReadMemStats(&before)
		b, problems := load(files)
		runtime.ReadMemStats(&after)
		if len(problems) != 1 || len(b.Counts) != 2 || len(problems[0].String()) > 300 {
			t.Errorf("%s: %d counts, %.300s", name, len(b.Counts), fmt.Sprint(problems))
		}
		if taken := (after.TotalAlloc - before.TotalAlloc) / 1_000_000; taken > 300 || time.Since(began) > 20*time.Second {
			t.Errorf("%s: took %d MB and %v", name, taken, time.Since(began))
		}
	}
}
