package germination

import (
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
	"traybook/report/rate"
)

// time finds how fast a batch from seed came up (rule "Timing"). It needs counts on
// two or more days after that of the sowing.
func (c *Counted) time() {
	if !c.FromSeed {
		return
	}
	days, everUp := c.cumulative()
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

// cumulative is what had ever come up in the batch by each day of a count, days
// since sowing. Counts of the day of sowing are dropped before all else, and a date
// before it is a mistype. A tray keeps its figure until it is counted again and has none
// before its first; one whose cells looked at change is left out.
func (c *Counted) cumulative() (days, everUp []float64) {
	later := c.Rows // by date
	for len(later) > 0 && later[0].Date <= c.Sown {
		later = later[1:]
	}
	kept := batch.Filter(seriesOf(&c.Sowing, later), func(s series) bool { return slices.Min(s.cells) == slices.Max(s.cells) })
	var dates []records.Date
	for _, s := range kept {
		dates = append(dates, s.dates...)
	}
	slices.Sort(dates)
	for _, d := range slices.Compact(dates) {
		total := 0.0
		for _, s := range kept {
			total += s.by(d)
		}
		days, everUp = append(days, float64(d-c.Sown)), append(everUp, total)
	}
	return days, everUp
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
	keys, groups := batch.GroupBy(timed, groupOf)
	slices.SortFunc(keys, batch.Order)
	var table []Timing
	for _, g := range keys {
		if t := timingOf(g, groups[g]); t.Batches > 0 {
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
