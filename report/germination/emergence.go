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
	groups := batch.SplitBy(in, (*Counted).GroupRank).Groups
	table := slices.Grow([]Emergence(nil), len(groups))
	for _, of := range groups {
		g := of[0].Group()
		e := emergenceOf(g, of, scatter)
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
	rates := map[int]rate.Rate{}
	for _, season := range all {
		rates[season] = scatter.Rate("", nil)
	}
	for _, of := range batch.SplitBy(in, (*Counted).SeasonRank).Groups {
		rates[of[0].Season] = scatter.Rate("", rate.Counts(of, emergenceCount))
	}
	return rates
}

// crops is the emergence of each crop of each season, all its varieties and trays
// together: pooled over several groups, its interval still rests on the crop's own
// scatter (rule "Scatter"). Rows have no rate a seed.
func crops(in []*Counted, scatter rate.Scatter) []Emergence {
	groups := batch.SplitBy(in, (*Counted).SeasonCropRank).Groups
	table := slices.Grow([]Emergence(nil), len(groups))
	for _, of := range groups {
		table = append(table, emergenceOf(batch.Group{Season: of[0].Season, Crop: of[0].Crop}, of, scatter))
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
