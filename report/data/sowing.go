package data

import (
	"traybook/records"
	"traybook/report"
	"traybook/report/sowing"
)

// sow is how much to sow, for what one sowing is usually asked for and for 100 plants
// (rule "How much to sow"). Whole cells and trays, rounded up: part of a tray is a tray on
// the bench. Empty where no one sowing of a size worth making is that sure.
func sow(r *report.Report) File {
	type row = sowing.Row
	return table("sowing", 4, r.Sowing.Sowing,
		column[row]{"crop", func(s row) Cell { return str(s.Crop) }},
		column[row]{"variety", func(s row) Cell { return str(s.Variety) }},
		column[row]{"cells", func(s row) Cell { return maybe(s.Group.Cells) }},
		column[row]{"kind", func(s row) Cell { return str(s.Kind) }},
		column[row]{"batches", func(s row) Cell { return num(s.Rate.Batches) }},
		column[row]{"rate", func(s row) Cell { return maybe(s.Rate.Share) }},
		column[row]{"rate_used", func(s row) Cell { return maybe(s.RateUsed) }},
		column[row]{"rho", func(s row) Cell { return maybe(s.Rho) }},
		column[row]{"target", func(s row) Cell { return maybe(s.Target) }},
		column[row]{"cells_to_sow", func(s row) Cell { return maybe(s.CellsToSow) }},
		column[row]{"trays_to_sow", func(s row) Cell { return maybe(s.TraysToSow) }},
		column[row]{"cells_per_100", func(s row) Cell { return maybe(s.CellsPer100) }},
		column[row]{"trays_per_100", func(s row) Cell { return maybe(s.TraysPer100) }},
		column[row]{"left_over", func(s row) Cell { return maybe(s.LeftOver) }},
	)
}

// balance is what each crop of a season gave beside what was wanted (rule "What to sow
// more of"). Only batches that have ended and say both what was wanted and what they gave.
// short and left_over are added up batch by batch, so one batch's plenty does not hide the
// want of another.
func balance(r *report.Report) File {
	type row = sowing.Balance
	return table("balance", 2, r.Sowing.Balance,
		column[row]{"season", func(b row) Cell { return num(b.Season) }},
		column[row]{"crop", func(b row) Cell { return str(b.Crop) }},
		column[row]{"batches", func(b row) Cell { return num(b.Batches) }},
		column[row]{"wanted", func(b row) Cell { return num(b.Wanted) }},
		column[row]{"usable", func(b row) Cell { return num(b.Usable) }},
		column[row]{"short_batches", func(b row) Cell { return num(b.ShortBatches) }},
		column[row]{"short", func(b row) Cell { return num(b.Short) }},
		column[row]{"left_over", func(b row) Cell { return num(b.LeftOver) }},
	)
}

// wishes is what each row of wishes.csv takes (rule "Wishes"). tray is the code taken, be
// the row's own blank; batches those that the rate rests on, none where there is no rate.
func wishes(r *report.Report) File {
	type row = sowing.Wish
	return table("wishes", 1, r.Sowing.Wishes,
		column[row]{"row", func(w row) Cell { return num(w.Row) }},
		column[row]{"crop", func(w row) Cell { return str(w.Crop) }},
		column[row]{"variety", func(w row) Cell { return str(w.Variety) }},
		column[row]{"planned", func(w row) Cell { return date(w.Planned) }},
		column[row]{"tray", func(w row) Cell { return str(w.Code) }},
		column[row]{"plants", func(w row) Cell { return num(w.Plants) }},
		column[row]{"cells", func(w row) Cell { return maybe(w.Cells) }},
		column[row]{"trays", func(w row) Cell { return maybe(w.Trays) }},
		column[row]{"seeds", func(w row) Cell { return maybe(w.Seeds) }},
		column[row]{"sow_by", func(w row) Cell { return date(w.SowBy) }},
		column[row]{"batches", func(w row) Cell { return maybe(records.Maybe[int]{Value: w.Rate.Batches, Known: w.Basis != ""}) }},
	)
}
