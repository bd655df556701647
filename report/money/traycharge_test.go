package money

import (
	"slices"
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/internal/booktest"
	"traybook/report/plants"
)

// bought is a purchase; a life of 0 is not written, nor is the price of trays gone.
func bought(t testing.TB, tray, date string, count int, price, lasts float64) records.Purchase {
	t.Helper()
	p := records.Purchase{Tray: tray, Kind: tray, Cells: 100, Count: records.Known(count), Price: records.Known(price)}
	if lasts > 0 {
		p.Lasts = records.Known(lasts)
	}
	if count < 0 {
		p.Price = Num{}
	}
	if date != "" {
		p.Bought = booktest.Day(t, date)
	}
	return p
}

// charges are the tray charges of the ledger by season, borne and unborne.
func charges(m *Figures) map[int]LedgerLine {
	of := map[int]LedgerLine{}
	for _, l := range m.Ledger {
		if l.Category == TrayCharge {
			of[l.Season] = l
		}
	}
	return of
}

// A tray's price is recovered over its life, in the season of its purchase and
// the following; a life of 2.5 seasons ends with half a season's charge (rule
// "Tray charge"). By hand, at 0 %: 10 trays at 5 over 2.5 seasons are 20 a season.
func TestTrayCharge(t *testing.T) {
	var batches []*plants.Plants
	for _, s := range []string{"2022", "2023", "2024", "2025", "2026"} {
		batches = append(batches, newBatch(t, "b"+s, s+"-03-01", s+"-03-11", "S", 1, 100, 50))
	}
	tests := []struct {
		name string
		rows []records.Purchase
		want [5]float64 // 2022 to 2026
	}{
		{"2.5 seasons", []records.Purchase{bought(t, "S", "2023-02-01", 10, 5, 2.5)}, [5]float64{0, 20, 20, 10, 0}},
		{"no date: every season", []records.Purchase{bought(t, "S", "", 10, 5, 2.5)}, [5]float64{20, 20, 20, 20, 20}},
		{"half a season", []records.Purchase{bought(t, "S", "2023-02-01", 10, 5, 0.5)}, [5]float64{0, 50, 0, 0, 0}},
		{"bought before the first sowing", []records.Purchase{bought(t, "S", "2021-02-01", 10, 5, 2.5)}, [5]float64{20, 10, 0, 0, 0}},
		{"4 broken in 2024", []records.Purchase{bought(t, "S", "2023-02-01", 10, 5, 2.5), bought(t, "S", "2024-06-01", -4, 0, 0)},
			[5]float64{0, 20, 12, 6, 0}},
		{"the oldest go first", []records.Purchase{bought(t, "S", "2022-02-01", 10, 5, 5), bought(t, "S", "2023-02-01", 10, 15, 5),
			bought(t, "S", "2024-06-01", -14, 0, 0)}, [5]float64{10, 40, 18, 18, 18}},
		{"more broken than bought by then", []records.Purchase{bought(t, "S", "2022-02-01", 10, 5, 5), bought(t, "S", "2023-02-01", -14, 0, 0),
			bought(t, "S", "2024-02-01", 10, 5, 5)}, [5]float64{10, 0, 6, 6, 6}},
		{"life of one season where none is written", []records.Purchase{bought(t, "S", "2023-02-01", 10, 5, 0)}, [5]float64{0, 50, 0, 0, 0}},
		{"blank count: nothing", []records.Purchase{bought(t, "S", "2023-02-01", 10, 5, 5), {Tray: "S", Kind: "S", Cells: 100, Price: records.Known(9.0)}},
			[5]float64{0, 10, 10, 10, 10}},
	}
	for _, tt := range tests {
		m := moneyOf(&records.Book{Trays: tt.rows}, batches...)
		of := charges(m)
		if len(of) != 5 {
			t.Errorf("%s: a line for %d seasons, want 5", tt.name, len(of))
		}
		for i, want := range tt.want {
			booktest.Near(t, tt.name, of[2022+i].Ledger, want, 1e-9)
			booktest.Near(t, tt.name+", borne", of[2022+i].Borne, want, 1e-9)
		}
		balanced(t, m)
	}
}

