package templates

import (
	"fmt"
	"html/template"
	"slices"

	"traybook/report/batch"
	"traybook/report/chart"
	"traybook/report/germination"
	"traybook/report/money"
	"traybook/report/trays"
	"traybook/report/words"
)

// emergenceFigure is a season's emergence by group, the lowest first as in its
// chart. Groups sown too seldom stand below a line; the front page leaves them to
// the page on germination, where there is one.
func emergenceFigure(p *page, season int) *figure {
	t := p.table("emergence", say("Emergence by variety, cells and kind of tray, season %s", fmt.Sprint(season)), "emergence",
		groupHeads, nums("Emergence", "Cells looked at", "Batches"))
	rows := p.emergenceOf(season)
	judged := batch.Filter(rows, func(e germination.Emergence) bool { return !e.Few() })
	few := len(rows) - len(judged)
	if few > 0 && len(judged) > 0 && season == p.r.Season && p.paths["germination.html"] {
		t.note(say("%s more sown too seldom to judge: see %s.", words.Plural(few, "group", "groups"), p.to("germination.html", "Germination")))
		rows = judged
	}
	addJudged(t, rows, fewLine("Sown"), germination.Emergence.Few, func(e germination.Emergence) {
		t.add(append(p.groupCells(e.Group), shareCell(e.Rate), words.Whole(e.N), words.Whole(e.Batches))...)
	})
	return p.figure(seasonChart("emergence", season), "What came up",
		"Cells with a living seedling at the last count, of the cells looked at; the lowest first.", t)
}

// costFigure is a season's cost of a transplant by crop, the dearest first.
func costFigure(p *page, season int) *figure {
	if !hasCosts(p.site) {
		return nil
	}
	t := p.costTableBy(season, "crop", "Cost of a usable transplant by crop", "Crop", p.r.Money.Crops,
		func(g batch.Group) any { return p.crop(season, g.Crop) })
	return p.figure(seasonChart("costs", season), "What a transplant cost",
		"All that the batches bear, over the plants fit to set out; the dearest first.", t)
}

// costGroupTable is a season's cost by variety, cells and kind of tray.
func (p *page) costGroupTable(season int) *table {
	rows := batch.Filter(p.r.Money.Cost, func(c money.Cost) bool { return c.Season == season && c.Total.Known })
	slices.SortStableFunc(rows, dearest)
	return p.costsTable("cost", say("Cost of a usable transplant by variety, cells and kind of tray, season %s, %s", fmt.Sprint(season), p.money.Code()), "cost",
		groupHeads, rows, func(i int) []any { return p.groupCells(rows[i].Group) })
}

// ledgerFigure is a season's money by category.
func ledgerFigure(p *page, season int) *figure {
	return p.figure("", "Where the money went", "What the logs hold, and how much of it batches bear.", p.ledgerTable(season))
}

// ledgerTable sets the money spent beside what batches bear of it.
func (p *page) ledgerTable(season int) *table {
	t := p.table("ledger", say("The ledger of season %s, %s", fmt.Sprint(season), p.money.Code()), "ledger",
		plain("Category"), nums("Spent", "Borne by batches", "Borne by none"))
	row := func(label string, l money.LedgerLine) []any {
		return []any{label, p.money.SumNumber(l.Ledger), p.money.SumNumber(l.Borne), p.money.SumNumber(l.Unborne)}
	}
	for _, l := range p.r.Money.Ledger {
		if l.Season == season {
			t.add(row(capital(categories[l.Category].words), l)...)
		}
	}
	if !t.Empty() {
		t.foot(row("In all", p.ledgerSum(season))...)
	}
	return t
}

// traysFigure is the payback of each pair of trays; it speaks of the whole book,
// whatever the season.
func traysFigure(p *page, _ int) *figure {
	t := p.table("payback", "Do the dearer trays pay?", "payback", plain("Tray", "Beside"),
		nums("More usable plants", "Gain a use", "Price", "Uses to pay back", "Worth today"), plain("Verdict"))
	for _, pb := range p.r.Trays.Payback {
		t.add(name(pb.Tray), name(pb.Other), p.differenceCell(pb), p.gainCell(pb), words.Of(pb.Price, p.money.SumNumber),
			words.Of(pb.PaybackUses, words.TenthsNumber), words.Of(pb.WorthToday, p.money.SumNumber), verdictWords(pb))
	}
	drawn, caption := p.matchesChart(), say("Money in %s. More usable plants: in 100 cells, over the matched sowings.", p.money.Code())
	if drawn != "" {
		caption = join("Drawn: each matched sowing of one pair, more usable plants a tray. In the table:", say("more usable plants in 100 cells, money in %s.", p.money.Code()))
	}
	return p.figure(drawn, "Do more trays pay?", caption, t)
}

// matchesChart is the name of the first pair's chart of matched sowings.
func (p *page) matchesChart() string {
	for _, pb := range p.r.Trays.Payback {
		if n := chart.Name("matches", pb.Tray, pb.Other); p.charts[n].Name != "" {
			return n
		}
	}
	return ""
}

// differenceCell is a pair's difference in plants of a hundred cells, above its
// interval and sample.
func (p *page) differenceCell(pb trays.Payback) cell {
	if !pb.Difference.Known {
		return with(words.None, words.Plural(pb.Matches, "match", "matches"))
	}
	per100 := func(v float64) string { return words.Signed(100*v, 1) }
	return with(per100(pb.Difference.Value), words.Interval(pb.DifferenceLow, pb.DifferenceHigh, per100)+", "+words.Plural(pb.Matches, "match", "matches"))
}

// gainCell is the gain of one use, above its interval.
func (p *page) gainCell(pb trays.Payback) cell {
	if !pb.Gain.Known {
		return cell{Value: words.None}
	}
	return with(p.money.SumNumber(pb.Gain.Value), words.Interval(pb.GainLow, pb.GainHigh, p.money.SumNumber))
}

// verdictWords is a pair's verdict; where there is none, that it cannot be told.
func verdictWords(pb trays.Payback) template.HTML {
	if pb.Verdict == "" {
		return "cannot be told"
	}
	return markup(pb.Verdict)
}
