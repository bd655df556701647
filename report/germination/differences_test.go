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
// scatter between batches (equal counts: rho 0, df of the crop 8 + 3).
//
//	AIR:  P 90 of 100 three times, Q 80 three times. w = 300 x 300 / 600 = 150, d = 0.1
//	WALL: P 70 three times, Q 66 three times.        w = 150,                   d = 0.04
//
// difference = (150 x 0.1 + 150 x 0.04) / 300 = 0.07; variance = (vAIR + vWALL) / 4, each
// the larger of the sum of p(1-p)/300 with p = (x + 0.5)/301 and of 2 p(1-p)/300 with p =
// (both + 0.5)/601; m = 2, so T at 97.5 % of 11.
func TestDifferenceByHand(t *testing.T) {
	b := booktest.New(t)
	for _, c := range []struct {
		tray, variety string
		up            int
	}{{"AIR", "P", 90}, {"AIR", "Q", 80}, {"WALL", "P", 70}, {"WALL", "Q", 66}} {
		for i := range 3 {
			code := fmt.Sprint(c.tray, c.variety, i)
			b.Sow(code, "2025-03-01", "orache", c.variety, c.tray, 1)
			b.Count(code, "2025-03-20", c.up)
		}
	}
	v := func(x, n float64) float64 { p := (x + 0.5) / (n + 1); return p * (1 - p) / 300 }
	variance := (max(v(270, 300)+v(240, 300), 2*v(510, 600)) + max(v(210, 300)+v(198, 300), 2*v(408, 600))) / 4
	d := figures(b, "2025-04-01").verdictOn(t, 2025, "P")
	known(t, "difference", d.Difference, 0.07, 1e-12)
	half := estimate.T(0.975, 11) * math.Sqrt(variance)
	known(t, "low", d.Low, 0.07-half, 1e-12)
	known(t, "high", d.High, 0.07+half, 1e-12)
	if d.Batches != 6 || d.OtherBatches != 6 || d.Verdict != rate.ClearlyHigher || d.Words() != "clearly higher" {
		t.Errorf("got %+v", d)
	}
}

