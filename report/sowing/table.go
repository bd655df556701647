package sowing

import (
	"math"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/plants"
	"traybook/report/rate"
)

// The table is told for so many plants wanted; the plain habit sows so many cells for
// them, a fifth more.
const (
	hundred    = 100
	plainCells = 120
)

// noise is what sums and products of parts may miss a whole number or each other by
// (rule "Missing").
const noise = 1e-9

// table returns a row for every group of 3 batches or more (rule "How much to sow").
func table(l level, sure float64) []Row {
	slices.SortFunc(l.keys, batch.Order)
	var rows []Row
	for _, g := range l.keys {
		if r := rowOf(g, l, sure); !r.Rate.Few() {
			rows = append(rows, r)
		}
	}
	return rows
}

// rowOf is how much to sow of one group.
func rowOf(g batch.Group, l level, sure float64) Row {
	r := Row{Group: g, Chance: l.chance(g), Target: target(l.groups[g])}
	r.CellsPer100 = r.cells(hundred, sure)
	r.PlainFails = r.fails(plainCells, hundred)
	if r.Target.Known {
		r.CellsToSow = r.cells(r.Target.Value, sure)
	}
	r.TraysToSow, r.TraysPer100 = traysOf(r.CellsToSow, g.Cells), traysOf(r.CellsPer100, g.Cells)
	if r.CellsToSow.Known {
		r.LeftOver = records.Known(float64(r.CellsToSow.Value)*r.Rate.Share.Value - float64(r.Target.Value))
	}
	return r
}

// target is what one sowing of a group is asked for: the median plants wanted, else
// the median plants out to the field, rounded up.
func target(of []*plants.Plants) Whole {
	var wanted, out []float64
	for _, p := range of {
		if p.Wanted.Or(0) > 0 {
			wanted = append(wanted, float64(p.Wanted.Value))
		}
		if p.FieldOut.Or(0) > 0 {
			out = append(out, p.FieldOut.Value)
		}
	}
	if len(wanted) == 0 {
		wanted = out
	}
	median := rate.Median(wanted)
	return Whole{Value: int(math.Ceil(median.Value - noise)), Known: median.Known}
}

// traysOf is how many trays so many cells take, rounded up; unknown where either is.
func traysOf(cells, ofTray Whole) Whole {
	if !cells.Known || ofTray.Or(0) <= 0 {
		return Whole{}
	}
	return records.Known((cells.Value + ofTray.Value - 1) / ofTray.Value)
}
