package germination

import (
	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
	"traybook/report/rate"
)

// countedOf puts the counts of every batch beside it, and whether it was counted too early
// for a figure; medianT50 is by crop, days.
func countedOf(batches []*batch.Batch, counts []Counts, r readings) (all []*Counted, medianT50 map[string]Num) {
	times, of := map[string][]float64{}, make([]Counted, len(batches))
	all = make([]*Counted, len(batches))
	for i, b := range batches {
		one := &of[i]
		one.Batch, one.Counts, all[i] = b, counts[b.Nth], one
		one.Warmed = r.inChamber(one).n > 0
		if one.T50.Known {
			times[b.Crop] = append(times[b.Crop], one.T50.Value)
		}
	}
	medianT50 = map[string]Num{}
	for crop, t := range times {
		medianT50[crop] = rate.Median(t)
	}
	for _, one := range all {
		one.markEarly(medianT50[one.Crop])
	}
	return all, medianT50
}

// earlyBatch is how old an open batch must be at its last count, in days, where
// its crop has no T50 yet; common practice, no source.
const earlyBatch = 14

// markEarly tells whether the last count came too early (rule "Counted early"): an
// ended batch is marked and stays in, an open one may still come up and is left out.
func (c *Counted) markEarly(median Num) {
	if len(c.Rows) == 0 {
		return
	}
	age := float64(c.lastUsed() - c.Sown)
	c.CountedEarly = median.Known && age < 2*median.Value
	c.Early = c.EndHow == batch.Open && (c.CountedEarly || !median.Known && age < earlyBatch)
}

// Emergence is the share of cells looked at with a living seedling at the last
// count (rule "Counts"); missing where the batch was not counted. Where Early is set
// the share is shown but enters no other figure.
func (c *Counted) Emergence() Num { return rate.Ratio(c.Emerged, c.Looked) }

// EntersEmergence reports whether the batch enters the figures of emergence: from
// seed, counted, and not too early (rules "Emergence", "Counted early").
func (c *Counted) EntersEmergence() bool {
	return c.FromSeed && !c.Early && c.Looked.Known && c.Looked.Value > 0
}

// emergenceCount and everUpCount are what each measure counts of a batch, in cells.
func emergenceCount(c *Counted) estimate.Count {
	return estimate.Count{X: c.Emerged.Value, N: c.Looked.Value}
}
func everUpCount(c *Counted) estimate.Count {
	return estimate.Count{X: c.EverUp.Value, N: c.Looked.Value}
}

// cropOf, varietyOf and lotOf are keys by which batches are split.
func cropOf(c *Counted) string    { return c.Crop }
func varietyOf(c *Counted) string { return c.Variety }
func lotOf(c *Counted) string     { return c.Lot }

// trays adds up the trays sown.
func trays(batches []*Counted) float64 {
	sum := 0.0
	for _, c := range batches {
		sum += c.Trays
	}
	return sum
}

// seedsPerCell is the number of seeds a cell of batches that all have the same;
// unknown of none.
func seedsPerCell(batches []*Counted) records.Maybe[int] {
	ks, _ := batch.GroupBy(batches, func(c *Counted) int { return c.SeedsPerCell })
	if len(ks) != 1 {
		return records.Maybe[int]{}
	}
	return records.Known(ks[0])
}
