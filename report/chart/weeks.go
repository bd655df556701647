package chart

import (
	"cmp"
	"fmt"
	"slices"
	"time"

	"traybook/records"
	"traybook/report"
	"traybook/report/germination"
	"traybook/report/words"
)

// oftenSown is the least number of weeks for a chart of emergence by week.
const oftenSown = 5

// MostWeeks is how many crops of a season have a chart of emergence by week: those of most
// batches, where there are more. Each chart takes time and page; the tables have all.
const MostWeeks = 40

// weeks shows the emergence of crops sown often by week of sowing, with the temperature
// beside it. Fewer weeks make no course to look at: they stand in the table alone.
func weeks(r *report.Report, year int) []figure {
	byCrop := map[string][]germination.Week{}
	for _, w := range r.Germination.Weeks {
		if w.Season == year && w.Share.Known {
			byCrop[w.Crop] = append(byCrop[w.Crop], w)
		}
	}
	var charts []figure
	for _, crop := range mostSown(byCrop) {
		charts = append(charts, figure{season("weeks", year, crop), func(name string) Spec { return weekChart(r, name, year, crop, byCrop[crop]) }})
	}
	return charts
}

// mostSown are the crops sown often, by name; of more than MostWeeks those of most batches.
func mostSown(weeks map[string][]germination.Week) []string {
	sown := map[string]int{}
	for crop, rows := range weeks {
		for _, w := range rows {
			sown[crop] += w.Batches
		}
	}
	crops := slices.DeleteFunc(sortedKeys(weeks), func(crop string) bool { return len(weeks[crop]) < oftenSown })
	slices.SortStableFunc(crops, func(a, b string) int { return cmp.Compare(sown[b], sown[a]) })
	crops = crops[:min(len(crops), MostWeeks)]
	slices.Sort(crops)
	return crops
}

// weekChart draws emergence over temperature. Weeks are placed at their Mondays;
// temperatures of a chamber and of the house are never one line.
func weekChart(r *report.Report, name string, year int, crop string, rows []germination.Week) Spec {
	up := Series{}
	temps := map[string]*Series{}
	rests := 0
	for _, w := range rows {
		rests += w.Batches
		day := mondayOf(w.Week).String()
		up.Points = append(up.Points, Point{Date: day, Value: pointer(w.Share)})
		if w.Temp.Known {
			if temps[w.TempOf] == nil {
				temps[w.TempOf] = &Series{Name: "temperature, " + w.TempOf}
			}
			t := r.Book.Settings.Degrees(w.Temp.Value)
			temps[w.TempOf].Points = append(temps[w.TempOf].Points, Point{Date: day, Value: &t})
		}
	}
	up.Name = "emergence, " + batches(rests)
	var beside *Panel
	if len(temps) > 0 {
		beside = &Panel{Axis: Axis{Name: "mean temperature", Unit: r.Book.Settings.DegreeSign(), Near: true}}
		for _, place := range sortedKeys(temps) {
			beside.Series = append(beside.Series, *temps[place])
		}
	}
	h := Head{Name: name, Title: fmt.Sprintf("Emergence of %s by week of sowing, %d", crop, year)}
	h.Label = fmt.Sprintf("%s. %s", h.Title, sayWeeks(rows))
	return Lines(h, []Series{up}, Axis{Name: "cells with a seedling", Percent: true}, beside)
}

// sayWeeks names the worst and the best week. It is what a screen reader says in place of
// the drawing, so it names the two weeks that the eye would go to.
func sayWeeks(rows []germination.Week) string {
	worst, best := rows[0], rows[0]
	for _, w := range rows[1:] {
		if w.Share.Value < worst.Share.Value {
			worst = w
		}
		if w.Share.Value > best.Share.Value {
			best = w
		}
	}
	return fmt.Sprintf("%d weeks with sowings, from %s up of those sown in the week of %s to %s in the week of %s.", len(rows),
		percent(worst.Share.Value), words.DayMonth(mondayOf(worst.Week)), percent(best.Share.Value), words.DayMonth(mondayOf(best.Week)))
}

// mondayOf is the first day of an ISO 8601 week written 2025-W14. The 4th of January is in
// the first week of every year by that rule, whatever day it is. A week that cannot be
// read is no day.
func mondayOf(week string) records.Date {
	var year, n int
	if _, err := fmt.Sscanf(week, "%d-W%d", &year, &n); err != nil {
		return 0
	}
	fourth := records.NewDate(year, time.January, 4) // always in week 1
	weekday := (int(fourth.Time().Weekday()) + 6) % 7
	return fourth - records.Date(weekday) + records.Date(7*(n-1))
}
