package money

import (
	"math"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
)

// trayCharges spreads what the trays cost a season over the batches sown in them,
// for the seasons from the first to the last sowing's (rule "Tray charge"). Trays
// that nothing was sown in stay unborne.
func (a *accounts) trayCharges() {
	if len(a.all.Seasons) == 0 || !a.chargesTrays() {
		return
	}
	a.has[TrayCharge] = true
	for season := range a.all.Through() {
		a.enter(season, TrayCharge, 0, true) // a line of 0 too
	}
	sown := map[codeSeason][]*Borne{}
	for _, season := range a.seasons {
		for _, of := range batch.SplitBy(season, (*Borne).TrayRank).Groups {
			sown[codeSeason{of[0].Tray, of[0].Season}] = of
		}
	}
	for _, code := range a.all.Codes.Sorted() {
		a.trayChargesOf(a.all.Codes[code], sown)
	}
}

// chargesTrays reports whether any purchase has a price and a count.
func (a *accounts) chargesTrays() bool {
	for _, row := range a.book.Trays {
		if row.Price.Known && row.Count.Or(0) > 0 {
			return true
		}
	}
	return false
}

// trayChargesOf spreads the charge of one code; sown is what was sown in each.
func (a *accounts) trayChargesOf(c *batch.TrayCode, sown map[codeSeason][]*Borne) {
	left := newRemaining(c, a.all.Settings)
	for season := range a.all.Through() {
		trays, charge := left.in(season), 0.0
		for i, row := range c.Rows {
			charge += row.Price.Or(0) * float64(trays[i]) * a.yearlyPart(a.lives[c.Code].Seasons.Value, row.Bought, season)
		}
		if charge == 0 {
			continue
		}
		row := &costRow{Cost: &records.Cost{Category: TrayCharge}, amount: charge}
		borne := a.split(row, sown[codeSeason{c.Code, season}], byTrays)
		a.enter(season, TrayCharge, charge, borne)
		if !borne {
			a.unborne(season, TrayCharge, IdleTrays, charge)
		}
	}
}

// yearlyPart is the part of a purchase's price that a season bears, of a life of n
// seasons, above 0: capital recovery for the whole seasons, then for the part of a
// season left; each season where no date is written.
func (a *accounts) yearlyPart(n float64, bought records.Date, season int) float64 {
	yearly := estimate.CapitalRecovery(a.all.Settings.DiscountRate, n)
	if !bought.Known() {
		return yearly
	}
	age := float64(season - a.all.Settings.Season(bought))
	switch whole := math.Floor(n); {
	case age < 0 || age > whole:
		return 0
	case age == whole:
		return yearly * (n - whole)
	}
	return yearly
}
