package templates

import (
	"cmp"
	"html/template"
	"math"
	"slices"

	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/money"
	"traybook/report/rate"
	"traybook/report/words"
)

// answers are the grower's questions about a season, in the order in which they
// are asked.
func (p *page) answers(season int) []answer {
	return []answer{
		{"What came up, and what did badly?", p.cameUp(season), p.moreOn("germination.html", "Germination")},
		{"What did a transplant cost, and of what?", p.costWords(season), p.moreOn("costs.html", "Costs")},
	}
}

// moreOn links to the page that tells more, if there is one.
func (p *page) moreOn(path, label string) template.HTML {
	if !p.paths[path] {
		return ""
	}
	return p.to(path, label)
}

// emergenceOf are the groups of a season that were counted, the lowest first.
func (p *page) emergenceOf(season int) []germination.Emergence {
	out := batch.Filter(p.r.Germination.Emergence, func(e germination.Emergence) bool { return e.Season == season && e.Share.Known })
	slices.SortStableFunc(out, func(a, b germination.Emergence) int { return cmp.Compare(a.Share.Value, b.Share.Value) })
	return out
}

// cameUp answers the first question: the season, its worst and best crops, and the
// varieties that came up clearly worse than the others of their crop.
func (p *page) cameUp(season int) template.HTML {
	total := p.r.Germination.Seasons[season]
	if !total.Share.Known {
		return "The records cannot tell: no batch of this season has a germination count that can be used. Count the cells with a living seedling once, about two weeks after sowing, into counts.csv."
	}
	overall := say("Of the cells looked at, %s held a living seedling: %s, %s.", words.ShareText(total),
		words.Batches(total.Batches), words.Plural(total.N, "cell", "cells"))
	return join(overall, p.cropExtremes(season), p.clearlyLower(season))
}

// cropExtremes names the crops that came up worst and best, of those with enough
// batches to be judged.
func (p *page) cropExtremes(season int) template.HTML {
	crops := batch.Filter(p.r.Germination.Crops, func(e germination.Emergence) bool {
		return e.Season == season && !e.Few() && e.Share.Known
	})
	slices.SortStableFunc(crops, func(a, b germination.Emergence) int { return cmp.Compare(a.Share.Value, b.Share.Value) })
	word := func(e germination.Emergence) template.HTML {
		return say("%s with %s, %s", p.crop(season, e.Crop), words.ShareText(e.Rate), words.Batches(e.Batches))
	}
	switch n := len(crops); {
	case n == 0:
		return say("No crop had the %s that a judgement needs.", words.Batches(rate.FewBatches))
	case n == 1:
		return say("Only one crop was sown often enough to be judged: %s.", word(crops[0]))
	case n < 4:
		return say("Worst came up %s; best %s.", word(crops[0]), word(crops[n-1]))
	default:
		return say("Worst came up %s, and %s; best %s.", word(crops[0]), word(crops[1]), word(crops[n-1]))
	}
}

// clearlyLower names the varieties with that verdict.
func (p *page) clearlyLower(season int) template.HTML {
	var found []template.HTML
	for _, d := range p.r.Germination.Differences {
		if d.Season == season && d.Verdict == rate.ClearlyLower {
			found = append(found, say("%s %s", name(d.Crop), name(d.Variety)))
		}
	}
	if len(found) == 0 {
		return ""
	}
	return say("Over the seasons up to this one clearly worse than the other varieties of their crop: %s.", list(found))
}

// costWords answers the second question.
func (p *page) costWords(season int) template.HTML {
	c, _ := p.r.Money.Season(season)
	if !hasCosts(p.site) || !c.Total.Known {
		return "The records cannot tell: no money or priced hours are written for this season. Write bills and hours into costs.csv, the wage into book.csv and prices into trays.csv and lots.csv."
	}
	if !c.PerTransplant.Known {
		return say("The records cannot tell: %s were spent, but no batch of the season has a figure of usable plants. Write set_out, plants_out and surplus into sowings.csv.", p.money.Sum(c.Total.Value))
	}
	first := say("A usable transplant cost %s: %s, %s.%s", p.money.Each(c.PerTransplant.Value), words.Batches(c.Rests),
		words.Plural(math.Round(c.Usable.Value), "usable plant", "usable plants"), p.estimatedWords(c))
	return join(first, p.costParts(c))
}

// estimatedWords says how far the plants of a cost are guessed.
func (p *page) estimatedWords(c money.Cost) template.HTML {
	if !estimated(c) {
		return ""
	}
	return say(" %s of those plants are estimated, because no one wrote how many there were.", words.Percent(c.EstimatedShare.Value))
}

// costParts names the three largest parts of a transplant's cost and what failed
// cells took.
func (p *page) costParts(c money.Cost) template.HTML {
	each := c.PerTransplant.Value
	if each <= 0 {
		return ""
	}
	parts := p.partsOf(c.Behind)
	slices.SortStableFunc(parts, func(a, b costPart) int { return cmp.Compare(b.Money, a.Money) })
	var largest []template.HTML
	for _, part := range parts[:min(mostParts, len(parts))] {
		if part.Money > 0 {
			one := part.Money / c.Usable.Value
			largest = append(largest, say("%s %s (%s)", part.Words, p.money.Each(one), words.Percent(one/each)))
		}
	}
	out := say("Most of it was %s.", list(largest))
	if c.FailedShare.Known {
		out = join(out, say("%s of the money went into cells that gave no usable plant.", words.Percent(c.FailedShare.Value)))
	}
	return out
}
