package records

import (
	"maps"
	"slices"
)

// event is a day on which something happened, and its cell. A planned day is none, nor
// is the last day that a bill covers: they may lie far ahead.
type event struct {
	row
	col   string
	day   Date
	batch Ref // none for the sowing itself
	apart int // days after every other at which it is odd; 0: never, or told elsewhere
}

// bought reports a purchase or a test: such a day may lie years before the first sowing.
func (e event) bought() bool { return e.col == "bought" || e.col == "tested" }

// planned is the day for which the batch was planned, where plants leave or are looked at.
func (e event) planned() Date {
	if of := e.batchOf(e.batch); of != nil && e.Name != "counts.csv" && e.col != "chamber_out" {
		return of.is.Planned
	}
	return 0
}

// The days after every other date of the book beyond which a date is odd.
const (
	oddGap    = 60  // of what belongs to a batch in the house
	oddPause  = 300 // of a sowing: a house may rest for most of a year
	oddBought = 365 // of a purchase
)

// events hands over every day on which something happened.
func (l *loader) events(see func(event)) {
	add := func(r row, col string, day Date, batch Ref, apart int) {
		if day.Known() {
			see(event{r, col, day, batch, apart})
		}
	}
	for e := range alive(l.sowings) {
		add(e.row, "sown", e.is.Sown, 0, oddPause)
		add(e.row, "chamber_out", e.is.ChamberOut, e.is.ref, oddGap)
		add(e.row, "set_out", e.is.SetOut, e.is.ref, oddGap)
	}
	for r := range l.batchRows() {
		add(r.row, "date", r.date, r.batch, oddGap)
	}
	for e := range alive(l.costs) {
		add(e.row, "date", e.is.Date, 0, 0)
	}
	for e := range alive(l.chamber) {
		add(e.row, "time", e.is.Date, 0, 0)
	}
	for e := range alive(l.house) {
		add(e.row, "date", e.is.Date, 0, 0)
	}
	for e := range alive(l.changes) {
		add(e.row, "date", e.is.Date, 0, 0)
	}
	for e := range alive(l.trays) {
		add(e.row, "bought", e.is.Bought, 0, 0)
	}
	for e := range alive(l.lots) {
		add(e.row, "bought", e.is.Bought, 0, 0)
		add(e.row, "tested", e.is.Tested, 0, 0)
	}
}

// latest is the last day on which something happened, and the last before it; unknown
// where there is none.
func (l *loader) latest() (last, before Date) {
	l.events(func(e event) {
		switch {
		case e.day > last:
			last, before = e.day, last
		case e.day < last:
			before = max(before, e.day)
		}
	})
	return last, before
}

// daysOn lists, each once and in order, the days on which something happened.
func (l *loader) daysOn() []Date {
	on := map[Date]bool{}
	last := Date(0)
	l.events(func(e event) {
		if e.day != last {
			on[e.day], last = true, e.day
		}
	})
	return slices.Sorted(maps.Keys(on))
}

// checkAhead warns of a day so far after every other date of the book that it is
// likely mistyped: today would be that day. Nothing is said where it is the first on
// which anything but a purchase happened.
func (l *loader) checkAhead() {
	last, before := l.latest()
	var at []event
	begun := false
	l.events(func(e event) {
		if e.day == last {
			at = append(at, e)
		}
		begun = begun || e.day < last && !e.bought()
	})
	if !begun || backed(at, before) {
		return
	}
	for _, e := range at {
		near := before
		near = max(near, e.planned())
		if gap := int(last - near); gap > e.apart {
			e.doubt("moves-today", e.col, e.col+" "+last.String()+" is "+plural(gap, "day")+" after every other date of the book",
				"a date no more than "+plural(e.apart, "day")+" after another is expected", "this moves today: is it right?")
		}
	}
}

// backed reports whether the events of one day bear each other out: by another log's, a
// sowing after no more than a long pause, or plants of several batches. Counts of
// several batches do not: the day of a round of counts is typed once and filled down.
func backed(at []event, before Date) bool {
	logs, batches := map[string]bool{}, map[Ref]bool{}
	for _, e := range at {
		if e.apart == 0 || e.apart == oddPause && int(e.day-before) <= oddPause {
			return true
		}
		logs[e.Name] = true
		if e.Name != "counts.csv" && e.batch != 0 {
			batches[e.batch] = true
		}
	}
	return len(logs) > 1 || len(batches) > 1
}

// lastButOne is the last date but one of the book, of what happened and of what is
// planned, a day counted as often as it stands there.
func (l *loader) lastButOne() Date {
	var last, before Date
	add := func(d Date) {
		last, before = max(last, d), max(before, min(last, d))
	}
	l.events(func(e event) { add(e.day) })
	for e := range alive(l.sowings) {
		add(e.is.Planned)
	}
	for e := range alive(l.costs) {
		add(e.is.From)
		add(e.is.Until)
	}
	for e := range alive(l.wishes) {
		add(e.is.Planned)
	}
	for e := range alive(l.changes) {
		add(e.is.Until)
	}
	return before
}

// checkBought reports purchases of more than a year after every other date of the book.
func (l *loader) checkBought() {
	other := l.lastButOne()
	late := func(r row, day Date) {
		if day-other > oddBought && other.Known() {
			r.problem("bought-late", "bought", "bought "+day.String()+" is "+plural(int(day-other), "day")+" after every other date of the book",
				"a day no more than a year after another is expected", "is the year right?")
		}
	}
	for e := range alive(l.trays) {
		late(e.row, e.is.Bought)
	}
	for e := range alive(l.lots) {
		late(e.row, e.is.Bought)
	}
}
