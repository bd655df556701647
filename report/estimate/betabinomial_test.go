package estimate

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// R's pbinom and scipy's betabinom, see testdata/README.txt. Case d lies exactly on the probability wanted.
func TestSowingAgreesWithReference(t *testing.T) {
	want := expected(t, "sowing")
	for _, r := range rows(t, "sowing.csv") {
		name, need := r["case"], int(r.number(t, "need"))
		p, rho := r.number(t, "germination"), r.number(t, "rho")
		n := SmallestSowing(need, 3*need, p, rho, r.number(t, "probability"))
		if float64(n) != want(name, "smallest_n") {
			t.Errorf("%s: %d, want %v", name, n, want(name, "smallest_n"))
		}
		near(t, name+" at n", BetaBinomialAtLeast(need, n, p, rho), want(name, "prob_at_n"), 1e-9)
		near(t, name+" one less", BetaBinomialAtLeast(need, n-1, p, rho), want(name, "prob_at_n_minus_1"), 1e-9)
	}
}

// With p = 1/2 and rho = 1/3 the beta is flat, and every number from 0 to n as likely: P(X >= k) = (n + 1 - k)/(n + 1).
func TestBetaBinomialFlat(t *testing.T) {
	for k := range 12 {
		near(t, "flat", BetaBinomialAtLeast(k, 11, 0.5, 1.0/3), float64(12-k)/12, 1e-12)
	}
}

func TestBetaBinomialEnds(t *testing.T) {
	nan := math.NaN()
	for _, c := range []struct {
		k, n       int
		p, rho, p1 float64
	}{
		{0, 5, .3, .1, 1}, {-1, 5, .3, .1, 1}, {6, 5, .3, .1, 0}, {1, 5, 0, .1, 0}, {5, 5, 1, .1, 1}, {3, 5, .3, 1, .3},
		{3, 5, nan, .1, 0}, {3, 5, .3, nan, 0}, {1, 1, .3, .2, .3}, {2, 2, .5, 0, .25},
	} {
		near(t, "P", BetaBinomialAtLeast(c.k, c.n, c.p, c.rho), c.p1, 1e-15)
	}
	for _, c := range []struct {
		need, most   int
		p, rho, sure float64
		want         int
	}{
		{0, 9, .5, 0, .9, 0}, {-2, 9, .5, 0, .9, 0}, {10, 30, 1, .1, 1, 10}, {10, 9, 1, .1, 1, -1}, {10, 30, 0, 0, .9, -1},
		{1, 1000, .5, .5, .9999, -1}, {10, 1000, 1e-6, 0, .9, -1}, {10, 30, nan, .1, .9, -1}, {10, 30, .5, nan, .9, -1}, {10, 30, .5, 0, nan, -1},
		{10, 30, .95, 1, .9, 10}, {10, 30, .85, 1, .9, -1}, {10, 9, .95, 1, .9, -1}, {1, 2, .5, 0, .75, 2}, {1, 1, .5, 0, .75, -1},
	} {
		if got := SmallestSowing(c.need, c.most, c.p, c.rho, c.sure); got != c.want {
			t.Errorf("%+v: %d", c, got)
		}
	}
}

// The chances of all numbers have mean n p and variance n p (1-p)(1 + (n-1) rho); no tail rises with k or falls with n; the
// smallest sowing is just enough.
func TestBetaBinomialLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 150).Draw(t, "n")
		p, rho := rapid.Float64Range(.01, .99).Draw(t, "p"), rapid.Float64Range(0, .5).Draw(t, "rho")
		mean, square, was := 0.0, 0.0, 1.0
		for k := 1; k <= n; k++ {
			tail := BetaBinomialAtLeast(k, n, p, rho)
			if tail > was || tail > BetaBinomialAtLeast(k, n+1, p, rho)+1e-12 {
				t.Fatalf("tail %v at %d of %d", tail, k, n)
			}
			mean, square, was = mean+tail, square+float64(2*k-1)*tail, tail
		}
		size := float64(n)
		if variance := size * p * (1 - p) * (1 + (size-1)*rho); math.Abs(mean-size*p) > 1e-8*size ||
			math.Abs(square-mean*mean-variance) > 1e-8*size*size {
			t.Fatalf("mean %v, variance %v", mean, square-mean*mean)
		}
	})
}

// The smallest sowing does, one cell less does not, nor any number below it.
func TestSmallestSowingIsSmallest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		need := rapid.IntRange(1, 120).Draw(t, "need")
		p, rho := rapid.Float64Range(.3, .99).Draw(t, "p"), rapid.Float64Range(0, .1).Draw(t, "rho")
		sure := rapid.Float64Range(.5, .95).Draw(t, "sure")
		n := SmallestSowing(need, 1000*need, p, rho, sure)
		if n < need || BetaBinomialAtLeast(need, n, p, rho) < sure-2*sureSlack {
			t.Fatalf("%d is not enough", n)
		}
		if n > need && BetaBinomialAtLeast(need, n-1, p, rho) >= sure-sureSlack {
			t.Fatalf("%d is more than enough", n)
		}
	})
}

func BenchmarkSmallestSowing(b *testing.B) {
	for b.Loop() {
		SmallestSowing(1000, 3000, 0.8, 0.03, 0.9)
	}
}
