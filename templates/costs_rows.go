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

// hair is the money below which nothing is shown: it would be written as 0.00.
const hair = 0.005

// shows reports whether money is more, or less, than nothing as it is written.
func shows(v float64) bool { return abs(v) >= hair }

// handedOn reports whether a group has handed on all it cost, with its plants.
func handedOn(c money.Cost) bool {
	return c.Total.Known && !shows(c.Total.Value) && c.Usable.Known && c.Usable.Value < 0.5
}

// estimated reports whether some plants of a cost are guessed; guessed whether most are.
func estimated(c money.Cost) bool { return c.EstimatedShare.Known && c.EstimatedShare.Value >= 0.005 }
func guessed(c money.Cost) bool   { return c.EstimatedShare.Or(0) > 0.5 }

// fewCosts reports whether a cost rests on too few batches to be judged.
func fewCosts(c money.Cost) bool { return c.Rests < rate.FewBatches }

// costTable is rows of costs on one axis: each has what a plant cost, drawn beside what
// it cost in the season before.
type costTable struct {
	*rows
	p    *page
	axis draw.Axis
}

// costAxis is an axis from 0 on which nine rows in ten stand; dearer ones go beyond it.
func (p *page) costAxis(id string, of []money.Cost) draw.Axis {
	var each []float64
	for _, c := range of {
		if c.PerTransplant.Known {
			each = append(each, c.PerTransplant.Value)
		}
	}
	return draw.Amounts(p.id(id), fillsColumn(each), plainAmount)
}

// plainAmount writes a round amount with as many decimals as it needs.
func plainAmount(v float64) string {
	for d := range 6 {
		if words.Round(v, d) == words.Round(v, 9) {
			return words.Fixed(v, d)
		}
	}
	return words.Fixed(v, 6)
}

// costRows starts rows of costs; more are the columns between the first and the costs,
// the numbers behind follow.
func (p *page) costRows(id, class string, caption template.HTML, data string, first col, of []money.Cost, behind ...col) costTable {
	axis := p.costAxis("g"+slug(id), of)
	cols := append([]col{first, {Class: "st c2", Head: say("A plant, %s", p.money.Code()), Axis: axis.Head()}}, behind...)
	return costTable{p.rows("cost-"+id, "cost "+class, caption, data, cols...), p, axis}
}

// number is a narrow column of numbers.
func number(head template.HTML) col { return col{Width: "c-n2", Class: "n", Head: head} }

// told is what a plant cost, drawn, with the season before as a tick.
func (t costTable) told(c money.Cost, before rate.Num) template.HTML {
	if !c.PerTransplant.Known {
		return say("<b>%s</b>", words.None)
	}
	class := ""
	if guessed(c) {
		class = "h"
	}
	each := c.PerTransplant.Value
	return told(t.p.money.EachNumber(each), "", t.axis.Row(draw.Bar(0, max(each, 0), class), draw.Earlier(before)))
}

// cell is what a cell of a group cost.
func (t costTable) cell(c money.Cost) string { return words.Of(c.PerCell, t.p.money.EachNumber) }

// costIn is what a plant of a group cost in the season before.
func (p *page) costIn(table []money.Cost, of batch.Group) rate.Num {
	of.Season = p.before(of.Season)
	i := slices.IndexFunc(table, func(c money.Cost) bool { return c.Group == of })
	if i < 0 {
		return rate.Num{}
	}
	return table[i].PerTransplant
}

// restsOn is how many batches a cost rests on, of how many.
func restsOn(c money.Cost) template.HTML {
	if c.Rests == c.Batches {
		return markup(words.Whole(c.Batches))
	}
	return say(`%s<span class="soft"> of %s</span>`, words.Whole(c.Rests), words.Whole(c.Batches))
}

// costNotes say under the rows what they leave out.
func (t costTable) costNotes(all []money.Cost) {
	var soFar []template.HTML
	handed := false
	for _, c := range all {
		handed = handed || handedOn(c)
		if !c.PerTransplant.Known && !handedOn(c) && c.Total.Known && shows(c.Total.Value) {
			soFar = append(soFar, say("%s (%s)", groupWords(c.Group), t.p.money.Sum(c.Total.Value)))
		}
	}
	if len(soFar) > 0 {
		t.note(say("Money spent, but no batch that has ended has a figure of usable plants: %s.", list(soFar)))
	}
	if handed {
		t.note("Batches that were potted on whole hand their cost on and have no line.")
	}
}

// groupWords names a group in a sentence.
func groupWords(g batch.Group) template.HTML {
	switch {
	case g.Crop == "":
		return trayName(g)
	case g.Variety == "":
		return markup(name(g.Crop))
	}
	return say("%s %s %s", name(g.Crop), name(g.Variety), trayName(g))
}

// figured are the costs with a figure of their own, the dearest first.
func figured(all []money.Cost) []money.Cost {
	out := batch.Filter(all, func(c money.Cost) bool { return c.PerTransplant.Known && !handedOn(c) })
	slices.SortStableFunc(out, dearest)
	return out
}

