package templates

import (
	"cmp"
	"html/template"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/money"
	"traybook/report/words"
	"traybook/templates/draw"
)

// costFinding answers the second question: what a transplant cost, and of what.
func (p *page) costFinding(season int) finding {
	c, _ := p.r.Money.Season(season)
	if !hasCosts(p.site, season) || !c.Total.Known {
		return finding{Title: "What a transplant cost is not written down", Big: "?", What: "a transplant cost",
			Say:  []template.HTML{"The records cannot tell: no money and no priced hours are written for this season."},
			Note: "Write bills and hours into costs.csv, the wage into book.csv, prices into trays.csv and lots.csv."}
	}
	if !c.PerTransplant.Known {
		return finding{Title: "What a transplant cost cannot be told yet", Big: "?", What: "a transplant cost",
			Say:  []template.HTML{say("%s were spent, but no batch that has ended has a figure of usable plants.", p.money.Sum(c.Total.Value))},
			Note: "Write set_out, plants_out and surplus into sowings.csv."}
	}
	f := finding{Title: p.costTitle(c), Big: p.money.EachNumber(c.PerTransplant.Value), What: say("%s a transplant cost", p.money.Code())}
	f.Range = p.costBefore(season)
	f.Say = []template.HTML{join(p.costParts(c), p.notInCost(season), p.runningCost(season))}
	f.Note = say("%s, %s fit to set out%s. %s", words.Batches(c.Rests), words.Plural(words.RoundPlants(c.Usable.Value), "plant", "plants"),
		estimatedWords(c), p.moreOn(p.here("costs"), "Costs, "+words.Year(season)))
	f.Side = p.costSide(c)
	return f
}

// costTitle names the largest part of a plant's cost. It names a fraction where one is
// near, as half of a cost is quicker read than 51 %.
func (p *page) costTitle(c money.Cost) template.HTML {
	parts := p.largestParts(c)
	if len(parts) == 0 {
		return "A transplant cost nothing that is written down"
	}
	return say("%s of a plant’s cost was %s", capital(partWords(parts[0].Money/c.Usable.Value/c.PerTransplant.Value)), parts[0].Words)
}

// partWords says a share in words where a simple fraction is near, else in percent.
func partWords(share float64) string {
	for _, f := range []struct {
		from, to float64
		words    string
	}{{0.96, 2, "nearly all"}, {0.72, 0.78, "three quarters"}, {0.64, 0.69, "two thirds"}, {0.48, 0.52, "half"},
		{0.38, 0.42, "two fifths"}, {0.31, 0.36, "a third"}, {0.235, 0.265, "a quarter"}, {0.19, 0.21, "a fifth"}} {
		if share >= f.from && share <= f.to {
			return f.words
		}
	}
	return words.Percent(share)
}

// largestParts are the parts of a transplant's cost, the largest first.
func (p *page) largestParts(c money.Cost) []costPart {
	parts := slices.DeleteFunc(p.partsOf(c.Behind), func(part costPart) bool { return !(part.Money > 0) })
	slices.SortStableFunc(parts, func(a, b costPart) int { return cmp.Compare(b.Money, a.Money) })
	return parts
}

// costParts names the three largest parts and what failed cells took. Parts are of the
// batches that the cost rests on, so they add up to what a plant cost. Failed cells are no
// part beside them: they cut across all.
func (p *page) costParts(c money.Cost) template.HTML {
	each := c.PerTransplant.Value
	if each <= 0 {
		return ""
	}
	var largest []template.HTML
	for _, part := range p.largestParts(c)[:min(mostParts, len(p.largestParts(c)))] {
		largest = append(largest, say("%s (%s)", part.Words, words.Percent(part.Money/c.Usable.Value/each)))
	}
	out := say("The %s of a plant went above all to %s.", p.money.Each(each), list(largest))
	if c.FailedShare.Known && c.FailedShare.Value >= 0.005 {
		out = join(out, say("Of all the money, %s went into cells that gave no usable plant.", words.Percent(c.FailedShare.Value)))
	}
	return out
}

// runningCost warns that early sowings are the dear ones.
func (p *page) runningCost(season int) template.HTML {
	if season == 0 || p.r.Batches.Finished(season) {
		return ""
	}
	return "The season is still under way, and early sowings are the dear ones."
}

