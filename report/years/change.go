package years

import (
	"traybook/records"
	"traybook/report/batch"
	"traybook/report/money"
	"traybook/report/rate"
)

// comparison is one measure over all seasons of a book.
type comparison struct {
	measure
	batches *batch.Batches
	pools   []*pool           // of the batches with a figure, by season
	noPlant map[like][]string // codes by bytes of those in groups that rest on nothing, by season and crop
	left    map[like]int      // those without a figure, likewise
	running int               // the season that is running, 0 where none is
	crops   map[[2]*pool]split
	all     bool   // keep the parts of a crop too, its like sowings, for whoever adds them up
	scratch []Part // where they stand else, one crop's after another's
}

func comparisonOf(m measure, b *batch.Batches, all []*money.Borne) *comparison {
	c := &comparison{measure: m, batches: b, left: map[like]int{}, noPlant: map[like][]string{}, running: runningSeason(b), crops: map[[2]*pool]split{}}
	entries, without := m.entries(all)
	c.pools = poolsBy(entries, ofSeason)
	left := m.leftOut(all)
	for _, by := range []level{ofSeason, ofCrop} {
		for _, p := range poolsBy(left, by) {
			c.left[p.like] = len(p.entries)
		}
		for _, p := range poolsBy(without, by) {
			c.noPlant[p.like] = codesOf(p.entries)
		}
	}
	return c
}

// seasons is the figure of every season that has one.
func (c *comparison) seasons() []Season {
	var table []Season
	for _, p := range c.pools {
		s := Season{Measure: c.name, Season: p.season, Side: c.side(p)}
		if c.scatter != nil {
			r := c.scatter.Rate("", countsOf(p.entries))
			s.Low, s.High = r.Low, r.High
		}
		table = append(table, s)
	}
	return table
}

// changes compares the farm's seasons, then every crop's.
func (c *comparison) changes() []Change {
	rows := c.pairs("", c.pools)
	var all []*pool // the crops of every season
	for _, season := range c.pools {
		all = append(all, season.crops()...)
	}
	crops, of := batch.GroupBy(all, func(p *pool) string { return p.crop })
	for _, crop := range crops {
		rows = append(rows, c.pairs(crop, of[crop])...)
	}
	c.judge(rows)
	usual(rows)
	return rows
}

// pairs compares each season that has a figure with the one before that has one; seasons
// are those of the farm or a crop, ascending.
func (c *comparison) pairs(crop string, seasons []*pool) []Change {
	var rows []Change
	for i := 1; i < len(seasons); i++ {
		from, to := seasons[i-1].season, seasons[i].season
		row := Change{Measure: c.name, Crop: crop, From: from, To: to}
		if to == c.running {
			row.FromDay, row.ToDay = batch.YearsBefore(c.batches.Today, to-from), c.batches.Today
		}
		if c.set(&row, seasons[i-1], seasons[i]) {
			rows = append(rows, row)
		}
	}
	return rows
}

// set fills in a row from its seasons; false where a side has no figure: while a season
// runs, of what had not come to pass by the day.
func (c *comparison) set(row *Change, before, after *pool) bool {
	before, soonBefore := c.upTo(row.FromDay, before)
	after, soonAfter := c.upTo(row.ToDay, after)
	if len(before.entries) == 0 || len(after.entries) == 0 {
		return false
	}
	var s split
	if row.Crop == "" {
		s = splitFarm(before, after, c.splitCrop)
		row.OtherCrops = records.Known(s.crops)
	} else {
		s = c.splitCrop(before, after)
	}
	row.Before, row.After = c.side(before), c.side(after)
	row.Before.Later, row.After.Later = codesOf(soonBefore), codesOf(soonAfter)
	row.Change = row.After.Figure.Value - row.Before.Figure.Value
	row.Same, row.OtherKinds, row.Share, row.Groups, row.variance = s.same, s.kinds, s.share, s.parts, s.variance
	return true
}

// splitCrop splits the change of a crop; the farm asks for it, and then the crop itself.
func (c *comparison) splitCrop(before, after *pool) split {
	pair := [2]*pool{before, after}
	s, known := c.crops[pair]
	if !known {
		s = splitCrop(before, after, c.rho(before.crop), c.scratch[:0])
		if !c.all {
			c.scratch, s.parts = s.parts, nil
		}
		c.crops[pair] = s
	}
	return s
}

// side is a whole season of the farm or a crop, with what is not in its figure.
func (c *comparison) side(p *pool) Side {
	of := p.pooled()
	return Side{Figure: of.Figure, Batches: of.Batches, N: of.N, Weight: 1, LeftOut: c.left[p.like], NoPlant: c.noPlant[p.like]}
}

// rho is the correlation of cells within a batch of a crop; 0 where there is none.
func (c *comparison) rho(crop string) float64 {
	used, _ := c.spread(crop)
	return used.Rho
}

// spread is the scatter behind an interval: of a crop or, where it is empty, of the farm.
func (c *comparison) spread(crop string) (rate.Spread, bool) {
	if c.scatter == nil {
		return rate.Spread{}, false
	}
	return c.scatter.Of(crop)
}
