package templates

import (
	"cmp"
	"fmt"
	"html/template"
	"slices"

	"traybook/report"
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

func hasLots(s *site) bool { return len(s.r.Lots) > 0 }

func lotsView(p *place) any {
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
func (p *place) lotsNow() (now, earlier []report.LotFigure) {
	sown := map[string]bool{}
	for _, b := range p.r.Batches {
		sown[b.Lot] = sown[b.Lot] || b.Season == p.r.Season
	}
	for _, l := range p.r.Lots {
		if sown[l.Lot.Code] {
			now = append(now, l)
		} else {
			earlier = append(earlier, l)
		}
	}
	return now, earlier
}

// byGap puts the lots furthest below their packets first, and those of which the gap
// says little last.
func (p *place) byGap(lots []report.LotFigure) []report.LotFigure {
	gap := func(l report.LotFigure) float64 { return l.Gap().Or(-2) }
	out := slices.Clone(lots)
	slices.SortStableFunc(out, func(a, b report.LotFigure) int { return cmp.Compare(gap(b), gap(a)) })
	return out
}

// lotsAnswer says how many lots lie below their packets.
func (p *place) lotsAnswer() template.HTML {
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
	out := say("%s sown in season %s.", plural(len(now), "lot", "lots"), fmt.Sprint(p.r.Season))
	switch {
	case judged == 0:
		return join(out, "None can be set against its packet yet: that takes the packet’s figure (germ_label in lots.csv) and batches that were counted.")
	case below == 0:
		return join(out, say("Of %s with a packet’s figure and counts enough, none came up worse than a mix allows.", whole(judged)))
	}
	return join(out, say("Of %s with a packet’s figure and counts enough, %s came up worse than a mix allows.", whole(judged), whole(below)))
}

// belowWords is a flagged lot as a sentence.
func (p *place) belowWords(l report.LotFigure) template.HTML {
	out := say("<strong>%s</strong>, %s %s: %s of 100 seeds came up %s, %s. The packet says %s, and up to %s lower is usual in a mix: even the high end lies below that.", p.lotLink(l), name(l.Lot.Crop), name(l.Lot.Variety),
		percentNumber(l.SeedRate.Value), interval(l.SeedLow, l.SeedHigh, percentNumber), batchCount(l.Counted), percentNumber(l.Label.Value), pointsWords(l.Allowance))
	if l.Minimum.Known && l.SeedHigh.Value < l.Minimum.Value {
		out = join(out, say("It lies below the legal minimum of %s too: worth a test by a laboratory, and a call to the supplier.", percent(l.Minimum.Value)))
	}
	return out
}

func pointsWords(allowance report.Num) string {
	return of(allowance, func(v float64) string { return fixed(100*v, 0) + nbsp + unit(100*v, "point", "points") })
}

func (p *place) lotLink(l report.LotFigure) template.HTML {
	return p.to("#"+p.lotID(l), name(l.Lot.Code))
}

// lotID is the anchor of a lot's trail: its place in the list of lots.
func (p *place) lotID(l report.LotFigure) string {
	var ids slugs
	for _, other := range p.r.Lots {
		id := "lot-" + ids.unique(other.Lot.Code, "x")
		if other.Lot.Code == l.Lot.Code {
			return id
		}
	}
	return ""
}

func (p *place) lotTable(id string, caption template.HTML, lots []report.LotFigure) *table {
	t := p.table(id, caption, "lots", plain("Lot", "Crop and variety"), nums("Came up", "Packet", "Allowance"), plain("Verdict"), nums("Legal minimum", "Batches"))
	for _, l := range p.byGap(lots) {
		t.add(cell{Value: p.lotLink(l), Class: "fix"}, with(name(l.Lot.Crop), name(l.Lot.Variety)), lotRate(l), of(l.Label, percent), pointsWords(l.Allowance), lotVerdict(l), of(l.Minimum, percent), lotBatches(l))
	}
	if !t.Empty() {
		t.note("Came up: of one seed, lost later or not. Where cells hold several seeds it is worked out from the cells, and a cell that failed as a whole makes each of its seeds look bad: set such a lot against the crop’s others, not against the packet.")
		t.note("Emergence in a mix is not a laboratory test. Allowance: how far below the packet the crop’s other lots usually come up here; 10 points where there are fewer than 3 of them (common practice, no source).")
		t.note("Legal minimum: of the kind in the United States (7 CFR 201.31), for the germination of seed on sale, not for emergence.")
	}
	return t
}

// lotRate is what came up of one seed; where cells held different numbers, of a cell.
func lotRate(l report.LotFigure) cell {
	switch {
	case l.SeedRate.Known:
		return rateCell(l.SeedRate, l.SeedLow, l.SeedHigh)
	case l.Share.Known:
		c := shareCell(l.Rate)
		c.Sub = say("%s of cells", c.Sub)
		return c
	}
	return cell{Value: noneYet}
}

// lotBatches is how many of its batches were counted.
func lotBatches(l report.LotFigure) cell {
	if l.Counted < len(l.Batches) {
		return with(whole(l.Counted), "of "+whole(len(l.Batches)))
	}
	return cell{Value: markup(whole(l.Counted))}
}

func lotVerdict(l report.LotFigure) cell {
	switch {
	case l.Below.Or(false):
		return cell{Value: "below its packet", Class: "bad"}
	case l.Below.Known:
		return cell{Value: "within what a mix allows"}
	case l.Cluster:
		return cell{Value: "not compared: a sown seed is a ball of several"}
	case len(l.Batches) == 0:
		return cell{Value: "not sown"}
	case l.Counted == 0:
		return cell{Value: "not counted"}
	case !l.Label.Known:
		return cell{Value: "no figure on the packet"}
	case !l.SeedRate.Known:
		return cell{Value: "different seeds a cell: no rate of one seed"}
	}
	return cell{Value: tooFew}
}
