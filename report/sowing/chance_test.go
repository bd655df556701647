package sowing

import (
	"math"
	"testing"

	"traybook/report/internal/booktest"
	"traybook/report/rate"
)

// The smallest n with P(X >= need) >= sure, by R 4.2.2 (pbinom; sums of lbeta) and by
// scipy 1.10.1 (binom, betabinom); the same cases as estimate/testdata/sowing.csv. Case d
// lies exactly on the chance wanted.
func TestCellsAgreeWithReference(t *testing.T) {
	for _, c := range []struct {
		name      string
		need      int
		rate, rho float64
		sure      float64
		want      int
	}{
		{"a", 72, 0.90, 0, 0.95, 85}, {"b", 128, 0.85, 0, 0.95, 159}, {"c", 50, 0.60, 0, 0.99, 102},
		{"d", 10, 0.50, 0, 0.50, 19}, {"e", 72, 0.90, 0.02, 0.95, 90}, {"f", 200, 0.75, 0.05, 0.90, 325},
	} {
		if n, ok := Cells(c.rate, c.rho, c.need, c.sure); !ok || n != c.want {
			t.Errorf("case %s: %d, %v; want %d", c.name, n, ok, c.want)
		}
	}
}

// Up to three cells a plant are told and no more: with a flat beta (rate 1/2, rho 1/3)
// every number of plants is as likely, and P(X >= 1) of n cells is n/(n + 1): 3 cells
// give one plant in 3 of 4 seasons, 4 in 4 of 5.
func TestNoMoreThanThreeCellsAPlant(t *testing.T) {
	if n, ok := Cells(0.5, 1.0/3, 1, 0.75); !ok || n != 3 {
		t.Errorf("3 of 4: %d, %v", n, ok)
	}
	if n, ok := Cells(0.5, 1.0/3, 1, 0.76); ok {
		t.Errorf("more than 3 of 4: %d cells", n)
	}
	if n, ok := Cells(0.5, 0.1, 0, 0.9); !ok || n != 0 {
		t.Errorf("no plants: %d, %v", n, ok)
	}
	for _, bad := range []float64{math.NaN(), 0, -1} {
		if n, ok := Cells(bad, 0.1, 10, 0.9); ok {
			t.Errorf("rate %v: %d cells", bad, n)
		}
	}
}

// atLeast is P(X >= k) of a beta-binomial by the gamma function, a way of its own.
func atLeast(k, n int, p, rho float64) float64 {
	lbeta := func(a, b float64) float64 {
		x, _ := math.Lgamma(a)
		y, _ := math.Lgamma(b)
		z, _ := math.Lgamma(a + b)
		return x + y - z
	}
	a, b := p*(1-rho)/rho, (1-p)*(1-rho)/rho
	sum := 0.0
	for x := k; x <= n; x++ {
		choose := -lbeta(float64(x+1), float64(n-x+1)) - math.Log(float64(n+1))
		sum += math.Exp(choose + lbeta(float64(x)+a, float64(n-x)+b) - lbeta(a, b))
	}
	return sum
}

// Rule "How much to sow", by hand. The group: 2024 with 80 and 60 of 100, 2025 with 70:
// rate 210/300; X2 = (100 + 100 + 0)/21, df 2, G = 3 x 99 x 2/3 = 198. A second variety
// of the crop, 75 60 90 75 of 100: p = 0.75, X2 = (225 + 225)/18.75 = 24, df 3, G = 4 x 99
// x 3/4 = 297. The crop is the book: rho = (200/21 + 24 - 5)/495. Seasons hold 200 and
// 100 cells.
func TestRateUsedAndRhoByHand(t *testing.T) {
	b := booktest.New(t)
	gave(b, "a", "2024-03-01", "orache", "red", "AIR", 80, 60)
	gave(b, "b", "2025-03-01", "orache", "red", "AIR", 70)
	gave(b, "c", "2025-03-01", "orache", "green", "AIR", 75, 60, 90, 75)
	r := figures(t, b.Book()).row(t, "orache", "red", "air-pruning")
	rho := (200.0/21 + 24 - 5) / 495
	known(t, "scatter", r.Rate.Rho, rho, 1e-15)
	known(t, "rate", r.Rate.Share, 0.7, 1e-15)
	known(t, "rate used", r.RateUsed, 210.5/301, 1e-15)
	e := 1 + ((200.0*200+100*100)/300-1)*rho
	known(t, "rho used", r.Rho, rho+(1-rho)*e/300, 1e-15)
	if r.Rate.Batches != 3 || !r.Rate.Low.Known {
		t.Errorf("rate: %+v", r.Rate)
	}
	n := r.CellsPer100.Value
	if at, less := atLeast(100, n, r.RateUsed.Value, r.Rho.Value), atLeast(100, n-1, r.RateUsed.Value, r.Rho.Value); at < 0.9 || less >= 0.9 {
		t.Errorf("%d cells give 100 plants with %v, one less with %v", n, at, less)
	}
	known(t, "plain fails", r.PlainFails, 1-atLeast(100, 120, r.RateUsed.Value, r.Rho.Value), 1e-9)
}

// The same batches in one season tell less than over three: more cells are told.
func TestOneSeasonTellsLess(t *testing.T) {
	one, three := booktest.New(t), booktest.New(t)
	for i, year := range []string{"2023", "2024", "2025"} {
		up := []int{60, 75, 90}[i : i+1]
		gave(one, year, "2025-03-01", "orache", "red", "AIR", up...)
		gave(three, year, year+"-03-01", "orache", "red", "AIR", up...)
	}
	scattered(one)
	scattered(three)
	a, b := figures(t, one.Book()).row(t, "orache", "red", "air-pruning"), figures(t, three.Book()).row(t, "orache", "red", "air-pruning")
	if a.Rate.Share != b.Rate.Share || !(a.Rho.Value > b.Rho.Value) || !(a.CellsPer100.Value > b.CellsPer100.Value) {
		t.Errorf("one season %+v, three %+v", a, b)
	}
}

// Why there are no cells: too few batches of the group, too few in the book, or too
// unsure.
func TestGaps(t *testing.T) {
	few, enough := rate.Rate{Batches: 2}, rate.Rate{Batches: 3}
	known := Num{Value: 0.1, Known: true}
	for _, c := range []struct {
		chance Chance
		cells  Whole
		want   Gap
	}{
		{Chance{Rate: few, Rho: known}, Whole{}, FewBatches}, {Chance{Rate: enough}, Whole{}, NoScatter},
		{Chance{Rate: enough, Rho: known}, Whole{}, NotSure}, {Chance{Rate: enough, Rho: known}, Whole{Value: 9, Known: true}, ""},
	} {
		if got := c.chance.Gap(c.cells); got != c.want {
			t.Errorf("%+v: %q, want %q", c, got, c.want)
		}
	}
}
