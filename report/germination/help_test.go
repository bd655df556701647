package germination

import (
	"os"
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/internal/booktest"
)

// figuresOf computes what came up of a book as of a day. A batch is cleared by its out
// row with last = yes and last written of at its latest count; no other trace matters
// here.
func figuresOf(t testing.TB, book *records.Book, today records.Date) *Figures {
	t.Helper()
	sown := batch.Sowings(book)
	counts := Count(sown, book)
	traces := make([]batch.Trace, len(sown))
	for i, c := range counts {
		traces[i].Last = c.Last
		for _, o := range book.Outs {
			if o.Batch == sown[i].Code && o.Last {
				traces[i].Cleared = o.Date
			}
		}
	}
	return New(batch.New(book, sown, traces, today), counts, book)
}

// figures computes what came up of a book written in Go.
func figures(b *booktest.Book, today string) *Figures {
	b.Helper()
	return figuresOf(b, b.Book(), b.Day(today))
}

// of returns the batch with a code.
func (f *Figures) of(t testing.TB, code string) *Counted {
	t.Helper()
	return booktest.Find(t, code, f.Counted, func(c *Counted) bool { return c.Code == code })
}

// tiny is what came up of examples/tiny, whose figures are worked out by hand.
func tiny(t testing.TB) *Figures {
	t.Helper()
	book, _ := records.Load(os.DirFS("../../examples/tiny"))
	return figuresOf(t, book, batch.LastDate(book))
}

// alike sows n batches of a crop of 100 cells, counted alike.
func alike(b *booktest.Book, prefix, crop, variety string, up ...int) {
	for i, n := range up {
		code := prefix + string(rune('a'+i))
		b.Sow(code, "2025-03-01", crop, variety, "AIR", 1)
		b.Count(code, "2025-03-20", n)
	}
}

var known, missing = booktest.Known, booktest.Missing
