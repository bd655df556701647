package chart

import (
	"fmt"

	"traybook/records"
	"traybook/report"
)

// rooms shows how full each place was over a season.
func rooms(r *report.Report, year int) []Spec {
	first, after := r.Book.Settings.SeasonDays(year)
	if r.LastDate.Known() && !r.Finished(year) {
		after = min(after, max(first+2, r.LastDate)) // open batches are known to stand until then
	}
	var specs []Spec
	for _, m := range r.Room {
		if m.Season == year {
			specs = append(specs, roomChart(m, levels(r.InUse, m.Place, first, after)))
		}
	}
	return specs
}

func roomChart(m report.Room, points []Point) Spec {
	what := map[report.PlaceKind]string{report.BenchPlace: "Bench places taken", report.ChamberPlace: "Chamber places taken", report.TrayPlace: m.Place + " trays in use"}[m.Kind]
	h := Head{Name: season("room", m.Season, m.Place), Title: fmt.Sprintf("%s, %d", what, m.Season)}
	h.Label = fmt.Sprintf("%s. At most %s", h.Title, trays(m.Peak))
	if m.PeakDate.Known() {
		h.Label += ", on " + spokenDay(m.PeakDate)
	}
	var lines []Line
	if m.Capacity.Known && m.Capacity.Value > 0 {
		words := "room for " + trays(m.Capacity.Value)
		if m.Kind == report.TrayPlace {
			words = fmt.Sprintf("%.4g owned", m.Capacity.Value)
		}
		lines, h.Label = []Line{{m.Capacity.Value, words}}, h.Label+"; "+words
	}
	h.Label += "."
	return StepLines(h, []Series{{Name: what, Points: points}}, Axis{Name: what, Unit: "trays", Whole: true}, lines...)
}

func trays(n float64) string {
	if n == 1 {
		return "1 tray"
	}
	return fmt.Sprintf("%.4g trays", n)
}

// levels are the levels of a place on the days of a season on which it changed,
// and on its first day and its last.
func levels(rows []report.InUse, place string, first, after records.Date) []Point {
	var points []Point
	before, last := 0.0, 0.0
	for _, u := range rows {
		switch {
		case u.Place != place || u.Date >= after:
		case u.Date <= first:
			before, last = u.Trays, u.Trays
		default:
			points = append(points, Point{Date: u.Date.String(), Value: Num(u.Trays)})
			last = u.Trays
		}
	}
	points = append([]Point{{Date: first.String(), Value: Num(before)}}, points...)
	return append(points, Point{Date: (after - 1).String(), Value: Num(last)})
}
