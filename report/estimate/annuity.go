package estimate

import "math"

// Annuity returns the worth today of 1 a season for n seasons at interest i, each season's 1 had at its end: with w = floor(n)
// whole seasons and a last part f = n - w, which brings f at its own end,
//
//	(1 - (1+i)^-w) / i + f (1+i)^-n;  n at i = 0
//
// It is continuous in n. i is not below 0 (less is taken as 0); n of 0 or less gives 0.
// Source: the present value PV of OpenFormula (OASIS, ODF 1.2 part 2) for whole n; the last part is rule "The average tray"'s.
func Annuity(i, n float64) float64 {
	if !(n > 0) {
		return 0
	}
	if i = interest(i); i == 0 {
		return n
	}
	whole := math.Floor(n)
	growth := math.Log1p(i)
	return -math.Expm1(-whole*growth)/i + (n-whole)*math.Exp(-n*growth)
}

// mostSeasons is the longest life worth telling.
const mostSeasons = 1e9

// AnnuityLife returns the life n, in seasons, whose annuity at interest i is a: the inverse of Annuity, which grows with n,
// to 1e-9 of n. ok is false where there is none: a is not above 0, or not below 1/i by more than 1e-9 of it, which no life
// reaches.
// Source: halving the span of n that holds it; for whole n it is the number of payments NPER of OpenFormula (OASIS, ODF 1.2
// part 2).
func AnnuityLife(i, a float64) (n float64, ok bool) {
	if !(a > 0) || a*interest(i) > 1-1e-9 {
		return 0, false
	}
	low, high := 0.0, 1.0
	for Annuity(i, high) < a {
		if low, high = high, 2*high; high > mostSeasons {
			return 0, false
		}
	}
	for high-low > lifeWithin*high {
		middle := low + (high-low)/2
		if Annuity(i, middle) < a {
			low = middle
		} else {
			high = middle
		}
	}
	return high, true
}

// lifeWithin is the part of a life to which it is found, a little more than float64 can tell apart.
const lifeWithin = 1e-14
