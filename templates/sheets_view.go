package templates

import (
	"fmt"
	"html/template"
	"slices"

	"traybook/records"
	"traybook/report"
	"traybook/report/words"
)

// sheetsPage is forms to print and write on, and labels for the trays.
type sheetsPage struct {
	Title, Farm, AsOf string
	Sample            string        // how many batches the forms hold
	Style             template.HTML // on its own file only
	Policy            string
	Link              string // address of the style sheet, on the site's page
	Forms             []form
	Labels            []label
}

// form is one sheet with the columns of the log into which it is typed.
type form struct {
	Title, Log, How string
	Columns         []formColumn
	Rows            []formRow
	Scale           []template.HTML
}

// formColumn is a column of a log; Class leaves room for a date (mid) or for words
// (wide).
type formColumn struct{ Head, Sub, Class string }

// formRow is a batch with the hints that stand in its cells; a row without a code
// is left to be filled in.
type formRow struct {
	Code, Of template.HTML
	Cells    []template.HTML
}

// label is what is cut out and stuck into a tray.
type label struct{ Code, What, Sown, Tray template.HTML }

// comingDays is how far ahead batches that are planned to be set out get a row on
// the form for it; blankRows is how many rows each form leaves free.
const (
	comingDays = 7
	blankRows  = 4
)

// sheetsView is the forms as a page of the site.
func sheetsView(p *page) any {
	v, _ := p.sheets()
	v.Link = p.href("static/sheets.css")
	return v
}

// sheets makes the forms and says for how many batches.
func (p *page) sheets() (sheetsPage, int) {
	count, late, short := p.onList(report.ToCount), p.onList(report.Late), p.onList(report.Short)
	out := slices.Concat(late, p.coming())
	looks := distinct(slices.Concat(out, short))
	all := distinct(slices.Concat(count, looks))
	v := sheetsPage{Title: p.spec.title, Farm: p.farm(), AsOf: words.LongDate(p.r.Batches.Today)}
	v.Forms = []form{p.countForm(count), p.lookForm(looks), p.outForm(out)}
	for _, b := range all {
		v.Labels = append(v.Labels, labelsOf(b)...)
	}
	v.Sample = "No batch stands on this week’s list: the forms are blank."
	if len(all) > 0 {
		v.Sample = fmt.Sprintf("%s: those to count, late, likely short, or planned for the week ahead.", words.Batches(len(all)))
	}
	return v, len(all)
}

// onList are the batches on a part of the week's list.
func (p *page) onList(what report.WeekWhat) []*report.Record {
	var out []*report.Record
	for _, l := range p.lines(what) {
		if l.Batch != nil {
			out = append(out, l.Batch)
		}
	}
	return out
}

// coming are the open batches planned for the days ahead.
func (p *page) coming() []*report.Record {
	var out []*report.Record
	for _, b := range p.r.Records {
		if !b.Ended() && b.Planned.Known() && b.Planned >= p.r.Batches.Today && b.Planned < p.r.Batches.Today+comingDays {
			out = append(out, b)
		}
	}
	slices.SortStableFunc(out, func(a, b *report.Record) int { return int(a.Planned - b.Planned) })
	return out
}

// distinct keeps the first of batches that stand twice.
func distinct(batches []*report.Record) []*report.Record {
	var out []*report.Record
	for _, b := range batches {
		if !slices.Contains(out, b) {
			out = append(out, b)
		}
	}
	return out
}

// formOf makes a form: hints gives the small words in the cells of a batch.
func formOf(f form, batches []*report.Record, hints func(*report.Record) []template.HTML) form {
	f.Columns = append([]formColumn{{Head: "batch"}}, f.Columns...)
	for _, b := range batches {
		cells := make([]template.HTML, len(f.Columns)-1)
		copy(cells, hints(b))
		f.Rows = append(f.Rows, formRow{markup(name(b.Code)), say("%s %s, %s %s", name(b.Crop), name(b.Variety), words.Plural(b.Trays, "tray", "trays"), name(b.Tray)), cells})
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
		Columns: []formColumn{{Head: "date", Class: "mid"}, {Head: "tray"}, {Head: "cells"}, {Head: "emerged"}, {Head: "empty"}, {Head: "lost"}, {Head: "cause", Class: "wide"}, {Head: "note", Class: "wide"}}}
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
		Columns: []formColumn{{Head: "date", Class: "mid"}, {Head: "looked"}, {Head: "usable"}}}
	for i, word := range p.r.Book.Settings.ScoreWords {
		f.Columns = append(f.Columns, formColumn{Head: fmt.Sprint("s", i+1), Sub: word})
	}
	f.Columns = append(f.Columns, formColumn{Head: "score"}, formColumn{Head: "note", Class: "wide"})
	return formOf(f, batches, func(b *report.Record) []template.HTML { return nil })
}

// outForm has the columns of sowings.csv, or of out.csv where the farm writes
// what leaves the house there alone.
func (p *page) outForm(batches []*report.Record) form {
	if p.writesOuts() {
		f := form{Title: "Setting out", Log: "out.csv",
			How:     "A row for each time plants leave. To: field, sold, given, surplus, potted-on or dead. Last: yes on the row that clears the batch.",
			Columns: []formColumn{{Head: "date", Class: "mid"}, {Head: "plants"}, {Head: "to"}, {Head: "last"}, {Head: "money"}, {Head: "note", Class: "wide"}}}
		return formOf(f, batches, func(b *report.Record) []template.HTML { return []template.HTML{plannedHint(b), wantedHint(b)} })
	}
	f := form{Title: "Setting out", Log: "sowings.csv",
		How:     "Write what was set out and what was left over and fit. 0 left over is an answer; a blank is not.",
		Columns: []formColumn{{Head: "set_out", Class: "mid"}, {Head: "plants_out", Class: "mid"}, {Head: "surplus", Class: "mid"}, {Head: "note", Class: "wide"}}}
	return formOf(f, batches, func(b *report.Record) []template.HTML { return []template.HTML{plannedHint(b), wantedHint(b)} })
}

// writesOuts reports whether the farm writes what leaves the house into out.csv alone.
func (p *page) writesOuts() bool {
	return len(p.r.Book.Outs) > 0 && !slices.ContainsFunc(p.r.Book.Sowings, func(s records.Sowing) bool { return s.SetOut.Known() })
}

// plannedHint is the planned day, where it is known.
func plannedHint(b *report.Record) template.HTML {
	if !b.Planned.Known() {
		return ""
	}
	return say("planned %s", words.ISODate(b.Planned))
}

// wantedHint is the plants wanted, where they are known.
func wantedHint(b *report.Record) template.HTML { return hint("%s wanted", b.Wanted) }

// labelsOf are a label for each tray of a batch.
func labelsOf(b *report.Record) []label {
	n := max(1, records.WholeTrays(b.Trays))
	var out []label
	for i := range n {
		lot := template.HTML("")
		if b.Lot != "" {
			lot = say(" · lot %s", name(b.Lot))
		}
		out = append(out, label{markup(name(b.Code)), say("%s %s", name(b.Crop), name(b.Variety)),
			say("sown %s%s", words.ISODate(b.Sown), lot), say("%s · tray %s of %s", name(b.Tray), words.Whole(i+1), words.Whole(n))})
	}
	return out
}
