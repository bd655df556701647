package chart

import (
	"cmp"
	"fmt"
	"slices"
	"time"

	"traybook/report"
	"traybook/report/words"
)

// mostCauses is how many causes stand apart in the chart of losses.
const mostCauses = 5

// losses shows the cells lost by month and cause. A chart of more than a few causes cannot
// be told apart in grey print, so the smallest are one part; the table on the page has
// them all.
func losses(r *report.Report, year int) []figure {
	cells := map[string]*[13]int{}
	total := map[string]int{}
	for _, l := range r.Germination.Losses {
		if l.Season != year || l.Cells == 0 {
			continue
		}
		if cells[l.Cause] == nil {
			cells[l.Cause] = &[13]int{}
		}
		for m, n := range l.ByMonth {
			cells[l.Cause][m] += n
		}
		total[l.Cause] += l.Cells
	}
	if len(total) == 0 {
		return nil
	}
	return []figure{{season("losses", year), func(name string) Spec { return lossChart(name, year, cells, total) }}}
}

// lossChart draws the cells lost of each cause by month, the causes by their totals.
func lossChart(name string, year int, cells map[string]*[13]int, total map[string]int) Spec {
	causes := sortedKeys(total)
	slices.SortStableFunc(causes, func(a, b string) int { return cmp.Compare(total[b], total[a]) })
	parts := orWords(causes[:min(len(causes), mostCauses)], "no cause written")
	if len(causes) > mostCauses {
		parts = append(parts, "other causes")
	}
	h := Head{Name: name, Title: fmt.Sprintf("Cells lost by month and cause, %d", year)}
	return StackedBars(h, lossRows(causes, cells), parts, Axis{Name: "cells lost", Unit: "cells"})
}

// lossRows has a bar for each month with a loss, the causes in their order; those past the
// first few add up to the last part. A month without a loss has none. Months stand in the
// order of the calendar, each with the cells lost in it as its note.
func lossRows(causes []string, cells map[string]*[13]int) []StackRow {
	var rows []StackRow
	for m := time.January; m <= time.December; m++ {
		row, sum := StackRow{Name: m.String(), Parts: make([]*float64, min(len(causes), mostCauses+1))}, 0
		for i, c := range causes {
			n := cells[c][m]
			sum += n
			at := min(i, mostCauses)
			row.Parts[at] = Num(float64(n) + value(row.Parts[at]))
		}
		if sum > 0 {
			row.Note = words.Count(sum, "cell", "cells")
			rows = append(rows, row)
		}
	}
	return rows
}

// value is a number that may be missing as a part of a sum.
func value(p *float64) float64 {
	if p == nil {
		return 0
	}
	return *p
}
