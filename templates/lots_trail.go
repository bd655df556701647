package templates

import (
	"html/template"

	"traybook/records"
	"traybook/report"
)

// trailTable is where each lot came from and where it went, by lot.
func (p *place) trailTable() *table {
	t := p.table("trail", "Every lot, from packet to batches", "", plain("Lot", "Supplier and number", "Bought", "Organic", "Treated",
		"Seed in hand", "Batches"))
	for _, l := range p.r.Lots {
		treated := cell{Value: markup(yesNo(l.Lot.Treated))}
		if l.Lot.Treated.Or(false) {
			treated.Class = "bad"
		}
		bought := cell{Value: markup(isoDate(l.Lot.Bought)), Class: "fix"}
		if l.Lot.Tested.Known() {
			bought.Sub = say("tested %s", isoDate(l.Lot.Tested))
		}
		r := t.add(cell{Value: markup(name(l.Lot.Code)), Sub: say("%s %s", name(l.Lot.Crop), name(l.Lot.Variety)), Class: "fix"}, with(name(orDash(l.Lot.Supplier)), name(l.Lot.LotNumber)),
			bought, yesNo(l.Lot.Organic), treated, seedInHand(l), cell{Value: p.lotSown(l), Class: "words long"})
		r.ID = p.lotID(l)
	}
	t.note("As written in the book’s own lots.csv and sowings.csv. Seed in hand: seeds bought less seeds sown, by the records.")
	return t
}

// seedInHand is the seeds bought less those sown.
func seedInHand(l report.LotFigure) cell {
	if !l.SeedsBought.Known || !l.SeedsSown.Known {
		return with(noneYet, "not known")
	}
	sub := "of " + whole(l.SeedsBought.Value)
	if l.SeedsGuessed {
		sub = "of about " + whole(l.SeedsBought.Value)
	}
	left := l.SeedsBought.Value - l.SeedsSown.Value
	if left < 0 {
		return with("0", say("%s more sown than bought", whole(-left)))
	}
	return with(whole(left), sub)
}

func (p *place) lotSown(l report.LotFigure) template.HTML {
	if len(l.Batches) == 0 {
		return "none yet"
	}
	return p.someBatches(l.Batches)
}

// withoutLot lists the batches from seed of which no lot is written.
func (p *place) withoutLot() template.HTML {
	var codes []string
	for _, b := range p.r.Batches {
		if b.FromSeed && b.Lot == "" {
			codes = append(codes, b.Code)
		}
	}
	if len(codes) == 0 {
		return "Every batch from seed names its lot."
	}
	return say("%s from seed without a lot: %s.", batchCount(len(codes)), p.someBatches(codes))
}

// treatedWords name the lots that are marked as treated, and those that are both
// treated and organic, which cannot be.
func (p *place) treatedWords() template.HTML {
	var treated, both, blank []template.HTML
	for _, l := range p.r.Lots {
		switch {
		case l.Lot.Treated.Or(false) && l.Lot.Organic.Or(false):
			both = append(both, p.lotLink(l))
		case l.Lot.Treated.Or(false):
			treated = append(treated, p.lotLink(l))
		case l.Lot.Treated == records.Maybe[bool]{}:
			blank = append(blank, p.lotLink(l))
		}
	}
	out := template.HTML("No lot is marked as treated.")
	if len(treated) > 0 {
		out = say("Marked as treated: %s.", list(treated))
	}
	if len(both) > 0 {
		out = join(out, say("Marked as both organic and treated, which asks for a second look at the packet: %s.", list(both)))
	}
	if n := len(blank); n > 0 {
		out = join(out, say("Of %s it is not written whether they are treated.", plural(n, "lot", "lots")))
	}
	return out
}
