package money

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
	"traybook/report/plants"
)

// 20 seasons of 1,500 batches in two codes, with bills every fortnight, house readings
// and a purchase a season: all money, balanced.
func BenchmarkMoney(b *testing.B) {
	book, list := &records.Book{}, []*plants.Plants{}
	for s := range 20 {
		first := records.NewDate(2005+s, 1, 1)
		book.Trays = append(book.Trays, bought(b, "HEAVY", first.String(), 50, 9, 8))
		for d := range records.Date(365) {
			book.House = append(book.House, records.HouseReading{Date: first + d, OutLow: records.Known(2.0), OutHigh: records.Known(8.0)})
			if d%14 == 0 {
				for _, c := range records.Categories {
					book.Costs = append(book.Costs, booktest.Row(b, (first+d).String(), c, 40))
				}
			}
		}
		for i := range 1500 {
			sown := first + records.Date(i*300/1500)
			list = append(list, newBatch(b, fmt.Sprintf("%d-%04d", s, i), sown.String(), (sown+35).String(), []string{"HEAVY", "THIN"}[i%2], 1.5, 100, 120))
		}
	}
	balanced(b, moneyOf(book, list...))
	for b.Loop() {
		moneyOf(book, list...)
	}
}
