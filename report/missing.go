package report

import (
	"slices"
	"strings"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
)

// Missing is something the records cannot tell: what is missing, how many batches
// it touches, what that costs the review, and what to write down.
type Missing struct {
	What    string   // in a grower's words: "date set out"
	Batches []string // codes of the batches it touches, sorted; may be empty
	Costs   string   // what the gap takes away
	Remedy  string   // which column of which log to fill
}

// gap is one kind of Missing without what it touches.
type gap struct{ what, costs, remedy string }

// of returns the gap as it touches these batches.
func (g gap) of(batches ...string) Missing {
	return Missing{What: g.what, Batches: batches, Costs: g.costs, Remedy: g.remedy}
}

// naming returns the gap with the codes that it touches in its words; nothing where
// there are none.
func (g gap) naming(codes []string) []Missing {
	if len(codes) == 0 {
		return nil
	}
	return []Missing{{What: g.what + ": " + strings.Join(codes, ", "), Costs: g.costs, Remedy: g.remedy}}
}

// missingOf lists what the records cannot tell: whole logs, then rows and cells that
// the logs lack, each with the batches it touches. Of a book without a sowing there
// is nothing to tell. Gaps of the trays' own prices and lives are trayGapsOf's.
func missingOf(book *records.Book, b *batch.Batches, all []*Record, g *germination.Figures) []Missing {
	if len(all) == 0 {
		return nil
	}
	var list []Missing
	for _, l := range logGaps {
		if !has(book, l.log) {
			list = append(list, l.of())
		}
	}
	list = append(list, batchesMissing(book, b.Today, all, g)...)
	for _, l := range lotGaps {
		touched := batch.Filter(g.Lots, l.lack)
		list = append(list, l.naming(codesOf(touched, func(l germination.Lot) string { return l.Code }))...)
	}
	for _, s := range settingGaps {
		if s.lack(book) {
			list = append(list, s.of())
		}
	}
	return list
}

// codesOf lists the code of each.
func codesOf[T any](list []T, code func(T) string) []string {
	var codes []string
	for _, x := range list {
		codes = append(codes, code(x))
	}
	return codes
}

// has reports whether the book has a log, or any row of it.
func has(book *records.Book, log string) bool {
	rows := map[string]int{"counts.csv": len(book.Counts), "scores.csv": len(book.Scores), "trays.csv": len(book.Trays), "lots.csv": len(book.Lots),
		"costs.csv": len(book.Costs), "chamber.csv": len(book.Chamber), "house.csv": len(book.House), "out.csv": len(book.Outs)}
	return book.Has(log) || rows[log] > 0
}

// logGaps are the logs that a book may lack.
var logGaps = []struct {
	log string
	gap
}{
	{"trays.csv", gap{"tray codes", "no cells of a tray, so no usable rates, no room and no answer to whether trays pay",
		"a row for each tray code in trays.csv: tray, kind, cells"}},
	{"counts.csv", gap{"germination counts", "nothing about what came up, by variety, lot or week",
		"a row for each count in counts.csv: batch, date, emerged"}},
	{"scores.csv", gap{"looks at quality", "nothing about how good the plants were and how long they stayed fit",
		"a row for each look in scores.csv: batch, date, looked, usable"}},
	{"costs.csv", gap{"costs", "no cost of a transplant beyond priced trays and lots",
		"a row for each bill or stretch of work in costs.csv: date, category, amount or hours"}},
	{"lots.csv", gap{"seed lots", "no seed cost of a batch, no emergence against the packet, no trail of a lot",
		"a row for each packet in lots.csv, and its code under lot in sowings.csv"}},
	{"chamber.csv", gap{"chamber readings", "no temperature beside what came up", "a row for each reading in chamber.csv: time, temp"}},
	{"house.csv", gap{"house readings", "heat is shared by tray-days alone, not by the weather",
		"a row for each day in house.csv: date, out_low, out_high"}},
}

// lotGaps are the cells that lots may lack.
var lotGaps = []struct {
	lack func(germination.Lot) bool
	gap
}{
	{func(l germination.Lot) bool { return !l.Price.Known && len(l.Sown) > 0 },
		gap{"price of a seed lot", "the seed of its batches bears a part of the shared seed bills, if any", "price in lots.csv"}},
	{func(l germination.Lot) bool { return !l.SeedsBought.Known && l.Price.Known },
		gap{"seeds in a lot", "its whole price falls on the seed sown so far, as if none were left", "seeds, or grams and seeds_per_gram, in lots.csv"}},
	{func(l germination.Lot) bool { return l.SeedsGuessed },
		gap{"seeds per gram of a lot", "the middle of what is usual for the crop stands in", "seeds_per_gram in lots.csv"}},
	{func(l germination.Lot) bool { return !l.Label.Known && l.Counted > 0 && !l.Cluster },
		gap{"germination on the packet", "no check of the lot against its packet", "germ_label in lots.csv"}},
}

// settingGaps are the settings that book.csv may lack where they would tell something.
var settingGaps = []struct {
	lack func(*records.Book) bool
	gap
}{
	{func(book *records.Book) bool {
		return !book.Settings.Wage.Known && slices.ContainsFunc(book.Costs, func(c records.Cost) bool { return c.Hours.Known })
	},
		gap{"wage", "hours of labour are shown, not priced: a transplant seems cheaper than it was", "wage in book.csv"}},
	{func(book *records.Book) bool { return !book.Settings.BenchPlaces.Known },
		gap{"places on the benches", "it cannot be told whether the benches are full", "bench_places in book.csv"}},
	{func(book *records.Book) bool {
		return !book.Settings.ChamberPlaces.Known && slices.ContainsFunc(book.Sowings, func(s records.Sowing) bool { return s.ChamberOut.Known() })
	},
		gap{"places in the chambers", "it cannot be told whether the chambers are full", "chamber_places in book.csv"}},
}
