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

// Labour of setting out on days on which only batches without a plant ended: by tray-days
// in the period, 10 : 60, and of more such rows than are looked at one by one by trays,
// 1 : 3, which is all borne too; one outside the period bears nothing.
func TestManyRowsOfFailedBatches(t *testing.T) {
	for most, want := range map[int][2]float64{mostFailed: {10, 60}, 0: {17.5, 52.5}} {
		a := accountsOf(&records.Book{Costs: []records.Cost{booktest.Row(t, "2025-03-31", records.Labour, 70, task(records.OutTask), from(t, "2025-03-01"), until(t, "2025-03-31"))}},
			newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 0), newBatch(t, "b", "2025-03-01", "2025-03-21", "S", 3, 100, 0),
			newBatch(t, "later", "2025-03-01", "2025-04-21", "S", 3, 100, 0))
		a.mostFailed = most
		a.costRows()
		for i, sum := range []float64{want[0], want[1], 0} {
			booktest.Near(t, a.borne[i].Code, a.sums[i].parts().Of(records.Labour), sum, 1e-9)
		}
		if len(a.unborneSums()) > 0 {
			t.Errorf("%v is unborne", a.unborneSums())
		}
	}
}
