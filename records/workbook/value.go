package workbook

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"
)

// mostDays is the last day a spreadsheet knows, 31 December 9999, as it counts days.
const mostDays = 2_958_465

// numberText writes a number as a spreadsheet holds it: with 15 digits, so that a
// formula's 0.1 + 0.2 is 0.3 and not 0.30000000000000004, and no more than 15 of them
// behind the point.
func numberText(x float64) string {
	x, _ = strconv.ParseFloat(strconv.FormatFloat(x, 'g', 15, 64), 64)
	s := strconv.FormatFloat(x, 'f', -1, 64)
	if _, fraction, _ := strings.Cut(s, "."); len(fraction) > 15 {
		s = strings.TrimRight(strings.TrimRight(strconv.FormatFloat(x, 'f', 15, 64), "0"), ".")
	}
	if s == "-0" {
		return "0"
	}
	return s
}

// finite reads a number as files write it; false for anything that is no number.
func finite(s string) (float64, bool) {
	x, err := strconv.ParseFloat(strings.TrimSpace(s), 64)
	return x, err == nil && !math.IsInf(x, 0) && !math.IsNaN(x)
}

// Number, percent, text and yes or no as cells. The text of a cell has LF alone as the
// end of a line, and nothing that is no character.
func numberCell(x float64) Cell  { return Cell{Number, numberText(x)} }
func percentCell(x float64) Cell { return Cell{Percent, numberText(x*100) + "%"} }
func textCell(s string) Cell {
	s = s[:min(len(s), mostText)]
	s = strings.ToValidUTF8(lineEnds.Replace(s), "\uFFFD")
	if strings.TrimSpace(s) == "" {
		return Cell{}
	}
	return Cell{Text, s}
}
func boolCell(yes bool) Cell {
	if yes {
		return Cell{Bool, "yes"}
	}
	return Cell{Bool, "no"}
}

func faultCell(word string) Cell {
	if word = textCell(word).Text; word == "" {
		word = "an error"
	}
	return Cell{Fault, word}
}

var lineEnds = strings.NewReplacer("\r\n", "\n", "\r", "\n", "\x00", "\uFFFD")

// serialCell is a number that is shown as a day or a time: days since the end of 1899,
// or since 1904 where the workbook counts so, and the time of day as a part of one. The
// first spreadsheet took 1900 for a leap year; all others still do, so that days before
// March 1900 are one off. What is shown as a time alone and is less than a year is a
// length of time. A number that is no day stays a number.
func serialCell(x float64, from1904, hasDay bool) Cell {
	if x < 0 || x >= mostDays+1 {
		return numberCell(x)
	}
	seconds := int(math.Round(x * 86400))
	day := seconds / 86400
	if !hasDay && day < 366 {
		return Cell{Moment, clockText(seconds)}
	}
	first := time.Date(1899, 12, 30, 0, 0, 0, 0, time.UTC)
	switch {
	case from1904:
		first = time.Date(1904, 1, 1, 0, 0, 0, 0, time.UTC)
	case day < 60:
		day++
	}
	return momentCell(first.AddDate(0, 0, day), seconds%86400)
}

// momentCell is a day, with the time of day in seconds behind it unless it is midnight.
func momentCell(day time.Time, clock int) Cell {
	s := day.Format(time.DateOnly)
	if clock != 0 {
		s += " " + clockText(clock)
	}
	return Cell{Moment, s}
}

// clockText writes seconds as hours and minutes, and seconds where there are any.
func clockText(seconds int) string {
	s := fmt.Sprintf("%02d:%02d", seconds/3600, seconds/60%60)
	if seconds%60 != 0 {
		s += fmt.Sprintf(":%02d", seconds%60)
	}
	return s
}

// isoCell reads a day, or a day and a time, as ISO 8601 writes it; text where it is
// none.
func isoCell(s string) Cell {
	for _, layout := range []string{time.DateOnly, "2006-01-02T15:04:05", "2006-01-02T15:04", time.RFC3339} {
		if t, err := time.Parse(layout, strings.TrimSpace(s)); err == nil {
			t = t.Round(time.Second)
			return momentCell(t, t.Hour()*3600+t.Minute()*60+t.Second())
		}
	}
	return textCell(s)
}
