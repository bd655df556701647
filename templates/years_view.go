package templates

import (
	"html/template"
	"slices"

	"traybook/report/batch"
	"traybook/report/rate"
	"traybook/report/words"
	"traybook/report/years"
	"traybook/templates/draw"
)

// yearsPage sets every season beside the one before it.
type yearsPage struct {
	Answer  finding
	Parts   []measurePart
	Changes *table
	Heating *table
	Told    template.HTML // of the heating
	Lead    template.HTML
}

// head is the page's heading.
func (v yearsPage) head() (heading, lead template.HTML) { return "Year over year", v.Lead }

// measurePart is one measure over all seasons: the seasons, the changes in their three
// parts, what drove the last of them, and the crops one by one.
type measurePart struct {
	ID      string
	Title   template.HTML
	Seasons *rows
	Split   *rows
	Drivers *rows
	Crops   *rows
	Said    template.HTML
}

// hasYears reports whether any season can be set beside another.
func hasYears(s *site, _ int) bool { return len(s.r.Years.Years) > 0 || len(s.r.Years.Heating) > 1 }

// yearsView tells the season reviewed first, then each measure over all seasons. Seasons
// differ in weather, crops and work at once, so the page never says why: it says how far
// like sowings moved, and what the rest of the change is.
func yearsView(p *page) any {
	v := yearsPage{Answer: p.yearsFinding(p.season), Changes: p.changesTable(), Heating: p.heatingTable(),
		Lead: "Each season beside the one before it: the same crops for the same crops, and what the rest of the change is."}
	v.Told = p.heatingWords()
	for _, m := range years.Measures {
		if part := p.measurePart(m); part != nil {
			v.Parts = append(v.Parts, *part)
		}
	}
	return v
}

// measureOf is how a measure is written on the page: its words, its figures, its changes
// and what a change is counted in.
type measureOf struct {
	measure            years.Measure
	title, drawn, unit string
	write, change      func(float64) string
	axis               func(id string, lowest, highest float64) draw.Axis
	scale              float64
}

// measureOf is the words of a measure.
func (p *page) measureOf(m years.Measure) measureOf {
	points := func(v float64) string { return words.Signed(100*v, 1) }
	shares := func(id string, lowest, _ float64) draw.Axis { return draw.Shares(id, lowest) }
	switch m {
	case years.Usable:
		return measureOf{m, "What could be set out, of the cells sown", "Usable, %", "plants in 100 cells", words.Percent, points, shares, 100}
	case years.Cost:
		amounts := func(id string, _, highest float64) draw.Axis { return draw.Amounts(id, highest, p.money.EachNumber) }
		return measureOf{m, "What a usable transplant cost", "A plant, " + p.money.Code(), p.money.Code() + " a plant", p.money.EachNumber, p.signedEach, amounts, 1}
	}
	return measureOf{m, "What came up, of the cells looked at", "Came up, %", "cells in 100", words.Percent, points, shares, 100}
}

// measurePart is nil where no season can be compared in a measure. The drivers and the
// crops are of the season reviewed; where that cannot be compared, of the last that can.
func (p *page) measurePart(m years.Measure) *measurePart {
	of := p.measureOf(m)
	farm := batch.Filter(p.r.Years.Years, func(c years.Change) bool { return c.Measure == m && c.Crop == "" })
	if len(farm) == 0 {
		return nil
	}
	part := &measurePart{ID: p.id("years-" + string(m)), Title: markup(of.title), Seasons: p.seasonRows(of), Split: p.splitRows(of, farm)}
	last := farm[len(farm)-1]
	for _, c := range farm {
		if c.To == p.season {
			last = c
		}
	}
	part.Drivers, part.Crops = p.driverRows(of, last), p.cropChangeRows(of, last)
	part.Said = join(p.runningWords(last), p.leftOutOf(last))
	return part
}

// leftOutOf says how many batches of a comparison have no figure. Each side is told apart:
// a season that lost half its batches for want of a count is a poor one to compare with.
func (p *page) leftOutOf(c years.Change) template.HTML {
	var parts []template.HTML
	for _, side := range []struct{ season, out int }{{c.From, c.Before.LeftOut}, {c.To, c.After.LeftOut}} {
		if side.out > 0 {
			parts = append(parts, say("%s of %s", words.Batches(side.out), words.Year(side.season)))
		}
	}
	if len(parts) == 0 {
		return ""
	}
	return say("Left out, without a figure: %s.", list(parts))
}

