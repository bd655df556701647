package data

import (
	"traybook/report"
	"traybook/report/room"
)

// load is how full each place was over a season (rule "Room"). Benches are in places,
// chambers and tray codes in trays. capacity, days_over and growth_left are empty where it
// is not written what a place holds; one that nothing stood in has no row.
func load(r *report.Report) File {
	type row = room.Load
	return table("room", 2, r.Room.Load,
		column[row]{"season", func(m row) Cell { return num(m.Season) }},
		column[row]{"place", func(m row) Cell { return str(m.Place) }},
		column[row]{"capacity", func(m row) Cell { return maybe(m.Capacity) }},
		column[row]{"peak", func(m row) Cell { return num(m.Peak) }},
		column[row]{"peak_date", func(m row) Cell { return date(m.PeakDate) }},
		column[row]{"days_over", func(m row) Cell { return maybe(m.DaysOver) }},
		column[row]{"growth_left", func(m row) Cell { return maybe(m.GrowthLeft) }},
	)
}

// inUse is the level of each place from a day until its next row (rule "Room"). Steps, not
// days: a level holds until the next row of its place, so a quiet winter takes one.
func inUse(r *report.Report) File {
	type row = room.InUse
	return table("in_use", 2, r.Room.InUse,
		column[row]{"date", func(u row) Cell { return date(u.Date) }},
		column[row]{"place", func(u row) Cell { return str(u.Place) }},
		column[row]{"trays", func(u row) Cell { return num(u.Trays) }},
		column[row]{"capacity", func(u row) Cell { return maybe(u.Capacity) }},
	)
}
