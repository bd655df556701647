package records

import (
	"io/fs"

	"traybook/records/workbook"
)

// origin is where a book stands: a folder of CSV files (folder.go), or a workbook with a
// sheet for each log (sheets.go).
type origin interface {
	// find looks for the logs: it fills in loader.found and reports what is missing,
	// misnamed or passed over.
	find(l *loader)
	// open opens a log; false where there is none, or where none of it can be read,
	// which it reports.
	open(l *loader, log Log) (source, bool)
	// words puts what a log is called there in place of its file's name.
	words(string) string
	// beside holds the folder notes.
	beside() fs.FS
}

// source hands out the rows of one log in turn, its header first.
type source interface {
	// next is the next row with anything in it; false at the end.
	next() (record, bool)
	// again is the row at a spot once more.
	again(At) record
	// rest is called once all rows were read: little is asked for from then on.
	rest()
	// anew is the same log from its header on.
	anew() source
	// most is how many rows there are at most.
	most() int
	// place is where the i-th cell of a row stands, also beyond the row's last.
	place(r At, i int) Pos
	// faults are the rows passed over so far that could not be read.
	faults() []fault
}

// record is one row of a log with anything in it: its cells as text.
type record struct {
	At
	fields []string
	cells  []workbook.Cell // of a workbook's sheet
}

// fault is a row that cannot be read, as far as its cells can be told.
type fault struct {
	Problem
	cells []string
}

// The most that is read: bytes and lines of a log, bytes of a season's notes, bytes of a
// cell, cells of a row, rows of a log that cannot be read. A row far beyond is no row of a
// record book, and takes memory without end.
const (
	mostOfLog   = 64_000_000
	mostLines   = 2_000_000
	mostOfNotes = 1_000_000
	mostOfCell  = 10_000
	mostCells   = 200
	mostFaults  = 10_000
)
