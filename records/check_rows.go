package records

import (
	"fmt"
	"slices"
)

// dated is a row of a log that belongs to a batch.
type dated struct {
	*row
	batch string
	date  Date
}

// batchRows lists the rows that belong to a batch, log by log; costs only where
// they name one.
func (l *loader) batchRows() []dated {
	var all []dated
	for e := range alive(l.outs) {
		all = append(all, dated{e.row, e.is.Batch, e.is.Date})
	}
	for e := range alive(l.counts) {
		all = append(all, dated{e.row, e.is.Batch, e.is.Date})
	}
	for e := range alive(l.scores) {
		all = append(all, dated{e.row, e.is.Batch, e.is.Date})
	}
	return all
}

// checkBatches reports batches that are not in sowings.csv. A row whose batch
// is left out goes with it, without a word of its own.
func (l *loader) checkBatches() {
	rows := l.batchRows()
	for e := range alive(l.costs) {
		if e.is.Batch != "" {
			rows = append(rows, dated{e.row, e.is.Batch, e.is.Date})
		}
	}
	if !l.present["sowings.csv"] {
		return
	}
	for _, r := range rows {
		sowing := l.batch(r.batch)
		if sowing != nil || l.lost[r.batch] {
			r.out = sowing == nil || sowing.out
			continue
		}
		r.problem("unknown-batch", "batch", "batch "+quote(r.batch)+" is not in sowings.csv", "a batch of sowings.csv is expected",
			didYouMean(l.nearKey(r.batch, l.batchCodes())))
	}
}

// checkRowDates reports counts, looks and plants out before the batch was sown.
func (l *loader) checkRowDates() {
	for _, r := range l.batchRows() {
		if s := l.batch(r.batch); s != nil && r.date < s.is.Sown {
			r.problem("row-before-sown", "date", fmt.Sprintf("%s is before batch %s was sown, %s", r.date, quote(r.batch), s.is.Sown),
				"a day not before the sowing is expected", "")
		}
	}
}

// checkPlantsOut warns of more plants out than cells sown, in sowings.csv or over the
// rows of out.csv, dead ones apart: a cell gives one plant.
func (l *loader) checkPlantsOut() {
	type fate struct {
		batch string
		dead  bool
	}
	out, last := map[fate]int{}, map[fate]*row{}
	for e := range alive(l.outs) {
		f := fate{e.is.Batch, e.is.To == Dead}
		out[f] += e.is.Plants
		last[f] = e.row
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
		for _, dead := range []bool{false, true} {
			f := fate{e.is.Code, dead}
			if n := out[f]; n > cells.Value {
				last[f].problem("out-above-cells", "plants", fmt.Sprintf("batch %s: ", quote(e.is.Code))+tooMany(n, cells.Value),
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
	rows := map[string]int{}
	for e := range alive(l.outs) {
		rows[e.is.Batch]++
	}
	for e := range alive(l.sowings) {
		if rows[e.is.Code] == 0 {
			continue
		}
		cols := []string{"set_out", "plants_out", "surplus"}
		if i := slices.IndexFunc(cols, func(c string) bool { return e.text(c) != "" }); i >= 0 {
			e.problem("out-twice", cols[i], fmt.Sprintf("batch %s has %s here and %s in out.csv", quote(e.is.Code), cols[i], plural(rows[e.is.Code], "row")),
				"one of the two is expected", "leave set_out, plants_out and surplus blank, or take the rows out of out.csv")
		}
	}
}
