package years

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

// rooms are what New reads of a book.
type rooms struct {
	b *batch.Batches
	g *germination.Figures
	p *plants.Figures
	m *money.Figures
}

// roomsOf computes them as of the book's last date, or of a day given.
func roomsOf(t testing.TB, book *records.Book, today ...string) rooms {
	t.Helper()
	last := batch.LastDate(book)
	for _, d := range today {
		last = booktest.Day(t, d)
	}
	sown := batch.Sowings(book)
	counts, seen := germination.Count(sown, book), plants.Read(sown, book)
	b := batch.New(book, sown, plants.Traces(sown, counts, seen), last)
	g := germination.New(b, counts, book)
	p := plants.New(b, g, seen)
	return rooms{b, g, p, money.New(b, p, book)}
}

// figures compares the seasons of a book.
func figures(t testing.TB, book *records.Book, today ...string) *Figures {
	t.Helper()
	r := roomsOf(t, book, today...)
	return compared(r.b, r.g, r.p, r.m, book.House, book.Costs, true)
}

// row finds the change of a measure and crop to a season.
func (f *Figures) row(t testing.TB, m Measure, crop string, to int) Change {
	t.Helper()
	return booktest.Find(t, fmt.Sprint(m, " ", crop, " ", to), f.Years, func(c Change) bool { return c.Measure == m && c.Crop == crop && c.To == to })
}

// grown sows a batch of so many trays of 100 cells on 1 March of a season and counts it on
// the 20th; up is by the hundred.
func grown(b *booktest.Book, season int, crop, variety, tray string, trays, up int) *records.Sowing {
	b.Helper()
	code := fmt.Sprintf("%d %s %s %s %d", season, crop, variety, tray, len(b.Sowings))
	b.Count(code, fmt.Sprintf("%d-03-20", season), up*trays)
	return b.Sow(code, fmt.Sprintf("%d-03-01", season), crop, variety, tray, float64(trays))
}

// over ends every season of the book: the day is later than all of them.
const over = "2031-01-01"

// adds checks that a change is the sum of its parts, and every part that of its groups.
func (c Change) adds(t testing.TB) {
	t.Helper()
	what := fmt.Sprint(c.Measure, " ", c.Crop, " ", c.From, " ", c.To)
	near(t, what, c.Same+c.OtherKinds+c.OtherCrops.Value, c.Change, 1e-12)
	if c.OtherCrops.Known != (c.Crop == "") || c.Share < 0 || c.Share > 1+1e-12 {
		t.Errorf("%s: %+v", what, c)
	}
	var same, kinds, crops, was, is float64
	for _, p := range c.Groups {
		same, kinds, crops = same+p.Same, kinds+p.OtherKinds, crops+p.OtherCrops
		was, is = was+p.Before.Weight*p.Before.Figure.Value, is+p.After.Weight*p.After.Figure.Value
	}
	near(t, what+": same of the groups", same, c.Same, 1e-12)
	near(t, what+": other kinds of the groups", kinds, c.OtherKinds, 1e-12)
	near(t, what+": other crops of the groups", crops, c.OtherCrops.Value, 1e-12)
	near(t, what+": before of the groups", was, c.Before.Figure.Value, 1e-12)
	near(t, what+": after of the groups", is, c.After.Figure.Value, 1e-12)
}

var near, known, missing = booktest.Near, booktest.Known, booktest.Missing
