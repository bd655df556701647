package sowing

import (
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// orache is three batches of a kind beside a crop that gives the book its scatter.
func orache(t testing.TB) *booktest.Book {
	b := booktest.New(t)
	scattered(b)
	gave(b, "o", "2025-03-01", "orache", "red", "AIR", 80, 70, 75)
	return b
}

// want writes the plants wanted of the batches o00, o01 and o02.
func want(b *booktest.Book, plants ...int) {
	for i, n := range plants {
		b.Sowings[len(b.Sowings)-3+i].Wanted = records.Known(n)
	}
}

// The target is the median of what was wanted, a wanted of 0 asking for nothing, rounded
// up; else of plants out to the field, those left over not among them.
func TestTarget(t *testing.T) {
	for name, c := range map[string]struct {
		change func(*booktest.Book)
		want   int
	}{
		"middle of three":     {func(b *booktest.Book) { want(b, 40, 90, 60) }, 60},
		"0 asks for nothing":  {func(b *booktest.Book) { want(b, 40, 0, 61) }, 51}, // 50.5
		"outs do not mix in":  {func(b *booktest.Book) { b.Sowings[6].Wanted = records.Known(33) }, 33},
		"else what went out":  {func(*booktest.Book) {}, 75},
		"only to the field":   {func(b *booktest.Book) { b.Leave(&b.Sowings[6], "2025-04-10", 70, 10) }, 70},
		"an out of 0 is none": {func(b *booktest.Book) { b.Leave(&b.Sowings[6], "2025-04-10", 0, 80) }, 73}, // 72.5
	} {
		b := orache(t)
		c.change(b)
		r := figures(t, b.Book()).row(t, "orache", "red", "air-pruning")
		whole(t, name, r.Target, c.want)
	}
	b := orache(t)
	for i := range 3 {
		b.Leave(&b.Sowings[6+i], "2025-04-10", 0, 75)
	}
	r := figures(t, b.Book()).row(t, "orache", "red", "air-pruning")
	none(t, "target without wanted or out", r.Target)
	none(t, "cells without target", r.CellsToSow)
	none(t, "trays without target", r.TraysToSow)
	missing(t, "left over without target", r.LeftOver)
	if !r.CellsPer100.Known {
		t.Error("no cells per 100")
	}
}

// Cells for the target by the same chance as per 100; trays of 100 cells rounded up;
// left over = cells x the plain rate - target.
func TestRow(t *testing.T) {
	b := orache(t)
	want(b, 150, 150, 150)
	r := figures(t, b.Book()).row(t, "orache", "red", "air-pruning")
	n, ok := Cells(r.RateUsed.Value, r.Rho.Value, 150, 0.9)
	if !ok || n <= 200 {
		t.Fatalf("%d cells: the test tells nothing", n)
	}
	whole(t, "cells", r.CellsToSow, n)
	whole(t, "trays", r.TraysToSow, 3)
	whole(t, "trays per 100", r.TraysPer100, 2)
	known(t, "left over", r.LeftOver, float64(n)*225/300-150, 1e-12)
	if r.Season != 0 || r.Cells.Value != 100 || r.Gap(r.CellsToSow) != "" {
		t.Errorf("row: %+v", r)
	}
	for cells, trays := range map[int]int{0: 0, 1: 1, 99: 1, 100: 1, 101: 2, 200: 2} {
		whole(t, "trays", traysOf(records.Known(cells), records.Known(100)), trays)
	}
}

// The surer one wants to be, the more cells; the setting says how sure.
func TestSureOfTarget(t *testing.T) {
	b := orache(t)
	usual := figures(t, b.Book()).row(t, "orache", "red", "air-pruning").CellsPer100
	b.Settings.SureOfTarget = 0.6
	less := figures(t, b.Book()).row(t, "orache", "red", "air-pruning").CellsPer100
	if !(less.Value < usual.Value && less.Value >= 134) {
		t.Errorf("sure by 0.6: %d, by 0.9: %d; 134 give 100 on average", less.Value, usual.Value)
	}
}

// A rate so low that three cells a plant will not do has no cells, said why.
func TestTooUnsure(t *testing.T) {
	b := booktest.New(t)
	scattered(b)
	gave(b, "o", "2025-03-01", "orache", "red", "AIR", 20, 30, 40)
	r := figures(t, b.Book()).row(t, "orache", "red", "air-pruning")
	none(t, "cells per 100", r.CellsPer100)
	none(t, "trays per 100", r.TraysPer100)
	none(t, "cells", r.CellsToSow)
	missing(t, "left over", r.LeftOver)
	if r.Gap(r.CellsPer100) != NotSure || !r.Rho.Known || !(r.PlainFails.Value > 0.99) {
		t.Errorf("row: %+v", r)
	}
}

// Groups: all seasons together, by crop, variety, cells and kind, with 3 batches or more,
// measured and from seed; sorted.
func TestWhoIsInTheTable(t *testing.T) {
	b := booktest.New(t)
	b.Tray("AIR50", "air-pruning", 50)
	scattered(b)
	gave(b, "two", "2025-03-01", "orache", "few", "AIR", 80, 70)
	gave(b, "w24", "2024-03-01", "orache", "red", "WALL", 80)
	gave(b, "w25", "2025-03-01", "orache", "red", "WALL", 80, 70)
	gave(b, "air", "2025-03-01", "orache", "red", "AIR", 80, 70, 60)
	gave(b, "a50", "2025-03-01", "orache", "red", "AIR50", 40, 30, 20)
	gave(b, "plug", "2025-03-01", "orache", "few", "AIR", 80)
	b.Sowings[len(b.Sowings)-1].Start = records.FromPlug
	gave(b, "open", "2025-03-01", "orache", "few", "AIR", 80)
	s := &b.Sowings[len(b.Sowings)-1]
	s.SetOut, s.PlantsOut, s.Surplus = 0, records.Maybe[int]{}, records.Maybe[int]{}
	gave(b, "least", "2025-03-01", "orache", "few", "AIR", 80)
	b.Sowings[len(b.Sowings)-1].Surplus = records.Maybe[int]{}
	var got []string
	for _, r := range figures(t, b.Book()).Sowing {
		got = append(got, r.Crop+" "+r.Variety+" "+r.Kind)
		if want := 3; r.Crop == "orache" && r.Rate.Batches != want {
			t.Errorf("%s: %d batches", got[len(got)-1], r.Rate.Batches)
		}
	}
	want := []string{"mibuna a solid-wall", "orache red air-pruning", "orache red air-pruning", "orache red solid-wall"}
	if len(got) != len(want) {
		t.Fatalf("rows: %q", got)
	}
	for i := range want {
		if got[i] != want[i] {
			t.Errorf("rows: %q, want %q", got, want)
		}
	}
	if rows := figures(t, b.Book()).Sowing; rows[1].Cells.Value != 50 || rows[2].Cells.Value != 100 {
		t.Error("not sorted by cells")
	}
}

// A book of one group of three batches has two degrees of freedom: a rate, no rho and no
// cells.
func TestTooFewBatchesForScatter(t *testing.T) {
	b := booktest.New(t)
	gave(b, "o", "2025-03-01", "orache", "red", "AIR", 80, 70, 75)
	b.Wishes = append(b.Wishes, records.Wish{Crop: "orache", Variety: "red", Plants: 100})
	f := figures(t, b.Book())
	r := f.row(t, "orache", "red", "air-pruning")
	known(t, "rate", r.Rate.Share, 0.75, 1e-15)
	for what, n := range map[string]Num{"rate used": r.RateUsed, "rho": r.Rho, "plain fails": r.PlainFails, "low": r.Rate.Low} {
		missing(t, what, n)
	}
	none(t, "cells per 100", r.CellsPer100)
	none(t, "cells", r.CellsToSow)
	if r.Gap(r.CellsPer100) != NoScatter || f.Wishes[0].Gap(f.Wishes[0].Cells) != NoScatter {
		t.Errorf("gaps: %q, %q", r.Gap(r.CellsPer100), f.Wishes[0].Gap(f.Wishes[0].Cells))
	}
}

// A tray code that trays.csv lacks: cells where they are written, never trays.
func TestUnknownTrayCode(t *testing.T) {
	b := booktest.New(t)
	scattered(b)
	gave(b, "o", "2025-03-01", "orache", "red", "BLOCK", 80, 70, 75, 60)
	for i := range 3 {
		b.Sowings[6+i].Cells = records.Known(100)
	}
	r := figures(t, b.Book()).row(t, "orache", "red", "")
	if r.Rate.Batches != 3 || r.Cells.Known || !r.CellsPer100.Known {
		t.Errorf("row: %+v", r)
	}
	none(t, "trays", r.TraysPer100)
	none(t, "trays", r.TraysToSow)
}
