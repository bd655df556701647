package main

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"strconv"
	"strings"
	"time"
)

// table is one CSV file: a header and its rows.
type table struct {
	header []string
	rows   [][]string
}

// columns starts a table from its comma-separated header.
func columns(header string) *table {
	return &table{header: strings.Split(header, ",")}
}

// row adds a row; missing cells at the end stay blank. Strings, ints, floats
// and days are written as a spreadsheet would; a day 0 is blank.
func (t *table) row(cells ...any) {
	row := make([]string, len(t.header))
	if len(cells) > len(row) {
		panic(fmt.Sprintf("%d cells under %d headers: %v", len(cells), len(row), cells))
	}
	for i, c := range cells {
		row[i] = text(c)
	}
	t.rows = append(t.rows, row)
}

func text(c any) string {
	switch c := c.(type) {
	case string:
		return c
	case float64:
		return strconv.FormatFloat(c, 'f', -1, 64)
	}
	return fmt.Sprint(c)
}

// csv gives the file's bytes.
func (t *table) csv() []byte {
	var b bytes.Buffer
	w := csv.NewWriter(&b)
	if err := w.Write(t.header); err != nil {
		panic(err)
	}
	if err := w.WriteAll(t.rows); err != nil {
		panic(err)
	}
	return b.Bytes()
}

// day counts days since 1970-01-01; 0 is no day.
type day int

// on reads an ISO date.
func on(iso string) day {
	t, err := time.Parse(time.DateOnly, iso)
	if err != nil {
		panic(err)
	}
	return day(t.Unix() / 86400)
}

// in gives a month-day, such as 03-15, of a year.
func in(year int, monthDay string) day { return on(fmt.Sprintf("%d-%s", year, monthDay)) }

func (d day) time() time.Time { return time.Unix(int64(d)*86400, 0).UTC() }

// String writes the day as ISO 8601.
func (d day) String() string {
	if d == 0 {
		return ""
	}
	return d.time().Format(time.DateOnly)
}

// workday moves a day to the nearest Tuesday or Friday, the days for sowing
// and setting out.
func (d day) workday() day {
	move := [7]day{2, 1, 0, -1, 1, 0, -1} // from Sunday
	return d + move[d.time().Weekday()]
}

// known writes a count, or nothing where it is not known.
func known(n int, yes bool) string {
	if !yes {
		return ""
	}
	return strconv.Itoa(n)
}

// trimmed formats a number and drops the zeros after its point.
func trimmed(format string, v float64) string {
	s := fmt.Sprintf(format, v)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	return s
}
