package estimate

import "math"

// PerSeed returns the share of seeds that come up where k seeds were sown to a cell and rate is the share of cells with at
// least one plant: 1 - (1 - rate)^(1/k), seeds taken as independent (rule "Per seed"). rate is held within [0, 1]; k below 2
// gives rate. It rises with rate, so that the ends of an interval may be turned likewise.
// Source: the group-testing estimate of Thompson (1962), Biometrics 18:568-578; checked against the estimate of the R package
// binGroup (bgtCI), which turns the ends of Wilson's interval in the same way.
func PerSeed(rate float64, k int) float64 {
	rate = hold(rate, 0, 1)
	if k < 2 {
		return rate
	}
	return 1 - math.Pow(1-rate, 1/float64(k))
}
