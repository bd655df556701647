package templates

import (
	"fmt"
	"html/template"
	"slices"

	"traybook/report"
	"traybook/report/chart"
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

func hasGermination(s *site) bool {
	return len(s.r.Emergence) > 0 || len(s.r.Losses) > 0 || len(s.r.Chambers) > 0
}

func germinationView(p *place) any {
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
func (p *place) emergenceTable(season int) *table {
	t := p.table("emergence", say("Emergence, season %s", fmt.Sprint(season)), "emergence", groupHeads, nums("Emergence", "Cells looked at", "Batches"))
	addJudged(t, p.emergenceOf(season), fewLine("Sown"), func(e report.Emergence) bool { return e.Few() }, func(e report.Emergence) {
		t.add(append(p.groupCells(e.Group), shareCell(e.Rate), whole(e.N), countedBatches(e))...)
	})
	return t
}

// countedBatches is how many batches were counted, of how many sown.
func countedBatches(e report.Emergence) cell {
	if e.LeftOut == 0 {
		return cell{Value: markup(whole(e.Batches))}
	}
	return with(whole(e.Batches), "of "+whole(e.Batches+e.LeftOut))
}

// seedTable is what came up of one seed, of the groups with several to a cell.
func (p *place) seedTable(season int) *table {
	t := p.table("seeds", say("Cells with several seeds: what came up of one seed, season %s", fmt.Sprint(season)), "emergence", groupHeads, nums("Seeds a cell", "Of one seed", "Batches"))
	for _, e := range p.emergenceOf(season) {
		if e.SeedsPerCell.Known && e.SeedsPerCell.Value > 1 {
			t.add(append(p.groupCells(e.Group), whole(e.SeedsPerCell.Value), rateCell(e.SeedRate, e.SeedLow, e.SeedHigh), whole(e.Batches))...)
		}
	}
	t.note("Worked out from the cells with a seedling. A cell that failed as a whole makes each of its seeds look bad.")
	return t
}

// comparedTable sets each variety against the rest of its crop, the clear
// verdicts first.
func (p *place) comparedTable(season int) *table {
	t := p.table("differences", say("Each variety against the other varieties of its crop, seasons up to %s", fmt.Sprint(season)), "differences",
		plain("Crop", "Variety", "Verdict"), nums("More or fewer in 100 cells", "Batches", "The others"))
	for _, verdict := range []report.Verdict{report.ClearlyLower, report.ClearlyHigher, report.NoDifference, report.TooFew} {
		for i, d := range p.comparedAs(season, verdict) {
			if verdict == report.TooFew && i == 0 {
				t.under(say("Too few batches to judge: fewer than %s on either side", whole(report.FewBatches)))
			}
			t.add(p.crop(season, d.Crop), name(d.Variety), verdictCell(d.Verdict), differenceCell(d), whole(d.Batches), whole(d.OtherBatches))
		}
	}
	return t
}

func (p *place) comparedAs(season int, verdict report.Verdict) []report.Difference {
	return slices.DeleteFunc(slices.Clone(p.r.Differences), func(d report.Difference) bool { return d.Season != season || d.Verdict != verdict })
}

func verdictCell(v report.Verdict) cell {
	words := map[report.Verdict]string{report.ClearlyLower: "clearly worse", report.ClearlyHigher: "clearly better",
		report.NoDifference: "no clear difference", report.TooFew: "too few batches"}[v]
	return cell{Value: markup(words), Class: map[report.Verdict]string{report.ClearlyLower: "bad", report.ClearlyHigher: "good"}[v]}
}

func differenceCell(d report.Difference) cell {
	per := func(v float64) string { return signed(100*v, 0) }
	if !d.Low.Known || !d.High.Known {
		return cell{Value: markup(of(d.Difference, per))}
	}
	return with(of(d.Difference, per), signed(100*d.Low.Value, 1)+" to "+signed(100*d.High.Value, 1))
}

// sownOften is the least number of weeks of sowing for a crop's course through
// the season to be shown.
const sownOften = 5

// weekParts are the crops sown often, by week of sowing, with the temperature
// beside.
func (p *place) weekParts(season int) []weekPart {
	var crops []string
	weeks := map[string][]report.SowingWeek{}
	for _, w := range p.r.Weeks {
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

func (p *place) weekPart(season int, crop string, weeks []report.SowingWeek) weekPart {
	t := p.table("weeks-"+slug(crop), say("%s by week of sowing, season %s", name(crop), fmt.Sprint(season)), "weeks",
		plain("Week"), nums("Emergence", "Cells looked at", "Batches", "Temperature"))
	for _, w := range weeks {
		t.add(w.Week, of(w.Share, percent), whole(w.N), whole(w.Batches), p.weekTemp(w))
	}
	t.note("Temperature: the mean from sowing until a week after. A single week holds too few batches for a range.")
	return weekPart{p.figure(chart.Name("weeks", fmt.Sprint(season), crop), capital(crop)+" by week of sowing", weekWords(weeks), nil),
		more{Summary: say("%s, week by week", name(crop)), Tables: []*table{t}}}
}

// weekWords name the worst and the best week.
func weekWords(weeks []report.SowingWeek) template.HTML {
	worst, best := weeks[0], weeks[0]
	for _, w := range weeks {
		if w.Share.Value < worst.Share.Value {
			worst = w
		}
		if w.Share.Value > best.Share.Value {
			best = w
		}
	}
	word := func(w report.SowingWeek) template.HTML {
		return say("%s (%s, %s)", w.Week, of(w.Share, percent), batchCount(w.Batches))
	}
	return say("The worst week was %s, the best %s.", word(worst), word(best))
}

func (p *place) weekTemp(w report.SowingWeek) cell {
	if !w.Temp.Known {
		return cell{Value: noneYet}
	}
	return with(p.temp(w.Temp.Value), w.TempOf)
}

// timingTable is how fast a season's groups came up.
func (p *place) timingTable(season int) *table {
	t := p.table("timing", say("Days until half of what came up was up, season %s", fmt.Sprint(season)), "timing", groupHeads,
		nums("Half up, days", "Mean, days", "Batches"), plain("Remark"))
	for _, g := range p.r.Timing {
		if g.Season == season {
			t.add(append(p.groupCells(g.Group), halfCell(g), of(g.Mean, daysNumber), whole(g.Batches), timingRemark(g))...)
		}
	}
	t.note("Up before the first count: more than half stood by then, so these batches cannot tell. Counted early: more may have come up after the last count.")
	return t
}

func halfCell(g report.Timing) cell {
	earliest, latest := of(g.Earliest, daysNumber), of(g.Latest, daysNumber)
	if earliest == latest {
		return cell{Value: markup(of(g.T50, daysNumber))}
	}
	return with(of(g.T50, daysNumber), earliest+" to "+latest)
}

func timingRemark(g report.Timing) template.HTML {
	var parts []template.HTML
	if g.CountedEarly > 0 {
		parts = append(parts, say("%s counted early", whole(g.CountedEarly)))
	}
	if g.Before > 0 {
		parts = append(parts, say("%s up before the first count", whole(g.Before)))
	}
	return list(parts)
}
