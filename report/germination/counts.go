package germination

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/batch"
)

// Count reads the counts of every batch, in the order of sown. Rows of a batch that
// was never sown are in none.
func Count(sown []batch.Sowing, rows []records.Count) []Counts {
	of := batch.RowsOf(batch.CodesOf(sown), rows, func(c *records.Count) string { return c.Batch })
	all := make([]Counts, len(sown))
	for i := range sown {
		all[i] = countsOf(&sown[i], of.Of(i))
	}
	return all
}

// countsOf takes a batch's rows of counts.csv (rule "Counts"), a list of which it keeps
// those that are used.
func countsOf(s *batch.Sowing, rows []*records.Count) Counts {
	numbered := slices.ContainsFunc(rows, func(c *records.Count) bool { return c.Tray.Known })
	counts := Counts{
		Written:    len(rows) > 0,
		Unnumbered: numbered && slices.ContainsFunc(rows, func(c *records.Count) bool { return !c.Tray.Known }),
	}
	for _, c := range rows {
		counts.Last = max(counts.Last, c.Date)
	}
	counts.Rows = used(s, rows, numbered)
	trays := seriesOf(s, counts.Rows)
	counts.addUp(trays)
	counts.time(s, trays)
	return counts
}

// used keeps the rows that count, by date, then tray: numbered ones alone if any is; of
// several of one tray on one day the last of the file. A row of which it is unknown how
// many cells were looked at says nothing.
func used(s *batch.Sowing, rows []*records.Count, numbered bool) []*records.Count {
	kept := rows[:0]
	for _, c := range rows {
		if cellsLooked(s, c) > 0 && c.Tray.Known == numbered {
			kept = append(kept, c)
		}
	}
	slices.SortStableFunc(kept, byDate)
	slices.Reverse(kept) // the last of the file is the first of its tray and day, and stands
	kept = slices.CompactFunc(kept, func(x, y *records.Count) bool { return byDate(x, y) == 0 })
	slices.Reverse(kept)
	return kept
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
