package templates

import (
	"fmt"
	"html/template"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/money"
	"traybook/report/rate"
	"traybook/report/words"
	"traybook/templates/draw"
)

// costCrops is what a plant of each crop cost and of what, the dearest first; crops of too
// few batches stand below a line. The scale of the parts is set by the crops that can be
// judged, where there are any: one odd batch would press the others' bars together. Money
// without a plant to bear it stands in a note.
func (p *page) costCrops(season int) *rows {
	all, before := costsIn(p.r.Money.Crops, season), p.costsBefore(p.r.Money.Crops, season)
	lines := figured(all)
	heads, each := p.partHeads()
	var parts []float64
	for _, c := range lines {
		if !fewCosts(*c) || len(parts) == 0 {
			parts = append(parts, each(*c)...)
		}
	}
	most, grid := fillsColumn(parts), p.id("gparts")
	caption := say("The dearest first. Left: what a plant cost%s. Right: its parts (%s) on one scale, on which a full column is %s; a slit goes beyond it. Hollow: most plants are estimated or from batches written only in part. Failed: the share of the money that went into cells without a usable plant.",
		p.tickWords(season), list(heads), p.money.Each(most))
	t := p.costRows("crops", "bycrop n3", caption, "", col{Width: "c-name", Head: "Crop"}, lines,
		col{Width: "c-parts", Class: "dr c3", Head: "Its parts", Quiet: true, Axis: draw.ColumnsHead(grid, heads)}, number("Failed"), number("A cell"), number("Batches"))
	for _, few := range []bool{false, true} {
		sub := template.HTML("")
		if few {
			sub = say("Too few batches to judge: fewer than %s", words.Batches(rate.FewBatches))
		}
		for _, c := range lines {
			if fewCosts(*c) != few {
				continue
			}
			if sub != "" || len(t.Groups) == 0 {
				t.under(sub, "")
				sub = ""
			}
			t.add("", "", p.crop(season, c.Crop), t.told(c, before[c.Group]), p.partsCell(grid, each(*c), most, guessed(*c)),
				words.Of(c.FailedShare, words.Percent), t.cell(c), restsOn(c))
		}
	}
	t.costNotes(all)
	return t.rows
}

// partsCell draws the parts of a plant's cost, with their numbers for a reader. The
// columns have no numbers of their own on paper or screen, so they stand beside the
// drawing for who hears the page.
func (p *page) partsCell(grid string, parts []float64, most float64, hollow bool) template.HTML {
	numbers := make([]string, len(parts))
	for i, v := range parts {
		numbers[i] = p.money.EachNumber(v)
	}
	return say(`<span class="vh">%s</span>%s`, list(numbers), draw.Axis{ID: grid, Max: 1}.Row(draw.Columns(parts, most, hollow)))
}

// partHeads are the parts of a cost that have a column, and what a plant's cost is made of
// in that order. What has none stands in the last, where there is any, with what came over
// with plants from another season; below 0 it shows as nothing.
func (p *page) partHeads() (heads []string, each func(money.Cost) []float64) {
	var own []money.Category
	rest := false
	for _, part := range p.partsOf(money.Parts{}) {
		if slices.Contains(costColumns, part.Category) {
			own, heads = append(own, part.Category), append(heads, part.Words)
		} else {
			rest = true
		}
	}
	if rest || len(own) == 0 {
		heads = append(heads, "all else")
	}
	return heads, func(c money.Cost) []float64 {
		left := c.PerTransplant.Value
		out := make([]float64, len(heads))
		for i, category := range own {
			out[i] = c.Behind.Of(category) / c.Usable.Value
			left -= out[i]
		}
		if len(out) > len(own) {
			out[len(own)] = max(left, 0)
		}
		return out
	}
}

// costColumns are the parts that have a column of their own.
var costColumns = []money.Category{records.Seed, records.Mix, records.Labour, records.Heat, money.TrayCharge}

// costGroups is what a plant and a cell of each variety cost by tray, crop by crop. A cell
// is told beside the plant: what dear seed in few cells and poor emergence in many have in
// common does not show in the plant alone.
func (p *page) costGroups(season int) *rows {
	all, before := costsIn(p.r.Money.Cost, season), p.costsBefore(p.r.Money.Cost, season)
	lines := figured(all)
	t := p.costRows("groups", "germ n3", "By crop, the dearest first, and in it the dearest variety and tray first. A cell: all that the batches bear, over the cells sown, open batches too.", "cost",
		col{Width: "c-name3", Head: "Crop, variety, tray"}, lines, number("A cell"), number("Plants"), number("Batches"))
	t.Title = "What a plant cost, by variety and tray"
	_, of := batch.GroupBy(lines, func(c *money.Cost) string { return c.Crop })
	var w inPieces
	for _, crop := range figured(costsIn(p.r.Money.Crops, season)) {
		groups := of[crop.Crop]
		if len(groups) > 0 {
			t.under("", "")
			t.of(crop.Crop)
			t.room(len(groups))
		}
		for i, g := range groups {
			class := "var"
			if i == 0 {
				class = "crop one"
			}
			t.writeGroup(&w, g, i == 0, before[g.Group])
			t.addCells("", class, w.pieces())
		}
	}
	t.costNotes(all)
	return t.rows
}

