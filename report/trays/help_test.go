package trays

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/internal/booktest"
	"traybook/report/money"
	"traybook/report/plants"
)

// told is what a book tells of its trays, and what that was made of.
type told struct {
	*Figures
	batches *batch.Batches
	plants  *plants.Figures
	money   *money.Figures
}

// tell makes the figures of a book as of its last date, stage by stage.
func tell(book *records.Book) told {
	sown := batch.Sowings(book)
	counts := germination.Count(sown, book)
	seen := plants.Read(sown, book)
	b := batch.New(book, sown, plants.Traces(sown, counts, seen), batch.LastDate(book))
	p := plants.New(b, germination.New(b, counts, book), seen)
	m := money.New(b, p, book)
	return told{New(b, p, m), b, p, m}
}

// pairBook is a book with a pair: HEAVY at 12 for 30 uses, THIN at 2 that lasts 2 uses,
// 100 cells each, 2 of HEAVY and 6 of THIN owned, trays of each sown side by side every
// ten days of one season and set out nine days later. Of 100 cells THIN gives usable
// plants, HEAVY on date i gains[i] more.
type pairBook struct {
	gains                       []float64
	usable, trays               float64
	value, plug, wage, discount Num
	heavy, thin                 records.Purchase
}

func newPairBook(gains ...float64) pairBook {
	return pairBook{
		gains: gains, usable: 80, trays: 1, value: records.Known(0.10),
		heavy: records.Purchase{Tray: "HEAVY", Kind: "air-pruning", Cells: 100, Count: records.Known(2), Price: records.Known(12.0), Uses: records.Known(30.0)},
		thin:  records.Purchase{Tray: "THIN", Kind: "solid-wall", Cells: 100, Count: records.Known(6), Price: records.Known(2.0), Uses: records.Known(2.0)},
	}
}

// book writes the record book.
func (pb pairBook) book(t testing.TB) *booktest.Book {
	t.Helper()
	b := booktest.New(t)
	b.Trays = []records.Purchase{pb.heavy, pb.thin}
	b.Settings.TransplantValue, b.Settings.PlugPrice, b.Settings.Wage = pb.value, pb.plug, pb.wage
	b.Settings.DiscountRate, b.Settings.TrayTurnaround = pb.discount.Or(0), 0
	for i, gain := range pb.gains {
		sown := records.NewDate(2025, 1, 1+10*i)
		for _, tray := range []string{"HEAVY", "THIN"} {
			usable := pb.usable
			if tray == "HEAVY" {
				usable += gain
			}
			sow(b, fmt.Sprint(tray, i), sown.String(), tray, pb.trays, usable*pb.trays)
		}
	}
	return b
}

// bothSown is the book with no gains, in which THIN was once sown when nothing stood
// beside it: so the two are a pair, and no tray of HEAVY is used for it.
func bothSown(t testing.TB) *booktest.Book {
	t.Helper()
	b := newPairBook().book(t)
	sow(b, "alone", "2025-09-01", "THIN", 1, 50)
	return b
}

// sow adds a batch of leek, set out nine days after it was sown, so many plants usable.
func sow(b *booktest.Book, code, sown, tray string, trays, usable float64) *records.Sowing {
	s := b.Sow(code, sown, "leek", "Arvo", tray, trays)
	b.Leave(s, (s.Sown + 9).String(), int(usable), 0)
	return s
}

// tell makes the figures; all of them must be numbers.
func (pb pairBook) tell(t testing.TB) told {
	t.Helper()
	figures := tell(pb.book(t).Book())
	booktest.Finite(t, figures.Figures, "trays")
	return figures
}

// back is the answer on the one pair.
func (pb pairBook) back(t testing.TB) Payback {
	t.Helper()
	return pb.tell(t).Payback[0]
}

// decision is the number to buy of the one pair.
func (pb pairBook) decision(t testing.TB) Decision {
	t.Helper()
	return pb.tell(t).Decisions[0]
}

// uncounted leaves it open how many were bought, so that the book shows nothing of how
// long one lasts.
var uncounted = records.Maybe[int]{}
