package templates

import (
	"cmp"
	"fmt"
	"html/template"
	"slices"

	"traybook/report/germination"
	"traybook/report/rate"
	"traybook/report/words"
)

// lotsPage is every seed lot: what came up of it, and its trail.
type lotsPage struct {
	Title   string
	Answer  template.HTML
	Below   []template.HTML
	Now     *table
	Chart   *figure
	Earlier more
	Trail   *table
	Without template.HTML // batches without a lot
	Treated template.HTML
}

// hasLots reports whether the book has a lot.
func hasLots(s *site) bool { return len(s.r.Germination.Lots) > 0 }

// lotsView puts the lots of the season reviewed first.
func lotsView(p *page) any {
	v := lotsPage{Title: p.spec.title, Answer: p.lotsAnswer(), Trail: p.trailTable(), Without: p.withoutLot(), Treated: p.treatedWords()}
	now, earlier := p.lotsNow()
	for _, l := range p.byGap(now) {
		if l.Below.Or(false) {
			v.Below = append(v.Below, p.belowWords(l))
		}
	}
	v.Now = p.lotTable("lots", say("Lots sown in season %s; the furthest below its packet first", fmt.Sprint(p.r.Season)), now)
	v.Chart = p.figure("lots", "Lots against their packets", "Lots of all seasons, the furthest below its packet first.", nil)
	v.Earlier = more{Summary: "Lots of earlier seasons, and lots not sown yet", Tables: []*table{p.lotTable("lots-earlier", "Other lots", earlier)}}
	return v
}

// lotsNow parts the lots with a batch in the season reviewed from the others.
func (p *page) lotsNow() (now, earlier []germination.Lot) {
	sown := map[string]bool{}
	for _, b := range p.r.Records {
		sown[b.Lot] = sown[b.Lot] || b.Season == p.r.Season
	}
	for _, l := range p.r.Germination.Lots {
		if sown[l.Code] {
			now = append(now, l)
		} else {
			earlier = append(earlier, l)
		}
	}
	return now, earlier
}

// byGap puts the lots furthest below their packets first, and those of which the gap
// says little last.
func (p *page) byGap(lots []germination.Lot) []germination.Lot {
	gap := func(l germination.Lot) float64 { return l.Gap().Or(-2) }
	out := slices.Clone(lots)
	slices.SortStableFunc(out, func(a, b germination.Lot) int { return cmp.Compare(gap(b), gap(a)) })
	return out
}

// lotsAnswer says how many lots lie below their packets.
func (p *page) lotsAnswer() template.HTML {
	now, _ := p.lotsNow()
	judged, below := 0, 0
	for _, l := range now {
		if l.Below.Known {
			judged++
		}
		if l.Below.Or(false) {
			below++
		}
	}
	out := say("%s sown in season %s.", words.Plural(len(now), "lot", "lots"), fmt.Sprint(p.r.Season))
	switch {
	case judged == 0:
		return join(out, "None can be set against its packet yet: that takes the packet’s figure (germ_label in lots.csv) and batches that were counted.")
	case below == 0:
		return join(out, say("Of %s with a packet’s figure and counts enough, none came up worse than a mix allows.", words.Whole(judged)))
	}
	return join(out, say("Of %s with a packet’s figure and counts enough, %s came up worse than a mix allows.", words.Whole(judged), words.Whole(below)))
}

// belowWords is a flagged lot as a sentence.
func (p *page) belowWords(l germination.Lot) template.HTML {
	out := say("<strong>%s</strong>, %s %s: %s of 100 seeds came up %s, %s. The packet says %s, and up to %s lower is usual in a mix: even the high end lies below that.", p.lotLink(l), name(l.Crop), name(l.Variety),
		words.PercentNumber(l.SeedRate.Value), words.Interval(l.SeedLow, l.SeedHigh, words.PercentNumber), words.Batches(l.Counted), words.PercentNumber(l.Label.Value), pointsWords(l.Allowance))
	if l.Minimum.Known && l.SeedHigh.Value < l.Minimum.Value {
		out = join(out, say("It lies below the legal minimum of %s too: worth a test by a laboratory, and a call to the supplier.", words.Percent(l.Minimum.Value)))
	}
	return out
}

