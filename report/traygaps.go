package report

import (
	"slices"
	"strings"

	"traybook/records"
)

// trayGap is something that trays.csv leaves blank of a code.
type trayGap struct {
	blank               func(*trayCode) bool
	what, costs, remedy string
}

var trayGapsOf = []trayGap{
	{func(c *trayCode) bool { return !c.price.Known },
		"price of a tray", "no charge for these trays in the cost of a transplant, and no answer to whether they pay", "price in trays.csv"},
	{func(c *trayCode) bool { return c.life.Assumed },
		"life of a tray", "these trays are taken to last one season, so they seem dear", "lasts or uses in trays.csv"},
	{func(c *trayCode) bool { return c.price.Known && !c.life.Seasons.Known },
		"years a tray lasts", "no charge for these trays: they were not sown, so their uses give no years", "lasts in trays.csv"},
	{func(c *trayCode) bool {
		return slices.ContainsFunc(c.rows, func(row records.Purchase) bool { return !row.Count.Known })
	},
		"number of trays bought", "these purchases count as no trays: no charge, and too few seem to be owned", "count in trays.csv"},
	{func(c *trayCode) bool { return c.brokenBeyondBought() },
		"trays bought", "more are written as broken or sold than were bought", "a row in trays.csv for each purchase"},
}

// trayGaps returns what is missing of the tray codes, each kind of gap once with
// the codes it touches, and what a use costs in minutes where a pair lacks it.
func (p *accounts) trayGaps() []Missing {
	var gaps []Missing
	for _, g := range trayGapsOf {
		var codes []string
		for _, code := range sortedKeys(p.codes) {
			if g.blank(p.codes[code]) {
				codes = append(codes, code)
			}
		}
		gaps = appendGap(gaps, codes, g.what, g.costs, g.remedy)
	}
	var pairs []string
	for _, back := range p.r.Payback {
		if back.MinutesLeftOut {
			pairs = append(pairs, back.Tray+" and "+back.Other)
		}
	}
	return appendGap(gaps, pairs, "minutes a use", "labour that differs by tray is left out of whether trays pay",
		"minutes of both codes in trays.csv, and wage in book.csv")
}

func appendGap(gaps []Missing, codes []string, what, costs, remedy string) []Missing {
	if len(codes) == 0 {
		return gaps
	}
	return append(gaps, Missing{What: what + ": " + strings.Join(codes, ", "), Costs: costs, Remedy: remedy})
}

// brokenBeyondBought reports whether on any day fewer than no trays were owned.
func (c *trayCode) brokenBeyondBought() bool {
	owned := 0
	for i, row := range c.rows {
		owned += row.Count.Or(0)
		if owned < 0 && (i+1 == len(c.rows) || c.rows[i+1].Bought > row.Bought) {
			return true
		}
	}
	return false
}
