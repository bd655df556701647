package data

import (
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/rate"
)

// emergence has a row for each group (rule "Emergence"); what is of a seed stands where
// the group has one number of seeds a cell (rule "Per seed"). low and high are the ends of
// the interval, empty where there are too few batches; rho and df say how wide scatter
// made it. trays counts those that were counted apart. batches are those that enter the
// rate: a batch with no usable count is in none of these numbers.
func emergence(r *report.Report) File {
	type row = germination.Emergence
	return table("emergence", 5, r.Germination.Emergence, join(
		groupColumns(func(e row) batch.Group { return e.Group }),
		[]column[row]{
			{"batches", func(e row) Cell { return num(e.Batches) }},
			{"trays", func(e row) Cell { return num(e.Trays) }},
			{"cells_looked_at", func(e row) Cell { return num(e.N) }},
			{"emerged", func(e row) Cell { return num(e.X) }},
			{"emergence", func(e row) Cell { return maybe(e.Share) }},
			{"low", func(e row) Cell { return maybe(e.Low) }},
			{"high", func(e row) Cell { return maybe(e.High) }},
			{"rho", func(e row) Cell { return maybe(e.Rho) }},
			{"df", func(e row) Cell { return maybe(e.DF) }},
			{"seeds_per_cell", func(e row) Cell { return maybe(e.SeedsPerCell) }},
			{"seed_rate", func(e row) Cell { return maybe(e.SeedRate) }},
			{"seed_low", func(e row) Cell { return maybe(e.SeedLow) }},
			{"seed_high", func(e row) Cell { return maybe(e.SeedHigh) }},
		})...)
}

// differences sets each variety against the others of its crop (rule "Varieties"). A
// difference is in shares of 1 and is signed: above 0 more came up than of the others.
// Where no like sowings stand on the other side, difference is empty and the verdict says
// why.
func differences(r *report.Report) File {
	type row = germination.Difference
	return table("differences", 3, r.Germination.Differences,
		column[row]{"season", func(d row) Cell { return num(d.Season) }},
		column[row]{"crop", func(d row) Cell { return str(d.Crop) }},
		column[row]{"variety", func(d row) Cell { return str(d.Variety) }},
		column[row]{"batches", func(d row) Cell { return num(d.Batches) }},
		column[row]{"other_batches", func(d row) Cell { return num(d.OtherBatches) }},
		column[row]{"difference", func(d row) Cell { return maybe(d.Difference) }},
		column[row]{"low", func(d row) Cell { return maybe(d.Low) }},
		column[row]{"high", func(d row) Cell { return maybe(d.High) }},
		column[row]{"verdict", func(d row) Cell { return str(d.Words()) }},
	)
}

// lots sets what came up of a lot against its packet, a seed (rule "Lots").
// cells_looked_at and came_up are cells: seeds are not counted. label, allowance and
// minimum are shares of 1. rate, low and high speak of one seed, so they are empty where
// cells held several: a full cell hides how many of its seeds failed. below is empty where
// there was nothing to compare.
func lots(r *report.Report) File {
	type row = germination.Lot
	return table("lots", 1, r.Germination.Lots,
		column[row]{"lot", func(l row) Cell { return str(l.Code) }},
		column[row]{"crop", func(l row) Cell { return str(l.Crop) }},
		column[row]{"variety", func(l row) Cell { return str(l.Variety) }},
		column[row]{"batches", func(l row) Cell { return num(l.Batches) }},
		column[row]{"cells_looked_at", func(l row) Cell { return num(l.N) }},
		column[row]{"came_up", func(l row) Cell { return num(l.X) }},
		column[row]{"rate", func(l row) Cell { return maybe(l.SeedRate) }},
		column[row]{"low", func(l row) Cell { return maybe(l.SeedLow) }},
		column[row]{"high", func(l row) Cell { return maybe(l.SeedHigh) }},
		column[row]{"label", func(l row) Cell { return maybe(l.Label) }},
		column[row]{"allowance", func(l row) Cell { return maybe(l.Allowance) }},
		column[row]{"minimum", func(l row) Cell { return maybe(l.Minimum) }},
		column[row]{"below", func(l row) Cell { return str(l.Below) }},
	)
}

