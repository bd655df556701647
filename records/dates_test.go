package records

import (
	"strings"
	"testing"
)

func TestSlashedDates(t *testing.T) {
	march3 := NewDate(2025, 3, 3)
	for _, c := range []struct {
		s    string
		o    dateOrder
		want Date
	}{
		{"3/3/2025", dmy, march3},
		{"03.03.25", dmy, march3},
		{"3.3.2025.", dmy, march3},
		{"2025/3/3", ymd, march3},
		{"25/03/03", ymd, march3},
		{"3/4/2025", mdy, NewDate(2025, 3, 4)},
		{"3/4/2025", dmy, NewDate(2025, 4, 3)},
		{"29/2/2024", dmy, NewDate(2024, 2, 29)},
		{"29/2/2025", dmy, 0},
		{"13/13/2025", mdy, 0},
		{"0/3/2025", dmy, 0},
		{"3/3/205", dmy, 0},
		{"3/3/0205", dmy, 0},
		{"2025/3/3", dmy, 0},
		{"3/3/2025", ymd, 0},
	} {
		d, ok := parseSlashed(c.s)
		if !ok {
			t.Errorf("%q is no date of three numbers", c.s)
		}
		if got, ok := d.in(c.o); ok != (c.want != 0) || ok && got != c.want {
			t.Errorf("%q as %s = %v, want %v", c.s, c.o, got, c.want)
		}
	}
	for _, s := range []string{"3/3", "3/3/3/3", "a/b/c", "3/3/20255", "", "3 March 2025"} {
		if d, ok := parseSlashed(s); ok {
			t.Errorf("%q read as %v", s, d)
		}
	}
}

// A spreadsheet counts days from 30 December 1899 (the default of OpenDocument's
// table:null-date, and the 1900 date base system of Office Open XML, whose annex
// L.2.16.9.1 names day 38749). 45658 by hand: 125 years of 365 days, 31 leap days
// and the two days before 1900.
func TestSpreadsheetDays(t *testing.T) {
	for day, date := range map[string]string{"45658": "2025-01-01", "38749": "2006-02-01"} {
		want := "a spreadsheet's number of a day: it would be " + date + "; format the column as a date"
		if got := dateRemedy(day); got != want {
			t.Errorf("%s: got %q", day, got)
		}
	}
	for s, want := range map[string]string{"2025-04-31": "April 2025 has 30 days", "2025-03-03 00:00": "take away the time of day", "soon": "", "0205-03-03": "is the year right? Dates before 1980 are not read", "3/3/1979": "is the year right? Dates before 1980 are not read", "3/3/2025": ""} {
		if got := dateRemedy(s); got != want {
			t.Errorf("dateRemedy(%q) = %q", s, got)
		}
	}
}

// The order told from a file: the only one in which all its dates are days.
func TestToldOrder(t *testing.T) {
	for _, c := range []struct {
		dates string
		want  dateOrder
	}{
		{"2025-03-03", untold},
		{"3/4/2025", untold},
		{"3/4/2025 13/4/2025", dmy},
		{"3/4/2025 4/13/2025", mdy},
		{"2025/4/13 3/4/2025", untold},
		{"13/4/2025 4/13/2025", untold},
		{"99/99/2025 13/4/2025", dmy}, // no date at all tells nothing
		{"15/03/25 22/03/25", dmy},    // one year, not 2015 and 2022
		{"03/15/25", mdy},
		{"25/03/15 25/03/22", untold}, // 2025 twice, or the 25th of 2015 and 2022
	} {
		rows := newText([]byte("date\n"+strings.Join(splitDates(c.dates), "\n")), logOf("counts.csv"))
		l := &log{Log: logOf("counts.csv"), header: []string{"date"}, src: newScanner("counts.csv", rows, nil)}
		if got := l.toldOrder(); got != c.want {
			t.Errorf("%s: got %q, want %q", c.dates, got, c.want)
		}
	}
}

func splitDates(s string) []string {
	var all []string
	for s != "" {
		day, rest := splitTime(s)
		all, s = append(all, day), rest
	}
	return all
}

func TestDate(t *testing.T) {
	for s, ok := range map[string]bool{"2025-03-31": true, "2025-3-31": false, "2025-02-29": false, "0000-01-01": false, "": false} {
		d, got := ParseISO(s)
		if got != ok || ok && d.String() != s {
			t.Errorf("ParseISO(%q) = %v, %v", s, d, got)
		}
	}
	if d := NewDate(2025, 3, 31); d.Year() != 2025 || d.Month() != 3 || d.Time().Day() != 31 || Date(0).Known() || Date(0).String() != "" {
		t.Error(d)
	}
}
