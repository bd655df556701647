package chart

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"traybook/report"
	"traybook/report/batch"
	"traybook/report/plants"
	"traybook/report/words"
)

// quality shows the shares by score of groups that were scored plant by plant.
func quality(r *report.Report, year int) []Spec {
	rows := batch.Filter(r.Plants.Quality, func(q plants.Quality) bool { return q.Season == year && scored(q) > 0 })
	if len(rows) == 0 {
		return nil
	}
	slices.SortStableFunc(rows, func(a, b plants.Quality) int { return cmp.Compare(a.Share.Value, b.Share.Value) })
	var bars []StackRow
	for _, q := range rows[:min(len(rows), mostRows)] {
		name := groupName(q.Group)
		if q.Kind != "" {
			name += " " + q.Kind
		}
		bar := StackRow{Name: name, Note: words.Count(int(scored(q)), "plant", "plants")}
		for _, n := range q.S {
			bar.Parts = append(bar.Parts, Num(n.Or(0)/scored(q)))
		}
		bars = append(bars, bar)
	}
	var scores []string
	for i, w := range r.Book.Settings.ScoreWords {
		scores = append(scores, fmt.Sprintf("%d %s", i+1, w))
	}
	h := Head{Name: season("quality", year), Title: shown(fmt.Sprintf("Plants by score at their last look, %d", year), len(rows), "least fit")}
	h.Label = h.Title + ". " + sayFit(rows)
	return []Spec{StackedBars(h, bars, scores, Axis{Name: "plants scored", Percent: true})}
}

// scored is the number of plants of a group that were scored one by one.
func scored(q plants.Quality) (n float64) {
	for _, s := range q.S {
		n += s.Or(0)
	}
	return n
}

// sayFit names the groups with the smallest and the largest share fit to set out.
func sayFit(rows []plants.Quality) string {
	fit := make([]DotRow, len(rows))
	for i, q := range rows {
		fit[i] = DotRow{Name: strings.TrimSpace(groupName(q.Group) + " " + q.Kind), Value: pointer(q.Share)}
	}
	return "Fit to set out: " + sayRows(fit, Axis{Percent: true})
}
