package templates

import (
	"fmt"
	"html/template"

	"traybook/report/batch"
	"traybook/report/chart"
	"traybook/report/germination"
	"traybook/report/rate"
	"traybook/report/words"
)

// germinationPage is what came up, of what, when, and what was lost.
type germinationPage struct {
	Title     string
	Answer    template.HTML
	Emergence *figure
	Seeds     *table
	Compared  *table
	Judged    template.HTML
	Weeks     []weekPart
	Timing    *table
	Lost      template.HTML
	Losses    *figure
	Chambers  *chamberPart
	Seasons   more
}

// weekPart is a crop by week of sowing.
type weekPart struct {
	Figure *figure
	Table  more
}

// hasGermination reports whether anything was counted or any chamber written of.
func hasGermination(s *site) bool {
	return len(s.r.Germination.Emergence) > 0 || len(s.r.Germination.Losses) > 0 || len(s.r.Germination.Chambers) > 0
}

// germinationView tells the season reviewed; the others open on request.
func germinationView(p *page) any {
	season := p.r.Season
	v := germinationPage{Title: p.spec.title, Answer: p.cameUp(season), Judged: p.judgedOn(season)}
	v.Emergence = p.figure(seasonChart("emergence", season), "By variety, cells and kind of tray",
		"Cells with a living seedling at the last count, of the cells looked at; the lowest first.", p.emergenceTable(season))
	v.Seeds = p.seedTable(season)
	v.Compared = p.comparedTable(season)
	v.Weeks = p.weekParts(season)
	v.Timing = p.timingTable(season)
	v.Lost, v.Losses = p.lostWords(season), p.lossFigure(season)
	v.Chambers = p.chamberPart(season)
	v.Seasons.Summary = "Earlier seasons"
	for _, other := range p.otherSeasonsBack() {
		v.Seasons.Tables = append(v.Seasons.Tables, p.emergenceTable(other), p.timingTable(other), p.lossTable(other))
	}
	return v
}

// emergenceTable is a season's emergence, the lowest first, those sown too seldom
// below a line.
func (p *page) emergenceTable(season int) *table {
	t := p.table("emergence", say("Emergence, season %s", fmt.Sprint(season)), "emergence", groupHeads, nums("Emergence", "Cells looked at", "Batches"))
	addJudged(t, p.emergenceOf(season), fewLine("Sown"), germination.Emergence.Few, func(e germination.Emergence) {
		t.add(append(p.groupCells(e.Group), shareCell(e.Rate), words.Whole(e.N), countedBatches(e))...)
	})
	return t
}

// countedBatches is how many batches were counted, of how many sown.
func countedBatches(e germination.Emergence) cell {
	if e.LeftOut == 0 {
		return cell{Value: markup(words.Whole(e.Batches))}
	}
	return with(words.Whole(e.Batches), "of "+words.Whole(e.Batches+e.LeftOut))
}

// seedTable is what came up of one seed, of the groups with several to a cell.
func (p *page) seedTable(season int) *table {
	t := p.table("seeds", say("Cells with several seeds: what came up of one seed, season %s", fmt.Sprint(season)), "emergence", groupHeads, nums("Seeds a cell", "Of one seed", "Batches"))
	for _, e := range p.emergenceOf(season) {
		if e.SeedsPerCell.Known && e.SeedsPerCell.Value > 1 {
			t.add(append(p.groupCells(e.Group), words.Whole(e.SeedsPerCell.Value), rateCell(e.SeedRate, e.SeedLow, e.SeedHigh), words.Whole(e.Batches))...)
		}
	}
	t.note("Worked out from the cells with a seedling. A cell that failed as a whole makes each of its seeds look bad.")
	return t
}

// comparedTable sets each variety against the rest of its crop, the clear
// verdicts first.
func (p *page) comparedTable(season int) *table {
	t := p.table("differences", say("Each variety against the other varieties of its crop, seasons up to %s", fmt.Sprint(season)), "differences",
		plain("Crop", "Variety", "Verdict"), nums("More or fewer in 100 cells", "Batches", "The others"))
	for _, verdict := range []rate.Verdict{rate.ClearlyLower, rate.ClearlyHigher, rate.NoDifference, rate.TooFew} {
		for i, d := range p.comparedAs(season, verdict) {
			if verdict == rate.TooFew && i == 0 {
				t.under(say("Too few batches to judge: fewer than %s on either side", words.Whole(rate.FewBatches)))
			}
			t.add(p.crop(season, d.Crop), name(d.Variety), verdictCell(d.Verdict), differenceCell(d), words.Whole(d.Batches), words.Whole(d.OtherBatches))
		}
	}
	return t
}

