package plants

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// Bands begin on days 0, 1, 4, 8 and 15; all looks of a batch in a band are added;
// three batches are needed for a share (rule "Leeway").
func TestLeeway(t *testing.T) {
	b := booktest.New(t)
	for i := range 3 {
		code := fmt.Sprint("b", i)
		b.Sow(code, "2025-03-01", "orache", "x", "AIR", 1).Planned = b.Day("2025-04-10")
		b.Look(code, "2025-04-10", 10, 10)
		b.Look(code, "2025-04-11", 10, 9)
		b.Look(code, "2025-04-11", 10, 8)
		b.Look(code, "2025-04-13", 10, 7)
	}
	b.Look("b0", "2025-04-25", 10, 1) // 15 days late
	b.Sow("unplanned", "2025-03-01", "orache", "x", "AIR", 1)
	b.Look("unplanned", "2025-04-10", 10, 10)
	f := figures(t, b.Book(), "2025-04-28")
	want := map[int][3]float64{0: {3, 30, 30}, 1: {3, 90, 72}, 15: {1, 10, 1}}
	for _, l := range f.Leeway {
		if w := want[l.DaysLate]; [3]float64{float64(l.Batches), l.N, l.X} != w || l.Share.Known != (l.Batches >= 3) || l.Low.Known && !l.Share.Known {
			t.Errorf("%q band %d: %+v", l.Crop, l.DaysLate, l)
		}
	}
	if len(f.Leeway) != 6 || f.Leeway[0].Crop != "" || f.Leeway[3].Crop != "orache" {
		t.Errorf("leeway: %+v", f.Leeway)
	}
}

// Every day past planned, or before it, lies in a band.
func TestBands(t *testing.T) {
	for late, band := range map[int]int{-9: 0, 0: 0, 1: 1, 3: 1, 4: 2, 7: 2, 8: 3, 14: 3, 15: 4, 99: 4} {
		if got := BandOf(late); got != band {
			t.Errorf("%d days late: band %d, want %d", late, got, band)
		}
	}
}

// looksLate is a book of orache in AIR: each entry is days late, batches, and how many
// of ten plants of each were fit.
func looksLate(t *testing.T, looks ...[3]int) *Figures {
	t.Helper()
	b := booktest.New(t)
	for _, l := range looks {
		for i := range l[1] {
			code := fmt.Sprint(l[0], "-", i)
			planned := b.Day("2025-04-10")
			b.Sow(code, "2025-03-01", "orache", "x", "AIR", 1).Planned = planned
			b.Look(code, (planned + records.Date(l[0])).String(), 10, l[2])
		}
	}
	return figures(t, b.Book())
}

// Rule "Leeway" in words: the last band still at 80 % before the first below, bands of
// fewer than three batches passed over, whatever comes after the first below.
func TestFit(t *testing.T) {
	const none = -1
	for _, tt := range []struct {
		name        string
		looks       [][3]int
		want        FitCase
		last, below int // first days of the bands
	}{
		{"nothing planned", nil, "", none, none},
		{"two batches only", [][3]int{{0, 2, 10}, {2, 2, 1}}, "", none, none},
		{"90, unknown, just 80, 70, 100 %", [][3]int{{0, 3, 9}, {2, 2, 1}, {5, 3, 8}, {9, 3, 7}, {20, 3, 10}}, FitUntil, 4, 8},
		{"90, unknown, 70 %", [][3]int{{0, 3, 9}, {2, 2, 10}, {5, 3, 7}}, FitUntil, 0, 4},
		{"all of 80 % or more", [][3]int{{0, 3, 9}, {5, 3, 8}, {20, 2, 1}}, FitEvery, 4, none},
		{"only the last band known", [][3]int{{0, 2, 1}, {20, 4, 9}}, FitEvery, 15, none},
		{"70 % at first", [][3]int{{0, 3, 7}, {5, 3, 10}}, FitNever, none, 0},
		{"unknown, then 70 %, then 60 %", [][3]int{{0, 2, 10}, {2, 3, 7}, {5, 3, 6}}, FitNever, none, 1},
	} {
		f := looksLate(t, tt.looks...)
		if len(tt.looks) > 0 && len(f.Fits) != 2 {
			t.Fatalf("%s: %d words, want those of orache and of all crops", tt.name, len(f.Fits))
		}
		for _, crop := range []string{"orache", ""} {
			got := f.Fit(crop, "air-pruning")
			day := func(l Leeway) int {
				if l.Batches == 0 {
					return none
				}
				return l.DaysLate
			}
			if got.Crop != crop || got.Case != tt.want || day(got.Last) != tt.last || day(got.Below) != tt.below {
				t.Errorf("%s, %q: %+v", tt.name, crop, got)
			}
		}
	}
}

// Each crop and each kind has words of its own: orache in AIR 90 %, in WALL 50 %,
// mibuna in AIR 20 %, so that all crops in AIR stand at 55 %.
func TestFitByCropAndKind(t *testing.T) {
	b := booktest.New(t)
	for i := range 3 {
		for _, s := range []struct {
			crop, tray string
			fit        int
		}{{"orache", "AIR", 9}, {"orache", "WALL", 5}, {"mibuna", "AIR", 2}} {
			code := fmt.Sprint(s.crop, s.tray, i)
			b.Sow(code, "2025-03-01", s.crop, "x", s.tray, 1).Planned = b.Day("2025-04-10")
			b.Look(code, "2025-04-10", 10, s.fit)
		}
	}
	f := figures(t, b.Book())
	for key, want := range map[[2]string]FitCase{
		{"orache", "air-pruning"}: FitEvery, {"orache", "solid-wall"}: FitNever, {"mibuna", "air-pruning"}: FitNever,
		{"", "air-pruning"}: FitNever, {"", "solid-wall"}: FitNever, {"mibuna", "solid-wall"}: "", {"agretti", "air-pruning"}: "",
	} {
		if got := f.Fit(key[0], key[1]).Case; got != want {
			t.Errorf("%v: %q, want %q", key, got, want)
		}
	}
}
