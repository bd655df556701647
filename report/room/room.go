package room

import (
	"cmp"
	"math"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
)

// New computes the load of benches, chambers and tray codes where the batches stood
// so (rule "Room"): as they did, or if the farm grew or switched codes.
func New(b *batch.Batches, standings []batch.Standing) *Figures {
	benches := benchesOf(b, standings)
	for _, at := range benches {
		at.addUp()
	}
	f := &Figures{InUse: inUse(benches)}
	for season := range b.Through() {
		first, after := b.Settings.SeasonDays(season)
		f.Load = append(f.Load, loads(benches, season, first, after)...)
	}
	return f
}

// inUse is the load of the benches, a row whenever one changes, by day, then place.
func inUse(benches []*bench) []InUse {
	byName := slices.SortedStableFunc(slices.Values(benches), func(a, b *bench) int { return cmp.Compare(a.name, b.name) })
	many := 0
	for _, at := range byName {
		many += len(at.load)
	}
	rows := make([]InUse, 0, many)
	for _, at := range byName {
		for _, step := range at.load {
			day := records.Date(step.Day)
			rows = append(rows, InUse{Date: day, Place: at.name, Trays: step.Amount, Capacity: at.on(day)})
		}
	}
	return batch.SplitBy(rows, func(row InUse) int32 { return int32(row.Date) }).List
}

// loads is a season's load of every bench on which anything stood.
func loads(benches []*bench, season int, first, after records.Date) []Load {
	var all []Load
	tightest := -1
	for _, at := range benches {
		load := at.loadIn(first, after)
		if load.Peak == 0 {
			continue
		}
		load.Season = season
		all = append(all, load)
		if load.GrowthLeft.Known && (tightest < 0 || load.GrowthLeft.Value < all[tightest].GrowthLeft.Value) {
			tightest = len(all) - 1
		}
	}
	if tightest >= 0 {
		all[tightest].BindsFirst = true
	}
	return all
}

// noise is what added parts of trays may miss a whole number by: no tenth of a tray has an
// exact float64.
const noise = 1e-9

// loadIn is the load of a bench from first until the day before after; a peak of 0
// where nothing stood.
func (at *bench) loadIn(first, after records.Date) Load {
	load := Load{Place: at.name, Kind: at.kind, Uncounted: at.uncounted, Capacity: at.most(first, after)}
	peak, day, some := estimate.Peak(within(at.load, first, after))
	if !some {
		return load
	}
	load.Peak, load.PeakDate = peak, records.Date(day)
	if !load.Capacity.Known {
		return load
	}
	load.DaysOver = records.Known(estimate.DaysOver(within(at.over, first, after), noise, int(after)))
	load.GrowthLeft = records.Known(growthLeft(load.Capacity.Value, load.Peak))
	return load
}

// growthLeft is by what share all could grow; what differs by noise alone is full.
func growthLeft(capacity, peak float64) float64 {
	if math.Abs(capacity-peak) < noise*peak {
		return 0
	}
	return capacity/peak - 1
}

// within cuts the levels of all time to the days from first until the day before after.
func within(steps []estimate.Step, first, after records.Date) []estimate.Step {
	byDay := func(s estimate.Step, d records.Date) int { return cmp.Compare(s.Day, int(d)) }
	from, begins := slices.BinarySearchFunc(steps, first, byDay)
	to, _ := slices.BinarySearchFunc(steps, after, byDay)
	if begins || from == 0 || steps[from-1].Amount == 0 {
		return steps[from:to]
	}
	stood := estimate.Step{Day: int(first), Amount: steps[from-1].Amount} // since before
	return append([]estimate.Step{stood}, steps[from:to]...)
}
