package estimate

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// The 50-seed example, see testdata/README.txt; Coolbear's T50.
func TestTimingAgreesWithPublishedExample(t *testing.T) {
	var days, up []float64
	stood := 0.0
	for _, r := range rows(t, "germ_counts.csv") {
		stood += r.number(t, "new_germinated")
		days, up = append(days, r.number(t, "time")), append(up, stood)
	}
	want := expected(t, "germ_counts")
	t50, before, ok := T50(days, up)
	if before || !ok {
		t.Fatalf("before %v, ok %v", before, ok)
	}
	near(t, "T50", t50, want("lab50", "t50_coolbear"), 1e-9)
	mean, ok := MeanGerminationTime(days, up)
	if !ok {
		t.Fatal("no mean germination time")
	}
	near(t, "mean germination time", mean, want("lab50", "mgt"), 1e-9)
}

// Each by hand, from rule "Timing".
func TestT50Cases(t *testing.T) {
	for _, c := range []struct {
		name     string
		days, up []float64
		t50      float64
		before   bool
		ok       bool
		mean     float64
		hasAMean bool
	}{
		{name: "exactly half at the first count", days: []float64{4, 6}, up: []float64{50, 100}, t50: 4.02, ok: true, mean: 5, hasAMean: true},
		{name: "more than half at the first", days: []float64{4, 6}, up: []float64{51, 100}, before: true, mean: 4.98, hasAMean: true},
		{name: "all at the first", days: []float64{4, 6}, up: []float64{9, 9}, before: true, mean: 4, hasAMean: true},
		{name: "one plant, late", days: []float64{4, 6}, up: []float64{0, 1}, t50: 6, ok: true, mean: 6, hasAMean: true},
		{name: "a count met exactly", days: []float64{3, 5, 8}, up: []float64{2, 6, 11}, t50: 5, ok: true, mean: 6, hasAMean: true},
		{name: "a fall is not believed", days: []float64{3, 5, 8}, up: []float64{2, 6, 5}, t50: 3.75, ok: true, mean: 13.0 / 3, hasAMean: true},
		{name: "nothing came up", days: []float64{3, 5}, up: []float64{0, 0}},
		{name: "no counts"},
		{name: "lists of unequal length", days: []float64{3, 5}, up: []float64{1}},
		{name: "days out of order", days: []float64{5, 3}, up: []float64{1, 2}},
		{name: "a day that is none", days: []float64{math.NaN(), 3}, up: []float64{1, 2}},
		{name: "a part of a plant", days: []float64{3, 5}, up: []float64{0.1, 0.6}, mean: 14.0 / 3, hasAMean: true},
	} {
		t.Run(c.name, func(t *testing.T) {
			t50, before, ok := T50(c.days, c.up)
			if before != c.before || ok != c.ok {
				t.Errorf("before %v, ok %v", before, ok)
			}
			near(t, "T50", t50, c.t50, 1e-12)
			mean, ok := MeanGerminationTime(c.days, c.up)
			if ok != c.hasAMean {
				t.Errorf("mean ok %v", ok)
			}
			near(t, "mean", mean, c.mean, 1e-12)
		})
	}
}

// T50 lies after the first count and no later than the last; the mean between both. Sowing later by some days is not
// asked: day 0 is the sowing.
func TestTimingLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := rapid.IntRange(1, 8).Draw(t, "counts")
		day, stood := 0, 0
		var days, up []float64
		for range k {
			day += rapid.IntRange(1, 5).Draw(t, "gap")
			stood += rapid.IntRange(0, 60).Draw(t, "new")
			days, up = append(days, float64(day)), append(up, float64(stood))
		}
		t50, before, ok := T50(days, up)
		mean, hasMean := MeanGerminationTime(days, up)
		if hasMean != (stood > 0) || ok != (stood > 0 && !before) {
			t.Fatalf("stood %d: ok %v, before %v, mean %v", stood, ok, before, hasMean)
		}
		if ok && !(t50 > days[0] && t50 <= days[k-1]) {
			t.Fatalf("T50 %v outside %v", t50, days)
		}
		if hasMean && !(mean >= days[0]-1e-9 && mean <= days[k-1]+1e-9) {
			t.Fatalf("mean %v outside %v", mean, days)
		}
	})
}
