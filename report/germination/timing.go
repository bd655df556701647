package germination

import (
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
	"traybook/report/rate"
)

// time finds how fast a batch from seed came up (rule "Timing"), of which trays are all
// counts that are used, and split splits others. It needs counts on two or more days after that of the sowing.
func (c *Counts) time(s *batch.Sowing, trays []series, split *splitter) {
	if !s.FromSeed || len(trays) == 0 {
		return
	}
	if c.Rows[0].Date <= s.Sown {
		trays = split.series(s, c.after(s.Sown))
	}
	days, everUp := cumulative(s.Sown, trays)
	if len(days) < 2 {
		return
	}
	t50, before, ok := estimate.T50(days, everUp)
	switch {
	case before:
		c.BeforeDay = records.Known(days[0])
	case ok:
		c.T50 = records.Known(t50)
		mean, known := estimate.MeanGerminationTime(days, everUp)
		c.MeanDays = Num{Value: mean, Known: known}
	}
}

// after are the counts after a day: those of the day of sowing are dropped before all
// else, and a date before it is a mistype.
func (c *Counts) after(day records.Date) []records.Count {
	rows := c.Rows // by date
	for len(rows) > 0 && rows[0].Date <= day {
		rows = rows[1:]
	}
	return rows
}

// cumulative is what had ever come up in the batch by each day of a count, days since
// sowing. A tray keeps its figure until it is counted again and has none before its
// first; one whose cells looked at change is left out.
func cumulative(sown records.Date, trays []series) (days, everUp []float64) {
	trays = batch.Filter(trays, series.steady)
	var dates []records.Date
	for i := range trays {
		dates = append(dates, trays[i].dates...)
	}
	slices.Sort(dates)
	dates = slices.Compact(dates)
	days, everUp = make([]float64, len(dates)), make([]float64, len(dates))
	for i, d := range dates {
		days[i] = float64(d - sown)
		for k := range trays {
			everUp[i] += trays[k].by(d)
		}
	}
	return days, everUp
}

// steady reports whether as many cells were looked at each time.
func (s series) steady() bool {
	return !slices.ContainsFunc(s.cells, func(cells float64) bool { return cells != s.cells[0] })
}

// by is what had ever come up by a day, in cells.
func (s *series) by(d records.Date) float64 {
	if i := s.last(d); i >= 0 {
		return s.everUp[i]
	}
	return 0
}

// timing returns how fast each group came up: the median of its batches that have
// a T50. A group of which every batch was up before its first count has no row; the
// page of what is missing names those batches.
func timing(all []*Counted) []Timing {
	timed := batch.Filter(all, func(c *Counted) bool { return c.T50.Known || c.BeforeDay.Known })
	groups := batch.SplitBy(timed, (*Counted).GroupRank).Groups
	table := slices.Grow([]Timing(nil), len(groups))
	for _, of := range groups {
		if t := timingOf(of[0].Group(), of); t.Batches > 0 {
			table = append(table, t)
		}
	}
	return table
}

func timingOf(g batch.Group, batches []*Counted) Timing {
	t := Timing{Group: g}
	var times, means []float64
	for _, c := range batches {
		if c.CountedEarly {
			t.CountedEarly++
		}
		if c.BeforeDay.Known {
			t.Before++
			t.BeforeDay = records.Known(max(t.BeforeDay.Value, c.BeforeDay.Value))
			continue
		}
		times, means = append(times, c.T50.Value), append(means, c.MeanDays.Value)
	}
	if t.Batches = len(times); t.Batches > 0 {
		t.T50, t.Mean = rate.Median(times), rate.Median(means)
		t.Earliest, t.Latest = records.Known(slices.Min(times)), records.Known(slices.Max(times))
	}
	return t
}
