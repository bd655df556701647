package records

import "time"

// Date is a calendar day: the number of days since 1 January of the year 1
// (proleptic Gregorian). The zero Date is unknown.
type Date int

var dayOne = time.Date(1, 1, 1, 0, 0, 0, 0, time.UTC)

// NewDate returns the day of a year, month and day of month, normalised as
// time.Date does.
func NewDate(year int, month time.Month, day int) Date {
	t := time.Date(year, month, day, 0, 0, 0, 0, time.UTC)
	return Date(t.Unix()/86400 - dayOne.Unix()/86400)
}

// ParseISO reads a date written 2006-01-02; ok is false for anything else.
func ParseISO(s string) (Date, bool) {
	t, err := time.Parse(time.DateOnly, s)
	if err != nil || t.Year() < 1 {
		return 0, false
	}
	return NewDate(t.Year(), t.Month(), t.Day()), true
}

// Known reports whether the date was written.
func (d Date) Known() bool { return d != 0 }

// Time returns midnight UTC of the day.
func (d Date) Time() time.Time { return dayOne.AddDate(0, 0, int(d)) }

// Year, Month and Day take the date apart.
func (d Date) Year() int         { return d.Time().Year() }
func (d Date) Month() time.Month { return d.Time().Month() }

// String writes the date as ISO 8601; the unknown date is empty.
func (d Date) String() string {
	if !d.Known() {
		return ""
	}
	return d.Time().Format(time.DateOnly)
}
