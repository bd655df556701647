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
	f := &Figures{}
	for season := range b.Through() {
		first, after := b.Settings.SeasonDays(season)
		f.Load = append(f.Load, loads(benches, season, first, after)...)
	}
	for _, at := range benches {
		f.InUse = append(f.InUse, at.inUse()...)
	}
	slices.SortStableFunc(f.InUse, func(a, b InUse) int {
		return cmp.Or(cmp.Compare(a.Date, b.Date), cmp.Compare(a.Place, b.Place))
	})
	return f
}

// inUse is the load of a bench, a row whenever it changes.
func (at *bench) inUse() []InUse {
	var rows []InUse
	for _, step := range estimate.Occupancy(at.spans) {
		day := records.Date(step.Day)
		rows = append(rows, InUse{Date: day, Place: at.name, Trays: step.Amount, Capacity: at.on(day)})
	}
	return rows
}

// loads is a season's load of every bench on which anything stood.
func loads(benches []*bench, season int, first, after records.Date) []Load {
	var all []Load
	tightest := -1
	for _, at := range benches {
		load := at.load(first, after)
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

// load is the load of a bench from first until the day before after; a peak of 0
// where nothing stood.
func (at *bench) load(first, after records.Date) Load {
	load := Load{Place: at.name, Kind: at.kind, Uncounted: at.uncounted, Capacity: at.most(first, after)}
	spans := within(at.spans, first, after)
	peak, day, some := estimate.Peak(estimate.Occupancy(spans))
	if !some {
		return load
	}
	load.Peak, load.PeakDate = peak, records.Date(day)
	if !load.Capacity.Known {
		return load
	}
	over := estimate.Occupancy(append(spans, within(at.levels(), first, after)...))
	load.DaysOver = records.Known(estimate.DaysOver(over, noise, int(after)))
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

// within cuts spans to the days from first until the day before after.
func within(spans []estimate.Span, first, after records.Date) []estimate.Span {
	var cut []estimate.Span
	for _, s := range spans {
		s.Start, s.End = max(s.Start, int(first)), min(s.End, int(after))
		if s.End > s.Start {
			cut = append(cut, s)
		}
	}
	return cut
}
