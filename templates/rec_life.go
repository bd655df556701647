package templates

import (
	"html/template"

	"traybook/report"
	"traybook/report/words"
	"traybook/templates/draw"
)

// lifeOf is a batch's life as it is drawn.
func lifeOf(b *report.Record) draw.Life {
	l := draw.Life{Kind: draw.KindOf(b.Kind), End: min(float64(b.End-b.Sown), longestDrawn), Ended: b.Ended(), Planned: -1}
	if b.ChamberUntil.Known() {
		l.Chamber = float64(b.ChamberUntil - b.Sown)
	}
	if b.Planned.Known() {
		l.Planned = min(float64(b.Planned-b.Sown), longestDrawn)
	}
	for _, up := range b.UpBy() {
		l.Counts = append(l.Counts, draw.Up{Day: float64(up.Date - b.Sown), Share: up.Share})
	}
	for _, d := range b.LookDays() {
		look := draw.Look{Day: float64(d.Date - b.Sown), Fit: d.Fit / d.Looked}
		if d.Scored {
			for i, n := range d.Scores {
				look.Scores[i] = n / d.Looked
			}
		} else {
			look.Scores[1], look.Scores[3] = 1-look.Fit, look.Fit
		}
		l.Looks = append(l.Looks, look)
	}
	return l
}

// batchFigures are a batch's three figures beside its life.
func (p *page) batchFigures(b *report.Record) []template.HTML {
	var out []template.HTML
	if e := b.Emergence(); e.Known && !b.Early {
		out = append(out, say("<b>%s</b> up", words.Percent(e.Value)))
	}
	if b.Usable.Known {
		how := "usable"
		if !b.Measured() {
			how += ", " + string(b.UsableHow)
		}
		of := ""
		if b.CellsSown.Known {
			of = " of " + words.Whole(b.CellsSown.Value)
		}
		out = append(out, say("<b>%s</b>%s %s", words.Whole(words.RoundPlants(b.Usable.Value)), of, how))
	}
	if b.PerTransplant.Known {
		out = append(out, say("<b>%s</b> %s each", p.money.EachNumber(b.PerTransplant.Value), p.money.Code()))
	}
	return out
}

// lifeKey says how to read a life.
func (p *page) lifeKey() template.HTML {
	return say(`How to read a line: days since sowing to the right. Height of the field: share of cells up, full height is all of them. Columns: a look, shades for scores %s, the bar across it is where “fit to set out” begins. Tall upright: the planned day. Last upright: out. Black below: days in the chamber.`,
		template.HTML(`<span class="sw q1"></span>1 <span class="sw q2"></span>2 <span class="sw q3"></span>3 <span class="sw q4"></span>4 <span class="sw q5"></span>5`))
}
