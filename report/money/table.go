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

// table returns the cost of every group that batches fall in, by rank, which is the order
// of groups (rule "Cost of a transplant").
func (a *accounts) table(rank func(*Borne) int32, group func(*Borne) batch.Group) []Cost {
	groups := batch.SplitBy(a.borne, rank).Groups
	table := slices.Grow([]Cost(nil), len(groups))
	for _, of := range groups {
		table = append(table, a.costOf(group(of[0]), of))
	}
	return table
}

// sizes is the table of seasons, cells and kinds.
func (a *accounts) sizes() []Cost {
	var table []Cost
	keys, groups := batch.SplitByKey(a.borne, (*Borne).GroupRank, bySize)
	for i, g := range keys {
		table = append(table, a.costOf(g, groups[i]))
	}
	slices.SortFunc(table, func(x, y Cost) int { return batch.Order(x.Group, y.Group) })
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
	var table []Month
	for _, season := range a.seasons {
		first, after := a.all.Settings.SeasonDays(season[0].Season)
		ended := batch.Filter(season, func(b *Borne) bool { return b.Ended() && first <= b.End && b.End < after })
		months, groups := batch.SplitByKey(ended, dayOfEnd, func(b *Borne) records.Date { return records.NewDate(b.End.Year(), b.End.Month(), 1) })
		for i, m := range months {
			table = append(table, Month{m, a.costOf(bySeason(season[0]), groups[i])})
		}
	}
	slices.SortFunc(table, func(x, y Month) int { return cmp.Or(cmp.Compare(x.Season, y.Season), cmp.Compare(x.First, y.First)) })
	return table
}

func dayOfEnd(b *Borne) int32 { return int32(b.End) }

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
