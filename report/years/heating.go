package years

import (
	"cmp"
	"slices"
	"strings"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/money"
	"traybook/report/rate"
)

// heatedBelow is the mean outdoor temperature, Celsius, below which a day asks for heat,
// as in rule "Heat".
const heatedBelow = 15

// enoughRead is the share of the heated days that must have both outdoor readings; a
// choice of ours.
const enoughRead = 0.9

// heatingOf returns a row for every season with a sowing whose cold is known (rule
// "Heating and the weather").
func heatingOf(b *batch.Batches, ledger []money.LedgerLine, house []records.HouseReading, costs []records.Cost) []Heating {
	cold, fuel := coldOf(house), fuelOf(b.Settings, costs)
	var table []Heating
	for _, season := range b.Seasons {
		h := Heating{Season: season, Unit: fuel.unit}
		if !h.measure(b, cold) {
			continue
		}
		for _, l := range ledger {
			if l.Season == season && l.Category == records.Heat {
				h.Heat = records.Known(l.Ledger)
			}
		}
		h.Fuel = fuel.seasons[season]
		h.PerDegreeDay = rate.Ratio(h.Heat, records.Known(h.DegreeDays))
		h.FuelPerDegreeDay = rate.Ratio(h.Fuel, records.Known(h.DegreeDays))
		table = append(table, h)
	}
	return table
}

// measure adds up a season's degree-days up to today, scaled up to the days without a
// reading; false where too few have one.
func (h *Heating) measure(b *batch.Batches, cold map[records.Date]Num) bool {
	first, after := b.Settings.SeasonDays(h.Season)
	for d := first; d < min(after, b.Today+1); d++ {
		if !b.Settings.Heating(int(d.Month())) {
			continue
		}
		h.Days++
		if degrees := cold[d]; degrees.Known {
			h.Read++
			h.DegreeDays += degrees.Value
		}
	}
	if h.Read == 0 || float64(h.Read) < enoughRead*float64(h.Days)-noise {
		return false
	}
	h.DegreeDays *= float64(h.Days) / float64(h.Read)
	return true
}

// coldOf is how far the mean outdoors lay below 15 C on each day that has both readings;
// of several rows of a day the last stands.
func coldOf(house []records.HouseReading) map[records.Date]Num {
	cold := map[records.Date]Num{}
	for _, r := range house {
		cold[r.Date] = Num{}
		if r.OutLow.Known && r.OutHigh.Known {
			cold[r.Date] = records.Known(max(0, heatedBelow-(r.OutLow.Value+r.OutHigh.Value)/2))
		}
	}
	return cold
}

// fuel is what was burnt, by season; unit is empty where it cannot be added up.
type fuel struct {
	unit    string
	seasons map[int]Num
}

// fuelOf adds up the quantities of the heat rows by the season of their date: of all or of
// none, and in one unit, whatever its capitals. The order of the rows moves no digit.
func fuelOf(s records.Settings, costs []records.Cost) fuel {
	heat := batch.Filter(costs, func(c records.Cost) bool { return c.Category == records.Heat })
	slices.SortStableFunc(heat, func(a, b records.Cost) int {
		return cmp.Or(cmp.Compare(a.Unit, b.Unit), cmp.Compare(a.Quantity.Value, b.Quantity.Value))
	})
	f := fuel{seasons: map[int]Num{}}
	for _, c := range heat {
		if !c.Quantity.Known || c.Unit == "" || !strings.EqualFold(c.Unit, heat[0].Unit) {
			return fuel{}
		}
		season := s.Season(c.Date)
		f.unit, f.seasons[season] = heat[0].Unit, records.Known(f.seasons[season].Value+c.Quantity.Value)
	}
	return f
}
