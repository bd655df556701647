package room

import (
	"fmt"
	"reflect"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/internal/booktest"
)

// december is the day on which two of three trays of H break.
var december = records.NewDate(2024, 12, 20)

// anyBook draws a few batches of two codes over two seasons, quarters of trays.
func anyBook(rt *rapid.T, t testing.TB) *booktest.Book {
	b := book(t)
	b.Tray("H", "x", 100).Count = records.Known(3)
	broken := b.Tray("H", "x", 100)
	broken.Count, broken.Bought = records.Known(-2), december
	b.Settings.BenchPlaces = records.Known(4.0)
	first := records.NewDate(2024, 11, 1)
	for i := range rapid.IntRange(0, 12).Draw(rt, "batches") {
		sown := first + records.Date(rapid.IntRange(0, 90).Draw(rt, "sown"))
		end := sown + records.Date(rapid.IntRange(0, 40).Draw(rt, "days"))
		tray := rapid.SampledFrom([]string{"H", "T"}).Draw(rt, "tray")
		s := sow(b, fmt.Sprint("b", i), sown.String(), end.String(), tray, float64(rapid.IntRange(1, 12).Draw(rt, "quarters"))/4)
		switch rapid.SampledFrom([]string{"no", "written", "assumed"}).Draw(rt, "chamber") {
		case "written":
			s.ChamberOut = sown + records.Date(rapid.IntRange(0, 5).Draw(rt, "in"))
		case "assumed":
			s.Chamber = "box"
		}
	}
	return b
}

// The season's peaks and days over are those of counting every day by itself.
func TestRoomIsWhatCountingDaysGives(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		all := batches(anyBook(rt, t))
		for _, load := range New(all, all.Standings(1, nil)).Load {
			peak, over := 0.0, 0
			from, after := all.Settings.SeasonDays(load.Season)
			for d := from; d < after; d++ {
				stood := standing(all, load.Place, d)
				peak = max(peak, stood)
				if stood > holds(load.Place, d) {
					over++
				}
			}
			if load.Peak != peak || load.DaysOver.Known && load.DaysOver.Value != over || standing(all, load.Place, load.PeakDate) != peak {
				rt.Fatalf("%+v: counted %v, %d days over", load, peak, over)
			}
		}
	})
}

// holds is how much a place holds on a day.
func holds(place string, d records.Date) float64 {
	switch {
	case place != "H":
		return 4
	case d >= december:
		return 1
	}
	return 3
}

// standing is what stands somewhere on a day, batch by batch.
func standing(all *batch.Batches, place string, d records.Date) float64 {
	trays := 0.0
	for _, b := range all.List {
		from, to := b.Sown, b.End
		switch {
		case place == ChamberName:
			to = min(b.ChamberUntil, b.End)
		case place == BenchName && b.ChamberUntil.Known():
			from = min(b.ChamberUntil, b.End)
		case place != BenchName && place != b.Tray:
			continue
		case place == b.Tray:
			to += 3
		}
		if from <= d && d < to {
			trays += b.Trays
		}
	}
	return trays
}

// The order of rows changes no digit.
func TestOrderOfRowsChangesNothing(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		b := anyBook(rt, t)
		before := of(b)
		slices.Reverse(b.Sowings)
		slices.Reverse(b.Trays)
		if after := of(b); !reflect.DeepEqual(after, before) {
			rt.Fatalf("before %+v\nafter %+v", before, after)
		}
	})
}

// A farm by chance: every figure is a number, and a load is above nothing.
func TestAnyFarmIsFinite(t *testing.T) {
	for seed := range uint64(4) {
		f := of(booktest.Farm(t, seed, 3, 40))
		booktest.Finite(t, f, "room")
		for _, l := range f.Load {
			if !(l.Peak > 0) || l.DaysOver.Known != l.Capacity.Known || l.DaysOver.Value < 0 {
				t.Errorf("%+v", l)
			}
		}
	}
}
