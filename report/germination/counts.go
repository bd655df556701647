package germination

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/batch"
)

// Count reads the counts of every batch, in the order of sown. Rows of a batch that
// was never sown are in none.
func Count(sown []batch.Sowing, book *records.Book) []Counts {
	of := batch.PartsOf(batch.CodesOf(sown), book.Counts, func(c *records.Count) string { return book.Code(c.Batch) })
	all, split := make([]Counts, len(sown)), &splitter{}
	for i := range sown {
		all[i] = countsOf(&sown[i], of[i], split)
	}
	return all
}

// countsOf takes a batch's rows of counts.csv (rule "Counts"), and keeps those that are
// used.
func countsOf(s *batch.Sowing, rows []records.Count, split *splitter) Counts {
	counts := Counts{Written: len(rows) > 0}
	numbered := false
	for i := range rows {
		counts.Last = max(counts.Last, rows[i].Date)
		numbered = numbered || rows[i].Tray.Known
		counts.Unnumbered = counts.Unnumbered || !rows[i].Tray.Known
	}
	counts.Unnumbered = counts.Unnumbered && numbered
	counts.Rows = used(s, rows, numbered)
	trays := split.series(s, counts.Rows)
	counts.addUp(trays)
	counts.time(s, trays, split)
	return counts
}

// used keeps the rows that count, by date, then tray: numbered ones alone if any is; of
// several of one tray on one day the last of the file. A row of which it is unknown how
// many cells were looked at says nothing. Nearly always all rows are kept as they stand.
func used(s *batch.Sowing, rows []records.Count, numbered bool) []records.Count {
	if allUsed(s, rows, numbered) {
		return rows
	}
	kept := batch.Filter(rows, func(c records.Count) bool { return counts(s, &c, numbered) })
	slices.SortStableFunc(kept, func(x, y records.Count) int { return byDate(&x, &y) })
	slices.Reverse(kept) // the last of the file is the first of its tray and day, and stands
	kept = slices.CompactFunc(kept, func(x, y records.Count) bool { return byDate(&x, &y) == 0 })
	slices.Reverse(kept)
	return kept
}

// allUsed reports whether every row counts, and they stand by date, then tray, each day
// of a tray once.
func allUsed(s *batch.Sowing, rows []records.Count, numbered bool) bool {
	for i := range rows {
		if !counts(s, &rows[i], numbered) || i > 0 && byDate(&rows[i-1], &rows[i]) >= 0 {
			return false
		}
	}
	return true
}

// counts reports whether a row says anything, and whether it does so of a tray or of all,
// as those that are used do.
func counts(s *batch.Sowing, c *records.Count, numbered bool) bool {
	return cellsLooked(s, c) > 0 && c.Tray.Known == numbered
}

// byDate orders counts by date, then tray; byTray by tray, then date.
func byDate(x, y *records.Count) int {
	return cmp.Or(cmp.Compare(x.Date, y.Date), cmp.Compare(x.Tray.Value, y.Tray.Value))
}
func byTray(x, y *records.Count) int {
	return cmp.Or(cmp.Compare(x.Tray.Value, y.Tray.Value), cmp.Compare(x.Date, y.Date))
}

// cellsLooked is how many cells a count looked at: as written, else those sown in
// its tray or in the batch; 0 where that is unknown.
func cellsLooked(s *batch.Sowing, c *records.Count) int {
	switch {
	case c.Cells.Known:
		return int(c.Cells.Value)
	case c.Tray.Known:
		return s.CellsOfTray(int(c.Tray.Value))
	}
	return s.CellsSown.Or(0)
}

// addUp follows each tray to its last count and adds the trays up. In the sum
// no more cells ever came up than were looked at: losses of several days may be
// written twice over.
func (c *Counts) addUp(trays []series) {
	if len(trays) == 0 {
		return
	}
	var looked, living, ever float64
	for _, one := range trays {
		end := len(one.dates) - 1
		looked, living, ever = looked+one.cells[end], living+one.living[end], ever+one.everUp[end]
	}
	c.Looked, c.Emerged, c.EverUp = records.Known(looked), records.Known(living), records.Known(min(ever, looked))
}

// lastUsed is the date of the last count that is used; unknown where none is.
func (c *Counts) lastUsed() records.Date {
	if len(c.Rows) == 0 {
		return 0
	}
	return c.Rows[len(c.Rows)-1].Date
}
