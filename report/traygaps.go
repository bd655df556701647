package report

import (
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/money"
	"traybook/report/trays"
)

// trayGaps are what trays.csv may leave blank of a tray code.
var trayGaps = []struct {
	blank func(*batch.TrayCode, money.Life) bool
	gap
}{
	{func(c *batch.TrayCode, _ money.Life) bool { return !c.Price.Known },
		gap{"price of a tray", "no charge for these trays in the cost of a transplant, and no answer to whether they pay", "price in trays.csv"}},
	{func(_ *batch.TrayCode, life money.Life) bool { return life.Assumed },
		gap{"life of a tray", "these trays are taken to last one season, so they seem dear", "lasts or uses in trays.csv"}},
	{func(c *batch.TrayCode, life money.Life) bool { return c.Price.Known && !life.Seasons.Known },
		gap{"years a tray lasts", "no charge for these trays: they were not sown, so their uses give no years", "lasts in trays.csv"}},
	{func(c *batch.TrayCode, _ money.Life) bool {
		return slices.ContainsFunc(c.Rows, func(row records.Purchase) bool { return !row.Count.Known })
	},
		gap{"number of trays bought", "these purchases count as no trays: no charge, and too few seem to be owned", "count in trays.csv"}},
	{func(c *batch.TrayCode, _ money.Life) bool { return c.BrokenBeyondBought() },
		gap{"trays bought", "more are written as broken or sold than were bought", "a row in trays.csv for each purchase"}},
}

// minutesGap is of a pair where a use costs labour of which the minutes, or the
// wage, are not written.
var minutesGap = gap{"minutes a use", "labour that differs by tray is left out of whether trays pay",
	"minutes of both codes in trays.csv, and wage in book.csv"}

// trayGapsOf returns what is missing of the tray codes, each kind of gap once with
// the codes it touches, and of the pairs.
func trayGapsOf(codes batch.Codes, m *money.Figures, t *trays.Figures) []Missing {
	var list []Missing
	for _, g := range trayGaps {
		touched := batch.Filter(codes.Sorted(), func(code string) bool { return g.blank(codes[code], m.Lives[code]) })
		list = append(list, g.naming(touched)...)
	}
	without := batch.Filter(t.Payback, func(p trays.Payback) bool { return p.MinutesLeftOut })
	return append(list, minutesGap.naming(codesOf(without, func(p trays.Payback) string { return p.Tray + " and " + p.Other }))...)
}
