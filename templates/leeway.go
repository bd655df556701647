package templates

import (
	"html/template"
	"slices"

	"traybook/report/batch"
	"traybook/report/plants"
	"traybook/report/rate"
	"traybook/report/words"
	"traybook/templates/draw"
)

// leewayOf are the bands of a crop (empty: all) in a kind of tray.
func (p *page) leewayOf(crop, kind string) []plants.Leeway {
	return batch.Filter(p.r.Plants.Leeway, func(l plants.Leeway) bool { return l.Crop == crop && l.Kind == kind })
}

// leewayKinds are the kinds of tray with looks of a crop (empty: of any).
func (p *page) leewayKinds(crop string) []string {
	var kinds []string
	for _, l := range p.r.Plants.Leeway {
		if l.Crop == crop && !slices.Contains(kinds, l.Kind) {
			kinds = append(kinds, l.Kind)
		}
	}
	return kinds
}

// leewayTitle says how late plants stayed fit, by kind of tray, over all crops and
// seasons. It speaks of all crops together, as few crops alone have looks enough past
// their day.
func (p *page) leewayTitle() template.HTML {
	var fits []plants.Fit
	for _, kind := range p.leewayKinds("") {
		fits = append(fits, p.r.Plants.Fit("", kind))
	}
	return fitTitle(fits)
}

// fitTitle is the finding of the leeway: of two kinds of tray at most, of more their head.
// Kinds of which too few looks tell are left out of it; where none tells, that is the
// finding.
func fitTitle(fits []plants.Fit) template.HTML {
	var fit, unfit []template.HTML
	for _, f := range fits {
		switch f.Case {
		case plants.FitUntil, plants.FitEvery:
			fit = append(fit, say("%s in %s", words.DaysLate(f.Last.DaysLate), kindWords(f.Kind)))
		case plants.FitNever:
			unfit = append(unfit, kindWords(f.Kind))
		}
	}
	switch {
	case len(fit)+len(unfit) > 2:
		return "How late plants stayed fit, by kind of tray"
	case len(fit) == 0 && len(unfit) == 0:
		return "How late plants stay fit cannot be told yet"
	case len(unfit) == 0:
		return say("Plants were still fit %s", list(fit))
	case len(fit) == 0:
		return say("In %s fewer than four plants in five were fit at any time", list(unfit))
	}
	return say("Plants were still fit %s, and at no time in %s", list(fit), list(unfit))
}

// fitWords says how late the plants of a crop stayed fit in a kind of tray. "At least"
// stands where the last band looked at was still fit and later ones were not looked at.
func fitWords(f plants.Fit) template.HTML {
	switch f.Case {
	case plants.FitNever:
		return "fewer than four in five at any time"
	case plants.FitUntil:
		return say("fit %s, not %s", words.DaysLate(f.Last.DaysLate), words.DaysLate(f.Below.DaysLate))
	case plants.FitEvery:
		if f.Last.DaysLate == plants.LeewayBands[len(plants.LeewayBands)-1] {
			return say("fit %s", words.DaysLate(f.Last.DaysLate))
		}
		return say("fit %s at least", words.DaysLate(f.Last.DaysLate))
	}
	return "too few looks"
}

// stillFitAxis is an axis of shares with a strong line where plants count as still fit.
func stillFitAxis(id string, lowest float64) draw.Axis {
	a := draw.Shares(id, min(lowest, plants.StillFit-0.2))
	for i := range a.Ticks {
		a.Ticks[i].Zero = abs(a.Ticks[i].At-plants.StillFit) < 1e-9
	}
	return a
}

