package money

import (
	"traybook/records"
)

// costRows shares every row of costs.csv out among batches. What days with a period
// cost is gathered first and borne at the end.
func (a *accounts) costRows() {
	rows := a.pricedRows()
	setPeriods(rows, a.all.Settings)
	days, piled := newDayRates(a, rows), a.piles(rows)
	for _, row := range rows {
		a.has[row.Category] = true
		a.hasSow = a.hasSow || row.sows()
		borne, done := piled[row.alike()]
		if !done || !row.pilable() {
			borne = a.allocate(row, days)
		}
		a.enter(row.season, row.Category, row.amount, borne)
		if !borne {
			a.unborne(row.season, row.Category, row.whyUnborne(), row.amount)
		}
	}
	days.settle()
}

// allocate shares a row out; false where no batch bears it.
func (a *accounts) allocate(row *costRow, days *dayRates) bool {
	switch {
	case !row.Shared():
		return a.direct(row)
	case periodical(row.Category):
		return days.spread(row)
	}
	return a.shared(row)
}

// direct gives a row to the batch, or the season's batches of the crop and tray,
// that it names (rule "Direct rows").
func (a *accounts) direct(row *costRow) bool {
	if row.Batch != "" {
		b := a.of(row.Batch)
		if b != nil {
			a.bearer(row)(b, 1)
		}
		return b != nil
	}
	batches := a.claimants(row)
	return a.split(row, batches, weightOf(row, batches)) || a.split(row, batches, byTrays)
}

// shared spreads a season's seed, mix, feed, equipment and other (rules "Seed",
// "Mix", "Other shared rows"); where nothing has a weight, by trays, as direct rows.
func (a *accounts) shared(row *costRow) bool {
	batches := a.bySeason[row.season]
	if row.Category == records.Seed && a.split(row, a.withoutPricedLot(batches), bySeeds) {
		return true
	}
	return a.split(row, batches, weightOf(row, batches)) || a.split(row, batches, byTrays)
}

// split splits a row by weight; false where no batch has any.
func (a *accounts) split(row *costRow, batches []*Borne, w weight) bool {
	all := 0.0
	for _, b := range batches {
		all += w(b)
	}
	if !(all > 0) {
		return false
	}
	bear := a.bearer(row)
	for _, b := range batches {
		if claim := w(b); claim > 0 {
			bear(b, claim/all)
		}
	}
	return true
}
