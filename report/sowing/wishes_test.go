package sowing

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/internal/booktest"
)

// wish adds a row of wishes.csv; a blank planned is none.
func wish(b *booktest.Book, crop, variety, tray, planned string, plants int) {
	w := records.Wish{Crop: crop, Variety: variety, Tray: tray, Plants: plants}
	if planned != "" {
		w.Planned = b.Day(planned)
	}
	b.Wishes = append(b.Wishes, w)
}

// varied is orache in two varieties that differ much, alike within: red in air-pruned
// trays, green in both kinds.
func varied(t testing.TB) *booktest.Book {
	b := booktest.New(t)
	gave(b, "red", "2025-03-01", "orache", "red", "AIR", 95, 92, 94, 95)
	gave(b, "green", "2025-03-01", "orache", "green", "AIR", 80, 81)
	gave(b, "wall", "2025-03-01", "orache", "green", "WALL", 74, 75)
	return b
}

// The rate of a wish is that of its variety in its cells and kind, from 3 batches; else of
// the crop there, else of the crop in any code, else none; a blank variety asks for all
// varieties.
func TestNearestBatches(t *testing.T) {
	b := varied(t)
	for _, w := range []struct{ crop, variety, tray string }{
		{"orache", "red", "AIR"}, {"orache", "green", "AIR"}, {"orache", "", "AIR"}, {"orache", "unheard of", "AIR"},
		{"orache", "green", "WALL"}, {"orache", "", "WALL"}, {"orache", "red", "unknown"}, {"mibuna", "a", "AIR"},
	} {
		wish(b, w.crop, w.variety, w.tray, "", 100)
	}
	f := figures(t, b.Book())
	for i, want := range []struct {
		basis   Basis
		batches int
		rate    float64
	}{
		{OfVariety, 4, 376.0 / 400}, {OfCells, 6, 537.0 / 600}, {OfCells, 6, 537.0 / 600}, {OfCells, 6, 537.0 / 600},
		{OfCrop, 8, 686.0 / 800}, {OfCrop, 8, 686.0 / 800}, {OfCrop, 8, 686.0 / 800}, {"", 0, 0},
	} {
		w := f.Wishes[i]
		if w.Basis != want.basis || w.Rate.Batches != want.batches || w.Cells.Known != (want.basis != "") {
			t.Errorf("%s %s in %s: %q of %d batches, cells %v; want %q of %d", w.Crop, w.Variety, w.Code, w.Basis, w.Rate.Batches, w.Cells, want.basis, want.batches)
		}
		if want.basis != "" {
			known(t, string(want.basis), w.Rate.Share, want.rate, 1e-15)
		}
	}
	if w := f.Wishes[7]; w.Gap(w.Cells) != FewBatches || w.Seeds.Known || w.Trays.Known {
		t.Errorf("a crop never sown: %+v", w)
	}
}

// A blank variety asks for all varieties, not for batches without one.
func TestBlankVariety(t *testing.T) {
	b := varied(t)
	gave(b, "blank", "2025-03-01", "orache", "", "AIR", 90, 91, 92)
	wish(b, "orache", "", "AIR", "", 100)
	if w := figures(t, b.Book()).Wishes[0]; w.Basis != OfCells || w.Rate.Batches != 9 {
		t.Errorf("%q of %d batches", w.Basis, w.Rate.Batches)
	}
}

