package years

import (
	"cmp"
	"math"
	"slices"

	"traybook/report/batch"
)

// Farm returns the farm's change of a measure to a season; false where there is none.
func (f *Figures) Farm(to int, m Measure) (Change, bool) {
	i := slices.IndexFunc(f.Years, func(c Change) bool { return c.Measure == m && c.Crop == "" && c.To == to })
	if i < 0 {
		return Change{}, false
	}
	return f.Years[i], true
}

// Crops returns the changes of a measure to a season, crop by crop.
func (f *Figures) Crops(to int, m Measure) []Change {
	return batch.Filter(f.Years, func(c Change) bool { return c.Measure == m && c.Crop != "" && c.To == to })
}

// Drivers returns what drove the farm's change of a measure to a season: the crops' parts
// of the three, the largest first, whether up or down; those of 0 are none. They add up
// to the change.
func (f *Figures) Drivers(to int, m Measure) []Driver {
	farm, _ := f.Farm(to, m)
	var all []Driver
	for _, p := range farm.Groups {
		all = append(all, Driver{p.Crop, LikeSowings, p.Same}, Driver{p.Crop, OtherKinds, p.OtherKinds}, Driver{p.Crop, OtherCrops, p.OtherCrops})
	}
	all = batch.Filter(all, func(d Driver) bool { return d.Value != 0 })
	size := func(d Driver) float64 { return math.Round(math.Abs(d.Value) / noise) } // equal ones stay by crop
	slices.SortStableFunc(all, func(a, b Driver) int { return cmp.Compare(size(b), size(a)) })
	return all
}
