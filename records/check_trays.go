package records

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
)

// change is a day on which more or fewer trays of a code are in use or owned.
type change struct {
	day    Date
	inUse  float64
	owned  float64
	sowing *row // that began then; nil for none
}

// checkTraysInUse compares, day by day and code by code, the trays in use with
// those owned. Only written ends count: a batch holds its trays from sowing
// until its end and the turnaround, one without an end on its sowing day alone.
func (l *loader) checkTraysInUse() {
	changes := l.purchases()
	cleared := l.cleared()
	for e := range alive(l.sowings) {
		code := e.is.Tray
		if _, counted := changes[code]; !counted {
			continue
		}
		free := e.is.Sown + 1
		if end := WrittenEnd(*e.is, cleared[e.is.ref]); end.Known() {
			free = end + Date(l.settings.TrayTurnaround)
		}
		changes[code] = append(changes[code], change{e.is.Sown, e.is.Trays, 0, &e.row}, change{free, -e.is.Trays, 0, nil})
	}
	for _, code := range slices.Sorted(maps.Keys(changes)) {
		checkOwned(code, changes[code])
	}
}

// purchases lists what changes the trays owned, for codes whose every row has a
// count.
func (l *loader) purchases() map[string][]change {
	changes := map[string][]change{}
	unknown := map[string]bool{}
	for e := range alive(l.trays) {
		if !e.is.Count.Known {
			unknown[e.is.Tray] = true
		}
		changes[e.is.Tray] = append(changes[e.is.Tray], change{day: e.is.Bought, owned: float64(e.is.Count.Value)})
	}
	maps.DeleteFunc(changes, func(code string, _ []change) bool { return unknown[code] })
	return changes
}

// cleared is the day on which each batch was cleared, by its place among the names, the
// latest where several rows say so.
func (l *loader) cleared() []Date {
	days := make([]Date, l.refs())
	for e := range alive(l.outs) {
		if e.is.Last {
			days[e.is.ref] = max(days[e.is.ref], e.is.Date)
		}
	}
	return days
}

// checkOwned warns of the first day on which more is in use than owned.
func checkOwned(code string, changes []change) {
	slices.SortStableFunc(changes, func(a, b change) int { return cmp.Compare(a.day, b.day) })
	inUse, owned := 0.0, 0.0
	var last *row
	for i, c := range changes {
		inUse, owned = inUse+c.inUse, owned+c.owned
		if c.sowing != nil {
			last = c.sowing
		}
		if i+1 < len(changes) && changes[i+1].day == c.day || inUse <= max(owned, 0)+1e-6 {
			continue
		}
		last.problem("trays-in-use", "trays", fmt.Sprintf("%s trays %s in use on %s, %s owned", plain(roundTo(inUse)), quote(code), c.day, plain(max(owned, 0))),
			"no more trays in use than owned are expected", "write every purchase into trays.csv, and when batches were cleared")
		return
	}
}

// roundTo rounds to thousandths, for messages.
func roundTo(x float64) float64 { return RoundHalfUp(x*1000) / 1000 }

// checkCellsOfTrays reports batches with more cells written than their whole trays hold:
// 150 cells are in no 2 trays of 72.
func (l *loader) checkCellsOfTrays() {
	for e := range alive(l.sowings) {
		most := WholeTrays(e.is.Trays) * l.trayCells(e.is.Tray)
		if most > 0 && e.is.Cells.Known && e.is.Cells.Value > most {
			e.problem("cells-above-trays", "cells", fmt.Sprintf("%d cells in %s of %d", e.is.Cells.Value, plural(WholeTrays(e.is.Trays), "tray"), l.trayCells(e.is.Tray)),
				fmt.Sprintf("at most %d cells are expected", most), "are trays, cells and the tray's code right?")
		}
	}
}
