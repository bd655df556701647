package money

import (
	"slices"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// Rule "Ledger": each unborne sum says why, and those of a category add up to its line.
func TestWhyUnborne(t *testing.T) {
	book := &records.Book{
		Trays: []records.Purchase{
			{Tray: "T", Kind: "T", Cells: 50, Count: records.Known(10), Price: records.Known(1.0), Lasts: records.Known(1.0)},
			{Tray: "U", Kind: "U", Cells: 50, Count: records.Known(10), Price: records.Known(2.0), Lasts: records.Known(1.0)},
		},
		Costs: []records.Cost{
			booktest.Row(t, "2025-02-01", records.Heat, 40, from(t, "2025-01-01"), until(t, "2025-01-31")),
			booktest.Row(t, "2025-03-31", records.Power, 7, from(t, "2025-03-01"), until(t, "2025-03-31")),
			booktest.Row(t, "2025-03-05", records.Mix, 12, forBatch("gone")),
			booktest.Row(t, "2025-03-05", records.Feed, 3, forCrop("chard")),
			booktest.Row(t, "2024-11-05", records.Mix, 30),
			booktest.Row(t, "2025-03-06", records.Mix, 5),
		},
	}
	m := moneyOf(book, newBatch(t, "A", "2025-03-01", "2025-03-31", "T", 2, 100, 90))
	want := []UnborneSum{
		{2024, records.Mix, NothingSown, 30},
		{2025, records.Feed, NoSuchBatch, 3},
		{2025, records.Heat, EmptyHouse, 40},
		{2025, records.Mix, NoSuchBatch, 12},
		{2025, TrayCharge, IdleTrays, 20},
	}
	if !slices.Equal(m.Unborne, want) {
		t.Errorf("got %v, want %v", m.Unborne, want)
	}
	balanced(t, m)
}
