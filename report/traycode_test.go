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
