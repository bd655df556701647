package chart

import (
	"fmt"

	"traybook/records"
	"traybook/report"
)

// matches shows the matched sowings of a pair as plants a tray, with their mean,
// its range and the break-even on the same scale.
func matches(r *report.Report, p *report.Payback) []Spec {
	cells := float64(p.Cells)
	strip := Strip{MeanName: "mean and its range", DotsName: "one matched sowing each", Note: fmt.Sprintf("%d matched sowings", p.Matches)}
	for _, m := range r.Matches {
		if m.Tray == p.Tray && m.Other == p.Other {
			strip.Dots = append(strip.Dots, m.Difference*cells)
		}
	}
	if len(strip.Dots) == 0 {
		return nil
	}
	strip.Mean, strip.Low, strip.High = times(p.Difference, cells), times(p.DifferenceLow, cells), times(p.DifferenceHigh, cells)
	lines := []Line{{0, "no difference"}}
	if p.BreakEvenPlants.Known {
		lines = append(lines, Line{p.BreakEvenPlants.Value, "pays from here"})
	}
	h := Head{Name: Name("matches", p.Tray, p.Other), Title: fmt.Sprintf("%s against %s, matched sowings", p.Tray, p.Other)}
	axis := Axis{Name: fmt.Sprintf("more usable plants a tray in %s", p.Tray), Unit: "plants", Signed: true}
	return []Spec{DotsStrip(h, []Strip{strip}, axis, lines...)}
}

func times(n report.Num, by float64) *float64 {
	if !n.Known {
		return nil
	}
	return Num(n.Value * by)
}

// nextTrays shows how often the next trays would be used and which of them pay.
func nextTrays(r *report.Report, p *report.Payback) []Spec {
	var rows []StackRow
	for _, n := range r.NextTray {
		if n.Tray != p.Tray || n.Other != p.Other || len(rows) == mostRows {
			continue
		}
		row := StackRow{Name: fmt.Sprintf("tray %d", n.Nth), Parts: []*float64{nil, nil, nil}}
		part, note := 2, "cannot tell"
		if n.Pays.Known {
			part, note = 1, "does not pay"
			if n.Pays.Value {
				part, note = 0, "pays"
			}
		}
		row.Parts[part], row.Note = Num(n.Uses), fmt.Sprintf("%.1f uses, %s", n.Uses, note)
		rows = append(rows, row)
	}
	if len(rows) == 0 {
		return nil
	}
	h := Head{Name: Name("nexttray", p.Tray, p.Other), Title: fmt.Sprintf("Uses of each further %s, mean of the seasons replayed", p.Tray)}
	return []Spec{StackedBars(h, rows, []string{"pays", "does not pay", "cannot tell"}, Axis{Name: "uses a season", Unit: "uses"})}
}

// rooms shows how full each place was over a season.
func rooms(r *report.Report, year int) []Spec {
	first, after := r.Book.Settings.SeasonDays(year)
	if !r.Finished(year) { // what is open does not leave on the last date in the book
		after = max(first+1, r.LastDate)
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
	var lines []Line
	if m.Capacity.Known && m.Capacity.Value > 0 {
		lines = append(lines, Line{m.Capacity.Value, fmt.Sprintf("room for %g", m.Capacity.Value)})
	}
	what := map[report.PlaceKind]string{report.BenchPlace: "Bench places taken", report.ChamberPlace: "Trays in the chambers", report.TrayPlace: m.Place + " trays in use"}[m.Kind]
	if m.Kind == report.TrayPlace && len(lines) > 0 {
		lines[0].Label = fmt.Sprintf("%g owned", m.Capacity.Value)
	}
	h := Head{Name: season("room", m.Season, m.Place), Title: fmt.Sprintf("%s, %d", what, m.Season)}
	return StepLines(h, []Series{{Name: what, Points: points}}, Axis{Name: what, Unit: "trays"}, lines...)
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
