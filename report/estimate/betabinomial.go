package estimate

import (
	"math"
	"sort"
)

// sureSlack keeps a probability that equals the one wanted from falling a rounding error short of it (rule 39).
const sureSlack = 1e-12

// sowingLimit is how many times the need a sowing may be before the search is given up.
const sowingLimit = 1000

// BetaBinomialAtLeast returns P(X >= k) for X of n cells, each filled with chance p and alike with correlation rho: beta-
// binomial with mean p and alpha = p (1-rho)/rho, binomial at rho = 0. p and rho are held within [0, 1]; k at or below 0
// gives 1, k above n gives 0, as does NaN. The lower tail is summed from x = 0 by the ratio of neighbouring terms,
//
//	P(x+1)/P(x) = (n-x)/(x+1) (p(1-rho) + x rho) / ((1-p)(1-rho) + (n-x-1) rho)
//
// which needs no gamma function and holds at rho = 0 too. It takes about n + k logarithms.
// Source: Skellam (1948), J. R. Stat. Soc. B 10:257-261.
func BetaBinomialAtLeast(k, n int, p, rho float64) float64 {
	p, rho = hold(p, 0, 1), hold(rho, 0, 1)
	switch {
	case k <= 0:
		return 1
	case k > n, !(p > 0), rho != rho:
		return 0
	case p == 1:
		return 1
	case rho == 1: // all alike: all or none
		return p
	}
	good, bad := p*(1-rho), (1-p)*(1-rho)
	logTerm := 0.0
	for i := range n {
		logTerm += math.Log((bad + float64(i)*rho) / (1 - rho + float64(i)*rho))
	}
	below := 0.0
	for x := range k {
		below += math.Exp(logTerm)
		left := float64(n - x)
		logTerm += math.Log(left / float64(x+1) * (good + float64(x)*rho) / (bad + (left-1)*rho))
	}
	return hold(1-below, 0, 1)
}

// SmallestSowing returns the smallest n with P(X >= need) >= sure (less 1e-12), X of n cells as in BetaBinomialAtLeast (rule
// 39). A need of 0 or less takes none: 0. It is -1 where not even a thousand times the need would do.
// Source: rule 39; the tail rises with n, so that n can be searched by halves.
func SmallestSowing(need int, p, rho, sure float64) int {
	if need <= 0 {
		return 0
	}
	enough := func(n int) bool { return BetaBinomialAtLeast(need, n, p, rho) >= sure-sureSlack }
	high := need
	for !enough(high) {
		if high *= 2; high > sowingLimit*need {
			return -1
		}
	}
	return sort.Search(high, enough)
}
