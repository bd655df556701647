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

// Pooled is X of N over batches whose design effect is D.
type Pooled struct{ X, N, D float64 }

// DifferenceVariance returns the variance of the difference of two shares: the larger of the sum of their own (PooledVariance)
// and of that which they have if both come up alike, with p = (Xa + Xb + 0.5)/(Na + Nb + 1) for both:
//
//	p (1 - p) (Da/Na + Db/Nb)
//
// Its own rate makes a side near 0 or 1 look surer than it is; the common one does not (rule "Varieties"). Where nothing is
// known of a side it is +Inf. The order of the sides changes nothing.
func DifferenceVariance(a, b Pooled) float64 {
	apart := PooledVariance(a.X, a.N, a.D) + PooledVariance(b.X, b.N, b.D)
	if math.IsInf(apart, 1) {
		return apart
	}
	p := hold((a.X+b.X+0.5)/(a.N+b.N+1), 0, 1)
	return math.Max(apart, p*(1-p)*(a.D/a.N+b.D/b.N))
}
