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
}

// String writes the problem on one line, as editors understand it.
func (p Problem) String() string {
	where := p.File
	if p.Line > 0 {
		where += fmt.Sprintf(":%d", p.Line)
		if p.Column > 0 {
			where += fmt.Sprintf(":%d", p.Column)
		}
	}
	if p.Cell != "" {
		where += ": " + p.Cell
	}
	s := where + ": " + p.Found
	for _, part := range []string{p.Expected, p.Remedy} {
		if part != "" {
			s += "; " + part
		}
	}
	return s
}

// SortProblems puts problems in order of file, line and column.
func SortProblems(ps []Problem) {
	slices.SortStableFunc(ps, func(a, b Problem) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line),
			cmp.Compare(a.Column, b.Column), cmp.Compare(a.Found, b.Found))
	})
}