// leewayRows is the share still fit by days past the planned day, kind by kind, of all
// crops and seasons together. A band of too few batches has its row and a dash, so that it
// is seen to have been looked at.
func (p *page) leewayRows() *rows {
	lowest := 1.0
	for _, l := range p.r.Plants.Leeway {
		if l.Crop == "" && l.Share.Known {
			lowest = min(lowest, l.Low.Or(l.Share.Value))
		}
	}
	axis := stillFitAxis(p.id("glee"), lowest)
	t := p.rows("leeway", "n2", say("All seasons and crops together. Still fit to set out, by days past the planned day; the line marks four in five. A dash: fewer than %s.", words.Batches(rate.FewBatches)), "leeway",
		col{Width: "c-name2", Head: "Looked at"}, col{Class: "st", Head: "Still fit, %", Axis: axis.Head()}, number("Plants"), number("Batches"))
	for _, kind := range p.leewayKinds("") {
		t.under(kindMark(kind), "")
		for _, l := range p.leewayOf("", kind) {
			told := toldShare(l.Rate, axis, draw.Range(l.Low, l.High), draw.Dot(draw.KindOf(kind), l.Share, l.Few()))
			t.add("", "", capital(words.DaysLate(l.DaysLate)), told, words.Whole(l.N), words.Whole(l.Batches))
		}
	}
	return t
}

// kindMark is a kind of tray with its shape before it.
func kindMark(kind string) template.HTML {
	return say("%s%s", draw.Key(draw.KindOf(kind)), kindWords(kind))
}

// leewayHeads are the bands of days over their columns.
var leewayHeads = []string{"in time", "1–3", "4–7", "8–14", "15 on"}

// leewayByCrop is the same crop by crop, where any band can be told, and the crops of
// which none can.
func (p *page) leewayByCrop() (t *rows, tooFew template.HTML) {
	grid := p.id("glc")
	t = p.rows("leeway-crops", "germ late", "All seasons. Each column: the share still fit that many days late; its line marks four in five, paler bars stay below it.", "",
		col{Width: "c-name3", Head: "Crop, tray"}, col{Class: "dr", Head: "Still fit by days late", Quiet: true, Axis: draw.ColumnsHead(grid, leewayHeads)}, col{Width: "c-late", Class: "vd", Head: "How late"})
	var left []template.HTML
	for _, crop := range p.leewayCrops() {
		some := false
		for _, kind := range p.leewayKinds(crop) {
			f := p.r.Plants.Fit(crop, kind)
			if f.Case == "" {
				continue
			}
			label := template.HTML("")
			if !some {
				t.under("", "")
				label, some = markup(name(crop)), true
			}
			t.add("", "", say(`<span class="v">%s</span> <span class="tr">%s</span>`, label, kindMark(kind)),
				shelvesCell(grid, p.bandShares(crop, kind)), fitWords(f))
		}
		if !some {
			left = append(left, markup(name(crop)))
		}
	}
	if len(left) > 0 {
		tooFew = say("Looked at too seldom to tell: %s.", list(left))
	}
	return t, tooFew
}

// shelvesCell draws the shares of the bands, with their numbers for a reader.
func shelvesCell(grid string, shares []rate.Num) template.HTML {
	numbers := make([]string, len(shares))
	for i, s := range shares {
		numbers[i] = words.Of(s, words.Percent)
	}
	return say(`<span class="vh">%s</span>%s`, list(numbers), draw.Axis{ID: grid, Max: 1}.Row(draw.Shelves(shares, plants.StillFit)))
}

// bandShares are the shares of a crop in a kind of tray, band by band. A band without
// looks, or with too few, stays unknown and leaves its column empty.
func (p *page) bandShares(crop, kind string) []rate.Num {
	out := make([]rate.Num, len(plants.LeewayBands))
	for _, l := range p.leewayOf(crop, kind) {
		out[slices.Index(plants.LeewayBands[:], l.DaysLate)] = l.Share
	}
	return out
}

// leewayCrops are the crops with looks past their planned day, in order.
func (p *page) leewayCrops() []string {
	var crops []string
	for _, l := range p.r.Plants.Leeway {
		if l.Crop != "" && !slices.Contains(crops, l.Crop) {
			crops = append(crops, l.Crop)
		}
	}
	return crops
}
