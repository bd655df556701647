package main

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"traybook/records"
	"traybook/records/workbook"
)

// place is where a record book stands: a folder of logs, or a workbook with a folder of
// its name beside it for notes and site.
type place struct {
	path     string
	home     string // the folder that holds notes, and site by default
	workbook bool
}

// placeOf tells a workbook by its ending.
func placeOf(path string) place {
	end := filepath.Ext(path)
	switch strings.ToLower(end) {
	case ".xlsx", ".xlsm", ".ods":
		if info, err := os.Stat(path); err != nil || !info.IsDir() {
			return place{path, strings.TrimSuffix(path, end), true}
		}
	}
	return place{path, path, false}
}

// find sees that the book is there and is what its name says.
func (p place) find() error {
	info, err := os.Stat(p.path)
	switch {
	case p.path == "":
		return failure("name the folder that holds sowings.csv, or a workbook", "no record book is named")
	case errors.Is(err, fs.ErrNotExist) && p.workbook:
		return failure("name the workbook; traybook new --workbook makes one", "%s: no such file", p.path)
	case errors.Is(err, fs.ErrNotExist):
		return failure("name the folder that holds sowings.csv; traybook new makes one", "%s: no such folder", p.path)
	case err != nil:
		return cannotRead(p.path, err)
	case p.workbook && !info.Mode().IsRegular():
		return failure("name the workbook itself", "%s: no plain file", p.path)
	case !p.workbook && !info.IsDir():
		return p.misnamed()
	}
	if base := filepath.Base(p.path); p.workbook && (strings.HasPrefix(base, "~$") || strings.HasPrefix(base, ".~")) {
		return failure("name the workbook itself", "%s: what an open spreadsheet leaves beside its file", p.path)
	}
	return nil
}

// misnamed says what to name in place of a file that is no workbook.
func (p place) misnamed() error {
	remedy := "name the folder that holds it"
	switch strings.ToLower(filepath.Ext(p.path)) {
	case ".xls", ".fods", ".numbers", ".xlsb":
		remedy = "save it as .xlsx or .ods and name that"
	}
	return failure(remedy, "%s: a file, not a record book's folder or workbook", p.path)
}

// read reads the book.
func (p place) read() (*records.Book, []records.Problem, error) {
	if !p.workbook {
		book, problems := records.Load(os.DirFS(p.home))
		return book, problems, nil
	}
	f, err := os.Open(p.path)
	if err != nil {
		return nil, nil, cannotRead(p.path, err)
	}
	defer f.Close()
	raw, err := io.ReadAll(io.LimitReader(f, workbook.MostBytes+1))
	if err != nil {
		return nil, nil, cannotRead(p.path, err)
	}
	book, problems := records.LoadWorkbook(filepath.Base(p.path), raw, os.DirFS(p.home))
	return book, problems, nil
}

// site is where the review goes unless --out says otherwise.
func (p place) site() string { return filepath.Join(p.home, "site") }
