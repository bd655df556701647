package money

import (
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// Seed of a lot costs its price over the larger of seeds bought and sown (rule
// "Seed"): 10 for 1000 seeds, of which 400 sown, leaves 6 in hand and out of the
// ledger; 200 bought and 400 sown bear all 10. A lot never sown is in no season.
func TestSeedOfALot(t *testing.T) {
	for bought, want := range map[float64]float64{1000: 1, 200: 2.5} {
		a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 50)
		b := newBatch(t, "b", "2026-03-01", "2026-03-11", "S", 3, 100, 50)
		a.Lot, b.Lot = "L1", "L1"
		book := &records.Book{Lots: []records.Lot{
			{Code: "L1", Seeds: records.Known(bought), Price: records.Known(10.0)},
			{Code: "L2", Seeds: records.Known(5.0), Price: records.Known(99.0)},
		}}
		m := moneyOf(book, a, b)
		bears(t, "lot", m, "a", want)
		bears(t, "lot", m, "b", 3*want)
		if !m.Has[records.Seed] {
			t.Error("a priced lot is money for seed, be there no row of it")
		}
		booktest.Near(t, "ledger 2025", ledgerLine(t, m, 2025, records.Seed).Ledger, want, 1e-12)
		balanced(t, m)
	}
}

// Seeds of a lot in grams, at the trade table's middle of 900 lettuce seeds a gram
// (600 to 1200, growers' secondary lists): 9 for 1 gram, 100 sown, cost 1.
func TestSeedOfALotInGrams(t *testing.T) {
	a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 50)
	a.Lot = "L1"
	m := moneyOf(&records.Book{Lots: []records.Lot{{Code: "L1", Crop: "lettuce", Grams: records.Known(1.0), Price: records.Known(9.0)}}}, a)
	bears(t, "by grams", m, "a", 1)
}

// Shared seed falls on batches without a priced lot; on all where each has one.
func TestSharedSeed(t *testing.T) {
	lots := []records.Lot{{Code: "L1", Price: records.Known(10.0)}, {Code: "L2"}}
	for _, tt := range []struct {
		lotOfB string
		a, b   float64
	}{{"", 10, 8}, {"L2", 10, 8}, {"L1", 5 + 4, 5 + 4}} {
		a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 50)
		b := newBatch(t, "b", "2025-03-01", "2025-03-11", "S", 1, 100, 50)
		a.Lot, b.Lot = "L1", tt.lotOfB
		m := moneyOf(&records.Book{Lots: lots, Costs: []records.Cost{booktest.Row(t, "2025-03-01", records.Seed, 8)}}, a, b)
		bears(t, tt.lotOfB, m, "a", tt.a)
		bears(t, tt.lotOfB, m, "b", tt.b)
		balanced(t, m)
	}
}

// Shared seed where every batch from seed has a priced lot: all bear it, and a batch that was
// potted on, without seed of its own, none.
func TestSharedSeedPassesPottedBatches(t *testing.T) {
	a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 50)
	b := newBatch(t, "b", "2025-03-05", "2025-03-11", "S", 1, 100, 50)
	a.Lot, b.FromSeed = "L1", false
	book := &records.Book{Lots: []records.Lot{{Code: "L1", Price: records.Known(10.0)}}, Costs: []records.Cost{booktest.Row(t, "2025-03-01", records.Seed, 8)}}
	m := moneyOf(book, a, b)
	balanced(t, m)
	bears(t, "lot and shared", m, "a", 18)
	bears(t, "potted on", m, "b", 0)
}
