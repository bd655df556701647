package report

import (
	"cmp"
	"slices"
	"sync"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
)

// ground is what the gaps of a batch are held against.
type ground struct {
	book   *records.Book
	today  records.Date
	t50    map[string]Num  // by crop, days
	lots   map[string]bool // those of lots.csv
	counts func() [][]records.Count
	outs   func() batch.Rows[records.Out]

	hasLots, hasScores bool // the logs
}

// batchesMissing lists what batches lack, each gap with the batches of a season that it
// touches; a cell of a log only where the book has that log.
func batchesMissing(book *records.Book, today records.Date, all []*Record, g *germination.Figures) []Missing {
	on := groundOf(book, today, all, g)
	touched := make([][]*Record, len(batchGaps))
	for _, one := range all {
		for i := range batchGaps {
			if batchGaps[i].touches(on, one) {
				touched[i] = append(touched[i], one)
			}
		}
	}
	var list []Missing
	for i, b := range batchGaps {
		if b.log != "sowings.csv" && !has(book, b.log) {
			continue
		}
		for _, of := range batch.SplitBy(touched[i], (*Record).SeasonRank).Groups {
			list = append(list, b.missing(of[0].Season, len(of), codesOf(of, codeOf), b.where(b.gap, on, of)))
		}
	}
	return list
}

func groundOf(book *records.Book, today records.Date, all []*Record, g *germination.Figures) *ground {
	on := &ground{book: book, today: today, t50: g.MedianT50, lots: map[string]bool{},
		counts: sync.OnceValue(func() [][]records.Count {
			return batch.PartsOf(codesOf(all, codeOf), book.Counts, func(c *records.Count) string { return book.Code(c.Batch) })
		}),
		outs:    rowsOf(all, book.Outs, func(o *records.Out) string { return o.Batch }),
		hasLots: has(book, "lots.csv"), hasScores: has(book, "scores.csv")}
	for i := range g.Lots {
		on.lots[g.Lots[i].Code] = true
	}
	return on
}

// rowsOf are the rows of a log by batch, split once a gap asks for them.
func rowsOf[T any](all []*Record, log []T, code func(*T) string) func() batch.Rows[T] {
	return sync.OnceValue(func() batch.Rows[T] { return batch.RowsOf(codesOf(all, codeOf), log, code) })
}

// batchGap is a cell or row that batches may lack.
type batchGap struct {
	touches func(*ground, *Record) bool
	where   where
	gap
}

// where says how the places of a gap of batches are found.
type where func(g gap, on *ground, touched []*Record) []Place

// inSowing: in the row of each in sowings.csv.
func inSowing(g gap, on *ground, touched []*Record) []Place {
	var places []Place
	for _, b := range touched {
		places = append(places, g.place(on.book, b.At, b.Code))
	}
	return places
}

// whileOpen: a row to add for each that stands open; an ended one cannot be looked at any
// more.
func whileOpen(g gap, _ *ground, touched []*Record) []Place {
	return g.newRows(batch.Filter(touched, func(b *Record) bool { return !b.Ended() }), codeOf)
}

// perLot and perTray: a row to add for the lot, or the tray code, of them.
func perLot(g gap, _ *ground, touched []*Record) []Place {
	return g.newRows(touched, func(b *Record) string { return b.Lot })
}
func perTray(g gap, _ *ground, touched []*Record) []Place {
	return g.newRows(touched, func(b *Record) string { return b.Tray })
}

// inCounts: in the counts of each that lack the cell, down the sheet.
func inCounts(g gap, on *ground, touched []*Record) []Place {
	var places []Place
	for _, b := range touched {
		from := len(places)
		for _, c := range on.counts()[b.Nth] {
			if g.column == "tray" && !c.Tray.Known || g.column == "cells" && !c.Cells.Known {
				places = append(places, g.place(on.book, c.At, b.Code))
			}
		}
		slices.SortStableFunc(places[from:], func(x, y Place) int { return cmp.Compare(x.Line, y.Line) })
	}
	return places
}

// inLastOut: in the last row that says what left each.
func inLastOut(g gap, on *ground, touched []*Record) []Place {
	var places []Place
	for _, b := range touched {
		last := slices.MaxFunc(on.outs().Of(b.Nth), func(a, b *records.Out) int { return cmp.Or(cmp.Compare(a.Date, b.Date), cmp.Compare(a.Line, b.Line)) })
		places = append(places, g.place(on.book, last.At, b.Code))
	}
	return places
}

// nowhere: what was not looked at in its time is not known afterwards.
func nowhere(gap, *ground, []*Record) []Place { return nil }

// dueForCount reports whether the batch is old enough to have been counted.
func (on *ground) dueForCount(b *Record) bool {
	return b.Ended() || float64(on.today-b.Sown) > typicalDays(on.t50, b.Crop)
}
