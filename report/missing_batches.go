package report

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
)

// ground is what the gaps of a batch are held against.
type ground struct {
	today records.Date
	t50   map[string]Num    // by crop, days
	lots  []germination.Lot // by code
}

// batchesMissing lists what batches lack, each gap with the batches it touches; a
// cell of a log only where the book has that log.
func batchesMissing(book *records.Book, today records.Date, all []*Record, g *germination.Figures) []Missing {
	on := ground{today, g.MedianT50, g.Lots}
	var list []Missing
	for _, b := range batchGaps {
		if b.log != "" && !has(book, b.log) {
			continue
		}
		touched := batch.Filter(all, func(one *Record) bool { return b.touches(on, one) })
		if len(touched) > 0 {
			list = append(list, b.of(codesOf(touched, func(one *Record) string { return one.Code })...))
		}
	}
	return list
}

// dueForCount reports whether the batch is old enough to have been counted.
func (on ground) dueForCount(b *Record) bool {
	return b.Ended() || float64(on.today-b.Sown) > typicalDays(on.t50, b.Crop)
}

func (on ground) knowsLot(code string) bool {
	_, found := slices.BinarySearchFunc(on.lots, code, func(l germination.Lot, code string) int { return cmp.Compare(l.Code, code) })
	return found
}

// batchGaps are the cells and rows that batches may lack, and the log they would
// stand in where that must be there for them to be told; none: sowings.csv.
var batchGaps = []struct {
	log     string
	touches func(ground, *Record) bool
	gap
}{
	{"", func(_ ground, b *Record) bool { return b.EndHow == batch.Assumed },
		gap{"date set out", "these batches are taken to have stood as long as their crop usually does, which moves heat, care and room",
			"set_out in sowings.csv, or a row with last = yes in out.csv"}},
	{"", func(_ ground, b *Record) bool {
		return b.Ended() && b.PlantsOut.Known && !b.Surplus.Known && !b.HasOuts
	},
		gap{"usable plants left over", "plants out are a floor, so these batches enter no usable rate unless a count and a look stand in",
			"surplus in sowings.csv (0 where none were left), or rows to surplus in out.csv"}},
	{"", func(_ ground, b *Record) bool { return b.Ended() && b.HasOuts && !b.Cleared.Known() },
		gap{"row that clears the batch", "plants out are a floor, so these batches enter no usable rate unless a count and a look stand in",
			"last = yes on the last row of the batch in out.csv"}},
	{"", func(_ ground, b *Record) bool { return b.Ended() && !b.OutWritten && !b.Measured() },
		gap{"plants out", "usable plants are estimated from like batches, or unknown: these batches enter no usable rate",
			"plants_out and surplus in sowings.csv, or rows in out.csv"}},
	{"", func(_ ground, b *Record) bool { return b.Capped },
		gap{"cells sown, or plants out", "more usable plants are written than cells were sown; they count as the cells sown",
			"cells, trays or plants_out in sowings.csv"}},
	{"counts.csv", func(on ground, b *Record) bool { return b.FromSeed && !b.Counts.Written && on.dueForCount(b) },
		gap{"count", "these batches say nothing about what came up", "a row in counts.csv: batch, date, emerged"}},
	{"counts.csv", func(_ ground, b *Record) bool { return b.Counts.Written && !b.Counts.Looked.Known },
		gap{"cells looked at", "the counts of these batches cannot be used: neither their cells nor those of their tray code are written",
			"cells in counts.csv, or the tray code in trays.csv"}},
	{"counts.csv", func(_ ground, b *Record) bool { return b.Unnumbered },
		gap{"tray numbers", "counts without a tray number, beside counts with one, are left out of these batches",
			"tray in counts.csv, on all rows of a batch or on none"}},
	{"counts.csv", func(_ ground, b *Record) bool { return b.Early },
		gap{"later count", "these batches were counted too soon after sowing and are left out of what came up until they are counted again",
			"a later row in counts.csv"}},
	{"counts.csv", func(_ ground, b *Record) bool { return b.CountedEarly && !b.Early },
		gap{"late enough last count", "more may have come up after the last count of these batches than the figures say",
			"a count once nothing more comes up, in counts.csv"}},
	{"counts.csv", func(_ ground, b *Record) bool { return b.BeforeDay.Known },
		gap{"early enough first count", "more than half stood at the first count of these batches, so it cannot be told how fast they came up",
			"a count as the first seedlings show, in counts.csv"}},
	{"lots.csv", func(_ ground, b *Record) bool { return b.FromSeed && b.Lot == "" },
		gap{"seed lot", "no seed cost of their own, no check against the packet and no trail for these batches", "lot in sowings.csv"}},
	{"lots.csv", func(on ground, b *Record) bool { return b.Lot != "" && !on.knowsLot(b.Lot) },
		gap{"row of the seed lot", "no seed cost of their own and no check against the packet for these batches", "a row for the lot in lots.csv"}},
	{"trays.csv", func(_ ground, b *Record) bool { return !b.TrayCells.Known },
		gap{"tray code", "figures that need the cells of a tray leave these batches out", "a row for the tray code in trays.csv"}},
	{"scores.csv", func(_ ground, b *Record) bool { return b.Ended() && !b.PlantsLooked.Known && !b.AllOut() },
		gap{"look at quality", "no usable plants can be reckoned from the count of these batches", "a row in scores.csv: batch, date, looked, usable"}},
	{"scores.csv", func(_ ground, b *Record) bool { return b.PlantsLooked.Known && !b.Planned.Known() },
		gap{"planned date", "these looks say nothing about how long plants stay fit past their day", "planned in sowings.csv"}},
	{"", func(_ ground, b *Record) bool {
		return b.EndHow == batch.Open && !(b.Planned.Known() && b.Wanted.Known)
	},
		gap{"planned date or plants wanted of an open batch", "it cannot be told whether these batches will be late or too few",
			"planned and wanted in sowings.csv"}},
	{"", func(_ ground, b *Record) bool { return b.Chamber != "" && !b.ChamberOut.Known() && b.Ended() },
		gap{"day out of the chamber", "these batches count as on the bench from sowing on", "chamber_out in sowings.csv"}},
	{"chamber.csv", func(_ ground, b *Record) bool { return b.Chamber != "" && b.ChamberOut.Known() && !b.Warmed },
		gap{"chamber readings", "no temperature beside what came up of these batches", "rows in chamber.csv for the days they stood there"}},
}
