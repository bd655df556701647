package templates

import (
	"cmp"
	"fmt"
	"html/template"
	"slices"

	"traybook/records"
	"traybook/report"
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

func hasCosts(s *site) bool { return len(s.r.Ledger) > 0 }

// costColumns are the categories of cost as the pages order and name them.
var costColumns = []struct {
	category records.Category
	words    string
	of       func(report.Parts) float64
}{
	{records.Seed, "seed", func(p report.Parts) float64 { return p.Seed }},
	{records.Mix, "mix", func(p report.Parts) float64 { return p.Mix }},
	{records.Labour, "labour", func(p report.Parts) float64 { return p.Labour }},
	{records.Heat, "heat", func(p report.Parts) float64 { return p.Heat }},
	{records.Power, "power", func(p report.Parts) float64 { return p.Power }},
	{records.Water, "water", func(p report.Parts) float64 { return p.Water }},
	{records.Feed, "feed", func(p report.Parts) float64 { return p.Feed }},
	{records.Equipment, "equipment", func(p report.Parts) float64 { return p.Equipment }},
	{records.Other, "other things", func(p report.Parts) float64 { return p.Other }},
	{report.TrayCharge, "trays", func(p report.Parts) float64 { return p.TrayCharge }},
}

// categoryWords is a category in the pages' words.
func categoryWords(c records.Category) string {
	for _, column := range costColumns {
		if column.category == c {
			return capital(column.words)
		}
	}
	return capital(string(c))
}

func costsView(p *place) any {
	season := p.r.Season
	return costsPage{
		Title: p.spec.title, Season: season, Answer: p.costWords(season),
		Seasons: p.costBySeason(),
		Groups:  p.costGroupTable(season),
		Parts:   p.costPartsTable(season),
		Crops:   costFigure(p, season),
		Failed:  p.failedWords(season),
		Words:   p.cropSentences(season),
		Trays: p.costTableBy(season, "trays", "Cost by cells and kind of tray", "Tray", byTray(season),
			func(g report.Group) any { return trayName(g) }),
		Months: p.costByMonth(season),
		Ledger: ledgerFigure(p, season), Unborne: p.unborneWords(season),
	}
}

func byCrop(season int) func(*report.Batch) (report.Group, bool) {
	return func(b *report.Batch) (report.Group, bool) {
		return report.Group{Season: season, Crop: b.Crop}, b.Season == season
	}
}

func byTray(season int) func(*report.Batch) (report.Group, bool) {
	return func(b *report.Batch) (report.Group, bool) {
		return report.Group{Season: season, Cells: b.TrayCells, Kind: b.Kind}, b.Season == season
	}
}

// costTableBy is a table of costs grouped by a key.
func (p *place) costTableBy(season int, id, caption, head string, key func(*report.Batch) (report.Group, bool), of func(report.Group) any) *table {
	rows := p.r.CostBy(key)
	slices.SortStableFunc(rows, dearest)
	return p.costsTable("cost-by-"+id, say("%s, season %s, %s", caption, fmt.Sprint(season), p.money.code), "batches", plain(head), rows,
		func(i int) []any { return []any{of(rows[i].Group)} })
}

// dearest puts the dearer transplant first, and rows without a figure last.
func dearest(a, b report.Cost) int {
	return cmp.Compare(b.PerTransplant.Or(-1), a.PerTransplant.Or(-1))
}

// costBySeason sets the seasons beside one another.
func (p *place) costBySeason() *table {
	var rows []report.Cost
	for _, season := range p.r.Seasons {
		if c, ok := p.r.SeasonCost(season); ok {
			rows = append(rows, c)
		}
	}
	return p.costsTable("cost-by-season", say("Cost of a usable transplant by season, %s", p.money.code), "batches", plain("Season"), rows,
		func(i int) []any { return []any{p.to(p.seasonPath(rows[i].Season), fmt.Sprint(rows[i].Season))} })
}

// costByMonth groups a season's ended batches by the month in which they ended.
func (p *place) costByMonth(season int) *table {
	var rows []report.Cost
	var months []string
	first, after := p.r.Book.Settings.SeasonDays(season)
	for start := first; start < after; {
		next := records.NewDate(start.Year(), start.Month()+1, 1)
		for _, c := range p.r.CostBy(func(b *report.Batch) (report.Group, bool) {
			return report.Group{Season: season}, b.Season == season && b.Ended() && start <= b.End && b.End < next
		}) {
			rows, months = append(rows, c), append(months, fmt.Sprintf("%s %d", start.Month(), start.Year()))
		}
		start = next
	}
	return p.costsTable("cost-by-month", say("Cost by month set out, season %s, %s", fmt.Sprint(season), p.money.code), "batches", plain("Month"), rows,
		func(i int) []any { return []any{months[i]} })
}

// costPartsTable is what a transplant is made of, and what all batches of the
// season bear, category by category.
func (p *place) costPartsTable(season int) *table {
	t := p.table("cost-parts", say("Parts of the cost, season %s, %s", fmt.Sprint(season), p.money.code), "batches",
		plain("Part"), nums("A transplant", "Share", "All batches of the season"))
	t.Summed = true
	c, ok := p.r.SeasonCost(season)
	if !ok || !c.Total.Known {
		return t
	}
	each := func(v float64) any {
		if !c.PerTransplant.Known {
			return noneYet
		}
		return p.money.eachNumber(v / c.Usable.Value)
	}
	share := func(v float64) any { return of(shareOfCost(v, c), percent) }
	add := func(words any, of func(report.Parts) float64) {
		t.add(words, each(of(c.Behind)), share(of(c.Behind)), p.money.sumNumber(of(c.Parts)))
	}
	for _, column := range costColumns {
		if p.r.HasCategory(column.category) && (abs(column.of(c.Parts)) >= 0.005 || abs(column.of(c.Behind)) >= 0.005) {
			add(capital(column.words), column.of)
		}
	}
	if abs(c.Parts.Carried) >= 0.005 || abs(c.Behind.Carried) >= 0.005 {
		add(prose("Taken over from other seasons’ batches, less handed on"), func(p report.Parts) float64 { return p.Carried })
	}
	t.foot("In all", each(c.Behind.Total()), share(c.Behind.Total()), p.money.sumNumber(c.Total.Value))
	return t
}

// shareOfCost is a part of what stands behind a cost, as a share of it.
func shareOfCost(v float64, c report.Cost) report.Num {
	total := c.Behind.Total()
	if !c.PerTransplant.Known || total <= 0 {
		return report.Num{}
	}
	return records.Known(v / total)
}

// cropSentences says of each crop, the dearest in all first, what a grower can
// act on.
func (p *place) cropSentences(season int) []template.HTML {
	rows := p.r.CostBy(byCrop(season))
	slices.SortStableFunc(rows, func(a, b report.Cost) int { return cmp.Compare(b.Total.Or(-1), a.Total.Or(-1)) })
	var out []template.HTML
	for _, c := range rows {
		if c.Total.Known && c.Total.Value > 0 {
			out = append(out, p.cropSentence(season, c))
		}
	}
	return out
}

func (p *place) cropSentence(season int, c report.Cost) template.HTML {
	crop := say("<strong>%s</strong>", p.crop(season, c.Crop))
	if !c.PerTransplant.Known {
		return say("%s: %s so far, and no figure of usable plants from an ended batch.", crop, p.money.sum(c.Total.Value))
	}
	sentence := say("%s: %s a transplant, %s; %s", crop, p.money.each(c.PerTransplant.Value), batchCount(c.Rests), p.largestPart(c))
	if c.FailedShare.Known {
		sentence = say("%s; %s of its money went into failed cells", sentence, percent(c.FailedShare.Value))
	}
	return sentence + "."
}

// saves says what would lower the largest part of a cost.
var saves = map[records.Category]string{
	records.Seed:      "fewer seeds a cell or a cheaper lot would save most",
	records.Mix:       "a smaller cell would save most",
	records.Labour:    "fewer minutes a tray would save most",
	records.Heat:      "a later sowing or a shorter stay would save most",
	report.TrayCharge: "using each tray oftener would save most",
}

// failedWords names the crops with which most money went into failed cells.
func (p *place) failedWords(season int) template.HTML {
	rows := p.r.CostBy(byCrop(season))
	lost := func(c report.Cost) float64 { return c.FailedShare.Value * c.Behind.Total() }
	slices.SortStableFunc(rows, func(a, b report.Cost) int { return cmp.Compare(lost(b), lost(a)) })
	var words []template.HTML
	for _, c := range rows[:min(3, len(rows))] {
		if c.FailedShare.Known && lost(c) >= 0.005 {
			words = append(words, say("%s (%s, %s)", p.crop(season, c.Crop), p.money.sum(lost(c)), batchCount(c.Rests)))
		}
	}
	if len(words) == 0 {
		return ""
	}
	return say("Most money went into failed cells with %s: look there first for what went wrong.", list(words))
}

// largestPart names the category that takes most of a cost.
func (p *place) largestPart(c report.Cost) template.HTML {
	parts := p.partsOf(c.Behind)
	if len(parts) == 0 || c.Behind.Total() <= 0 {
		return "no part known"
	}
	most := slices.MaxFunc(parts, func(a, b costPart) int { return cmp.Compare(a.Money, b.Money) })
	part := say("its largest part is %s (%s)", most.Words, percent(most.Money/c.Behind.Total()))
	switch {
	case c.FailedShare.Known && c.FailedShare.Value >= most.Money/c.Behind.Total():
		return say("%s, but finding out why cells failed would save more", part)
	case saves[most.Category] != "":
		return say("%s: %s", part, saves[most.Category])
	}
	return part
}

// unborneWords says what a season spent that no batch bears.
func (p *place) unborneWords(season int) template.HTML {
	spent, unborne := 0.0, 0.0
	for _, l := range p.r.Ledger {
		if l.Season == season {
			spent, unborne = spent+l.Ledger, unborne+l.Unborne
		}
	}
	if abs(unborne) < 0.005 {
		return say("All %s of the season is borne by batches.", p.money.sum(spent))
	}
	return say("Of %s spent, %s is borne by no batch: an empty house, trays that lay idle, a bill for days on which nothing stood.", p.money.sum(spent), p.money.sum(unborne))
}
