package money

import (
	"slices"

	"traybook/records"
)

// warmEnough is the mean outdoor temperature, Celsius, from which no heating is
// counted (rule "Heat").
const warmEnough = 15

// outdoors returns the degrees below 15 C of every day of house.csv that has
// the outdoor low and high; of several rows of a day the last stands.
func outdoors(readings []records.HouseReading) map[records.Date]float64 {
	cold := map[records.Date]float64{}
	for _, h := range readings {
		if h.OutLow.Known && h.OutHigh.Known {
			cold[h.Date] = max(0, warmEnough-(h.OutLow.Value+h.OutHigh.Value)/2)
		}
	}
	return cold
}

// heatDays returns the days of a heating bill: those in heating months, or all
// where none is.
func heatDays(s records.Settings, start, end records.Date) []records.Date {
	var days, all []records.Date
	for d := start; d <= end; d++ {
		all = append(all, d)
		if s.Heating(int(d.Month())) {
			days = append(days, d)
		}
	}
	if len(days) == 0 {
		return all
	}
	return days
}

// heat spreads a heating bill by tray-days of its heated days, each weighted by how
// cold it was where the log has every such day's outdoor low and high; where that
// leaves no weight, by tray-days alone. False where nothing stood on those days: an
// empty house was heated, and no batch of another day has to do with it.
func (h *dayRates) heat(row *costRow) bool {
	days := heatDays(h.settings, row.start, row.end)
	measured := !slices.ContainsFunc(days, func(d records.Date) bool { _, known := h.cold[d]; return !known })
	if measured && h.heatBy(row, days, func(d records.Date) float64 { return h.cold[d] }) {
		return true
	}
	return h.heatBy(row, days, func(records.Date) float64 { return 1 })
}

// heatBy spreads it over the days given by trays standing times cold; false where
// nothing stood on a day with a weight. Days outside the slices held no tray.
func (h *dayRates) heatBy(row *costRow, days []records.Date, cold func(records.Date) float64) bool {
	inside := func(d records.Date) bool { return h.first != 0 && d >= h.first && int(d-h.first) < len(h.stood) }
	all := 0.0
	for _, d := range days {
		if inside(d) {
			all += h.stood[d-h.first] * cold(d)
		}
	}
	if !(all > 0) {
		return false
	}
	per := h.perDay(records.Heat)
	for _, d := range days {
		if inside(d) {
			per[d-h.first].add(row.amount * cold(d) / all)
		}
	}
	return true
}
