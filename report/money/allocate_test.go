package money

import (
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/internal/booktest"
)

// Two batches of 2025: a stands 10 days on 1 tray of 100, b 20 days on 3 trays
// of 100, half of it usable; the arithmetic of each row stands beside it.
func TestRowsAreShared(t *testing.T) {
	cat := func(c Category, with ...func(*records.Cost)) records.Cost {
		return booktest.Row(t, "2025-03-31", c, 70, with...)
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
		{"a batch that is none", cat(records.Other, forBatch("z")), 0, 0, 70},
		{"the crop of both", cat(records.Feed, forCrop("leek")), 10, 60, 70},
		{"the code of one", cat(records.Feed, forTray("T")), 0, 70, 70},
		{"a crop not sown: an empty house", cat(records.Feed, forCrop("kale")), 0, 0, 70},
		{"an only row covers the season", cat(records.Water), 10, 60, 70},
		{"6-10 March, 5 days of a and 15 tray-days of b", cat(records.Water, from(t, "2025-03-06"), until(t, "2025-03-10")), 17.5, 52.5, 70},
		{"nothing stood in June", cat(records.Power, from(t, "2025-06-01"), until(t, "2025-06-30")), 0, 0, 70},
		{"from blank, until its date: the season's first day to the end of March", cat(records.Heat, until(t, "2025-03-31")), 10, 60, 70},
		{"sowing by trays 1 : 3", cat(records.Labour, task(records.SowingTask)), 17.5, 52.5, 70},
		{"sowing for a crop by trays 1 : 3", cat(records.Labour, task(records.SowingTask), forCrop("leek")), 17.5, 52.5, 70},
		{"sowing, nothing sown in the period", cat(records.Labour, task(records.SowingTask), from(t, "2025-03-02")), 0, 0, 70},
		{"out by usable plants 50 : 150", cat(records.Labour, task(records.OutTask)), 17.5, 52.5, 70},
		{"out for a crop by usable plants 50 : 150", cat(records.Labour, task(records.OutTask), forCrop("leek")), 17.5, 52.5, 70},
		{"out, only a ends by the 11th", cat(records.Labour, task(records.OutTask), until(t, "2025-03-11")), 70, 0, 70},
		{"care", cat(records.Labour), 10, 60, 70},
		{"7 hours at 10", cat(records.Labour, hours(7)), 10, 60, 70},
		{"a credit", booktest.Row(t, "2025-03-31", records.Other, -7), -1, -6, -7},
	}
	for _, tt := range tests {
		book := &records.Book{Costs: []records.Cost{tt.cost}}
		book.Settings.Wage = records.Known(10.0)
		a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 50)
		b := newBatch(t, "b", "2025-03-01", "2025-03-21", "T", 3, 100, 150)
		m := moneyOf(book, a, b)
		bears(t, tt.name, m, "a", tt.a)
		bears(t, tt.name, m, "b", tt.b)
		booktest.Near(t, tt.name+": ledger", m.Ledger[0].Ledger, tt.ledger, 1e-9)
		balanced(t, m)
	}
}

// Sowing labour is told apart from other labour, whether it is shared or of a batch:
// 40 by trays 1 : 3, and 6 of b's own; care is no sowing.
func TestSowingLabourIsToldApart(t *testing.T) {
	book := &records.Book{Costs: []records.Cost{
		booktest.Row(t, "2025-03-01", records.Labour, 40, task(records.SowingTask)),
		booktest.Row(t, "2025-03-01", records.Labour, 6, task(records.SowingTask), forBatch("b")),
		booktest.Row(t, "2025-03-01", records.Labour, 9, task(records.CareTask), forBatch("b"))}}
	m := moneyOf(book, newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 50), newBatch(t, "b", "2025-03-01", "2025-03-11", "S", 3, 100, 50))
	booktest.Near(t, "a", of(t, m, "a").Sowing, 10, 1e-12)
	booktest.Near(t, "b", of(t, m, "b").Sowing, 36, 1e-12)
	booktest.Near(t, "b, all labour", of(t, m, "b").Parts.Of(records.Labour), 45, 1e-12)
	if !m.HasSow || moneyOf(&records.Book{Costs: book.Costs[2:]}).HasSow {
		t.Error("sowing labour where there is none, or none where there is")
	}
}

