package estimate

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"
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
