package report

import (
	"cmp"
	"slices"

	"traybook/records"
)

// missing lists what the records cannot tell: whole logs, then rows and cells that
// the logs lack, each with the batches it touches. Gaps of the trays' own prices
// and lives are told by the money figures.
func (r *Report) missing() {
	if len(r.Batches) == 0 {
		return
	}
	for _, g := range logGaps {
		if !r.has(g.log) {
			r.Missing = append(r.Missing, Missing{What: g.what, Costs: g.costs, Remedy: g.remedy})
		}
	}
	for _, g := range batchGaps {
		if g.log != "" && !r.has(g.log) {
			continue
		}
		if touched := filter(r.Batches, func(b *Batch) bool { return g.touches(r, b) }); len(touched) > 0 {
			r.Missing = append(r.Missing, Missing{What: g.what, Batches: codesOf(touched), Costs: g.costs, Remedy: g.remedy})
		}
	}
	for _, g := range lotGaps {
		r.Missing = appendGap(r.Missing, r.lotsThat(g.lack), g.what, g.costs, g.remedy)
	}
	for _, g := range settingGaps {
		if g.lack(r) {
			r.Missing = append(r.Missing, Missing{What: g.what, Costs: g.costs, Remedy: g.remedy})
		}
	}
}

func codesOf(batches []*Batch) []string {
	codes := make([]string, len(batches))
	for i, b := range batches {
		codes[i] = b.Code
	}
	return codes
}

// has reports whether the book has a log, or any row of it.
func (r *Report) has(log string) bool {
	if r.Book.Has(log) {
		return true
	}
	b := r.Book
	rows := map[string]int{"counts.csv": len(b.Counts), "scores.csv": len(b.Scores), "trays.csv": len(b.Trays), "lots.csv": len(b.Lots),
		"costs.csv": len(b.Costs), "chamber.csv": len(b.Chamber), "house.csv": len(b.House), "out.csv": len(b.Outs)}
	return rows[log] > 0
}

// logGap is a log that the book lacks.
type logGap struct{ log, what, costs, remedy string }

var logGaps = []logGap{
	{"trays.csv", "tray codes", "no cells of a tray, so no usable rates, no room and no answer to whether trays pay",
		"a row for each tray code in trays.csv: tray, kind, cells"},
	{"counts.csv", "germination counts", "nothing about what came up, by variety, lot or week",
		"a row for each count in counts.csv: batch, date, emerged"},
	{"scores.csv", "looks at quality", "nothing about how good the plants were and how long they stayed fit",
		"a row for each look in scores.csv: batch, date, looked, usable"},
	{"costs.csv", "costs", "no cost of a transplant beyond priced trays and lots",
		"a row for each bill or stretch of work in costs.csv: date, category, amount or hours"},
	{"lots.csv", "seed lots", "no seed cost of a batch, no emergence against the packet, no trail of a lot",
		"a row for each packet in lots.csv, and its code under lot in sowings.csv"},
	{"chamber.csv", "chamber readings", "no temperature beside what came up", "a row for each reading in chamber.csv: time, temp"},
	{"house.csv", "house readings", "heat is shared by tray-days alone, not by the weather",
		"a row for each day in house.csv: date, out_low, out_high"},
}

// batchGap is a cell or row that batches lack; it is told only of a book that has
// the log it would stand in.
type batchGap struct {
	log                 string
	touches             func(*Report, *Batch) bool
	what, costs, remedy string
}

