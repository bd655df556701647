package report

import "slices"

// CostBy returns the cost of the batches grouped by a key of the caller's: by
// crop, by cells and kind, a whole season. key says in which group a batch is;
// false leaves it out. The rows stand in the order of their groups and are made
// as those of Cost (rules 27, 59, 60).
func (r *Report) CostBy(key func(*Batch) (Group, bool)) []Cost {
	sums := map[Group]*costSum{}
	var groups []Group
	for _, b := range r.Batches {
		g, in := key(b)
		if !in {
			continue
		}
		if sums[g] == nil {
			sums[g] = &costSum{Cost: Cost{Group: g}}
			groups = append(groups, g)
		}
		sums[g].add(b)
	}
	slices.SortFunc(groups, groupOrder)
	var table []Cost
	for _, g := range groups {
		table = append(table, sums[g].close(len(r.hasCategory) > 0))
	}
	return table
}

// SeasonCost is the cost of all batches of a season; false where there are none.
func (r *Report) SeasonCost(season int) (Cost, bool) {
	rows := r.CostBy(func(b *Batch) (Group, bool) { return Group{Season: season}, b.Season == season })
	if len(rows) == 0 {
		return Cost{}, false
	}
	return rows[0], true
}
