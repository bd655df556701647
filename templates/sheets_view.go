package templates

import (
	"fmt"
	"html/template"
	"math"
	"slices"

	"traybook/records"
	"traybook/report"
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

func sheetsView(p *place) any {
	v, _ := p.sheets()
	v.Link = p.href("static/sheets.css")
	return v
}

// sheets makes the forms and says for how many batches.
func (p *place) sheets() (sheetsPage, int) {
	count, late, short := p.onList(report.ToCount), p.onList(report.Late), p.onList(report.Short)
	out := slices.Concat(late, p.coming())
	looks := distinct(slices.Concat(out, short))
	all := distinct(slices.Concat(count, looks))
	v := sheetsPage{Title: p.spec.title, Farm: p.farm(), AsOf: longDate(p.r.LastDate)}
	v.Forms = []form{p.countForm(count), p.lookForm(looks), p.outForm(out)}
	for _, b := range all {
		v.Labels = append(v.Labels, labelsOf(b)...)
	}
	v.Sample = "No batch stands on this week’s list: the forms are blank."
	if len(all) > 0 {
		v.Sample = fmt.Sprintf("%s: those to count, late, likely short, or planned for the week ahead.", batchCount(len(all)))
	}
	return v, len(all)
}

// onList are the batches on a part of the week's list.
func (p *place) onList(what report.WeekWhat) []*report.Batch {
	var out []*report.Batch
	for _, l := range p.lines(what) {
		if l.Batch != nil {
			out = append(out, l.Batch)
		}
	}
	return out
}

// coming are the open batches planned for the days ahead.
func (p *place) coming() []*report.Batch {
	var out []*report.Batch
	for _, b := range p.r.Batches {
		if !b.Ended() && b.Planned.Known() && b.Planned >= p.r.LastDate && b.Planned < p.r.LastDate+comingDays {
			out = append(out, b)
		}
	}
	slices.SortStableFunc(out, func(a, b *report.Batch) int { return int(a.Planned - b.Planned) })
	return out
}

func distinct(batches []*report.Batch) []*report.Batch {
	var out []*report.Batch
	for _, b := range batches {
		if !slices.Contains(out, b) {
			out = append(out, b)
		}
	}
	return out
}

// formOf makes a form: hints gives the small words in the cells of a batch.
func formOf(f form, batches []*report.Batch, hints func(*report.Batch) []template.HTML) form {
	f.Columns = append([]formColumn{{Head: "batch"}}, f.Columns...)
	for _, b := range batches {
		cells := make([]template.HTML, len(f.Columns)-1)
		copy(cells, hints(b))
		f.Rows = append(f.Rows, formRow{markup(name(b.Code)), say("%s %s, %s %s", name(b.Crop), name(b.Variety), plural(b.Trays, "tray", "trays"), name(b.Tray)), cells})
	}
	for range blankRows {
		f.Rows = append(f.Rows, formRow{Cells: make([]template.HTML, len(f.Columns)-1)})
	}
	return f
}

func (p *place) countForm(batches []*report.Batch) form {
	f := form{Title: "Germination counts", Log: "counts.csv",
		How:     "Count the cells with a living seedling (emerged) or those without (empty), one of the two. Lost: cells that had one and lost it since the last count, with the cause. Tray: only if you count each tray by itself.",
		Columns: []formColumn{{Head: "date", Class: "mid"}, {Head: "tray"}, {Head: "cells"}, {Head: "emerged"}, {Head: "empty"}, {Head: "lost"}, {Head: "cause", Class: "wide"}, {Head: "note", Class: "wide"}}}
	return formOf(f, batches, func(b *report.Batch) []template.HTML {
		return []template.HTML{"", "", hint("%s sown", b.CellsSown)}
	})
}

// hint is small print in a cell, where the number is known.
func hint(format string, n records.Maybe[int]) template.HTML {
	if !n.Known {
		return ""
	}
	return say(format, whole(n.Value))
}

func (p *place) lookForm(batches []*report.Batch) form {
	f := form{Title: "Looks at quality", Log: "scores.csv",
		How:     "Look at 10 to 20 plugs from corners, edge and middle, not the best. Write either looked and usable, or how many plants have each score; one overall score if there is no time for more.",
		Columns: []formColumn{{Head: "date", Class: "mid"}, {Head: "looked"}, {Head: "usable"}}}
	for i, word := range p.r.Book.Settings.ScoreWords {
		f.Columns = append(f.Columns, formColumn{Head: fmt.Sprint("s", i+1), Sub: word})
	}
	f.Columns = append(f.Columns, formColumn{Head: "score"}, formColumn{Head: "note", Class: "wide"})
	return formOf(f, batches, func(b *report.Batch) []template.HTML { return nil })
}

// outForm has the columns of sowings.csv, or of out.csv where the farm writes
// what leaves the house there alone.
func (p *place) outForm(batches []*report.Batch) form {
	if p.writesOuts() {
		f := form{Title: "Setting out", Log: "out.csv",
			How:     "A row for each time plants leave. To: field, sold, given, surplus, potted-on or dead. Last: yes on the row that clears the batch.",
			Columns: []formColumn{{Head: "date", Class: "mid"}, {Head: "plants"}, {Head: "to"}, {Head: "last"}, {Head: "money"}, {Head: "note", Class: "wide"}}}
		return formOf(f, batches, func(b *report.Batch) []template.HTML { return []template.HTML{plannedHint(b), wantedHint(b)} })
	}
	f := form{Title: "Setting out", Log: "sowings.csv",
		How:     "Write what was set out and what was left over and fit. 0 left over is an answer; a blank is not.",
		Columns: []formColumn{{Head: "set_out", Class: "mid"}, {Head: "plants_out", Class: "mid"}, {Head: "surplus", Class: "mid"}, {Head: "note", Class: "wide"}}}
	return formOf(f, batches, func(b *report.Batch) []template.HTML { return []template.HTML{plannedHint(b), wantedHint(b)} })
}

func (p *place) writesOuts() bool {
	return len(p.r.Book.Outs) > 0 && !slices.ContainsFunc(p.r.Book.Sowings, func(s records.Sowing) bool { return s.SetOut.Known() })
}

func plannedHint(b *report.Batch) template.HTML {
	if !b.Planned.Known() {
		return ""
	}
	return say("planned %s", isoDate(b.Planned))
}

func wantedHint(b *report.Batch) template.HTML { return hint("%s wanted", b.Wanted) }

// labelsOf are a label for each tray of a batch.
func labelsOf(b *report.Batch) []label {
	n := max(1, int(math.Ceil(b.Trays-1e-9)))
	var out []label
	for i := range n {
		lot := template.HTML("")
		if b.Lot != "" {
			lot = say(" · lot %s", name(b.Lot))
		}
		out = append(out, label{markup(name(b.Code)), say("%s %s", name(b.Crop), name(b.Variety)),
			say("sown %s%s", isoDate(b.Sown), lot), say("%s · tray %s of %s", name(b.Tray), whole(i+1), whole(n))})
	}
	return out
}
