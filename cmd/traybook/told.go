package main

import (
	"encoding/json"
	"fmt"
	"slices"
	"strings"

	"traybook/records"
	"traybook/report/words"
)

// telling is how problems are said.
type telling struct {
	All  bool `help:"Every problem, not the first three of a kind in each file."`
	JSON bool `name:"json" help:"Every problem, as one JSON object a line."`
}

// ofAKind is how many problems of one kind in one file are said until the rest are
// counted.
const ofAKind = 3

// kind is what problems have in common of which the first ones stand for the rest.
type kind struct{ file, check string }

// problems says the problems, a line each. A column in the wrong form makes a problem of
// each row: three of them tell it, and the rest are a number.
func (v *voice) problems(ps []records.Problem, how telling) error {
	v.clear()
	if how.JSON {
		return v.asJSON(ps)
	}
	count, said := map[kind]int{}, map[kind]int{}
	for _, p := range ps {
		count[kind{p.File, p.Check}] += 1 + p.More
	}
	for _, p := range ps {
		k := kind{p.File, p.Check}
		if said[k]++; said[k] > ofAKind && !how.All {
			continue
		}
		line := p.String()
		if p.Severity == records.Warning {
			line += " (warning)"
		}
		fmt.Fprintln(v.stderr, line)
		if said[k] == ofAKind && !how.All && count[k] > ofAKind {
			fmt.Fprintf(v.stderr, "%s: and %d more like it; `traybook check --all` shows them\n", p.File, count[k]-ofAKind)
		}
	}
	return nil
}

// asJSON says every problem, an object a line.
func (v *voice) asJSON(ps []records.Problem) error {
	for _, p := range ps {
		b, err := json.Marshal(problemJSON(p))
		if err != nil {
			return err
		}
		fmt.Fprintln(v.stderr, string(b))
	}
	return nil
}

// total says, behind all problems, how many there were, where there were any.
func (v *voice) total(l loaded, how telling) {
	if len(l.problems) > 0 && !how.JSON {
		v.result("%s", l.tally())
	}
}

// tally counts errors and warnings.
func (l loaded) tally() string {
	bad, all := l.errors(), 0
	for _, p := range l.problems {
		all += 1 + p.More
	}
	return words.Count(bad, "error", "errors") + ", " + words.Count(all-bad, "warning", "warnings")
}

// unread says which columns of each log are not read, a line a file, and which sheets of
// a workbook.
func (v *voice) unread(b *records.Book) {
	for _, f := range b.Files {
		if len(f.Unread) == 0 {
			continue
		}
		var names []string
		for _, name := range f.Unread {
			names = append(names, fmt.Sprintf("%q", name))
		}
		slices.Sort(names)
		v.result("%s: %s not read: %s", f.Name, words.Count(len(names), "column is", "columns are"), strings.Join(slices.Compact(names), ", "))
	}
	if n := len(b.OtherSheets); n > 0 {
		v.result("%s not read, as no log is called so: %s", words.Count(n, "sheet is", "sheets are"), strings.Join(b.OtherSheets, ", "))
	}
}

// jsonProblem is a problem for a program to read. Its names are relied on by scripts of
// users and do not change.
type jsonProblem struct {
	File     string `json:"file"`
	Line     int    `json:"line,omitempty"`
	Column   int    `json:"column,omitempty"`
	Cell     string `json:"cell,omitempty"`
	Severity string `json:"severity"`
	Check    string `json:"check,omitempty"`
	Found    string `json:"found"`
	Expected string `json:"expected,omitempty"`
	Remedy   string `json:"remedy,omitempty"`
}

// problemJSON is a problem as --json writes it: empty fields are left out.
func problemJSON(p records.Problem) jsonProblem {
	return jsonProblem{p.File, p.Line, p.Column, p.Cell, p.Severity.String(), p.Check, p.Found, p.Expected, p.Remedy}
}
