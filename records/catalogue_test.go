package records

import (
	"flag"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/rogpeppe/go-internal/txtar"

	"traybook/records/workbook"
)

var update = flag.Bool("update", false, "rewrite the expected messages of testdata/problems")

// book makes a folder of an archive's files. A file called NAME.quoted holds a
// Go string on each line, for bytes that an archive cannot show.
func book(t testing.TB, a *txtar.Archive) fs.FS {
	t.Helper()
	folder := fstest.MapFS{}
	for _, f := range a.Files {
		name, quoted := strings.CutSuffix(f.Name, ".quoted")
		data := f.Data
		if quoted {
			data = unquoteLines(t, string(data))
		}
		if name != "problems" {
			folder[name] = &fstest.MapFile{Data: data}
		}
	}
	return folder
}

func unquoteLines(t testing.TB, s string) []byte {
	t.Helper()
	var all []byte
	for line := range strings.Lines(s) {
		u, err := strconv.Unquote(strings.TrimSpace(line))
		if err != nil {
			t.Fatalf("%s: %v", line, err)
		}
		all = append(all, u...)
	}
	return all
}

// entryOf loads an entry of the catalogue: a folder of its files, or a workbook of those
// that are called NAME.sheet.
func entryOf(t testing.TB, a *txtar.Archive) (*Book, []Problem) {
	t.Helper()
	var b workbook.Book
	for _, f := range a.Files {
		if name, ok := strings.CutSuffix(f.Name, ".sheet"); ok {
			b.Sheets = append(b.Sheets, sheetOf(name, string(f.Data)))
		}
	}
	if len(b.Sheets) == 0 {
		return Load(book(t, a))
	}
	return readBook(&sheetsOf{name: "FARM.xlsx", book: &b})
}

// sheetOf makes a sheet of lines of cells: #N/A and the like are errors, = is a formula
// that was never worked out. A line such as "merged A2:A3" merges cells.
func sheetOf(name, text string) workbook.Sheet {
	s := workbook.Sheet{Name: name}
	n := 0
	for line := range strings.Lines(text) {
		var m workbook.Area
		if k, _ := fmt.Sscanf(line, "merged A%d:A%d", &m.Row, &m.LastRow); k == 2 {
			s.Merged = append(s.Merged, m)
			continue
		}
		n++
		row := workbook.Row{Number: n}
		for _, cell := range strings.Split(strings.TrimSpace(line), ",") {
			kind := workbook.Text
			switch {
			case cell == "":
				kind = workbook.Blank
			case cell == "=":
				kind, cell = workbook.Unsolved, ""
			case cell[0] == '#':
				kind = workbook.Fault
			}
			row.Cells = append(row.Cells, workbook.Cell{Kind: kind, Text: cell})
		}
		s.Rows = append(s.Rows, row)
	}
	return s
}

// listing writes what a catalogue entry expects: each problem with its check
// and severity, then the rows left out of each file.
func listing(b *Book, problems []Problem) string {
	var s strings.Builder
	words := map[Severity]string{Warning: "warning", Error: "error", Fatal: "fatal"}
	for _, p := range problems {
		fmt.Fprintf(&s, "%s %s: %s\n", words[p.Severity], p.Check, p)
	}
	for _, f := range b.Files {
		if f.LeftOut > 0 {
			fmt.Fprintf(&s, "left out: %s %d of %d\n", f.Name, f.LeftOut, f.Rows)
		}
	}
	return s.String()
}

func catalogue(t testing.TB) []string {
	t.Helper()
	files, err := filepath.Glob("testdata/problems/*.txtar")
	if err != nil || len(files) == 0 {
		t.Fatal("no catalogue", err)
	}
	return files
}

// Each file of testdata/problems is a small book that provokes the check it is
// named for, with every message it leads to.
func TestCatalogue(t *testing.T) {
	for _, path := range catalogue(t) {
		t.Run(strings.TrimSuffix(filepath.Base(path), ".txtar"), func(t *testing.T) {
			a, err := txtar.ParseFile(path)
			if err != nil {
				t.Fatal(err)
			}
			got := listing(entryOf(t, a))
			last := len(a.Files) - 1
			if want := string(a.Files[last].Data); a.Files[last].Name != "problems" || got != want {
				if *update {
					rewrite(t, path, a, got)
					return
				}
				t.Errorf("got\n%swant\n%s", got, want)
			}
		})
	}
}

func rewrite(t *testing.T, path string, a *txtar.Archive, got string) {
	t.Helper()
	a.Files = slices.DeleteFunc(a.Files, func(f txtar.File) bool { return f.Name == "problems" })
	a.Files = append(a.Files, txtar.File{Name: "problems", Data: []byte(got)})
	if err := os.WriteFile(path, txtar.Format(a), 0o644); err != nil {
		t.Fatal(err)
	}
}

// Every check has an entry of its name that provokes it, and every problem is
// one of a check in the table.
func TestCatalogueNamesEveryCheck(t *testing.T) {
	provoked := map[string]bool{"folder": true, "note-size": true} // TestFolderCannotBeListed, TestLimits
	for _, path := range catalogue(t) {
		a, err := txtar.ParseFile(path)
		if err != nil {
			t.Fatal(err)
		}
		name, _, _ := strings.Cut(strings.TrimSuffix(filepath.Base(path), ".txtar"), "_")
		_, problems := entryOf(t, a)
		for _, p := range problems {
			if _, known := severities()[p.Check]; !known {
				t.Errorf("%s: check %q is not in the table", path, p.Check)
			}
			if p.Check == name {
				provoked[name] = true
			}
		}
	}
	for _, c := range Checks {
		if !provoked[c.Name] && c.Name != "from-left-out" {
			t.Errorf("no entry provokes %s", c.Name)
		}
	}
}
