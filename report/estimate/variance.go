package estimate

import "math"

// PooledVariance returns the variance of a share x/n whose batches widen it by the design effect d:
//
//	p (1 - p) d / n  with  p = (x + 0.5)/(n + 1)
//
// The half keeps a share of 0 or 1 from looking exact. Where n is not above 0 nothing is known: +Inf.
// Source: rule 8; the half is that of Anscombe (1956), Biometrika 43:461-464, from memory.
func PooledVariance(x, n, d float64) float64 {
	if !(n > 0) {
		return math.Inf(1)
	}
	p := hold((x+0.5)/(n+1), 0, 1)
	return p * (1 - p) * d / n
}
