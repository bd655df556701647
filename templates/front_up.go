package templates

import (
	"cmp"
	"html/template"
	"slices"

	"traybook/report"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/rate"
	"traybook/report/words"
	"traybook/templates/draw"
)

// upFinding answers the first question of a season: what came up, and what did badly.
// Emergence is of cells, not of seeds: a cell sown with three seeds counts once.
func (p *page) upFinding(season int) finding {
	total := p.r.Germination.Seasons[season]
	if !total.Share.Known {
		return finding{Title: "Nothing that was sown has been counted", Big: "?", What: "of the cells came up",
			Say:  []template.HTML{"The records cannot tell: no batch of this season has a count that can be used."},
			Note: "Count the cells with a living seedling once, about two weeks after sowing, into counts.csv."}
	}
	f := finding{Title: p.upTitle(season, total), Big: words.PercentNumber(total.Share.Value), Unit: "%", What: "of the cells came up"}
	f.Range = seasonRange(total)
	f.Say = []template.HTML{join(say("Of the cells looked at, %s held a living seedling.", words.Percent(total.Share.Value)), p.apartSentence(season), p.namedWords(season))}
	f.Note = say("%s of %s were counted, %s. %s", words.Whole(total.Batches), words.Batches(p.sownIn(season)), words.Plural(total.N, "cell", "cells"),
		p.moreOn(p.here("germination"), "Germination, "+words.Year(season)))
	f.Side = p.traySide(season, total)
	return f
}

// upTitle is the finding: varieties that stand apart before crops that do. A variety can
// be changed on the next order, a crop cannot, so varieties come first. Verdicts that hang
// on a single seed lot name no variety here.
func (p *page) upTitle(season int, total rate.Rate) template.HTML {
	lower, higher := p.apart(season, rate.ClearlyLower), p.apart(season, rate.ClearlyHigher)
	worst, best := p.r.Germination.NamedCrops(season)
	switch {
	case len(lower) > 0:
		return say("%s came up badly", varietyList(lower))
	case len(worst) > 0:
		return say("%s came up worst", p.cropList(worst, 2))
	case len(higher) > 0:
		return say("%s came up better than the rest of %s", varietyList(higher), theirCrop(higher))
	case len(best) > 0:
		return say("%s came up best", p.cropList(best, 2))
	case fewAlike(total):
		return noneAlike
	case !total.Low.Known:
		return "Too few batches were counted to set any crop apart"
	}
	return "No crop and no variety stood clearly apart"
}

// apart lists the varieties with a clear verdict, the farthest from the others first.
func (p *page) apart(season int, verdict rate.Verdict) []germination.Difference {
	found := batch.Filter(p.comparedAs(season, verdict), func(d germination.Difference) bool { return d.Difference.Known })
	slices.SortStableFunc(found, func(a, b germination.Difference) int {
		return cmp.Compare(abs(b.Difference.Value), abs(a.Difference.Value))
	})
	return found
}

// mostNamed is how many varieties or crops a heading names.
const mostNamed = 3

// varietyList names varieties for a heading: a, b and 2 more.
func varietyList(of []germination.Difference) template.HTML {
	var names []template.HTML
	for _, d := range of {
		names = append(names, markup(name(d.Variety)))
	}
	return namedList(names)
}

// namedList names the first of a list: a, b and 2 more.
func namedList(names []template.HTML) template.HTML {
	if len(names) > mostNamed {
		names = append(slices.Clone(names[:mostNamed-1]), say("%s more", words.Whole(len(names)-mostNamed+1)))
	}
	return list(names)
}

// theirCrop is "its crop" of one variety, "their crops" of several.
func theirCrop(of []germination.Difference) string {
	if len(of) == 1 {
		return "its crop"
	}
	return "their crops"
}

// cropList names crops for a heading, the first with a capital.
func (p *page) cropList(of []germination.Emergence, most int) template.HTML {
	var names []template.HTML
	for i, e := range of[:min(most, len(of))] {
		crop := e.Crop
		if i == 0 {
			crop = capital(crop)
		}
		names = append(names, markup(name(crop)))
	}
	return list(names)
}

