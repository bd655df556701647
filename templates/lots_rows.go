package templates

import (
	"html/template"

	"traybook/report/germination"
	"traybook/report/rate"
	"traybook/report/words"
	"traybook/templates/draw"
)

// lotAnswers is the order in which lots are told, by answer; those not compared last.
var lotAnswers = []germination.Below{germination.BelowYes, germination.BelowUnsure, germination.BelowNo, ""}

// lotRows sets the lots against their packets: below first, then in doubt, within, and not
// compared. All seasons of a lot count, on whichever season's page it stands: a packet
// sown twice is one packet.
func (p *page) lotRows(lots []germination.Lot) *rows {
	lowest := 1.0
	for _, l := range lots {
		if l.Below != "" {
			lowest = min(lowest, l.SeedLow.Or(l.SeedRate.Value), l.Label.Value)
		}
	}
	axis := draw.Shares(p.id("gl"), lowest)
	t := p.rows("lots", "lots", say("Lots sown in %s, over all seasons in which they were sown: seeds that came up, lost later or not, with their range. Upright line: the packet’s figure; pale: what a mix takes off it. Hollow: fewer than %s.",
		words.Year(p.season), words.Batches(rate.FewBatches)), "lots",
		col{Width: "c-name2", Head: "Lot"}, col{Class: "st", Head: "Came up, %", Axis: axis.Head()}, col{Width: "c-n", Class: "n", Head: "Packet"},
		col{Width: "c-vd", Class: "vd", Head: "Verdict"}, col{Width: "c-n", Class: "n", Head: "Batches"})
	for _, below := range lotAnswers {
		if of := lotsBy(lots, below); len(of) > 0 {
			t.under("", "")
			for _, l := range of {
				t.add(p.id(p.lots[l.Code]), "", say(`%s <span class="cr">%s</span> %s`, p.to(p.lotAddress(p.season, p.trailID(l), l.Code), batchCode(l.Code)), name(l.Crop), name(l.Variety)),
					lotTold(l, axis), words.Of(l.Label, words.PercentNumber), lotVerdict(l), lotBatches(l))
			}
		}
	}
	t.note("What a mix takes: how far below their packets the crop’s other lots usually come up here and 5 points more, within 5 to 20; 10 where there are fewer than 3 of them (common practice, no source).")
	t.note(minimumNote(lots))
	return t
}

// minimumNote tells of the legal minimum, where the book asks for it.
func minimumNote(lots []germination.Lot) template.HTML {
	for _, l := range lots {
		if l.Minimum.Known {
			return "The legal minimum is that of the United States (7 CFR 201.31) for the germination of seed on sale, not for emergence."
		}
	}
	return ""
}

// lotTold is what came up of one seed with its drawing; where a cell held several seeds,
// what came up of a cell, which no packet speaks of.
func lotTold(l germination.Lot, axis draw.Axis) template.HTML {
	switch {
	case l.SeedRate.Known && l.Cluster:
		return toldShare(seedRate(l), axis, draw.Range(l.SeedLow, l.SeedHigh), draw.Dot(draw.Other, l.SeedRate, l.Few()))
	case l.SeedRate.Known:
		allowed := draw.Mark(draw.Bar(l.Label.Value-l.Allowance.Value, l.Label.Value, "lo"))
		marks := []draw.Mark{draw.Range(l.SeedLow, l.SeedHigh), draw.Packet(l.Label), draw.Dot(draw.Crop, l.SeedRate, l.Few())}
		if l.Label.Known && l.Allowance.Known {
			marks = append([]draw.Mark{allowed}, marks...)
		}
		return toldShare(seedRate(l), axis, marks...)
	case l.Share.Known:
		return told(words.Percent(l.Share.Value), "of cells", "")
	}
	return markup(words.None)
}

// seedRate is a lot's rate of one seed.
func seedRate(l germination.Lot) rate.Rate {
	return rate.Rate{Batches: l.Counted, Share: l.SeedRate, Low: l.SeedLow, High: l.SeedHigh}
}

// lotBatches is how many of its batches were counted.
func lotBatches(l germination.Lot) template.HTML {
	if l.Counted < len(l.Sown) {
		return say(`%s<span class="soft"> of %s</span>`, words.Whole(l.Counted), words.Whole(len(l.Sown)))
	}
	return markup(words.Whole(l.Counted))
}

// lotVerdict says whether a lot lies below its packet, or why it is not compared: the
// first reason that holds. Batches of one day share its weather, so however many there are
// they cannot tell the seed from the day; where there are few of them too, that is said.
func lotVerdict(l germination.Lot) template.HTML {
	switch {
	case belowLegal(l) && l.Below == germination.BelowYes:
		return `<span class="bad">below its packet and the legal minimum</span>`
	case l.Below == germination.BelowYes:
		return `<span class="bad">below its packet</span>`
	case l.Below == germination.BelowUnsure && l.Days == 1 && !l.Few():
		return "sown on one day only: cannot tell"
	case l.Below == germination.BelowUnsure:
		return "too few batches to tell"
	case l.Below != "":
		return "within what a mix allows"
	case l.Cluster:
		return "not compared: balls of several seeds"
	case len(l.Sown) == 0:
		return "not sown"
	case l.Counted == 0:
		return "not counted"
	case !l.SeedRate.Known:
		return "not compared: several seeds a cell"
	case !l.Label.Known:
		return "no figure on the packet"
	}
	return words.TooFew
}
