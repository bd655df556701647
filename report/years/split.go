package years

import (
	"math"
	"slices"

	"traybook/report/estimate"
)

// paired is one part of two seasons, and its weights: what it rests on as a share of all.
type paired struct {
	before, after *pool
	wasOf, isOf   float64
}

// nothing stands for what a season lacks.
var nothing = &pool{}

// pairUp sets the parts of two seasons side by side, in their order; n and m are what each
// season rests on, above 0.
func pairUp(before, after []*pool, n, m float64) []paired {
	pairs := make([]paired, 0, max(len(before), len(after)))
	for len(before)+len(after) > 0 {
		p := paired{before: nothing, after: nothing}
		order := firstOf(before, after)
		if order <= 0 {
			p.before, before = before[0], before[1:]
		}
		if order >= 0 {
			p.after, after = after[0], after[1:]
		}
		p.wasOf, p.isOf = p.before.sum.N/n, p.after.sum.N/m
		pairs = append(pairs, p)
	}
	return pairs
}

// firstOf tells which list has the next part: below 0 the one before, above 0 the one
// after, 0 both.
func firstOf(before, after []*pool) int {
	switch {
	case len(after) == 0:
		return -1
	case len(before) == 0:
		return 1
	}
	return before[0].compare(after[0].like)
}

// inBoth reports whether both seasons have the part.
func (p paired) inBoth() bool { return p.before != nothing && p.after != nothing }

// like is what its batches have in common, in either season.
func (p paired) like() like {
	if p.before == nothing {
		return p.after.like
	}
	return p.before.like
}

// weight is the mean of the weights of both seasons.
func (p paired) weight() float64 { return (p.wasOf + p.isOf) / 2 }

// rates are what it did in either season; what one season lacks keeps the other's rate.
func (p paired) rates() (was, is float64) {
	was, is = p.before.ratio(), p.after.ratio()
	switch {
	case p.before == nothing:
		was = is
	case p.after == nothing:
		is = was
	}
	return was, is
}

// mix is what came of the weight that the part gained or lost: by its rate beside that of
// all, so that over all parts it adds up to Kitagawa's second part.
func (p paired) mix(all float64) float64 {
	was, is := p.rates()
	return ((was+is)/2 - all) * (p.isOf - p.wasOf)
}

func (p paired) part() Part {
	of, before, after := p.like(), p.before.pooled(), p.after.pooled()
	before.Weight, after.Weight = p.wasOf, p.isOf
	return Part{Crop: of.crop, Variety: of.variety, Cells: of.cells, Kind: of.kind, SeedsPerCell: of.seeds, Before: before, After: after}
}

// split is a change in parts (rule "Year over year"), and the variance of same.
type split struct {
	same, kinds, crops float64
	share, variance    float64
	parts              []Part
}

// splitCrop splits the change of one crop by groups of like sowings. rho is the crop's; the
// parts are put behind some others.
func splitCrop(before, after *pool, rho float64, parts []Part) split {
	pairs := pairUp(before.kinds(), after.kinds(), before.sum.N, after.sum.N)
	middle := (before.ratio() + after.ratio()) / 2
	s := split{parts: slices.Grow(parts, len(pairs))}
	for _, p := range pairs {
		part := p.part()
		part.OtherKinds = p.mix(middle)
		if w := p.weight(); p.inBoth() {
			was, is := p.rates()
			part.Same = w * (is - was)
			s.share += w
			s.variance += w * w * (p.before.variance(rho) + p.after.variance(rho))
		}
		s.parts = append(s.parts, part)
	}
	s.same, s.kinds = estimate.Kitagawa(weighted(pairs, true), weighted(pairs, false))
	return s.tidied()
}

// splitFarm splits the change of the farm by crops, each of them split in turn by crop.
func splitFarm(before, after *pool, crop func(before, after *pool) split) split {
	pairs := pairUp(before.crops(), after.crops(), before.sum.N, after.sum.N)
	middle := (before.ratio() + after.ratio()) / 2
	s := split{parts: make([]Part, 0, len(pairs))}
	for _, p := range pairs {
		part := p.part()
		part.OtherCrops = p.mix(middle)
		if w := p.weight(); p.inBoth() {
			of := crop(p.before, p.after)
			part.Same, part.OtherKinds = w*of.same, w*of.kinds
			s.share += w * of.share
			s.variance += w * w * of.variance
		}
		s.same, s.kinds = s.same+part.Same, s.kinds+part.OtherKinds
		s.parts = append(s.parts, part)
	}
	_, s.crops = estimate.Kitagawa(weighted(pairs, true), weighted(pairs, false))
	return s.tidied()
}

// weighted is one season of the pairs.
func weighted(pairs []paired, before bool) []estimate.Weighted {
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
