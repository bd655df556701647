package estimate

import "math"

// sureSlack keeps a probability that equals the one wanted from falling a rounding error short of it.
const sureSlack = 1e-12

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

// SmallestSowing returns the smallest n with P(X >= need) >= sure (less 1e-12), X of n cells as in BetaBinomialAtLeast.
// A need of 0 or less takes none: 0. It is -1 where most cells would not do, and for NaN. Cell by cell
//
//	P(X of n+1 >= need) = P(X of n >= need) + P(cell n+1 is the need-th filled)
//
// begins at n = need, where all must be filled, and grows by terms with the ratio
//
//	n/(n-need+1) ((1-p)(1-rho) + (n-need) rho) / (1-rho + n rho)
//
// so that n is met in one pass of about n logarithms; checked against R's pbinom and scipy's betabinom.
// Source: the beta-binomial as Polya's urn, Eggenberger and Polya (1923), Z. angew. Math. Mech. 3:279-289.
func SmallestSowing(need, most int, p, rho, sure float64) int {
	p, rho = hold(p, 0, 1), hold(rho, 0, 1)
	switch {
	case need <= 0:
		return 0
	case rho == 1: // all alike: more cells help nothing
		return oneOf(p >= sure-sureSlack && need <= most, need)
	}
	good, bad := p*(1-rho), (1-p)*(1-rho)
	logTerm := 0.0
	for i := range need {
		logTerm += math.Log((good + float64(i)*rho) / (1 - rho + float64(i)*rho))
	}
	enough := 0.0
	for n := need; n <= most; n++ {
		enough += math.Exp(logTerm)
		if enough >= sure-sureSlack {
			return n
		}
		over, size := float64(n-need), float64(n)
		logTerm += math.Log(size / (over + 1) * (bad + over*rho) / (1 - rho + size*rho))
	}
	return -1
}

// oneOf is n where a thing is so, else -1: no number would do.
func oneOf(so bool, n int) int {
	if so {
		return n
	}
	return -1
}
