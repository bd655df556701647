package chart

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"traybook/report"
)

// lots shows the lots furthest below their packets.
func lots(r *report.Report) []Spec {
	var rows []report.LotFigure
	for _, l := range r.Lots {
		if l.Gap().Known {
			rows = append(rows, l)
		}
	}
	if len(rows) == 0 {
		return nil
	}
	slices.SortStableFunc(rows, func(a, b report.LotFigure) int { return cmp.Compare(b.Gap().Value, a.Gap().Value) })
	var dots []DotRow
	for _, l := range rows[:min(len(rows), mostLots)] {
		series := 0
		if l.Below.Or(false) {
			series = 1
		}
		dots = append(dots, DotRow{Name: strings.Join([]string{l.Lot.Code, l.Lot.Crop, l.Lot.Variety}, ", "), Series: series,
			Value: pointer(l.SeedRate), Low: pointer(l.SeedLow), High: pointer(l.SeedHigh), Mark: pointer(l.Label),
			Note: lotNote(l)})
	}
	h := Head{Name: "lots", Title: lotTitle(len(rows))}
	h.Label = sayLots(h.Title, rows)
	return []Spec{DotWhisker(h, dots, []string{"came up as a mix allows", "came up worse"}, Axis{Name: "seeds that came up", Percent: true, Mark: "packet"})}
}

// lotNote is what a lot's rate rests on. A rate of seeds sown several to a cell is
// worked out from full and empty cells (rule 11), which is worth knowing.
func lotNote(l report.LotFigure) string {
	if l.SeedsPerCell.Or(1) > 1 {
		return fmt.Sprintf("%s, %d seeds a cell", batches(l.Counted), l.SeedsPerCell.Value)
	}
	return batches(l.Counted)
}

// mostLots is how many lots the chart shows: those that may be in doubt.
const mostLots = 20

func lotTitle(all int) string {
	title := "Seed that came up, the furthest below its packet first"
	if all > mostLots {
		title += fmt.Sprintf(": %d of %d lots", mostLots, all)
	}
	return title
}

// sayLots says how many lots lie below their packets and which is the furthest.
func sayLots(title string, rows []report.LotFigure) string {
	below := 0
	for _, l := range rows {
		if l.Below.Or(false) {
			below++
		}
	}
	l := rows[0]
	return fmt.Sprintf("%s. Of %d lots with a packet's figure %d came up worse than a mix allows. Furthest below its packet: %s, %s, %.0f %% against %.0f %%.",
		title, len(rows), below, l.Lot.Code, l.Lot.Variety, 100*l.SeedRate.Value, 100*l.Label.Value)
}
