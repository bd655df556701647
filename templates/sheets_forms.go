package templates

import (
	"fmt"
	"html/template"
	"slices"

	"traybook/records"
	"traybook/report"
	"traybook/report/words"
)

// form is one sheet with the columns of the log into which it is typed.
type form struct {
	Title, Log, How string
	Columns         []formColumn
	Rows            []formRow
}

// formColumn is a column of a log; Class leaves room for a date (mid) or for words
// (broad).
type formColumn struct{ Head, Sub, Class string }

// formRow is a batch with the hints that stand in its cells; a row without a code
// is left to be filled in.
type formRow struct {
	Code, Of template.HTML
	Cells    []template.HTML
}

// blankRows is how many rows each form leaves free.
const blankRows = 4

// cols are columns of words of one class.
func cols(class string, heads ...string) []formColumn {
	var out []formColumn
	for _, h := range heads {
		out = append(out, formColumn{Head: h, Class: class})
	}
	return out
}

// formOf makes a form: hints gives the small words in the cells of a batch. Hints are
// fewer than the columns: what lies past them stays blank to write in.
func formOf(f form, batches []*report.Record, hints func(*report.Record) []template.HTML) form {
	f.Columns = append(cols("", "batch"), f.Columns...)
	for _, b := range batches {
		cells := make([]template.HTML, len(f.Columns)-1)
		copy(cells, hints(b))
		of := say("%s %s, %s %s", name(b.Crop), name(b.Variety), words.Plural(b.Trays, "tray", "trays"), name(b.Tray))
		f.Rows = append(f.Rows, formRow{markup(name(b.Code)), of, cells})
	}
	for range blankRows {
		f.Rows = append(f.Rows, formRow{Cells: make([]template.HTML, len(f.Columns)-1)})
	}
	return f
}

// countForm has the columns of counts.csv.
func (p *page) countForm(batches []*report.Record) form {
	f := form{Title: "Germination counts", Log: "counts.csv",
		How:     "Count the cells with a living seedling (emerged) or those without (empty), one of the two. Lost: cells that had one and lost it since the last count, with the cause. Tray: only if you count each tray by itself.",
		Columns: slices.Concat(cols("mid", "date"), cols("", "tray", "cells", "emerged", "empty", "lost"), cols("broad", "cause", "note"))}
	return formOf(f, batches, func(b *report.Record) []template.HTML {
		return []template.HTML{"", "", hint("%s sown", b.CellsSown)}
	})
}

// hint is small print in a cell, where the number is known.
func hint(format string, n records.Maybe[int]) template.HTML {
	if !n.Known {
		return ""
	}
	return say(format, words.Whole(n.Value))
}

// lookForm has the columns of scores.csv, with the farm's words for each score.
func (p *page) lookForm(batches []*report.Record) form {
	f := form{Title: "Looks at quality", Log: "scores.csv",
		How:     "Look at 10 to 20 plugs from corners, edge and middle, not the best. Write either looked and usable, or how many plants have each score; one overall score if there is no time for more.",
		Columns: slices.Concat(cols("mid", "date"), cols("", "looked", "usable"))}
	for i, word := range p.r.Book.Settings.ScoreWords {
		f.Columns = append(f.Columns, formColumn{Head: fmt.Sprint("s", i+1), Sub: word})
	}
	f.Columns = slices.Concat(f.Columns, cols("", "score"), cols("broad", "note"))
	return formOf(f, batches, func(b *report.Record) []template.HTML { return []template.HTML{plannedHint(b)} })
}

// outForm has the columns of sowings.csv, or of out.csv where the farm writes
// what leaves the house there alone.
func (p *page) outForm(batches []*report.Record) form {
	f := form{Title: "Setting out", Log: "sowings.csv",
		How:     "Write what was set out and what was left over and fit. 0 left over is an answer; a blank is not.",
		Columns: slices.Concat(cols("mid", "set_out", "plants_out", "surplus"), cols("broad", "note"))}
	if p.writesOuts() {
		f.Log, f.How = "out.csv", "A row for each time plants leave. To: field, sold, given, surplus, potted-on or dead. Last: yes on the row that clears the batch."
		f.Columns = slices.Concat(cols("mid", "date"), cols("", "plants", "to", "last", "money"), cols("broad", "note"))
	}
	return formOf(f, batches, func(b *report.Record) []template.HTML { return []template.HTML{plannedHint(b), wantedHint(b)} })
}

// writesOuts reports whether the farm writes what leaves the house into out.csv alone. A
// farm that fills in set_out even once is taken to write there, as two places for one
// thing end in doubt.
func (p *page) writesOuts() bool {
	return len(p.r.Book.Outs) > 0 && !slices.ContainsFunc(p.r.Book.Sowings, func(s records.Sowing) bool { return s.SetOut.Known() })
}

// plannedHint is the planned day, where it is known.
func plannedHint(b *report.Record) template.HTML {
	if !b.Planned.Known() {
		return ""
	}
	return say("planned <time>%s</time>", words.ISODate(b.Planned))
}

// wantedHint is the plants wanted, where they are known.
func wantedHint(b *report.Record) template.HTML { return hint("%s wanted", b.Wanted) }
