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
