package chart

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"traybook/report"
)

// quality shows the shares by score of groups that were scored plant by plant.
func quality(r *report.Report, year int) []Spec {
	var rows []report.Quality
	for _, q := range r.Quality {
		if q.Season == year && scored(q) > 0 {
			rows = append(rows, q)
		}
	}
	if len(rows) == 0 {
		return nil
	}
	slices.SortStableFunc(rows, func(a, b report.Quality) int { return cmp.Compare(a.Share.Value, b.Share.Value) })
	var bars []StackRow
	for _, q := range rows[:min(len(rows), mostRows)] {
		name := groupName(q.Group)
		if q.Kind != "" {
			name += " " + q.Kind
		}
		bar := StackRow{Name: name, Note: fmt.Sprintf("%.0f plants", scored(q))}
		for _, n := range q.S {
			bar.Parts = append(bar.Parts, Num(n.Or(0)/scored(q)))
		}
		bars = append(bars, bar)
	}
	var words []string
	for i, w := range r.Book.Settings.ScoreWords {
		words = append(words, fmt.Sprintf("%d %s", i+1, w))
	}
	h := Head{Name: season("quality", year), Title: shown(fmt.Sprintf("Plants by score at their last look, %d", year), len(rows), "least fit")}
	h.Label = h.Title + ". " + sayFit(rows)
	return []Spec{StackedBars(h, bars, words, Axis{Name: "plants scored", Percent: true})}
}

// scored is the number of plants of a group that were scored one by one.
func scored(q report.Quality) (n float64) {
	for _, s := range q.S {
		n += s.Or(0)
	}
	return n
}

// sayFit names the groups with the smallest and the largest share fit to set out.
func sayFit(rows []report.Quality) string {
	fit := make([]DotRow, len(rows))
	for i, q := range rows {
		fit[i] = DotRow{Name: strings.TrimSpace(groupName(q.Group) + " " + q.Kind), Value: pointer(q.Share)}
	}
	return "Fit to set out: " + sayRows(fit, Axis{Percent: true})
}
