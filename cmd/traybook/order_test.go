package main

import (
	"bytes"
	"encoding/csv"
	"io/fs"
	"math/rand/v2"
	"os"
	"testing"
	"testing/fstest"

	"traybook/cmd/traybook/internal/folder"
	"traybook/records"
	"traybook/report"
)

// The order of a log's rows, which a spreadsheet changes with a click, changes no
// byte of a review but the places of problems and of cells to fill. A wish goes by its
// row, so that the order of wishes.csv is the order of the page.
func TestOrderOfRowsChangesNoPage(t *testing.T) {
	book := os.DirFS("../../examples/ottermoss")
	sorted, shuffled := siteOf(t, book), siteOf(t, shuffledLogs(t, book))
	if len(sorted) != len(shuffled) || len(sorted) < 20 {
		t.Fatalf("%d files, then %d", len(sorted), len(shuffled))
	}
	for i, f := range sorted {
		if f.Path == "missing.html" { // it names lines
			continue
		}
		if f.Path != shuffled[i].Path || !bytes.Equal(f.Body, shuffled[i].Body) {
			t.Errorf("%s differs (%s)", f.Path, shuffled[i].Path)
		}
	}
}

// siteOf sets a book's site without its problems, which name lines.
func siteOf(t *testing.T, book fs.FS) []folder.File {
	t.Helper()
	b, _ := records.Load(book)
	r, err := report.New(b, nil, report.Options{})
	if err != nil {
		t.Fatal(err)
	}
	var files []folder.File
	for f, err := range site(r, nil) {
		if err != nil {
			t.Fatal(err)
		}
		files = append(files, f)
	}
	return files
}

func shuffledLogs(t *testing.T, book fs.FS) fs.FS {
	t.Helper()
	logs, err := fs.Glob(book, "*.csv")
	if err != nil || len(logs) == 0 {
		t.Fatal(err, "no logs")
	}
	chance := rand.New(rand.NewPCG(1, 2))
	copied := fstest.MapFS{}
	for _, name := range logs {
		body, err := fs.ReadFile(book, name)
		if err != nil {
			t.Fatal(err)
		}
		rows, err := csv.NewReader(bytes.NewReader(body)).ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		below := rows[1:]
		if name == "wishes.csv" {
			below = nil
		}
		chance.Shuffle(len(below), func(i, j int) { below[i], below[j] = below[j], below[i] })
		var out bytes.Buffer
		if err := csv.NewWriter(&out).WriteAll(rows); err != nil {
			t.Fatal(err)
		}
		copied[name] = &fstest.MapFile{Data: out.Bytes()}
	}
	notes, _ := fs.Glob(book, "notes/*.md")
	for _, name := range notes {
		body, err := fs.ReadFile(book, name)
		if err != nil {
			t.Fatal(err)
		}
		copied[name] = &fstest.MapFile{Data: body}
	}
	return copied
}
