package chart

import (
	"fmt"

	"traybook/report"
	"traybook/report/trays"
	"traybook/report/words"
)

// Whether a further tray earns its price, as parts of the chart of next trays.
const (
	pays = iota
	paysNot
	paysPerhaps // at the high end of the gain only
	paysUnknown
)

// payWords are the parts in words.
var payWords = []string{"earns its price", "does not earn it", "earns it only at the high end of the gain", "cannot be told"}

// mostRows is how many rows the chart shows.
const mostRows = 30

// nextTrays shows how often the next trays would be used and where buying more
// stops paying. Trays that are alike share a row. A pair without a verdict has none.
func nextTrays(r *report.Report, p *trays.Payback) []Spec {
	if p.Verdict == "" || p.Buy == nil {
		return nil
	}
	rows, divided := []StackRow{}, false
	for _, run := range trayRuns(r.Trays.NextTray, p) {
		if len(rows) > mostRows {
			break
		}
		if !divided && run[0].Nth > p.Buy.Owned+p.Buy.N {
			rows, divided = append(rows, StackRow{Divider: sayStop(*p.Buy)}), true
		}
		rows = append(rows, trayRow(run))
	}
	if len(rows) == 0 {
		return nil
	}
	h := Head{Name: Name("nexttray", p.Tray, p.Other), Title: fmt.Sprintf("Uses of each further %s, mean of the seasons replayed", p.Tray)}
	h.Label = fmt.Sprintf("%s. %d owned; %s.", h.Title, p.Buy.Owned, sayStop(*p.Buy))
	return []Spec{StackedBars(h, rows, payWords, Axis{Name: "uses a season of each tray", Unit: "uses"})}
}

// trayRuns are a pair's further trays, neighbours with the same uses and the same
// answers together.
func trayRuns(all []trays.NextTray, p *trays.Payback) [][]trays.NextTray {
	var runs [][]trays.NextTray
	for _, n := range all {
		if n.Tray != p.Tray || n.Other != p.Other {
			continue
		}
		if last := len(runs) - 1; last >= 0 && runs[last][0].Uses == n.Uses && payPart(runs[last][0]) == payPart(n) {
			runs[last] = append(runs[last], n)
		} else {
			runs = append(runs, []trays.NextTray{n})
		}
	}
	return runs
}

// payPart says whether a tray earns its price: in the middle of the gain, else at its
// high end. Without a gain it cannot be told, which is not no.
func payPart(n trays.NextTray) int {
	switch {
	case !n.Pays.Known:
		return paysUnknown
	case n.Pays.Value:
		return pays
	case n.PaysHigh.Or(false):
		return paysPerhaps
	}
	return paysNot
}

// trayRow is the bar of trays that are alike.
func trayRow(run []trays.NextTray) StackRow {
	first, last := run[0], run[len(run)-1]
	row := StackRow{Name: fmt.Sprintf("tray %d", first.Nth), Parts: make([]*float64, len(payWords)), Note: words.Fixed(first.Uses, 1) + " uses"}
	if len(run) > 1 {
		row.Name = fmt.Sprintf("trays %d to %d", first.Nth, last.Nth)
	}
	row.Parts[payPart(first)] = Num(first.Uses)
	return row
}

// sayStop says how many more trays would pay.
func sayStop(b trays.Buy) string {
	switch {
	case b.N == 0 && b.High == 0:
		return "no further one would pay, not even at the high end"
	case b.N == 0:
		return fmt.Sprintf("no further one would pay; %d at the high end", b.High)
	}
	return fmt.Sprintf("%d more would pay; %d at the low end, %d at the high", b.N, b.Low, b.High)
}
