package data

import (
	"traybook/report"
	"traybook/report/years"
)

// changes sets each season beside the one before, the farm's (an empty crop) and each
// crop's, in parts that add up (rules "Year over year", "Interval of a change"). same,
// other_kinds and other_crops add up to change. other_crops is empty for a row of one
// crop. low, high and verdict speak of what like sowings did: the rest is what was grown,
// of which there is no chance to speak.
func changes(r *report.Report) File {
	type row = years.Change
	return table("years", 4, r.Years.Years,
		column[row]{"measure", func(c row) Cell { return str(c.Measure) }},
		column[row]{"crop", func(c row) Cell { return str(c.Crop) }},
		column[row]{"from", func(c row) Cell { return num(c.From) }},
		column[row]{"to", func(c row) Cell { return num(c.To) }},
		column[row]{"before", func(c row) Cell { return maybe(c.Before.Figure) }},
		column[row]{"after", func(c row) Cell { return maybe(c.After.Figure) }},
		column[row]{"change", func(c row) Cell { return num(c.Change) }},
		column[row]{"same", func(c row) Cell { return num(c.Same) }},
		column[row]{"other_kinds", func(c row) Cell { return num(c.OtherKinds) }},
		column[row]{"other_crops", func(c row) Cell { return maybe(c.OtherCrops) }},
		column[row]{"share", func(c row) Cell { return num(c.Share) }},
		column[row]{"low", func(c row) Cell { return maybe(c.Low) }},
		column[row]{"high", func(c row) Cell { return maybe(c.High) }},
		column[row]{"usual", func(c row) Cell { return maybe(c.Usual) }},
		column[row]{"verdict", func(c row) Cell { return str(c.Verdict) }},
	)
}

// heating is each season's heat beside its cold (rule "Heating and the weather").
// Degree-days are of Celsius, whatever the book writes. Fuel is empty unless all bills for
// heat in the book have a quantity in one unit: a part of the fuel over all of the cold
// would seem thrifty.
func heating(r *report.Report) File {
	type row = years.Heating
	return table("heating", 1, r.Years.Heating,
		column[row]{"season", func(h row) Cell { return num(h.Season) }},
		column[row]{"degree_days", func(h row) Cell { return num(h.DegreeDays) }},
		column[row]{"heat", func(h row) Cell { return maybe(h.Heat) }},
		column[row]{"per_degree_day", func(h row) Cell { return maybe(h.PerDegreeDay) }},
		column[row]{"fuel", func(h row) Cell { return maybe(h.Fuel) }},
		column[row]{"unit", func(h row) Cell { return str(h.Unit) }},
		column[row]{"fuel_per_degree_day", func(h row) Cell { return maybe(h.FuelPerDegreeDay) }},
	)
}