// pointsWords is an allowance in percentage points.
func pointsWords(allowance rate.Num) string {
	return words.Of(allowance, func(v float64) string {
		return words.Fixed(100*v, 0) + words.NBSP + words.Unit(100*v, "point", "points")
	})
}

// lotLink leads to the trail of a lot.
func (p *page) lotLink(l germination.Lot) template.HTML {
	return p.to("#"+p.lotID(l), name(l.Code))
}

// lotID is the anchor of a lot's trail: its place in the list of lots.
func (p *page) lotID(l germination.Lot) string {
	var ids slugs
	for _, other := range p.r.Germination.Lots {
		id := "lot-" + ids.unique(other.Code, "x")
		if other.Code == l.Code {
			return id
		}
	}
	return ""
}

// lotTable sets lots against their packets, the furthest below first.
func (p *page) lotTable(id string, caption template.HTML, lots []germination.Lot) *table {
	t := p.table(id, caption, "lots", plain("Lot", "Crop and variety"), nums("Came up", "Packet", "Allowance"), plain("Verdict"), nums("Legal minimum", "Batches"))
	for _, l := range p.byGap(lots) {
		t.add(cell{Value: p.lotLink(l), Class: "fix"}, with(name(l.Crop), name(l.Variety)), lotRate(l), words.Of(l.Label, words.Percent), pointsWords(l.Allowance), lotVerdict(l), words.Of(l.Minimum, words.Percent), lotBatches(l))
	}
	if !t.Empty() {
		t.note("Came up: of one seed, lost later or not. Where cells hold several seeds it is worked out from the cells, and a cell that failed as a whole makes each of its seeds look bad: set such a lot against the crop’s others, not against the packet.")
		t.note("Emergence in a mix is not a laboratory test. Allowance: how far below the packet the crop’s other lots usually come up here; 10 points where there are fewer than 3 of them (common practice, no source).")
		t.note("Legal minimum: of the kind in the United States (7 CFR 201.31), for the germination of seed on sale, not for emergence.")
	}
	return t
}

// lotRate is what came up of one seed; where cells held different numbers, of a cell.
func lotRate(l germination.Lot) cell {
	switch {
	case l.SeedRate.Known:
		return rateCell(l.SeedRate, l.SeedLow, l.SeedHigh)
	case l.Share.Known:
		c := shareCell(l.Rate)
		c.Sub = say("%s of cells", c.Sub)
		return c
	}
	return cell{Value: words.None}
}

// lotBatches is how many of its batches were counted.
func lotBatches(l germination.Lot) cell {
	if l.Counted < len(l.Sown) {
		return with(words.Whole(l.Counted), "of "+words.Whole(len(l.Sown)))
	}
	return cell{Value: markup(words.Whole(l.Counted))}
}

// lotVerdict says whether a lot lies below its packet, or why it is not compared: the
// first reason that holds.
func lotVerdict(l germination.Lot) cell {
	switch {
	case l.Below.Or(false):
		return cell{Value: "below its packet", Class: "bad"}
	case l.Below.Known:
		return cell{Value: "within what a mix allows"}
	case l.Cluster:
		return cell{Value: "not compared: a sown seed is a ball of several"}
	case len(l.Sown) == 0:
		return cell{Value: "not sown"}
	case l.Counted == 0:
		return cell{Value: "not counted"}
	case !l.Label.Known:
		return cell{Value: "no figure on the packet"}
	case !l.SeedRate.Known:
		return cell{Value: "different seeds a cell: no rate of one seed"}
	}
	return cell{Value: words.TooFew}
}
