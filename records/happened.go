package records

import "slices"

// event is a day on which something happened, and its cell. A planned day is none, nor
// is the last day that a bill covers: they may lie far ahead.
type event struct {
	*row
	col     string
	day     Date
	planned Date // for when its batch was planned, where plants leave or are looked at
	batch   string
	bought  bool // or tested: such a day may lie years before the first sowing
	apart   int  // days after every other at which it is odd; 0: never, or told elsewhere
}

// The days after every other date of the book beyond which a date is odd.
const (
	oddGap    = 60  // of what belongs to a batch in the house
	oddPause  = 300 // of a sowing: a house may rest for most of a year
	oddBought = 365 // of a purchase
)

// events lists every day on which something happened.
func (l *loader) events() []event {
	var all []event
	add := func(r *row, col string, day Date, of *entry[Sowing], apart int) {
		if !day.Known() {
			return
		}
		e := event{row: r, col: col, day: day, apart: apart, bought: col == "bought" || col == "tested"}
		if of != nil {
			e.batch = of.is.Code
		}
		if of != nil && r.Name != "counts.csv" && col != "chamber_out" {
			e.planned = of.is.Planned
		}
		all = append(all, e)
	}
	for e := range alive(l.sowings) {
		add(e.row, "sown", e.is.Sown, nil, oddPause)
		add(e.row, "chamber_out", e.is.ChamberOut, e, oddGap)
		add(e.row, "set_out", e.is.SetOut, e, oddGap)
	}
	for _, r := range l.batchRows() {
		add(r.row, "date", r.date, l.batch(r.batch), oddGap)
	}
	for e := range alive(l.costs) {
		add(e.row, "date", e.is.Date, nil, 0)
	}
	for e := range alive(l.chamber) {
		add(e.row, "time", e.is.Date, nil, 0)
	}
	for e := range alive(l.house) {
		add(e.row, "date", e.is.Date, nil, 0)
	}
	for e := range alive(l.changes) {
		add(e.row, "date", e.is.Date, nil, 0)
	}
	for e := range alive(l.trays) {
		add(e.row, "bought", e.is.Bought, nil, 0)
	}
	for e := range alive(l.lots) {
		add(e.row, "bought", e.is.Bought, nil, 0)
		add(e.row, "tested", e.is.Tested, nil, 0)
	}
	return all
}

// latest is the last day of some events, and the last before it; unknown where there is
// none.
func latest(all []event) (last, before Date) {
	for _, e := range all {
		last = max(last, e.day)
	}
	for _, e := range all {
		if e.day < last {
			before = max(before, e.day)
		}
	}
	return last, before
}

// checkAhead warns of a day so far after every other date of the book that it is
// likely mistyped: today would be that day. Nothing is said where it is the first on
// which anything but a purchase happened.
func (l *loader) checkAhead() {
	all := l.events()
	last, before := latest(all)
	begun := slices.ContainsFunc(all, func(e event) bool { return e.day < last && !e.bought })
	at := slices.DeleteFunc(all, func(e event) bool { return e.day < last })
	if !begun || backed(at, before) {
		return
	}
	for _, e := range at {
		near := before
		if e.planned.Known() {
			near = max(near, e.planned)
		}
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
	logs, batches := map[string]bool{}, map[string]bool{}
	for _, e := range at {
		if e.apart == 0 || e.apart == oddPause && int(e.day-before) <= oddPause {
			return true
		}
		logs[e.Name] = true
		if e.Name != "counts.csv" && e.batch != "" {
			batches[e.batch] = true
		}
	}
	return len(logs) > 1 || len(batches) > 1
}

// days lists every date of the book, of what happened and of what is planned.
func (l *loader) days() []Date {
	var all []Date
	for _, e := range l.events() {
		all = append(all, e.day)
	}
	for e := range alive(l.sowings) {
		all = append(all, e.is.Planned)
	}
	for e := range alive(l.costs) {
		all = append(all, e.is.From, e.is.Until)
	}
	for e := range alive(l.wishes) {
		all = append(all, e.is.Planned)
	}
	for e := range alive(l.changes) {
		all = append(all, e.is.Until)
	}
	return all
}

// checkBought reports purchases of more than a year after every other date of the book.
func (l *loader) checkBought() {
	days := l.days()
	slices.Sort(days)
	if len(days) < 2 {
		return
	}
	other := days[len(days)-2]
	late := func(r *row, day Date) {
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