// Where varieties are thrown together what they differ by is scatter. By hand, as the one
// crop is the book: by variety 4 of 95 92 94 95 (p 0.94) and 2 of 80 81, 2 of 74 75; by
// cells and kind 6 (p 537/600) and 2; by crop 8 (p 686/800).
func TestVarietiesCountAsScatter(t *testing.T) {
	b := varied(t)
	for _, tray := range []string{"AIR", "WALL"} {
		wish(b, "orache", "", tray, "", 100)
	}
	wish(b, "orache", "red", "AIR", "", 100)
	f := figures(t, b.Book())
	rho := func(groups ...[]float64) float64 {
		x2, g, df := 0.0, 0.0, 0.0
		for _, of := range groups {
			n, sum := float64(len(of)), 0.0
			for _, x := range of {
				sum += x
			}
			p := sum / (100 * n)
			for _, x := range of {
				x2 += (x - 100*p) * (x - 100*p) / (100 * p * (1 - p))
			}
			g, df = g+99*n*(1-1/n), df+n-1
		}
		return min(max((x2-df)/g, 0), 0.5)
	}
	red, green, wall := []float64{95, 92, 94, 95}, []float64{80, 81}, []float64{74, 75}
	air := append(append([]float64{}, red...), green...)
	known(t, "of the variety", f.Wishes[2].Rate.Rho, rho(red, green, wall), 1e-12)
	known(t, "in its cells", f.Wishes[0].Rate.Rho, rho(air, wall), 1e-12)
	known(t, "in any code", f.Wishes[1].Rate.Rho, rho(append(append([]float64{}, air...), wall...)), 1e-12)
	if !(f.Wishes[0].Rate.Rho.Value > f.Wishes[2].Rate.Rho.Value+0.02) {
		t.Error("the test tells nothing")
	}
}

// A blank tray is the code with most trays, sown from seed, of the last finished season;
// of equal ones the first by bytes; else of the book.
func TestUsualCode(t *testing.T) {
	b := booktest.New(t)
	sow := func(code, sown, crop, tray string, trays float64) *records.Sowing {
		s := b.Sow(code, sown, crop, "x", tray, trays)
		b.Leave(s, (s.Sown + 40).String(), 80, 0)
		return s
	}
	sow("a", "2023-03-01", "orache", "WALL", 9)
	sow("b", "2024-03-01", "orache", "WALL", 1)
	sow("c", "2024-03-02", "orache", "WALL", 1)
	sow("d", "2024-03-03", "orache", "AIR", 2.3)
	sow("e", "2023-03-01", "mibuna", "AIR", 0.3)
	sow("f", "2023-03-02", "mibuna", "WALL", 0.1)
	sow("g", "2023-03-03", "mibuna", "WALL", 0.2) // 0.1 + 0.2 lies above 0.3 in float64
	sow("h", "2025-03-01", "orache", "WALL", 20)
	s := sow("p", "2024-03-01", "orache", "WALL", 50)
	s.From = "b"
	late := b.Sow("open", "2025-03-01", "orache", "x", "WALL", 20)
	wish(b, "orache", "", "", "", 10)
	wish(b, "mibuna", "", "", "", 10)
	wish(b, "orache", "", "WALL", "", 10)
	wish(b, "agretti", "", "", "", 10)
	f := figures(t, b.Book(), late.Sown.String())
	for i, want := range []struct {
		code string
		how  CodeHow
	}{{"AIR", CodeOfSeason}, {"AIR", CodeOfBook}, {"WALL", CodeWritten}, {"", ""}} {
		if w := f.Wishes[i]; w.Code != want.code || w.How != want.how {
			t.Errorf("wish %d: %q, %q; want %q, %q", i, w.Code, w.How, want.code, want.how)
		}
	}
	if w := f.Wishes[0]; w.Tray != "" {
		t.Errorf("the row as written has %q", w.Tray)
	}
}

// Cells are those of the chance, trays of its code rounded up; seeds by the median seeds
// a cell of the crop's batches from seed.
func TestWhatAWishTakes(t *testing.T) {
	b := varied(t)
	for i, k := range []int{2, 1, 2, 2, 1, 2, 3, 9} {
		b.Sowings[i].SeedsPerCell = k
	}
	b.Sowings[7].Start = records.FromCutting // 9 are not seeds sown: 1 1 2 2 2 2 3
	wish(b, "orache", "red", "AIR", "", 250)
	w := figures(t, b.Book()).Wishes[0]
	n, ok := Cells(w.RateUsed.Value, w.Rho.Value, 250, 0.9)
	if !ok || n <= 266 {
		t.Fatalf("%d cells: the test tells nothing", n)
	}
	whole(t, "cells", w.Cells, n)
	whole(t, "trays", w.Trays, 3)
	known(t, "seeds", w.Seeds, float64(2*n), 0)
	if w.SowBy.Known() || w.Free.Known() || w.TakesRoom() {
		t.Errorf("no day is planned: %v, %v", w.SowBy, w.Free)
	}
	b.Sowings[5].SeedsPerCell, b.Sowings[6].Start = 1, records.FromPlug // 1 1 1 2 2 2
	known(t, "seeds of an even number", figures(t, b.Book()).Wishes[0].Seeds, 1.5*float64(n), 0)
}

