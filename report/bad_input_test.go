package report

import (
	"fmt"
	"reflect"
	"testing"

	"traybook/records"
)

// alike sows n batches of a crop, counted alike at a date.
func (b *book) alike(n, up int) {
	for i := range n {
		code := fmt.Sprint("a", i)
		b.sow(code, "2025-03-01", "orache", "x", "AIR", 1)
		b.count(code, "2025-03-20", up)
	}
}

// All up, or none: such a group shows no scatter (rule 6), so alone there is no
// interval; beside others its end is exactly 0 or 1 (rule 69).
func TestAllOrNoneUp(t *testing.T) {
	for _, up := range []int{0, 100} {
		b := newBook(t)
		b.alike(6, up)
		r := b.report("2025-04-20")
		known(t, "rate", r.Emergence[0].Share, float64(up)/100, 0)
		missing(t, "low", r.Emergence[0].Low)
		for i, n := range []int{50, 60, 55, 52} {
			code := fmt.Sprint("other", i)
			b.sow(code, "2025-03-01", "mibuna", "y", "AIR", 1)
			b.count(code, "2025-03-20", n)
		}
		r = b.report("2025-04-20")
		e := find(t, "orache", r.Emergence, func(e Emergence) bool { return e.Crop == "orache" })
		known(t, "df of the book", e.DF, 3, 0)
		if up == 0 && (e.Low.Value != 0 || !(e.High.Value > 0)) || up == 100 && (e.High.Value != 1 || !(e.Low.Value < 1)) {
			t.Errorf("%d up: %v to %v", up, e.Low, e.High)
		}
		finite(t, reflect.ValueOf(*r), "report")
	}
}

// Books with next to nothing in them: no fault, no number made up.
func TestScantBooks(t *testing.T) {
	for name, fill := range map[string]func(*book){
		"sowings only":   func(b *book) { b.sow("a", "2025-03-01", "orache", "x", "AIR", 1); b.Trays = nil },
		"one batch":      func(b *book) { b.alike(1, 50) },
		"none counted":   func(b *book) { b.sow("a", "2025-03-01", "orache", "x", "AIR", 1) },
		"no tray":        func(b *book) { b.sow("a", "2025-03-01", "orache", "x", "AIR", 0); b.count("a", "2025-03-20", 0) },
		"no cell":        func(b *book) { b.alike(3, 0); b.Counts[0].Cells = records.Known(0) },
		"count too high": func(b *book) { b.alike(3, 140) },
		"empty too high": func(b *book) {
			b.alike(3, 0)
			b.Counts[0].Emerged, b.Counts[0].Empty = records.Maybe[int]{}, records.Known(140)
		},
		"counts that fall":      func(b *book) { b.alike(3, 90); b.count("a0", "2025-03-25", 30); b.count("a0", "2025-03-28", 0) },
		"looked at none":        func(b *book) { b.alike(1, 90); b.look("a0", "2025-04-01", 0, 0) },
		"looks without planned": func(b *book) { b.alike(3, 90); b.look("a0", "2025-04-01", 20, 18) },
		"strange tray":          func(b *book) { b.alike(3, 90); b.Trays = nil },
		"set out before sown":   func(b *book) { b.alike(1, 90); b.leave(&b.Sowings[0], "2025-02-01", 5, 0) },
		"unknown batch":         func(b *book) { b.count("nobody", "2025-03-20", 4); b.look("nobody", "2025-03-20", 4, 4) },
		"tray beyond the last":  func(b *book) { b.alike(1, 5); b.countTray("a0", "2025-03-25", 9, 40) },
	} {
		t.Run(name, func(t *testing.T) {
			b := newBook(t)
			fill(b)
			for _, today := range []string{"2025-04-10", "2025-03-01", "2031-01-01"} {
				r := b.report(today)
				finite(t, reflect.ValueOf(*r), "report")
				for _, s := range r.shares() {
					if s.Share.Known && !(s.Share.Value >= 0 && s.Share.Value <= 1) {
						t.Errorf("rate: %+v", s)
					}
				}
				for _, x := range r.Batches {
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
	b := newBook(t)
	b.Trays = nil
	b.sow("a", "2025-03-01", "orache", "x", "AIR", 1)
	r := b.report("2025-06-01")
	if len(r.Emergence)+len(r.Quality)+len(r.Timing) > 0 || r.Batches[0].Usable.Known || r.Batches[0].CellsSown.Known {
		t.Errorf("figures from nowhere: %+v", r.Batches[0])
	}
	for _, what := range []string{"tray codes", "germination counts", "looks at quality", "costs", "seed lots", "date set out", "plants out"} {
		find(t, what, r.Missing, func(m Missing) bool { return m.What == what })
	}
}

// A cell that is missing is told once, with the batches that it touches.
func TestGapsOfBatches(t *testing.T) {
	b := newBook(t)
	b.lot("L", "orache", 0.9)
	b.alike(2, 90)
	b.Sowings[0].Lot, b.Sowings[1].Lot = "L", "lost label"
	b.leave(&b.Sowings[0], "2025-04-10", 80, 0)
	b.leave(&b.Sowings[1], "2025-04-10", 80, 0)
	b.Sowings[1].Surplus = records.Maybe[int]{}
	b.sow("c", "2025-03-05", "orache", "x", "GONE", 1)
	b.look("a0", "2025-04-09", 20, 20)
	b.Costs = append(b.Costs, row(t, "2025-04-10", records.Labour, 0, hours(3)))
	r := b.report("2025-07-10")
	for what, batches := range map[string][]string{
		"usable plants left over": {"a1"}, "row of the seed lot": {"a1"}, "seed lot": {"c"}, "tray code": {"c"}, "date set out": {"c"},
		"count": {"c"}, "planned date": {"a0"}, "look at quality": {"a1", "c"}, "wage": nil, "price of a seed lot: L": nil,
	} {
		if m := find(t, what, r.Missing, func(m Missing) bool { return m.What == what }); !reflect.DeepEqual(m.Batches, batches) {
			t.Errorf("%s: %v, want %v", what, m.Batches, batches)
		}
	}
}
