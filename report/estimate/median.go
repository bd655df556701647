package estimate

import "slices"

// Median returns the middle value of xs, or the mean of the two middle ones (rule "Medians"). xs is not changed. NaN values
// are left out; without any value it is 0: the caller must look at the number of values first.
func Median(xs []float64) float64 {
	sorted := make([]float64, 0, len(xs))
	for _, x := range xs {
		if x == x {
			sorted = append(sorted, x)
		}
	}
	if len(sorted) == 0 {
		return 0
	}
	slices.Sort(sorted)
	upper := len(sorted) / 2
	if len(sorted)%2 == 1 || sorted[upper-1] == sorted[upper] {
		return sorted[upper]
	}
	return sorted[upper-1]/2 + sorted[upper]/2
}
