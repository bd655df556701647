package templates

import (
	"fmt"
	"html/template"
	"slices"

	"traybook/report/batch"
	"traybook/report/chart"
	"traybook/report/germination"
	"traybook/report/rate"
	"traybook/report/words"
)

// germinationPage is what came up in a season, of what, when, and what was lost.
type germinationPage struct {
	Up       finding
	Verdicts *rows
	Groups   *rows
	Seeds    *table
	Alarms   []template.HTML
	Climate  *rows
	Weeks    []weekPart
	Timing   *table
	Lost     template.HTML
	Losses   *table
	Chambers *chamberPart
	Title    template.HTML // of the verdicts
}

// weekPart is a crop by week of sowing.
type weekPart struct {
	Figure *figure
	Table  more
}

// hasGermination reports whether anything was counted or any chamber written of. A season
// of losses or chamber readings alone has a page too: what is written there is worth its
// place.
func hasGermination(s *site, season int) bool {
	g := s.r.Germination
	return slices.ContainsFunc(g.Emergence, func(e germination.Emergence) bool { return e.Season == season }) ||
		slices.ContainsFunc(g.Losses, func(l germination.Loss) bool { return l.Season == season }) ||
		slices.ContainsFunc(g.Chambers, func(c germination.Chamber) bool { return c.Season == season })
}

// germinationView tells one season.
func germinationView(p *page) any {
	season := p.season
	v := germinationPage{Up: p.upFinding(season), Verdicts: p.verdictRows(season), Groups: p.groupRows(season), Seeds: p.seedTable(season)}
	v.Up.Note = p.upSample(season)
	v.Title = p.verdictTitle(season)
	v.Alarms, v.Climate = p.alarmSentences(season), p.climateRows()
	v.Weeks = p.weekParts(season)
	v.Timing = p.timingTable(season)
	v.Lost, v.Losses = p.lostWords(season), p.lossTable(season)
	v.Chambers = p.chamberPart(season)
	return v
}

// upSample is what the season's rate rests on, and what a range is. What a range means is
// said here once, where it is met first.
func (p *page) upSample(season int) template.HTML {
	total := p.r.Germination.Seasons[season]
	if !total.Share.Known {
		return "Count the cells with a living seedling once, about two weeks after sowing, into counts.csv."
	}
	return say("%s of %s were counted, %s. A range is where the share would lie, %s times in 100, if the season’s batches were drawn again.",
		words.Whole(total.Batches), words.Batches(p.sownIn(season)), words.Plural(total.N, "cell", "cells"), words.Fixed(100*p.r.Book.Settings.Confidence, 0))
}

// verdictTitle says which varieties stand apart from the others of their crop. Varieties
// whose verdict hangs on one seed lot do not count: that is a finding about the lot.
func (p *page) verdictTitle(season int) template.HTML {
	apart := append(p.apart(season, rate.ClearlyLower), p.apart(season, rate.ClearlyHigher)...)
	switch {
	case len(apart) == 0:
		return "No variety stands clearly apart from its crop"
	case len(apart) == 1:
		return say("%s stands apart from its crop", varietyList(apart))
	}
	return say("%s stand apart from their crops", varietyList(apart))
}

// seedTable is what came up of one seed, of the groups with several to a cell. Of such
// cells the share with a seedling says little; a cell of five seeds shows one nearly
// always.
func (p *page) seedTable(season int) *table {
	t := p.table("seeds", say("Cells with several seeds: what came up of one seed, season %s", fmt.Sprint(season)), "emergence", groupHeads, nums("Seeds a cell", "Of one seed", "Batches"))
	for _, e := range p.emergenceOf(season) {
		if e.SeedsPerCell.Known && e.SeedsPerCell.Value > 1 {
			t.add(append(p.groupCells(e.Group), words.Whole(e.SeedsPerCell.Value), rateCell(e.SeedRate, e.SeedLow, e.SeedHigh), words.Whole(e.Batches))...).Crop = e.Crop
		}
	}
	t.note("Worked out from the cells with a seedling. A cell that failed as a whole makes each of its seeds look bad.")
	return t
}

// comparedAs are a season's comparisons with one verdict.
func (p *page) comparedAs(season int, verdict rate.Verdict) []germination.Difference {
	return batch.Filter(p.r.Germination.Differences, func(d germination.Difference) bool { return d.Season == season && d.Verdict == verdict })
}

// sownOften is the least number of weeks of sowing for a crop's course through
// the season to be shown.
const sownOften = 5

