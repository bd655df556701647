package germination

import (
	"cmp"
	"maps"
	"slices"

	"traybook/records"
	"traybook/report/batch"
)

// series is the counts of one tray of a batch, or of all of it (tray 0), by date:
// cells looked at, cells with a living seedling, cells in which one ever came up.
type series struct {
	dates  []records.Date
	cells  []float64
	living []float64
	everUp []float64
	lost   float64 // so far
}

// Count reads the counts of every batch, in the order of sown. Rows of a batch that
// was never sown are in none.
func Count(sown []batch.Sowing, rows []records.Count) []Counts {
	of := batch.ByBatch(rows, func(c records.Count) string { return c.Batch })
	all := make([]Counts, len(sown))
	for i := range sown {
		all[i] = countsOf(&sown[i], of[sown[i].Code])
	}
	return all
}

// countsOf takes a batch's rows of counts.csv (rule "Counts").
func countsOf(s *batch.Sowing, rows []records.Count) Counts {
	numbered := slices.ContainsFunc(rows, func(c records.Count) bool { return c.Tray.Known })
	counts := Counts{
		Rows:       used(s, rows, numbered),
		Written:    len(rows) > 0,
		Unnumbered: numbered && slices.ContainsFunc(rows, func(c records.Count) bool { return !c.Tray.Known }),
	}
	for _, c := range rows {
		counts.Last = max(counts.Last, c.Date)
	}
	counts.addUpTrays(s)
	return counts
}

// trayDay is a tray of a batch on a day.
type trayDay struct {
	tray int
	date records.Date
}

// used returns the rows that count, by date, then tray: numbered ones alone if any
// is; of several of one tray on one day the last of the file. A row of which it is
// unknown how many cells were looked at says nothing.
func used(s *batch.Sowing, rows []records.Count, numbered bool) []records.Count {
	last := map[trayDay]records.Count{}
	for _, c := range rows {
		if cellsLooked(s, c) > 0 && c.Tray.Known == numbered {
			last[trayDay{int(c.Tray.Value), c.Date}] = c
		}
	}
	var kept []records.Count
	for _, c := range last {
		kept = append(kept, c)
	}
	slices.SortFunc(kept, func(x, y records.Count) int {
		return cmp.Or(cmp.Compare(x.Date, y.Date), cmp.Compare(x.Tray.Value, y.Tray.Value))
	})
	return kept
}

// cellsLooked is how many cells a count looked at: as written, else those sown in
// its tray or in the batch; 0 where that is unknown.
func cellsLooked(s *batch.Sowing, c records.Count) int {
	switch {
	case c.Cells.Known:
		return int(c.Cells.Value)
	case c.Tray.Known:
		return s.CellsOfTray(int(c.Tray.Value))
	}
	return s.CellsSown.Or(0)
}

// addUpTrays follows each tray to its last count and adds the trays up. In the sum
// no more cells ever came up than were looked at: losses of several days may be
// written twice over.
func (c *Counts) addUpTrays(s *batch.Sowing) {
	if len(c.Rows) == 0 {
		return
	}
	var looked, living, ever float64
	for _, one := range seriesOf(s, c.Rows) {
		end := len(one.dates) - 1
		looked, living, ever = looked+one.cells[end], living+one.living[end], ever+one.everUp[end]
	}
	c.Looked, c.Emerged, c.EverUp = records.Known(looked), records.Known(living), records.Known(min(ever, looked))
}

// seriesOf splits counts, which stand by date, into those of each tray.
func seriesOf(s *batch.Sowing, rows []records.Count) []series {
	trays, of := batch.GroupBy(rows, func(row records.Count) int { return int(row.Tray.Value) })
	all := make([]series, len(trays))
	for i, tray := range trays {
		for _, row := range of[tray] {
			all[i].add(row, float64(cellsLooked(s, row)))
		}
	}
	return all
}

// add takes the next count of the tray. What ever came up is what lives and all lost
// so far, never less than before.
func (s *series) add(c records.Count, cells float64) {
	living := float64(c.Emerged.Value)
	if c.Empty.Known {
		living = cells - float64(c.Empty.Value)
	}
	living = min(max(living, 0), cells)
	s.lost += float64(c.Lost.Or(0))
	ever := living + s.lost
	if n := len(s.everUp); n > 0 {
		ever = max(ever, s.everUp[n-1])
	}
	s.dates, s.cells = append(s.dates, c.Date), append(s.cells, cells)
	s.living, s.everUp = append(s.living, living), append(s.everUp, ever)
}

// lastUsed is the date of the last count that is used; unknown where none is.
func (c *Counts) lastUsed() records.Date {
	if len(c.Rows) == 0 {
		return 0
	}
	return c.Rows[len(c.Rows)-1].Date
}

// Up is the share of the cells looked at with a living seedling from a day on.
type Up struct {
	Date  records.Date
	Share float64
}

// UpBy is how the share up went, by day of a count: each tray as it was last counted by
// then, over the cells of the trays counted by then.
func (c *Counted) UpBy() []Up {
	all := seriesOf(&c.Sowing, c.Rows)
	days := map[records.Date]bool{}
	for _, row := range c.Rows {
		days[row.Date] = true
	}
	var ups []Up
	for _, d := range slices.Sorted(maps.Keys(days)) {
		living, cells := 0.0, 0.0
		for _, s := range all {
			if i := s.last(d); i >= 0 {
				living, cells = living+s.living[i], cells+s.cells[i]
			}
		}
		if cells > 0 {
			ups = append(ups, Up{d, living / cells})
		}
	}
	return ups
}

// last is the place of the last count by a day, -1 where there is none.
func (s *series) last(d records.Date) int {
	last := -1
	for i, date := range s.dates {
		if date <= d {
			last = i
		}
	}
	return last
}
