package sowing

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
	"traybook/report/room"
)

// place is the benches or the trays of one code, and what wishes would put there.
type place struct {
	name  string
	kind  room.PlaceKind
	spans []estimate.Span
	holds func(records.Date) Num
}

// WeeksOf returns the room that all wishes together would take, week by week, beside
// what there is of it (rule "Wishes"): benches first, then codes by bytes. It is an "if":
// nothing that stands in the house is in it.
func WeeksOf(b *batch.Batches, wishes []Wish) []Week {
	var weeks []Week
	for _, at := range placesOf(b, batch.Filter(wishes, Wish.TakesRoom)) {
		weeks = append(weeks, at.weeks()...)
	}
	slices.SortStableFunc(weeks, func(a, b Week) int { return cmp.Compare(a.Monday, b.Monday) })
	return weeks
}

// TakesRoom reports whether the room that a wish would take is known: its days, its
// code and its trays.
func (w Wish) TakesRoom() bool { return w.SowBy.Known() && w.Trays.Known }

// Over reports whether more would be taken than there is.
func (w Week) Over() bool { return w.Capacity.Known && w.Taken > w.Capacity.Value+noise }

// placesOf sets the wishes on the benches and in the trays of their codes.
func placesOf(b *batch.Batches, wishes []Wish) []*place {
	benches := &place{name: room.BenchName, kind: room.BenchPlace, holds: func(records.Date) Num { return b.Settings.BenchPlaces }}
	names, split := batch.GroupBy(wishes, func(w Wish) string { return w.Code })
	slices.Sort(names)
	all := []*place{benches}
	for _, name := range names {
		code := &place{name: name, kind: room.TrayPlace, holds: ownedOf(b.Codes[name])}
		for _, w := range split[name] {
			trays := float64(w.Trays.Value)
			benches.add(w.SowBy, w.Planned, trays*b.Codes.Places(name))
			code.add(w.SowBy, w.Free, trays)
		}
		all = append(all, code)
	}
	return all
}

// ownedOf is how many trays of a code there are on a day; a code whose cells are known
// stands in trays.csv.
func ownedOf(c *batch.TrayCode) func(records.Date) Num {
	return func(d records.Date) Num {
		owned := c.OwnedOn(d)
		return Num{Value: float64(owned.Value), Known: owned.Known}
	}
}

// add puts an amount there from one day up to another.
func (at *place) add(from, to records.Date, amount float64) {
	at.spans = append(at.spans, estimate.Span{Start: int(from), End: int(to), Amount: amount})
}

// weeks is the most that is taken in every week in which anything is.
func (at *place) weeks() []Week {
	most := map[records.Date]Week{}
	steps := estimate.Occupancy(at.spans)
	for i, step := range steps[:max(len(steps)-1, 0)] { // the last leaves nothing
		day, end := records.Date(step.Day), records.Date(steps[i+1].Day)
		for ; step.Amount > 0 && day < end; day = mondayOf(day) + 7 {
			monday := mondayOf(day)
			if step.Amount > most[monday].Taken {
				most[monday] = Week{monday, at.name, at.kind, step.Amount, at.holds(day)}
			}
		}
	}
	var weeks []Week
	for _, w := range most {
		weeks = append(weeks, w)
	}
	slices.SortFunc(weeks, func(a, b Week) int { return cmp.Compare(a.Monday, b.Monday) })
	return weeks
}

// mondayOf is the first day of the week of a day.
func mondayOf(d records.Date) records.Date {
	return d - records.Date((int(d.Time().Weekday())+6)%7)
}
