package report

import (
	"slices"

	"traybook/records"
	"traybook/report/estimate"
)

// speed finds how fast each batch from seed came up, and each crop's median T50
// (rules 15, 64).
func (r *Report) speed() {
	times := map[string][]float64{}
	for _, b := range r.Batches {
		if !b.FromSeed {
			continue
		}
		b.speed()
		if b.T50.Known {
			times[b.Crop] = append(times[b.Crop], b.T50.Value)
		}
	}
	r.medianT50 = map[string]Num{}
	for crop, t := range times {
		r.medianT50[crop] = median(t)
	}
}

// median is missing where there is nothing.
func median(xs []float64) Num {
	if len(xs) == 0 {
		return Num{}
	}
	return records.Known(estimate.Median(xs))
}

// speed needs counts on two or more days.
func (b *Batch) speed() {
	days, everUp := b.cumulative()
	if len(days) < 2 {
		return
	}
	t50, before, ok := estimate.T50(days, everUp)
	switch {
	case before:
		b.BeforeDay = records.Known(days[0])
	case ok:
		b.T50 = records.Known(t50)
		mean, known := estimate.MeanGerminationTime(days, everUp)
		b.MeanDays = Num{Value: mean, Known: known}
	}
}

// cumulative is what had ever come up in the batch by each day of a count, days
// since sowing. A tray keeps its figure until it is counted again and holds none
// before its first; one whose cells looked at change, or which was counted on the
// day of sowing only, is left out (rule 64).
func (b *Batch) cumulative() (days, everUp []float64) {
	var kept []series
	var dates []records.Date
	for _, s := range b.countSeries {
		if s.dates[len(s.dates)-1] > b.Sown && slices.Min(s.cells) == slices.Max(s.cells) {
			kept = append(kept, s)
			dates = append(dates, s.dates...)
		}
	}
	slices.Sort(dates)
	for _, d := range slices.Compact(dates) {
		total := 0.0
		for _, s := range kept {
			total += s.by(d)
		}
		days, everUp = append(days, float64(d-b.Sown)), append(everUp, total)
	}
	return days, everUp
}

// by is what had ever come up by a day.
func (s *series) by(d records.Date) float64 {
	up := 0.0
	for i, date := range s.dates {
		if date <= d {
			up = s.everUp[i]
		}
	}
	return up
}

// timing returns how fast each group came up: the median of its batches that have
// a T50. A group of which every batch was up before its first count has no row; the
// page of what is missing names those batches.
func (r *Report) timing() []Timing {
	seeds := filter(r.Batches, func(b *Batch) bool { return b.FromSeed && (b.T50.Known || b.BeforeDay.Known) })
	keys, groups := groupBy(seeds, (*Batch).Group)
	slices.SortFunc(keys, groupOrder)
	var table []Timing
	for _, g := range keys {
		if t := timingOf(g, groups[g]); t.Batches > 0 {
			table = append(table, t)
		}
	}
	return table
}

func timingOf(g Group, batches []*Batch) Timing {
	t := Timing{Group: g}
	var times, means []float64
	for _, b := range batches {
		if b.CountedEarly {
			t.CountedEarly++
		}
		if b.BeforeDay.Known {
			t.Before++
			t.BeforeDay = records.Known(max(t.BeforeDay.Value, b.BeforeDay.Value))
			continue
		}
		times, means = append(times, b.T50.Value), append(means, b.MeanDays.Value)
	}
	if t.Batches = len(times); t.Batches > 0 {
		t.T50, t.Mean = median(times), median(means)
		t.Earliest, t.Latest = records.Known(slices.Min(times)), records.Known(slices.Max(times))
	}
	return t
}
