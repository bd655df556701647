package records

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"io/fs"
	"maps"
	"math/rand/v2"
	"os"
	"slices"
	"strings"
	"testing"
)

// good is a book without a problem, a line of a file for each row.
type good struct {
	name  string
	files map[string]string
	rows  map[string][][]string // of each log, the header first
	says  map[string][]string   // what each row of a log says, in the order of its lines
	is    *Book
}

// goodBook reads a book for changes.
func goodBook(t *testing.T, folder string) good {
	t.Helper()
	g := good{name: folder, files: map[string]string{}, rows: map[string][][]string{}}
	names, err := fs.Glob(os.DirFS(folder), "*.csv")
	if err != nil || len(names) == 0 {
		t.Fatal(folder, err)
	}
	for _, name := range names {
		raw, err := os.ReadFile(folder + "/" + name)
		if err != nil {
			t.Fatal(err)
		}
		if g.rows[name], err = csv.NewReader(bytes.NewReader(raw)).ReadAll(); err != nil {
			t.Fatal(err)
		}
		g.files[name] = linesOf(g.rows[name])
	}
	for range 5 {
		b, problems := load(g.files)
		if len(problems) == 0 {
			g.is, g.says = b, saying(b)
			return g
		}
		g.without(problems)
	}
	t.Fatal(folder, " is no good book")
	return g
}

// without takes out the rows that a book shows on purpose.
func (g good) without(problems []Problem) {
	slices.SortFunc(problems, func(a, b Problem) int { return b.Line - a.Line })
	for _, p := range problems {
		g.rows[p.File] = slices.Delete(g.rows[p.File], p.Line-1, p.Line)
		g.files[p.File] = linesOf(g.rows[p.File])
	}
}

// saying is what each accepted row says, column by column, letters of one size.
func saying(b *Book) map[string][]string {
	all := map[string][]string{}
	for name, text := range written(b) {
		rows, _ := csv.NewReader(strings.NewReader(text)).ReadAll() // written just now
		for _, r := range rows[1:] {
			all[name] = append(all[name], strings.ToLower(strings.Join(r, "\x1f")))
		}
	}
	return all
}

func linesOf(rows [][]string) string {
	var out bytes.Buffer
	_ = csv.NewWriter(&out).WriteAll(rows)
	return out.String()
}

// mishap is one change of one file of a good book.
type mishap struct {
	kind  string
	files map[string]string
	file  string
	lines []int // of the file as it was, from 1, that were touched
	shift int   // by how many lines those behind have moved
	col   int   // of a changed cell
	cell  string
}

// String tells a change well enough to make it again by hand.
func (c mishap) String() string {
	return fmt.Sprintf("%s in %s, lines %v, column %d, %q", c.kind, c.file, c.lines, c.col, c.cell)
}

// slipsOfATypist are what may stand in a cell by mistake or on purpose.
var slipsOfATypist = []string{
	"", " ", "\u00a0", "0", "1", "2", "-1", "0.5", "1e9", "99999999", "6O", "=1+1", "yes", "no", "x", "2025-03-10", "2025-04-30", "2025-02-30", "3/4/25", "45731",
	"A", "B", "E", "lettuce", "LETTUCE", "cabbage", "A50", "S50", "air-pruning", "mix", "labour", "heat", "sowing", "dead", "field", "seed", "plug", "1,000", "1.000,5",
	"\"", "a\nb", "a\n2025-03-10", "</script>", "\u202e", "100", "50%", "$5", "total", "#N/A", "95 %", "'5", "５",
}

