package records

import "time"

// Date is a calendar day: the number of days since 1 January of the year 1
// (proleptic Gregorian). The zero Date is unknown.
type Date int32

var dayOne = time.Date(1, 1, 1, 0, 0, 0, 0, time.UTC)

// NewDate returns the day of a year, month and day of month, normalised as
// time.Date does.
func NewDate(year int, month time.Month, day int) Date {
	return dateOf(time.Date(year, month, day, 0, 0, 0, 0, time.UTC))
}

// ParseISO reads a date written 2006-01-02; ok is false for anything else.
func ParseISO(s string) (Date, bool) {
	if len(s) != len(time.DateOnly) || s[4] != '-' || s[7] != '-' || !digits(s[:4]) || !digits(s[5:7]) || !digits(s[8:]) {
		return 0, false
	}
	year, month, day := atoi(s[:4]), time.Month(atoi(s[5:7])), atoi(s[8:])
	t := time.Date(year, month, day, 0, 0, 0, 0, time.UTC)
	if year < 1 || t.Month() != month || t.Day() != day {
		return 0, false // as 31 June, which is 1 July
	}
	return dateOf(t), true
}

// dateOf is the day of a time that is midnight UTC.
func dateOf(t time.Time) Date { return Date((t.Unix() - dayOne.Unix()) / secondsADay) }

const secondsADay = 86400

// Known reports whether the date was written.
func (d Date) Known() bool { return d != 0 }

// Time returns midnight UTC of the day.
func (d Date) Time() time.Time { return time.Unix(dayOne.Unix()+int64(d)*secondsADay, 0).UTC() }

// Year is the year of the calendar.
func (d Date) Year() int { return d.Time().Year() }

// Month is the month of the calendar.
func (d Date) Month() time.Month { return d.Time().Month() }

// String writes the date as ISO 8601; the unknown date is empty.
func (d Date) String() string {
	if !d.Known() {
		return ""
	}
	return d.Time().Format(time.DateOnly)
}
