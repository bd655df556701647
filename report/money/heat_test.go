package money

import (
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// Heat goes by cold where every heating day has its outdoor low and high: 10
// degrees below 15 on 1 and 2 March, 30 on the 3rd; in May no heating month is
// touched, so all days count.
func TestHeatByCold(t *testing.T) {
	read := func(date string, mean float64) records.HouseReading {
		return records.HouseReading{Date: booktest.Day(t, date), OutLow: records.Known(mean - 5), OutHigh: records.Known(mean + 5)}
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
		book := &records.Book{House: tt.house, Costs: []records.Cost{booktest.Row(t, "2025-03-31", records.Heat, 100, from(t, tt.from), until(t, tt.until))}}
		a := newBatch(t, "a", "2025-03-01", "2025-03-03", "S", 1, 100, 50)
		b := newBatch(t, "b", "2025-03-03", "2025-03-04", "S", 1, 100, 50)
		summer := newBatch(t, "s", "2025-06-01", "2025-07-01", "S", 1, 100, 50)
		m := moneyOf(book, a, b, summer)
		bears(t, tt.name, m, "a", tt.a)
		bears(t, tt.name, m, "b", tt.b)
		balanced(t, m)
	}
}

// The first and the last month of heating 10-4 are heated, those before and after not:
// of a bill that covers both, each with one batch of a whole month, the heated one
// bears all.
func TestFirstAndLastMonthOfHeating(t *testing.T) {
	for _, tt := range []struct{ name, from, until, heated, heatedEnd, cold, coldEnd string }{
		{"September and October", "2025-09-01", "2025-10-31", "2025-10-01", "2025-11-01", "2025-09-01", "2025-10-01"},
		{"April and May", "2025-04-01", "2025-05-31", "2025-04-01", "2025-05-01", "2025-05-01", "2025-06-01"},
	} {
		book := &records.Book{Costs: []records.Cost{booktest.Row(t, tt.until, records.Heat, 100, from(t, tt.from), until(t, tt.until))}}
		in := newBatch(t, "heated", tt.heated, tt.heatedEnd, "S", 1, 100, 50)
		out := newBatch(t, "not", tt.cold, tt.coldEnd, "S", 1, 100, 50)
		m := moneyOf(book, in, out)
		bears(t, tt.name, m, "heated", 100)
		bears(t, tt.name, m, "not", 0)
		balanced(t, m)
	}
}

// A row on whose heated days nothing stood is unborne, whatever stood on its other days;
// where none of its days is heated all of them count (rule "Heat").
func TestHeatOfEmptyHeatedDays(t *testing.T) {
	for _, tt := range []struct {
		name, first, last string
		borne             float64
	}{
		{"April empty, June not", "2025-04-15", "2025-06-15", 0},
		{"September and October empty", "2025-09-15", "2025-10-15", 0},
		{"June alone", "2025-06-01", "2025-06-15", 100},
		{"an empty August", "2025-08-01", "2025-08-15", 0},
		{"a period that ends before it begins", "2025-06-15", "2025-06-01", 0},
	} {
		summer := newBatch(t, "summer", "2025-06-01", "2025-07-01", "S", 1, 100, 50)
		m := moneyOf(&records.Book{Costs: []records.Cost{booktest.Row(t, tt.last, records.Heat, 100, from(t, tt.first), until(t, tt.last))}}, summer)
		bears(t, tt.name, m, "summer", tt.borne)
		booktest.Near(t, tt.name+": unborne", ledgerLine(t, m, 2025, records.Heat).Unborne, 100-tt.borne, 0)
		balanced(t, m)
	}
}

// Cold days in an empty house have no weight: a batch that stood on warm heated days
// alone bears the row by its tray-days (rule "Heat": all weights 0).
func TestHeatOfWarmDaysAlone(t *testing.T) {
	book := &records.Book{Costs: []records.Cost{booktest.Row(t, "2025-04-03", records.Heat, 100, from(t, "2025-04-01"), until(t, "2025-04-03"))}}
	for date, mean := range map[string]float64{"2025-04-01": -5, "2025-04-02": 16, "2025-04-03": 20} {
		book.House = append(book.House, records.HouseReading{Date: booktest.Day(t, date), OutLow: records.Known(mean), OutHigh: records.Known(mean)})
	}
	m := moneyOf(book, newBatch(t, "a", "2025-04-02", "2025-04-04", "S", 1, 100, 50), newBatch(t, "b", "2025-04-03", "2025-05-04", "S", 2, 100, 50))
	bears(t, "two days of 1 tray", m, "a", 50)
	bears(t, "one day of 2 trays", m, "b", 50)
}

// The outdoor temperature of a day is the middle of its low and high, and of several
// rows of a day the last stands (rule "Heat"). A day with one of them has none.
func TestColdOfADay(t *testing.T) {
	d := booktest.Day(t, "2025-03-01")
	reading := func(low, high float64) records.HouseReading {
		return records.HouseReading{Date: d, OutLow: records.Known(low), OutHigh: records.Known(high)}
	}
	if got := outdoors([]records.HouseReading{reading(0, 2), reading(2, 10)})[d]; got != 9 {
		t.Errorf("%v degrees below 15, want 9", got)
	}
	if got := outdoors([]records.HouseReading{reading(20, 24)})[d]; got != 0 {
		t.Errorf("%v degrees below 15 on a warm day, want 0", got)
	}
	if got := outdoors([]records.HouseReading{{Date: d, OutLow: records.Known(3.0)}}); len(got) != 0 {
		t.Errorf("a day without a high: %v", got)
	}
}
