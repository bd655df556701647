package report

import (
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/money"
	"traybook/report/trays"
)

// trayGaps are what trays.csv may leave blank of a tray code, and in which of its rows.
var trayGaps = []struct {
	blank func(*batch.TrayCode, money.Life) bool
	row   func(records.Purchase) bool
	gap
}{
	{func(c *batch.TrayCode, _ money.Life) bool { return !c.Price.Known },
		func(row records.Purchase) bool { return !row.Price.Known },
		gap{"price of a tray", "no charge for these trays in the cost of a transplant, and no answer to whether they pay", "price in trays.csv",
			"trays.csv", "price", looking, part}},
	{func(c *batch.TrayCode, life money.Life) bool { return life.Assumed && c.Price.Known },
		func(row records.Purchase) bool { return !row.Lasts.Known },
		gap{"life of a tray", "these trays are taken to last one season, so they seem dear", "lasts or uses in trays.csv", "trays.csv", "lasts", typing, part}},
	{func(c *batch.TrayCode, life money.Life) bool { return c.Price.Known && life.EndsByAssumedYears() },
		func(row records.Purchase) bool { return !row.Lasts.Known },
		gap{"years a tray lasts", "these trays are taken to last 15 years, as their uses are not spent before", "lasts in trays.csv", "trays.csv", "lasts", typing, detail}},
	{func(c *batch.TrayCode, _ money.Life) bool { return !c.Counted() },
		func(row records.Purchase) bool { return !row.Count.Known },
		gap{"number of trays bought", "nobody knows how many are owned: no charge for these purchases, no trays left, and no answer to how many more to buy",
			"count in trays.csv", "trays.csv", "count", looking, part}},
	{func(c *batch.TrayCode, _ money.Life) bool { return c.BrokenBeyondBought() }, nil,
		gap{"trays bought", "more are written as broken or sold than were bought", "a row in trays.csv for each purchase", "trays.csv", "count", looking, part}},
}

// pairGap is what a use of a pair differs by that is not written, in which rows, and where
// else if in none of them.
type pairGap struct {
	is        func(trays.Payback) bool
	row       func(records.Purchase) bool
	elsewhere Place
	gap
}

var pairGaps = []pairGap{
	{func(p trays.Payback) bool { return p.MinutesLeftOut }, func(row records.Purchase) bool { return !row.Minutes.Known },
		Place{File: "book.csv", Column: "value", Of: "wage"},
		gap{"minutes a use", "labour that differs by tray is left out of whether trays pay",
			"minutes of both codes in trays.csv, and wage in book.csv", "trays.csv", "minutes", typing, part}},
	{func(p trays.Payback) bool { return p.MixLeftOut }, func(row records.Purchase) bool { return !row.CellML.Known },
		Place{File: "costs.csv", Column: "amount", Of: "mix"},
		gap{"mix a use", "mix that differs by tray is left out of whether trays pay",
			"cell_ml of both codes in trays.csv, and the bills for mix in costs.csv", "trays.csv", "cell_ml", typing, detail}},
}

// trayGapsOf returns what is missing of the tray codes, each kind of gap once with
// the codes it touches, and of the pairs.
func trayGapsOf(book *records.Book, b *batch.Batches, m *money.Figures, t *trays.Figures) []Missing {
	var list []Missing
	for _, g := range trayGaps {
		codes := batch.Filter(b.Codes.Sorted(), func(code string) bool { return g.blank(b.Codes[code], m.Lives[code]) })
		if len(codes) > 0 {
			list = append(list, trayGap(g.gap, book, b, codes, codes, g.row))
		}
	}
	for _, g := range pairGaps {
		list = append(list, g.of(book, b, t.Payback)...)
	}
	return list
}

// trayGap is a gap of codes, named by their names, with the rows of them that have it; row
// nil: a row is to be added for each.
func trayGap(g gap, book *records.Book, b *batch.Batches, codes, names []string, row func(records.Purchase) bool) Missing {
	var places []Place
	for _, code := range codes {
		if row == nil {
			places = append(places, g.newRow(code))
			continue
		}
		for _, p := range batch.Filter(b.Codes[code].Rows, row) {
			places = append(places, g.place(book, p.At, code))
		}
	}
	lacks := map[string]bool{}
	for _, code := range codes {
		lacks[code] = true
	}
	sown := batch.Filter(b.List, func(one *batch.Batch) bool { return lacks[one.Tray] })
	return g.naming(names).missing(0, len(sown), codesOf(sown, func(one *batch.Batch) string { return one.Code }), places)
}

// of is the gap as it touches the pairs, once; none where it touches none.
func (g pairGap) of(book *records.Book, b *batch.Batches, pairs []trays.Payback) []Missing {
	with := batch.Filter(pairs, g.is)
	if len(with) == 0 {
		return nil
	}
	var codes []string
	for _, p := range with {
		codes = append(codes, p.Tray, p.Other)
	}
	slices.Sort(codes)
	names := codesOf(with, func(p trays.Payback) string { return p.Tray + " and " + p.Other })
	m := trayGap(g.gap, book, b, slices.Compact(codes), names, g.row)
	if len(m.Places) == 0 {
		m.Places, m.Minutes = []Place{g.elsewhere}, asking
	}
	return []Missing{m}
}
