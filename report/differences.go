package report

import (
	"cmp"
	"math"
	"slices"

	"traybook/records"
	"traybook/report/estimate"
)

// stratum is where varieties of a crop can be compared like with like (rule 57).
type stratum struct {
	season int
	crop   string
	cells  records.Maybe[int]
	kind   string
	seeds  int
}

// contrast is a variety against the others, of one stratum or added over several:
// the weights, the weighted differences and the squared weights times variance.
type contrast struct {
	batches, others                    int
	weight, weighted, weightedVariance float64
}

func (c *contrast) add(d contrast) {
	c.batches, c.others = c.batches+d.batches, c.others+d.others
	c.weight += d.weight
	c.weighted += d.weighted
	c.weightedVariance += d.weightedVariance
}

// named is a variety of a crop.
type named struct{ crop, variety string }

// differences compares every variety with the other varieties of its crop, with
// each season in turn as the one reviewed: over all seasons up to it.
func (r *Report) differences(counted []*Batch) []Difference {
	bySeason := map[int]map[named]contrast{}
	strata, groups := groupBy(counted, func(b *Batch) stratum {
		return stratum{b.Season, b.Crop, b.TrayCells, b.Kind, b.SeedsPerCell}
	})
	for _, s := range strata {
		if bySeason[s.season] == nil {
			bySeason[s.season] = map[named]contrast{}
		}
		for _, variety := range varieties(groups[s]) {
			c := bySeason[s.season][named{s.crop, variety}]
			c.add(r.contrast(s.crop, groups[s], variety))
			bySeason[s.season][named{s.crop, variety}] = c
		}
	}
	var table []Difference
	upTo := map[named]contrast{}
	for _, season := range r.Seasons {
		for n, c := range bySeason[season] {
			sum := upTo[n]
			sum.add(c)
			upTo[n] = sum
		}
		table = append(table, r.verdicts(season, upTo)...)
	}
	return table
}

func varieties(batches []*Batch) []string {
	names, _ := groupBy(batches, func(b *Batch) string { return b.Variety })
	return names
}

// contrast is a variety against the rest of a stratum; all 0 where it has no rest.
func (r *Report) contrast(crop string, batches []*Batch, variety string) contrast {
	var one, rest []estimate.Count
	for _, b := range batches {
		if b.Variety == variety {
			one = append(one, emergenceCount(b))
		} else {
			rest = append(rest, emergenceCount(b))
		}
	}
	if len(rest) == 0 {
		return contrast{}
	}
	a, z := poolShare(one), poolShare(rest)
	w := a.N * z.N / (a.N + z.N)
	used, _ := r.spreadOf(ofEmergence, crop)
	v := a.variance(one, used.rho) + z.variance(rest, used.rho)
	return contrast{a.Batches, z.Batches, w, w * (a.Share.Value - z.Share.Value), w * w * v}
}

// variance is that of a pooled rate, widened by its batches' scatter (rule 8).
func (s Rate) variance(counts []estimate.Count, rho float64) float64 {
	ns := make([]float64, len(counts))
	for i, c := range counts {
		ns[i] = c.N
	}
	return estimate.PooledVariance(s.X, s.N, estimate.DesignEffect(ns, rho))
}

// verdicts judges the varieties of every crop at one season.
func (r *Report) verdicts(season int, upTo map[named]contrast) []Difference {
	var table []Difference
	judged := map[string]int{}
	for n, c := range upTo {
		if c.weight > 0 {
			table = append(table, Difference{Season: season, Crop: n.crop, Variety: n.variety,
				Batches: c.batches, OtherBatches: c.others, Difference: records.Known(c.weighted / c.weight), Verdict: TooFew})
		}
		if r.judges(n.crop, c) {
			judged[n.crop]++
		}
	}
	slices.SortFunc(table, func(a, b Difference) int {
		return cmp.Or(cmp.Compare(a.Crop, b.Crop), cmp.Compare(a.Variety, b.Variety))
	})
	for i := range table {
		d := &table[i]
		if c := upTo[named{d.Crop, d.Variety}]; r.judges(d.Crop, c) {
			d.judge(c, r.atLevel(d.Crop, judged[d.Crop]))
		}
	}
	return table
}

// judges reports whether there are batches enough for a verdict.
func (r *Report) judges(crop string, c contrast) bool {
	_, ok := r.spreadOf(ofEmergence, crop)
	return ok && c.weight > 0 && c.batches >= FewBatches && c.others >= FewBatches
}

// atLevel is the quantile of a crop at which m comparisons together keep the
// book's confidence.
func (r *Report) atLevel(crop string, m int) float64 {
	used, _ := r.spreadOf(ofEmergence, crop)
	return estimate.T(1-(1-r.Book.Settings.Confidence)/float64(m), used.df)
}

func (d *Difference) judge(c contrast, quantile float64) {
	half := quantile * math.Sqrt(c.weightedVariance) / c.weight
	d.Low, d.High = records.Known(d.Difference.Value-half), records.Known(d.Difference.Value+half)
	d.Verdict = verdictOf(d.Low.Value, d.High.Value)
}

// verdictOf puts an interval of a difference in words.
func verdictOf(low, high float64) Verdict {
	switch {
	case low > 0:
		return ClearlyHigher
	case high < 0:
		return ClearlyLower
	}
	return NoDifference
}
