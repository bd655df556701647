package trays

import (
	"fmt"
	"testing"

	"traybook/records"
)

// manyCodes is a book with so many tray codes of one size, kinds in turn, all priced; codes
// is how many of them were sown, the first most often.
func manyCodes(t *testing.T, all, codes int) told {
	t.Helper()
	b := newPairBook().book(t)
	for i := range all {
		b.Tray(fmt.Sprintf("C%04d", i), []string{"solid-wall", "air-pruning"}[i%2], 100).Price = records.Known(float64(1 + i%7))
	}
	for i := range codes {
		for n := range 1 + (codes-i)/10 {
			sow(b, fmt.Sprintf("b%04d-%d", i, n), "2025-03-01", fmt.Sprintf("C%04d", i), 1, 80)
		}
	}
	return tell(b.Book())
}

// A thousand codes are no more work than those of them that were sown, and those no more
// than of the 40 sown most.
func TestManyCodesAreFewPairs(t *testing.T) {
	for _, tt := range []struct{ sown, pairs, left int }{{0, 0, 0}, {1, 0, 0}, {2, 1, 0}, {6, 9, 0}, {40, 400, 0}, {41, 400, 1}, {1000, 400, 960}} {
		f := manyCodes(t, 1000, tt.sown)
		if len(f.Payback) != tt.pairs || f.LeftOut != tt.left {
			t.Errorf("%d sown: %d pairs, %d left out, want %d, %d", tt.sown, len(f.Payback), f.LeftOut, tt.pairs, tt.left)
		}
		for _, back := range f.Payback {
			if back.Tray >= "C0040" || back.Other >= "C0040" {
				t.Errorf("%d sown: %s beside %s is not among those sown most", tt.sown, back.Tray, back.Other)
			}
		}
	}
}

// Two codes are a pair where both were sown, from seed, with one variety.
func TestPairsWereBothSown(t *testing.T) {
	for name, tt := range map[string]struct {
		change func(*records.Sowing)
		pairs  int
	}{
		"one variety":     {func(*records.Sowing) {}, 1},
		"months apart":    {func(s *records.Sowing) { s.Sown += 90 }, 1},
		"another variety": {func(s *records.Sowing) { s.Variety = "Brun" }, 0},
		"another crop":    {func(s *records.Sowing) { s.Crop = "onion" }, 0},
		"from plugs":      {func(s *records.Sowing) { s.Start = records.FromPlug }, 0},
	} {
		b := newPairBook().book(t)
		sow(b, "h", "2025-03-01", "HEAVY", 1, 80)
		tt.change(sow(b, "t", "2025-03-01", "THIN", 1, 80))
		if f := tell(b.Book()); len(f.Payback) != tt.pairs {
			t.Errorf("%s: %d pairs, want %d", name, len(f.Payback), tt.pairs)
		}
	}
}
