package report

import (
	"slices"
	"testing"

	"traybook/records"
)

// Two purchases of one day: their order in the log moves no figure.
func TestPurchasesOfOneDayInAnyOrder(t *testing.T) {
	day := records.NewDate(2025, 1, 10)
	rows := []records.Purchase{
		{Tray: "A72", Kind: "air-pruning", Cells: 72, Bought: day, Count: records.Known(4), Price: records.Known(9.0), Lasts: records.Known(8.0)},
		{Tray: "A72", Kind: "air-pruning", Cells: 72, Bought: day, Count: records.Known(2), Price: records.Known(12.0), Lasts: records.Known(5.0)},
	}
	turned := slices.Clone(rows)
	slices.Reverse(turned)
	for _, trays := range [][]records.Purchase{rows, turned} {
		c := trayCodes(&Report{Book: &records.Book{Trays: trays}})["A72"]
		if c.price.Value != 12 || c.lasts.Value != 5 {
			t.Errorf("price %v, lasts %v; the dearer of the day is 12 and lasts 5", c.price, c.lasts)
		}
	}
}

// More trays broken than were ever bought: none is left, never fewer than none.
func TestMoreBrokenThanBoughtLeavesNone(t *testing.T) {
	c := &trayCode{code: "A72", rows: []records.Purchase{
		{Bought: records.NewDate(2023, 1, 10), Count: records.Known(4)},
		{Bought: records.NewDate(2024, 1, 10), Count: records.Known(3)},
		{Bought: records.NewDate(2025, 1, 10), Count: records.Known(-5)},
		{Bought: records.NewDate(2026, 1, 10), Count: records.Known(-6)},
	}}
	l := newRemaining(c, records.Settings{SeasonStarts: 1})
	if got := l.after(2024); !slices.Equal(got, []int{4, 3, 0, 0}) {
		t.Errorf("2024: %v left", got)
	}
	if got := l.after(2025); !slices.Equal(got, []int{0, 2, 0, 0}) { // the oldest first
		t.Errorf("2025: %v left", got)
	}
	if got := l.after(2026); !slices.Equal(got, []int{0, 0, 0, 0}) {
		t.Errorf("2026: %v left", got)
	}
}
