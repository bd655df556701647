package report

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/germination"
	"traybook/report/internal/booktest"
)

// Rule "Work due": a batch is due for a count from the day after its crop's median T50, or
// after a week.
func TestToCount(t *testing.T) {
	b := booktest.New(t)
	s := b.Sow("timed", "2025-02-01", "orache", "x", "AIR", 1)
	b.Leave(s, "2025-03-20", 90, 0)
	b.Count("timed", "2025-02-04", 25)
	b.Count("timed", "2025-02-06", 76) // T50 3.53 days
	b.Sow("due", "2025-03-20", "orache", "x", "AIR", 1)
	b.Sow("notyet", "2025-03-22", "orache", "x", "AIR", 1)
	b.Sow("counted", "2025-03-20", "orache", "x", "AIR", 1)
	b.Count("counted", "2025-03-24", 9)
	b.Sow("plugs", "2025-03-10", "orache", "x", "AIR", 1).Start = records.FromPlug
	b.Sow("week", "2025-03-18", "mibuna", "x", "AIR", 1)   // 7 days: not yet
	b.Sow("longer", "2025-03-17", "mibuna", "x", "AIR", 1) // 8
	lines := reportOf(b, "2025-03-25").Lines(ToCount)
	if len(lines) != 2 || lines[0].Subject != "due" || lines[0].Date != booktest.Day(t, "2025-03-24") || lines[0].Value.Value != 5 ||
		lines[1].Subject != "longer" || lines[1].Date != booktest.Day(t, "2025-03-25") {
		t.Errorf("got %+v", lines)
	}
}

// Rule "Work due": on the planned day itself a batch is not late, on the next it is.
func TestLateFromTheDayAfter(t *testing.T) {
	b := booktest.New(t)
	b.Sow("a", "2025-03-01", "orache", "x", "AIR", 1).Planned = booktest.Day(t, "2025-04-01")
	for today, want := range map[string]int{"2025-03-31": 0, "2025-04-01": 0, "2025-04-02": 1} {
		if late := reportOf(b, today).Lines(Late); len(late) != want || want == 1 && late[0].Value.Value != 1 {
			t.Errorf("on %s: %+v, want %d late", today, late, want)
		}
	}
}

// Rule "Work due": an open batch whose last count came early is due again once it is as old
// as twice its crop's median T50, rounded up; without one after 14 days.
func TestToCountAgain(t *testing.T) {
	b := booktest.New(t)
	b.Leave(b.Sow("timed", "2025-02-01", "orache", "x", "AIR", 1), "2025-03-20", 90, 0)
	b.Count("timed", "2025-02-04", 25)
	b.Count("timed", "2025-02-06", 76) // T50 3 + 2 x 13.5/51: twice it is 7.06 days
	for code, sown := range map[string]string{"eight": "2025-03-17", "seven": "2025-03-18"} {
		b.Sow(code, sown, "orache", "x", "AIR", 1)
		b.Count(code, "2025-03-20", 9)
	}
	for code, sown := range map[string]string{"fourteen": "2025-03-11", "thirteen": "2025-03-12", "counted late": "2025-03-01"} {
		b.Sow(code, sown, "mibuna", "x", "AIR", 1)
		b.Count(code, "2025-03-20", 9)
	}
	b.Sow("plugs", "2025-03-11", "mibuna", "x", "AIR", 1).Start = records.FromPlug
	b.Count("plugs", "2025-03-20", 9)
	lines := reportOf(b, "2025-03-25").Lines(ToCount)
	if len(lines) != 2 || lines[0].Subject != "eight" || lines[1].Subject != "fourteen" {
		t.Fatalf("%+v", lines)
	}
	for _, l := range lines {
		if l.Date != booktest.Day(t, "2025-03-25") || !l.Again || l.Note != "again" || l.Batch.Code != l.Subject {
			t.Errorf("%+v", l)
		}
	}
	booktest.Known(t, "days since sowing", lines[1].Value, 14, 0)
	booktest.Known(t, "due after", lines[0].TypicalDays, 2*(3+2*13.5/51), 1e-12)
}

