package estimate

import (
	"math"
	"slices"
)

// T50 returns the day at which half of what ever came up stood, for one batch (rule "Timing"). days are the days of its
// counts in ascending order, everUp what had ever come up by each: the cumulative count, of which a smaller figure after a
// larger is read as the larger. N is the last of them. The target (N + 1)/2 is met by straight line between two counts, from
// 0 on day 0 before the first.
//
// Where more than half of N stood at the first count there is no figure, only "before day days[0]": before is true and ok
// false. Nothing come up, no counts, days out of order or lists of unequal length: ok false, before false.
// Source: Coolbear, Francis and Grierson (1984), J. Exp. Bot. 35:1609-1617, with (N + 1)/2.
func T50(days, everUp []float64) (t50 float64, before bool, ok bool) {
	up, ok := risingCounts(days, everUp)
	if !ok {
		return 0, false, false
	}
	n := up[len(up)-1]
	if up[0] > n/2 {
		return 0, true, false
	}
	target := (n + 1) / 2
	day, stood := 0.0, 0.0
	for i, now := range up {
		if now >= target {
			return day + (target-stood)*(days[i]-day)/(now-stood), false, true
		}
		day, stood = days[i], now
	}
	return 0, false, false // N below 1: a part of a plant
}

// MeanGerminationTime returns the mean day on which what ever came up did so, each plant on the day it was first counted:
// sum new_i day_i / N (rule "Timing"). days and everUp are those of T50; ok is false under the same conditions, except that the
// first count may hold any number.
// Source: Labouriau (1983), as set out in Ranal and Santana (2006), Rev. Bras. Bot. 29:1-11.
func MeanGerminationTime(days, everUp []float64) (mean float64, ok bool) {
	up, ok := risingCounts(days, everUp)
	if !ok {
		return 0, false
	}
	sum, stood := 0.0, 0.0
	for i, now := range up {
		sum += (now - stood) * days[i]
		stood = now
	}
	return sum / stood, true
}

// risingCounts returns everUp made never to fall; ok is false where the lists cannot give a time.
func risingCounts(days, everUp []float64) (up []float64, ok bool) {
	if len(days) == 0 || len(days) != len(everUp) || !slices.IsSorted(days) || math.IsNaN(days[0]) {
		return nil, false
	}
	up = make([]float64, len(everUp))
	most := 0.0
	for i, n := range everUp {
		if n > most {
			most = n
		}
		up[i] = most
	}
	return up, most > 0
}
