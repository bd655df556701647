package estimate

import "math"

// PooledVariance returns the variance of a share x/n whose batches widen it by the design effect d:
//
//	p (1 - p) d / n  with  p = (x + 0.5)/(n + 1)
//
// The half keeps a share of 0 or 1 from looking exact (rule "Variance of a rate"). Where n is not above 0 nothing is
// known: +Inf.
// Source: the binomial variance; p is the mean of Jeffreys' posterior Beta(x + 1/2, n - x + 1/2), as in Brown, Cai and DasGupta
// (2001), Stat. Sci. 16:101-133, whose intervals from the same distribution are tested.
func PooledVariance(x, n, d float64) float64 {
	if !(n > 0) {
		return math.Inf(1)
	}
	p := hold((x+0.5)/(n+1), 0, 1)
	return p * (1 - p) * d / n
}
