package rate

import (
	"iter"

	"traybook/records"
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
// and its degrees of freedom, those lent by the book among them.
type Spread struct{ Rho, DF float64 }

// ScatterOf measures the scatter between the batches of each group, none of which is empty;
// level is that of the intervals, a share of 1.
func ScatterOf[T any](groups iter.Seq[[]T], crop func(T) string, count func(T) estimate.Count, level float64) Scatter {
	all, counts := Scatter{crops: map[string]estimate.Scatter{}, level: level}, []estimate.Count(nil)
	for group := range groups {
		counts = AppendCounts(counts[:0], group, count)
		all.add(crop(group[0]), counts)
	}
	return all
}

// add adds a group of a crop.
func (s *Scatter) add(crop string, group []estimate.Count) {
	of := estimate.ScatterOf([][]estimate.Count{group})
	s.crops[crop] = s.crops[crop].Add(of)
	s.book = s.book.Add(of)
}

// Counts says what a measure counts of each of a list.
func Counts[T any](list []T, count func(T) estimate.Count) []estimate.Count {
	return AppendCounts(make([]estimate.Count, 0, len(list)), list, count)
}

// AppendCounts is Counts behind others: for one list after another in the place of the last.
func AppendCounts[T any](counts []estimate.Count, list []T, count func(T) estimate.Count) []estimate.Count {
	for _, x := range list {
		counts = append(counts, count(x))
	}
	return counts
}

// Of returns the scatter of a crop, leaning on the book's, or for the empty crop the
// book's own; ok is false where the book has too little to tell (rule "Scatter").
func (s Scatter) Of(crop string) (used Spread, ok bool) {
	if s.book.DF < minDF {
		return Spread{}, false
	}
	if crop == "" {
		return Spread{s.book.Rho(), float64(s.book.DF)}, true
	}
	rho, df := s.crops[crop].Leaning(s.book)
	return Spread{rho, df}, true
}

// Level is that of the intervals, a share of 1: the setting confidence.
func (s Scatter) Level() float64 { return s.level }

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
