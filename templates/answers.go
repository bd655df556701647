package templates

import (
	"cmp"
	"html/template"
	"slices"

	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/rate"
	"traybook/report/words"
)

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
