package plants

import (
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
	"traybook/report/rate"
)

// capAtCells keeps usable plants from being more than the cells sown.
func (p *Plants) capAtCells() {
	if cells := float64(p.CellsSown.Value); p.CellsSown.Known && p.Usable.Value > cells {
		p.Usable.Value, p.Capped = cells, true
	}
}

// usable computes the usable rates; level is that of their intervals. Scatter is measured
// over all batches, from seed or not (rule "Scatter").
func (f *Figures) usable(level float64) {
	in := batch.Filter(f.Plants, (*Plants).EntersUsable)
	f.UsableScatter = rate.ScatterOf(batch.SplitBy(in, (*Plants).GroupRank).Met(), cropOf, usableCount, level)
	f.Usable = f.usableBy((*Plants).GroupRank, (*Plants).Group)
	f.UsableCrops = f.usableBy((*Plants).SeasonCropRank, cropGroup)
	f.UsableSeasons = seasonsOf(in, usableCount, f.UsableScatter)
	f.BookUsable = rate.Pool(rate.Counts(in, usableCount)).Share
	f.estimateUsable(usableByCrop(in))
}

// usableBy returns the usable rate of every group, by rank, with the batches left out of it.
func (f *Figures) usableBy(rank func(*Plants) int32, group func(*Plants) batch.Group) []Usable {
	groups := batch.SplitBy(f.Plants, rank).Groups
	table, counts := slices.Grow([]Usable(nil), len(groups)), []estimate.Count(nil)
	for _, of := range groups {
		u := Usable{Group: group(of[0])}
		counts = counts[:0]
		for _, p := range of {
			if p.EntersUsable() {
				counts = append(counts, usableCount(p))
			}
		}
		u.LeftOut, u.Rate = len(of)-len(counts), f.UsableScatter.Rate(u.Crop, counts)
		table = append(table, u)
	}
	return table
}

// estimateUsable gives the batches without a measured figure what is written so far,
// once ended, or else the rate of their group, else of their crop over all seasons. Usable
// stands by the ranks of groups.
func (f *Figures) estimateUsable(crops map[string]Num) {
	for _, p := range f.Plants {
		if p.UsableHow != "" {
			continue
		}
		usual := f.Usable[p.Ranks.Group].Share
		if !usual.Known {
			usual = crops[p.Crop]
		}
		p.estimate(usual)
		p.capAtCells()
	}
}

// usableByCrop is the usable rate of every crop that has one, all seasons together, over the
// batches that enter one.
func usableByCrop(in []*Plants) map[string]Num {
	crops := map[string]Num{}
	for _, of := range batch.SplitBy(in, (*Plants).CropRank).Groups {
		crops[of[0].Crop] = rate.Pool(rate.Counts(of, usableCount)).Share
	}
	return crops
}

// estimate takes what is written so far of an ended batch, else what is usual.
func (p *Plants) estimate(usual Num) {
	switch {
	case p.Ended() && p.OutWritten:
		p.Usable, p.UsableHow = records.Known(p.WrittenOut), AtLeast
	case p.CellsSown.Known && usual.Known:
		p.Usable, p.UsableHow = records.Known(max(float64(p.CellsSown.Value)*usual.Value, p.WrittenOut)), Estimated
	}
}