// writeGroup writes the cells of a group: its name, a plant, a cell, plants, batches.
func (t costTable) writeGroup(w *inPieces, g *money.Cost, crop bool, before rate.Num) {
	t.p.writeGroup(&w.pen, g.Group, crop)
	w.cut()
	t.writeTold(&w.pen, g, before)
	w.cut()
	w.known(g.PerCell, t.p.money.AppendEachNumber)
	w.cut()
	w.known(g.Usable, words.AppendWhole[float64])
	w.cut()
	w.outOf(g.Rests, g.Batches)
	w.cut()
}

// costSizes is the same by cells and kind of tray, all crops together. Trays without a
// price are named beneath, since they look cheap for want of one.
func (p *page) costSizes(season int) *rows {
	all, before := costsIn(p.r.Money.Sizes, season), p.costsBefore(p.r.Money.Sizes, season)
	lines := figured(all)
	t := p.costRows("trays", "n3", "All crops together, the dearest plant first.", "", col{Width: "c-name2", Head: "Tray"}, lines, number("A cell"), number("Plants"), number("Batches"))
	for _, c := range lines {
		t.add("", "", trayMark(c.Group), t.told(c, before[c.Group]), t.cell(c), words.Of(c.Usable, words.Whole[float64]), restsOn(c))
	}
	t.costNotes(all)
	t.note(p.unpricedWords(season))
	return t.rows
}

// costMonths is a season's ended batches by the month in which they ended. No month has a
// tick of the season before: what was grown in it was another thing.
func (p *page) costMonths(season int) *rows {
	months := p.monthsOf(season)
	var costs []*money.Cost
	for i := range months {
		costs = append(costs, &months[i].Cost)
	}
	t := p.costRows("months", "n3", "Batches by the month in which they left the house. The months hold different crops.", "", col{Width: "c-name2", Head: "Month"}, costs, number("Failed"), number("Plants"), number("Batches"))
	for i, m := range months {
		t.add("", "", fmt.Sprintf("%s %d", m.First.Month(), m.First.Year()), t.told(costs[i], rate.Num{}), words.Of(m.FailedShare, words.Percent), words.Of(m.Usable, words.Whole[float64]), restsOn(costs[i]))
	}
	return t.rows
}

// monthsOf are the months in which batches of a season left, with what they cost.
func (p *page) monthsOf(season int) []money.Month {
	return batch.Filter(p.r.Money.Months, func(m money.Month) bool { return m.Season == season && m.PerTransplant.Known && !handedOn(m.Cost) })
}

// monthTitle names the dearest and the cheapest month to set out in, of those with batches
// enough. Fewer than two months with batches enough are nothing to compare. Costs that are
// written alike count as alike.
func (p *page) monthTitle(season int) template.HTML {
	months := batch.Filter(p.monthsOf(season), func(m money.Month) bool { return !fewCosts(m.Cost) })
	if len(months) < 2 {
		return "By month set out"
	}
	slices.SortStableFunc(months, func(a, b money.Month) int { return dearest(a.Cost, b.Cost) })
	dear, cheap := months[0], months[len(months)-1]
	if p.money.EachNumber(dear.PerTransplant.Value) == p.money.EachNumber(cheap.PerTransplant.Value) {
		return "A plant cost the same in every month set out"
	}
	return say("Plants set out in %s were the dearest, in %s the cheapest", dear.First.Month(), cheap.First.Month())
}

// costSeasons sets the seasons beside one another, the page's own in heavier type. It
// stands last and warns, since a season's mean says more of what was grown than of how
// well.
func (p *page) costSeasons(season int) *rows {
	of := picked(p.r.Money.Seasons, func(*money.Cost) bool { return true })
	t := p.costRows("seasons", "n3", p.seasonsCaption(), "", col{Width: "c-name2", Head: "Season"}, of, number("Failed"), number("A cell"), number("Batches"))
	for _, c := range of {
		label := p.to(seasonFile("costs", c.Season), words.Year(c.Season))
		if c.Season == season {
			label = say("<strong>%s</strong>", words.Year(c.Season))
		}
		if !p.r.Batches.Finished(c.Season) {
			label = say(`%s <span class="soft">under way</span>`, label)
		}
		t.add("", "", label, t.told(c, rate.Num{}), words.Of(c.FailedShare, words.Percent), t.cell(c), restsOn(c))
	}
	return t.rows
}

// seasonsCaption warns that seasons are not like for like.
func (p *page) seasonsCaption() template.HTML {
	out := template.HTML("Each season grew other crops in other trays, so a dearer one is not a worse one.")
	if p.paths["years.html"] {
		return join(out, p.to("years.html", "Like for like: year over year"))
	}
	return out
}
