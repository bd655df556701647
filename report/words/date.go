package words

import (
	"strconv"

	"traybook/records"
)

// LongDate writes a date for a sentence: 14 March 2026.
func LongDate(d records.Date) string {
	var room [32]byte
	return string(AppendLongDate(room[:0], d))
}

// ISODate writes a date for a table: 2026-03-14.
func ISODate(d records.Date) string {
	if !d.Known() {
		return None
	}
	return d.String()
}

// DayMonth writes a day of a year that is named beside it, as plain text: 7 July.
func DayMonth(d records.Date) string { return d.Time().Format("2 January") }

// lateNames name the bands of days past the planned date (rule "Leeway") by their
// first day.
var lateNames = map[int]string{
	0:  "up to the planned day",
	1:  "1 to 3 days late",
	4:  "4 to 7 days late",
	8:  "8 to 14 days late",
	15: "15 days late or more",
}

// DaysLate names a band of days past the planned date, in a sentence and in a chart;
// empty for a day that begins none.
func DaysLate(first int) string { return lateNames[first] }

// Year writes a season: the year in which it ends.
func Year(season int) string { return strconv.Itoa(season) }
