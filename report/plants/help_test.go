package plants

import (
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/internal/booktest"
)

// figures computes the figures of plants of a book from its logs on, as of its last
// date or of a day given.
func figures(t testing.TB, book *records.Book, today ...string) *Figures {
	t.Helper()
	last := batch.LastDate(book)
	for _, d := range today {
		last = booktest.Day(t, d)
	}
	sown := batch.Sowings(book)
	counts, seen := germination.Count(sown, book), Read(sown, book)
	b := batch.New(book, sown, Traces(sown, counts, seen), last)
	return New(b, germination.New(b, counts, book), seen)
}

// of finds a batch, or fails.
func of(t testing.TB, f *Figures, code string) *Plants {
	t.Helper()
	return booktest.Find(t, code, f.Plants, func(p *Plants) bool { return p.Code == code })
}