// Four in five of the written stays: of 10 the 8th, of 7 the 6th, of 5 the 4th; of fewer
// the longest; failed batches and those without a written end say nothing; without any the
// usual stay.
func TestSowBy(t *testing.T) {
	for n, want := range map[int]int{1: 31, 2: 32, 4: 34, 5: 34, 6: 35, 7: 36, 9: 38, 10: 38, 11: 39} {
		var stays []int
		for i := range n {
			stays = append(stays, 31+i)
		}
		if got := likelyStay(stays, batch.Stay{}); got != want {
			t.Errorf("of %d stays from 31 on: %d, want %d", n, got, want)
		}
	}
	if got := likelyStay(nil, batch.Stay{Median: 40, Longest: 60}); got != 40 {
		t.Errorf("no stay: %d", got)
	}
	b := booktest.New(t)
	for i, days := range []records.Date{50, 30, 42, 40, 30} {
		s := b.Sow(fmt.Sprint("o", i), "2025-03-01", "orache", "red", "AIR", 1)
		b.Leave(s, (s.Sown + days).String(), 80, 0)
	}
	failed := b.Sow("failed", "2025-03-01", "orache", "red", "AIR", 1)
	b.Leave(failed, "2025-07-01", 0, 0)
	b.Sow("assumed", "2025-01-01", "orache", "red", "AIR", 1)
	b.Count("assumed", "2025-05-01", 90) // it still stood after 120 days
	b.Sow("open", "2025-06-30", "mibuna", "x", "AIR", 1)
	wish(b, "orache", "red", "AIR", "2026-05-10", 10)
	wish(b, "agretti", "", "", "2026-05-10", 10)
	wish(b, "mibuna", "", "", "2026-05-10", 10)
	wish(b, "leek", "", "", "2026-05-10", 10)
	f := figures(t, b.Book())
	for i, days := range []records.Date{42, 56, 56, 70} { // the last: 8 weeks twice, and the trade table's 10 of leek
		w := f.Wishes[i]
		if w.SowBy != b.Day("2026-05-10")-days || w.Free != b.Day("2026-05-13") {
			t.Errorf("%s: sow by %v, free %v; want %d days before", w.Crop, w.SowBy, w.Free, days)
		}
	}
}

// The row of a wish is that of the file, as a spreadsheet counts.
func TestRowOfFile(t *testing.T) {
	for at, want := range map[records.At]int{{Line: 15, Row: 14}: 14, {}: 5} {
		if got := rowOfFile(at, 3); got != want {
			t.Errorf("%v: row %d, want %d", at, got, want)
		}
	}
}

// A wish in a code that trays.csv lacks has cells by the crop's rate and no trays; no
// plants take nothing.
func TestOddWishes(t *testing.T) {
	b := varied(t)
	wish(b, "orache", "red", "unknown", "2026-05-10", 100)
	wish(b, "orache", "red", "AIR", "2026-05-10", 0)
	f := figures(t, b.Book())
	none(t, "trays of an unknown code", f.Wishes[0].Trays)
	if !f.Wishes[0].Cells.Known || f.Wishes[0].TakesRoom() {
		t.Errorf("unknown code: %+v", f.Wishes[0])
	}
	whole(t, "cells for no plants", f.Wishes[1].Cells, 0)
	whole(t, "trays for no plants", f.Wishes[1].Trays, 0)
	if len(f.Weeks) != 0 {
		t.Errorf("room for nothing: %+v", f.Weeks)
	}
}
