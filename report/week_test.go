package report

import (
	"fmt"
	"testing"

	"traybook/records"
)

// weekOf lists the lines about one thing.
func weekOf(r *Report, what WeekWhat) []WeekLine {
	var lines []WeekLine
	for _, w := range r.Week {
		if w.What == what {
			lines = append(lines, w)
		}
	}
	return lines
}

// Rule 40: a batch is due for a count from the day after its crop's median T50, or
// after a week.
func TestToCount(t *testing.T) {
	b := newBook(t)
	s := b.sow("timed", "2025-02-01", "orache", "x", "AIR", 1)
	b.leave(s, "2025-03-20", 90, 0)
	b.count("timed", "2025-02-04", 25)
	b.count("timed", "2025-02-06", 76) // T50 3.53 days
	b.sow("due", "2025-03-20", "orache", "x", "AIR", 1)
	b.sow("notyet", "2025-03-22", "orache", "x", "AIR", 1)
	b.sow("counted", "2025-03-20", "orache", "x", "AIR", 1)
	b.count("counted", "2025-03-24", 9)
	b.sow("plugs", "2025-03-10", "orache", "x", "AIR", 1).Start = records.FromPlug
	b.sow("week", "2025-03-18", "mibuna", "x", "AIR", 1)   // 7 days: not yet
	b.sow("longer", "2025-03-17", "mibuna", "x", "AIR", 1) // 8
	lines := weekOf(b.report("2025-03-25"), ToCount)
	if len(lines) != 2 || lines[0].Subject != "due" || lines[0].Date != day(t, "2025-03-24") || lines[0].Value.Value != 5 ||
		lines[1].Subject != "longer" || lines[1].Date != day(t, "2025-03-25") {
		t.Errorf("got %+v", lines)
	}
}

// Late, and likely short: the low end of the group's rate times the cells against the
// plants wanted; a re-sowing needs the crop's median stay.
func TestLateAndShort(t *testing.T) {
	b := newBook(t)
	for i := range 4 {
		s := b.sow(fmt.Sprint("past", i), "2025-01-10", "orache", "x", "AIR", 1)
		b.leave(s, "2025-02-19", 60+i, 0) // 40 days
	}
	open := func(code string, planned string, wanted int) {
		s := b.sow(code, "2025-03-01", "orache", "x", "AIR", 1)
		s.Planned, s.Wanted = day(t, planned), records.Known(wanted)
	}
	open("late", "2025-03-30", 40)
	open("short", "2025-05-15", 80)
	open("lost", "2025-05-01", 80)
	r := b.report("2025-04-01")
	late := weekOf(r, Late)
	if len(late) != 1 || late[0].Subject != "late" || late[0].Value.Value != 2 {
		t.Errorf("late: %+v", late)
	}
	short := weekOf(r, Short)
	if len(short) != 2 || short[0].Subject != "lost" || short[0].ResowPossible || !short[1].ResowPossible {
		t.Fatalf("short: %+v", short)
	}
	if short[1].Date != day(t, "2025-04-05") { // 40 days before 15 May
		t.Errorf("last day to sow again: %v", short[1].Date)
	}
	expected := 100 * r.Usable[0].Low.Value
	known(t, "expected", short[1].Expected, expected, 1e-12)
	known(t, "short of", short[1].Value, 80-expected, 1e-12)
}

// Room left today, and trays coming free: open batches by the plan, else after the
// median stay; each then washed for three days.
func TestFreeingAndRoom(t *testing.T) {
	b := newBook(t)
	b.Settings.BenchPlaces, b.Settings.ChamberPlaces = records.Known(20.0), records.Known(8.0)
	b.Trays[0].Places = records.Known(2.0)
	s := b.sow("gone", "2025-02-01", "orache", "x", "AIR", 1)
	b.leave(s, "2025-03-30", 90, 0) // 57 days: free on 2 April
	b.sow("planned", "2025-03-01", "orache", "x", "AIR", 2).Planned = day(t, "2025-04-10")
	b.sow("stay", "2025-02-10", "orache", "x", "WALL", 3) // 57 days: 8 April, free 11 April
	b.sow("box", "2025-03-31", "orache", "x", "WALL", 4).ChamberOut = day(t, "2025-04-03")
	b.sow("tomorrow", "2025-04-02", "orache", "x", "WALL", 9)
	r := b.report("2025-04-01")
	free := map[string]float64{}
	for _, w := range weekOf(r, Freeing) {
		free[w.Date.String()+" "+w.Subject] = w.Value.Value
	}
	want := map[string]float64{"2025-04-02 AIR": 1, "2025-04-13 AIR": 2, "2025-04-11 WALL": 3}
	if fmt.Sprint(free) != fmt.Sprint(want) {
		t.Errorf("free: %v, want %v", free, want)
	}
	room := weekOf(r, RoomLeft)
	if len(room) != 2 || room[0].Subject != BenchName || room[0].Value.Value != 20-2*2-3 || room[1].Value.Value != 8-4 {
		t.Errorf("room: %+v", room)
	}
}
