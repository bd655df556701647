package estimate

import "math"

// Interval is a range from Low to High, both included, in the unit of the figure it belongs to.
type Interval struct{ Low, High float64 }

// Wilson returns the score interval, as shares in [0, 1], of a share p seen in n trials:
//
//	(p + q^2/2n +- q sqrt(p(1-p)/n + q^2/4n^2)) / (1 + q^2/n)
//
// p is held within [0, 1]; n may be fractional, an effective count; quantile q is Z or T of the confidence. Low is exactly 0
// where p is 0, high exactly 1 where p is 1, and p never lies outside. Where nothing is known (n at or below 0, an
// infinite quantile, NaN anywhere) it is [0, 1].
// Source: Wilson (1927), J. Am. Stat. Assoc. 22:209-212.
func Wilson(p, n, quantile float64) Interval {
	p, q2 := hold(p, 0, 1), quantile*quantile
	if !(p >= 0) || !(n > 0) || !(quantile >= 0) || math.IsInf(q2, 0) {
		return Interval{0, 1}
	}
	if math.IsInf(n, 1) {
		return Interval{p, p}
	}
	middle := n*p + q2/2
	half := quantile * math.Sqrt(n*p*(1-p)+q2/4)
	return Interval{Low: hold((middle-half)/(n+q2), 0, p), High: hold((middle+half)/(n+q2), p, 1)}
}

// WilsonCorrected is Wilson with a continuity correction: the lower end is Wilson's at p - 1/2n, the upper at p + 1/2n, each
// first held within [0, 1]. Counts are whole, and where nearly all or nearly none come up the plain interval is too narrow.
// Low is exactly 0 where p is 0, high exactly 1 where p is 1; low may be 0 above, where p lies less than 1/2n from it.
// Source: Newcombe (1998), Stat. Med. 17:857-872, method 4, the same in another form; R's prop.test.
func WilsonCorrected(p, n, quantile float64) Interval {
	half := 1 / (2 * n)
	return Interval{Wilson(p-half, n, quantile).Low, Wilson(p+half, n, quantile).High}
}

// hold returns x held within low..high; NaN stays NaN, for the caller to refuse.
func hold(x, low, high float64) float64 { return math.Min(math.Max(x, low), high) }
