package chart

import (
	"fmt"
	"slices"
	"strings"

	"traybook/report"
)

// LeewayNames are the bands of days past the planned date, by their first day.
var LeewayNames = map[int]string{0: "up to the day", 1: "1 to 3 days late", 4: "4 to 7 days late", 8: "8 to 14 days late", 15: "15 days or more"}

// leeway shows how long plants stayed fit, by kind of tray, all crops together,
// against the share that counts as still fit.
func leeway(r *report.Report) []Spec {
	var rows []report.Leeway
	some := false
	for _, l := range r.Leeway {
		if l.Crop == "" {
			rows = append(rows, l)
			some = some || l.Share.Known
		}
	}
	if !some {
		return nil
	}
	kinds := kindsOf(rows, func(l report.Leeway) string { return l.Kind })
	names := orWords(kinds, "kind unknown")
	var series []BarSeries
	for i, kind := range kinds {
		one := BarSeries{Name: names[i], Bars: make([]Bar, len(report.LeewayBands))}
		for k, band := range report.LeewayBands {
			l := leewayOf(rows, kind, band)
			one.Bars[k] = Bar{Value: pointer(l.Share), Low: pointer(l.Low), High: pointer(l.High)}
		}
		series = append(series, one)
	}
	h := Head{Name: "leeway", Title: "Plants still fit to set out, by days past the planned date"}
	h.Label = h.Title + ". " + sayLeeway(rows)
	return []Spec{GroupedBars(h, leewayBands(rows, kinds), series, Axis{Name: "plants fit to set out", Percent: true},
		Line{report.StillFit, fmt.Sprintf("still fit: %.0f %%", 100*report.StillFit)})}
}

func leewayOf(rows []report.Leeway, kind string, band int) report.Leeway {
	at := slices.IndexFunc(rows, func(l report.Leeway) bool { return l.Kind == kind && l.DaysLate == band })
	if at < 0 {
		return report.Leeway{}
	}
	return rows[at]
}

// leewayBands names the bands, each with the batches behind its columns in their
// order: "4 to 7 days late: 12, 30 batches".
func leewayBands(rows []report.Leeway, kinds []string) []string {
	var bands []string
	for _, band := range report.LeewayBands {
		var counts []string
		for _, kind := range kinds {
			counts = append(counts, fmt.Sprint(leewayOf(rows, kind, band).Batches))
		}
		bands = append(bands, fmt.Sprintf("%s: %s batches", LeewayNames[band], strings.Join(counts, ", ")))
	}
	return bands
}

// sayLeeway reads out every column.
func sayLeeway(rows []report.Leeway) string {
	var said []string
	for _, l := range rows {
		if l.Share.Known {
			said = append(said, fmt.Sprintf("%s, %s: %.0f %%", orWords([]string{l.Kind}, "kind unknown")[0], LeewayNames[l.DaysLate], 100*l.Share.Value))
		}
	}
	return strings.Join(said, "; ") + "."
}
