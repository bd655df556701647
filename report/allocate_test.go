package report

import (
	"testing"

	"traybook/records"
)

func from(t testing.TB, s string) func(*records.Cost) {
	return func(c *records.Cost) { c.From = day(t, s) }
}
func until(t testing.TB, s string) func(*records.Cost) {
	return func(c *records.Cost) { c.Until = day(t, s) }
}
func task(k records.Task) func(*records.Cost) { return func(c *records.Cost) { c.Task = k } }
func forBatch(b string) func(*records.Cost)   { return func(c *records.Cost) { c.Batch = b } }
func forCrop(b string) func(*records.Cost)    { return func(c *records.Cost) { c.Crop = b } }
func forTray(b string) func(*records.Cost)    { return func(c *records.Cost) { c.Tray = b } }
func hours(h float64) func(*records.Cost) {
	return func(c *records.Cost) { c.Amount, c.Hours = Num{}, records.Known(h) }
}

// Two batches of 2025: a stands 10 days on 1 tray of 100, b 20 days on 3 trays
// of 100, half of it usable; the arithmetic of each row stands beside it.
func TestRowsAreShared(t *testing.T) {
	cat := func(c records.Category, with ...func(*records.Cost)) records.Cost {
		return row(t, "2025-03-31", c, 70, with...)
	}
	tests := []struct {
		name   string
		cost   records.Cost
		a, b   float64
		ledger float64
	}{
		{"by tray-days 10 : 60", cat(records.Feed), 10, 60, 70},
		{"by seeds 100 : 300", cat(records.Seed), 17.5, 52.5, 70},
		{"by cells 100 : 300, no volume written", cat(records.Mix), 17.5, 52.5, 70},
		{"the one batch", cat(records.Other, forBatch("a")), 70, 0, 70},
		{"the crop of both", cat(records.Feed, forCrop("leek")), 10, 60, 70},
		{"the code of one", cat(records.Feed, forTray("T")), 0, 70, 70},
		{"a crop not sown: an empty house", cat(records.Feed, forCrop("kale")), 0, 0, 70},
		{"an only row covers the season", cat(records.Water), 10, 60, 70},
		{"6-10 March, 5 days of a and 15 tray-days of b", cat(records.Water, from(t, "2025-03-06"), until(t, "2025-03-10")), 17.5, 52.5, 70},
		{"nothing stood in June", cat(records.Power, from(t, "2025-06-01"), until(t, "2025-06-30")), 0, 0, 70},
		{"from blank, until its date: the season's first day to the end of March", cat(records.Heat, until(t, "2025-03-31")), 10, 60, 70},
		{"sowing by trays 1 : 3", cat(records.Labour, task(records.SowingTask)), 17.5, 52.5, 70},
		{"sowing, only b sown in the period", cat(records.Labour, task(records.SowingTask), from(t, "2025-03-02")), 0, 0, 70},
		{"out by usable plants 50 : 150", cat(records.Labour, task(records.OutTask)), 17.5, 52.5, 70},
		{"out, only a ends by the 11th", cat(records.Labour, task(records.OutTask), until(t, "2025-03-11")), 70, 0, 70},
		{"care", cat(records.Labour), 10, 60, 70},
		{"7 hours at 10", cat(records.Labour, hours(7)), 10, 60, 70},
		{"a credit", row(t, "2025-03-31", records.Other, -7), -1, -6, -7},
	}
	for _, tt := range tests {
		book := &records.Book{Costs: []records.Cost{tt.cost}}
		book.Settings.Wage = records.Known(10.0)
		a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 50)
		b := newBatch(t, "b", "2025-03-01", "2025-03-21", "T", 3, 100, 150)
		r := moneyOf(book, a, b)
		near(t, tt.name+": a", a.Parts.Total(), tt.a, 1e-9)
		near(t, tt.name+": b", b.Parts.Total(), tt.b, 1e-9)
		near(t, tt.name+": ledger", r.Ledger[0].Ledger, tt.ledger, 1e-9)
		balanced(t, r)
	}
}

// A written period reaches over the turn of the season and falls on whatever
// stood there, while the ledger's line is the season of its date (rules 26, 45).
func TestPeriodReachesOverSeasons(t *testing.T) {
	book := &records.Book{Costs: []records.Cost{
		row(t, "2026-01-10", records.Heat, 40, from(t, "2025-12-22"), until(t, "2026-01-10")),
	}}
	old := newBatch(t, "old", "2025-12-01", "2026-01-01", "S", 1, 100, 50) // 10 days of the period
	young := newBatch(t, "new", "2026-01-01", "2026-02-01", "S", 1, 100, 50)
	r := moneyOf(book, old, young)
	near(t, "old", old.Parts.Heat, 20, 1e-9)
	near(t, "new", young.Parts.Heat, 20, 1e-9)
	near(t, "ledger", ledgerLine(t, r, 2026, records.Heat).Ledger, 40, 0)
	balanced(t, r)
}

