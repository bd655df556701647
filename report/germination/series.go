package germination

import (
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

// seriesOf splits counts, of which a tray has one a day, into those of each tray, by tray.
func seriesOf(s *batch.Sowing, rows []records.Count) []series {
	sorted := inTrays(rows)
	dates, numbers := make([]records.Date, len(rows)), make([]float64, 3*len(rows))
	var all []series
	for from, to := 0, 0; from < len(rows); from = to {
		for to = from; to < len(rows) && sorted[to].Tray.Value == sorted[from].Tray.Value; {
			to++
		}
		all = append(all, seriesIn(dates[from:to], numbers[3*from:3*to]))
		for _, row := range sorted[from:to] {
			all[len(all)-1].add(row, float64(cellsLooked(s, row)))
		}
	}
	return all
}

// inTrays are counts by tray, then date.
func inTrays(rows []records.Count) []*records.Count {
	all := make([]*records.Count, len(rows))
	for i := range rows {
		all[i] = &rows[i]
	}
	if !slices.IsSortedFunc(all, byTray) {
		slices.SortFunc(all, byTray)
	}
	return all
}

// seriesIn is an empty series with room for as many counts as there are dates, and three
// numbers of each.
func seriesIn(dates []records.Date, numbers []float64) series {
	n := len(dates)
	return series{dates: dates[:0], cells: numbers[:0:n], living: numbers[n : n : 2*n], everUp: numbers[2*n : 2*n : 3*n]}
}

// add takes the next count of the tray. What ever came up is what lives and all lost
// so far, never less than before.
func (s *series) add(c *records.Count, cells float64) {
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

// last is the place of the last count by a day, -1 where there is none.
func (s *series) last(d records.Date) int {
	i, that := slices.BinarySearch(s.dates, d)
	if that {
		return i
	}
	return i - 1
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
	var ups []Up
	for i, row := range c.Rows {
		d := row.Date
		if i > 0 && d == c.Rows[i-1].Date {
			continue
		}
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
