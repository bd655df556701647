package money

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
	"traybook/report/plants"
)

// A book of more rows than are shared out one by one has the figures that it would have one
// by one, to rounding, and leaves the same money unborne: bills over every kind of period,
// with and without the cold, rows that are alike, credits, and batches of parts of trays.
func TestManyRowsAsOneByOne(t *testing.T) {
	for _, cold := range []bool{false, true} {
		plain, many := accountsOf(manyRows(t, cold), twentyBatches(t)...), accountsOf(manyRows(t, cold), twentyBatches(t)...)
		many.mostPlain = 0
		plain.costRows()
		many.costRows()
		for i, b := range plain.borne {
			want, got := plain.sums[i].parts(), many.sums[i].parts()
			for _, c := range Categories {
				booktest.Near(t, fmt.Sprint(b.Code, " ", c), got.Of(c), want.Of(c), 1e-9)
			}
			booktest.Near(t, b.Code+" sowing", many.sums[i].sowing.value(), plain.sums[i].sowing.value(), 1e-9)
		}
		if want, got := fmt.Sprint(plain.unborneSums()), fmt.Sprint(many.unborneSums()); got != want {
			t.Errorf("unborne %s, want %s", got, want)
		}
	}
}

// twentyBatches stand from March to October, with days between them on which nothing does.
func twentyBatches(t *testing.T) (list []*plants.Plants) {
	chance := rand.New(rand.NewPCG(1, 2))
	for i := range 20 {
		sown := booktest.Day(t, "2025-03-01") + records.Date(i*11)
		list = append(list, newBatch(t, fmt.Sprintf("B%02d", i), sown.String(), (sown+records.Date(chance.IntN(11))).String(),
			[]string{"S", "T", "U"}[i%3], 0.1*float64(1+chance.IntN(30)), 100, float64(chance.IntN(3))*20))
	}
	return list
}

// manyRows is 300 rows of every category, task and kind of period; with an outdoor reading
// on every day, or on some.
func manyRows(t *testing.T, cold bool) *records.Book {
	chance, book := rand.New(rand.NewPCG(3, 4)), &records.Book{}
	day := func() records.Date { return booktest.Day(t, "2025-01-01") + records.Date(chance.IntN(365)) }
	for i := range 300 {
		row := booktest.Row(t, day().String(), records.Categories[i%len(records.Categories)], 0.1*float64(chance.IntN(1000)-100))
		if row.Category == records.Labour {
			row.Task = []records.Task{"", records.SowingTask, records.OutTask}[chance.IntN(3)]
		}
		if chance.IntN(3) == 0 {
			row.Tray = []string{"S", "T", "none"}[chance.IntN(3)]
		} else if chance.IntN(2) == 0 {
			row.From = day()
			row.Until = row.From + records.Date(chance.IntN(100))
		}
		book.Costs = append(book.Costs, row)
	}
	for i := range records.Date(500) {
		if known := records.Known(float64(chance.IntN(30))); cold || i%40 > 0 {
			book.House = append(book.House, records.HouseReading{Date: booktest.Day(t, "2025-01-01") + i, OutLow: known, OutHigh: known})
		}
	}
	return book
}