// apartSentence tells each variety that came up clearly lower or higher than the rest of
// its crop. Differences are in cells of a hundred against the crop's other varieties in
// like sowings, over all seasons so far: one season seldom tells.
func (p *page) apartSentence(season int) template.HTML {
	lower, higher := p.apartList(season, rate.ClearlyLower, "fewer"), p.apartList(season, rate.ClearlyHigher, "more")
	in := say("over the seasons up to %s", words.Year(season))
	switch {
	case lower == "" && higher == "":
		return ""
	case higher == "":
		return say("Clearly lower than the rest of their crop, %s: %s.", in, lower)
	case lower == "":
		return say("Clearly higher than the rest of their crop, %s: %s.", in, higher)
	}
	return say("Clearly lower than the rest of their crop, %s: %s; clearly higher: %s.", in, lower, higher)
}

// apartList names the varieties of one verdict with their differences.
func (p *page) apartList(season int, verdict rate.Verdict, how string) template.HTML {
	found := p.apart(season, verdict)
	if len(found) == 0 {
		return ""
	}
	var parts []template.HTML
	for _, d := range found[:min(len(found), mostNamed)] {
		link := p.to(p.here("germination")+"#"+varietyID(d.Crop, d.Variety), say("%s %s", name(d.Crop), name(d.Variety)))
		parts = append(parts, say("%s (%s %s in 100 cells)", link, words.Fixed(100*abs(d.Difference.Value), 0), how))
	}
	if n := len(found) - len(parts); n > 0 {
		parts = append(parts, say("%s more", words.Whole(n)))
	}
	return list(parts)
}

// varietyID is the anchor of a variety's verdict on the page of germination.
func varietyID(crop, variety string) string { return "variety-" + slug(crop+" "+variety) }

// namedWords names the crops that came up worst and best, where any stood apart from the
// season's rate (rule "Named crops"). Crops with several seeds a cell are not named:
// theirs come up nearly always, whatever the seed.
func (p *page) namedWords(season int) template.HTML {
	worst, best := p.r.Germination.NamedCrops(season)
	word := func(e germination.Emergence) template.HTML {
		return say("%s with %s", p.crop(season, e.Crop), words.ShareText(e.Rate))
	}
	switch {
	case len(worst) > 0 && len(best) > 0:
		return say("Of the crops sown one seed a cell, %s came up worst, %s best.", word(worst[0]), word(best[0]))
	case len(worst) > 0:
		return say("Of the crops sown one seed a cell, %s came up worst.", word(worst[0]))
	case len(best) > 0:
		return say("Of the crops sown one seed a cell, %s came up best.", word(best[0]))
	}
	if !p.r.Germination.Seasons[season].Low.Known {
		return "" // the heading has said that no crop can be judged
	}
	return "No crop stood clearly apart."
}

// sownIn is how many batches of a season were sown from seed.
func (p *page) sownIn(season int) int {
	return len(batch.Filter(p.seasons[season], func(b *report.Record) bool { return b.FromSeed }))
}

// traySide draws the season's rate as a tray of the cells that it sowed most. A share is
// easier to see as holes in a tray than as a number. The cells are those of the tray sown
// most, so it is a tray that the grower knows.
func (p *page) traySide(season int, total rate.Rate) template.HTML {
	cells := p.usualCells(season)
	if cells == 0 {
		return ""
	}
	up := int(words.Round(total.Share.Value*float64(cells), 0))
	title := "A tray of " + words.Whole(cells) + " cells in which " + words.Whole(up) + " hold a seedling"
	return caption(draw.Tray(p.id("tray"), title, cells, up),
		say("In a tray of %s that is %s and %s.", words.Whole(cells), words.Plural(up, "seedling", "seedlings"), words.Plural(cells-up, "empty cell", "empty cells")))
}

// mostDrawn is the most cells of a tray that can be told apart in the margin.
const mostDrawn = 300

// usualCells is the number of cells of the trays that a season sowed most; 0 where it is
// unknown or too many to draw. Trays are counted, not batches; of two sizes sown alike
// often the larger is drawn, so that the order of the log does not decide.
func (p *page) usualCells(season int) int {
	trays := map[int]float64{}
	best := 0
	for _, b := range p.seasons[season] {
		if n := b.TrayCells.Or(0); n > 0 && n <= mostDrawn {
			trays[n] += b.Trays
		}
	}
	for n, of := range trays {
		if best == 0 || of > trays[best] || of == trays[best] && n > best {
			best = n
		}
	}
	return best
}
