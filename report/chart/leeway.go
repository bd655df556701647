package chart

import (
	"fmt"
	"slices"
	"strings"

	"traybook/report"
	"traybook/report/plants"
	"traybook/report/words"
)

// leeway shows how long plants stayed fit, by kind of tray, all crops together,
// against the share that counts as still fit.
func leeway(r *report.Report) []Spec {
	var rows []plants.Leeway
	some := false
	for _, l := range r.Plants.Leeway {
		if l.Crop == "" {
			rows = append(rows, l)
			some = some || l.Share.Known
		}
	}
	if !some {
		return nil
	}
	kinds := kindsOf(rows, func(l plants.Leeway) string { return l.Kind })
	names := orWords(kinds, "kind unknown")
	var series []BarSeries
	for i, kind := range kinds {
		one := BarSeries{Name: names[i], Bars: make([]Bar, len(plants.LeewayBands))}
		for k, band := range plants.LeewayBands {
			l := leewayOf(rows, kind, band)
			one.Bars[k] = Bar{Value: pointer(l.Share), Low: pointer(l.Low), High: pointer(l.High)}
		}
		series = append(series, one)
	}
	h := Head{Name: "leeway", Title: "Plants still fit to set out, by days past the planned date"}
	h.Label = h.Title + ". " + sayLeeway(rows)
	return []Spec{GroupedBars(h, leewayBands(rows, kinds), series, Axis{Name: "plants fit to set out", Percent: true},
		Line{plants.StillFit, "still fit: " + percent(plants.StillFit)})}
}

// leewayOf finds a band of a kind; a band without a look is empty: a gap, not 0.
func leewayOf(rows []plants.Leeway, kind string, band int) plants.Leeway {
	at := slices.IndexFunc(rows, func(l plants.Leeway) bool { return l.Kind == kind && l.DaysLate == band })
	if at < 0 {
		return plants.Leeway{}
	}
	return rows[at]
}

// leewayBands names the bands, each with the batches behind its columns in their
// order: "4 to 7 days late: 12, 30 batches".
func leewayBands(rows []plants.Leeway, kinds []string) []string {
	var bands []string
	for _, band := range plants.LeewayBands {
		var counts []string
		for _, kind := range kinds {
			counts = append(counts, fmt.Sprint(leewayOf(rows, kind, band).Batches))
		}
		bands = append(bands, fmt.Sprintf("%s: %s batches", words.DaysLate(band), strings.Join(counts, ", ")))
	}
	return bands
}

// sayLeeway reads out every column.
func sayLeeway(rows []plants.Leeway) string {
	var said []string
	for _, l := range rows {
		if l.Share.Known {
			said = append(said, fmt.Sprintf("%s, %s: %s", orWords([]string{l.Kind}, "kind unknown")[0], words.DaysLate(l.DaysLate), percent(l.Share.Value)))
		}
	}
	return strings.Join(said, "; ") + "."
}
