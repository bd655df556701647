package sowing

import (
	"slices"

	"traybook/report/batch"
	"traybook/report/plants"
)

// writtenStays are the days that batches of a crop stood, ascending: those with a
// written end that are not known to have given nothing (rule "End of a batch").
func writtenStays(of []*plants.Plants) []int {
	var days []int
	for _, p := range of {
		nothing := p.Measured() && p.Usable.Value == 0
		if p.EndHow == batch.Written && !nothing {
			days = append(days, int(max(p.End-p.Sown, 0)))
		}
	}
	slices.Sort(days)
	return days
}

// likelyStay is the smallest stay that four in five of them do not exceed, which of fewer
// than 5 is the longest; of none the usual one.
func likelyStay(ascending []int, usual batch.Stay) int {
	n := len(ascending)
	if n == 0 {
		return usual.Median
	}
	return ascending[(4*n+4)/5-1] // four fifths of n, rounded up, counted from 1
}
