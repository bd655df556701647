package templates

import (
	"html/template"

	"traybook/report"
	"traybook/report/words"
	"traybook/templates/draw"
)

// lifeOf is a batch's life as it is drawn, good until the next is asked for.
func (t *teller) lifeOf(b *report.Record) *draw.Life {
	l := &t.life
	*l = draw.Life{Kind: draw.KindOf(b.Kind), End: min(float64(b.End-b.Sown), longestDrawn), Ended: b.Ended(), Planned: -1,
		Counts: l.Counts[:0], Looks: l.Looks[:0]}
	if b.ChamberUntil.Known() {
		l.Chamber = float64(b.ChamberUntil - b.Sown)
	}
	if b.Planned.Known() {
		l.Planned = min(float64(b.Planned-b.Sown), longestDrawn)
	}
	for up := range b.UpBy() {
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

// writeFigures writes a batch's three figures beside its life.
func (t *teller) writeFigures(b *report.Record) {
	if e := b.Emergence(); e.Known && !b.Early {
		t.put("<span><b>")
		t.percent(e.Value)
		t.put("</b> up</span> ")
	}
	if b.Usable.Known {
		t.put("<span><b>")
		t.rounded(words.RoundPlants(b.Usable.Value))
		t.put("</b>")
		if b.CellsSown.Known {
			t.put(" of ")
			t.whole(b.CellsSown.Value)
		}
		t.put(" usable")
		if !b.Measured() {
			t.put(", ", string(b.UsableHow))
		}
		t.put("</span> ")
	}
	if b.PerTransplant.Known {
		t.put("<span><b>")
		t.amount(t.money.AppendEachNumber, b.PerTransplant.Value)
		t.put("</b> ")
		t.text(t.money.Code())
		t.put(" each</span> ")
	}
}

// lifeKey says how to read a life.
func (p *page) lifeKey() template.HTML {
	return say(`How to read a line: days since sowing to the right. Height of the field: share of cells up, full height is all of them. Columns: a look, shades for scores %s, the bar across it is where “fit to set out” begins. Tall upright: the planned day. Last upright: out. Black below: days in the chamber.`,
		template.HTML(`<span class="sw q1"></span>1 <span class="sw q2"></span>2 <span class="sw q3"></span>3 <span class="sw q4"></span>4 <span class="sw q5"></span>5`))
}
