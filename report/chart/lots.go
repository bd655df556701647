package chart

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"traybook/report"
	"traybook/report/batch"
	"traybook/report/germination"
)

// lots shows the lots furthest below their packets.
func lots(r *report.Report) []Spec {
	rows := batch.Filter(r.Germination.Lots, func(l germination.Lot) bool { return l.Gap().Known })
	if len(rows) == 0 {
		return nil
	}
	slices.SortStableFunc(rows, func(a, b germination.Lot) int { return cmp.Compare(b.Gap().Value, a.Gap().Value) })
	var dots []DotRow
	for _, l := range rows[:min(len(rows), mostLots)] {
		series := 0
		if l.Below.Or(false) {
			series = 1
		}
		dots = append(dots, DotRow{Name: strings.Join([]string{l.Code, l.Crop, l.Variety}, ", "), Series: series,
			Value: pointer(l.SeedRate), Low: pointer(l.SeedLow), High: pointer(l.SeedHigh), Mark: pointer(l.Label),
			Note: lotNote(l)})
	}
	h := Head{Name: "lots", Title: lotTitle(len(rows))}
	h.Label = sayLots(h.Title, rows)
	return []Spec{DotWhisker(h, dots, []string{"came up as a mix allows", "came up worse"}, Axis{Name: "seeds that came up", Percent: true, Mark: "packet"})}
}

// lotNote is what a lot's rate rests on. A rate of seeds sown several to a cell is
// worked out from full and empty cells (rule "Per seed"), which is worth knowing.
func lotNote(l germination.Lot) string {
	if l.PerCell.Or(1) > 1 {
		return fmt.Sprintf("%s, %d seeds a cell", batches(l.Counted), l.PerCell.Value)
	}
	return batches(l.Counted)
}

// mostLots is how many lots the chart shows: those that may be in doubt.
const mostLots = 20

// lotTitle says how many of all lots the chart shows.
func lotTitle(all int) string {
	title := "Seed that came up, the furthest below its packet first"
	if all > mostLots {
		title += fmt.Sprintf(": %d of %d lots", mostLots, all)
	}
	return title
}

// sayLots says how many lots lie below their packets and which is the furthest.
func sayLots(title string, rows []germination.Lot) string {
	below := 0
	for _, l := range rows {
		if l.Below.Or(false) {
			below++
		}
	}
	l := rows[0]
	return fmt.Sprintf("%s. Of %d lots with a packet's figure %d came up worse than a mix allows. Furthest below its packet: %s, %s, %s against %s.",
		title, len(rows), below, l.Code, l.Variety, percent(l.SeedRate.Value), percent(l.Label.Value))
}
