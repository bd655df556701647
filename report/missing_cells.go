package report

import "traybook/report/batch"

// floor is what a batch loses of which only some of the plants are written.
const floor = "the plants written are a floor, so these batches enter no usable rate unless a count and a look stand in"

// batchGaps are the cells and rows that batches may lack. Those of another log than
// sowings.csv are told where the book has that log.
var batchGaps = []batchGap{
	{func(_ *ground, b *Record) bool { return b.EndHow == batch.Assumed }, inSowing,
		gap{"date set out", "these batches are taken to have stood as long as their crop usually does, which moves heat, care and room",
			"set_out in sowings.csv, or a row with last = yes in out.csv", "sowings.csv", "set_out", typing, part}},
	{func(_ *ground, b *Record) bool {
		return b.Ended() && b.PlantsOut.Known && !b.Surplus.Known && !b.HasOuts
	}, inSowing,
		gap{"usable plants left over", floor, "surplus in sowings.csv (0 where none were left), or rows to surplus in out.csv", "sowings.csv", "surplus", typing, whole}},
	{func(_ *ground, b *Record) bool { return b.Ended() && b.HasOuts && !b.Cleared.Known() }, inLastOut,
		gap{"row that clears the batch", floor, "last = yes on the last row of the batch in out.csv", "out.csv", "last", typing, whole}},
	{func(_ *ground, b *Record) bool { return b.Ended() && !b.OutWritten && !b.Measured() }, inSowing,
		gap{"plants out", "usable plants are estimated from like batches, or unknown: these batches enter no usable rate",
			"plants_out and surplus in sowings.csv, or rows in out.csv", "sowings.csv", "plants_out", typing, whole}},
	{func(_ *ground, b *Record) bool { return b.Capped }, inSowing,
		gap{"cells sown, or plants out", "more usable plants are written than cells were sown; they count as the cells sown",
			"cells, trays or plants_out in sowings.csv", "sowings.csv", "cells", looking, part}},
	{func(on *ground, b *Record) bool { return b.FromSeed && !b.Counts.Written && on.dueForCount(b) }, whileOpen,
		gap{"count", "these batches say nothing about what came up", "a row in counts.csv: batch, date, emerged", "counts.csv", "emerged", asking, whole}},
	{func(_ *ground, b *Record) bool { return b.Counts.Written && !b.Counts.Looked.Known }, inCounts,
		gap{"cells looked at", "the counts of these batches cannot be used: neither their cells nor those of their tray code are written",
			"cells in counts.csv, or the tray code in trays.csv", "counts.csv", "cells", typing, whole}},
	{func(_ *ground, b *Record) bool { return b.Unnumbered }, inCounts,
		gap{"tray numbers", "counts without a tray number, beside counts with one, are left out of these batches",
			"tray in counts.csv, on all rows of a batch or on none", "counts.csv", "tray", typing, part}},
	{func(_ *ground, b *Record) bool { return b.Early }, whileOpen,
		gap{"later count", "these batches were counted too soon after sowing and are left out of what came up until they are counted again",
			"a later row in counts.csv", "counts.csv", "emerged", asking, whole}},
	{func(_ *ground, b *Record) bool { return b.CountedEarly && !b.Early }, nowhere,
		gap{"late enough last count", "more may have come up after the last count of these batches than the figures say",
			"a count once nothing more comes up, in counts.csv", "counts.csv", "emerged", 0, detail}},
	{func(_ *ground, b *Record) bool { return b.BeforeDay.Known }, nowhere,
		gap{"early enough first count", "more than half stood at the first count of these batches, so it cannot be told how fast they came up",
			"a count as the first seedlings show, in counts.csv", "counts.csv", "emerged", 0, detail}},
	{func(on *ground, b *Record) bool { return b.FromSeed && b.Lot == "" && on.hasLots }, inSowing,
		gap{"seed lot", "no seed cost of their own, no check against the packet and no trail for these batches", "lot in sowings.csv", "sowings.csv", "lot", typing, part}},
	{func(on *ground, b *Record) bool { return b.Lot != "" && !on.lots[b.Lot] }, perLot,
		gap{"row of the seed lot", "no seed cost of their own and no check against the packet for these batches", "a row for the lot in lots.csv", "lots.csv", "lot", looking, part}},
	{func(_ *ground, b *Record) bool { return !b.TrayCells.Known }, perTray,
		gap{"tray code", "figures that need the cells of a tray leave these batches out", "a row for the tray code in trays.csv", "trays.csv", "tray", looking, whole}},
	{func(_ *ground, b *Record) bool { return b.Ended() && !b.PlantsLooked.Known && !b.AllOut() }, nowhere,
		gap{"look at quality", "no usable plants can be reckoned from the count of these batches", "a row in scores.csv: batch, date, looked, usable",
			"scores.csv", "usable", 0, part}},
	{func(on *ground, b *Record) bool {
		return b.PlantsLooked.Known && !b.Planned.Known() && on.hasScores
	}, inSowing,
		gap{"planned date", "these looks say nothing about how long plants stay fit past their day", "planned in sowings.csv", "sowings.csv", "planned", typing, detail}},
	{func(_ *ground, b *Record) bool {
		return b.EndHow == batch.Open && !(b.Planned.Known() && b.Wanted.Known)
	}, inSowing,
		gap{"planned date or plants wanted of an open batch", "it cannot be told whether these batches will be late or too few",
			"planned and wanted in sowings.csv", "sowings.csv", "wanted", typing, whole}},
	{func(_ *ground, b *Record) bool { return b.ChamberAssumed && b.Ended() }, inSowing,
		gap{"day out of the chamber", "these batches are taken to have left the chamber when its batches usually do, which moves room and readings",
			"chamber_out in sowings.csv", "sowings.csv", "chamber_out", typing, detail}},
	{func(_ *ground, b *Record) bool { return b.Chamber != "" && b.Ended() && !b.Warmed }, nowhere,
		gap{"chamber readings", "no temperature beside what came up of these batches", "rows in chamber.csv for the days they stood there", "chamber.csv", "temp", 0, detail}},
}
