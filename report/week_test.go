package report

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
	"traybook/report/room"
)

// linesOf lists the lines about one thing.
func linesOf(r *Report, what WeekWhat) []WeekLine {
	var lines []WeekLine
	for _, w := range r.Week {
		if w.What == what {
			lines = append(lines, w)
		}
	}
	return lines
}

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
	lines := linesOf(reportOf(b, "2025-03-25"), ToCount)
	if len(lines) != 2 || lines[0].Subject != "due" || lines[0].Date != booktest.Day(t, "2025-03-24") || lines[0].Value.Value != 5 ||
		lines[1].Subject != "longer" || lines[1].Date != booktest.Day(t, "2025-03-25") {
		t.Errorf("got %+v", lines)
	}
}

// Rules "Work due" and "Short": late, and likely short: the low end of the group's rate times the cells against the
// plants wanted; a re-sowing needs the crop's median stay.
func TestLateAndShort(t *testing.T) {
	b := booktest.New(t)
	for i := range 4 {
		s := b.Sow(fmt.Sprint("past", i), "2025-01-10", "orache", "x", "AIR", 1)
		b.Leave(s, "2025-02-19", 60+i, 0) // 40 days
	}
	open := func(code string, planned string, wanted int) {
		s := b.Sow(code, "2025-03-01", "orache", "x", "AIR", 1)
		s.Planned, s.Wanted = booktest.Day(t, planned), records.Known(wanted)
	}
	open("late", "2025-03-30", 40)
	open("short", "2025-05-15", 80)
	open("lost", "2025-05-01", 80)
	r := reportOf(b, "2025-04-01")
	late := linesOf(r, Late)
	if len(late) != 1 || late[0].Subject != "late" || late[0].Value.Value != 2 {
		t.Errorf("late: %+v", late)
	}
	short := linesOf(r, Short)
	if len(short) != 2 || short[0].Subject != "lost" || short[0].ResowPossible || !short[1].ResowPossible {
		t.Fatalf("short: %+v", short)
	}
	if short[1].Date != booktest.Day(t, "2025-04-05") { // 40 days before 15 May
		t.Errorf("last day to sow again: %v", short[1].Date)
	}
	expected := 100 * r.Plants.Usable[0].Low.Value
	booktest.Known(t, "expected", short[1].Expected, expected, 1e-12)
	booktest.Known(t, "short of", short[1].Value, 80-expected, 1e-12)
}

// Rule "Work due": on the planned day itself a batch is not late, on the next it is.
func TestLateFromTheDayAfter(t *testing.T) {
	b := booktest.New(t)
	b.Sow("a", "2025-03-01", "orache", "x", "AIR", 1).Planned = booktest.Day(t, "2025-04-01")
	for today, want := range map[string]int{"2025-03-31": 0, "2025-04-01": 0, "2025-04-02": 1} {
		if late := linesOf(reportOf(b, today), Late); len(late) != want || want == 1 && late[0].Value.Value != 1 {
			t.Errorf("on %s: %+v, want %d late", today, late, want)
		}
	}
}

// Room left today, and trays coming free: open batches by the plan, else after the
// median stay; each then washed for three days.
func TestFreeingAndRoom(t *testing.T) {
	b := booktest.New(t)
	b.Settings.BenchPlaces, b.Settings.ChamberPlaces = records.Known(20.0), records.Known(8.0)
	b.Trays[0].Places = records.Known(2.0)
	s := b.Sow("gone", "2025-02-01", "orache", "x", "AIR", 1)
	b.Leave(s, "2025-03-30", 90, 0) // 57 days: free on 2 April
	b.Sow("planned", "2025-03-01", "orache", "x", "AIR", 2).Planned = booktest.Day(t, "2025-04-10")
	b.Sow("stay", "2025-02-10", "orache", "x", "WALL", 3) // 57 days: 8 April, free 11 April
	b.Sow("box", "2025-03-31", "orache", "x", "WALL", 4).ChamberOut = booktest.Day(t, "2025-04-03")
	b.Sow("tomorrow", "2025-04-02", "orache", "x", "WALL", 9)
	r := reportOf(b, "2025-04-01")
	free := map[string]float64{}
	for _, w := range linesOf(r, Freeing) {
		free[w.Date.String()+" "+w.Subject] = w.Value.Value
	}
	want := map[string]float64{"2025-04-02 AIR": 1, "2025-04-13 AIR": 2, "2025-04-11 WALL": 3}
	if fmt.Sprint(free) != fmt.Sprint(want) {
		t.Errorf("free: %v, want %v", free, want)
	}
	left := linesOf(r, RoomLeft)
	if len(left) != 2 || left[0].Subject != room.BenchName || left[0].Value.Value != 20-2*2-3 || left[1].Value.Value != 8-4 {
		t.Errorf("room: %+v", left)
	}
}

// Rules "Work due" and "Short": a re-sowing on this very day still makes the date; trays are told that
// come free within 14 days, today counted.
func TestWeekEnds(t *testing.T) {
	b := booktest.New(t)
	for _, code := range []string{"a", "b", "c", "d"} {
		b.Leave(b.Sow(code, "2025-01-10", "orache", "x", "AIR", 1), "2025-02-19", 60, 0) // 40 days
	}
	for code, planned := range map[string]string{"today": "2025-05-11", "past": "2025-05-10"} { // 40 days from 1 April, 31 March
		s := b.Sow(code, "2025-03-25", "orache", "x", "AIR", 1)
		s.Planned, s.Wanted = booktest.Day(t, planned), records.Known(90)
	}
	for code, planned := range map[string]string{"in": "2025-04-11", "out": "2025-04-12"} { // free on 14 and 15 April
		b.Sow(code, "2025-03-24", "mibuna", "x", "WALL", 1).Planned = booktest.Day(t, planned)
	}
	r := reportOf(b, "2025-04-01")
	short := linesOf(r, Short)
	if len(short) != 2 || short[0].Subject != "past" || short[0].ResowPossible || !short[1].ResowPossible {
		t.Errorf("short: %+v", short)
	}
	if free := linesOf(r, Freeing); len(free) != 1 || free[0].Date != booktest.Day(t, "2025-04-14") || free[0].Value.Value != 1 {
		t.Errorf("coming free: %+v", free)
	}
}
