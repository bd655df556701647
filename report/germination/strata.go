package germination

import (
	"maps"
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

// sums is batches added up: as much of them as a pooled rate and its design effect need.
// All are whole numbers, so that their order moves no digit.
type sums struct {
	batches       int
	x, n, squares float64 // emerged, cells looked at, their squares batch by batch
}

func sumsOf(batches []*Counted) sums {
	var s sums
	for _, c := range batches {
		x, n := c.Emerged.Value, c.Looked.Value
		s = s.plus(sums{1, x, n, n * n})
	}
	return s
}

func (s sums) plus(o sums) sums {
	return sums{s.batches + o.batches, s.x + o.x, s.n + o.n, s.squares + o.squares}
}

func (s sums) less(o sums) sums {
	return sums{s.batches - o.batches, s.x - o.x, s.n - o.n, s.squares - o.squares}
}

func (s sums) pooled(rho float64) estimate.Pooled {
	return estimate.Pooled{X: s.x, N: s.n, D: estimate.DesignEffectOf(s.n, s.squares, rho)}
}

// layer is the varieties of a crop in one stratum: all of each, and lot by lot.
type layer struct {
	season int
	all    map[string]sums
	lots   map[string]map[string]sums
}

// layersOf splits the batches of a crop, in their order, into its strata.
func layersOf(batches []*Counted) []layer {
	strata, groups := batch.GroupBy(batches, stratumOf)
	layers := make([]layer, len(strata))
	for i, s := range strata {
		l := layer{s.season, map[string]sums{}, map[string]map[string]sums{}}
		varieties, of := batch.GroupBy(groups[s], varietyOf)
		for _, v := range varieties {
			l.all[v], l.lots[v] = sumsOf(of[v]), map[string]sums{}
			lots, of := batch.GroupBy(of[v], lotOf)
			for _, lot := range lots {
				l.lots[v][lot] = sumsOf(of[lot])
			}
		}
		layers[i] = l
	}
	return layers
}

// contrast is a variety against others, added up over strata: the batches of those with
// both, the weights, the weighted differences and the squared weights times variance.
type contrast struct {
	batches, others                    int
	weight, weighted, weightedVariance float64
}

// enough reports whether there are batches enough on both sides for a verdict.
func (c contrast) enough() bool { return c.batches >= rate.FewBatches && c.others >= rate.FewBatches }

// difference is that of the rates; 0 where there is no stratum with both.
func (c contrast) difference() float64 {
	if c.weight == 0 {
		return 0
	}
	return c.weighted / c.weight
}

// add adds a stratum; it says nothing where a side is empty.
func (c *contrast) add(one, rest sums, rho float64) {
	if one.n == 0 || rest.n == 0 {
		return
	}
	w := one.n * rest.n / (one.n + rest.n)
	c.batches, c.others = c.batches+one.batches, c.others+rest.batches
	c.weight += w
	c.weighted += w * (one.x/one.n - rest.x/rest.n)
	c.weightedVariance += w * w * estimate.DifferenceVariance(one.pooled(rho), rest.pooled(rho))
}

// contrastOf sets a variety against the others that are left, of which, and of itself,
// totals are the sums of each layer; of its own lots all but the one left out count, where
// one is.
func contrastOf(layers []layer, variety string, totals []sums, rho float64, leftOut records.Maybe[string]) contrast {
	var c contrast
	for i, l := range layers {
		all := l.all[variety]
		one := all
		if leftOut.Known {
			one = one.less(l.lots[variety][leftOut.Value])
		}
		c.add(one, totals[i].less(all), rho)
	}
	return c
}

// totalsOf adds up, layer by layer, the varieties that are left.
func totalsOf(layers []layer, left []string) []sums {
	totals := make([]sums, len(layers))
	for i, l := range layers {
		for _, v := range left {
			totals[i] = totals[i].plus(l.all[v])
		}
	}
	return totals
}

// lotsOf lists the lots of a variety's batches, sorted; the empty one stands for batches
// without a lot.
func lotsOf(layers []layer, variety string) []string {
	found := map[string]bool{}
	for _, l := range layers {
		for lot := range l.lots[variety] {
			found[lot] = true
		}
	}
	return slices.Sorted(maps.Keys(found))
}
