package templates

import (
	"html/template"
	"slices"

	"traybook/report/money"
	"traybook/report/words"
	"traybook/templates/draw"
)

// ledgerPart is a season's money by category: spent, borne, and borne by none with why.
type ledgerPart struct {
	Title template.HTML
	Rows  *rows
	Why   []template.HTML
}

// ledgerPart is nil where nothing was spent. Each line that no batch bears has its reason,
// so that nothing spent goes without being told where.
func (p *page) ledgerPart(season int) *ledgerPart {
	t := p.ledgerRows(season)
	if t.Empty() {
		return nil
	}
	part := &ledgerPart{Title: p.ledgerTitle(p.ledgerSum(season)), Rows: t}
	for _, u := range p.unborneOf(season) {
		part.Why = append(part.Why, p.noneWords(u))
	}
	if between := p.unsownYears(); between != "" {
		part.Why = append(part.Why, between)
	}
	return part
}

// ledgerTitle says how much of what was spent fell on no batch.
func (p *page) ledgerTitle(sum money.LedgerLine) template.HTML {
	if !shows(sum.Unborne) {
		return say("All %s that was spent fell on batches", p.money.Sum(sum.Ledger))
	}
	return say("Of %s spent, %s fell on no batch", p.money.Sum(sum.Ledger), p.money.Sum(sum.Unborne))
}

// ledgerSum adds a season's categories up.
func (p *page) ledgerSum(season int) (sum money.LedgerLine) {
	for _, l := range p.r.Money.Ledger {
		if l.Season == season {
			sum.Ledger, sum.Borne, sum.Unborne = sum.Ledger+l.Ledger, sum.Borne+l.Borne, sum.Unborne+l.Unborne
		}
	}
	return sum
}

// ledgerRows sets what was spent beside what batches bear of it, a category a row. A
// refund may bring a category below 0, for which the axis then has room on the left.
func (p *page) ledgerRows(season int) *rows {
	low, high := 0.0, 0.0
	var lines []money.LedgerLine
	for _, l := range p.r.Money.Ledger {
		if l.Season == season {
			lines = append(lines, l)
			low, high = min(low, l.Ledger, l.Borne), max(high, l.Ledger, l.Borne)
		}
	}
	axis := draw.Amounts(p.id("gledger"), high, plainAmount)
	if low < -hair {
		axis = draw.From(axis.ID, low, high, 1)
	}
	t := p.rows("ledger", "ledger n2", say("The ledger of %s, %s. Dark: borne by batches; hollow: by none.", words.Year(season), p.money.Code()), "ledger",
		col{Width: "c-name", Head: "What for"}, col{Class: "st", Head: "Spent", Axis: axis.Head()}, number("Borne"), number("By none"))
	for _, l := range lines {
		drawing := axis.Row(draw.Bar(0, l.Borne, ""), draw.Bar(l.Borne, l.Ledger, "h"))
		if !shows(l.Unborne) {
			drawing = axis.Row(draw.Bar(0, l.Borne, ""))
		}
		t.add("", "", capital(categories[l.Category].words), told(p.money.SumNumber(l.Ledger), "", drawing), p.money.SumNumber(l.Borne), p.noneNumber(l.Unborne))
	}
	if sum := p.ledgerSum(season); len(lines) > 1 {
		t.under("", "sum")
		t.add("", "", "In all", say("<b>%s</b>", p.money.SumNumber(sum.Ledger)), p.money.SumNumber(sum.Borne), p.noneNumber(sum.Unborne))
	}
	return t
}

// noneNumber leaves a cell empty where nothing is unborne: a 0 in every row hides the
// others.
func (p *page) noneNumber(v float64) string {
	if !shows(v) {
		return ""
	}
	return p.money.SumNumber(v)
}

// unborneOf is what a season spent that no batch bears, the largest sum first.
func (p *page) unborneOf(season int) []money.UnborneSum {
	var out []money.UnborneSum
	for _, u := range p.r.Money.Unborne {
		if u.Season == season && shows(u.Amount) {
			out = append(out, u)
		}
	}
	slices.SortStableFunc(out, func(a, b money.UnborneSum) int {
		switch {
		case a.Amount > b.Amount:
			return -1
		case a.Amount < b.Amount:
			return 1
		}
		return 0
	})
	return out
}

// unborneWhy are the reasons for which no batch bears a sum.
var unborneWhy = map[money.Why]string{
	money.EmptyHouse:  "the house stood empty on the days of the bill, or nothing was sown or left on the days of the work",
	money.NoSuchBatch: "its row names a batch, crop or tray of which that season has no batch",
	money.NothingSown: "nothing was sown that season",
	money.IdleTrays:   "trays in which nothing was sown that season",
}

// noneWords says why a sum is borne by none.
func (p *page) noneWords(u money.UnborneSum) template.HTML {
	return say("%s, %s: %s.", capital(categories[u.Category].words), p.money.Sum(u.Amount), unborneWhy[u.Why])
}

// unsownYears says what was spent in years without a sowing, which have no page.
func (p *page) unsownYears() template.HTML {
	var years []template.HTML
	for i := 0; i < len(p.r.Money.Ledger); {
		season, sum := p.r.Money.Ledger[i].Season, 0.0
		for ; i < len(p.r.Money.Ledger) && p.r.Money.Ledger[i].Season == season; i++ {
			sum += p.r.Money.Ledger[i].Unborne
		}
		if !slices.Contains(p.r.Batches.Seasons, season) && shows(sum) {
			years = append(years, say("%s in %s", p.money.Sum(sum), words.Year(season)))
		}
	}
	if len(years) == 0 {
		return ""
	}
	return say("Spent in seasons without a sowing, and borne by none: %s.", list(years))
}
