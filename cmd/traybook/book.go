package main

import (
	"path/filepath"
	"slices"
	"strings"

	"traybook/records"
	"traybook/report"
	"traybook/templates"
)

// loaded is a record book that was read, with what was found on the way.
type loaded struct {
	book     *records.Book
	problems []records.Problem
}

// load mends what a killed build left beside a book's notes, and reads the book, its
// notes too. The error is a failure to read anything at all; problems in the logs and
// notes are not errors.
func load(out *voice, path string) (loaded, error) {
	at := placeOf(path)
	if err := at.find(); err != nil {
		return loaded{}, err
	}
	mend(out, at.home)
	if abs, err := filepath.Abs(path); err == nil {
		at = placeOf(abs)
	}
	keepWithin(at, toRead, leastToRead)
	book, problems, err := at.read()
	if err != nil {
		return loaded{}, err
	}
	if book.Settings.Farm == "" { // the default of the setting farm
		book.Settings.Farm = nameOf(at.home)
		nameFarm(book)
	}
	problems = append(problems, templates.Notes(book)...)
	records.SortProblems(problems)
	return loaded{book, problems}, nil
}

// nameOf is a folder's name; the top of a drive or of a shared one has none.
func nameOf(folder string) string {
	return strings.Trim(filepath.Base(folder), `/\`)
}

// nameFarm shows the folder's name as the value used.
func nameFarm(b *records.Book) {
	for i, in := range b.Settings.Inputs {
		if in.Name == "farm" {
			b.Settings.Inputs[i].Value = b.Settings.Farm
		}
	}
}

// fatal reports whether nothing may be built.
func (l loaded) fatal() bool {
	return slices.ContainsFunc(l.problems, func(p records.Problem) bool { return p.Severity == records.Fatal })
}

// errors counts the problems that are not warnings.
func (l loaded) errors() (n int) {
	for _, p := range l.problems {
		if p.Severity != records.Warning {
			n += 1 + p.More
		}
	}
	return n
}

// status is the exit status of work that was done: whether rows were left out.
func (l loaded) status() error {
	if l.errors() > 0 {
		return status(leftOut)
	}
	return nil
}

// rows counts rows read, rows left out and files. A row that only repeats another
// is not missing from any figure: it is warned of, not counted.
func (l loaded) rows() (rows, left, files int) {
	for _, f := range l.book.Files {
		rows += f.Rows
		left += f.LeftOut
	}
	for _, p := range l.problems {
		if p.Check == "repeats" {
			left--
		}
	}
	return rows, left, len(l.book.Files)
}

// errNoSowing says that there is nothing to review.
var errNoSowing = failure("write a row for each batch sown, then build again", "sowings.csv: no row that can be used")

// compute makes the report of a loaded book. Its problems are then all there are, so
// that a build says on the terminal what it writes into pages and data: figures that a
// note asks for in vain are found here, before anything is set.
func (l *loaded) compute(o report.Options) (*report.Report, error) {
	if len(l.book.Sowings) == 0 {
		return nil, errNoSowing
	}
	r, err := report.New(l.book, l.problems, o)
	if err != nil {
		return nil, err
	}
	r = r.With(templates.Unfilled(r))
	l.problems = r.Problems
	return r, nil
}
