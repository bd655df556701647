package germination

import (
	"fmt"
	"math"
	"testing"

	"traybook/report/estimate"
	"traybook/report/internal/booktest"
	"traybook/report/rate"
)

// verdictOn finds a variety's row in a season.
func (f *Figures) verdictOn(t *testing.T, season int, variety string) Difference {
	t.Helper()
	return booktest.Find(t, variety, f.Differences, func(d Difference) bool { return d.Season == season && d.Variety == variety })
}

// Rule "Varieties" by hand: one crop, two strata (the codes), varieties P and Q, no
// scatter between batches (equal counts: rho 0, df of the crop 8).
//
//	AIR:  P 90 of 100 three times, Q 80 three times. w = 300 x 300 / 600 = 150, d = 0.1
//	WALL: P 70 three times, Q 66 three times.        w = 150,                   d = 0.04
//
// difference = (150 x 0.1 + 150 x 0.04) / 300 = 0.07; variance = (v1 + v2 + v3 + v4) / 4
// with v = p(1-p)/300, p = (x + 0.5)/301; m = 2, so T at 97.5 % of 12 - 4 = 8.
func TestDifferenceByHand(t *testing.T) {
	b := booktest.New(t)
	up := map[string]int{"AIRP": 90, "AIRQ": 80, "WALLP": 70, "WALLQ": 66}
	variance := 0.0
	for key, n := range up {
		for i := range 3 {
			code := fmt.Sprint(key, i)
			b.Sow(code, "2025-03-01", "orache", key[len(key)-1:], key[:len(key)-1], 1)
			b.Count(code, "2025-03-20", n)
		}
		p := (float64(3*n) + 0.5) / 301
		variance += p * (1 - p) / 300 / 4
	}
	d := figures(b, "2025-04-01").verdictOn(t, 2025, "P")
	known(t, "difference", d.Difference, 0.07, 1e-12)
	half := estimate.T(0.975, 8) * math.Sqrt(variance)
	known(t, "low", d.Low, 0.07-half, 1e-12)
	known(t, "high", d.High, 0.07+half, 1e-12)
	if d.Batches != 6 || d.OtherBatches != 6 || d.Verdict != rate.ClearlyHigher {
		t.Errorf("got %+v", d)
	}
}

// The interval of a difference rests on the crop's own scatter, not on the book's: three
// batches of 100 on each side, each side's variance widened by 1 + 99 rho, w = 150, and
// one stratum, so that the variance is their sum.
func TestDifferenceRestsOnTheCropsScatter(t *testing.T) {
	b, wild, _ := scattered(t)
	widened := func(x float64) float64 {
		p := (x + 0.5) / 301
		return p * (1 - p) / 300 * (1 + 99*wild.Rho())
	}
	d := figures(b, "2025-04-10").verdictOn(t, 2025, "P")
	known(t, "difference", d.Difference, (195.0-209)/300, 1e-12)
	half := estimate.T(0.975, 4) * math.Sqrt(widened(195)+widened(209))
	known(t, "low", d.Low, (195.0-209)/300-half, 1e-12)
}

// Two batches are too few for a verdict, the difference alone is told; a variety that
// never stood beside another has no row; a later season adds to it.
func TestDifferenceOfFewBatches(t *testing.T) {
	b := booktest.New(t)
	sow := func(code, date, variety, tray string, up int) {
		b.Sow(code, date, "orache", variety, tray, 1)
		b.Count(code, (b.Day(date) + 19).String(), up)
	}
	for i := range 2 {
		sow(fmt.Sprint("p", i), "2024-03-01", "P", "AIR", 90+i)
		sow(fmt.Sprint("q", i), "2024-03-01", "Q", "AIR", 50+i)
	}
	sow("alone", "2024-03-01", "R", "WALL", 50)
	for i := range 3 {
		sow(fmt.Sprint("P", i), "2025-03-01", "P", "AIR", 90+i)
		sow(fmt.Sprint("Q", i), "2025-03-01", "Q", "AIR", 50+i)
	}
	f := figures(b, "2025-05-01")
	if d := f.verdictOn(t, 2024, "P"); d.Verdict != rate.TooFew || d.Low.Known || d.Difference.Value != 0.4 {
		t.Errorf("2024: %+v", d)
	}
	if d := f.verdictOn(t, 2025, "P"); d.Verdict != rate.ClearlyHigher || d.Batches != 5 {
		t.Errorf("2025: %+v", d)
	}
	if d := f.verdictOn(t, 2025, "Q"); d.Verdict != rate.ClearlyLower {
		t.Errorf("2025: %+v", d)
	}
	if len(f.Differences) != 4 {
		t.Errorf("%d rows, want 4", len(f.Differences))
	}
}

// One side alone must not give a verdict: a variety of many batches beside two of
// another, which come up far worse, is too few, and so is the other; nor does it make
// the verdicts of further varieties stricter. With a third batch both are clear.
func TestFewOtherBatchesGiveNoVerdict(t *testing.T) {
	b := booktest.New(t)
	alike(b, "p", "orache", "P", 95, 96, 94, 95, 95, 96)
	alike(b, "q", "orache", "Q", 40, 41)
	f := figures(b, "2025-05-01")
	if _, known := f.Scatter.Of("orache"); !known {
		t.Fatal("no scatter: the test tells nothing")
	}
	for variety, batches := range map[string][2]int{"P": {6, 2}, "Q": {2, 6}} {
		d := f.verdictOn(t, 2025, variety)
		if d.Verdict != rate.TooFew || d.Low.Known || d.High.Known || [2]int{d.Batches, d.OtherBatches} != batches {
			t.Errorf("%s: %+v", variety, d)
		}
		known(t, variety+", difference told", Num{Value: math.Abs(d.Difference.Value), Known: d.Difference.Known}, 571.0/600-81.0/200, 1e-12)
	}
	b.Sow("qz", "2025-03-01", "orache", "Q", "AIR", 1)
	b.Count("qz", "2025-03-20", 40)
	f = figures(b, "2025-05-01")
	if p, q := f.verdictOn(t, 2025, "P"), f.verdictOn(t, 2025, "Q"); p.Verdict != rate.ClearlyHigher || q.Verdict != rate.ClearlyLower {
		t.Errorf("3 others: %+v, %+v", p, q)
	}
}

// Varieties are compared like with like only: other cells, another number of seeds or
// another season is another stratum.
func TestOtherStrataAreNotCompared(t *testing.T) {
	b := booktest.New(t)
	alike(b, "p", "orache", "P", 95, 96, 94)
	b.Sow("wall", "2025-03-01", "orache", "Q", "WALL", 1)
	b.Sow("seeds", "2025-03-01", "orache", "R", "AIR", 1).SeedsPerCell = 2
	b.Sow("season", "2024-03-01", "orache", "S", "AIR", 1)
	for code, date := range map[string]string{"wall": "2025-03-20", "seeds": "2025-03-20", "season": "2024-03-20"} {
		b.Count(code, date, 50)
	}
	if f := figures(b, "2025-05-01"); len(f.Differences) != 0 {
		t.Errorf("got %+v", f.Differences)
	}
}
