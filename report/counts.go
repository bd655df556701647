package report

import (
	"cmp"
	"slices"

	"traybook/records"
)

// series is the counts of one tray of a batch, or of all of it (tray 0), by date:
// cells looked at, cells with a living seedling, cells in which one ever came up.
type series struct {
	tray   int
	dates  []records.Date
	cells  []float64
	living []float64
	everUp []float64
	lost   float64 // so far
}

// readCounts takes a batch's rows of counts.csv (rule 9): numbered rows alone if
// any is; of several of one tray on one day the last of the file. A row whose
// cells looked at are unknown is not used.
func (b *Batch) readCounts(rows []records.Count) {
	numbered := slices.ContainsFunc(rows, func(c records.Count) bool { return c.Tray.Known })
	b.unnumbered = numbered && slices.ContainsFunc(rows, func(c records.Count) bool { return !c.Tray.Known })
	type place struct {
		tray int
		date records.Date
	}
	last := map[place]records.Count{}
	for _, c := range rows {
		if cells := b.cellsLooked(c); cells > 0 && c.Tray.Known == numbered {
			last[place{c.Tray.Value, c.Date}] = c
		}
	}
	for _, c := range last {
		b.Counts = append(b.Counts, c)
	}
	slices.SortFunc(b.Counts, func(x, y records.Count) int {
		return cmp.Or(cmp.Compare(x.Date, y.Date), cmp.Compare(x.Tray.Value, y.Tray.Value))
	})
	b.addUpTrays()
}

// cellsLooked is how many cells a count looked at: as written, else those sown.
func (b *Batch) cellsLooked(c records.Count) int {
	switch {
	case c.Cells.Known:
		return c.Cells.Value
	case c.Tray.Known:
		return b.cellsOfTray(c.Tray.Value)
	}
	return b.CellsSown.Or(0)
}

// addUpTrays follows each tray to its last count and adds the trays up. What ever
// came up is what lives and all lost so far, never less than before, and in the
// sum not above the cells looked at (rule 58).
func (b *Batch) addUpTrays() {
	if len(b.Counts) == 0 {
		return
	}
	at := map[int]int{}
	for _, c := range b.Counts {
		i, seen := at[c.Tray.Value]
		if !seen {
			i = len(b.countSeries)
			at[c.Tray.Value] = i
			b.countSeries = append(b.countSeries, series{tray: c.Tray.Value})
		}
		b.countSeries[i].add(c, float64(b.cellsLooked(c)))
	}
	var looked, living, ever float64
	for _, s := range b.countSeries {
		end := len(s.dates) - 1
		looked, living, ever = looked+s.cells[end], living+s.living[end], ever+s.everUp[end]
	}
	b.Looked, b.Emerged, b.EverUp = records.Known(looked), records.Known(living), records.Known(min(ever, looked))
}

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

// lastCount is the date of the last count that is used.
func (b *Batch) lastCount() records.Date {
	if len(b.Counts) == 0 {
		return 0
	}
	return b.Counts[len(b.Counts)-1].Date
}

// earlyBatch is how old an open batch must be at its last count, in days, where
// its crop has no T50 yet (rule 56).
const earlyBatch = 14

// early marks the batches whose last count came before twice the crop's median
// T50; open ones are left out of the figures of emergence (rules 15, 56).
func (r *Report) early() {
	for _, b := range r.Batches {
		if len(b.Counts) == 0 {
			continue
		}
		median := r.medianT50[b.Crop]
		age := float64(b.lastCount() - b.Sown)
		b.CountedEarly = median.Known && age < 2*median.Value
		b.Early = b.EndHow == Open && (b.CountedEarly || !median.Known && age < earlyBatch)
	}
}
