package records

import (
	"cmp"
	"fmt"
	"slices"
)

// Pos is a place in a log as an editor and a spreadsheet show it. Line and
// Column count from 1 (columns in characters); Cell is the spreadsheet's name
// of the cell, such as E14. Zero and empty where they do not apply.
type Pos struct {
	File   string
	Line   int
	Column int
	Cell   string
	Sheet  bool // File is a workbook's sheet; Line is its row, Column counts its columns
}

// At is where a row of a log stands: the line of its file in which it begins, and the row
// as a spreadsheet counts; of a sheet both are its row. Zero is nowhere. A book may have a
// million rows, so that nothing else is kept of each: Book.Where has the rest.
type At struct{ Line, Row uint32 }

// inWords says in which line a row stands.
func (p Pos) inWords() string { return p.rows() + " " + itoa(p.Line) }

// rows is what the place counts: lines of a file, rows of a sheet.
func (p Pos) rows() string {
	if p.Sheet {
		return "row"
	}
	return "line"
}

// span says in which lines, or rows of a sheet, those from p to last stand.
func (p Pos) span(last Pos) string {
	if last == p {
		return p.inWords()
	}
	return fmt.Sprintf("%ss %d to %d", p.rows(), p.Line, last.Line)
}

// Place writes the place as editors understand it, counts.csv:15:18: E14, and of a
// sheet as spreadsheets do, counts!E14.
func (p Pos) Place() string {
	s := p.File
	switch {
	case p.Sheet && p.Cell != "":
		return s + "!" + p.Cell
	case p.Sheet:
		return s
	case p.Line > 0 && p.Column > 0:
		s += fmt.Sprintf(":%d:%d", p.Line, p.Column)
	case p.Line > 0:
		s += fmt.Sprintf(":%d", p.Line)
	}
	if p.Cell != "" {
		s += ": " + p.Cell
	}
	return s
}

// Severity ranks a problem.
type Severity int

// Warning leaves the row in every figure; Error leaves the row out; Fatal
// means that nothing can be built.
const (
	Warning Severity = iota
	Error
	Fatal
)

// String returns warning or error: what the problems file and the messages say.
func (s Severity) String() string {
	if s == Warning {
		return "warning"
	}
	return "error"
}

// Problem is one finding about the logs. Check is the name of the check.
type Problem struct {
	Pos
	Severity                Severity
	Check                   string
	Found, Expected, Remedy string
	More                    int // findings like it that are not told, of a log with far too many
}

// errorAt is an error of a check at a place.
func errorAt(at Pos, check, found, expected, remedy string) Problem {
	return Problem{Pos: at, Severity: Error, Check: check, Found: found, Expected: expected, Remedy: remedy}
}

// String writes the problem on one line, as editors understand it.
func (p Problem) String() string {
	s := p.Place() + ": " + p.Found
	for _, part := range []string{p.Expected, p.Remedy} {
		if part != "" {
			s += "; " + part
		}
	}
	return s
}

// SortProblems puts problems in order of file, line and column, behind those that
// let nothing be built.
func SortProblems(ps []Problem) {
	rank := func(p Problem) int {
		if p.Severity == Fatal {
			return 0
		}
		return 1
	}
	slices.SortStableFunc(ps, func(a, b Problem) int {
		return cmp.Or(cmp.Compare(rank(a), rank(b)), cmp.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line),
			cmp.Compare(a.Column, b.Column), cmp.Compare(a.Found, b.Found))
	})
}
