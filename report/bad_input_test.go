package report

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/germination"
	"traybook/report/internal/booktest"
)

// All up, or none: such a group shows no scatter (rule "Scatter"), so alone there is no
// interval; beside others its end is exactly 0 or 1 (rule "Interval of a share").
func TestAllOrNoneUp(t *testing.T) {
	for _, up := range []int{0, 100} {
		b := booktest.New(t)
		alike(b, 6, up)
		r := reportOf(b, "2025-04-20")
		booktest.Known(t, "rate", r.Germination.Emergence[0].Share, float64(up)/100, 0)
		booktest.Missing(t, "low", r.Germination.Emergence[0].Low)
		for i, n := range []int{50, 60, 55, 52} {
			code := fmt.Sprint("other", i)
			b.Sow(code, "2025-03-01", "mibuna", "y", "AIR", 1)
			b.Count(code, "2025-03-20", n)
		}
		r = reportOf(b, "2025-04-20")
		e := booktest.Find(t, "orache", r.Germination.Emergence, func(e germination.Emergence) bool { return e.Crop == "orache" })
		booktest.Known(t, "df of the book", e.DF, 3, 0)
		if up == 0 && (e.Low.Value != 0 || !(e.High.Value > 0)) || up == 100 && (e.High.Value != 1 || !(e.Low.Value < 1)) {
			t.Errorf("%d up: %v to %v", up, e.Low, e.High)
		}
		booktest.Finite(t, r, "report")
	}
}

// Books with next to nothing in them: no fault, no number made up.
func TestScantBooks(t *testing.T) {
	for name, fill := range map[string]func(*booktest.Book){
		"sowings only": func(b *booktest.Book) { b.Sow("a", "2025-03-01", "orache", "x", "AIR", 1); b.Trays = nil },
		"one batch":    func(b *booktest.Book) { alike(b, 1, 50) },
		"none counted": func(b *booktest.Book) { b.Sow("a", "2025-03-01", "orache", "x", "AIR", 1) },
		"no tray": func(b *booktest.Book) {
			b.Sow("a", "2025-03-01", "orache", "x", "AIR", 0)
			b.Count("a", "2025-03-20", 0)
		},
		"no cell":        func(b *booktest.Book) { alike(b, 3, 0); b.Counts[0].Cells = records.Known[int32](0) },
		"count too high": func(b *booktest.Book) { alike(b, 3, 140) },
		"empty too high": func(b *booktest.Book) {
			alike(b, 3, 0)
			b.Counts[0].Emerged, b.Counts[0].Empty = records.Maybe[int32]{}, records.Known[int32](140)
		},
		"counts that fall": func(b *booktest.Book) {
			alike(b, 3, 90)
			b.Count("a0", "2025-03-25", 30)
			b.Count("a0", "2025-03-28", 0)
		},
		"looked at none":        func(b *booktest.Book) { alike(b, 1, 90); b.Look("a0", "2025-04-01", 0, 0) },
		"looks without planned": func(b *booktest.Book) { alike(b, 3, 90); b.Look("a0", "2025-04-01", 20, 18) },
		"strange tray":          func(b *booktest.Book) { alike(b, 3, 90); b.Trays = nil },
		"set out before sown":   func(b *booktest.Book) { alike(b, 1, 90); b.Leave(&b.Sowings[0], "2025-02-01", 5, 0) },
		"unknown batch":         func(b *booktest.Book) { b.Count("nobody", "2025-03-20", 4); b.Look("nobody", "2025-03-20", 4, 4) },
		"tray beyond the last":  func(b *booktest.Book) { alike(b, 1, 5); b.CountTray("a0", "2025-03-25", 9, 40) },
	} {
		t.Run(name, func(t *testing.T) {
			b := booktest.New(t)
			fill(b)
			for _, today := range []string{"2025-04-10", "2025-03-01", "2031-01-01"} {
				r := reportOf(b, today)
				booktest.Finite(t, r, "report")
				for _, s := range rates(r) {
					if s.Share.Known && !(s.Share.Value >= 0 && s.Share.Value <= 1) {
						t.Errorf("rate: %+v", s)
					}
				}
				for _, x := range r.Records {
					if x.TrayDays < 0 {
						t.Errorf("%s: %v tray-days", x.Code, x.TrayDays)
					}
				}
			}
		})
	}
}

// Sowings alone: the gaps say which logs to begin, and no rate is known.
func TestSowingsOnly(t *testing.T) {
	b := booktest.New(t)
	b.Trays = nil
	b.Sow("a", "2025-03-01", "orache", "x", "AIR", 1)
	r := reportOf(b, "2025-06-01")
	if len(r.Germination.Emergence)+len(r.Plants.Quality)+len(r.Germination.Timing) > 0 || r.Records[0].Usable.Known || r.Records[0].CellsSown.Known {
		t.Errorf("figures from nowhere: %+v", r.Records[0])
	}
	for _, what := range []string{"tray codes", "germination counts", "looks at quality", "costs", "seed lots", "date set out", "plants out"} {
		booktest.Find(t, what, r.Missing, func(m Missing) bool { return m.What == what })
	}
}
