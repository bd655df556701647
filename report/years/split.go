package years

import (
	"cmp"
	"math"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
)

// like is what sowings of one crop have in common that are alike; season tells those of
// one season apart from another's, 0 where they are set side by side.
type like struct {
	season        int
	crop, variety string
	cells         records.Maybe[int]
	kind          string
	seeds         int
}

func likeOf(e entry) like {
	return like{e.Season, e.Crop, e.Variety, e.TrayCells, e.Kind, e.SeedsPerCell}
}

// acrossSeasons is the like of a batch whatever its season.
func acrossSeasons(e entry) like {
	l := likeOf(e)
	l.season = 0
	return l
}

func (l like) compare(o like) int {
	return cmp.Or(cmp.Compare(l.crop, o.crop), cmp.Compare(l.variety, o.variety), cmp.Compare(l.cells.Or(-1), o.cells.Or(-1)),
		cmp.Compare(l.kind, o.kind), cmp.Compare(l.seeds, o.seeds))
}

// paired is the batches of one key in two seasons, and their weights: what they rest on
// as a share of all.
type paired[K comparable] struct {
	key           K
	before, after []entry
	wasOf, isOf   float64
}

// pairUp sets two seasons side by side, in the order of the keys; n is what each season
// rests on, above 0.
func pairUp[K comparable](before, after []entry, key func(entry) K, order func(a, b K) int) []paired[K] {
	keys, _ := batch.GroupBy(slices.Concat(before, after), key)
	_, was := batch.GroupBy(before, key)
	_, is := batch.GroupBy(after, key)
	slices.SortFunc(keys, order)
	n, m := sumOf(before).N, sumOf(after).N
	pairs := make([]paired[K], len(keys))
	for i, k := range keys {
		pairs[i] = paired[K]{k, was[k], is[k], sumOf(was[k]).N / n, sumOf(is[k]).N / m}
	}
	return pairs
}

// inBoth reports whether both seasons have the key.
func (p paired[K]) inBoth() bool { return len(p.before) > 0 && len(p.after) > 0 }

// weight is the mean of the weights of both seasons.
func (p paired[K]) weight() float64 { return (p.wasOf + p.isOf) / 2 }

// rates are what it did in either season; what one season lacks keeps the other's rate.
func (p paired[K]) rates() (was, is float64) {
	was, is = ratio(p.before), ratio(p.after)
	switch {
	case len(p.before) == 0:
		was = is
	case len(p.after) == 0:
		is = was
	}
	return was, is
}

// mix is what came of the weight that the key gained or lost: by its rate beside that of
// all, so that over all keys it adds up to Kitagawa's second part.
func (p paired[K]) mix(all float64) float64 {
	was, is := p.rates()
	return ((was+is)/2 - all) * (p.isOf - p.wasOf)
}

func (p paired[K]) part(crop string) Part {
	before, after := sideOf(p.before), sideOf(p.after)
	before.Weight, after.Weight = p.wasOf, p.isOf
	return Part{Crop: crop, Before: before, After: after}
}

// ratio is the pooled figure of batches that rest on something.
func ratio(entries []entry) float64 {
	sum := sumOf(entries)
	return sum.X / sum.N
}

// split is a change in parts (rule "Year over year"), and the variance of same.
type split struct {
	same, kinds, crops float64
	share, variance    float64
	parts              []Part
}

// splitCrop splits the change of one crop by groups of like sowings. rho is the crop's.
func splitCrop(before, after []entry, rho float64) split {
	pairs := pairUp(before, after, acrossSeasons, like.compare)
	middle := (ratio(before) + ratio(after)) / 2
	var s split
	for _, p := range pairs {
		part := p.part(p.key.crop)
		part.Variety, part.Cells, part.Kind, part.SeedsPerCell = p.key.variety, p.key.cells, p.key.kind, p.key.seeds
		part.OtherKinds = p.mix(middle)
		if w := p.weight(); p.inBoth() {
			was, is := p.rates()
			part.Same = w * (is - was)
			s.share += w
			s.variance += w * w * (varianceOf(p.before, rho) + varianceOf(p.after, rho))
		}
		s.parts = append(s.parts, part)
	}
	s.same, s.kinds = estimate.Kitagawa(weighted(pairs, true), weighted(pairs, false))
	return s.tidied()
}

// splitFarm splits the change of the farm by crops, each of them split in turn. rho is by
// crop.
func splitFarm(before, after []entry, rho func(crop string) float64) split {
	pairs := pairUp(before, after, cropOf, cmp.Compare[string])
	middle := (ratio(before) + ratio(after)) / 2
	var s split
	for _, p := range pairs {
		part := p.part(p.key)
		part.OtherCrops = p.mix(middle)
		if w := p.weight(); p.inBoth() {
			crop := splitCrop(p.before, p.after, rho(p.key))
			part.Same, part.OtherKinds = w*crop.same, w*crop.kinds
			s.share += w * crop.share
			s.variance += w * w * crop.variance
		}
		s.same, s.kinds = s.same+part.Same, s.kinds+part.OtherKinds
		s.parts = append(s.parts, part)
	}
	_, s.crops = estimate.Kitagawa(weighted(pairs, true), weighted(pairs, false))
	return s.tidied()
}

// weighted is one season of the pairs.
func weighted[K comparable](pairs []paired[K], before bool) []estimate.Weighted {
	list := make([]estimate.Weighted, len(pairs))
	for i, p := range pairs {
		was, is := p.rates()
		list[i] = estimate.Weighted{Weight: p.isOf, Rate: is}
		if before {
			list[i] = estimate.Weighted{Weight: p.wasOf, Rate: was}
		}
	}
	return list
}

// tidied turns sums that are 0 but for rounding into 0 (rule "Missing").
func (s split) tidied() split {
	var same, kinds, crops float64 // the largest terms
	for _, p := range s.parts {
		same, kinds, crops = max(same, math.Abs(p.Same)), max(kinds, math.Abs(p.OtherKinds)), max(crops, math.Abs(p.OtherCrops))
	}
	s.same, s.kinds, s.crops = tidy(s.same, same), tidy(s.kinds, kinds), tidy(s.crops, crops)
	return s
}

// noise is the share of its largest term below which a sum is 0.
const noise = 1e-9

func tidy(sum, largest float64) float64 {
	if math.Abs(sum) <= noise*largest {
		return 0
	}
	return sum
}
