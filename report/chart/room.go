package chart

import (
	"cmp"
	"fmt"
	"slices"

	"traybook/records"
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/room"
	"traybook/report/words"
)

// rooms shows how full each place was over a season.
func rooms(r *report.Report, year int) []figure {
	first, after := r.Book.Settings.SeasonDays(year)
	if today := r.Batches.Today; today.Known() && !r.Batches.Finished(year) {
		after = min(after, max(first+2, today)) // open batches are known to stand until then
	}
	var charts []figure
	loads := fullest(r.Room.Load, year)
	for _, m := range r.Room.Load {
		if slices.Contains(loads, m.Place) && m.Season == year {
			charts = append(charts, figure{season("room", year, m.Place), func(name string) Spec {
				return roomChart(name, m, levels(r.Room.InUse, m.Place, first, after))
			}})
		}
	}
	return charts
}

// MostRooms is how many places have a chart of how full they were: a season's fullest,
// where there are more. Each chart takes time and page; the table has all.
const MostRooms = 40

// fullest names the places of a season of which charts are drawn.
func fullest(all []room.Load, year int) []string {
	loads := batch.Filter(all, func(l room.Load) bool { return l.Season == year })
	slices.SortStableFunc(loads, func(a, b room.Load) int {
		return cmp.Or(cmp.Compare(a.Kind, b.Kind), cmp.Compare(b.Peak, a.Peak))
	})
	var names []string
	for _, l := range loads[:min(MostRooms, len(loads))] {
		names = append(names, l.Place)
	}
	return names
}

// roomChart draws the load of a place against what it holds. Nothing owned or no room
// written has no line: a capacity of 0 is no limit that was kept.
func roomChart(name string, m room.Load, points []Point) Spec {
	what := map[room.PlaceKind]string{room.BenchPlace: "Bench places taken", room.ChamberPlace: "Chamber places taken", room.TrayPlace: m.Place + " trays in use"}[m.Kind]
	h := Head{Name: name, Title: fmt.Sprintf("%s, %d", what, m.Season)}
	h.Label = fmt.Sprintf("%s. At most %s", h.Title, trayCount(m.Peak))
	if m.PeakDate.Known() {
		h.Label += ", on " + words.DayMonth(m.PeakDate)
	}
	var lines []Line
	if m.Capacity.Known && m.Capacity.Value > 0 {
		limit := "room for " + trayCount(m.Capacity.Value)
		if m.Kind == room.TrayPlace {
			limit = words.Number(m.Capacity.Value) + " owned"
		}
		lines, h.Label = []Line{{m.Capacity.Value, limit}}, h.Label+"; "+limit
	}
	h.Label += "."
	return StepLines(h, []Series{{Name: what, Points: points}}, Axis{Name: what, Unit: "trays", Whole: true}, lines...)
}

// trayCount writes a load, of which a part may be of a tray: 12.5 trays.
func trayCount(n float64) string { return words.Number(n) + " " + words.Unit(n, "tray", "trays") }

// levels are the levels of a place on the days of a season on which it changed,
// and on its first day and its last.
func levels(rows []room.InUse, place string, first, after records.Date) []Point {
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
