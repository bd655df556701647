package rate

import (
	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
)

// minDF is the number of degrees of freedom below which scatter says nothing.
const minDF = 3

// Scatter is how much batches of one group differ in one measure, by crop and over
// the whole book, and the level of the intervals that rest on it (rule "Scatter").
type Scatter struct {
	crops map[string]estimate.Scatter
	book  estimate.Scatter
	level float64 // share of 1
}

// Spread is the scatter used for an interval: the correlation of cells within a batch
// and its degrees of freedom.
type Spread struct{ Rho, DF float64 }

// ScatterOf measures the scatter between batches of one key; level is that of the
// intervals, a share of 1.
func ScatterOf[T any, K comparable](list []T, key func(T) K, crop func(K) string, count func(T) estimate.Count, level float64) Scatter {
	keys, groups := batch.GroupBy(list, key)
	all := Scatter{crops: map[string]estimate.Scatter{}, level: level}
	for _, k := range keys {
		s := estimate.ScatterOf([][]estimate.Count{Counts(groups[k], count)})
		all.crops[crop(k)] = all.crops[crop(k)].Add(s)
		all.book = all.book.Add(s)
	}
	return all
}

// Counts says what a measure counts of each of a list.
func Counts[T any](list []T, count func(T) estimate.Count) []estimate.Count {
	counts := make([]estimate.Count, len(list))
	for i, x := range list {
		counts[i] = count(x)
	}
	return counts
}

// Of returns the scatter in a crop, or in the book where the crop has too little or
// is empty; ok is false where the book has too little, too.
func (s Scatter) Of(crop string) (used Spread, ok bool) {
	scatter := s.crops[crop]
	if scatter.DF < minDF {
		scatter = s.book
	}
	if scatter.DF < minDF {
		return Spread{}, false
	}
	return Spread{scatter.Rho(), float64(scatter.DF)}, true
}

// Rate pools batches into a rate with its interval, by the scatter in a crop; an
// empty crop stands for the book (rule "Interval of a share").
func (s Scatter) Rate(crop string, counts []estimate.Count) Rate {
	r := Pool(counts)
	used, ok := s.Of(crop)
	if !ok || !r.Share.Known {
		return r
	}
	_, ci := estimate.ShareInterval(counts, used.Rho, used.DF, s.level)
	r.Low, r.High = records.Known(ci.Low), records.Known(ci.High)
	r.Rho, r.DF = records.Known(used.Rho), records.Known(used.DF)
	return r
}