// Trays in which nothing was sown are a cost that no batch bears (rule "Ledger"), also
// in a season without any sowing between others.
func TestIdleTraysAreUnborne(t *testing.T) {
	a := newBatch(t, "a", "2023-03-01", "2023-03-11", "S", 1, 100, 50)
	b := newBatch(t, "b", "2025-03-01", "2025-03-11", "T", 1, 100, 50)
	m := moneyOf(&records.Book{Trays: []records.Purchase{bought(t, "S", "2023-01-01", 4, 10, 4)}}, a, b)
	of := charges(m)
	booktest.Near(t, "2023 borne", of[2023].Borne, 10, 1e-9)
	booktest.Near(t, "2024 unborne", of[2024].Unborne, 10, 1e-9)
	booktest.Near(t, "2025 unborne", of[2025].Unborne, 10, 1e-9)
	balanced(t, m)
}

// A charge needs a price and a count; years that are not written are no reason for none.
// Uses alone of a code never sown: 4 trays of 10 over 15 years, which lie idle.
func TestNoChargeWithoutPriceOrCount(t *testing.T) {
	a := newBatch(t, "a", "2025-03-01", "2025-03-11", "T", 1, 100, 50)
	idle := bought(t, "S", "", 4, 10, 0)
	idle.Uses = records.Known(5.0)
	m := moneyOf(&records.Book{Trays: []records.Purchase{idle}}, a)
	booktest.Near(t, "charge", ledgerLine(t, m, 2025, TrayCharge).Unborne, 40.0/15, 1e-12)
	uncounted := bought(t, "S", "", 0, 10, 5)
	uncounted.Count = records.Maybe[int]{}
	if m := moneyOf(&records.Book{Trays: []records.Purchase{uncounted}}, a); m.Has[TrayCharge] {
		t.Error("a charge without a count")
	}
	idle.Price = Num{}
	if m := moneyOf(&records.Book{Trays: []records.Purchase{idle}}, a); m.Has[TrayCharge] || len(m.Ledger) > 0 {
		t.Errorf("a charge without a price: %+v", m.Ledger)
	}
}

// A code first sown in the running season has a charge, though no finished season says
// how often it is used: 4 trays of 10, sown 6 times, are 1.5 uses a season, so that 3
// uses last 2 seasons: 20 a season, borne (rule "Tray charge").
func TestChargeOfANewCode(t *testing.T) {
	row := bought(t, "S", "2025-02-01", 4, 10, 0)
	row.Uses = records.Known(3.0)
	m := moneyOf(&records.Book{Trays: []records.Purchase{row}}, seasonsSown(t, map[int]float64{2025: 6})...)
	of := charges(m)
	booktest.Near(t, "2025", of[2025].Borne, 20, 1e-12)
	booktest.Near(t, "before it was bought", of[2024].Ledger, 0, 0)
	bears(t, "all of it", m, "b2025", 20)
	balanced(t, m)
}

// Capital recovery through the whole path: the purchase of 1000 over 12 seasons at
// 5 % costs 112.825410020815 a season: PMT(0.05;12;1000) of OpenFormula (OASIS,
// ODF 1.2 part 2, 6.12.37), recomputed with R 4.2.2.
func TestTrayChargeIsThePublishedPayment(t *testing.T) {
	book := &records.Book{Trays: []records.Purchase{bought(t, "S", "2025-01-01", 1, 1000, 12)}}
	book.Settings.DiscountRate = 0.05
	m := moneyOf(book, newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 50))
	booktest.Near(t, "charge", ledgerLine(t, m, 2025, TrayCharge).Borne, 112.825410020815, 1e-6)
	booktest.Known(t, "a transplant", of(t, m, "a").PerTransplant, 112.825410020815/50, 1e-7)
}

// More trays broken than were ever bought: none is left, never fewer than none.
func TestMoreBrokenThanBoughtLeavesNone(t *testing.T) {
	c := &batch.TrayCode{Code: "A72", Rows: []records.Purchase{
		{Bought: records.NewDate(2023, 1, 10), Count: records.Known(4)},
		{Bought: records.NewDate(2024, 1, 10), Count: records.Known(3)},
		{Bought: records.NewDate(2025, 1, 10), Count: records.Known(-5)},
		{Bought: records.NewDate(2026, 1, 10), Count: records.Known(-6)},
	}}
	left := newRemaining(c, records.Settings{SeasonStarts: 1})
	if got := left.in(2024); !slices.Equal(got, []int{4, 3, 0, 0}) {
		t.Errorf("2024: %v left", got)
	}
	if got := left.in(2025); !slices.Equal(got, []int{0, 2, 0, 0}) { // the oldest first
		t.Errorf("2025: %v left", got)
	}
	if got := left.in(2026); !slices.Equal(got, []int{0, 0, 0, 0}) {
		t.Errorf("2026: %v left", got)
	}
}
