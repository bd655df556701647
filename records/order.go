package records

import (
	"slices"
	"strings"
)

// dateColumns are the columns that hold days, log by log.
var dateColumns = map[string][]string{
	"trays.csv":   {"bought"},
	"lots.csv":    {"bought", "tested"},
	"sowings.csv": {"sown", "chamber_out", "planned", "set_out"},
	"out.csv":     {"date"},
	"counts.csv":  {"date"},
	"scores.csv":  {"date"},
	"costs.csv":   {"date", "from", "until"},
	"chamber.csv": {"time"},
	"house.csv":   {"date"},
	"wishes.csv":  {"planned"},
	"changes.csv": {"date", "until"},
}

// toldOrder is the one order of day, month and year in which all slashed dates
// of a file are days; untold where there are several orders, or none.
func (l *log) toldOrder() dateOrder {
	dates := l.slashedDates()
	var possible []dateOrder
	for _, o := range []dateOrder{dmy, mdy, ymd} {
		if len(dates) > 0 && !slices.ContainsFunc(dates, func(d slashed) bool { _, ok := d.in(o); return !ok }) {
			possible = append(possible, o)
		}
	}
	possible = dropYearFirst(possible, dates)
	if len(possible) != 1 {
		return untold
	}
	return possible[0]
}

// slashedDates lists the dates of a file that have a reading and do not begin
// with a year of four digits.
func (l *log) slashedDates() []slashed {
	var columns []int
	for _, col := range dateColumns[l.Name] {
		if l.has(col) {
			columns = append(columns, l.index(col))
		}
	}
	var all []slashed
	rows := l.src.anew()
	rows.next() // the header
	for rec, ok := rows.next(); ok; rec, ok = rows.next() {
		for _, i := range columns {
			if d, ok := slashedDate(rec, i); ok {
				all = append(all, d)
			}
		}
	}
	return all
}

// slashedDate reads the i-th cell of a row that does not begin with a year.
func slashedDate(rec record, i int) (slashed, bool) {
	if i >= len(rec.fields) {
		return slashed{}, false
	}
	day, _ := splitTime(strings.TrimSpace(rec.fields[i]))
	if _, iso := ParseISO(day); iso || day == "" {
		return slashed{}, false
	}
	d, ok := parseSlashed(day)
	return d, ok && d.yearSize[0] != 4 && len(d.readings()) > 0
}

// dropYearFirst rules out that 25/03/15 begins with its year where that would
// scatter the file over more years than another order does: the days of a month
// are many, the years of a book few.
func dropYearFirst(possible []dateOrder, dates []slashed) []dateOrder {
	if len(possible) < 2 || !slices.Contains(possible, ymd) {
		return possible
	}
	others := slices.DeleteFunc(slices.Clone(possible), func(o dateOrder) bool { return o == ymd })
	if slices.ContainsFunc(others, func(o dateOrder) bool { return years(dates, o) >= years(dates, ymd) }) {
		return possible
	}
	return others
}

// years counts the years in which dates read in an order lie.
func years(dates []slashed, o dateOrder) int {
	seen := map[int]bool{}
	for _, d := range dates {
		if day, ok := d.in(o); ok {
			seen[day.Year()] = true
		}
	}
	return len(seen)
}
