package room

import (
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/internal/booktest"
)

// book is a record book of two codes, H and T, without bench or chamber places; trays
// are washed 3 days.
func book(t testing.TB) *booktest.Book {
	b := booktest.New(t)
	b.Trays = nil
	return b
}

// sow adds a batch that is set out on a day, or open where that is empty.
func sow(b *booktest.Book, code, sown, end, tray string, trays float64) *records.Sowing {
	s := b.Sow(code, sown, "leek", "Arvo", tray, trays)
	if end != "" {
		b.Leave(s, end, 50, 0)
	}
	return s
}

// batches settles the ends of a book's batches as of its last date.
func batches(b *booktest.Book) *batch.Batches {
	sown := batch.Sowings(b.Book())
	return batch.New(b.Book(), sown, make([]batch.Trace, len(sown)), batch.LastDate(b.Book()))
}

// of is the room that a book's batches took.
func of(b *booktest.Book) *Figures {
	all := batches(b)
	return New(all, all.Standings(1, nil))
}
