package sowing

import (
	"slices"

	"traybook/report/batch"
	"traybook/report/estimate"
	"traybook/report/plants"
	"traybook/report/rate"
)

// level is the measured batches from seed, all seasons together, split coarsely or
// finely, and their scatter within what they are split by.
type level struct {
	basis   Basis
	key     func(batch.Group) batch.Group
	keys    []batch.Group
	groups  map[batch.Group][]*plants.Plants
	scatter rate.Scatter
}

// splits are the ways to split, the finest first.
var splits = []level{
	{basis: OfVariety, key: func(g batch.Group) batch.Group {
		return batch.Group{Crop: g.Crop, Variety: g.Variety, Cells: g.Cells, Kind: g.Kind}
	}},
	{basis: OfCells, key: func(g batch.Group) batch.Group {
		return batch.Group{Crop: g.Crop, Cells: g.Cells, Kind: g.Kind}
	}},
	{basis: OfCrop, key: func(g batch.Group) batch.Group { return batch.Group{Crop: g.Crop} }},
}

// levelsOf splits the batches in all ways; confidence is that of the intervals.
func levelsOf(all []*plants.Plants, confidence float64) []level {
	seeded := batch.Filter(all, func(p *plants.Plants) bool { return p.FromSeed && p.EntersUsable() })
	levels := make([]level, len(splits))
	for i, l := range splits {
		keys, groups := batch.SplitByKey(seeded, (*plants.Plants).GroupRank, func(p *plants.Plants) batch.Group { return l.key(p.Group()) })
		l.scatter = rate.ScatterOf(slices.Values(groups), cropOf, usableCount, confidence)
		l.keys, l.groups = keys, make(map[batch.Group][]*plants.Plants, len(keys))
		for j, k := range keys {
			l.groups[k] = groups[j]
		}
		levels[i] = l
	}
	return levels
}

func cropOf(p *plants.Plants) string { return p.Crop }

// usableCount is what is counted of a batch: usable plants of cells sown.
func usableCount(p *plants.Plants) estimate.Count {
	return estimate.Count{X: p.Usable.Value, N: float64(p.CellsSown.Value)}
}

// chance is what may be counted on of the group that g belongs to.
func (l *level) chance(g batch.Group) Chance {
	return chanceOf(l.groups[l.key(g)], l.scatter, g.Crop)
}