// usualCosts are the categories that raising transplants nearly always takes. Where a
// season has no money of one, its plants seem cheap for want of a bill.
var usualCosts = []money.Category{records.Seed, records.Mix, records.Labour, records.Heat}

// notInCost says which of the usual costs are in no figure of the season, so that a number
// which lacks them is never read as what a plant cost. There is always work, so without
// labour the cost is surely too low; a house may stand unheated, mix may be one's own.
func (p *page) notInCost(season int) template.HTML {
	lack := batch.Filter(usualCosts, func(c money.Category) bool { return !p.spentOn(season, c) })
	if len(lack) == 0 {
		return ""
	}
	names := make([]string, len(lack))
	for i, c := range lack {
		names[i] = "no " + categories[c].words
	}
	end := "if there was any, a plant cost more than this"
	switch {
	case slices.Contains(lack, records.Labour) && p.unpriced(season):
		end = "a plant cost more than this, as hours are written and no wage (book.csv) prices them"
	case slices.Contains(lack, records.Labour):
		end = "a plant cost more than this"
	}
	return say("%s is in the cost of %s: %s.", capital(string(list(names))), words.Year(season), end)
}

// spentOn reports whether the season's ledger has money of a category.
func (p *page) spentOn(season int, c money.Category) bool {
	return slices.ContainsFunc(p.r.Money.Ledger, func(l money.LedgerLine) bool {
		return l.Season == season && l.Category == c && shows(l.Ledger)
	})
}

// unpriced reports whether the season has hours of labour that nothing turns into money.
func (p *page) unpriced(season int) bool {
	s := p.r.Book.Settings
	return !s.Wage.Known && slices.ContainsFunc(p.r.Book.Costs, func(c records.Cost) bool {
		return c.Hours.Or(0) > 0 && s.Season(c.Date) == season
	})
}

// estimatedWords says how many of the plants of a cost are no full count: of those some
// are what is written so far of a batch (rule "Usable plants": at least), the others what
// like batches gave (estimated). The figures hold the two as one share, so the words name
// both. It goes on from a number of plants and ends no sentence; empty below half a
// percent, which would be written as 0 %.
func estimatedWords(c money.Cost) template.HTML {
	if !estimated(c) {
		return ""
	}
	return say(", %s of them estimated or from batches written only in part", words.Percent(c.EstimatedShare.Value))
}

// costBefore is the cost in the last finished season before. A season under way is not
// taken: its early sowings are dear.
func (p *page) costBefore(season int) template.HTML {
	for _, before := range slices.Backward(p.r.Batches.Seasons) {
		if c, _ := p.r.Money.Season(before); before < season && c.PerTransplant.Known && p.r.Batches.Finished(before) {
			return say("%s in %s", p.money.EachNumber(c.PerTransplant.Value), words.Year(before))
		}
	}
	return ""
}

// costSide is the parts of a plant's cost as bars.
func (p *page) costSide(c money.Cost) template.HTML {
	parts := p.largestParts(c)
	if len(parts) == 0 {
		return ""
	}
	const most = 5
	var rest float64
	for _, part := range parts[min(most, len(parts)):] {
		rest += part.Money
	}
	parts = slices.Clone(parts[:min(most, len(parts))])
	if rest > 0 {
		parts = append(parts, costPart{Words: "all else", Money: rest})
	}
	bars := make([]bar, len(parts))
	for i, part := range parts {
		each := part.Money / c.Usable.Value
		bars[i] = bar{markup(part.Words), p.money.EachNumber(each), each}
	}
	return barTable(say("What a plant cost, %s", p.money.Code()), bars, 0)
}

// bar is a line of a small table with a bar behind its number.
type bar struct {
	Word   template.HTML
	Number string
	Value  float64
}

// barTable is a small table of bars on one scale from 0, for the right margin. line is
// a value marked in each, 0 for none.
func barTable(title template.HTML, bars []bar, line float64) template.HTML {
	most := line
	for _, b := range bars {
		most = max(most, b.Value)
	}
	axis := draw.Axis{Max: max(most, 1e-12)}
	out := say(`<table class="mini"><caption>%s</caption><tbody>`, title)
	for _, b := range bars {
		out += say(`<tr><th scope="row">%s</th><td>%s</td><td class="d">%s</td></tr>`, b.Word, b.Number, axis.Plain(draw.Bar(0, b.Value, ""), draw.Line(line)))
	}
	return out + "</tbody></table>"
}
