package templates

import (
	"cmp"
	"html/template"
	"slices"

	"traybook/records"
	"traybook/report/money"
	"traybook/report/words"
	"traybook/templates/draw"
)

// costsPage is what a transplant cost, of what, and what would lower it.
type costsPage struct {
	season  int
	Cost    finding
	Lower   *lowerPart
	Title   template.HTML // of the crops
	Crops   *rows
	Groups  *rows
	Sizes   *rows
	Blame   template.HTML // what rows by tray cannot tell
	Months  *rows
	Monthly template.HTML // the title of the months
	Seasons *rows
	Ledger  *ledgerPart
	Heated  bool // the book has a bill for heat
}

// head names the season.
func (v costsPage) head() (heading, lead template.HTML) {
	return say("What a transplant cost, %s", words.Year(v.season)), "All bills, hours and trays, shared out among the batches that they served."
}

// costsView tells one season, with the others beside it.
func costsView(p *page) any {
	season := p.season
	v := costsPage{season: season, Cost: p.ownCost(season), Lower: p.lowerPart(season), Heated: p.r.Money.Has[records.Heat]}
	v.Title, v.Crops = p.dearTitle(season), p.costCrops(season)
	v.Groups, v.Sizes, v.Blame = p.costGroups(season), p.costSizes(season), p.blameWords()
	v.Monthly, v.Months = p.monthTitle(season), p.costMonths(season)
	v.Seasons, v.Ledger = p.costSeasons(season), p.ledgerPart(season)
	return v
}

// ownCost is the finding with what only this page tells: all parts, beside those of the
// season before, and what all batches bear. The front page tells the three largest parts;
// here all have a bar, with a tick for the season before.
func (p *page) ownCost(season int) finding {
	f := p.costFinding(season)
	c, _ := p.r.Money.Season(season)
	if !c.PerTransplant.Known {
		return f
	}
	f.Say = append(f.Say, p.inAll(c))
	f.Note = say("%s with a figure of usable plants, %s fit to set out%s.", batchesOf(c.Rests, c.Batches, "ended"),
		words.Plural(words.RoundPlants(c.Usable.Value), "plant", "plants"), estimatedWords(c))
	f.Side = p.allParts(c)
	return f
}

// batchesOf writes a part of some batches: 12 of 14 batches ended; all of them: 14
// batches ended.
func batchesOf(some, all int, done string) template.HTML {
	if some == all {
		return say("%s %s", words.Batches(all), done)
	}
	return say("%s of %s %s", words.Whole(some), words.Batches(all), done)
}

// inAll is what all batches of a season bear, and a cell of them. Money that came with
// plants potted on from another season is in the sum and was spent before; what went on
// with such plants is not in it.
func (p *page) inAll(c money.Cost) template.HTML {
	out := say("In all %s fell on %s", p.money.Sum(c.Total.Value), theBatches(c.Batches))
	if c.PerCell.Known {
		out = say("%s, %s for each cell sown", out, p.money.Each(c.PerCell.Value))
	}
	out += "."
	switch carried := c.Parts.Carried; {
	case carried >= hair:
		return join(out, say("Of it %s came over with plants potted on from another season.", p.money.Sum(carried)))
	case carried <= -hair:
		return join(out, say("Another %s went on with plants potted on in another season.", p.money.Sum(-carried)))
	}
	return out
}

// theBatches names all batches of a season: its 12 batches, its one batch.
func theBatches(n int) string {
	if n == 1 {
		return "the season’s one batch"
	}
	return "the season’s " + words.Batches(n)
}

// allParts is the parts of a plant's cost as bars, those of the season before as ticks.
// Parts below what can be written as money are left out, as they would be bars of nothing
// beside 0.00.
func (p *page) allParts(c money.Cost) template.HTML {
	before, _ := p.r.Money.Season(p.before(c.Season))
	parts := p.largestParts(c)
	if carried := c.Behind.Carried; carried >= hair {
		parts = append(parts, costPart{Words: "taken over", Money: carried})
	}
	most := 1e-12
	for _, part := range parts {
		most = max(most, part.Money/c.Usable.Value)
	}
	caption := say("What a plant cost, %s", p.money.Code())
	if before.PerTransplant.Known {
		caption = say("%s; grey tick: %s", caption, words.Year(before.Season))
	}
	axis, body := draw.Axis{Max: most}, template.HTML("")
	for _, part := range parts {
		each, was := part.Money/c.Usable.Value, costBeforeOf(before, part)
		body += say(`<tr><th scope="row">%s</th><td>%s</td><td class="d">%s</td></tr>`, part.Words, p.money.EachNumber(each), axis.Plain(draw.Bar(0, each, ""), draw.Earlier(was)))
	}
	if body == "" {
		return ""
	}
	return say(`<table class="mini"><caption>%s</caption><tbody>%s</tbody></table>`, caption, body)
}

// costBeforeOf is a part of what a plant cost in the season before.
func costBeforeOf(before money.Cost, part costPart) (was money.Num) {
	if before.PerTransplant.Known && part.Category != "" {
		was = records.Known(before.Behind.Of(part.Category) / before.Usable.Value)
	}
	return was
}

// dearest puts the dearer transplant first, and rows without a figure last.
func dearest(a, b money.Cost) int {
	return cmp.Compare(b.PerTransplant.Or(-1), a.PerTransplant.Or(-1))
}

// dearTitle names the dearest crop and the cheapest, of those with batches enough and a
// cost that is not mostly guessed. Crops whose plants are mostly estimated are left out: a
// guess of plants makes a guess of the cost of each.
func (p *page) dearTitle(season int) template.HTML {
	rows := slices.DeleteFunc(money.InSeason(p.r.Money.Crops, season), func(c money.Cost) bool {
		return fewCosts(c) || !c.PerTransplant.Known || guessed(c) || handedOn(c)
	})
	slices.SortStableFunc(rows, dearest)
	if len(rows) == 0 {
		return "No crop had batches enough to be called dear or cheap"
	}
	first, last := rows[0], rows[len(rows)-1]
	switch {
	case len(rows) == 1:
		return say("Only %s had batches enough: %s a plant", name(first.Crop), p.money.Each(first.PerTransplant.Value))
	case p.money.EachNumber(first.PerTransplant.Value) == p.money.EachNumber(last.PerTransplant.Value):
		return say("A plant cost %s with every crop of batches enough", p.money.Each(first.PerTransplant.Value))
	}
	return say("%s was the dearest plant, %s the cheapest", name(capital(first.Crop)), name(last.Crop))
}
