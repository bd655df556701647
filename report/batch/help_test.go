package batch

import (
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// settled returns the batches of a book as of a day; traces hold what is known of
// an end, by code.
func settled(b *booktest.Book, today string, traces map[string]Trace) *Batches {
	b.Helper()
	sown := Sowings(b.Book())
	of := make([]Trace, len(sown))
	for i, s := range sown {
		of[i] = traces[s.Code]
	}
	return New(b.Book(), sown, of, b.Day(today))
}

// code returns a tray code of its purchases.
func code(t testing.TB, rows ...records.Purchase) *TrayCode {
	t.Helper()
	codes := codesOf(rows)
	if len(codes) != 1 {
		t.Fatalf("%d codes, want 1", len(codes))
	}
	return codes[rows[0].Tray]
}

// bought is a purchase of A72 on a day, so many of them.
func bought(t testing.TB, day string, count int) records.Purchase {
	t.Helper()
	return records.Purchase{Tray: "A72", Kind: "air-pruning", Cells: 72, Bought: booktest.Day(t, day), Count: records.Known(count)}
}
