package report

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// reportOf computes the figures of a book as of its last date, or of a day given.
func reportOf(b *booktest.Book, today ...string) *Report {
	b.Helper()
	o := Options{}
	for _, d := range today {
		o.Today = b.Day(d)
	}
	return reportWith(b, o)
}

// reportWith computes the figures of a book with options that fit it.
func reportWith(b *booktest.Book, o Options) *Report {
	b.Helper()
	r, err := New(b.Book(), nil, o)
	if err != nil {
		b.Fatal(err)
	}
	return r
}

// alike sows n batches of a crop, counted alike at a date.
func alike(b *booktest.Book, n, up int) {
	for i := range n {
		code := fmt.Sprint("a", i)
		b.Sow(code, "2025-03-01", "orache", "x", "AIR", 1)
		b.Count(code, "2025-03-20", up)
	}
}

// pair is a book with a pair of codes: two of HEAVY at 12 for 30 uses, two of THIN at
// 2 for 2 uses, 100 cells each, sown side by side on days of one season. Of each tray
// 80 plants left after nine days, of HEAVY on date i gains[i] more.
func pair(t testing.TB, gains ...int) *booktest.Book {
	b := booktest.New(t)
	b.Settings.TransplantValue, b.Settings.TrayTurnaround = records.Known(0.10), 0
	b.Trays = nil
	heavy := b.Tray("HEAVY", "air-pruning", 100)
	heavy.Count, heavy.Price, heavy.Uses = records.Known(2), records.Known(12.0), records.Known(30.0)
	thin := b.Tray("THIN", "solid-wall", 100)
	thin.Count, thin.Price, thin.Uses = records.Known(2), records.Known(2.0), records.Known(2.0)
	for i, gain := range gains {
		sown := records.NewDate(2025, 1, 1+10*i)
		for tray, more := range map[string]int{"HEAVY": gain, "THIN": 0} {
			s := b.Sow(fmt.Sprint(tray, i), sown.String(), "leek", "Arvo", tray, 1)
			b.Leave(s, (sown + 9).String(), 80+more, 0)
		}
	}
	return b
}
