package rate

import (
	"math"
	"testing"

	"traybook/records"
	"traybook/report/estimate"
	"traybook/report/internal/booktest"
)

// of reads batches as x of n, pair by pair.
func of(xn ...float64) []estimate.Count {
	var counts []estimate.Count
	for i := 0; i < len(xn); i += 2 {
		counts = append(counts, estimate.Count{X: xn[i], N: xn[i+1]})
	}
	return counts
}

// Batches are pooled by their cells, not by the mean of their shares; one of which
// nothing was looked at is none.
func TestPool(t *testing.T) {
	r := Pool(of(90, 100, 10, 50, 0, 0))
	booktest.Known(t, "share", r.Share, 100.0/150, 1e-15)
	if r.Batches != 2 || r.X != 100 || r.N != 150 || !r.Few() || r.Low.Known {
		t.Errorf("got %+v", r)
	}
	if Pool(of(1, 2, 1, 2, 1, 2)).Few() {
		t.Error("3 batches are few")
	}
	none := Pool(of(0, 0))
	booktest.Missing(t, "share of nothing", none.Share)
}

// Rule "Variance of a rate", by hand: 2 batches of 50, rho 0.1: E = 1 + (50 - 1) x 0.1
// = 5.9, p = 80.5/101.
func TestVariance(t *testing.T) {
	counts := of(45, 50, 35, 50)
	p := 80.5 / 101
	booktest.Near(t, "variance", Pool(counts).Variance(counts, 0.1), p*(1-p)*5.9/100, 1e-15)
	booktest.Near(t, "without scatter", Pool(counts).Variance(counts, 0), p*(1-p)/100, 1e-15)
	all := of(50, 50)
	if v := Pool(all).Variance(all, 0); !(v > 0) {
		t.Errorf("all up looks exact: variance %v", v)
	}
}

// Rule "Per seed": 3 seeds a cell, 7 of 8 cells up: 1 - (1/8)^(1/3) = 1/2 a seed, and the
// ends likewise; with one seed a cell the rate itself.
func TestPerSeed(t *testing.T) {
	r := Rate{Share: records.Known(7.0 / 8), Low: records.Known(0.0), High: records.Known(26.0 / 27)}
	share, low, high := r.PerSeed(records.Known(3))
	booktest.Known(t, "share", share, 0.5, 1e-15)
	booktest.Known(t, "low", low, 0, 0)
	booktest.Known(t, "high", high, 2.0/3, 1e-15)
	share, _, _ = r.PerSeed(records.Known(1))
	booktest.Known(t, "one a cell", share, 7.0/8, 0)
	share, _, _ = r.PerSeed(records.Maybe[int]{})
	booktest.Missing(t, "several numbers of seeds", share)
	_, low, high = Rate{Share: records.Known(0.5)}.PerSeed(records.Known(3))
	booktest.Missing(t, "low without an interval", low)
	booktest.Missing(t, "high without an interval", high)
}

// An end at 0, or as near to it as to count for it, is not clear of it (rule "Missing").
func TestVerdicts(t *testing.T) {
	for want, ends := range map[Verdict][][2]float64{
		ClearlyHigher: {{0.001, 0.3}}, ClearlyLower: {{-0.3, -0.001}}, NoDifference: {{0, 0.3}, {-0.3, 0}, {-0.1, 0.1}, {9e-10, 0.3}, {-0.3, -9e-10}},
	} {
		for _, e := range ends {
			if got := VerdictOf(e[0], e[1]); got != want {
				t.Errorf("%v: %s, want %s", e, got, want)
			}
		}
	}
}

// Rule "Missing": a ratio over nothing and a median of nothing are missing, never 0.
func TestMissingStaysMissing(t *testing.T) {
	known := records.Known[float64]
	booktest.Known(t, "ratio", Ratio(known(3), known(4)), 0.75, 0)
	booktest.Known(t, "nothing of four", Ratio(known(0), known(4)), 0, 0)
	booktest.Missing(t, "over 0", Ratio(known(3), known(0)))
	booktest.Missing(t, "over less", Ratio(known(3), known(-1)))
	booktest.Missing(t, "over NaN", Ratio(known(3), known(math.NaN())))
	booktest.Missing(t, "of none", Ratio(Num{}, known(4)))
	booktest.Missing(t, "over none", Ratio(known(3), Num{}))
	booktest.Missing(t, "median of none", Median(nil))
	booktest.Known(t, "median of four", Median([]float64{9, 1, 4, 2}), 3, 0)
}
