package templates

import (
	"html/template"
	"strings"

	"traybook/records"
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/plants"
	"traybook/report/words"
)

// lookWords tells the looks at a batch's quality.
func lookWords(b *report.Record) template.HTML {
	var lines []template.HTML
	for _, s := range b.Looks {
		lines = append(lines, lookLine(b, *s))
	}
	return lineList(lines)
}

// lookLine is one look: day, how late, and how many were fit, in whichever way it was
// written.
func lookLine(b *report.Record, s records.Score) template.HTML {
	out := say("day %s", words.Whole(int(s.Date-b.Sown)))
	switch {
	case s.Looked.Known && s.Usable.Known:
		out = say("%s: %s of %s fit", out, words.Whole(s.Usable.Value), words.Whole(s.Looked.Value))
	case s.Score.Known:
		out = say("%s: marked %s overall", out, words.Whole(s.Score.Value))
	default:
		out = say("%s: %s", out, scoreList(s.S))
	}
	return join(out, noteWords(s.Note))
}

// scoreList writes the plants at each score: 2 at 1, 7 at 3.
func scoreList(s [5]records.Maybe[int32]) string {
	var parts []string
	for i, n := range s {
		if n.Known && n.Value > 0 {
			parts = append(parts, words.Whole(n.Value)+" at "+words.Whole(i+1))
		}
	}
	return strings.Join(parts, ", ")
}

// outWords tells what left the house, from sowings.csv or from out.csv.
func (p *page) outWords(b *report.Record) template.HTML {
	var lines []template.HTML
	if b.SetOut.Known() || b.PlantsOut.Known {
		lines = append(lines, setOutLine(b))
	}
	for _, o := range p.outs[b.Code] {
		lines = append(lines, p.outLine(o))
	}
	return lineList(lines)
}

// setOutLine is what sowings.csv tells of setting out.
func setOutLine(b *report.Record) template.HTML {
	out := say("set out on %s", words.LongDate(b.SetOut))
	if b.PlantsOut.Known {
		out = say("%s: %s", out, words.Plural(b.PlantsOut.Value, "plant", "plants"))
	}
	if b.Surplus.Known {
		out = say("%s; %s left over", out, words.Whole(b.Surplus.Value))
	}
	return out
}

// outLine is one row of out.csv.
func (p *page) outLine(o records.Out) template.HTML {
	out := say("%s: %s, %s", words.LongDate(o.Date), words.Plural(o.Plants, "plant", "plants"), o.To)
	if o.Money.Known {
		out = say("%s, for %s", out, p.money.Sum(o.Money.Value))
	}
	if o.Last {
		out = say("%s; the batch is cleared", out)
	}
	return join(out, noteWords(o.Note))
}

// endWords tells when a batch ended and how that is known (rule "End of a batch").
func endWords(b *report.Record) template.HTML {
	stay := words.Days(float64(b.End - b.Sown))
	switch b.EndHow {
	case batch.Written:
		return say("Out after %s%s.", stay, lateBy(b))
	case batch.Assumed:
		return say("No date written; taken to have ended on %s, after the crop’s usual stay of %s.", words.LongDate(b.End), stay)
	}
	return say("Still open on the last date in the book, after %s.", stay)
}

// howUsable is how the usable plants of a batch are known, in words.
var howUsable = map[plants.How]string{
	plants.ByOut:     "known from what went out and was left over",
	plants.ByCount:   "reckoned from its own count and look",
	plants.AtLeast:   "at least: what is written so far",
	plants.Estimated: "estimated from like batches, not its own records",
}

// usableHow says how the usable plants are known (rule "Usable plants").
func usableHow(b *report.Record) template.HTML {
	switch {
	case !b.Usable.Known:
		return "Not known: neither plants out, nor a count and a look, nor like batches."
	case b.UsableHow == plants.ByOut:
		return ""
	}
	return say("%s.", capital(howUsable[b.UsableHow]))
}

// batchCost tells a batch's cost by part.
func (p *page) batchCost(b *report.Record) template.HTML {
	if !b.Cost.Known {
		return ""
	}
	var parts []template.HTML
	for _, part := range p.partsOf(b.Parts) {
		if abs(part.Money) >= 0.005 {
			parts = append(parts, say("%s %s", part.Words, p.money.SumNumber(part.Money)))
		}
	}
	if abs(b.Parts.Carried) >= 0.005 {
		parts = append(parts, say("taken over or handed on %s", p.money.SumNumber(b.Parts.Carried)))
	}
	out := say("%s", p.money.Sum(b.Cost.Value))
	if len(parts) > 0 {
		out = say("%s: %s", out, list(parts))
	}
	if b.PerTransplant.Known {
		return say("%s. A transplant: %s.", out, p.money.Each(b.PerTransplant.Value))
	}
	return say("%s.", out)
}

// lateBy sets the end of a batch against its planned day.
func lateBy(b *report.Record) string {
	switch d := int(b.End - b.Planned); {
	case !b.Planned.Known():
		return ""
	case d < 0:
		return ", " + words.Whole(-d) + " before the planned day"
	case d == 0:
		return ", on the planned day"
	default:
		return ", " + words.Whole(d) + " past the planned day"
	}
}
