package chart

import (
	"cmp"
	"fmt"
	"slices"

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
	slices.SortStableFunc(rows, func(a, b report.Quality) int { return cmp.Compare(a.Rate.Value, b.Rate.Value) })
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
	return []Spec{StackedBars(h, bars, words, Axis{Name: "plants scored", Percent: true})}
}

// scored is the number of plants of a group that were scored one by one.
func scored(q report.Quality) (n float64) {
	for _, s := range q.S {
		n += s.Or(0)
	}
	return n
}

// leewayNames are the bands of days past the planned date.
var leewayNames = map[int]string{0: "on time", 1: "1 to 3 days late", 4: "4 to 7", 8: "8 to 14", 15: "15 and more"}

// leeway shows how long plants stayed fit, by kind of tray, all crops together.
func leeway(r *report.Report) []Spec {
	var rows []report.Leeway
	some := false
	for _, l := range r.Leeway {
		if l.Crop == "" {
			rows = append(rows, l)
			some = some || l.Rate.Known
		}
	}
	if !some {
		return nil
	}
	var bands []string
	for _, b := range report.LeewayBands {
		bands = append(bands, leewayNames[b])
	}
	var series []BarSeries
	kinds := kindsOf(rows, func(l report.Leeway) string { return l.Kind })
	names := orWords(kinds, "kind unknown")
	for i, kind := range kinds {
		one := BarSeries{Name: names[i], Bars: make([]Bar, len(bands))}
		for _, l := range rows {
			if at := slices.Index(report.LeewayBands, l.DaysLate); l.Kind == kind && at >= 0 {
				one.Bars[at] = Bar{Value: pointer(l.Rate), Low: pointer(l.Low), High: pointer(l.High)}
			}
		}
		series = append(series, one)
	}
	h := Head{Name: "leeway", Title: "Plants still fit to set out, by days past the planned date"}
	return []Spec{GroupedBars(h, bands, series, Axis{Name: "plants fit to set out, of plants looked at", Percent: true})}
}
