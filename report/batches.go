package report

import (
	"cmp"
	"math"
	"slices"

	"traybook/records"
)

// batches makes a Batch of every sowing, by code (rules 1-5, 9, 16, 18, 44, 61).
// All later sums run in this order, so that the order of rows changes no digit.
func (r *Report) batches() {
	codes := codeCells(r.Book.Trays)
	for _, s := range r.Book.Sowings {
		r.Batches = append(r.Batches, newBatchOf(s, codes[s.Tray], r.Book.Settings))
	}
	slices.SortStableFunc(r.Batches, func(a, b *Batch) int { return cmp.Compare(a.Code, b.Code) })
	for _, b := range r.Batches {
		r.byCode[b.Code] = b
	}
	r.lastDate()
	r.readLogs()
	r.ends()
	r.speed()
	r.early()
}

// codeCells returns what every purchase of a tray code agrees on (rule 5).
func codeCells(rows []records.Purchase) map[string]records.Purchase {
	codes := map[string]records.Purchase{}
	for _, row := range rows {
		code, seen := codes[row.Tray]
		if !seen {
			code = row
		}
		if !code.CellML.Known {
			code.CellML = row.CellML
		}
		codes[row.Tray] = code
	}
	return codes
}

// newBatchOf says what a sowing and its tray code alone tell; code has no cells
// where trays.csv lacks it.
func newBatchOf(s records.Sowing, code records.Purchase, settings records.Settings) *Batch {
	b := &Batch{Sowing: s, Season: settings.Season(s.Sown), Kind: code.Kind, CellML: code.CellML, CellsSown: s.Cells}
	if code.Cells > 0 {
		b.TrayCells = records.Known(code.Cells)
		if !s.Cells.Known {
			b.CellsSown = records.Known(int(roundHalfUp(s.Trays * float64(code.Cells))))
		}
	}
	b.FromSeed = s.Start == records.FromSeed && s.From == ""
	switch {
	case !b.FromSeed:
		b.SeedsSown = records.Known(0.0)
	case b.CellsSown.Known:
		b.SeedsSown = records.Known(float64(b.CellsSown.Value * s.SeedsPerCell))
	}
	return b
}

// roundHalfUp rounds to a whole number; the guard keeps a product such as
// 0.35 x 50 from falling below its half by its last binary digit.
func roundHalfUp(x float64) float64 { return math.Floor(x + 0.5 + 1e-9) }

// cellsOfTray returns what tray k of a batch holds, 0 where that is unknown: the
// tray's cells as long as there are any left, the last one all that is left (rule 2).
func (b *Batch) cellsOfTray(k int) int {
	if !b.TrayCells.Known || !b.CellsSown.Known || k < 1 {
		return 0
	}
	left := b.CellsSown.Value - (k-1)*b.TrayCells.Value
	last := max(int(math.Ceil(b.Trays-1e-9)), 1)
	if k < last {
		left = min(left, b.TrayCells.Value)
	}
	if k > last {
		left = 0
	}
	return max(left, 0)
}

// lastDate finds the last date in the book (rule 3): today, unless another is asked for.
func (r *Report) lastDate() {
	if r.LastDate = r.Options.Today; r.LastDate.Known() {
		return
	}
	for _, s := range r.Book.Sowings {
		r.LastDate = max(r.LastDate, s.Sown, s.ChamberOut, s.SetOut)
	}
	for _, o := range r.Book.Outs {
		r.LastDate = max(r.LastDate, o.Date)
	}
	for _, c := range r.Book.Counts {
		r.LastDate = max(r.LastDate, c.Date)
	}
	for _, s := range r.Book.Scores {
		r.LastDate = max(r.LastDate, s.Date)
	}
}

// readLogs hands every batch its own rows.
func (r *Report) readLogs() {
	counts := byBatch(r.Book.Counts, func(c records.Count) string { return c.Batch })
	scores := byBatch(r.Book.Scores, func(s records.Score) string { return s.Batch })
	outs := byBatch(r.Book.Outs, func(o records.Out) string { return o.Batch })
	for _, b := range r.Batches {
		b.readCounts(counts[b.Code])
		b.readScores(scores[b.Code], r.Book.Settings.UsableFrom)
		b.readOuts(outs[b.Code])
		b.everCounted = len(counts[b.Code]) > 0
		for _, c := range counts[b.Code] {
			b.lastWritten = max(b.lastWritten, c.Date)
		}
	}
}

// byBatch splits a log by batch, each in the order of the file.
func byBatch[T any](log []T, batch func(T) string) map[string][]T {
	split := map[string][]T{}
	for _, row := range log {
		split[batch(row)] = append(split[batch(row)], row)
	}
	return split
}

// groupBy splits batches by a key; keys come in the order of the batches.
func groupBy[K comparable](batches []*Batch, key func(*Batch) K) (keys []K, groups map[K][]*Batch) {
	groups = map[K][]*Batch{}
	for _, b := range batches {
		k := key(b)
		if groups[k] == nil {
			keys = append(keys, k)
		}
		groups[k] = append(groups[k], b)
	}
	return keys, groups
}

// filter returns the batches of which a thing is true.
func filter(batches []*Batch, keep func(*Batch) bool) []*Batch {
	var some []*Batch
	for _, b := range batches {
		if keep(b) {
			some = append(some, b)
		}
	}
	return some
}
