package estimate

import "math"

// The trial is to tell a difference at 95 % confidence, two-sided, in 80 of 100 trials: z_.975 and z_.8.
var (
	zConfidence = Z(0.95)
	zPower      = Z(0.60)
)

// mostDates is the longest trial worth telling; a farm sows no billion times.
const mostDates = 1e9

// SideBySide returns the number of sowing dates, with one of each kind on each, that a trial needs to tell a mean difference d
// where the differences scatter with standard deviation s (rule "Trial"), rounded up:
//
//	(z_.975 + z_.8)^2 s^2 / d^2 + z_.975^2 / 2
//
// 0 means that no number can be told: d is not above 0, s is negative, either is no finite number, or the trial
// would take more than a billion dates. s = 0 gives 2, the fewest with which anything scatters.
// Source: Guenther (1981), Am. Stat. 35:243-244.
func SideBySide(s, d float64) int {
	if !(d > 0) || !(s >= 0) || math.IsInf(d, 0) {
		return 0
	}
	ratio := (zConfidence + zPower) * s / d
	dates := math.Ceil(ratio*ratio + zConfidence*zConfidence/2)
	if dates > mostDates {
		return 0
	}
	return int(dates)
}

// TrialSD returns the standard deviation of the difference of two shares on one date, each of so many cells about the rate
// p: sqrt(2 p (1 - p)/cells + beyond), beyond being the variance of the difference that is not the chance of the cells (rule
// "Trial"). p is held within [0, 1], beyond at 0 or above. Without cells (0 or less, or NaN) nothing is known: +Inf, for
// which SideBySide tells no number.
// Source: the binomial variance, doubled for a difference; the components of variance add.
func TrialSD(p, cells, beyond float64) float64 {
	p = hold(p, 0, 1)
	v := 2*p*(1-p)/cells + math.Max(beyond, 0)
	if !(cells > 0) || math.IsNaN(v) {
		return math.Inf(1)
	}
	return math.Sqrt(v)
}
