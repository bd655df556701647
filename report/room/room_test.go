package room

import (
	"fmt"
	"slices"
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/internal/booktest"
)

// words puts a load in words: its capacity, days over and growth left where known.
func words(l Load) string {
	if !l.Capacity.Known {
		return fmt.Sprintf("%d %s ? peak %v on %v", l.Season, l.Place, l.Peak, l.PeakDate)
	}
	return fmt.Sprintf("%d %s %v peak %v on %v, %d days over, %.3f", l.Season, l.Place, l.Capacity.Value, l.Peak, l.PeakDate, l.DaysOver.Value, l.GrowthLeft.Value)
}

func loadsInWords(f *Figures) []string {
	var all []string
	for _, l := range f.Load {
		all = append(all, words(l))
	}
	return all
}

// first names what binds first, of one season.
func first(f *Figures) []string {
	var names []string
	for _, l := range f.Load {
		if l.BindsFirst {
			names = append(names, l.Place)
		}
	}
	return names
}

func same(t *testing.T, what string, got, want []string) {
	t.Helper()
	if !slices.Equal(got, want) {
		t.Errorf("%s:\n got %q\nwant %q", what, got, want)
	}
}

// spring is a season worked out by hand: H takes two places a tray. a: 3 trays of H, in
// the chamber from 1 to 4 March, on the bench until the 20th; b: 2.5 trays of T, on the
// bench from the 10th to the 15th. 2 trays of H were always owned, 2 more from
// the 11th, until 3 broke in June.
func spring(t *testing.T) *booktest.Book {
	b := book(t)
	h := b.Tray("H", "x", 100)
	h.Count, h.Places = records.Known(2), records.Known(2.0)
	h = b.Tray("H", "x", 100)
	h.Count, h.Bought = records.Known(2), b.Day("2025-03-11")
	h = b.Tray("H", "x", 100)
	h.Count, h.Bought = records.Known(-3), b.Day("2025-06-01")
	b.Settings.BenchPlaces = records.Known(8.0)
	sow(b, "a", "2025-03-01", "2025-03-20", "H", 3).ChamberOut = b.Day("2025-03-04")
	sow(b, "b", "2025-03-10", "2025-03-15", "T", 2.5)
	return b
}

func TestRoomByHand(t *testing.T) {
	f := of(spring(t))
	same(t, "load", loadsInWords(f), []string{
		"2025 bench 8 peak 8.5 on 2025-03-10, 5 days over, -0.059",
		"2025 chamber ? peak 3 on 2025-03-01",
		"2025 H 4 peak 3 on 2025-03-01, 10 days over, 0.333", // 3 of 2 owned until the 11th
		"2025 T ? peak 2.5 on 2025-03-10",
	})
	same(t, "binds first", first(f), []string{BenchName})
	var levels []string
	for _, u := range f.InUse {
		levels = append(levels, fmt.Sprintf("%v %s %v of %v", u.Date, u.Place, u.Trays, u.Capacity.Or(-1)))
	}
	same(t, "in use", levels, []string{
		"2025-03-01 H 3 of 2",
		"2025-03-01 chamber 3 of -1",
		"2025-03-04 bench 6 of 8",
		"2025-03-04 chamber 0 of -1",
		"2025-03-10 T 2.5 of -1",
		"2025-03-10 bench 8.5 of 8",
		"2025-03-15 bench 6 of 8",
		"2025-03-18 T 0 of -1", // washed three days after
		"2025-03-20 bench 0 of 8",
		"2025-03-23 H 0 of 4",
	})
}

// A code of which a count is blank is owned nobody knows how often: no capacity, days
// over or room to grow. It is marked, and another binds first, however much room it has
// left.
func TestUncountedCodeNeverBindsFirst(t *testing.T) {
	b := book(t)
	b.Tray("H", "x", 100).Count = records.Known(2)
	b.Tray("H", "x", 100)
	b.Tray("T", "y", 100).Count = records.Known(9)
	sow(b, "a", "2025-03-01", "2025-03-20", "H", 3)
	sow(b, "b", "2025-03-01", "2025-03-20", "T", 3)
	f := of(b)
	same(t, "load", loadsInWords(f), []string{
		"2025 bench ? peak 6 on 2025-03-01",
		"2025 H ? peak 3 on 2025-03-01",
		"2025 T 9 peak 3 on 2025-03-01, 0 days over, 2.000",
	})
	same(t, "binds first", first(f), []string{"T"})
	if h := f.Load[1]; !h.Uncounted || h.DaysOver.Known || h.GrowthLeft.Known || f.Load[2].Uncounted {
		t.Errorf("marked: %+v, T %v", h, f.Load[2].Uncounted)
	}
	b.Trays[2].Count = records.Maybe[int]{}
	same(t, "nothing counted", first(of(b)), nil)
}

// All trays of a code are gone: none is owned, and whatever stood is too much. Over the
// season the most owned on any day counts: 4, until they broke on the 10th.
func TestAllTraysGone(t *testing.T) {
	b := book(t)
	b.Tray("H", "x", 100).Count = records.Known(4)
	gone := b.Tray("H", "x", 100)
	gone.Count, gone.Bought = records.Known(-4), b.Day("2025-03-10")
	sow(b, "a", "2025-03-01", "2025-03-20", "H", 2)
	same(t, "load", loadsInWords(of(b))[1:], []string{"2025 H 4 peak 2 on 2025-03-01, 13 days over, 1.000"})
}