// seasonRows is a measure season by season. Costs have no range, as no chance is reckoned
// for them; their rows have a dot alone.
func (p *page) seasonRows(of measureOf) *rows {
	all := batch.Filter(p.r.Years.Seasons, func(s years.Season) bool { return s.Measure == of.measure && s.Figure.Known })
	lowest, highest := 1.0, 0.0
	for _, s := range all {
		lowest, highest = min(lowest, s.Low.Or(s.Figure.Value)), max(highest, s.High.Or(s.Figure.Value))
	}
	axis := of.axis(p.id("gs"), lowest, highest)
	t := p.rows("seasons-"+string(of.measure), "", "Season by season, all crops as sown.", "", col{Width: "c-name3", Head: "Season"},
		col{Class: "st", Head: markup(of.drawn), Axis: axis.Head()}, col{Width: "c-n", Class: "n", Head: "Batches"})
	for _, s := range all {
		rangeOf := template.HTML("")
		if s.Low.Known {
			rangeOf = rangeText(s.Low, s.High, words.PercentNumber)
		}
		t.add("", "", join(p.to(p.seasonPath(s.Season), words.Year(s.Season)), p.changedIn(s.Season)), told(of.write(s.Figure.Value), rangeOf, axis.Row(draw.Range(s.Low, s.High), draw.Dot(draw.Crop, s.Figure, false))), words.Whole(s.Batches))
	}
	return t
}

// splitRows is each season's change in its three parts. The last bar of each season is the
// sum of the others. The range stands on the part of like sowings, of which alone it
// speaks.
func (p *page) splitRows(of measureOf, farm []years.Change) *rows {
	lowest, highest := 0.0, 0.0
	each := func(v float64) { lowest, highest = min(lowest, v), max(highest, v) }
	for _, c := range farm {
		for _, v := range []float64{c.Change, c.Same, c.OtherKinds, c.OtherCrops.Value} {
			each(v)
		}
		each(c.Low.Or(0))
		each(c.High.Or(0))
	}
	axis := draw.From(p.id("gx"), lowest, highest, of.scale)
	t := p.rows("split-"+string(of.measure), "gain", say("Each change against the season before, %s, and the three parts that add up to it. Like sowings: same variety, cells, kind of tray and seeds a cell in both seasons.", of.unit), "years",
		col{Width: "c-half", Head: "Part of the change"}, col{Class: "st g2", Head: "Change", Axis: axis.Head()})
	for _, c := range farm {
		t.under(say("%s against %s: %s to %s", words.Year(c.To), words.Year(c.From), words.Of(c.Before.Figure, of.write), words.Of(c.After.Figure, of.write)), "")
		bar := func(what any, v float64, class string, marks ...draw.Mark) {
			t.add("", class, what, told(of.change(v), "", axis.Row(append([]draw.Mark{draw.Bar(0, v, signClass(v, of.measure))}, marks...)...)))
		}
		same := say(`Like sowings <span class="soft">%s of the season%s</span>`, words.Percent(c.Share), verdictTail(c))
		bar(same, c.Same, "", draw.Range(c.Low, c.High))
		bar("Other varieties and trays", c.OtherKinds, "")
		if c.OtherCrops.Known {
			bar("Growing other crops", c.OtherCrops.Value, "")
		}
		bar("The change", c.Change, "sum")
	}
	return t
}

// signClass colours what made a season worse. Of costs more is worse, of the two others
// less is.
func signClass(v float64, m years.Measure) string {
	if (v < 0) != (m == years.Cost) && v != 0 {
		return "neg"
	}
	return ""
}

// verdictTail is a change's verdict, where it has one. A change that is clear may still be
// no more than the farm's seasons usually differ by, which takes seasons enough to know.
func verdictTail(c years.Change) string {
	switch c.Verdict {
	case rate.ClearlyHigher, rate.ClearlyLower:
		if c.Habit() == years.Within {
			return ": " + string(c.Verdict) + ", no more than this farm’s seasons differ"
		}
		if c.Usual.Known {
			return ": " + string(c.Verdict) + ", more than they usually differ"
		}
		return ": " + string(c.Verdict)
	case rate.NoDifference:
		return ": no clear difference"
	}
	return ""
}

// mostDrivers is how many drivers are shown.
const mostDrivers = 10

// pieceWords names the three parts of a change.
var pieceWords = map[years.Piece]string{years.LikeSowings: "like sowings", years.OtherKinds: "other varieties and trays", years.OtherCrops: "more or less of it grown"}

