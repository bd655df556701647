package templates

import (
	"fmt"
	"html/template"
	"slices"

	"traybook/records"
	"traybook/report"
	"traybook/report/chart"
)

// emergenceFigure is a season's emergence by group, the lowest first as in its
// chart; groups sown too seldom stand below a line.
func emergenceFigure(p *place, season int) *figure {
	t := p.table("emergence", say("Emergence by variety, cells and kind of tray, season %s", fmt.Sprint(season)), "emergence",
		groupHeads, nums("Emergence", "Cells looked at", "Batches"))
	all := p.emergenceOf(season)
	few := slices.DeleteFunc(slices.Clone(all), func(e report.Emergence) bool { return !e.Few() })
	for _, e := range all {
		if !e.Few() {
			p.addEmergence(t, e)
		}
	}
	p.addFew(t, season, few)
	return p.figure(seasonChart("emergence", season), "What came up",
		"Cells with a living seedling at the last count, of the cells looked at; the lowest first.", t)
}

// addFew sets the groups sown too seldom below a line; the front page leaves them
// to the page on germination, where there is one.
func (p *place) addFew(t *table, season int, few []report.Emergence) {
	if len(few) == 0 {
		return
	}
	if season == p.r.Season && p.paths["germination.html"] && t.Rows() > 0 {
		t.note(say("%s more sown too seldom to judge: see %s.", plural(len(few), "group", "groups"), p.to("germination.html", "Germination")))
		return
	}
	t.under(say("Sown too seldom to judge: fewer than %s", batchCount(report.FewBatches)))
	for _, e := range few {
		p.addEmergence(t, e)
	}
}

func (p *place) addEmergence(t *table, e report.Emergence) {
	t.add(append(p.groupCells(e.Group), shareCell(e.Rate), whole(e.N), whole(e.Batches))...)
}

// costFigure is a season's cost of a transplant by crop, the dearest first.
func costFigure(p *place, season int) *figure {
	if !hasCosts(p.site) {
		return nil
	}
	t := p.costTableBy(season, "crop", "Cost of a usable transplant by crop", "Crop", byCrop(season),
		func(g report.Group) any { return p.crop(season, g.Crop) })
	return p.figure(seasonChart("costs", season), "What a transplant cost",
		"All that the batches bear, over the plants fit to set out; the dearest first.", t)
}

// costGroupTable is a season's cost by variety, cells and kind of tray.
func (p *place) costGroupTable(season int) *table {
	var rows []report.Cost
	for _, c := range p.r.Cost {
		if c.Season == season && c.Total.Known {
			rows = append(rows, c)
		}
	}
	slices.SortStableFunc(rows, dearest)
	return p.costsTable("cost", say("Cost of a usable transplant by variety, cells and kind of tray, season %s, %s", fmt.Sprint(season), p.money.code), "cost",
		groupHeads, rows, func(i int) []any { return p.groupCells(rows[i].Group) })
}

// ledgerFigure is a season's money by category.
func ledgerFigure(p *place, season int) *figure {
	return p.figure("", "Where the money went", "What the logs hold, and how much of it batches bear.", p.ledgerTable(season))
}

// ledgerTable sets the money spent beside what batches bear of it.
func (p *place) ledgerTable(season int) *table {
	t := p.table("ledger", say("The ledger of season %s, %s", fmt.Sprint(season), p.money.code), "ledger",
		plain("Category"), nums("Spent", "Borne by batches", "Borne by none"))
	var sum report.LedgerLine
	for _, l := range p.r.Ledger {
		if l.Season == season {
			t.add(categoryWords(records.Category(l.Category)), p.money.sumNumber(l.Ledger), p.money.sumNumber(l.Borne), p.money.sumNumber(l.Unborne))
			sum.Ledger, sum.Borne, sum.Unborne = sum.Ledger+l.Ledger, sum.Borne+l.Borne, sum.Unborne+l.Unborne
		}
	}
	if !t.Empty() {
		t.foot("In all", p.money.sumNumber(sum.Ledger), p.money.sumNumber(sum.Borne), p.money.sumNumber(sum.Unborne))
	}
	return t
}

// traysFigure is the payback of each pair of trays; it speaks of the whole book,
// whatever the season.
func traysFigure(p *place, _ int) *figure {
	t := p.table("payback", "Do the dearer trays pay?", "payback", plain("Tray", "Beside"),
		nums("More usable plants", "Gain a use", "Price", "Uses to pay back", "Worth today"), plain("Verdict"))
	for _, pb := range p.r.Payback {
		t.add(name(pb.Tray), name(pb.Other), p.differenceCell(pb), p.gainCell(pb), of(pb.Price, p.money.sumNumber),
			of(pb.PaybackUses, tenthsNumber), of(pb.WorthToday, p.money.sumNumber), verdictWords(pb))
	}
	drawn, caption := p.matchesChart(), say("Money in %s. More usable plants: in 100 cells, over the matched sowings.", p.money.code)
	if drawn != "" {
		caption = join("Drawn: each matched sowing of one pair, more usable plants a tray. In the table:", say("more usable plants in 100 cells, money in %s.", p.money.code))
	}
	return p.figure(drawn, "Do more trays pay?", caption, t)
}

// matchesChart is the name of the first pair's chart of matched sowings.
func (p *place) matchesChart() string {
	for _, pb := range p.r.Payback {
		if n := chart.Name("matches", pb.Tray, pb.Other); p.charts[n].Name != "" {
			return n
		}
	}
	return ""
}

func (p *place) differenceCell(pb report.Payback) cell {
	if !pb.Difference.Known {
		return with(noneYet, plural(pb.Matches, "match", "matches"))
	}
	per100 := func(v float64) string { return signed(100*v, 1) }
	return with(per100(pb.Difference.Value), interval(pb.DifferenceLow, pb.DifferenceHigh, per100)+", "+plural(pb.Matches, "match", "matches"))
}

func (p *place) gainCell(pb report.Payback) cell {
	if !pb.Gain.Known {
		return cell{Value: noneYet}
	}
	return with(p.money.sumNumber(pb.Gain.Value), interval(pb.GainLow, pb.GainHigh, p.money.sumNumber))
}

func verdictWords(pb report.Payback) template.HTML {
	if pb.Verdict == "" {
		return "cannot be told"
	}
	return markup(pb.Verdict)
}