// Rule "Work due": beside a late batch stands how many of its own crop and kind were fit as
// late, where three batches were looked at then.
func TestLeewayOfALateBatch(t *testing.T) {
	for looks, want := range map[int]bool{2: false, 3: true} {
		b := booktest.New(t)
		for i := range looks {
			code := fmt.Sprint("past", i)
			s := b.Sow(code, "2025-01-01", "orache", "x", "AIR", 1)
			s.Planned = b.Day("2025-02-10")
			b.Leave(s, "2025-03-01", 60, 0)
			b.Look(code, "2025-02-15", 20, 15)
			other := b.Sow("other"+code, "2025-01-01", "mibuna", "x", "AIR", 1)
			other.Planned = b.Day("2025-02-10")
			b.Leave(other, "2025-03-01", 60, 0)
			b.Look("other"+code, "2025-02-15", 20, 20)
		}
		b.Sow("late", "2025-03-01", "orache", "x", "AIR", 1).Planned = b.Day("2025-03-27")
		b.Sow("wall", "2025-03-01", "orache", "x", "WALL", 1).Planned = b.Day("2025-03-27")
		b.Sow("later", "2025-03-01", "orache", "x", "AIR", 1).Planned = b.Day("2025-03-20")
		lines := reportOf(b, "2025-04-01").Lines(Late)
		if len(lines) != 3 {
			t.Fatalf("%+v", lines)
		}
		for _, l := range lines {
			if has := l.Leeway != nil; has != (want && l.Subject == "late") {
				t.Errorf("%d looks: %s: %+v", looks, l.Subject, l.Leeway)
			} else if has {
				booktest.Known(t, "fit", l.Leeway.Share, .75, 1e-12)
			}
		}
	}
}

// Rule "Alarms": today's and those of the 13 days before, each with how many batches it
// touched and which.
func TestAlarmLines(t *testing.T) {
	b := booktest.New(t)
	for code, sown := range map[string]string{"a": "2025-03-01", "b": "2025-03-02"} {
		s := b.Sow(code, sown, "orache", "x", "AIR", 1)
		s.Chamber, s.ChamberOut = "box", b.Day("2025-03-31")
	}
	for _, day := range []string{"2025-03-01", "2025-03-02", "2025-03-15"} {
		b.Reading("box", day, 41)
	}
	b.House = append(b.House, records.HouseReading{Date: b.Day("2025-03-16"), Low: records.Known(9.0), High: records.Known(44.0)})
	lines := reportOf(b, "2025-03-15").Lines(AlarmLine)
	if len(lines) != 2 {
		t.Fatalf("%+v", lines)
	}
	l := lines[1]
	booktest.Known(t, "Celsius", l.Value, 41, 0)
	if lines[0].Note != "2 batches: a, b" || l.Date != b.Day("2025-03-15") || l.Subject != "box" || l.Alarm.Limit != 40 || l.Batch != nil {
		t.Errorf("%+v", l)
	}
	if one := reportOf(b, "2025-03-14").Lines(AlarmLine); len(one) != 2 || one[0].Note != "1 batch: a" {
		t.Errorf("%+v", one)
	}
	if warm := reportOf(b, "2025-03-16").Lines(AlarmLine); len(warm) != 2 || warm[1].Subject != germination.HousePlace {
		t.Errorf("%+v", warm)
	}
}

// Rule "In earlier years": what was sown in the seven days from this day of last year.
func TestEarlierYears(t *testing.T) {
	b := booktest.New(t)
	for code, sown := range map[string]string{"day before": "2024-02-28", "first": "2024-02-29", "last": "2024-03-07", "after": "2024-03-08", "two years": "2023-03-01"} {
		b.Sow(code, sown, "orache", "x", "AIR", 1)
	}
	b.Leave(&b.Sowings[len(b.Sowings)-1], "2024-05-01", 60, 0)
	for i := range b.Sowings {
		if s := &b.Sowings[i]; s.Code == "last" {
			b.Leave(s, "2024-04-20", 66, 4)
			s.Wanted = records.Known(80)
			b.Count("last", "2024-03-20", 75)
		}
	}
	earlier := func(today string) []string {
		var got []string
		for _, l := range reportOf(b, today).Lines(Earlier) {
			got = append(got, l.Subject)
		}
		return got
	}
	for today, want := range map[string]string{"2025-02-28": "[day before first]", "2025-03-01": "[last]", "2025-02-27": "[day before first]"} {
		if got := fmt.Sprint(earlier(today)); got != want {
			t.Errorf("%s: %s, want %s", today, got, want)
		}
	}
	l := reportOf(b, "2025-03-01").Lines(Earlier)[0]
	booktest.Known(t, "usable", l.Value, 70, 0)
	if l.Note != "orache x, emergence 0.75, usable out, wanted 80" || l.Date != b.Day("2024-03-07") {
		t.Errorf("%+v", l)
	}
}
