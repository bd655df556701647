package report

import (
	"fmt"
	"testing"

	"traybook/records"
)

// What trays.csv leaves blank is said, once for each kind of gap.
func TestTrayGapsAreSaid(t *testing.T) {
	pb := newPairBook(1, 2, 3, 1)
	if r := pb.report(t); len(r.Missing) != 1 || r.Missing[0].What != "minutes a use: HEAVY and THIN" {
		t.Errorf("%+v", r.Missing)
	}
	trays := []records.Purchase{
		{Tray: "A", Kind: "k", Cells: 72, Count: records.Known(3), Lasts: records.Known(2.0)},
		{Tray: "B", Kind: "k", Cells: 72, Price: records.Known(2.0)},
		{Tray: "C", Kind: "k", Cells: 72, Price: records.Known(2.0), Count: records.Known(-3), Uses: records.Known(4.0)},
	}
	var got []string
	for _, m := range moneyOf(&records.Book{Trays: trays}, newBatch(t, "a", "2025-03-01", "2025-03-11", "A", 1, 72, 50)).Missing {
		got = append(got, m.What)
	}
	want := "[price of a tray: A life of a tray: B years a tray lasts: C number of trays bought: B trays bought: C]"
	if fmt.Sprint(got) != want {
		t.Errorf("%v", got)
	}
}

// Batches never cleared, parts of trays and a code never used: figures that can
// be told are, none is NaN, and the money balances.
func TestOpenBatchesAndIdleCodes(t *testing.T) {
	pb := newPairBook(1, 2, 3, 1)
	r := pb.report(t)
	for _, b := range r.Batches {
		b.EndHow, b.Trays = Open, 0.25
		b.Usable, b.UsableHow = Num{}, ""
	}
	book := r.Book
	book.Costs = []records.Cost{row(t, "2025-01-20", records.Heat, 50), row(t, "2025-01-20", records.Labour, 50, task(records.OutTask))}
	book.Trays = append(book.Trays, records.Purchase{Tray: "IDLE", Kind: "third", Cells: 100, Count: records.Known(5), Price: records.Known(1.0), Lasts: records.Known(5.0)})
	r = moneyOf(book, r.Batches...)
	r.room()
	balanced(t, r)
	if len(r.Payback) != 3 || r.Payback[0].Why != NoMatches || r.Payback[0].UsesPerSeason.Value != 0.5 {
		t.Errorf("%+v", r.Payback)
	}
	if l := ledgerLine(t, r, 2025, records.Labour); l.Unborne != 50 {
		t.Errorf("nothing was set out: %+v", l)
	}
	for _, c := range r.Cost {
		if c.PerTransplant.Known || c.Usable.Known || !c.Total.Known {
			t.Errorf("%+v", c)
		}
	}
	for _, load := range r.Room {
		if load.Place == "IDLE" {
			t.Errorf("a code never used takes room: %+v", load)
		}
	}
}
