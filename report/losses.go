package report

import (
	"cmp"
	"slices"
)

// lossKey is a row of the losses.
type lossKey struct {
	season      int
	crop, cause string
}

// losses adds up the cells lost by cause, over the counts that are used.
func (r *Report) losses() []Loss {
	found := map[lossKey]*Loss{}
	for _, b := range r.Batches {
		seen := map[lossKey]bool{}
		for _, c := range b.Counts {
			if c.Lost.Or(0) <= 0 {
				continue
			}
			k := lossKey{b.Season, b.Crop, c.Cause}
			if found[k] == nil {
				found[k] = &Loss{Season: k.season, Crop: k.crop, Cause: k.cause}
			}
			l := found[k]
			l.Cells += c.Lost.Value
			l.ByMonth[c.Date.Month()] += c.Lost.Value
			if !seen[k] {
				l.Batches++
			}
			seen[k] = true
		}
	}
	var table []Loss
	for _, l := range found {
		table = append(table, *l)
	}
	slices.SortFunc(table, func(a, b Loss) int {
		return cmp.Or(cmp.Compare(a.Season, b.Season), cmp.Compare(a.Crop, b.Crop), cmp.Compare(a.Cause, b.Cause))
	})
	return table
}
