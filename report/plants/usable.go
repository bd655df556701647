package plants

import (
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/rate"
)

// capAtCells keeps usable plants from being more than the cells sown.
func (p *Plants) capAtCells() {
	if cells := float64(p.CellsSown.Value); p.CellsSown.Known && p.Usable.Value > cells {
		p.Usable.Value, p.Capped = cells, true
	}
}

// scatterUsable measures how much the usable rates of batches differ, from seed or
// not (rule "Scatter").
func scatterUsable(all []*Plants, level float64) rate.Scatter {
	return rate.ScatterOf(batch.Filter(all, (*Plants).EntersUsable), (*Plants).Group, cropOf, usableCount, level)
}

// usable returns the usable rate of every group, with the batches left out of it.
func (f *Figures) usable(group func(*Plants) batch.Group) []Usable {
	keys, groups := batch.GroupBy(f.Plants, group)
	slices.SortFunc(keys, batch.Order)
	table := slices.Grow([]Usable(nil), len(keys))
	for _, g := range keys {
		of := batch.Filter(groups[g], (*Plants).EntersUsable)
		table = append(table, Usable{Group: g, LeftOut: len(groups[g]) - len(of),
			Rate: f.UsableScatter.Rate(g.Crop, rate.Counts(of, usableCount))})
	}
	return table
}

// bookUsable is the usable rate over all batches that enter one; missing where none does.
func bookUsable(all []*Plants) Num {
	return rate.Pool(rate.Counts(batch.Filter(all, (*Plants).EntersUsable), usableCount)).Share
}

// estimateUsable gives the batches without a measured figure what is written so far,
// once ended, or else the rate of their group, else of their crop over all seasons.
func (f *Figures) estimateUsable() {
	groups, crops := map[batch.Group]Num{}, usableByCrop(f.Plants)
	for _, u := range f.Usable {
		groups[u.Group] = u.Share
	}
	for _, p := range f.Plants {
		if p.UsableHow != "" {
			continue
		}
		usual := groups[p.Group()]
		if !usual.Known {
			usual = crops[p.Crop]
		}
		p.estimate(usual)
		p.capAtCells()
	}
}

// usableByCrop is the usable rate of every crop that has one, all seasons together.
func usableByCrop(all []*Plants) map[string]Num {
	keys, groups := batch.GroupBy(batch.Filter(all, (*Plants).EntersUsable), func(p *Plants) string { return p.Crop })
	crops := map[string]Num{}
	for _, crop := range keys {
		crops[crop] = rate.Pool(rate.Counts(groups[crop], usableCount)).Share
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
