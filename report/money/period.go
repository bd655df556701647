package money

import (
	"traybook/records"
	"traybook/report/batch"
)

// periodical reports whether shared rows of a category cover days (rule
// "Bills over a period").
func periodical(c Category) bool {
	switch c {
	case records.Heat, records.Power, records.Water, records.Labour:
		return true
	}
	return false
}

// bill is a sequence of rows that follow one another.
type bill struct {
	season   int
	category Category
	task     records.Task
}

// setPeriods gives every shared row of heat, power, water and labour its first
// and last day. rows are in order of date.
func setPeriods(rows []*costRow, s records.Settings) {
	bills := map[bill][]*costRow{}
	for _, row := range rows {
		if row.Shared() && periodical(row.Category) {
			key := bill{row.season, row.Category, row.task()}
			bills[key] = append(bills[key], row)
		}
	}
	for _, of := range bills {
		setPeriodsOf(of, s)
	}
}

// setPeriodsOf does it for one season, category and task.
func setPeriodsOf(rows []*costRow, s records.Settings) {
	next, after := s.SeasonDays(rows[0].season) // next: first day that no earlier row covers
	if row := rows[0]; len(rows) == 1 && !row.From.Known() && !row.Until.Known() {
		row.start, row.end = next, after-1
		return
	}
	dates, groups := batch.GroupBy(rows, func(row *costRow) records.Date { return row.Date })
	for i, date := range dates {
		latest := setPeriodsOn(groups[date], next)
		if i == 0 {
			next = latest + 1 // be it before the season: a bill for days of the last one
		}
		next = max(next, latest+1)
	}
}

// setPeriodsOn sets the periods of rows of one date: a missing start is next, but never
// after the row's own end. It returns the latest end.
func setPeriodsOn(rows []*costRow, next records.Date) (latest records.Date) {
	for _, row := range rows {
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
	return latest
}
