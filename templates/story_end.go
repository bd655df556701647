package templates

import (
	"html/template"
	"strings"

	"traybook/records"
	"traybook/report"
)

// lookWords tells the looks at a batch's quality.
func lookWords(b *report.Batch) template.HTML {
	var lines []template.HTML
	for _, s := range b.Looks {
		lines = append(lines, lookLine(b, s))
	}
	return lineList(lines)
}

func lookLine(b *report.Batch, s records.Score) template.HTML {
	out := say("%s", longDate(s.Date))
	if b.Planned.Known() {
		out = say("%s, %s", out, lateWords(int(s.Date-b.Planned)))
	}
	switch {
	case s.Looked.Known && s.Usable.Known:
		out = say("%s: %s fit of %s looked at", out, whole(s.Usable.Value), whole(s.Looked.Value))
	case s.Score.Known:
		out = say("%s: marked %s overall", out, whole(s.Score.Value))
	default:
		out = say("%s: %s", out, scoreList(s.S))
	}
	return join(say("%s.", out), noteWords(s.Note))
}

func lateWords(d int) string {
	switch {
	case d < 0:
		return days(float64(-d)) + " before the planned day"
	case d == 0:
		return "on the planned day"
	}
	return days(float64(d)) + " past the planned day"
}

// scoreList writes the plants at each score: 2 at 1, 7 at 3.
func scoreList(s [5]records.Maybe[int]) string {
	var parts []string
	for i, n := range s {
		if n.Known && n.Value > 0 {
			parts = append(parts, whole(n.Value)+" at "+whole(i+1))
		}
	}
	return strings.Join(parts, ", ")
}

// outWords tells what left the house, from sowings.csv or from out.csv.
func (p *place) outWords(b *report.Batch) template.HTML {
	var lines []template.HTML
	if b.SetOut.Known() || b.PlantsOut.Known {
		lines = append(lines, setOutLine(b))
	}
	for _, o := range p.outs[b.Code] {
		lines = append(lines, p.outLine(o))
	}
	return lineList(lines)
}

func setOutLine(b *report.Batch) template.HTML {
	out := say("set out on %s", longDate(b.SetOut))
	if b.PlantsOut.Known {
		out = say("%s: %s", out, plural(b.PlantsOut.Value, "plant", "plants"))
	}
	if b.Surplus.Known {
		out = say("%s; %s left over", out, whole(b.Surplus.Value))
	}
	return say("%s.", template.HTML(capital(string(out))))
}

func (p *place) outLine(o records.Out) template.HTML {
	out := say("%s: %s, %s", longDate(o.Date), plural(o.Plants, "plant", "plants"), o.To)
	if o.Money.Known {
		out = say("%s, for %s", out, p.money.sum(o.Money.Value))
	}
	if o.Last {
		out = say("%s; the batch is cleared", out)
	}
	return join(say("%s.", out), noteWords(o.Note))
}

func endWords(b *report.Batch) template.HTML {
	stay := days(float64(b.End - b.Sown))
	switch b.EndHow {
	case report.Written:
		return say("%s, after %s.", longDate(b.End), stay)
	case report.Assumed:
		return say("No date written; taken to have ended on %s, after the crop’s usual stay of %s.", longDate(b.End), stay)
	}
	return say("Still open on the last date in the book, after %s.", stay)
}

func batchEmergence(b *report.Batch) template.HTML {
	switch e := b.Emergence(); {
	case e.Known && !b.Early:
		return say("%s: %s of %s looked at, by its last count.", percent(e.Value), whole(b.Emerged.Value), plural(b.Looked.Value, "cell", "cells"))
	case b.Early:
		return "Not told: its last count came too early to stand for the batch."
	case !b.FromSeed:
		return ""
	}
	return "Not known: no count."
}

// howUsable is how the usable plants of a batch are known, in words.
var howUsable = map[report.UsableHow]string{
	report.ByOut:     "known from what went out and was left over",
	report.ByCount:   "reckoned from its own count and look",
	report.AtLeast:   "at least: what is written so far",
	report.Estimated: "estimated from like batches, not its own records",
}

func usableWords(b *report.Batch) template.HTML {
	if !b.Usable.Known {
		return "Not known: neither plants out, nor a count and a look, nor like batches."
	}
	out := say("%s", number(b.Usable.Value))
	if b.CellsSown.Known && b.CellsSown.Value > 0 {
		out = say("%s of %s sown (%s)", out, plural(b.CellsSown.Value, "cell", "cells"), percent(b.Usable.Value/float64(b.CellsSown.Value)))
	}
	return say("%s, %s.", out, howUsable[b.UsableHow])
}

// batchCost tells a batch's cost by part.
func (p *place) batchCost(b *report.Batch) template.HTML {
	if !b.Cost.Known {
		return ""
	}
	var parts []template.HTML
	for _, part := range p.partsOf(b.Parts) {
		if abs(part.Money) >= 0.005 {
			parts = append(parts, say("%s %s", part.Words, p.money.sumNumber(part.Money)))
		}
	}
	if abs(b.Parts.Carried) >= 0.005 {
		parts = append(parts, say("taken over or handed on %s", p.money.sumNumber(b.Parts.Carried)))
	}
	out := say("%s", p.money.sum(b.Cost.Value))
	if len(parts) > 0 {
		out = say("%s: %s", out, list(parts))
	}
	if b.PerTransplant.Known {
		return say("%s. A transplant: %s.", out, p.money.each(b.PerTransplant.Value))
	}
	return say("%s.", out)
}
