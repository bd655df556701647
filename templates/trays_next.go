package templates

import (
	"traybook/report/trays"
	"traybook/templates/draw"
)

// nthWords names a run of trays: 43rd, or 43rd to 47th.
func nthWords(first, last int) string {
	if first == last {
		return draw.Ordinal(first)
	}
	return draw.Ordinal(first) + " to " + draw.Ordinal(last)
}

// runsOfTrays yields a pair's further trays, those that are alike together. A farm may
// want fifty more trays of a code; most of them are used as often as the one before and
// would fill the page with one line over and over.
func runsOfTrays(all []trays.NextTray, pb trays.Payback) func(func([]trays.NextTray) bool) {
	return func(yield func([]trays.NextTray) bool) {
		var run []trays.NextTray
		for _, n := range all {
			if n.Tray != pb.Tray || n.Other != pb.Other {
				continue
			}
			if len(run) > 0 && !sameTrays(run[0], n) {
				if !yield(run) {
					return
				}
				run = nil
			}
			run = append(run, n)
		}
		if len(run) > 0 {
			yield(run)
		}
	}
}

// sameTrays reports whether two further trays may share a row. Their worth need not be
// asked: it follows from how often they are used.
func sameTrays(a, b trays.NextTray) bool {
	return a.Uses == b.Uses && a.Pays == b.Pays && a.PaysLow == b.PaysLow && a.PaysHigh == b.PaysHigh
}