// comparedAs are a season's comparisons with one verdict.
func (p *page) comparedAs(season int, verdict rate.Verdict) []germination.Difference {
	return batch.Filter(p.r.Germination.Differences, func(d germination.Difference) bool { return d.Season == season && d.Verdict == verdict })
}

// verdictCell is a verdict in a grower's words, coloured where it is clear.
func verdictCell(v rate.Verdict) cell {
	words := map[rate.Verdict]string{rate.ClearlyLower: "clearly worse", rate.ClearlyHigher: "clearly better",
		rate.NoDifference: "no clear difference", rate.TooFew: "too few batches"}[v]
	return cell{Value: markup(words), Class: map[rate.Verdict]string{rate.ClearlyLower: "bad", rate.ClearlyHigher: "good"}[v]}
}

// differenceCell is a difference in cells of a hundred, above its interval.
func differenceCell(d germination.Difference) cell {
	per := func(v float64) string { return words.Signed(100*v, 0) }
	if !d.Low.Known || !d.High.Known {
		return cell{Value: markup(words.Of(d.Difference, per))}
	}
	return with(words.Of(d.Difference, per), words.Signed(100*d.Low.Value, 1)+" to "+words.Signed(100*d.High.Value, 1))
}

// sownOften is the least number of weeks of sowing for a crop's course through
// the season to be shown.
const sownOften = 5

// weekParts are the crops sown often, by week of sowing, with the temperature
// beside.
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
	return out
}

// weekPart is a crop's chart by week of sowing, with its numbers on request.
func (p *page) weekPart(season int, crop string, weeks []germination.Week) weekPart {
	t := p.table("weeks-"+slug(crop), say("%s by week of sowing, season %s", name(crop), fmt.Sprint(season)), "weeks",
		plain("Week"), nums("Emergence", "Cells looked at", "Batches", "Temperature"))
	for _, w := range weeks {
		t.add(w.Week, words.Of(w.Share, words.Percent), words.Whole(w.N), words.Whole(w.Batches), p.weekTemp(w))
	}
	t.note("Temperature: the mean from sowing until a week after. A single week holds too few batches for a range.")
	return weekPart{p.figure(chart.Name("weeks", fmt.Sprint(season), crop), capital(crop)+" by week of sowing", weekWords(weeks), nil),
		more{Summary: say("%s, week by week", name(crop)), Tables: []*table{t}}}
}

// weekWords name the worst and the best week.
func weekWords(weeks []germination.Week) template.HTML {
	worst, best := weeks[0], weeks[0]
	for _, w := range weeks {
		if w.Share.Value < worst.Share.Value {
			worst = w
		}
		if w.Share.Value > best.Share.Value {
			best = w
		}
	}
	word := func(w germination.Week) template.HTML {
		return say("%s (%s, %s)", w.Week, words.Of(w.Share, words.Percent), words.Batches(w.Batches))
	}
	return say("The worst week was %s, the best %s.", word(worst), word(best))
}

// weekTemp is the temperature after a week's sowings, above where it was read.
func (p *page) weekTemp(w germination.Week) cell {
	if !w.Temp.Known {
		return cell{Value: words.None}
	}
	return with(p.temp(w.Temp.Value), w.TempOf)
}

// timingTable is how fast a season's groups came up.
func (p *page) timingTable(season int) *table {
	t := p.table("timing", say("Days until half of what came up was up, season %s", fmt.Sprint(season)), "timing", groupHeads,
		nums("Half up, days", "Mean, days", "Batches"), plain("Remark"))
	for _, g := range p.r.Germination.Timing {
		if g.Season == season {
			t.add(append(p.groupCells(g.Group), halfCell(g), words.Of(g.Mean, words.DaysNumber), words.Whole(g.Batches), timingRemark(g))...)
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
