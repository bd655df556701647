package templates

import (
	"cmp"
	"html/template"
	"slices"

	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/rate"
	"traybook/report/words"
	"traybook/templates/draw"
)

// verdictOrder is the order in which varieties are told.
var verdictOrder = []rate.Verdict{rate.ClearlyLower, rate.ClearlyHigher, rate.LowerByLot, rate.HigherByLot, rate.NoDifference}

// verdictWord is a verdict in a grower's words, coloured where it is clear. It says what
// to do and no more than the figures allow: to question a variety is not to drop it.
func verdictWord(d germination.Difference) template.HTML {
	switch d.Verdict {
	case rate.ClearlyLower:
		return `<span class="bad">question it</span>`
	case rate.ClearlyHigher:
		return `<span class="good">keep it</span>`
	case rate.LowerByLot:
		return say("lower, by one lot: %s", name(d.LotWord()))
	case rate.HigherByLot:
		return say("higher, by one lot: %s", name(d.LotWord()))
	case rate.TooFew:
		return words.TooFew
	}
	return "no clear difference"
}

// verdictRows sets each variety against the other varieties of its crop. Those to act on
// stand first. The axis is as wide as the widest that can be judged; varieties of too few
// batches stand in a note by name.
func (p *page) verdictRows(season int) *rows {
	all := batch.Filter(p.r.Germination.Differences, func(d germination.Difference) bool { return d.Season == season && d.Difference.Known })
	largest := 0.05
	for _, d := range all {
		if d.Verdict != rate.TooFew {
			largest = max(largest, abs(d.Difference.Value), abs(d.Low.Or(0)), abs(d.High.Or(0)))
		}
	}
	axis := draw.Differences(p.id("gd"), largest, 100)
	t := p.rows("differences", "verd", say("In 100 cells so many more (+) or fewer (−) came up than of the crop’s other varieties: like with like, all seasons to %s. Batches of the variety / of the others.", words.Year(season)),
		"differences", col{Width: "c-name", Head: "Variety"}, col{Class: "st", Head: "In 100 cells", Axis: axis.Head()},
		col{Width: "c-vd", Class: "vd", Head: "What to do"}, col{Width: "c-n2", Class: "n", Head: "Batches"})
	for _, verdict := range verdictOrder {
		for _, d := range byDistance(all, verdict) {
			t.add(p.id(varietyID(d.Crop, d.Variety)), "", varietyName(d.Crop, d.Variety), differenceTold(d, axis), verdictWord(d), sides(d))
		}
	}
	few := byDistance(all, rate.TooFew)
	if len(few) > 0 {
		t.note(say("For %s there are too few batches on either side to judge: %s.", words.Plural(len(few), "more variety", "more varieties"), fewVarieties(few)))
	}
	return t
}

// byDistance are the varieties of one verdict, the farthest from the others first.
func byDistance(all []germination.Difference, verdict rate.Verdict) []germination.Difference {
	out := batch.Filter(all, func(d germination.Difference) bool { return d.Verdict == verdict })
	slices.SortStableFunc(out, func(a, b germination.Difference) int {
		return cmp.Compare(abs(b.Difference.Value), abs(a.Difference.Value))
	})
	return out
}

// fewVarieties names varieties that cannot be judged.
func fewVarieties(few []germination.Difference) template.HTML {
	names := make([]template.HTML, len(few))
	for i, d := range few {
		names[i] = say("%s %s", name(d.Crop), name(d.Variety))
	}
	slices.Sort(names)
	return listSome(names, mostInList)
}

// varietyName is a crop and its variety.
func varietyName(crop, variety string) template.HTML {
	return say(`<span class="cr">%s</span> %s`, name(crop), name(variety))
}

// differenceTold is a difference in cells of a hundred with its range and drawing.
func differenceTold(d germination.Difference, axis draw.Axis) template.HTML {
	per := func(v float64) string { return words.Signed(100*v, 0) }
	return told(per(d.Difference.Value), rangeText(d.Low, d.High, per), axis.Row(draw.Range(d.Low, d.High), draw.Dot(draw.Crop, d.Difference, false)))
}

// sides is how many batches stand on either side.
func sides(d germination.Difference) template.HTML {
	return say(`%s<span class="soft"> / %s</span>`, words.Whole(d.Batches), words.Whole(d.OtherBatches))
}

// groupRows is what came up of each crop and, indented, of its varieties by tray, as
// cropTable sets them out. Only a crop has a tick of the season before: its varieties and
// trays often were others then.
func (p *page) groupRows(season int) *rows {
	var crops, groups []groupRate
	counted := p.emergenceOf(season)
	ofCrop := map[string]int{}
	for _, e := range counted {
		ofCrop[e.Crop]++
	}
	before := map[string]rate.Num{}
	for _, e := range picked(p.r.Germination.Crops, func(e *germination.Emergence) bool { return e.Season == season && e.Share.Known }) {
		before[e.Crop] = p.cropBefore(*e)
		crops = append(crops, groupRate{&e.Group, &e.Rate, before[e.Crop], func(w *inPieces) { w.countedOf(e.N, e.Batches, e.Batches) }})
	}
	for _, e := range counted {
		g := groupRate{&e.Group, &e.Rate, rate.Num{}, func(w *inPieces) { w.countedOf(e.N, e.Batches, e.Batches+e.LeftOut) }}
		if ofCrop[e.Crop] == 1 { // it stands for its crop
			g.before = before[e.Crop]
		}
		groups = append(groups, g)
	}
	axis := draw.Shares(p.id("ge"), lowestShare(groups))
	t := p.rows("emergence", "germ", p.groupCaption(season), "emergence", col{Width: "c-name3", Head: "Crop, variety, tray"},
		col{Class: "st", Head: "Came up, %", Axis: axis.Head()}, number("Cells"), number("Batches"))
	t.Title = "What came up, by variety and tray"
	p.cropTable(t, axis, "Sown", crops, groups)
	return t
}

// countedOf writes two cells: of how many cells looked at, and how many batches were counted,
// of how many sown. Batches that were counted too early or not at all are those left out.
func (w *inPieces) countedOf(cells float64, batches, of int) {
	w.rounded(cells)
	w.cut()
	w.outOf(batches, of)
	w.cut()
}

// groupCaption is the key to the marks; only kinds of tray that the season used are in it.
func (p *page) groupCaption(season int) template.HTML {
	kinds := template.HTML("")
	for _, k := range p.kindsOf(season) {
		kinds += say(` <span class="kd">%s%s</span>`, draw.Key(draw.KindOf(k)), name(orDash(k)))
	}
	return say("Cells with a living seedling at the last count, of the cells looked at, %s; the lowest crop first. Black: the crop as a whole; grey tick: the season before.%s Hollow: fewer than %s.",
		words.Year(season), kinds, words.Batches(rate.FewBatches))
}

// kindsOf are the kinds of tray sown in a season, by name. The first page that asks works
// them out for all others.
func (p *page) kindsOf(season int) []string {
	if known, ok := p.kinds[season]; ok {
		return known
	}
	var out []string
	for _, b := range p.seasons[season] {
		if !slices.Contains(out, b.Kind) {
			out = append(out, b.Kind)
		}
	}
	slices.Sort(out)
	p.kinds[season] = out
	return out
}

// cropBefore is a crop's share in the season before.
func (p *page) cropBefore(crop germination.Emergence) rate.Num {
	before := p.before(crop.Season)
	for _, e := range p.r.Germination.Crops {
		if e.Season == before && e.Crop == crop.Crop {
			return e.Share
		}
	}
	return rate.Num{}
}