// A batch with a chamber and no chamber_out leaves it after its crop's median written
// stay, here 4 days (rule "Chamber stays"): then it takes the bench. An open one stands
// in the chamber up to today.
func TestAssumedChamberStays(t *testing.T) {
	b := book(t)
	sow(b, "written", "2025-03-01", "2025-03-20", "T", 1).ChamberOut = b.Day("2025-03-05")
	sow(b, "assumed", "2025-03-10", "2025-03-30", "T", 2).Chamber = "box"
	sow(b, "open", "2025-03-29", "", "T", 4).Chamber = "box"
	var chamber []string
	for _, u := range of(b).InUse {
		if u.Place == ChamberName {
			chamber = append(chamber, fmt.Sprintf("%v %v", u.Date, u.Trays))
		}
	}
	same(t, "chamber", chamber, []string{"2025-03-01 1", "2025-03-05 0", "2025-03-10 2", "2025-03-14 0", "2025-03-29 4", "2025-03-30 0"})
	b.Settings.ChamberPlaces = records.Known(5.0)
	if got := fmt.Sprint(Today(batches(b))); got != "[{chamber 1}]" {
		t.Errorf("left today, the 30th: %s, want 1 of 5: the open batch is taken to stay until the 2nd", got)
	}
}

// A span is cut where a season ends, each season has its own peak, and one in which
// nothing stood has no row.
func TestSeasons(t *testing.T) {
	b := book(t)
	b.Settings.BenchPlaces = records.Known(4.0)
	sow(b, "a", "2022-12-20", "2023-01-10", "T", 1)
	sow(b, "b", "2025-03-01", "2025-03-05", "T", 2)
	sow(b, "c", "2025-03-05", "2025-03-09", "T", 2) // on the bench the day that b leaves
	same(t, "load", loadsInWords(of(b)), []string{
		"2022 bench 4 peak 1 on 2022-12-20, 0 days over, 3.000",
		"2022 T ? peak 1 on 2022-12-20",
		"2023 bench 4 peak 1 on 2023-01-01, 0 days over, 3.000",
		"2023 T ? peak 1 on 2023-01-01",
		"2025 bench 4 peak 2 on 2025-03-01, 0 days over, 1.000",
		"2025 T ? peak 4 on 2025-03-05", // b's trays are being washed
	})
}

// Ten tenths of a tray fill one tray and lie over it on no day.
func TestTenthsOfATrayAreNoExcess(t *testing.T) {
	b := book(t)
	b.Tray("H", "x", 100).Count = records.Known(1)
	for i := range 10 {
		sow(b, fmt.Sprint(i), "2025-03-01", "2025-03-20", "H", 0.1)
	}
	f := of(b)
	if h := f.Load[1]; h.Place != "H" || h.DaysOver != records.Known(0) {
		t.Errorf("%+v", h)
	}
}

// The peak's day is the first that reached it: 0.1 + 0.2 of a tray in float64 lies a hair
// above 0.3, and three tenths fill a place of 0.3 with nothing left.
func TestPeakIsTheFirstDayButForNoise(t *testing.T) {
	b := book(t)
	b.Settings.BenchPlaces = records.Known(0.3)
	sow(b, "a", "2025-03-01", "2025-03-05", "T", 0.3)
	sow(b, "b", "2025-03-10", "2025-03-15", "T", 0.1)
	sow(b, "c", "2025-03-10", "2025-03-15", "T", 0.2)
	bench := of(b).Load[0]
	if bench.PeakDate != b.Day("2025-03-01") {
		t.Errorf("%+v", bench)
	}
	b.Sowings = b.Sowings[1:]
	bench = of(b).Load[0]
	if bench.DaysOver != records.Known(0) || bench.GrowthLeft != records.Known(0.0) {
		t.Errorf("%+v", bench)
	}
}

// If the farm grew by half and sowed T in place of H.
func TestGrowAndSwitch(t *testing.T) {
	all := batches(spring(t))
	then := New(all, all.Standings(2, []batch.Switch{{From: "H", To: "T"}}))
	same(t, "load", loadsInWords(then), []string{
		"2025 bench 8 peak 11 on 2025-03-10, 5 days over, -0.273",
		"2025 chamber ? peak 6 on 2025-03-01",
		"2025 T ? peak 11 on 2025-03-10",
	})
}

// What is left today: of what stands today, in the unit of the place; nothing where
// the book does not say how much it holds.
func TestLeftToday(t *testing.T) {
	b := spring(t)
	sow(b, "open", "2025-03-10", "", "T", 1)
	for day, want := range map[string]string{
		"2025-02-28": "[{bench 8} {chamber 5}]",
		"2025-03-03": "[{bench 8} {chamber 2}]",
		"2025-03-04": "[{bench 2} {chamber 5}]",
		"2025-03-10": "[{bench -1.5} {chamber 5}]",
		"2025-03-15": "[{bench 1} {chamber 5}]",
		"2025-03-20": "[{bench 7} {chamber 5}]",
	} {
		b.Settings.ChamberPlaces = records.Known(5.0)
		sown := batch.Sowings(b.Book())
		all := batch.New(b.Book(), sown, make([]batch.Trace, len(sown)), b.Day(day))
		if got := fmt.Sprint(Today(all)); got != want {
			t.Errorf("%s: left %s, want %s", day, got, want)
		}
	}
	b.Settings.BenchPlaces, b.Settings.ChamberPlaces = Num{}, Num{}
	if left := Today(batches(b)); left != nil {
		t.Errorf("left of who knows how much: %v", left)
	}
}
