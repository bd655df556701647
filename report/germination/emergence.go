package germination

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/rate"
)

// emergence returns a row for every group with a counted batch (rules "Emergence",
// "Per seed"). in holds the batches that enter it.
func emergence(in []*Counted, leftOut map[batch.Group]int, scatter rate.Scatter) []Emergence {
	keys, groups := batch.GroupBy(in, groupOf)
	slices.SortFunc(keys, batch.Order)
	table := slices.Grow([]Emergence(nil), len(keys))
	for _, g := range keys {
		e := emergenceOf(g, groups[g], scatter)
		e.LeftOut = leftOut[g]
		e.SeedRate, e.SeedLow, e.SeedHigh = e.PerSeed(e.SeedsPerCell)
		table = append(table, e)
	}
	return table
}

// emergenceOf pools batches of one crop, with an interval by the crop's scatter.
func emergenceOf(g batch.Group, batches []*Counted, scatter rate.Scatter) Emergence {
	return Emergence{Group: g, Rate: scatter.Rate(g.Crop, rate.Counts(batches, emergenceCount)),
		Trays: trays(batches), SeedsPerCell: seedsPerCell(batches)}
}

// leftOut counts, by group, the batches from seed that enter no figure of emergence.
func leftOut(all []*Counted) map[batch.Group]int {
	n := map[batch.Group]int{}
	for _, c := range all {
		if c.FromSeed && !c.EntersEmergence() {
			n[c.Group()]++
		}
	}
	return n
}

// seasons is the emergence of each season, all crops together. Its interval rests
// on the scatter of the whole book (rule "Scatter").
func seasons(in []*Counted, all []int, scatter rate.Scatter) map[int]rate.Rate {
	_, of := batch.GroupBy(in, func(c *Counted) int { return c.Season })
	rates := map[int]rate.Rate{}
	for _, season := range all {
		rates[season] = scatter.Rate("", rate.Counts(of[season], emergenceCount))
	}
	return rates
}

// crops is the emergence of each crop of each season, all its varieties and trays
// together: pooled over several groups, its interval still rests on the crop's own
// scatter (rule "Scatter"). Rows have no rate a seed.
func crops(in []*Counted, scatter rate.Scatter) []Emergence {
	keys, groups := batch.GroupBy(in, func(c *Counted) batch.Group { return batch.Group{Season: c.Season, Crop: c.Crop} })
	slices.SortFunc(keys, func(a, b batch.Group) int {
		return cmp.Or(cmp.Compare(a.Season, b.Season), cmp.Compare(a.Crop, b.Crop))
	})
	table := slices.Grow([]Emergence(nil), len(keys))
	for _, g := range keys {
		table = append(table, emergenceOf(g, groups[g], scatter))
	}
	return table
}

// NamedCrops returns the crops of a season that stood clearly apart from the season's
// rate over all crops, the worst and the best first (rule "Named crops").
func (f *Figures) NamedCrops(season int) (worst, best []Emergence) {
	all := f.Seasons[season].Share.Value
	for _, e := range f.Crops {
		switch {
		case e.Season != season || e.Few() || e.SeedsPerCell != records.Known(1) || !e.Low.Known:
		case e.High.Value < all-rate.Equal:
			worst = append(worst, e)
		case e.Low.Value > all+rate.Equal:
			best = append(best, e)
		}
	}
	slices.SortStableFunc(worst, func(a, b Emergence) int { return cmp.Compare(a.Share.Value, b.Share.Value) })
	slices.SortStableFunc(best, func(a, b Emergence) int { return cmp.Compare(b.Share.Value, a.Share.Value) })
	return worst, best
}
