package germination

import (
	"cmp"
	"iter"
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

// splitter splits counts into series. It keeps its room for those of the next batch: a
// series is good until then.
type splitter struct {
	sorted  []*records.Count
	dates   []records.Date
	numbers []float64
	all     []series
}

// series splits counts, of which a tray has one a day, into those of each tray, by tray.
func (w *splitter) series(s *batch.Sowing, rows []records.Count) []series {
	w.sort(rows)
	n := len(rows)
	w.dates, w.numbers, w.all = slices.Grow(w.dates[:0], n)[:n], slices.Grow(w.numbers[:0], 3*n)[:3*n], w.all[:0]
	for from, to := 0, 0; from < n; from = to {
		for to = from; to < n && w.sorted[to].Tray.Value == w.sorted[from].Tray.Value; {
			to++
		}
		one := seriesIn(w.dates[from:to], w.numbers[3*from:3*to])
		for _, row := range w.sorted[from:to] {
			one.add(row, float64(cellsLooked(s, row)))
		}
		w.all = append(w.all, one)
	}
	return w.all
}

// sort puts counts in order by tray, then date.
func (w *splitter) sort(rows []records.Count) {
	w.sorted = w.sorted[:0]
	for i := range rows {
		w.sorted = append(w.sorted, &rows[i])
	}
	if !slices.IsSortedFunc(w.sorted, byTray) {
		slices.SortFunc(w.sorted, byTray)
	}
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
	living := living(c, cells)
	s.lost += float64(c.Lost.Or(0))
	ever := living + s.lost
	if n := len(s.everUp); n > 0 {
		ever = max(ever, s.everUp[n-1])
	}
	s.dates, s.cells = append(s.dates, c.Date), append(s.cells, cells)
	s.living, s.everUp = append(s.living, living), append(s.everUp, ever)
}

// living is how many of the cells looked at have a living seedling.
func living(c *records.Count, cells float64) float64 {
	up := float64(c.Emerged.Value)
	if c.Empty.Known {
		up = cells - float64(c.Empty.Value)
	}
	return min(max(up, 0), cells)
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
func (c *Counted) UpBy() iter.Seq[Up] {
	return func(yield func(Up) bool) {
		var trays []latest
		var all latest // of all trays together: whole numbers, which add up in any order
		for i := range c.Rows {
			row := &c.Rows[i]
			now := latest{row.Tray.Value, 0, float64(cellsLooked(&c.Sowing, row))}
			now.living = living(row, now.cells)
			at, counted := slices.BinarySearchFunc(trays, now.tray, func(t latest, tray int32) int { return cmp.Compare(t.tray, tray) })
			if !counted {
				trays = slices.Insert(trays, at, latest{})
			}
			all.living, all.cells = all.living+now.living-trays[at].living, all.cells+now.cells-trays[at].cells
			trays[at] = now
			dayDone := i+1 == len(c.Rows) || c.Rows[i+1].Date != row.Date
			if dayDone && all.cells > 0 && !yield(Up{row.Date, all.living / all.cells}) {
				return
			}
		}
	}
}

// latest is what the last count of a tray found.
type latest struct {
	tray          int32
	living, cells float64
}
