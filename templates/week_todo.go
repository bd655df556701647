package templates

import (
	"html/template"
	"slices"

	"traybook/report"
	"traybook/report/words"
)

// todo is what there is to do with a batch, each thing with a box to tick.
func (p *page) todo(j job) template.HTML {
	var out []template.HTML
	for _, l := range j.lines {
		out = append(out, say(`<span class="jb">%s</span>`, todoWords[l.What](l)))
	}
	return join(out...)
}

// box is a box to tick.
const box = template.HTML(`<span class="bx"></span>`)

// todoWords put a line of the week into words, by what it is about.
var todoWords = map[report.WeekWhat]func(report.WeekLine) template.HTML{
	report.ToCount: countDue, report.Late: lateDue, report.Short: shortDue, report.Fell: fellDue,
}

// countDue says what to count, and since when it stands.
func countDue(l report.WeekLine) template.HTML {
	what := "count"
	if l.Again {
		what = "count again"
	}
	return say("%s%s: %s old", box, what, words.Days(l.Value.Value))
}

// lateDue says how late a batch is, and how many of its crop were fit so late where
// three batches were looked at (rule "Leeway").
func lateDue(l report.WeekLine) template.HTML {
	out := say("%sset out: %s late", box, words.Days(l.Value.Value))
	if l.Leeway == nil {
		return out
	}
	return say("%s <i>%s fit, %s</i>", out, words.ShareText(l.Leeway.Rate), words.Batches(l.Leeway.Batches))
}

// shortDue says how many plants a batch will likely lack, what can still be done, and
// how many batches that rests on (rule "Short").
func shortDue(l report.WeekLine) template.HTML {
	rests := say("<i>(%s)</i>", restsWords(l.Rests))
	short := say("%s of %s short", words.Whole(words.RoundPlants(l.Value.Value)), words.Whole(l.Batch.Wanted.Value))
	if l.TooFewSown {
		short = "sown too few, " + short
	}
	switch {
	case l.TooLate() && !l.Batch.Planned.Known():
		return say("%s%s, no planned day is written %s", box, short, rests)
	case l.TooLate():
		return say("%s%s, too late to sow again %s", box, short, rests)
	}
	return say(`%s<span class="do">sow again by %s</span>: %s %s`, box, words.DayMonth(l.Date), short, rests)
}

// restOf is what the batches have in common that a forecast rests on.
var restOf = map[string]string{"crop": "of the crop", "book": "of all crops", "crop and cells": "of the crop in such cells",
	"crop, variety, cells and kind": "of its variety and tray"}

// restsWords are the batches that a forecast rests on.
func restsWords(r report.Rests) template.HTML {
	return say("%s %s", words.Batches(len(r.Batches)), restOf[r.Of])
}

// fellDue says by how much a batch fell short, when it left, and in which tray it stood:
// these rows stand under no tray code, and on a phone a code by itself says nothing.
func fellDue(l report.WeekLine) template.HTML {
	return say("%s of %s lacking, gone %s <i>in %s</i>", words.Whole(words.RoundPlants(l.Value.Value)), words.Whole(l.Batch.Wanted.Value), words.DayMonth(l.Date), name(l.Batch.Tray))
}

// workNotes say under the list how its figures come about, each only where one stands in
// it.
func workNotes(t *rows, jobs []job) {
	has := func(is func(report.WeekLine) bool) bool {
		return slices.ContainsFunc(jobs, func(j job) bool { return slices.ContainsFunc(j.lines, is) })
	}
	if has(func(l report.WeekLine) bool { return l.What == report.ToCount && !l.Again }) {
		t.note("Count: not counted yet, and older than the crop takes to come up.")
	}
	if has(func(l report.WeekLine) bool { return l.Again }) {
		t.note("Count again: the last count came before all was up.")
	}
	if has(func(l report.WeekLine) bool { return l.Leeway != nil }) {
		t.note("Fit: so many of the same crop in the same kind of tray still were, when looked at so late.")
	}
	if has(func(l report.WeekLine) bool { return l.What == report.Short && !l.TooFewSown }) {
		t.note("Short: plants wanted, less those to expect from the count by what other batches kept of theirs.")
	}
	if has(func(l report.WeekLine) bool { return l.TooFewSown }) {
		t.note("Sown too few: no count to go by yet; by batches sown alike, fewer than 1 in 10 such sowings would be enough.")
	}
}
