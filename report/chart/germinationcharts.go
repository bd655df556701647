package chart

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"time"

	"traybook/records"
	"traybook/report"
)

// emergence shows the groups sown often enough to be judged, the lowest first.
func emergence(r *report.Report, year int) []Spec {
	var rows []report.Emergence
	for _, e := range r.Emergence {
		if e.Season == year && !e.Few() && e.Rate.Known {
			rows = append(rows, e)
		}
	}
	if len(rows) == 0 {
		return nil
	}
	slices.SortStableFunc(rows, func(a, b report.Emergence) int { return cmp.Compare(a.Rate.Value, b.Rate.Value) })
	kinds := kindsOf(rows, func(e report.Emergence) string { return e.Kind })
	var dots []DotRow
	for _, e := range rows[:min(len(rows), mostRows)] {
		dots = append(dots, DotRow{Name: groupName(e.Group), Value: pointer(e.Rate), Low: pointer(e.Low), High: pointer(e.High),
			Series: slices.Index(kinds, e.Kind), Note: batches(e.Batches)})
	}
	h := Head{Name: season("emergence", year), Title: shown(fmt.Sprintf("Emergence in %d, lowest first", year), len(rows), "lowest")}
	return []Spec{DotWhisker(h, dots, orWords(kinds, "kind unknown"), Axis{Name: "cells with a seedling, of cells looked at", Percent: true})}
}

// groupName names a group within a season and kind: tomato, Ember, 72.
func groupName(g report.Group) string {
	name := g.Crop + ", " + g.Variety
	if g.Cells.Known {
		name += fmt.Sprintf(", %d", g.Cells.Value)
	}
	return name
}

// kindsOf lists the kinds of rows, sorted.
func kindsOf[T any](rows []T, kind func(T) string) []string {
	var kinds []string
	for _, row := range rows {
		if !slices.Contains(kinds, kind(row)) {
			kinds = append(kinds, kind(row))
		}
	}
	slices.Sort(kinds)
	return kinds
}

// orWords puts words in the place of an empty name.
func orWords(names []string, empty string) []string {
	out := slices.Clone(names)
	for i, n := range out {
		if n == "" {
			out[i] = empty
		}
	}
	return out
}

// oftenSown is the least number of weeks for a chart of emergence by week.
const oftenSown = 5

// weeks shows the emergence of crops sown often by week of sowing, with the
// temperature beside it.
func weeks(r *report.Report, year int) []Spec {
	byCrop := map[string][]report.SowingWeek{}
	for _, w := range r.Weeks {
		if w.Season == year && w.Rate.Known {
			byCrop[w.Crop] = append(byCrop[w.Crop], w)
		}
	}
	var specs []Spec
	for _, crop := range sortedKeys(byCrop) {
		if rows := byCrop[crop]; len(rows) >= oftenSown {
			specs = append(specs, weekChart(r, year, crop, rows))
		}
	}
	return specs
}

func weekChart(r *report.Report, year int, crop string, rows []report.SowingWeek) Spec {
	up := Series{Name: "emergence"}
	temps := map[string]*Series{}
	for _, w := range rows {
		day := mondayOf(w.Week).String()
		up.Points = append(up.Points, Point{Date: day, Value: pointer(w.Rate)})
		if w.Temp.Known {
			if temps[w.TempOf] == nil {
				temps[w.TempOf] = &Series{Name: "temperature, " + w.TempOf}
			}
			t := r.Book.Settings.Degrees(w.Temp.Value)
			temps[w.TempOf].Points = append(temps[w.TempOf].Points, Point{Date: day, Value: &t})
		}
	}
	var beside *Panel
	if len(temps) > 0 {
		beside = &Panel{Axis: Axis{Name: "mean temperature", Unit: r.Book.Settings.DegreeSign()}}
		for _, place := range sortedKeys(temps) {
			beside.Series = append(beside.Series, *temps[place])
		}
	}
	h := Head{Name: season("weeks", year, crop), Title: fmt.Sprintf("Emergence of %s by week of sowing, %d", crop, year)}
	return Lines(h, []Series{up}, Axis{Name: "cells with a seedling", Percent: true}, beside)
}

// mondayOf is the first day of an ISO 8601 week written 2025-W14.
func mondayOf(week string) records.Date {
	var year, n int
	if _, err := fmt.Sscanf(week, "%d-W%d", &year, &n); err != nil {
		return 0
	}
	fourth := records.NewDate(year, time.January, 4) // always in week 1
	weekday := (int(fourth.Time().Weekday()) + 6) % 7
	return fourth - records.Date(weekday) + records.Date(7*(n-1))
}

func sortedKeys[V any](m map[string]V) []string {
	keys := make([]string, 0, len(m))
	for k := range m {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	return keys
}

// mostCauses is how many causes stand apart in the chart of losses.
const mostCauses = 5

// losses shows the cells lost by month and cause.
func losses(r *report.Report, year int) []Spec {
	cells := map[string]*[13]int{}
	total := map[string]int{}
	for _, l := range r.Losses {
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
	causes := sortedKeys(total)
	slices.SortStableFunc(causes, func(a, b string) int { return cmp.Compare(total[b], total[a]) })
	parts := orWords(causes[:min(len(causes), mostCauses)], "no cause written")
	if len(causes) > mostCauses {
		parts = append(parts, "other causes")
	}
	h := Head{Name: season("losses", year), Title: fmt.Sprintf("Cells lost by month and cause, %d", year)}
	return []Spec{StackedBars(h, lossRows(causes, cells), parts, Axis{Name: "cells lost", Unit: "cells"})}
}

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
			row.Note = fmt.Sprintf("%d cells", sum)
			rows = append(rows, row)
		}
	}
	return rows
}

func value(p *float64) float64 {
	if p == nil {
		return 0
	}
	return *p
}

// lots shows the lots furthest below their packets.
func lots(r *report.Report) []Spec {
	var rows []report.LotFigure
	for _, l := range r.Lots {
		if l.SeedRate.Known && l.Label.Known && !l.Cluster {
			rows = append(rows, l)
		}
	}
	if len(rows) == 0 {
		return nil
	}
	gap := func(l report.LotFigure) float64 { return l.Label.Value - l.SeedRate.Value }
	slices.SortStableFunc(rows, func(a, b report.LotFigure) int { return cmp.Compare(gap(b), gap(a)) })
	var dots []DotRow
	for _, l := range rows[:min(len(rows), mostRows)] {
		series := 0
		if l.Below.Or(false) {
			series = 1
		}
		dots = append(dots, DotRow{Name: strings.Join([]string{l.Lot.Lot, l.Lot.Crop, l.Lot.Variety}, ", "), Series: series,
			Value: pointer(l.SeedRate), Low: pointer(l.SeedLow), High: pointer(l.SeedHigh),
			Note: fmt.Sprintf("packet %.0f %%, %s", l.Label.Value*100, batches(l.Counted))})
	}
	h := Head{Name: "lots", Title: shown("Seed that came up, the furthest below its packet first", len(rows), "first")}
	return []Spec{DotWhisker(h, dots, []string{"within what a mix allows", "below its packet"}, Axis{Name: "seeds that came up", Percent: true})}
}
