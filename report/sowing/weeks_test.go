package sowing

import (
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/internal/booktest"
)

// takes is a wish of so many trays of a code.
func takes(b *booktest.Book, code string, trays int, sowBy, planned, free string) Wish {
	return Wish{Wish: records.Wish{Planned: b.Day(planned)}, Code: code, Trays: records.Known(trays), SowBy: b.Day(sowBy), Free: b.Day(free)}
}

// weeksOf is the room that wishes would take beside what a book holds.
func weeksOf(b *booktest.Book, wishes ...Wish) []Week {
	return WeeksOf(batch.New(b.Book(), nil, nil, b.Day("2025-01-01")), wishes)
}

// By hand, 3 March 2025 being a Monday: 4 trays of AIR from 5 to 18 March and 3 from 18
// to 31 March, 10 of WALL at half a place from 17 to 25 March; each washed 3 days more.
// On the benches stand 4, from the 17th 9, from the 18th 8, from the 25th 3; in AIR 4,
// from the 18th 7, from the 21st 3.
func TestRoomOfWishesByHand(t *testing.T) {
	b := booktest.New(t)
	b.Settings.BenchPlaces = records.Known(8.0)
	b.Trays[0].Count, b.Trays[1].Places = records.Known(5), records.Known(0.5)
	more := b.Tray("AIR", "air-pruning", 100)
	more.Bought, more.Count = b.Day("2025-03-18"), records.Known(1)
	wishes := []Wish{takes(b, "WALL", 10, "2025-03-17", "2025-03-25", "2025-03-28"), takes(b, "AIR", 4, "2025-03-05", "2025-03-18", "2025-03-21"),
		takes(b, "AIR", 3, "2025-03-18", "2025-03-31", "2025-04-03"), {Code: "AIR", Trays: records.Known(50)}, {Code: "AIR", SowBy: b.Day("2025-03-05"), Free: b.Day("2025-03-21")}}
	got := weeksOf(b, wishes...)
	want := []struct {
		monday, place   string
		taken, capacity float64
		over            bool
	}{
		{"2025-03-03", "bench", 4, 8, false}, {"2025-03-03", "AIR", 4, 5, false}, {"2025-03-10", "bench", 4, 8, false}, {"2025-03-10", "AIR", 4, 5, false},
		{"2025-03-17", "bench", 9, 8, true}, {"2025-03-17", "AIR", 7, 6, true}, {"2025-03-17", "WALL", 10, -1, false},
		{"2025-03-24", "bench", 8, 8, false}, {"2025-03-24", "AIR", 3, 6, false}, {"2025-03-24", "WALL", 10, -1, false},
		{"2025-03-31", "AIR", 3, 6, false},
	}
	if len(got) != len(want) {
		t.Fatalf("%d weeks, want %d: %+v", len(got), len(want), got)
	}
	for i, w := range want {
		g := got[i]
		if g.Monday != b.Day(w.monday) || g.Place != w.place || g.Taken != w.taken || g.Over() != w.over {
			t.Errorf("%v %s: %v, over %v; want %+v", g.Monday, g.Place, g.Taken, g.Over(), w)
		}
		if w.capacity < 0 {
			missing(t, "capacity of a code without a count", g.Capacity)
		} else {
			known(t, w.place, g.Capacity, w.capacity, 0)
		}
	}
}

// Where nobody wrote how many places there are, what is taken is told alone; a wish far
// off costs no weeks between.
func TestRoomUnknownAndFarOff(t *testing.T) {
	b := booktest.New(t)
	got := weeksOf(b, takes(b, "AIR", 1, "2025-03-03", "2025-03-04", "2025-03-05"), takes(b, "AIR", 1, "9998-03-02", "9998-03-03", "9998-03-04"))
	if len(got) != 4 || got[0].Capacity.Known || got[0].Over() {
		t.Errorf("weeks: %+v", got)
	}
	if len(weeksOf(b)) != 0 {
		t.Error("weeks without a wish")
	}
}

// The wishes of a book reach the benches: from the day to sow by up to planned.
func TestRoomOfABook(t *testing.T) {
	b := varied(t)
	wish(b, "orache", "red", "AIR", "2026-05-11", 300)
	f := figures(t, b.Book())
	w := f.Wishes[0]
	bench := batch.Filter(f.Weeks, func(k Week) bool { return k.Place == "bench" })
	code := batch.Filter(f.Weeks, func(k Week) bool { return k.Place == "AIR" })
	if len(bench) != 6 || len(code) != 7 || bench[0].Monday != b.Day("2026-03-30") { // 1 April to 11 May, a Monday
		t.Fatalf("%d and %d weeks from %v: %+v", len(bench), len(code), bench[0].Monday, w)
	}
	for _, k := range f.Weeks {
		near(t, k.Place, k.Taken, float64(w.Trays.Value), 0)
	}
}
