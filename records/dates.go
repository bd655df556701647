package records

import (
	"cmp"
	"fmt"
	"strings"
	"time"
)

// dateOrder is the order of day, month and year in slashed and dotted dates.
type dateOrder string

const (
	ymd       dateOrder = "ymd"
	dmy       dateOrder = "dmy"
	mdy       dateOrder = "mdy"
	untold    dateOrder = "" // no slashed date seen, or none that tells
	wholeDate           = "a date such as 2025-03-31 is expected"
)

// slashed is a date of three numbers, in whatever order.
type slashed struct {
	parts    [3]int
	yearSize [2]int // digits of the first and the last part
}

// parseSlashed takes apart 31/3/2025, 3.31.25 or 2025/03/31.
func parseSlashed(s string) (slashed, bool) {
	for _, sep := range []string{"/", ".", "-"} {
		parts := strings.Split(strings.TrimRight(s, "."), sep)
		if len(parts) != 3 {
			continue
		}
		var d slashed
		for i, p := range parts {
			p = strings.TrimSpace(p)
			if !digits(p) || len(p) > 4 {
				return slashed{}, false
			}
			d.parts[i] = atoi(p)
			parts[i] = p
		}
		d.yearSize = [2]int{len(parts[0]), len(parts[2])}
		return d, true
	}
	return slashed{}, false
}

// in reads the date in an order; ok is false where it cannot be so written.
func (d slashed) in(o dateOrder) (Date, bool) {
	year, month, day, size := d.parts[2], d.parts[1], d.parts[0], d.yearSize[1]
	switch o {
	case mdy:
		month, day = day, month
	case ymd:
		year, day, size = day, year, d.yearSize[0]
	}
	if size == 2 && d.yearSize != [2]int{4, 2} && d.yearSize != [2]int{2, 4} {
		year += 2000
	} else if size != 4 {
		return 0, false
	}
	if month < 1 || month > 12 || day < 1 {
		return 0, false
	}
	date := NewDate(year, time.Month(month), day)
	return date, date.Month() == time.Month(month) && plausible(date)
}

// plausible rules out years that only a slip of the keys can have written.
func plausible(d Date) bool { return d >= earliest && d < tooLate }

var earliest, tooLate = NewDate(1980, 1, 1), NewDate(2200, 1, 1)

// date reads a day, unknown for a blank.
func (r row) date(col string) Date {
	return r.dateText(col, r.text(col))
}

// dateText reads a day written in a cell, or in a part of it; ISO 8601 in any file,
// slashed dates in the file's order. Midnight behind a day is no time of day.
func (r row) dateText(col, s string) Date {
	if s == "" {
		return 0
	}
	for _, midnight := range []string{" 00:00:00", " 00:00", "T00:00:00", "T00:00"} { // how a spreadsheet may write a day
		s = strings.TrimSuffix(s, midnight)
	}
	if d, ok := ParseISO(s); ok && plausible(d) {
		return d
	}
	if parts, ok := parseSlashed(s); ok {
		return r.slashedDate(col, parts)
	}
	r.misread("date", col, wholeDate, dateRemedy(s))
	return 0
}

// slashedDate reads a date in the file's order, or in the only order in which
// it is a date at all.
func (r row) slashedDate(col string, parts slashed) Date {
	if d, ok := parts.in(ymd); ok && parts.yearSize[0] == 4 {
		return d
	}
	if r.dates != untold {
		d, ok := parts.in(r.dates)
		if !ok {
			r.misread("date", col, wholeDate, cmp.Or(r.orderRemedy(parts), dateRemedy(r.text(col))))
		}
		return d
	}
	readings := parts.readings()
	switch {
	case len(readings) == 0:
		r.misread("date", col, wholeDate, dateRemedy(r.text(col)))
		return 0
	case same(readings):
		return readings[0]
	}
	r.untoldDate(col, readings)
	return 0
}

// readings lists the days a date may be, in every order.
func (d slashed) readings() []Date {
	var all []Date
	for _, o := range []dateOrder{dmy, mdy, ymd} {
		if day, ok := d.in(o); ok {
			all = append(all, day)
		}
	}
	return all
}

// same reports whether all readings of a date are one day, as of 3/3/2025.
func same(days []Date) bool {
	for _, d := range days {
		if d != days[0] {
			return false
		}
	}
	return true
}

// orderRemedy tells in which other order a date would be one.
func (r row) orderRemedy(parts slashed) string {
	for _, o := range []dateOrder{dmy, mdy, ymd} {
		if d, ok := parts.in(o); ok {
			return fmt.Sprintf("dates are read as %s here; as %s it would be %s", r.dates, o, d)
		}
	}
	return ""
}

// untoldDate leaves a row out whose date may be several days. One problem speaks
// for all such dates of a file: one setting mends them.
func (r row) untoldDate(col string, readings []Date) {
	if r.flags[r.nth]&vague == 0 {
		r.untold++
	}
	r.flags[r.nth] |= out | vague
	if r.first.Check == "" {
		r.first = Problem{Pos: r.cell(col), Check: "date-order", Found: "read " + quote(r.text(col)),
			Expected: fmt.Sprintf("a date that can be only one day is expected; this may be %s or %s", readings[0], readings[1]),
			Remedy:   "set dates to dmy, mdy or ymd in book.csv"}
	}
}

// reportUntold reports the dates of unknown order, once for the file.
func (l *log) reportUntold() {
	p := l.first
	if p.Check == "" || l.orderBad {
		return
	}
	if l.untold > 1 {
		p.Found += fmt.Sprintf(" (%d such rows)", l.untold)
	}
	l.report(p.Check, p.Pos, p.Found, p.Expected, p.Remedy)
}

// dateRemedy tells a spreadsheet's day number (days since 30 December 1899), a
// day that its month has not, and a time of day behind the day.
func dateRemedy(s string) string {
	if n, ok := parseWhole(s, point); ok && n > 10000 && n < 100000 {
		return "a spreadsheet's number of a day: it would be " + (NewDate(1899, 12, 30) + Date(n)).String() + "; format the column as a date"
	}
	d, ok := parseSlashed(s)
	for i, size := range d.yearSize { // of the first and the last part
		if ok && size == 4 && !plausible(NewDate(d.parts[2*i], 1, 1)) {
			return "is the year right? Dates before 1980 are not read"
		}
	}
	if ok && d.yearSize[0] == 4 && d.parts[1] >= 1 && d.parts[1] <= 12 {
		last := NewDate(d.parts[0], time.Month(d.parts[1]+1), 0)
		return fmt.Sprintf("%s %d has %d days", last.Month(), last.Year(), last.Time().Day())
	}
	if day, clock := splitTime(s); clock != "" {
		if _, ok := ParseISO(day); ok {
			return "take away the time of day"
		}
	}
	return ""
}

// atoi is the number that up to four digits make.
func atoi(s string) int {
	n := 0
	for _, r := range s {
		n = n*10 + int(r-'0')
	}
	return n
}
