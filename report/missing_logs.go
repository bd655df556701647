package report

import (
	"slices"

	"traybook/records"
	"traybook/report/batch"
)

// Which batches lose by what is missing.
func everyBatch(*Record) bool   { return true }
func fromSeed(b *Record) bool   { return b.FromSeed }
func inAChamber(b *Record) bool { return b.Chamber != "" }

// logGaps are the logs that a book may lack, and the batches that lose by it; none
// loses: nothing is said. What was not looked at in its time cannot be written down
// afterwards; what stands on shelves and bills can, a row for each of a kind.
var logGaps = []struct {
	touches func(*Record) bool
	rows    func(*Record) string // one row for each of these; nil: it cannot be mended afterwards
	gap
}{
	{everyBatch, func(b *Record) string { return b.Tray },
		gap{"tray codes", "no cells of a tray, so no usable rates, no room and no answer to whether trays pay",
			"a row for each tray code in trays.csv: tray, kind, cells", "trays.csv", "tray", looking, whole}},
	{fromSeed, nil,
		gap{"germination counts", "nothing about what came up, by variety, lot or week",
			"a row for each count in counts.csv: batch, date, emerged", "counts.csv", "emerged", 0, whole}},
	{everyBatch, nil,
		gap{"looks at quality", "nothing about how good the plants were and how long they stayed fit",
			"a row for each look in scores.csv: batch, date, looked, usable", "scores.csv", "usable", 0, part}},
	{everyBatch, func(*Record) string { return "" },
		gap{"costs", "no cost of a transplant beyond priced trays and lots",
			"a row for each bill or stretch of work in costs.csv: date, category, amount or hours", "costs.csv", "amount", 12 * asking, whole}},
	{fromSeed, func(b *Record) string { return b.Crop + " " + b.Variety },
		gap{"seed lots", "no seed cost of a batch, no emergence against the packet, no trail of a lot",
			"a row for each packet in lots.csv, and its code under lot in sowings.csv", "lots.csv", "lot", looking, part}},
	{inAChamber, nil,
		gap{"chamber readings", "no temperature beside what came up", "a row for each reading in chamber.csv: time, temp", "chamber.csv", "temp", 0, detail}},
	{everyBatch, nil,
		gap{"house readings", "heat is shared by tray-days alone, not by the weather, and no cold season is told apart from waste",
			"a row for each day in house.csv: date, low, high, out_low, out_high", "house.csv", "out_low", 0, none}},
}

// logsMissing lists the logs that the book lacks.
func logsMissing(book *records.Book, all []*Record) []Missing {
	var list []Missing
	for _, l := range logGaps {
		if has(book, l.log) {
			continue
		}
		touched := batch.Filter(all, l.touches)
		if len(touched) == 0 {
			continue
		}
		list = append(list, l.missing(0, len(touched), nil, l.newRows(touched, l.rows)))
	}
	return list
}

// newRows are the rows to add, one for each kind of batch.
func (g gap) newRows(touched []*Record, of func(*Record) string) []Place {
	if of == nil {
		return nil
	}
	kinds := codesOf(touched, of)
	slices.Sort(kinds)
	var places []Place
	for _, kind := range slices.Compact(kinds) {
		places = append(places, g.newRow(kind))
	}
	return places
}

// settingGaps are the settings that book.csv may lack where they would tell something.
var settingGaps = []struct {
	lack func(*records.Book) bool
	gap
}{
	{func(book *records.Book) bool {
		return !book.Settings.Wage.Known && slices.ContainsFunc(book.Costs, func(c records.Cost) bool { return c.Hours.Known })
	},
		gap{"wage", "hours of labour are shown, not priced: a transplant seems cheaper than it was", "wage in book.csv", "book.csv", "value", asking, whole}},
	{func(book *records.Book) bool { return !book.Settings.BenchPlaces.Known },
		gap{"places on the benches", "it cannot be told whether the benches are full", "bench_places in book.csv", "book.csv", "value", asking, none}},
	{func(book *records.Book) bool {
		return !book.Settings.ChamberPlaces.Known && slices.ContainsFunc(book.Sowings, func(s records.Sowing) bool { return s.Chamber != "" || s.ChamberOut.Known() })
	},
		gap{"places in the chambers", "it cannot be told whether the chambers are full", "chamber_places in book.csv", "book.csv", "value", asking, none}},
	{func(book *records.Book) bool {
		return !slices.ContainsFunc(book.Sowings, func(s records.Sowing) bool { return s.Wanted.Known })
	},
		gap{"plants wanted", "it cannot be told which batches will be short, nor what to sow more of", "wanted in sowings.csv", "sowings.csv", "wanted", asking, part}},
}

// settingsMissing lists the settings that would tell something.
func settingsMissing(book *records.Book, all []*Record) []Missing {
	var list []Missing
	for _, s := range settingGaps {
		if !s.lack(book) {
			continue
		}
		list = append(list, s.missing(0, len(all), nil, []Place{s.newRow(s.what)}))
	}
	return list
}