// The interval of a difference rests on the crop's own scatter, not on the book's: three
// batches of 100 on each side, w = 150, and one stratum, so that the variance is theirs,
// widened by 1 + 99 rho.
func TestDifferenceRestsOnTheCropsScatter(t *testing.T) {
	b, wild, _, _ := scattered(t)
	side := func(x float64) estimate.Pooled { return estimate.Pooled{X: x, N: 300, D: 1 + 99*wild.Rho} }
	d := figures(b, "2025-04-10").verdictOn(t, 2025, "P")
	known(t, "difference", d.Difference, (195.0-209)/300, 1e-12)
	half := estimate.T(0.975, wild.DF) * math.Sqrt(estimate.DifferenceVariance(side(195), side(209)))
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

// One bad variety makes no good ones: B and C come up alike, and better than the crop's
// rest only as long as A is in it. A is set aside; B and C are judged by themselves, at
// the level of three comparisons (no scatter: df 6 + 3).
func TestOneBadVarietyMakesNoGoodOnes(t *testing.T) {
	b := booktest.New(t)
	alike(b, "a", "orache", "A", 50, 50, 50)
	alike(b, "b", "orache", "B", 90, 90, 90)
	alike(b, "c", "orache", "C", 89, 89, 89)
	f := figures(b, "2025-04-01")
	if d := f.verdictOn(t, 2025, "A"); d.Verdict != rate.ClearlyLower || d.OtherBatches != 6 {
		t.Errorf("A: %+v", d)
	}
	half := estimate.T(1-0.05/3, 9) * math.Sqrt(estimate.DifferenceVariance(estimate.Pooled{X: 270, N: 300, D: 1}, estimate.Pooled{X: 267, N: 300, D: 1}))
	for variety, difference := range map[string]float64{"B": 0.01, "C": -0.01} {
		d := f.verdictOn(t, 2025, variety)
		known(t, variety, d.Difference, difference, 1e-12)
		known(t, variety+" low", d.Low, difference-half, 1e-12)
		if d.Verdict != rate.NoDifference || d.Batches != 3 || d.OtherBatches != 3 {
			t.Errorf("%s: %+v", variety, d)
		}
	}
}

// Round by round: the one furthest off, by its standard error, is set aside first, then
// the next among those left, each with the others of its round.
func TestVarietiesAreSetAsideInTurn(t *testing.T) {
	b := booktest.New(t)
	for variety, up := range map[string]int{"A": 20, "B": 55, "C": 90, "D": 91, "E": 90} {
		alike(b, variety, "orache", variety, up, up, up)
	}
	f := figures(b, "2025-04-01")
	for variety, want := range map[string]struct {
		verdict rate.Verdict
		others  int
	}{"A": {rate.ClearlyLower, 12}, "B": {rate.ClearlyLower, 9}, "C": {rate.NoDifference, 6}, "D": {rate.NoDifference, 6}, "E": {rate.NoDifference, 6}} {
		if d := f.verdictOn(t, 2025, variety); d.Verdict != want.verdict || d.OtherBatches != want.others {
			t.Errorf("%s: %+v, want %v", variety, d, want)
		}
	}
}

// A variety of too few batches stays among the others and is never judged; one that has
// too few others left keeps its last round. Here C, of 2 batches, is all that B has left
// once A is set aside.
func TestAVarietyWithoutOthersKeepsItsLastRound(t *testing.T) {
	b := booktest.New(t)
	alike(b, "a", "orache", "A", 50, 50, 50)
	alike(b, "b", "orache", "B", 90, 90, 90)
	alike(b, "c", "orache", "C", 90, 90)
	f := figures(b, "2025-04-01")
	if d := f.verdictOn(t, 2025, "A"); d.Verdict != rate.ClearlyLower || d.OtherBatches != 5 {
		t.Errorf("A: %+v", d)
	}
	if d := f.verdictOn(t, 2025, "B"); d.Verdict != rate.ClearlyHigher || d.OtherBatches != 5 {
		t.Errorf("B keeps the round with A: %+v", d)
	}
	if d := f.verdictOn(t, 2025, "C"); d.Verdict != rate.TooFew || d.Low.Known || d.OtherBatches != 6 {
		t.Errorf("C: %+v", d)
	}
	known(t, "C against A and B", f.verdictOn(t, 2025, "C").Difference, 0.9-0.7, 1e-12)
}

// With two varieties left in the crop both get that round's verdict: each other's mirror,
// whichever stands first by bytes.
func TestTheLastTwoMirrorEachOther(t *testing.T) {
	b := booktest.New(t)
	alike(b, "a", "orache", "A", 10, 10, 10)
	alike(b, "b", "orache", "B", 70, 70, 70)
	alike(b, "c", "orache", "C", 95, 95, 95)
	f := figures(b, "2025-04-01")
	low, high := f.verdictOn(t, 2025, "B"), f.verdictOn(t, 2025, "C")
	if low.Verdict != rate.ClearlyLower || high.Verdict != rate.ClearlyHigher || low.OtherBatches != 3 || high.OtherBatches != 3 {
		t.Errorf("got %+v and %+v", low, high)
	}
	if low.Low.Value != -high.High.Value || low.High.Value != -high.Low.Value {
		t.Errorf("%v to %v and %v to %v", low.Low, low.High, high.Low, high.High)
	}
}

// Without a scatter, in a book of too few batches, there are differences and no verdict.
func TestNoVerdictWithoutAScatter(t *testing.T) {
	b := booktest.New(t)
	b.Settings.Confidence = 0.95
	alike(b, "a", "orache", "A", 50)
	alike(b, "b", "orache", "B", 90, 80)
	f := figures(b, "2025-04-01")
	for _, variety := range []string{"A", "B"} {
		d := f.verdictOn(t, 2025, variety)
		known(t, variety, Num{Value: math.Abs(d.Difference.Value), Known: d.Difference.Known}, 0.35, 1e-12)
		if d.Verdict != rate.TooFew || d.Low.Known {
			t.Errorf("%s: %+v", variety, d)
		}
	}
}
