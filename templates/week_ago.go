package templates

import (
	"html/template"

	"traybook/report"
	"traybook/report/plants"
	"traybook/report/words"
)

// mostAgo is how many batches of a year ago the page lists; the data file has all.
const mostAgo = 12

// yearAgoRows is what was sown a year ago in the days ahead, and what came of it.
func (p *page) yearAgoRows() *rows {
	lines := p.r.Lines(report.Earlier)
	t := p.rows("ago", "wk ago", "", "", col{Width: "w1", Head: "Batch"}, col{Width: "w2", Class: "what", Head: "What"}, col{Width: "w4", Class: "n", Head: "Trays"},
		col{Width: "w4", Head: "Sown"}, col{Class: "job", Head: "What came of it"})
	t.Notes = nil // the page says once which rows were left out
	for _, l := range lines[:min(len(lines), mostAgo)] {
		b := l.Batch
		t.Caption = say("Sown in the 7 days from this day of %s.", words.Year(l.Date.Year()))
		t.add("", "", p.batch(b.Code), say("%s %s", name(b.Crop), name(b.Variety)), say("%s %s", words.Number(b.Trays), name(b.Tray)), dayName(b.Sown), cameWords(b))
	}
	if more := len(lines) - mostAgo; more > 0 {
		t.note(say("And %s more in week.csv.", words.Batches(more)))
	}
	return t
}

// cameWords is what came of a batch: what came up, the plants it gave, those wanted.
func cameWords(b *report.Record) template.HTML {
	out := template.HTML("not counted")
	if up := b.Emergence(); up.Known {
		out = say("%s came up", words.Percent(up.Value))
	}
	out = say("%s, %s", out, plantsWords(b))
	if b.Wanted.Known {
		out = say("%s, %s wanted", out, words.Whole(b.Wanted.Value))
	}
	return out
}

// plantsWords are the usable plants of a batch, and how far they are known.
func plantsWords(b *report.Record) template.HTML {
	n := words.Plural(words.RoundPlants(b.Usable.Value), "plant", "plants")
	switch b.UsableHow {
	case "":
		return "plants not known"
	case plants.AtLeast:
		return say("at least %s", n)
	case plants.Estimated:
		return say("about %s", n)
	}
	return markup(n)
}
