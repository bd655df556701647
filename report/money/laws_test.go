package money

import (
	"math/rand/v2"
	"os"
	"reflect"
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/internal/booktest"
	"traybook/report/plants"
)

// figures computes the figures of money of a book from its logs on.
func figures(book *records.Book) *Figures {
	sown := batch.Sowings(book)
	counts, seen := germination.Count(sown, book), plants.Read(sown, book)
	b := batch.New(book, sown, plants.Traces(sown, counts, seen), batch.LastDate(book))
	return New(b, plants.New(b, germination.New(b, counts, book), seen), book)
}

// The order of rows changes no figure, to the last digit, be they rows of one day and
// category: 0.1 + 0.2 + 0.3 and 0.3 + 0.2 + 0.1 differ.
func TestOrderOfRows(t *testing.T) {
	plain, mixed := booktest.Farm(t, 3, 3, 60), booktest.Farm(t, 3, 3, 60)
	for _, b := range []*booktest.Book{plain, mixed} {
		for i := range 30 {
			b.Cost("2021-05-01", records.Other, 0.1*float64(i), forBatch("2021-00007"))
		}
	}
	mixed.Shuffle(9)
	rand.New(rand.NewPCG(9, 9)).Shuffle(len(mixed.Costs), func(i, j int) {
		mixed.Costs[i], mixed.Costs[j] = mixed.Costs[j], mixed.Costs[i]
	})
	want, got := figures(plain.Book()), figures(mixed.Book())
	for name, pair := range map[string][2]any{
		"cost": {want.Cost, got.Cost}, "crops": {want.Crops, got.Crops}, "seasons": {want.Seasons, got.Seasons}, "sizes": {want.Sizes, got.Sizes},
		"months": {want.Months, got.Months}, "ledger": {want.Ledger, got.Ledger}, "lives": {want.Lives, got.Lives}, "batches": {want.Borne, got.Borne},
	} {
		if !reflect.DeepEqual(pair[0], pair[1]) {
			t.Errorf("%s: another order of rows gives other figures", name)
		}
	}
}

// A book without batches has its bills in the ledger and nobody bears them; one with
// nothing has no figure and no fault.
func TestBookWithoutBatches(t *testing.T) {
	book := booktest.New(t)
	if m := figures(book.Book()); len(m.Ledger)+len(m.Cost)+len(m.Has) > 0 {
		t.Errorf("%+v", m)
	}
	for _, c := range records.Categories {
		book.Cost("2025-03-01", c, 7)
	}
	book.Lot("L", "orache", 0.9).Price = records.Known(5.0)
	m := figures(book.Book())
	if len(m.Ledger) != len(records.Categories) {
		t.Errorf("%d lines", len(m.Ledger))
	}
	for _, l := range m.Ledger {
		if l.Ledger != 7 || l.Unborne != 7 {
			t.Errorf("%+v", l)
		}
	}
}

// Batches never cleared in parts of trays: money is told, the cost of a transplant is
// not, and labour of setting out is borne by nobody.
func TestOpenBatches(t *testing.T) {
	a := newBatch(t, "a", "2025-01-01", "2025-01-30", "S", 0.25, 100, 0)
	b := newBatch(t, "b", "2025-01-05", "2025-01-30", "T", 0.25, 100, 0)
	a.EndHow, b.EndHow = batch.Open, batch.Open
	a.Usable, b.Usable = Num{}, Num{}
	book := &records.Book{Costs: []records.Cost{booktest.Row(t, "2025-01-20", records.Heat, 50), booktest.Row(t, "2025-01-20", records.Labour, 50, task(records.OutTask))}}
	m := moneyOf(book, a, b)
	balanced(t, m)
	if l := ledgerLine(t, m, 2025, records.Labour); l.Unborne != 50 {
		t.Errorf("nothing was set out: %+v", l)
	}
	for _, c := range m.Cost {
		if c.PerTransplant.Known || c.Usable.Known || !c.Total.Known {
			t.Errorf("%+v", c)
		}
	}
}

// The farm's check C15 as a book, from the logs to the figure: 0.0995 a plant used
// (own arithmetic, as TestCostOfAPlantUsed).
func TestCostOfAPlantUsedAsABook(t *testing.T) {
	book, problems := records.Load(os.DirFS("../../examples/checks/c15"))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	booktest.Known(t, "a plant used", figures(book).Cost[0].PerTransplant, 0.0995, 0.0005)
}
