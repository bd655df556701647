package main

import (
	"bytes"
	"io/fs"
	"math/rand/v2"
	"os"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"traybook/records"
	"traybook/report"
)

// cellsOfATypist are what may stand in a cell by mistake or on purpose.
var cellsOfATypist = []string{
	"", "0", "-1", "1", "2", "0.5", "1e9", "99999999", "6O", "=1+1", "yes", "no", "x", "2025-03-10", "2025-04-30", "2024-12-31",
	"2026-01-01", "3/4/25", "45731", "A", "B", "E", "lettuce", "LETTUCE", "cabbage", "A50", "S50", "air-pruning", "mix", "labour", "heat",
	"sowing", "dead", "field", "potted-on", "seed", "plug", "1,000", "1.000,5", "\"", "</script>", "\u202e", "100", "50%", "$5",
}

// mutated is a book with one to six cells, rows, bytes or whole files changed.
func mutated(book fs.FS, luck *rand.Rand) fstest.MapFS {
	out := fstest.MapFS{}
	names, _ := fs.Glob(book, "*.csv")
	for _, name := range names {
		body, _ := fs.ReadFile(book, name)
		out[name] = &fstest.MapFile{Data: body}
	}
	for range 1 + luck.IntN(6) {
		name := names[luck.IntN(len(names))]
		lines := strings.Split(string(out[name].Data), "\n")
		at := luck.IntN(len(lines))
		switch luck.IntN(16) {
		case 0:
			lines = slices.Delete(lines, at, at+1)
		case 1:
			lines = append(lines, lines[at])
		case 2:
			delete(out, name)
			names = slices.DeleteFunc(names, func(n string) bool { return n == name })
			if len(names) == 0 {
				return out
			}
			continue
		case 3:
			other := luck.IntN(len(lines))
			lines[at], lines[other] = lines[other], lines[at]
		case 4:
			lines = []string{cut(strings.Join(lines, "\n"), luck)}
		case 5, 6:
			lines[at] = otherByte(lines[at], luck)
		default:
			cells := strings.Split(lines[at], ",")
			cells[luck.IntN(len(cells))] = cellsOfATypist[luck.IntN(len(cellsOfATypist))]
			lines[at] = strings.Join(cells, ",")
		}
		out[name] = &fstest.MapFile{Data: []byte(strings.Join(lines, "\n"))}
	}
	return out
}

// cut ends a text anywhere.
func cut(s string, luck *rand.Rand) string { return s[:luck.IntN(len(s)+1)] }

// otherByte puts any byte anywhere in a line, in place of one where there is one.
func otherByte(line string, luck *rand.Rand) string {
	before := cut(line, luck)
	return before + string([]byte{byte(luck.IntN(256))}) + line[min(len(before)+1, len(line)):]
}

// Whatever a typist does to a small book: no fault, and no number in the data that
// is none. (TRAYBOOK_MUTATIONS asks for more than the usual few.)
func TestMutatedBooks(t *testing.T) {
	n := 60
	if os.Getenv("TRAYBOOK_MUTATIONS") != "" {
		n = 5000
	}
	for _, name := range []string{"tiny", "checks/c17", "poor/yearly-bill", "poor/sowings-only"} {
		book := os.DirFS("../../examples/" + name)
		for seed := range uint64(n) {
			buildMutated(t, mutated(book, rand.New(rand.NewPCG(seed, 1))), name, seed)
		}
	}
}

func buildMutated(t *testing.T, book fs.FS, name string, seed uint64) {
	defer func() {
		if p := recover(); p != nil {
			t.Fatalf("%s, seed %d: %v", name, seed, p)
		}
	}()
	b, problems := records.Load(book)
	l := loaded{b, problems}
	if l.fatal() {
		return
	}
	r, err := l.compute(report.Options{})
	if err != nil {
		return
	}
	for f, err := range site(r, nil) {
		if err != nil {
			t.Fatalf("%s, seed %d: %v", name, seed, err)
		}
		if strings.HasPrefix(f.Path, "data/") && (bytes.Contains(f.Body, []byte("NaN")) || bytes.Contains(f.Body, []byte("Inf"))) && f.Path != "data/problems.csv" {
			t.Fatalf("%s, seed %d: %s holds a number that is none:\n%s", name, seed, f.Path, f.Body)
		}
	}
}
