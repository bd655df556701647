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
	want := books()
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
	size := 0
	for name, text := range books() {
		size += len(text)
		if rows := bytes.Count(text, []byte("\n")); rows > 1500 {
			t.Errorf("%s has %d rows", name, rows)
		}
	}
	if size > 1_000_000 {
		t.Errorf("the books hold %d bytes", size)
	}
}