// costCrops is what a plant of each crop cost and of what, the dearest first; crops of
// too few batches stand below a line.
func (p *page) costCrops(season int) *rows {
	all := money.InSeason(p.r.Money.Crops, season)
	lines := figured(all)
	heads, each := p.partHeads()
	var parts []float64
	for _, c := range lines {
		if !fewCosts(c) || len(parts) == 0 {
			parts = append(parts, each(c)...)
		}
	}
	most, grid := fillsColumn(parts), p.id("gparts")
	caption := say("The dearest first. Left: what a plant cost; grey tick: the season before. Right: its parts on one scale, on which a full column is %s; a slit goes beyond it. Hollow: most plants are at least or estimated. Failed: the share of the money that went into cells without a usable plant.",
		p.money.Each(most))
	t := p.costRows("crops", "bycrop n3", caption, "", col{Width: "c-name", Head: "Crop"}, lines,
		col{Width: "c-parts", Class: "dr c3", Head: "Its parts", Quiet: true, Axis: draw.ColumnsHead(grid, heads)}, number("Failed"), number("A cell"), number("Batches"))
	for _, few := range []bool{false, true} {
		sub := template.HTML("")
		if few {
			sub = say("Too seldom set out to judge: fewer than %s", words.Batches(rate.FewBatches))
		}
		for _, c := range lines {
			if fewCosts(c) != few {
				continue
			}
			if sub != "" || len(t.Groups) == 0 {
				t.under(sub, "")
				sub = ""
			}
			t.add("", "", p.crop(season, c.Crop), t.told(c, p.costIn(p.r.Money.Crops, c.Group)), draw.Axis{ID: grid, Max: 1}.Row(draw.Columns(each(c), most, guessed(c))),
				words.Of(c.FailedShare, words.Percent), t.cell(c), restsOn(c))
		}
	}
	t.costNotes(all)
	return t.rows
}

// partHeads are the parts of a cost that have a column, and what a plant's cost is made
// of in that order. What has none stands in the last, where there is any.
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

// costGroups is what a plant and a cell of each variety cost by tray, crop by crop.
func (p *page) costGroups(season int) *rows {
	all := money.InSeason(p.r.Money.Cost, season)
	t := p.costRows("groups", "germ n3", "By crop, the dearest first, and in it the dearest variety and tray first. A cell: all that the batches bear, over the cells sown, open batches too.", "cost",
		col{Width: "c-name3", Head: "Crop, variety, tray"}, figured(all), number("A cell"), number("Plants"), number("Batches"))
	for _, crop := range figured(money.InSeason(p.r.Money.Crops, season)) {
		groups := batch.Filter(figured(all), func(c money.Cost) bool { return c.Crop == crop.Crop })
		if len(groups) > 0 {
			t.under("", "")
		}
		for i, g := range groups {
			class, label := "var", markup(name(g.Variety))
			if i == 0 {
				class, label = "crop one", say("%s %s", p.crop(season, g.Crop), name(g.Variety))
			}
			t.add("", class, say(`<span class="v">%s</span> %s`, label, trayMark(g.Group)), t.told(g, p.costIn(p.r.Money.Cost, g.Group)), t.cell(g), words.Of(g.Usable, words.Whole[float64]), restsOn(g))
		}
	}
	t.costNotes(all)
	return t.rows
}

// costSizes is the same by cells and kind of tray, all crops together.
func (p *page) costSizes(season int) *rows {
	all := money.InSeason(p.r.Money.Sizes, season)
	lines := figured(all)
	t := p.costRows("trays", "n3", "All crops together, the dearest plant first.", "", col{Width: "c-name2", Head: "Tray"}, lines, number("A cell"), number("Plants"), number("Batches"))
	for _, c := range lines {
		t.add("", "", trayMark(c.Group), t.told(c, p.costIn(p.r.Money.Sizes, c.Group)), t.cell(c), words.Of(c.Usable, words.Whole[float64]), restsOn(c))
	}
	t.costNotes(all)
	t.note(p.unpricedWords(season))
	return t.rows
}

// costMonths is a season's ended batches by the month in which they ended.
func (p *page) costMonths(season int) *rows {
	months, costs := p.monthsOf(season)
	t := p.costRows("months", "n3", "Batches by the month in which they left the house. The months hold different crops.", "", col{Width: "c-name2", Head: "Month"}, costs, number("Failed"), number("Plants"), number("Batches"))
	for i, c := range costs {
		if c.PerTransplant.Known && !handedOn(c) {
			t.add("", "", months[i], t.told(c, rate.Num{}), words.Of(c.FailedShare, words.Percent), words.Of(c.Usable, words.Whole[float64]), restsOn(c))
		}
	}
	t.costNotes(nil)
	return t.rows
}

// monthsOf are the months in which batches of a season left, with what they cost.
func (p *page) monthsOf(season int) (months []string, costs []money.Cost) {
	for _, m := range p.r.Money.Months {
		if m.Season == season {
			months, costs = append(months, fmt.Sprintf("%s %d", m.First.Month(), m.First.Year())), append(costs, m.Cost)
		}
	}
	return months, costs
}

// monthTitle names the dearest and the cheapest month to set out in, of those with
// batches enough.
func (p *page) monthTitle(season int) template.HTML {
	months, costs := p.monthsOf(season)
	dear, cheap, n := -1, -1, 0
	for i, c := range costs {
		if fewCosts(c) || !c.PerTransplant.Known {
			continue
		}
		n++
		if dear < 0 || c.PerTransplant.Value > costs[dear].PerTransplant.Value {
			dear = i
		}
		if cheap < 0 || c.PerTransplant.Value < costs[cheap].PerTransplant.Value {
			cheap = i
		}
	}
	if n < 2 || p.money.EachNumber(costs[dear].PerTransplant.Value) == p.money.EachNumber(costs[cheap].PerTransplant.Value) {
		return "By month set out"
	}
	return say("Plants set out in %s were the dearest, in %s the cheapest", months[dear], months[cheap])
}

// costSeasons sets the seasons beside one another, the page's own in heavier type.
func (p *page) costSeasons(season int) *rows {
	of := p.r.Money.Seasons
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
