package report

import (
	"slices"

	"traybook/records"
)

// Usable is the usable rate of a group (rule 18): usable plants of cells sown
// over its batches with usable by out or counted.
type Usable struct {
	Group
	Rate
	LeftOut int
}

// entersUsable reports whether the batch enters usable rates (rules 18, 44).
func (b *Batch) entersUsable() bool { return b.Measured() && b.CellsSown.Or(0) > 0 }

// measureUsable takes the usable plants that are out or counted.
func (r *Report) measureUsable() {
	for _, b := range r.Batches {
		b.Usable, b.UsableHow = b.measuredUsable()
		b.capAtCells()
	}
}

// measuredUsable returns the batch's usable plants where all that went out is
// written, or else its cells by its own emergence and quality, none where none
// came up (rules 18, 49).
func (b *Batch) measuredUsable() (Num, UsableHow) {
	if b.allOut() {
		return records.Known(b.WrittenOut), ByOut
	}
	emergence, quality := b.Emergence(), b.quality()
	if !b.CellsSown.Known || !emergence.Known || b.Early {
		return Num{}, ""
	}
	if emergence.Value == 0 {
		quality = records.Known(0.0)
	}
	if !quality.Known {
		return Num{}, ""
	}
	return records.Known(max(float64(b.CellsSown.Value)*emergence.Value*quality.Value, b.WrittenOut)), ByCount
}

// capAtCells keeps usable plants from being more than the cells sown.
func (b *Batch) capAtCells() {
	if cells := float64(b.CellsSown.Value); b.CellsSown.Known && b.Usable.Value > cells {
		b.Usable.Value, b.Capped = cells, true
	}
}

// scatterUsable measures how much the usable rates of batches differ.
func (r *Report) scatterUsable() {
	measured := filter(r.Batches, (*Batch).entersUsable)
	r.scatters[ofUsable] = scatterOf(measured, (*Batch).Group, func(g Group) string { return g.Crop }, usableCount)
}

// usable returns the usable rate of every group.
func (r *Report) usable() []Usable {
	keys, groups := groupBy(r.Batches, (*Batch).Group)
	slices.SortFunc(keys, groupOrder)
	var table []Usable
	for _, g := range keys {
		measured := filter(groups[g], (*Batch).entersUsable)
		table = append(table, Usable{Group: g, LeftOut: len(groups[g]) - len(measured),
			Rate: r.share(ofUsable, g.Crop, countsOf(measured, usableCount))})
	}
	return table
}

// estimateUsable gives the remaining batches what is written so far, once ended,
// or else the rate of their group, else of their crop over all seasons.
func (r *Report) estimateUsable() {
	groups, crops := map[Group]Num{}, map[string]Num{}
	for _, u := range r.Usable {
		groups[u.Group] = u.Share
	}
	keys, byCrop := groupBy(filter(r.Batches, (*Batch).entersUsable), func(b *Batch) string { return b.Crop })
	for _, crop := range keys {
		crops[crop] = poolShare(countsOf(byCrop[crop], usableCount)).Share
	}
	for _, b := range r.Batches {
		rate := groups[b.Group()]
		if !rate.Known {
			rate = crops[b.Crop]
		}
		if b.UsableHow == "" {
			b.estimate(rate)
			b.capAtCells()
		}
	}
}

func (b *Batch) estimate(rate Num) {
	switch {
	case b.Ended() && b.OutWritten:
		b.Usable, b.UsableHow = records.Known(b.WrittenOut), AtLeast
	case b.CellsSown.Known && rate.Known:
		b.Usable, b.UsableHow = records.Known(max(float64(b.CellsSown.Value)*rate.Value, b.WrittenOut)), Estimated
	}
}
