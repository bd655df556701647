package report

import (
	"slices"

	"traybook/records"
)

// periodical reports whether shared rows of a category cover days (rule 22).
func periodical(c records.Category) bool {
	switch c {
	case records.Heat, records.Power, records.Water, records.Labour:
		return true
	}
	return false
}

// setPeriods gives every shared row of heat, power, water and labour its first
// and last day (rules 22, 50). rows are in order of date.
func (p *accounts) setPeriods(rows []costRow) {
	type bill struct {
		season   int
		category records.Category
		task     records.Task
	}
	bills := map[bill][]*costRow{}
	for i := range rows {
		row := &rows[i]
		if row.Shared() && periodical(row.Category) {
			key := bill{row.season, row.Category, row.task()}
			bills[key] = append(bills[key], row)
		}
	}
	for _, of := range bills {
		p.setPeriodsOf(of)
	}
}

// setPeriodsOf does it for one season, category and task.
func (p *accounts) setPeriodsOf(rows []*costRow) {
	first, after := p.r.Book.Settings.SeasonDays(rows[0].season)
	if row := rows[0]; len(rows) == 1 && !row.From.Known() && !row.Until.Known() {
		row.start, row.end = first, after-1
		return
	}
	next := first // first day that no row of an earlier date covers
	for i := 0; i < len(rows); {
		same := i + 1
		for same < len(rows) && rows[same].Date == rows[i].Date {
			same++
		}
		latest := records.Date(0)
		for _, row := range rows[i:same] {
			row.end = row.Until
			if !row.Until.Known() {
				row.end = row.Date
			}
			row.start = row.From
			if !row.From.Known() {
				row.start = min(next, row.end)
			}
			latest = max(latest, row.end)
		}
		if i == 0 {
			next = latest + 1
		}
		next = max(next, latest+1)
		i = same
	}
}

// warmEnough is the mean outdoor temperature, Celsius, from which no heating is
// counted (rule 22).
const warmEnough = 15

// outdoors returns the degrees below 15 C of every day of house.csv that has
// the outdoor low and high; of several rows of a day the last stands.
func outdoors(readings []records.HouseReading) map[records.Date]float64 {
	cold := map[records.Date]float64{}
	for _, h := range readings {
		if h.OutLow.Known && h.OutHigh.Known {
			cold[h.Date] = max(0, warmEnough-(h.OutLow.Value+h.OutHigh.Value)/2)
		}
	}
	return cold
}

// heatDays returns the days of a heating bill: those in heating months, or all
// where none is (rule 22).
func heatDays(s records.Settings, start, end records.Date) []records.Date {
	var days, all []records.Date
	for d := start; d <= end; d++ {
		all = append(all, d)
		if s.Heating(int(d.Month())) {
			days = append(days, d)
		}
	}
	if len(days) == 0 {
		return all
	}
	return slices.Clip(days)
}
