package report

import (
	"slices"

	"traybook/records"
	"traybook/report/estimate"
)

// germination computes the figures of what came up (rules 10-15, 57).
func (r *Report) germination() {
	counted := filter(r.Batches, (*Batch).entersEmergence)
	r.scatters[ofEmergence] = scatterOf(counted, seedGroupOf, func(g seedGroup) string { return g.Crop }, emergenceCount)
	r.Emergence = r.emergence(counted)
	r.Differences = r.differences(counted)
	r.Lots = r.lots()
	r.Timing = r.timing()
	r.Losses = r.losses()
	r.Weeks = r.weeks(counted)
	r.Chambers = r.chambers()
}

// emergence returns a row for every group with a counted batch (rules 10, 11).
func (r *Report) emergence(counted []*Batch) []Emergence {
	leftOut := map[Group]int{}
	for _, b := range r.Batches {
		if b.FromSeed && !b.entersEmergence() {
			leftOut[b.Group()]++
		}
	}
	keys, groups := groupBy(counted, (*Batch).Group)
	slices.SortFunc(keys, groupOrder)
	var table []Emergence
	for _, g := range keys {
		e := Emergence{Group: g, LeftOut: leftOut[g], SeedsPerCell: seedsPerCell(groups[g])}
		e.Rate = r.share(ofEmergence, g.Crop, countsOf(groups[g], emergenceCount))
		for _, b := range groups[g] {
			e.Trays += b.Trays
		}
		e.SeedRate, e.SeedLow, e.SeedHigh = e.perSeed(e.SeedsPerCell)
		table = append(table, e)
	}
	return table
}

// seedsPerCell is the number of seeds a cell of batches that all have the same.
func seedsPerCell(batches []*Batch) records.Maybe[int] {
	if len(batches) == 0 {
		return records.Maybe[int]{}
	}
	k := batches[0].SeedsPerCell
	for _, b := range batches {
		if b.SeedsPerCell != k {
			return records.Maybe[int]{}
		}
	}
	return records.Known(k)
}

// perSeed turns a share of cells and its ends into shares of seeds (rule 11).
func (s Rate) perSeed(k records.Maybe[int]) (rate, low, high Num) {
	each := func(n Num) Num {
		if !n.Known || !k.Known {
			return Num{}
		}
		return records.Known(estimate.PerSeed(n.Value, k.Value))
	}
	return each(s.Share), each(s.Low), each(s.High)
}
