package estimate

import "math"

// CapitalRecovery returns the part of a price that each of n seasons must bear, interest i on what is still owed included:
//
//	i (1+i)^n / ((1+i)^n - 1);  1/n at i = 0
//
// It is the payment for a loan of 1 (rule "Tray charge"). n may be a fraction, so that the factor may exceed 1. i is a fraction
// of 1 and not below 0 (less is taken as 0). A life n of 0 or less bears the price once: 1.
// Source: capital recovery as ASABE EP496 charges farm machinery; the formula is that of the payment PMT of OpenFormula (OASIS,
// ODF 1.2 part 2), whose published cases are tested.
func CapitalRecovery(i, n float64) float64 {
	if !(n > 0) {
		return 1
	}
	if i = interest(i); i == 0 {
		return 1 / n
	}
	return i / -math.Expm1(-n*math.Log1p(i))
}

// interest takes what is no interest rate above 0 (negative, NaN) as 0.
func interest(i float64) float64 {
	if !(i > 0) {
		return 0
	}
	return i
}