// timing is how fast groups came up (rule "Timing"). A group without any T50 has no row;
// pages say why. Days run from sowing and are parts of days, as a straight line between
// two counts gives them. earliest and latest are the fastest and the slowest batch, not an
// interval.
func timing(r *report.Report) File {
	type row = germination.Timing
	return table("timing", 5, withBatches(r.Germination.Timing, func(t row) int { return t.Batches }), join(
		groupColumns(func(t row) batch.Group { return t.Group }),
		[]column[row]{
			{"batches", func(t row) Cell { return num(t.Batches) }},
			{"t50_days", func(t row) Cell { return maybe(t.T50) }},
			{"earliest", func(t row) Cell { return maybe(t.Earliest) }},
			{"latest", func(t row) Cell { return maybe(t.Latest) }},
			{"mean_days", func(t row) Cell { return maybe(t.Mean) }},
		})...)
}

// losses is what died by the cause written; an empty cause is none written. Cells are
// those of the column lost in counts.csv, so a loss that nobody wrote is not here, also
// where a later count found fewer. A batch that lost to two causes counts with both.
func losses(r *report.Report) File {
	type row = germination.Loss
	return table("losses", 3, r.Germination.Losses,
		column[row]{"season", func(l row) Cell { return num(l.Season) }},
		column[row]{"crop", func(l row) Cell { return str(l.Crop) }},
		column[row]{"cause", func(l row) Cell { return str(l.Cause) }},
		column[row]{"cells", func(l row) Cell { return num(l.Cells) }},
		column[row]{"batches", func(l row) Cell { return num(l.Batches) }},
	)
}

// weeks is what came up by week of sowing, ISO 8601 (rule "Losses, weeks, chambers"). The
// week is that of the sowing, not of the count: what it tells of is what the seed met
// with.
func weeks(r *report.Report) File {
	type row = germination.Week
	return table("weeks", 3, r.Germination.Weeks, join(
		[]column[row]{
			{"season", func(w row) Cell { return num(w.Season) }},
			{"crop", func(w row) Cell { return str(w.Crop) }},
			{"week", func(w row) Cell { return str(w.Week) }},
		},
		emergedColumns(func(w row) rate.Rate { return w.Rate }))...)
}

// climate is what came up by how warm the days' highs were, in bands of Celsius, all
// seasons together (rule "Climate"). band is the lower end of the band of highs; the
// lowest band has a number of its own far below. what is one word today and leaves room
// for another reading in the same table.
func climate(r *report.Report) File {
	type row = germination.Climate
	return table("climate", 3, r.Germination.Climate, join(
		[]column[row]{
			{"crop", func(c row) Cell { return str(c.Crop) }},
			{"what", func(row) Cell { return str("high") }},
			{"band", func(c row) Cell { return num(c.Band) }},
		},
		emergedColumns(func(c row) rate.Rate { return c.Rate }))...)
}

// emergedColumns are an emergence with its sample and its interval.
func emergedColumns[T any](of func(T) rate.Rate) []column[T] {
	return append([]column[T]{
		{"batches", func(t T) Cell { return num(of(t).Batches) }},
		{"cells_looked_at", func(t T) Cell { return num(of(t).N) }},
		{"emerged", func(t T) Cell { return num(of(t).X) }},
	}, shareColumns("emergence", of)...)
}

// chambers is how warm each chamber was and what came up of batches that stood in it.
// Readings are all of the season's, whether a batch stood there or not; a chamber with
// readings and no batch has a row without emergence.
func chambers(r *report.Report) File {
	type row = germination.Chamber
	return table("chambers", 2, r.Germination.Chambers,
		column[row]{"season", func(c row) Cell { return num(c.Season) }},
		column[row]{"chamber", func(c row) Cell { return str(c.Chamber) }},
		column[row]{"batches", func(c row) Cell { return num(c.Batches) }},
		column[row]{"emergence", func(c row) Cell { return maybe(c.Share) }},
		column[row]{"readings", func(c row) Cell { return num(c.Readings) }},
		column[row]{"mean_temp", func(c row) Cell { return degrees(r, c.MeanTemp) }},
		column[row]{"low_temp", func(c row) Cell { return degrees(r, c.LowTemp) }},
		column[row]{"high_temp", func(c row) Cell { return degrees(r, c.HighTemp) }},
	)
}

// degrees puts a temperature in the book's own degrees.
func degrees(r *report.Report, celsius rate.Num) Cell {
	return maybe(only(celsius.Known, r.Book.Settings.Degrees(celsius.Value)))
}