// driverRows is what drove the last change, the largest first. A driver is one crop's part
// in one of the three parts. A crop may stand here twice, once for doing worse and once
// for being grown more.
func (p *page) driverRows(of measureOf, c years.Change) *rows {
	all := p.r.Years.Drivers(c.To, of.measure)
	largest := 0.0
	for _, d := range all {
		largest = max(largest, abs(d.Value))
	}
	axis := draw.Differences(p.id("gv"), max(largest, 1e-9), of.scale)
	t := p.rows("drivers-"+string(of.measure), "gain", say("What drove the change from %s to %s, the largest first, %s.", words.Year(c.From), words.Year(c.To), of.unit), "",
		col{Width: "c-half", Head: "Crop, and how"}, col{Class: "st g2", Head: "Change", Axis: axis.Head()})
	for _, d := range all[:min(len(all), mostDrivers)] {
		t.add("", "", say(`%s <span class="soft">%s</span>`, name(d.Crop), pieceWords[d.Piece]), told(of.change(d.Value), "", axis.Row(draw.Bar(0, d.Value, signClass(d.Value, of.measure)))))
	}
	if n := len(all) - mostDrivers; n > 0 {
		t.note(say("And %s.", words.Plural(n, "smaller part", "smaller parts")))
	}
	return t
}

// cropChangeRows is what like sowings of each crop did. The axis is bounded by what the
// crops did rather than by their ranges: one crop of two batches would flatten all others.
func (p *page) cropChangeRows(of measureOf, c years.Change) *rows {
	all := batch.Filter(p.r.Years.Crops(c.To, of.measure), func(c years.Change) bool { return c.Share > 0 })
	largest := 1e-9
	for _, c := range all {
		like, low, high := cropChange(of, c)
		largest = max(largest, abs(like.Value), min(abs(low.Or(0)), 3*abs(like.Value)+0.1/of.scale), min(abs(high.Or(0)), 3*abs(like.Value)+0.1/of.scale))
	}
	axis := draw.Differences(p.id("gw"), largest, of.scale)
	t := p.rows("crops-"+string(of.measure), "years verd", say("Like sowings of each crop, %s against %s, %s.", words.Year(c.To), words.Year(c.From), of.unit), "",
		col{Width: "c-name", Head: "Crop"}, col{Class: "st", Head: "Change", Axis: axis.Head()}, col{Width: "c-vd", Class: "vd", Head: "Verdict"}, col{Width: "c-n2", Class: "n", Head: "Alike"})
	slices.SortStableFunc(all, func(a, b years.Change) int { return compareChanges(a, b) })
	for _, c := range all {
		like, low, high := cropChange(of, c)
		rangeOf := template.HTML("")
		if low.Known {
			rangeOf = rangeText(low, high, func(v float64) string { return words.Signed(of.scale*v, 0) })
		}
		t.add("", "", p.crop(c.To, c.Crop), told(of.change(like.Value), rangeOf, axis.Row(draw.Range(low, high), draw.Dot(draw.Crop, like, c.Verdict == rate.TooFew))), changeVerdict(c), words.Percent(c.Share))
	}
	t.note("Alike: the part of the crop that was sown alike in both seasons.")
	return t
}

// cropChange is what like sowings of a crop did. A share cannot change by more than all
// of it, so a range from few batches is cut there.
func cropChange(of measureOf, c years.Change) (like, low, high rate.Num) {
	like, low, high = likeChange(c)
	if of.measure != years.Cost {
		low.Value, high.Value = max(low.Value, -1), min(high.Value, 1)
	}
	return like, low, high
}

// compareChanges orders crops by what their like sowings did, the largest fall first.
func compareChanges(a, b years.Change) int {
	x, _, _ := likeChange(a)
	y, _, _ := likeChange(b)
	switch {
	case x.Value < y.Value:
		return -1
	case x.Value > y.Value:
		return 1
	}
	return 0
}

// changeVerdict is a crop's verdict, coloured where it is clear.
func changeVerdict(c years.Change) template.HTML {
	switch c.Verdict {
	case rate.ClearlyHigher:
		return `<span class="good">clearly higher</span>`
	case rate.ClearlyLower:
		return `<span class="bad">clearly lower</span>`
	case rate.NoDifference:
		return "no clear difference"
	case rate.TooFew:
		return words.TooFew
	}
	return ""
}
