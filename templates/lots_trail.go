package templates

import (
	"html/template"

	"traybook/records"
	"traybook/report/germination"
	"traybook/report/words"
)

// trailTable is where each lot came from and where it went, by lot.
func (p *page) trailTable() *table {
	t := p.table("trail", "Every lot, from packet to batches", "", plain("Lot", "Supplier and number", "Bought", "Organic", "Treated",
		"Seed in hand", "Batches"))
	for _, l := range p.r.Germination.Lots {
		treated := cell{Value: markup(yesNo(l.Treated))}
		if l.Treated.Or(false) {
			treated.Class = "bad"
		}
		bought := cell{Value: markup(words.ISODate(l.Bought)), Class: "fix"}
		if l.Tested.Known() {
			bought.Sub = say("tested %s", words.ISODate(l.Tested))
		}
		r := t.add(cell{Value: markup(name(l.Code)), Sub: say("%s %s", name(l.Crop), name(l.Variety)), Class: "fix"}, with(name(orDash(l.Supplier)), name(l.LotNumber)),
			bought, yesNo(l.Organic), treated, seedInHand(l), cell{Value: p.lotSown(l), Class: "words long"})
		r.ID = p.lotID(l)
	}
	t.note("As written in the book’s own lots.csv and sowings.csv. Seed in hand: seeds bought less seeds sown, by the records.")
	return t
}

// seedInHand is the seeds bought less those sown.
func seedInHand(l germination.Lot) cell {
	if !l.SeedsBought.Known || !l.SeedsSown.Known {
		return with(words.None, "not known")
	}
	sub := "of " + words.Whole(l.SeedsBought.Value)
	if l.SeedsGuessed {
		sub = "of about " + words.Whole(l.SeedsBought.Value)
	}
	left := l.SeedsBought.Value - l.SeedsSown.Value
	if left < 0 {
		return with("0", say("%s more sown than bought", words.Whole(-left)))
	}
	return with(words.Whole(left), sub)
}

// lotSown links to the batches sown from a lot.
func (p *page) lotSown(l germination.Lot) template.HTML {
	if len(l.Sown) == 0 {
		return "none yet"
	}
	return p.someBatches(l.Sown)
}

// withoutLot lists the batches from seed of which no lot is written.
func (p *page) withoutLot() template.HTML {
	var codes []string
	for _, b := range p.r.Records {
		if b.FromSeed && b.Lot == "" {
			codes = append(codes, b.Code)
		}
	}
	if len(codes) == 0 {
		return "Every batch from seed names its lot."
	}
	return say("%s from seed without a lot: %s.", words.Batches(len(codes)), p.someBatches(codes))
}

// treatedWords name the lots that are marked as treated, and those that are both
// treated and organic, which cannot be.
func (p *page) treatedWords() template.HTML {
	var treated, both, blank []template.HTML
	for _, l := range p.r.Germination.Lots {
		switch {
		case l.Treated.Or(false) && l.Organic.Or(false):
			both = append(both, p.lotLink(l))
		case l.Treated.Or(false):
			treated = append(treated, p.lotLink(l))
		case l.Treated == records.Maybe[bool]{}:
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
		out = join(out, say("Of %s it is not written whether they are treated.", words.Plural(n, "lot", "lots")))
	}
	return out
}
