package templates

import (
	"cmp"
	"fmt"
	"html/template"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/money"
	"traybook/report/rate"
	"traybook/report/words"
)

// costsPage is what a transplant cost, and of what.
type costsPage struct {
	Title   string
	Season  int
	Answer  template.HTML
	Seasons *table
	Groups  *table
	Parts   *table
	Crops   *figure
	Failed  template.HTML
	Words   []template.HTML // a sentence a crop
	Trays   *table
	Months  *table
	Ledger  *figure
	Unborne template.HTML
}

// costsView sets the costs of the season reviewed, then the seasons side by side.
func costsView(p *page) any {
	season := p.r.Season
	return costsPage{
		Title: p.spec.title, Season: season, Answer: p.costWords(season),
		Seasons: p.costBySeason(),
		Groups:  p.costGroupTable(season),
		Parts:   p.costPartsTable(season),
		Crops:   costFigure(p, season),
		Failed:  p.failedWords(season),
		Words:   p.cropSentences(season),
		Trays: p.costTableBy(season, "trays", "Cost by cells and kind of tray", "Tray", p.r.Money.Sizes,
			func(g batch.Group) any { return trayName(g) }),
		Months: p.costByMonth(season),
		Ledger: ledgerFigure(p, season), Unborne: p.unborneWords(season),
	}
}

// costTableBy is a table of a season's rows, the dearest first; of is the cell that
// names a row's group.
func (p *page) costTableBy(season int, id, caption, head string, all []money.Cost, of func(batch.Group) any) *table {
	rows := money.InSeason(all, season)
	slices.SortStableFunc(rows, dearest)
	return p.costsTable("cost-by-"+id, say("%s, season %s, %s", caption, fmt.Sprint(season), p.money.Code()), "batches", plain(head), rows,
		func(i int) []any { return []any{of(rows[i].Group)} })
}

// dearest puts the dearer transplant first, and rows without a figure last.
func dearest(a, b money.Cost) int {
	return cmp.Compare(b.PerTransplant.Or(-1), a.PerTransplant.Or(-1))
}

// costBySeason sets the seasons beside one another.
func (p *page) costBySeason() *table {
	rows := p.r.Money.Seasons
	return p.costsTable("cost-by-season", say("Cost of a usable transplant by season, %s", p.money.Code()), "batches", plain("Season"), rows,
		func(i int) []any { return []any{p.to(p.seasonPath(rows[i].Season), fmt.Sprint(rows[i].Season))} })
}

// costByMonth is a season's ended batches by the month in which they ended.
func (p *page) costByMonth(season int) *table {
	var rows []money.Cost
	var months []string
	for _, m := range p.r.Money.Months {
		if m.Season == season {
			rows, months = append(rows, m.Cost), append(months, fmt.Sprintf("%s %d", m.First.Month(), m.First.Year()))
		}
	}
	return p.costsTable("cost-by-month", say("Cost by month set out, season %s, %s", fmt.Sprint(season), p.money.Code()), "batches", plain("Month"), rows,
		func(i int) []any { return []any{months[i]} })
}

// costPartsTable is what a transplant is made of, and what all batches of the
// season bear, category by category. The parts of a transplant are those of Behind,
// so that they add up to its cost.
func (p *page) costPartsTable(season int) *table {
	t := p.table("cost-parts", say("Parts of the cost, season %s, %s", fmt.Sprint(season), p.money.Code()), "batches",
		plain("Part"), nums("A transplant", "Share", "All batches of the season"))
	t.Summed = true
	c, _ := p.r.Money.Season(season)
	if !c.Total.Known {
		return t
	}
	all := p.partsOf(c.Parts)
	for i, behind := range p.partsOf(c.Behind) {
		if shows(behind.Money) || shows(all[i].Money) {
			t.add(p.partCells(capital(behind.Words), behind.Money, all[i].Money, c)...)
		}
	}
	if shows(c.Parts.Carried) || shows(c.Behind.Carried) {
		t.add(p.partCells(prose("Taken over from other seasons’ batches, less handed on"), c.Behind.Carried, c.Parts.Carried, c)...)
	}
	t.foot(p.partCells("In all", c.Behind.Total(), c.Total.Value, c)...)
	return t
}

// partCells is a row of parts: behind is what stands behind the transplants of c, all
// what all its batches bear.
func (p *page) partCells(label any, behind, all float64, c money.Cost) []any {
	each := any(words.None)
	if c.PerTransplant.Known {
		each = p.money.EachNumber(behind / c.Usable.Value)
	}
	return []any{label, each, words.Of(shareOfCost(behind, c), words.Percent), p.money.SumNumber(all)}
}

// shareOfCost is a part of what stands behind a cost, as a share of it; missing where
// no transplant has a cost, or nothing stands behind it.
func shareOfCost(v float64, c money.Cost) rate.Num {
	total := c.Behind.Total()
	if !c.PerTransplant.Known || total <= 0 {
		return rate.Num{}
	}
	return records.Known(v / total)
}

// hair is the money below which nothing is shown: it would be written as 0.00.
const hair = 0.005

// shows reports whether money is more, or less, than nothing as it is written.
func shows(v float64) bool { return abs(v) >= hair }