// makers make one change of a row of a log, at a place in the file from 0.
var makers = map[string]func(g good, name string, at int, luck *rand.Rand) (mishap, [][]string){
	"a cell": func(g good, name string, at int, luck *rand.Rand) (mishap, [][]string) {
		rows, col, cell := deep(g.rows[name]), luck.IntN(len(g.rows[name][at])), slipsOfATypist[luck.IntN(len(slipsOfATypist))]
		rows[at][col] = cell
		return mishap{lines: []int{at + 1}, shift: strings.Count(cell, "\n"), col: col, cell: cell}, rows
	},
	"a row deleted": func(g good, name string, at int, _ *rand.Rand) (mishap, [][]string) {
		return mishap{lines: []int{at + 1}, shift: -1}, slices.Delete(deep(g.rows[name]), at, at+1)
	},
	"a row twice": func(g good, name string, at int, _ *rand.Rand) (mishap, [][]string) {
		rows := deep(g.rows[name])
		return mishap{lines: []int{at + 1, len(rows) + 1}}, append(rows, rows[at])
	},
	"rows swapped": func(g good, name string, at int, luck *rand.Rand) (mishap, [][]string) {
		rows := deep(g.rows[name])
		other := 1 + luck.IntN(len(rows)-1)
		rows[at], rows[other] = rows[other], rows[at]
		return mishap{lines: []int{at + 1, other + 1}}, rows
	},
	"a row moved": func(g good, name string, at int, _ *rand.Rand) (mishap, [][]string) {
		rows := deep(g.rows[name])
		return mishap{lines: []int{at + 1}}, append(slices.Delete(rows, at, at+1), g.rows[name][at])
	},
}

func deep(rows [][]string) (all [][]string) {
	for _, r := range rows {
		all = append(all, slices.Clone(r))
	}
	return all
}

// changed makes one change by chance: of a row, of a byte, or of a file.
func (g good) changed(luck *rand.Rand) mishap {
	names := slices.Sorted(maps.Keys(g.files))
	name := names[luck.IntN(len(names))]
	kinds := append(slices.Sorted(maps.Keys(makers)), "a byte", "a byte", "a file")
	kind := kinds[luck.IntN(len(kinds))]
	files := maps.Clone(g.files)
	c := mishap{}
	switch kind {
	case "a byte":
		c = g.changedByte(files, name, luck)
	case "a file":
		c = g.changedFile(files, name, luck)
	default:
		at := 1 + luck.IntN(len(g.rows[name])-1)
		if kind == "a cell" && luck.IntN(8) == 0 {
			at = 0 // a head
		}
		var rows [][]string
		c, rows = makers[kind](g, name, at, luck)
		files[name] = linesOf(rows)
	}
	if c.kind == "" {
		c.kind = kind
	}
	c.file, c.files = name, files
	return c
}

// changedByte changes, inserts or deletes one byte.
func (g good) changedByte(files map[string]string, name string, luck *rand.Rand) mishap {
	s := g.files[name]
	at, by := luck.IntN(len(s)), string("0159-.,;\"\n\r\t aAzé\x00\xff\xa0="[luck.IntN(22)])
	c := mishap{cell: by, lines: []int{1 + strings.Count(s[:at], "\n")}}
	rest := s[at+1:]
	switch luck.IntN(3) {
	case 0:
		c.kind, by = "a byte deleted", ""
	case 1:
		c.kind, rest = "a byte inserted", s[at:]
	default:
		c.kind = "a byte changed"
	}
	files[name] = s[:at] + by + rest
	if s[at] == '\n' {
		c.lines = append(c.lines, c.lines[0]+1)
	}
	c.shift = strings.Count(files[name], "\n") - strings.Count(s, "\n")
	if by == "\r" {
		c.shift++
	}
	return c
}

// changedFile deletes, empties or cuts a file, or puts a copy of it beside it.
func (g good) changedFile(files map[string]string, name string, luck *rand.Rand) mishap {
	s := g.files[name]
	switch luck.IntN(4) {
	case 0:
		delete(files, name)
		return mishap{kind: "a file deleted"}
	case 1:
		files[name] = ""
		return mishap{kind: "a file emptied"}
	case 2:
		at := luck.IntN(len(s))
		files[name] = s[:at]
		return mishap{kind: "a file cut", lines: []int{1 + strings.Count(s[:at], "\n")}}
	}
	files[strings.TrimSuffix(name, ".csv")+" (1).csv"] = s[:len(s)/2]
	return mishap{kind: "a copy of a file"}
}
