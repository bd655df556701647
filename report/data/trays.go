package data

import (
	"traybook/report"
	"traybook/report/rate"
	"traybook/report/room"
	"traybook/report/trays"
)

// payback has a row for each pair of codes, the dearer first (rule "Pair"): what one has
// over the other and whether that pays its price (rules "Gain a use", "The average tray",
// "Break-even", "What would flip it").
func payback(r *report.Report) File {
	type row = trays.Payback
	c := func(name string, of func(row) rate.Num) column[row] {
		return column[row]{name, func(p row) Cell { return maybe(of(p)) }}
	}
	return table("payback", 2, r.Trays.Payback,
		column[row]{"tray", func(p row) Cell { return str(p.Tray) }},
		column[row]{"other", func(p row) Cell { return str(p.Other) }},
		column[row]{"cells", func(p row) Cell { return num(p.Cells) }},
		column[row]{"matches", func(p row) Cell { return num(p.Matches) }},
		column[row]{"dates", func(p row) Cell { return num(p.Dates) }},
		c("difference", func(p row) rate.Num { return p.Difference }),
		c("difference_low", func(p row) rate.Num { return p.DifferenceLow }),
		c("difference_high", func(p row) rate.Num { return p.DifferenceHigh }),
		c("value", func(p row) rate.Num { return p.Value }),
		c("gain", func(p row) rate.Num { return p.Gain }),
		c("gain_low", func(p row) rate.Num { return p.GainLow }),
		c("gain_high", func(p row) rate.Num { return p.GainHigh }),
		c("price", func(p row) rate.Num { return p.Price }),
		c("other_price", func(p row) rate.Num { return p.OtherPrice }),
		c("life_uses", func(p row) rate.Num { return p.Life.Uses }),
		c("other_life_uses", func(p row) rate.Num { return p.OtherLife.Uses }),
		c("minutes", func(p row) rate.Num { return p.Minutes }),
		c("other_minutes", func(p row) rate.Num { return p.OtherMinutes }),
		c("uses_per_season", func(p row) rate.Num { return p.UsesPerSeason }),
		c("payback_uses", func(p row) rate.Num { return p.PaybackUses }),
		c("payback_seasons", func(p row) rate.Num { return p.PaybackSeasons }),
		c("worth_today", func(p row) rate.Num { return p.WorthToday }),
		c("break_even_plants", func(p row) rate.Num { return p.BreakEvenPlants }),
		c("flip_value", func(p row) rate.Num { return p.FlipValue }),
		c("flip_price", func(p row) rate.Num { return p.FlipPrice }),
		column[row]{"half_life_pays", func(p row) Cell { return maybeYes(p.HalfLifePays) }},
		column[row]{"verdict", func(p row) Cell { return str(p.Verdict) }},
	)
}

// matches are the sowings side by side that payback rests on (rule "Matched sowings").
func matches(r *report.Report) File {
	type row = trays.Match
	return table("matches", 3, r.Trays.Matches,
		column[row]{"tray", func(m row) Cell { return str(m.Tray) }},
		column[row]{"other", func(m row) Cell { return str(m.Other) }},
		column[row]{"match", func(m row) Cell { return num(m.Number) }},
		column[row]{"crop", func(m row) Cell { return str(m.Crop) }},
		column[row]{"variety", func(m row) Cell { return str(m.Variety) }},
		column[row]{"lot", func(m row) Cell { return str(m.Lot) }},
		column[row]{"first_sown", func(m row) Cell { return date(m.FirstSown) }},
		column[row]{"cells_tray", func(m row) Cell { return num(m.CellsTray) }},
		column[row]{"usable_tray", func(m row) Cell { return num(m.UsableTray) }},
		column[row]{"cells_other", func(m row) Cell { return num(m.CellsOther) }},
		column[row]{"usable_other", func(m row) Cell { return num(m.UsableOther) }},
		column[row]{"difference", func(m row) Cell { return num(m.Difference) }},
	)
}

// nextTray has a row for each tray that could be bought beyond those owned (rule "The
// next tray").
func nextTray(r *report.Report) File {
	type row = trays.NextTray
	return table("next_tray", 3, r.Trays.NextTray,
		column[row]{"tray", func(n row) Cell { return str(n.Tray) }},
		column[row]{"other", func(n row) Cell { return str(n.Other) }},
		column[row]{"nth", func(n row) Cell { return num(n.Nth) }},
		column[row]{"owned", func(n row) Cell { return num(n.Owned) }},
		column[row]{"uses", func(n row) Cell { return num(n.Uses) }},
		column[row]{"payback_seasons", func(n row) Cell { return maybe(n.PaybackSeasons) }},
		column[row]{"worth_today", func(n row) Cell { return maybe(n.WorthToday) }},
		column[row]{"pays", func(n row) Cell { return maybeYes(n.Pays) }},
		column[row]{"pays_low", func(n row) Cell { return maybeYes(n.PaysLow) }},
		column[row]{"pays_high", func(n row) Cell { return maybeYes(n.PaysHigh) }},
	)
}

// trial is how many sowing dates would tell a difference (rule "Trial").
func trial(r *report.Report) File {
	type row = trays.Trial
	return table("trial", 3, r.Trays.Trial,
		column[row]{"tray", func(t row) Cell { return str(t.Tray) }},
		column[row]{"other", func(t row) Cell { return str(t.Other) }},
		column[row]{"difference", func(t row) Cell { return num(t.Difference) }},
		column[row]{"s", func(t row) Cell { return maybe(t.S) }},
		column[row]{"sowings", func(t row) Cell { return maybe(t.Sowings) }},
	)
}

// load is how full each place was over a season (rule "Room").
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

// inUse is the level of each place from a day until its next row (rule "Room").
func inUse(r *report.Report) File {
	type row = room.InUse
	return table("in_use", 2, r.Room.InUse,
		column[row]{"date", func(u row) Cell { return date(u.Date) }},
		column[row]{"place", func(u row) Cell { return str(u.Place) }},
		column[row]{"trays", func(u row) Cell { return num(u.Trays) }},
		column[row]{"capacity", func(u row) Cell { return maybe(u.Capacity) }},
	)
}
