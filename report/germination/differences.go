package germination

import (
	"cmp"
	"math"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
	"traybook/report/rate"
)

// stratum is where varieties of a crop can be compared like with like (rule
// "Varieties").
type stratum struct {
	season int
	crop   string
	cells  records.Maybe[int]
	kind   string
	seeds  int
}

func stratumOf(c *Counted) stratum {
	return stratum{c.Season, c.Crop, c.TrayCells, c.Kind, c.SeedsPerCell}
}

// contrast is a variety against the others, of one stratum or added over several:
// the weights, the weighted differences and the squared weights times variance.
type contrast struct {
	batches, others                    int
	weight, weighted, weightedVariance float64
}

func (c contrast) plus(d contrast) contrast {
	return contrast{c.batches + d.batches, c.others + d.others,
		c.weight + d.weight, c.weighted + d.weighted, c.weightedVariance + d.weightedVariance}
}

// named is a variety of a crop.
type named struct{ crop, variety string }

// court is what verdicts rest on: scatter between batches, and how sure all those of
// a crop together must be, a share of 1.
type court struct {
	scatter    rate.Scatter
	confidence float64
}

// differences compares every variety with the other varieties of its crop, with
// each season in turn as the one reviewed: over all seasons up to it.
func differences(in []*Counted, seasons []int, on court) []Difference {
	bySeason := on.contrasts(in)
	var table []Difference
	upTo := map[named]contrast{}
	for _, season := range seasons {
		for n, c := range bySeason[season] {
			upTo[n] = upTo[n].plus(c)
		}
		table = append(table, on.verdicts(season, upTo)...)
	}
	return table
}

// contrasts adds up the strata of each season.
func (on court) contrasts(in []*Counted) map[int]map[named]contrast {
	bySeason := map[int]map[named]contrast{}
	strata, groups := batch.GroupBy(in, stratumOf)
	for _, s := range strata {
		of := bySeason[s.season]
		if of == nil {
			of = map[named]contrast{}
			bySeason[s.season] = of
		}
		varieties, _ := batch.GroupBy(groups[s], varietyOf)
		for _, v := range varieties {
			n := named{s.crop, v}
			of[n] = of[n].plus(on.contrast(n, groups[s]))
		}
	}
	return bySeason
}

// contrast is a variety against the rest of a stratum; all 0 where it has no rest.
func (on court) contrast(n named, batches []*Counted) contrast {
	one := rate.Counts(batch.Filter(batches, func(c *Counted) bool { return c.Variety == n.variety }), emergenceCount)
	rest := rate.Counts(batch.Filter(batches, func(c *Counted) bool { return c.Variety != n.variety }), emergenceCount)
	if len(rest) == 0 {
		return contrast{}
	}
	a, z := rate.Pool(one), rate.Pool(rest)
	w := a.N * z.N / (a.N + z.N)
	used, _ := on.scatter.Of(n.crop)
	v := a.Variance(one, used.Rho) + z.Variance(rest, used.Rho)
	return contrast{a.Batches, z.Batches, w, w * (a.Share.Value - z.Share.Value), w * w * v}
}

// verdicts judges the varieties of every crop at one season. More comparisons in a
// crop make each stricter, so that together they keep the book's confidence.
func (on court) verdicts(season int, upTo map[named]contrast) []Difference {
	var table []Difference
	judged := map[string]int{}
	for n, c := range upTo {
		if c.weight > 0 {
			table = append(table, Difference{Season: season, Crop: n.crop, Variety: n.variety,
				Batches: c.batches, OtherBatches: c.others, Difference: records.Known(c.weighted / c.weight), Verdict: rate.TooFew})
		}
		if on.judges(n.crop, c) {
			judged[n.crop]++
		}
	}
	slices.SortFunc(table, func(a, b Difference) int {
		return cmp.Or(cmp.Compare(a.Crop, b.Crop), cmp.Compare(a.Variety, b.Variety))
	})
	for i := range table {
		d := &table[i]
		if c := upTo[named{d.Crop, d.Variety}]; on.judges(d.Crop, c) {
			d.judge(c, on.quantile(d.Crop, judged[d.Crop]))
		}
	}
	return table
}

// judges reports whether there are batches enough for a verdict: on both sides, and
// for the scatter between them.
func (on court) judges(crop string, c contrast) bool {
	_, ok := on.scatter.Of(crop)
	return ok && c.batches >= rate.FewBatches && c.others >= rate.FewBatches
}

// quantile is Student's t of a crop at the level 1 - (1 - confidence)/m: at it m
// comparisons together keep the book's confidence (Bonferroni's inequality).
func (on court) quantile(crop string, m int) float64 {
	used, _ := on.scatter.Of(crop)
	return estimate.T(1-(1-on.confidence)/float64(m), used.DF)
}

func (d *Difference) judge(c contrast, quantile float64) {
	half := quantile * math.Sqrt(c.weightedVariance) / c.weight
	d.Low, d.High = records.Known(d.Difference.Value-half), records.Known(d.Difference.Value+half)
	d.Verdict = rate.VerdictOf(d.Low.Value, d.High.Value)
}
