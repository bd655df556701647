package report

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
	"traybook/report/room"
)

// Room left today, and trays coming free: open batches by the plan, else after the
// median stay, and never before today; each then washed for three days.
func TestFreeingAndRoom(t *testing.T) {
	b := booktest.New(t)
	b.Settings.BenchPlaces, b.Settings.ChamberPlaces = records.Known(20.0), records.Known(8.0)
	b.Trays[0].Places = records.Known(2.0)
	s := b.Sow("gone", "2025-02-01", "orache", "x", "AIR", 1)
	b.Leave(s, "2025-03-30", 90, 0) // 57 days: free on 2 April
	b.Sow("planned", "2025-03-01", "orache", "x", "AIR", 2).Planned = booktest.Day(t, "2025-04-10")
	b.Sow("overdue", "2025-03-01", "orache", "x", "AIR", 0.5).Planned = booktest.Day(t, "2025-03-10")
	b.Sow("stay", "2025-02-10", "orache", "x", "WALL", 3) // 57 days: 8 April, free 11 April
	b.Sow("box", "2025-03-31", "orache", "x", "WALL", 4).ChamberOut = booktest.Day(t, "2025-04-03")
	b.Sow("tomorrow", "2025-04-02", "orache", "x", "WALL", 9).Planned = booktest.Day(t, "2025-04-03")
	r := reportOf(b, "2025-04-01")
	free := map[string]float64{}
	for _, w := range r.Lines(Freeing) {
		free[w.Date.String()+" "+w.Subject] = w.Value.Value
	}
	want := map[string]float64{"2025-04-02 AIR": 1, "2025-04-13 AIR": 2, "2025-04-11 WALL": 3, "2025-04-04 AIR": 0.5}
	if fmt.Sprint(free) != fmt.Sprint(want) {
		t.Errorf("free: %v, want %v", free, want)
	}
	left := r.Lines(RoomLeft)
	if len(left) != 2 || left[0].Subject != room.BenchName || left[0].Value.Value != 20-2*2-1-3 || left[1].Value.Value != 8-4 {
		t.Errorf("room: %+v", left)
	}
}

// Trays left on the eight Mondays after today: owned that day, less those not yet washed.
func TestTraysLeft(t *testing.T) {
	b := booktest.New(t)
	b.Trays[0].Count = records.Known(10)
	more := b.Tray("AIR", "air-pruning", 100)
	more.Count, more.Bought = records.Known(5), b.Day("2025-04-14")
	b.Sow("planned", "2025-03-01", "orache", "x", "AIR", 0.3).Planned = b.Day("2025-04-11") // free on Monday 14
	b.Sow("long", "2025-03-01", "orache", "x", "AIR", 11).Planned = b.Day("2025-04-12")     // free on Tuesday 15
	b.Sow("tomorrow", "2025-04-02", "orache", "x", "AIR", 9)
	left := func(today string) []WeekLine { return reportOf(b, today).Lines(TraysLeft) }
	lines := left("2025-04-01")
	if len(lines) != 8 || lines[0].Date != b.Day("2025-04-07") || lines[7].Date != b.Day("2025-05-26") {
		t.Fatalf("%+v", lines)
	}
	for i, want := range []float64{10 - 11.3, 15 - 11, 15, 15} {
		booktest.Known(t, lines[i].Date.String(), lines[i].Value, want, 1e-12)
	}
	if monday := left("2025-04-07"); monday[0].Date != b.Day("2025-04-14") {
		t.Errorf("on a Monday the next is the first: %s", monday[0].Date)
	}
	b.Trays[2].Count = records.Maybe[int]{} // of WALL no count is written either
	if lines := left("2025-04-01"); len(lines) != 0 {
		t.Errorf("nobody knows how many are owned: %+v", lines)
	}
}

// What was sown today holds trays, and what comes free today is told; a code of which
// nobody knows how many are owned leaves the others told.
func TestTraysOfToday(t *testing.T) {
	b := booktest.New(t)
	b.Trays[1].Count = records.Known(4) // AIR: no count
	b.Sow("today", "2025-04-01", "orache", "x", "WALL", 3).Planned = b.Day("2025-06-10")
	b.Leave(b.Sow("gone", "2025-02-01", "orache", "x", "WALL", 1), "2025-03-29", 90, 0) // free on 1 April
	r := reportOf(b, "2025-04-01")
	if free := r.Lines(Freeing); len(free) != 1 || free[0].Date != b.Day("2025-04-01") {
		t.Errorf("%+v", free)
	}
	left := r.Lines(TraysLeft)
	if len(left) != 8 || left[0].Subject != "WALL" || left[0].Value.Value != 1 {
		t.Errorf("%+v", left)
	}
}

// Rule "Work due": trays are told that come free within 14 days, today counted.
func TestFreeingEnds(t *testing.T) {
	b := booktest.New(t)
	for code, planned := range map[string]string{"in": "2025-04-11", "out": "2025-04-12"} { // free on 14 and 15 April
		b.Sow(code, "2025-03-24", "mibuna", "x", "WALL", 1).Planned = booktest.Day(t, planned)
	}
	if free := reportOf(b, "2025-04-01").Lines(Freeing); len(free) != 1 || free[0].Date != booktest.Day(t, "2025-04-14") || free[0].Value.Value != 1 {
		t.Errorf("coming free: %+v", free)
	}
}