// A row whose weights are all 0 falls by trays (rule "Direct rows"): seed for plugs,
// plants out of batches that failed.
func TestZeroWeights(t *testing.T) {
	for _, cost := range []records.Cost{
		booktest.Row(t, "2025-03-31", records.Seed, 40, forCrop("leek")),
		booktest.Row(t, "2025-03-31", records.Seed, 40),
		booktest.Row(t, "2025-03-31", records.Labour, 40, task(records.OutTask), forCrop("leek")),
	} {
		a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 0)
		b := newBatch(t, "b", "2025-03-01", "2025-03-11", "S", 3, 100, 0)
		a.FromSeed, b.FromSeed = false, false
		m := moneyOf(&records.Book{Costs: []records.Cost{cost}}, a, b)
		bears(t, "by trays", m, "a", 10)
		bears(t, "by trays", m, "b", 30)
		balanced(t, m)
	}
}

// Labour of setting out where only failures ended in its period: by their tray-days in
// it, 5 of 1 tray and 10 of 2 (rule "Bills over a period"); where they ended on its
// first day, by trays. One that ended before it bears nothing.
func TestSettingOutOfFailures(t *testing.T) {
	for start, want := range map[string]float64{"2025-03-06": 8, "2025-03-11": 40.0 / 3} {
		a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 0)
		b := newBatch(t, "b", "2025-02-01", "2025-03-11", "S", 2, 100, 0)
		c := newBatch(t, "c", "2025-03-01", "2025-06-11", "S", 2, 100, 0)
		d := newBatch(t, "d", "2025-02-01", "2025-03-01", "S", 2, 100, 0)
		if start == "2025-03-06" {
			b.End = booktest.Day(t, "2025-03-16")
		}
		book := &records.Book{Costs: []records.Cost{booktest.Row(t, "2025-03-31", records.Labour, 40, task(records.OutTask), from(t, start))}}
		m := moneyOf(book, a, b, c, d)
		bears(t, start, m, "a", want)
		bears(t, start, m, "b", 40-want)
		bears(t, start, m, "c", 0)
		bears(t, start, m, "d", 0)
		balanced(t, m)
	}
}

// Labour of setting out falls on batches that ended in its period, its last day and the
// book's first one counted; an open batch has plants enough and is not set out yet.
func TestSettingOutOnTheLastDay(t *testing.T) {
	for _, usable := range []float64{50, 0} { // by plants, and by tray-days where there is none
		a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, usable)
		open := newBatch(t, "open", "2025-03-01", "2025-03-11", "S", 1, 100, 70)
		open.EndHow = batch.Open
		book := &records.Book{Costs: []records.Cost{booktest.Row(t, "2025-03-31", records.Labour, 40, task(records.OutTask), from(t, "2025-03-10"), until(t, "2025-03-11"))}}
		m := moneyOf(book, a, open)
		bears(t, "ended", m, "a", 40)
		bears(t, "open", m, "open", 0)
		balanced(t, m)
	}
	first := newBatch(t, "first", "2025-03-01", "2025-03-01", "S", 1, 100, 10)
	later := newBatch(t, "later", "2025-03-01", "2025-03-31", "S", 1, 100, 30)
	m := moneyOf(&records.Book{Costs: []records.Cost{booktest.Row(t, "2025-03-31", records.Labour, 40, task(records.OutTask))}}, first, later)
	bears(t, "set out on the book's first day", m, "first", 10)
	balanced(t, m)
}

// Mix goes by volume, 10 : 30; by cells where a volume is unknown (rule "Mix"). A
// batch without cells takes none (rule "Cells sown").
func TestMixByVolume(t *testing.T) {
	a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 0)
	b := newBatch(t, "b", "2025-03-01", "2025-03-11", "T", 1, 100, 0)
	c := newBatch(t, "c", "2025-03-01", "2025-03-11", "U", 1, 100, 0)
	a.CellML, b.CellML, c.CellML, c.CellsSown = records.Known(10.0), records.Known(30.0), records.Known(5.0), records.Maybe[int]{}
	book := &records.Book{Costs: []records.Cost{booktest.Row(t, "2025-03-31", records.Mix, 40)}}
	m := moneyOf(book, a, b, c)
	balanced(t, m)
	bears(t, "by volume", m, "a", 10)
	bears(t, "by volume", m, "b", 30)
	bears(t, "no cells", m, "c", 0)
	b.CellML = Num{}
	m = moneyOf(book, a, b, c)
	balanced(t, m)
	bears(t, "by cells", m, "b", 20)
}

// Hours without a wage are no cost row: labour is missing, not 0 (rule "Ledger").
func TestHoursWithoutAWage(t *testing.T) {
	a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 50)
	m := moneyOf(&records.Book{Costs: []records.Cost{booktest.Row(t, "2025-03-31", records.Labour, 0, hours(7))}}, a)
	if m.Has[records.Labour] || len(m.Ledger) != 0 || of(t, m, "a").Cost.Known || m.Cost[0].Total.Known {
		t.Errorf("hours were priced: %+v", m.Cost)
	}
	booktest.Known(t, "usable plants are known all the same", m.Cost[0].Usable, 50, 0)
}
