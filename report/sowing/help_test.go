package sowing

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/internal/booktest"
	"traybook/report/plants"
)

// figures computes what to sow of a book, as of its last date or of a day given.
func figures(t testing.TB, book *records.Book, today ...string) *Figures {
	t.Helper()
	last := batch.LastDate(book)
	for _, d := range today {
		last = booktest.Day(t, d)
	}
	sown := batch.Sowings(book)
	counts, seen := germination.Count(sown, book), plants.Read(sown, book)
	b := batch.New(book, sown, plants.Traces(sown, counts, seen), last)
	return New(b, plants.New(b, germination.New(b, counts, book), seen), book.Wishes)
}

// gave sows a batch of 100 cells for each number of usable plants, and clears it 40 days
// later.
func gave(b *booktest.Book, prefix, sown, crop, variety, tray string, usable ...int) {
	b.Helper()
	for i, n := range usable {
		s := b.Sow(fmt.Sprintf("%s%02d", prefix, i), sown, crop, variety, tray, 1)
		b.Leave(s, (s.Sown + 40).String(), n, 0)
	}
}

// scattered is a crop of three varieties, so that the book has scatter: 6 batches, 4
// degrees of freedom.
func scattered(b *booktest.Book) {
	gave(b, "mibuna a", "2024-03-01", "mibuna", "a", "WALL", 70, 90, 80, 85)
	gave(b, "mibuna b", "2024-03-01", "mibuna", "b", "WALL", 60, 75)
}

// row finds a row of the table.
func (f *Figures) row(t testing.TB, crop, variety, kind string) Row {
	t.Helper()
	return booktest.Find(t, crop+" "+variety, f.Sowing, func(r Row) bool { return r.Crop == crop && r.Variety == variety && r.Kind == kind })
}

// whole fails where a number is missing or is not the one wanted.
func whole(t testing.TB, what string, got Whole, want int) {
	t.Helper()
	if !got.Known || got.Value != want {
		t.Errorf("%s: got %v, want %d", what, got, want)
	}
}

// none fails where a number is known.
func none(t testing.TB, what string, got Whole) {
	t.Helper()
	if got.Known {
		t.Errorf("%s: got %d, want none", what, got.Value)
	}
}

var near, known, missing = booktest.Near, booktest.Known, booktest.Missing
