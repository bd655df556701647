package years

import (
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/money"
	"traybook/report/rate"
)

// comparison is one measure over all seasons of a book.
type comparison struct {
	measure
	batches *batch.Batches
	entries []entry        // with a figure, in the order of the batches
	noPlant []entry        // in groups that rest on nothing
	left    []*money.Borne // without a figure
	running int            // the season that is running, 0 where none is
}

func comparisonOf(m measure, b *batch.Batches, all []*money.Borne) comparison {
	c := comparison{measure: m, batches: b, left: m.leftOut(all), running: runningSeason(b)}
	c.entries, c.noPlant = m.entries(all)
	return c
}

// seasons is the figure of every season that has one.
func (c comparison) seasons() []Season {
	keys, of := batch.GroupBy(c.entries, seasonOf)
	var table []Season
	for _, season := range keys {
		s := Season{Measure: c.name, Season: season, Side: c.side(of[season], "", season)}
		if c.scatter != nil {
			r := c.scatter.Rate("", countsOf(of[season]))
			s.Low, s.High = r.Low, r.High
		}
		table = append(table, s)
	}
	return table
}

// changes compares the farm's seasons, then every crop's.
func (c comparison) changes() []Change {
	crops, of := batch.GroupBy(c.entries, cropOf)
	rows := c.pairs("", c.entries)
	for _, crop := range crops {
		rows = append(rows, c.pairs(crop, of[crop])...)
	}
	c.judge(rows)
	usual(rows)
	return rows
}

// pairs compares each season that has a figure with the one before that has one.
func (c comparison) pairs(crop string, all []entry) []Change {
	seasons, of := batch.GroupBy(all, seasonOf)
	slices.Sort(seasons)
	var rows []Change
	for i := 1; i < len(seasons); i++ {
		from, to := seasons[i-1], seasons[i]
		row := Change{Measure: c.name, Crop: crop, From: from, To: to}
		if to == c.running {
			row.FromDay, row.ToDay = batch.YearsBefore(c.batches.Today, to-from), c.batches.Today
		}
		if c.set(&row, of[from], of[to]) {
			rows = append(rows, row)
		}
	}
	return rows
}

// set fills in a row from the batches of its seasons; false where a side has no figure:
// while a season runs, of what had not come to pass by the day.
func (c comparison) set(row *Change, before, after []entry) bool {
	before, soonBefore := c.upTo(row.FromDay, before)
	after, soonAfter := c.upTo(row.ToDay, after)
	if len(before) == 0 || len(after) == 0 {
		return false
	}
	var s split
	if row.Crop == "" {
		s = splitFarm(before, after, c.rho)
		row.OtherCrops = records.Known(s.crops)
	} else {
		s = splitCrop(before, after, c.rho(row.Crop))
	}
	row.Before, row.After = c.side(before, row.Crop, row.From), c.side(after, row.Crop, row.To)
	row.Before.Later, row.After.Later = codesOf(soonBefore), codesOf(soonAfter)
	row.Change = row.After.Figure.Value - row.Before.Figure.Value
	row.Same, row.OtherKinds, row.Share, row.Groups, row.variance = s.same, s.kinds, s.share, s.parts, s.variance
	return true
}

// sideOf pools batches; without any there is no figure.
func sideOf(entries []entry) Side {
	sum := sumOf(entries)
	s := Side{Batches: len(entries), N: sum.N}
	if len(entries) > 0 {
		s.Figure = records.Known(sum.X / sum.N)
	}
	return s
}

// side is a whole season of the farm or a crop, with what is not in its figure.
func (c comparison) side(entries []entry, crop string, season int) Side {
	s := sideOf(entries)
	s.Weight = 1
	for _, b := range c.left {
		if b.Season == season && (crop == "" || b.Crop == crop) {
			s.LeftOut++
		}
	}
	s.NoPlant = codesOf(batch.Filter(c.noPlant, func(e entry) bool {
		return e.Season == season && (crop == "" || e.Crop == crop)
	}))
	return s
}

// rho is the correlation of cells within a batch of a crop; 0 where there is none.
func (c comparison) rho(crop string) float64 {
	used, _ := c.spread(crop)
	return used.Rho
}

// spread is the scatter behind an interval: of a crop or, where it is empty, of the farm.
func (c comparison) spread(crop string) (rate.Spread, bool) {
	if c.scatter == nil {
		return rate.Spread{}, false
	}
	return c.scatter.Of(crop)
}
