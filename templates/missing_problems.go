package templates

import (
	"cmp"
	"html/template"
	"slices"
	"strconv"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/words"
)

// problemList is what is wrong in the logs and notes, alike ones together.
type problemList struct {
	Title template.HTML
	Rows  string // how many rows were left out
	Table *rows
}

// firstOfKind is how many problems of a kind are shown.
const firstOfKind = 3

// problemKind is what makes problems alike: what was checked, and in which file.
type problemKind struct {
	severity    records.Severity
	check, file string
}

// problemList shows the first problems of each kind, those that leave rows out first. All
// of them stand in problems.csv; a log with one wrong column would otherwise fill the page
// with one mistake.
func (p *page) problemList() problemList {
	t := p.rows("problems", "prob", "Where it stands, what was found there, and what to write instead.", "problems",
		col{Width: "c-name", Head: "Place"}, col{Class: "fnd", Head: "Found"}, col{Class: "exp", Head: "Expected"}, col{Class: "rem", Head: "How to mend it"})
	t.Notes = nil // the list itself says how many rows were left out
	kinds, of := batch.GroupBy(p.r.Problems, func(pr records.Problem) problemKind {
		return problemKind{min(pr.Severity, records.Error), pr.Check, pr.File}
	})
	slices.SortStableFunc(kinds, func(a, b problemKind) int { return cmp.Compare(b.severity, a.severity) })
	for _, kind := range kinds {
		list := of[kind]
		t.under(kindHead(kind, len(list)), "")
		for _, pr := range list[:min(len(list), firstOfKind)] {
			t.add("", "", posWords(pr.Pos), name(pr.Found), name(pr.Expected), name(pr.Remedy))
		}
		if more := len(list) - firstOfKind; more > 0 {
			t.add("", "", say("and %s more like it", words.Whole(more)), "", "", "")
		}
	}
	return problemList{problemTitle(p.r.Problems), p.leftOutText(), t}
}

// problemTitle is the finding.
func problemTitle(all []records.Problem) template.HTML {
	errors := len(batch.Filter(all, func(pr records.Problem) bool { return pr.Severity >= records.Error }))
	warnings := len(all) - errors
	switch {
	case len(all) == 0:
		return "No problem was found in the logs and notes"
	case errors == 0:
		return say("%s in the logs and notes", words.Plural(warnings, "warning", "warnings"))
	case warnings == 0:
		return say("%s in the logs and notes", words.Plural(errors, "error", "errors"))
	}
	return say("%s and %s in the logs and notes", words.Plural(errors, "error", "errors"), words.Plural(warnings, "warning", "warnings"))
}

// kindHead says how many problems of a kind there are, and what becomes of their rows.
func kindHead(kind problemKind, n int) template.HTML {
	if kind.severity >= records.Error {
		return say(`<span class="bad">%s</span> in %s`, words.Plural(n, "error", "errors"), name(kind.file))
	}
	return say("%s in %s", words.Plural(n, "warning", "warnings"), name(kind.file))
}

// posWords is a place as an editor and a spreadsheet name it.
func posWords(at records.Pos) template.HTML {
	out := markup(name(at.File))
	if at.Line > 0 && !at.Sheet { // of a sheet the cell says it
		out = say("%s, line %s", out, strconv.Itoa(at.Line))
	}
	if at.Cell != "" {
		out = say("%s, %s", out, at.Cell)
	}
	return out
}