// Bills without dates follow one another: the first from the season's first day,
// those of one date from the same day, none after its own end (rules 22, 50).
func TestMissingStarts(t *testing.T) {
	rows := []records.Cost{
		row(t, "2025-02-10", records.Power, 1),
		row(t, "2025-03-10", records.Power, 1, until(t, "2025-03-31")),
		row(t, "2025-04-10", records.Power, 1),
		row(t, "2025-04-10", records.Power, 1, until(t, "2025-04-20")),
		row(t, "2025-04-11", records.Power, 1),
		row(t, "2025-05-01", records.Water, 1),
		row(t, "2025-05-02", records.Heat, 1, until(t, "2024-12-31")),
	}
	want := []string{"2025-01-01 2025-02-10", "2025-02-11 2025-03-31", "2025-04-01 2025-04-10", "2025-04-01 2025-04-20",
		"2025-04-11 2025-04-11", "2025-01-01 2025-12-31", "2024-12-31 2024-12-31"}
	p := newPurse(moneyOf(&records.Book{Costs: rows}))
	priced := p.pricedRows()
	p.setPeriods(priced)
	for i, row := range priced {
		if got := row.start.String() + " " + row.end.String(); got != want[i] {
			t.Errorf("row %d of %s: %s, want %s", i, row.Date, got, want[i])
		}
	}
}

// Heat goes by cold where every heating day has its outdoor low and high: 10
// degrees below 15 on 1 and 2 March, 30 on the 3rd; in May no heating month is
// touched, so all days count.
func TestHeatByCold(t *testing.T) {
	read := func(date string, mean float64) records.HouseReading {
		return records.HouseReading{Date: day(t, date), OutLow: records.Known(mean - 5), OutHigh: records.Known(mean + 5)}
	}
	tests := []struct {
		name        string
		house       []records.HouseReading
		from, until string
		a, b        float64
	}{
		{"a 10 + 10, b 30", []records.HouseReading{read("2025-03-01", 5), read("2025-03-02", 5), read("2025-03-03", -15)}, "2025-03-01", "2025-03-03", 40, 60},
		{"one day missing: by tray-days 2 : 1", []records.HouseReading{read("2025-03-01", 5), read("2025-03-03", -15)}, "2025-03-01", "2025-03-03", 200.0 / 3, 100.0 / 3},
		{"warm days have no weight: by tray-days 2 : 1", []records.HouseReading{read("2025-03-01", 20), read("2025-03-02", 15), read("2025-03-03", 16)}, "2025-03-01", "2025-03-03", 200.0 / 3, 100.0 / 3},
		{"only the heated days of a period count", nil, "2025-03-01", "2025-12-31", 200.0 / 3, 100.0 / 3},
	}
	for _, tt := range tests {
		book := &records.Book{House: tt.house, Costs: []records.Cost{row(t, "2025-03-31", records.Heat, 100, from(t, tt.from), until(t, tt.until))}}
		a := newBatch(t, "a", "2025-03-01", "2025-03-03", "S", 1, 100, 50)
		b := newBatch(t, "b", "2025-03-03", "2025-03-04", "S", 1, 100, 50)
		summer := newBatch(t, "s", "2025-06-01", "2025-07-01", "S", 1, 100, 50)
		r := moneyOf(book, a, b, summer)
		near(t, tt.name+": a", a.Parts.Heat, tt.a, 1e-9)
		near(t, tt.name+": b", b.Parts.Heat, tt.b, 1e-9)
		balanced(t, r)
	}
}

// A row whose weights are all 0 falls by trays (rule 19): seed for plugs, plants
// out of batches that failed.
func TestZeroWeights(t *testing.T) {
	for _, cost := range []records.Cost{
		row(t, "2025-03-31", records.Seed, 40, forCrop("leek")),
		row(t, "2025-03-31", records.Seed, 40),
		row(t, "2025-03-31", records.Labour, 40, task(records.OutTask), forCrop("leek")),
	} {
		a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 0)
		b := newBatch(t, "b", "2025-03-01", "2025-03-11", "S", 3, 100, 0)
		a.FromSeed, b.FromSeed = false, false
		r := moneyOf(&records.Book{Costs: []records.Cost{cost}}, a, b)
		near(t, "a", a.Parts.Total(), 10, 1e-9)
		near(t, "b", b.Parts.Total(), 30, 1e-9)
		balanced(t, r)
	}
}

// Mix goes by volume, 10 : 30; by cells where a volume is unknown (rule 21). A
// batch without cells takes none (rule 44).
func TestMixByVolume(t *testing.T) {
	a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 0)
	b := newBatch(t, "b", "2025-03-01", "2025-03-11", "T", 1, 100, 0)
	c := newBatch(t, "c", "2025-03-01", "2025-03-11", "U", 1, 100, 0)
	a.CellML, b.CellML, c.CellML, c.CellsSown = records.Known(10.0), records.Known(30.0), records.Known(5.0), records.Maybe[int]{}
	book := &records.Book{Costs: []records.Cost{row(t, "2025-03-31", records.Mix, 40)}}
	balanced(t, moneyOf(book, a, b, c))
	near(t, "a", a.Parts.Mix, 10, 1e-9)
	near(t, "b", b.Parts.Mix, 30, 1e-9)
	near(t, "c", c.Parts.Mix, 0, 0)
	b.CellML = Num{}
	balanced(t, moneyOf(book, a, b, c))
	near(t, "b by cells", b.Parts.Mix, 20, 1e-9)
}

// Hours without a wage are no cost row: labour is missing, not 0 (rule 59).
func TestHoursWithoutAWage(t *testing.T) {
	a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 50)
	r := moneyOf(&records.Book{Costs: []records.Cost{row(t, "2025-03-31", records.Labour, 0, hours(7))}}, a)
	if r.HasCategory(records.Labour) || len(r.Ledger) != 0 || a.Cost.Known || r.Cost[0].Total.Known {
		t.Errorf("hours were priced: %+v", r.Cost)
	}
}
