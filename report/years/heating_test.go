package years

import (
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// outdoors writes a day's readings, so that its mean is that many degrees.
func outdoors(b *booktest.Book, first, until string, mean float64) {
	for d := b.Day(first); d <= b.Day(until); d++ {
		b.House = append(b.House, records.HouseReading{Date: d, OutLow: records.Known(mean - 4), OutHigh: records.Known(mean + 4)})
	}
}

// heated is a season whose book heats in January and February: 59 days.
func heated(t *testing.T) *booktest.Book {
	b := booktest.New(t)
	b.Settings.HeatingFrom, b.Settings.HeatingUntil = 1, 2
	grown(b, 2025, "orache", "x", "AIR", 1, 80)
	return b
}

// burn adds a heat bill with its fuel.
func burn(b *booktest.Book, date string, money, quantity float64, unit string) {
	b.Cost(date, records.Heat, money, func(c *records.Cost) { c.Quantity, c.Unit = records.Known(quantity), unit })
}

// 31 days 5 below 15 C and 28 days 10 below: 435 degree-days. Warm days and other months
// ask for no heat.
func TestHeating(t *testing.T) {
	b := heated(t)
	outdoors(b, "2025-01-01", "2025-01-31", 10)
	outdoors(b, "2025-02-01", "2025-02-28", 5)
	outdoors(b, "2025-03-01", "2025-03-31", -10)
	burn(b, "2025-02-01", 100, 50, "l")
	burn(b, "2025-03-20", 74, 37, "L")
	burn(b, "2024-03-20", 10, 9, "l")
	h := booktest.Find(t, "2025", figures(t, b.Book(), over).Heating, func(h Heating) bool { return h.Season == 2025 })
	near(t, "degree-days", h.DegreeDays, 435, 1e-9)
	known(t, "heat", h.Heat, 174, 0)
	known(t, "money a degree-day", h.PerDegreeDay, .4, 1e-12)
	known(t, "fuel", h.Fuel, 87, 1e-12)
	known(t, "fuel a degree-day", h.FuelPerDegreeDay, .2, 1e-12)
	if h.Unit != "L" || h.Days != 59 || h.Read != 59 {
		t.Errorf("%+v", h)
	}
	b = heated(t)
	outdoors(b, "2025-01-01", "2025-02-28", 16)
	h = figures(t, b.Book(), over).Heating[0]
	near(t, "degree-days of a warm season", h.DegreeDays, 0, 0)
	missing(t, "heat", h.Heat)
	missing(t, "money a degree-day", h.PerDegreeDay)
	missing(t, "fuel", h.Fuel)
}

// Nine in ten of the heated days must have both readings; the rest is scaled up to.
func TestHeatingScalesUp(t *testing.T) {
	b := heated(t)
	outdoors(b, "2025-01-07", "2025-02-28", 5) // 53 of 59 days: just below nine in ten
	if h := figures(t, b.Book(), over).Heating; len(h) != 0 {
		t.Errorf("%+v", h)
	}
	outdoors(b, "2025-01-06", "2025-01-06", 5)
	b.House[3].OutHigh = records.Maybe[float64]{}
	if h := figures(t, b.Book(), over).Heating; len(h) != 0 {
		t.Errorf("a day with one reading: %+v", h)
	}
	outdoors(b, b.House[3].Date.String(), b.House[3].Date.String(), 5) // the last row of a day stands
	h := figures(t, b.Book(), over).Heating
	if len(h) != 1 {
		t.Fatal("54 of 59 days are nine in ten")
	}
	near(t, "degree-days", h[0].DegreeDays, 10*59, 1e-9)
}

// Of a running season the days up to today count, that day too.
func TestHeatingUpToToday(t *testing.T) {
	b := heated(t)
	outdoors(b, "2025-01-01", "2025-01-10", 5)
	near(t, "degree-days", figures(t, b.Book(), "2025-01-10").Heating[0].DegreeDays, 100, 1e-9)
	if h := figures(t, b.Book(), "2025-01-12").Heating; len(h) != 0 { // 10 of 12
		t.Errorf("%+v", h)
	}
	b.Sow("early", "2024-12-01", "orache", "x", "AIR", 1)
	if h := figures(t, b.Book(), "2024-12-20").Heating; len(h) != 0 {
		t.Errorf("before a heated day: %+v", h)
	}
}

// Fuel is added up where every heat row of the book has a quantity, in one unit.
func TestFuelInOneUnit(t *testing.T) {
	for what, bad := range map[string]func(*records.Cost){
		"another unit":  func(c *records.Cost) { c.Quantity, c.Unit = records.Known(5.0), "kg" },
		"no unit":       func(c *records.Cost) { c.Quantity = records.Known(5.0) },
		"no quantity":   func(c *records.Cost) { c.Unit = "l" },
		"other seasons": func(c *records.Cost) { c.Date = records.NewDate(2024, 1, 1) },
	} {
		b := heated(t)
		outdoors(b, "2025-01-01", "2025-02-28", 5)
		burn(b, "2025-02-01", 100, 50, "l")
		b.Cost("2025-02-02", records.Heat, 10, bad)
		h := figures(t, b.Book(), over).Heating[0]
		missing(t, "fuel: "+what, h.Fuel)
		if missing(t, "fuel a degree-day: "+what, h.FuelPerDegreeDay); h.Unit != "" {
			t.Errorf("%s: unit %q", what, h.Unit)
		}
		b.Costs[len(b.Costs)-1].Category = records.Power
		known(t, "fuel: power needs none", figures(t, b.Book(), over).Heating[0].Fuel, 50, 0)
	}
}

// A season without readings has no row, the next has; heat is that of its own season, and
// heat alone; months before the heating begins are passed over.
func TestHeatingSeasonBySeason(t *testing.T) {
	b := heated(t)
	b.Settings.HeatingFrom, b.Settings.HeatingUntil = 11, 12
	grown(b, 2024, "orache", "x", "AIR", 1, 80)
	grown(b, 2026, "orache", "x", "AIR", 1, 80)
	outdoors(b, "2025-11-01", "2025-12-31", 5)
	outdoors(b, "2026-11-01", "2026-12-31", 10)
	for date, money := range map[string]float64{"2024-12-01": 7, "2025-12-01": 122, "2026-12-01": 61} {
		b.Cost(date, records.Heat, money)
		b.Cost(date, records.Power, 1000)
		b.Cost(date, records.Feed, 1000)
	}
	got := figures(t, b.Book(), over).Heating
	if len(got) != 2 || got[0].Season != 2025 || got[1].Season != 2026 {
		t.Fatalf("%+v", got)
	}
	for i, want := range []float64{122, 61} {
		known(t, "heat", got[i].Heat, want, 0)
		known(t, "money a degree-day", got[i].PerDegreeDay, .2, 1e-12)
	}
}

// Nine days of ten are enough, exactly.
func TestNineInTen(t *testing.T) {
	b := heated(t)
	outdoors(b, "2025-01-02", "2025-01-10", 5)
	if h := figures(t, b.Book(), "2025-01-10").Heating; len(h) != 1 || h[0].Days != 10 || h[0].Read != 9 {
		t.Errorf("%+v", h)
	}
}