var batchGaps = []batchGap{
	{"", func(_ *Report, b *Batch) bool { return b.EndHow == Assumed },
		"date set out", "these batches are taken to have stood as long as their crop usually does, which moves heat, care and room",
		"set_out in sowings.csv, or a row with last = yes in out.csv"},
	{"", func(_ *Report, b *Batch) bool {
		return b.Ended() && b.PlantsOut.Known && !b.Surplus.Known && !b.hasOuts
	},
		"usable plants left over", "plants out are a floor, so these batches enter no usable rate unless a count and a look stand in",
		"surplus in sowings.csv (0 where none were left), or rows to surplus in out.csv"},
	{"", func(_ *Report, b *Batch) bool { return b.Ended() && b.hasOuts && !b.cleared.Known() },
		"row that clears the batch", "plants out are a floor, so these batches enter no usable rate unless a count and a look stand in",
		"last = yes on the last row of the batch in out.csv"},
	{"", func(_ *Report, b *Batch) bool { return b.Ended() && !b.OutWritten && !b.Measured() },
		"plants out", "usable plants are estimated from like batches, or unknown: these batches enter no usable rate",
		"plants_out and surplus in sowings.csv, or rows in out.csv"},
	{"", func(_ *Report, b *Batch) bool { return b.Capped },
		"cells sown, or plants out", "more usable plants are written than cells were sown; they count as the cells sown",
		"cells, trays or plants_out in sowings.csv"},
	{"counts.csv", func(r *Report, b *Batch) bool { return b.FromSeed && !b.everCounted && r.dueForCount(b) },
		"count", "these batches say nothing about what came up", "a row in counts.csv: batch, date, emerged"},
	{"counts.csv", func(_ *Report, b *Batch) bool { return b.everCounted && !b.Looked.Known },
		"cells looked at", "the counts of these batches cannot be used: neither their cells nor those of their tray code are written",
		"cells in counts.csv, or the tray code in trays.csv"},
	{"counts.csv", func(_ *Report, b *Batch) bool { return b.unnumbered },
		"tray numbers", "counts without a tray number, beside counts with one, are left out of these batches", "tray in counts.csv, on all rows of a batch or on none"},
	{"counts.csv", func(_ *Report, b *Batch) bool { return b.Early },
		"later count", "these batches were counted too soon after sowing and are left out of what came up until they are counted again",
		"a later row in counts.csv"},
	{"counts.csv", func(_ *Report, b *Batch) bool { return b.CountedEarly && !b.Early },
		"late enough last count", "more may have come up after the last count of these batches than the figures say",
		"a count once nothing more comes up, in counts.csv"},
	{"counts.csv", func(_ *Report, b *Batch) bool { return b.BeforeDay.Known },
		"early enough first count", "more than half stood at the first count of these batches, so it cannot be told how fast they came up",
		"a count as the first seedlings show, in counts.csv"},
	{"lots.csv", func(_ *Report, b *Batch) bool { return b.FromSeed && b.Lot == "" },
		"seed lot", "no seed cost of their own, no check against the packet and no trail for these batches", "lot in sowings.csv"},
	{"lots.csv", func(r *Report, b *Batch) bool { return b.Lot != "" && !r.knowsLot(b.Lot) },
		"row of the seed lot", "no seed cost of their own and no check against the packet for these batches", "a row for the lot in lots.csv"},
	{"trays.csv", func(_ *Report, b *Batch) bool { return !b.TrayCells.Known },
		"tray code", "figures that need the cells of a tray leave these batches out", "a row for the tray code in trays.csv"},
	{"scores.csv", func(_ *Report, b *Batch) bool { return b.Ended() && !b.QualityOf.Known && !b.allOut() },
		"look at quality", "no usable plants can be reckoned from the count of these batches", "a row in scores.csv: batch, date, looked, usable"},
	{"scores.csv", func(_ *Report, b *Batch) bool { return b.QualityOf.Known && !b.Planned.Known() },
		"planned date", "these looks say nothing about how long plants stay fit past their day", "planned in sowings.csv"},
	{"", func(_ *Report, b *Batch) bool {
		return b.EndHow == Open && !(b.Planned.Known() && b.Wanted.Known)
	},
		"planned date or plants wanted of an open batch", "it cannot be told whether these batches will be late or too few", "planned and wanted in sowings.csv"},
	{"", func(_ *Report, b *Batch) bool { return b.Chamber != "" && !b.ChamberOut.Known() && b.Ended() },
		"day out of the chamber", "these batches count as on the bench from sowing on", "chamber_out in sowings.csv"},
	{"chamber.csv", func(_ *Report, b *Batch) bool { return b.Chamber != "" && b.ChamberOut.Known() && !b.warmed },
		"chamber readings", "no temperature beside what came up of these batches", "rows in chamber.csv for the days they stood there"},
}

// dueForCount reports whether the batch is old enough to have been counted.
func (r *Report) dueForCount(b *Batch) bool {
	return b.Ended() || float64(r.LastDate-b.Sown) > r.medianT50[b.Crop].Or(usualEmergence)
}

func (r *Report) knowsLot(code string) bool {
	_, found := slices.BinarySearchFunc(r.Lots, code, func(f LotFigure, code string) int { return cmp.Compare(f.Lot.Code, code) })
	return found
}

// lotGap is a cell that lots lack.
type lotGap struct {
	lack                func(LotFigure) bool
	what, costs, remedy string
}

var lotGaps = []lotGap{
	{func(f LotFigure) bool { return !f.Lot.Price.Known && len(f.Batches) > 0 },
		"price of a seed lot", "the seed of its batches bears a part of the shared seed bills, if any", "price in lots.csv"},
	{func(f LotFigure) bool { return !f.SeedsBought.Known && f.Lot.Price.Known },
		"seeds in a lot", "its whole price falls on the seed sown so far, as if none were left", "seeds, or grams and seeds_per_gram, in lots.csv"},
	{func(f LotFigure) bool { return f.SeedsGuessed },
		"seeds per gram of a lot", "the middle of what is usual for the crop stands in", "seeds_per_gram in lots.csv"},
	{func(f LotFigure) bool { return !f.Label.Known && f.Counted > 0 && !f.Cluster },
		"germination on the packet", "no check of the lot against its packet", "germ_label in lots.csv"},
}

func (r *Report) lotsThat(lack func(LotFigure) bool) []string {
	var codes []string
	for _, f := range r.Lots {
		if lack(f) {
			codes = append(codes, f.Lot.Code)
		}
	}
	return codes
}

// settingGap is a setting that book.csv lacks.
type settingGap struct {
	lack                func(*Report) bool
	what, costs, remedy string
}

var settingGaps = []settingGap{
	{(*Report).hoursUnpriced,
		"wage", "hours of labour are shown, not priced: a transplant seems cheaper than it was", "wage in book.csv"},
	{func(r *Report) bool { return !r.Book.Settings.BenchPlaces.Known },
		"places on the benches", "it cannot be told whether the benches are full", "bench_places in book.csv"},
	{func(r *Report) bool {
		return !r.Book.Settings.ChamberPlaces.Known && slices.ContainsFunc(r.Batches, func(b *Batch) bool { return b.ChamberOut.Known() })
	},
		"places in the chambers", "it cannot be told whether the chambers are full", "chamber_places in book.csv"},
}

// hoursUnpriced reports whether labour is written in hours and no wage is.
func (r *Report) hoursUnpriced() bool {
	return !r.Book.Settings.Wage.Known && slices.ContainsFunc(r.Book.Costs, func(c records.Cost) bool { return c.Hours.Known })
}
