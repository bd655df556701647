package batch

import (
	"time"

	"traybook/records"
)

// YearsBefore is the same day and month so many years before a day; 28 February for a
// 29th that the year lacks (rules "A running season", "In earlier years").
func YearsBefore(d records.Date, years int) records.Date {
	t := d.Time()
	year, month, day := t.Year()-years, t.Month(), t.Day()
	if month == time.February && day == 29 && records.NewDate(year, month, day).Month() != month {
		day = 28
	}
	return records.NewDate(year, month, day)
}
