package plants

import (
	"fmt"
	"slices"
	"testing"

	"traybook/records"
	"traybook/report/batch"
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

// Every band has words, and every day past planned a band.
func TestBands(t *testing.T) {
	for late, band := range map[int]int{-9: 0, 0: 0, 1: 1, 3: 1, 4: 2, 7: 2, 8: 3, 14: 3, 15: 4, 99: 4} {
		if got := BandOf(late); got != band {
			t.Errorf("%d days late: band %d, want %d", late, got, band)
		}
	}
	for _, first := range LeewayBands {
		if LateWords[first] == "" {
			t.Errorf("no words for day %d", first)
		}
	}
}

// In words: 90 % fit in time, too few looks 1-3 days late, exactly 80 % 4-7 days late,
// 70 % after that, whatever comes later.
func TestLastFit(t *testing.T) {
	b := booktest.New(t)
	look := func(late, batches, usable int) {
		for i := range batches {
			code := fmt.Sprint(late, "-", i)
			planned := b.Day("2025-04-10")
			b.Sow(code, "2025-03-01", "orache", "x", "AIR", 1).Planned = planned
			b.Look(code, (planned + records.Date(late)).String(), 10, usable)
		}
	}
	look(0, 3, 9)
	look(2, 2, 1)
	look(5, 3, 8)
	look(9, 3, 7)
	look(20, 3, 10)
	f := figures(t, b.Book())
	for _, crop := range []string{"orache", ""} {
		bands := batch.Filter(f.Leeway, func(l Leeway) bool { return l.Crop == crop })
		if last := LastFit(bands); last < 0 || bands[last].DaysLate != 4 {
			t.Errorf("%q: place %d of %+v", crop, last, bands)
		}
		if last := LastFit(slices.Clone(bands[3:])); last != -1 {
			t.Errorf("%q: 70 %% in the first band, and place %d", crop, last)
		}
	}
	if last := LastFit(nil); last != -1 {
		t.Errorf("no bands: place %d", last)
	}
}
