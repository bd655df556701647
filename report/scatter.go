package report

import (
	"traybook/records"
	"traybook/report/estimate"
)

// measure is what batches scatter in (rule 43).
type measure int

const (
	ofEmergence measure = iota // cells looked at
	ofUsable                   // cells sown
	ofQuality                  // plants looked at
)

// minDF is the number of degrees of freedom below which scatter says nothing
// (rule 6).
const minDF = 3

// scatterBook is how much batches of one group differ, by crop and over the whole
// book.
type scatterBook struct {
	crops map[string]estimate.Scatter
	book  estimate.Scatter
}

// spread is the scatter used for an interval.
type spread struct{ rho, df float64 }

// spreadOf returns the scatter of a measure in a crop, or in the book where the
// crop has too little or is empty; ok is false where the book has too little, too
// (rule 6).
func (r *Report) spreadOf(m measure, crop string) (s spread, ok bool) {
	scatter := r.scatters[m].crops[crop]
	if scatter.DF < minDF {
		scatter = r.scatters[m].book
	}
	if scatter.DF < minDF {
		return spread{}, false
	}
	return spread{scatter.Rho(), float64(scatter.DF)}, true
}

// scatterOf measures the scatter between batches of one key.
func scatterOf[K comparable](batches []*Batch, key func(*Batch) K, crop func(K) string, count func(*Batch) estimate.Count) scatterBook {
	keys, groups := groupBy(batches, key)
	book := scatterBook{crops: map[string]estimate.Scatter{}}
	for _, k := range keys {
		s := estimate.ScatterOf([][]estimate.Count{countsOf(groups[k], count)})
		book.crops[crop(k)] = book.crops[crop(k)].Add(s)
		book.book = book.book.Add(s)
	}
	return book
}

func countsOf(batches []*Batch, count func(*Batch) estimate.Count) []estimate.Count {
	counts := make([]estimate.Count, len(batches))
	for i, b := range batches {
		counts[i] = count(b)
	}
	return counts
}

// What each measure counts of a batch.
func emergenceCount(b *Batch) estimate.Count {
	return estimate.Count{X: b.Emerged.Value, N: b.Looked.Value}
}
func everUpCount(b *Batch) estimate.Count {
	return estimate.Count{X: b.EverUp.Value, N: b.Looked.Value}
}
func usableCount(b *Batch) estimate.Count {
	return estimate.Count{X: b.Usable.Value, N: float64(b.CellsSown.Value)}
}
func qualityCount(b *Batch) estimate.Count {
	return estimate.Count{X: b.QualityGood.Value, N: b.QualityOf.Value}
}

// seedGroup is a group with one number of seeds a cell: emergence is compared
// only within it (rule 43).
type seedGroup struct {
	Group
	seeds int
}

func seedGroupOf(b *Batch) seedGroup { return seedGroup{b.Group(), b.SeedsPerCell} }

// bookUsable is the book's usable rate and its scatter between batches (rule 70).
func (r *Report) bookUsable() (rate, rho Num) {
	var x, n float64
	for _, b := range filter(r.Batches, (*Batch).entersUsable) {
		c := usableCount(b)
		x, n = x+c.X, n+c.N
	}
	if s, ok := r.spreadOf(ofUsable, ""); ok {
		rho = records.Known(s.rho)
	}
	return ratio(records.Known(x), records.Known(n)), rho
}
