package main

import (
	"bytes"
	"io/fs"
	"os"
	"path/filepath"
	"testing"
)

// The committed books are byte for byte what the program writes, and no file
// stands beside them that it does not.
func TestCommittedBooks(t *testing.T) {
	want, err := books()
	if err != nil {
		t.Fatal(err)
	}
	for name, text := range want {
		got, err := os.ReadFile(filepath.Join("..", filepath.FromSlash(name)))
		if err != nil {
			t.Error(err)
		} else if !bytes.Equal(got, text) {
			t.Errorf("%s differs from what go run ./examples/make writes", name)
		}
	}
	for _, name := range committed(t) {
		if want[name] == nil {
			t.Errorf("%s is not written by the program", name)
		}
	}
}

// committed lists the record files of the books, without what a build leaves.
func committed(t *testing.T) []string {
	var names []string
	err := filepath.WalkDir("..", func(path string, d fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case d.IsDir() && (d.Name() == "make" || d.Name() == "site"):
			return fs.SkipDir
		case !d.IsDir():
			name, _ := filepath.Rel("..", path)
			names = append(names, filepath.ToSlash(name))
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return names
}

// A book is something a grower keeps in a spreadsheet: the whole of it stays small.
func TestBooksStaySmall(t *testing.T) {
	all, err := books()
	if err != nil {
		t.Fatal(err)
	}
	size := 0
	for name, text := range all {
		size += len(text)
		if rows := bytes.Count(text, []byte("\n")); rows > 1500 {
			t.Errorf("%s has %d rows", name, rows)
		}
	}
	if size > 1_000_000 {
		t.Errorf("the books hold %d bytes", size)
	}
}

// The big book holds what the pages are shown with: seasons, crops, cell sizes,
// both kinds of a cell size, and batches that are still open.
func TestFarmIsLargeEnough(t *testing.T) {
	f := raise()
	seasons, crops, cells, kinds := map[int]int{}, map[string]bool{}, map[int]bool{}, map[string]bool{}
	open := 0
	for _, b := range f.batches {
		seasons[b.season]++
		crops[b.crop.name], cells[b.tray.cells], kinds[b.tray.code] = true, true, true
		if b.end > f.last {
			open++
		}
	}
	for season := 2023; season <= 2025; season++ {
		if seasons[season] < 110 {
			t.Errorf("%d has %d batches", season, seasons[season])
		}
	}
	if len(seasons) != 4 || len(crops) < 14 || len(cells) < 4 || open < 20 {
		t.Errorf("%d seasons, %d crops, %d cell sizes, %d open batches", len(seasons), len(crops), len(cells), open)
	}
	for _, code := range []string{"A50", "S50", "A72", "S72", "A128", "S128"} {
		if !kinds[code] {
			t.Errorf("nothing is sown in %s", code)
		}
	}
}
