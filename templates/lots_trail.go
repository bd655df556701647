package templates

import (
	"cmp"
	"html/template"
	"slices"

	"traybook/report/germination"
	"traybook/report/words"
)

// trailID is the anchor of a lot's trail.
func (p *page) trailID(l germination.Lot) string { return "trail-" + p.lots[l.Code] }

// trailRows is where each lot of a season came from and where it went, by lot; those
// bought and not sown yet stand last. It is what an inspector asks for: from the packet to
// its batches, with nothing worked out but the seed in hand.
func (p *page) trailRows(lots, unsown []germination.Lot) *rows {
	t := p.rows("trail", "trail", "As written in the book’s own lots.csv and sowings.csv. In hand: seeds bought less seeds sown, over all seasons.", "",
		col{Width: "c-name2", Head: "Lot"}, col{Width: "c-from", Class: "tx", Head: "From"}, col{Width: "c-n3", Class: "n", Head: "Seeds in hand"}, col{Class: "tx", Head: "Sown in"})
	byCode := slices.Clone(lots)
	slices.SortFunc(byCode, func(a, b germination.Lot) int { return cmp.Compare(a.Code, b.Code) })
	for _, l := range byCode {
		p.addTrail(t, l)
	}
	if len(unsown) > 0 {
		t.under("Bought and not sown yet", "")
		for _, l := range unsown {
			p.addTrail(t, l)
		}
	}
	return t
}

// addTrail adds one lot. The link leads to its row among the verdicts, which a lot that
// was never sown does not have.
func (p *page) addTrail(t *rows, l germination.Lot) {
	code := batchCode(l.Code)
	if len(l.Sown) > 0 {
		code = p.to(p.lotAddress(p.season, p.lots[l.Code], l.Code), code)
	}
	t.add(p.id(p.trailID(l)), "", say(`%s <span class="cr">%s</span> %s`, code, name(l.Crop), name(l.Variety)), lotOrigin(l), seedInHand(l), p.lotSown(l))
}

// lotOrigin is who sold a lot, under what number, when, and what is marked on it. A blank
// is said of the supplier alone: a lot number, a day and a test are often not on the
// packet.
func lotOrigin(l germination.Lot) template.HTML {
	out := template.HTML("supplier not written")
	if l.Supplier != "" {
		out = markup(name(l.Supplier))
	}
	if l.LotNumber != "" {
		out = say("%s, %s", out, batchCode(l.LotNumber))
	}
	if l.Bought.Known() {
		out = say("%s, bought %s", out, words.ISODate(l.Bought))
	}
	if l.Tested.Known() {
		out = say("%s, tested %s", out, words.ISODate(l.Tested))
	}
	if l.Organic.Or(false) {
		out += ", organic"
	}
	if l.Treated.Or(false) {
		out += `, <span class="bad">treated</span>`
	}
	return out
}

// seedInHand is the seeds bought less those sown. "About" stands before seeds worked out
// from grams and what is usual for the crop. More sown than bought is a mistake of one of
// the logs, so both numbers stay.
func seedInHand(l germination.Lot) template.HTML {
	if !l.SeedsBought.Known || !l.SeedsSown.Known {
		return "not known"
	}
	about := ""
	if l.SeedsGuessed {
		about = "about "
	}
	of := say(`<span class="soft">of %s%s</span>`, about, words.Whole(l.SeedsBought.Value))
	left := l.SeedsBought.Value - l.SeedsSown.Value
	if left < 0 {
		return say(`0 %s, <span class="bad">%s more sown than bought</span>`, of, words.Whole(-left))
	}
	return say("%s %s", words.Whole(left), of)
}

// lotSown links to the batches sown from a lot.
func (p *page) lotSown(l germination.Lot) template.HTML {
	if len(l.Sown) == 0 {
		return "none yet"
	}
	return p.someBatches(l.Sown)
}

// withoutLot lists the batches of the page's season from seed of which no lot is written.
// Batches from plugs and cuttings have no seed of the farm's own to name.
func (p *page) withoutLot() template.HTML {
	var codes []string
	for _, b := range p.seasons[p.season] {
		if b.FromSeed && b.Lot == "" {
			codes = append(codes, b.Code)
		}
	}
	if len(codes) == 0 {
		return say("Every batch of %s from seed names its lot.", words.Year(p.season))
	}
	return say("%s of %s from seed without a lot: %s.", words.Batches(len(codes)), words.Year(p.season), p.someBatches(codes))
}

// manyBatches is how many batches a sentence names before it only counts the rest.
const manyBatches = 40

// someBatches links to batches, to the first of them where there are many.
func (p *page) someBatches(codes []string) template.HTML {
	if len(codes) <= manyBatches {
		return p.batches(codes)
	}
	return say("%s and %s more", p.batches(codes[:manyBatches]), words.Whole(len(codes)-manyBatches))
}
