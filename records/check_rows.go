package records

import (
	"fmt"
	"iter"
)

// dated is a row of a log that belongs to a batch, and the sowing of that.
type dated struct {
	row
	batch  Ref
	sowing *entry[Sowing] // nil for none
	date   Date
}

// batchRows hands over the rows that belong to a batch, log by log; costs, which need not
// name one, are not among them.
func (l *loader) batchRows() iter.Seq[dated] {
	return func(yield func(dated) bool) {
		for e := range alive(l.outs) {
			if !yield(dated{e.row, e.is.ref, l.batchOf(e.is.ref), e.is.Date}) {
				return
			}
		}
		for e := range alive(l.counts) {
			if !yield(dated{e.row, e.is.Batch, l.batchOf(e.is.Batch), e.is.Date}) {
				return
			}
		}
		for e := range alive(l.scores) {
			if !yield(dated{e.row, e.is.ref, l.batchOf(e.is.ref), e.is.Date}) {
				return
			}
		}
	}
}

// checkBatches reports batches that are not in sowings.csv. A row whose batch
// is left out goes with it, without a word of its own.
func (l *loader) checkBatches() {
	if !l.present["sowings.csv"] {
		return
	}
	for r := range l.batchRows() {
		r.checkBatch(l.code(r.batch), r.sowing)
	}
	for e := range alive(l.costs) {
		if e.is.Batch != "" {
			e.checkBatch(e.is.Batch, l.batch(e.is.Batch))
		}
	}
}

// checkBatch reports the row's batch if it is not in sowings.csv.
func (r row) checkBatch(batch string, sowing *entry[Sowing]) {
	switch {
	case sowing == nil && !r.lost[batch]:
		r.problem("unknown-batch", "batch", "batch "+quote(batch)+" is not in sowings.csv", "a batch of sowings.csv is expected",
			didYouMean(r.nearKey(batch, r.batchCodes())))
	case sowing == nil || sowing.isOut():
		r.leaveOut()
	}
}

// checkRowDates reports counts, looks and plants out before the batch was sown.
func (l *loader) checkRowDates() {
	for r := range l.batchRows() {
		if s := r.sowing; s != nil && r.date < s.is.Sown {
			r.problem("row-before-sown", "date", fmt.Sprintf("%s is before batch %s was sown, %s", r.date, quote(s.is.Code), s.is.Sown),
				"a day not before the sowing is expected", "")
		}
	}
}

// checkPlantsOut warns of more plants out than cells sown, in sowings.csv or over the
// rows of out.csv, dead ones apart: a cell gives one plant.
func (l *loader) checkPlantsOut() {
	type fate struct {
		plants int
		last   int32 // row that says so
	}
	living, dead := make([]fate, l.refs()), make([]fate, l.refs())
	for e := range alive(l.outs) {
		of := living
		if e.is.To == Dead {
			of = dead
		}
		of[e.is.ref] = fate{of[e.is.ref].plants + e.is.Plants, e.nth}
	}
	for e := range alive(l.sowings) {
		cells := l.cellsSown(e.is)
		if !cells.Known {
			continue
		}
		written := e.is.PlantsOut.Value + e.is.Surplus.Value
		if written > cells.Value {
			e.problem("out-above-cells", "plants_out", tooMany(written, cells.Value), "no more plants than cells are expected", "")
		}
		for _, f := range []fate{living[e.is.ref], dead[e.is.ref]} {
			if f.plants > cells.Value {
				l.outs.entry(int(f.last)).problem("out-above-cells", "plants", fmt.Sprintf("batch %s: ", quote(e.is.Code))+tooMany(f.plants, cells.Value),
					"no more plants than cells are expected", "")
			}
		}
	}
}

// tooMany says how many plants went out of how many cells.
func tooMany(plants, cells int) string {
	return fmt.Sprintf("%d plants out of %d cells sown", plants, cells)
}

// checkOutTwice warns of batches whose plants out stand in both logs: the plants of
// out.csv are then taken, those of sowings.csv are not (rule "Usable plants").
func (l *loader) checkOutTwice() {
	rows := make([]int, l.refs())
	for e := range alive(l.outs) {
		rows[e.is.ref]++
	}
	for e := range alive(l.sowings) {
		if rows[e.is.ref] == 0 {
			continue
		}
		for _, c := range []struct {
			col     string
			written bool
		}{{"set_out", e.is.SetOut.Known()}, {"plants_out", e.is.PlantsOut.Known}, {"surplus", e.is.Surplus.Known}} {
			if c.written {
				e.problem("out-twice", c.col, fmt.Sprintf("batch %s has %s here and %s in out.csv", quote(e.is.Code), c.col, plural(rows[e.is.ref], "row")),
					"one of the two is expected", "leave set_out, plants_out and surplus blank, or take the rows out of out.csv")
				break
			}
		}
	}
}
