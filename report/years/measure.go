package years

import (
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
	"traybook/report/germination"
	"traybook/report/money"
	"traybook/report/plants"
	"traybook/report/rate"
)

// entry is a batch and what it counts in a measure: x of n.
type entry struct {
	*money.Borne
	count estimate.Count
}

// measure is one way to compare seasons.
type measure struct {
	name  Measure
	asked func(*money.Borne) bool                   // whether the batch should have a figure
	count func(*money.Borne) (estimate.Count, bool) // what it counts; false: it has none
	stood func(*money.Borne) records.Date           // the day its figure stood; unknown: it does not yet
	// scatter is that of the measure; nil: a figure without an interval.
	scatter *rate.Scatter
}

// measures are the three, each with its scatter (rules "Emergence", "Usable plants",
// "Cost of a transplant").
func measures(g *germination.Figures, p *plants.Figures) []measure {
	every := func(*money.Borne) bool { return true }
	return []measure{
		{Emergence, func(b *money.Borne) bool { return b.FromSeed }, emerged, lastCount, &g.Scatter},
		{Usable, every, usable, writtenEnd, &p.UsableScatter},
		{Cost, every, cost, nil, nil},
	}
}

func emerged(b *money.Borne) (estimate.Count, bool) {
	return estimate.Count{X: b.Emerged.Value, N: b.Looked.Value}, b.EntersEmergence()
}

// lastCount is the day of the last count that is used.
func lastCount(b *money.Borne) records.Date {
	if len(b.Rows) == 0 {
		return 0
	}
	return b.Rows[len(b.Rows)-1].Date
}

func usable(b *money.Borne) (estimate.Count, bool) {
	return estimate.Count{X: b.Usable.Value, N: float64(b.CellsSown.Value)}, b.EntersUsable()
}

func writtenEnd(b *money.Borne) records.Date {
	if b.EndHow != batch.Written {
		return 0
	}
	return b.End
}

// cost is the money of an ended batch over its usable plants, those potted on taken off
// (rule "Potting on"): both may be 0.
func cost(b *money.Borne) (estimate.Count, bool) {
	return estimate.Count{X: b.Cost.Value, N: max(0, b.Usable.Value-b.PlantsMoved)}, b.Ended() && b.Usable.Known && b.Cost.Known
}

// noPlants is below how many plants, or cells, there are none but for rounding.
const noPlants = 1e-9

// entries are the batches with a figure of the measure, in their order; without are those
// of groups of a season that rest on nothing at all: they have no rate.
func (m measure) entries(all []*money.Borne) (entries, without []entry) {
	entries = make([]entry, 0, len(all))
	for _, b := range all {
		if count, has := m.count(b); has {
			entries = append(entries, entry{b, count})
		}
	}
	bare := map[int32]bool{} // ranks of like sowings
	for _, like := range batch.SplitBy(entries, entry.LikeRank).Groups {
		if !(sumOf(like).N > noPlants) {
			bare[like[0].LikeRank()] = true
		}
	}
	if len(bare) == 0 {
		return entries, nil
	}
	rests := func(e entry) bool { return !bare[e.LikeRank()] }
	return batch.Filter(entries, rests), batch.Filter(entries, func(e entry) bool { return !rests(e) })
}

// leftOut are the batches that should have a figure of the measure and have none.
func (m measure) leftOut(all []*money.Borne) []entry {
	var left []entry
	for _, b := range all {
		if _, has := m.count(b); m.asked(b) && !has {
			left = append(left, entry{Borne: b})
		}
	}
	return left
}

// sumOf adds batches up.
func sumOf(entries []entry) estimate.Count {
	var sum estimate.Count
	for _, e := range entries {
		sum.X, sum.N = sum.X+e.count.X, sum.N+e.count.N
	}
	return sum
}

func countsOf(entries []entry) []estimate.Count { return rate.Counts(entries, entry.counts) }

func (e entry) counts() estimate.Count { return e.count }

// varianceOf is that of the pooled rate of batches (rule "Variance of a rate").
func varianceOf(entries []entry, rho float64) float64 {
	counts := countsOf(entries)
	return rate.Pool(counts).Variance(counts, rho)
}

// codesOf lists the codes of batches by bytes.
func codesOf(entries []entry) []string {
	var codes []string
	for _, e := range entries {
		codes = append(codes, e.Code)
	}
	slices.Sort(codes)
	return codes
}
