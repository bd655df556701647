package money

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/batch"
)

// The groups of the tables of cost.
func byGroup(b *Borne) batch.Group { return b.Group() }

func byCrop(b *Borne) batch.Group { return batch.Group{Season: b.Season, Crop: b.Crop} }

func bySeason(b *Borne) batch.Group { return batch.Group{Season: b.Season} }

func bySize(b *Borne) batch.Group {
	return batch.Group{Season: b.Season, Cells: b.TrayCells, Kind: b.Kind}
}

// table returns the cost of every group that batches fall in, in the order of groups
// (rule "Cost of a transplant").
func (a *accounts) table(group func(*Borne) batch.Group) []Cost {
	keys, groups := batch.GroupBy(a.borne, group)
	slices.SortFunc(keys, batch.Order)
	table := slices.Grow([]Cost(nil), len(keys))
	for _, g := range keys {
		table = append(table, a.costOf(g, groups[g]))
	}
	return table
}

// costOf adds up the batches of a group.
func (a *accounts) costOf(g batch.Group, batches []*Borne) Cost {
	sum := costSum{Cost: Cost{Group: g}}
	for _, b := range batches {
		sum.add(b)
	}
	return sum.close(len(a.has) > 0)
}

// months returns the cost of each season's ended batches by the month in which they
// ended, for ends within their season.
func (a *accounts) months() []Month {
	type month struct {
		season int
		first  records.Date
	}
	keys, groups := batch.GroupBy(batch.Filter(a.borne, a.endedInSeason), func(b *Borne) month {
		return month{b.Season, records.NewDate(b.End.Year(), b.End.Month(), 1)}
	})
	slices.SortFunc(keys, func(x, y month) int {
		return cmp.Or(cmp.Compare(x.season, y.season), cmp.Compare(x.first, y.first))
	})
	var table []Month
	for _, m := range keys {
		table = append(table, Month{m.first, a.costOf(batch.Group{Season: m.season}, groups[m])})
	}
	return table
}

func (a *accounts) endedInSeason(b *Borne) bool {
	first, after := a.all.Settings.SeasonDays(b.Season)
	return b.Ended() && first <= b.End && b.End < after
}

// Season returns the cost of all batches of a season; false where there are none.
func (f *Figures) Season(season int) (Cost, bool) {
	i := slices.IndexFunc(f.Seasons, func(c Cost) bool { return c.Season == season })
	if i < 0 {
		return Cost{}, false
	}
	return f.Seasons[i], true
}

// InSeason returns the rows of one season, in a list of its own that may be sorted.
func InSeason(table []Cost, season int) []Cost {
	return batch.Filter(table, func(c Cost) bool { return c.Season == season })
}
