package estimate

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"
	"pgregory.net/rapid"
)

// By hand: 7 of 9 gives p = 7.5/10; 0.75 x 0.25 x 2 / 9 = 1/24. 0 of 9 gives p = 0.05: 0.0475/9.
func TestPooledVarianceByHand(t *testing.T) {
	near(t, "7 of 9", PooledVariance(7, 9, 2), 1.0/24, 1e-15)
	near(t, "0 of 9", PooledVariance(0, 9, 1), 0.0475/9, 1e-15)
	near(t, "9 of 9", PooledVariance(9, 9, 1), 0.0475/9, 1e-15)
	if v := PooledVariance(0, 0, 1); !math.IsInf(v, 1) {
		t.Errorf("nothing known: %v", v)
	}
}

// The rate in it is the mean of Jeffreys' posterior: the distribution whose quantiles are the intervals of Brown, Cai and
// DasGupta (2001), Table 5, and R's qbeta, see testdata/README.txt.
func TestPooledVarianceTakesJeffreysMean(t *testing.T) {
	want := expected(t, "binom_one")
	tested := 0
	for _, r := range rows(t, "binom_one.csv") {
		x, n, tail := r.number(t, "x"), r.number(t, "n"), (1-r.number(t, "conf"))/2
		if r["sides"] != "two" || x == 0 || x == n {
			continue // an end held at 0 or 1 is no quantile
		}
		posterior := distuv.Beta{Alpha: x + 0.5, Beta: n - x + 0.5}
		near(t, r["case"]+" low", posterior.CDF(want(r["case"], "jeffreys_lower")), tail, 1e-9)
		near(t, r["case"]+" high", posterior.CDF(want(r["case"], "jeffreys_upper")), 1-tail, 1e-9)
		p := posterior.Mean()
		near(t, r["case"], PooledVariance(x, n, 1), p*(1-p)/n, 1e-15)
		tested++
	}
	if tested != 8 {
		t.Errorf("tested %d cases, want 8", tested)
	}
}

// The larger of the two, by hand. 9 and 5 of 10, no scatter: apart 9.5/11 x 1.5/11 / 10 + 5.5/11 x 5.5/11 / 10 = 0.03678; with
// p = 14.5/21 for both 14.5/21 x 6.5/21 x 0.2 = 0.04274, which is larger. 50 and 50 of 100 and 100 lie apart: 2 x 0.25/100 is
// theirs either way; of 1 of 1000 and 5 of 10 the common rate is near 0, and the sum of their own is larger.
func TestDifferenceVarianceByHand(t *testing.T) {
	near(t, "pooled", DifferenceVariance(Pooled{9, 10, 1}, Pooled{5, 10, 1}), 14.5*6.5/(21*21)*0.2, 1e-15)
	near(t, "alike", DifferenceVariance(Pooled{50, 100, 1}, Pooled{50, 100, 1}), 2*0.25/100, 1e-6)
	near(t, "apart", DifferenceVariance(Pooled{1, 1000, 1}, Pooled{5, 10, 1}), 1.5*999.5/(1001*1001*1000)+0.025, 1e-15)
	near(t, "widened", DifferenceVariance(Pooled{9, 10, 3}, Pooled{5, 10, 2}), 14.5*6.5/(21*21)*0.5, 1e-15)
	if v := DifferenceVariance(Pooled{}, Pooled{5, 10, 1}); !math.IsInf(v, 1) {
		t.Errorf("of nothing: %v", v)
	}
}

// Which side comes first changes no digit.
func TestDifferenceVarianceMirrors(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		side := func(name string) Pooled {
			n := rapid.IntRange(1, 2000).Draw(t, name+" n")
			return Pooled{float64(rapid.IntRange(0, n).Draw(t, name+" x")), float64(n), rapid.Float64Range(1, 60).Draw(t, name+" D")}
		}
		a, b := side("a"), side("b")
		if v, w := DifferenceVariance(a, b), DifferenceVariance(b, a); v != w || !(v > 0) {
			t.Fatalf("%v and %v", v, w)
		}
	})
}