// weekParts are the crops sown often, by week of sowing, with the temperature beside. Past
// so many crops only those of most batches have a drawing; the others say why they have
// none and keep their tables.
func (p *page) weekParts(season int) []weekPart {
	var crops []string
	weeks := map[string][]germination.Week{}
	for _, w := range p.r.Germination.Weeks {
		if w.Season != season {
			continue
		}
		if len(weeks[w.Crop]) == 0 {
			crops = append(crops, w.Crop)
		}
		weeks[w.Crop] = append(weeks[w.Crop], w)
	}
	var out []weekPart
	for _, crop := range crops {
		if len(weeks[crop]) >= sownOften {
			out = append(out, p.weekPart(season, crop, weeks[crop]))
		}
	}
	for _, w := range out {
		if f := w.Figure; len(out) > chart.MostWeeks && f.SVG == "" && f.Missing == "" {
			f.Missing = chart.MissingMany
		}
	}
	return out
}

// weekPart is a crop's chart by week of sowing, with its numbers on request.
func (p *page) weekPart(season int, crop string, weeks []germination.Week) weekPart {
	f := p.figure(chart.Name("weeks", fmt.Sprint(season), crop), capital(crop)+" by week of sowing", weekWords(weeks), nil)
	f.Crop = crop
	t := p.table("weeks-"+slug(crop), say("%s by week of sowing, season %s", name(crop), fmt.Sprint(season)), "weeks",
		plain("Week"), nums("Emergence", "Cells looked at", "Batches", "Temperature"))
	for _, w := range weeks {
		t.add(weekOf(w), shareCell(w.Rate), words.Whole(w.N), words.Whole(w.Batches), p.weekTemp(w)).Crop = crop
	}
	t.note("Temperature: the mean from sowing until a week after.")
	return weekPart{f, more{Summary: say("%s, week by week", name(crop)), Tables: []*table{t}}}
}

// WeeksShown reports whether any crop by week stands on the page itself.
func (v germinationPage) WeeksShown() bool {
	return slices.ContainsFunc(v.Weeks, func(w weekPart) bool { return w.Figure.Shown() || w.Table.Shown() })
}

// weekWords name the worst and the best week of three batches or more. A week of one or
// two batches is in the drawing and is not named: it would be the worst or the best by
// luck.
func weekWords(weeks []germination.Week) template.HTML {
	judged := batch.Filter(weeks, func(w germination.Week) bool { return !few(w.Rate) })
	if len(judged) < 2 {
		return say("No two weeks hold %s, so none is named best or worst.", words.Batches(rate.FewBatches))
	}
	worst, best := judged[0], judged[0]
	for _, w := range judged {
		if w.Share.Value < worst.Share.Value {
			worst = w
		}
		if w.Share.Value > best.Share.Value {
			best = w
		}
	}
	word := func(w germination.Week) template.HTML {
		return say("%s with %s, %s", weekOf(w), words.ShareText(w.Rate), words.Batches(w.Batches))
	}
	return say("Lowest was %s; highest %s.", word(worst), word(best))
}

// weekOf is a week of sowing by its Monday: the week of 6 April.
func weekOf(w germination.Week) string { return "the week of " + words.DayMonth(w.Monday()) }

// weekTemp is the temperature after a week's sowings, above where it was read.
func (p *page) weekTemp(w germination.Week) cell {
	if !w.Temp.Known {
		return cell{Value: words.None}
	}
	return with(p.temp(w.Temp.Value), w.TempOf)
}

// timingTable is how fast a season's groups came up. Where more than half stood at the
// first count the day lies before it, and no number says how far.
func (p *page) timingTable(season int) *table {
	t := p.table("timing", say("Days until half of what came up was up, season %s", fmt.Sprint(season)), "timing", groupHeads,
		nums("Half up, days", "Mean, days", "Batches"), plain("Remark"))
	for _, g := range p.r.Germination.Timing {
		if g.Season == season {
			t.add(append(p.groupCells(g.Group), halfCell(g), words.Of(g.Mean, words.DaysNumber), words.Whole(g.Batches), timingRemark(g))...).Crop = g.Crop
		}
	}
	t.note("Up before the first count: more than half stood by then, so these batches cannot tell. Counted early: more may have come up after the last count.")
	return t
}

// halfCell is the middle batch's day of half emergence, above the earliest and latest.
func halfCell(g germination.Timing) cell {
	earliest, latest := words.Of(g.Earliest, words.DaysNumber), words.Of(g.Latest, words.DaysNumber)
	if earliest == latest {
		return cell{Value: markup(words.Of(g.T50, words.DaysNumber))}
	}
	return with(words.Of(g.T50, words.DaysNumber), earliest+" to "+latest)
}

// timingRemark says of how many batches the days are less than sure.
func timingRemark(g germination.Timing) template.HTML {
	var parts []template.HTML
	if g.CountedEarly > 0 {
		parts = append(parts, say("%s counted early", words.Whole(g.CountedEarly)))
	}
	if g.Before > 0 {
		parts = append(parts, say("%s up before the first count", words.Whole(g.Before)))
	}
	return list(parts)
}
