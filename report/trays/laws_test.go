package trays

import (
	"fmt"
	"math"
	"reflect"
	"slices"
	"testing"

	"pgregory.net/rapid"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// anyPair draws whatever may be written of a pair in trays.csv and book.csv.
func anyPair(rt *rapid.T) pairBook {
	num := func(name string) Num {
		if rapid.Bool().Draw(rt, name+" blank") {
			return Num{}
		}
		return records.Known(rapid.SampledFrom([]float64{0, 0.25, 1, 2.5, 7, 1000}).Draw(rt, name))
	}
	pb := newPairBook()
	for range rapid.IntRange(0, 7).Draw(rt, "dates") {
		pb.gains = append(pb.gains, float64(rapid.IntRange(-20, 20).Draw(rt, "gain")))
	}
	pb.value, pb.plug, pb.wage = num("value"), num("plug"), num("wage")
	pb.discount = records.Known(rapid.SampledFrom([]float64{0, 0.05, 10}).Draw(rt, "i"))
	for _, p := range []*records.Purchase{&pb.heavy, &pb.thin} {
		p.Price, p.Lasts, p.Uses, p.Minutes = num("price"), num("lasts"), num("uses"), num("minutes")
		p.Count = records.Maybe[int]{Value: rapid.IntRange(-3, 9).Draw(rt, "count"), Known: rapid.Bool().Draw(rt, "counted")}
	}
	return pb
}

// Whatever is written, no figure is NaN or infinite, ends are in order, and there is a
// verdict or a reason why there is none.
func TestAnyPairIsFinite(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		for _, back := range anyPair(rt).tell(t).Payback {
			if back.GainLow.Known && !(back.GainLow.Value <= back.Gain.Value && back.Gain.Value <= back.GainHigh.Value) {
				rt.Fatalf("gain out of order: %+v", back)
			}
			if (back.Why == "") != (back.Verdict != "") {
				rt.Fatalf("a verdict and why there is none: %+v", back)
			}
			if buy := back.Buy; buy != nil && !(0 <= buy.Low && buy.Low <= buy.N && buy.N <= buy.High) {
				rt.Fatalf("buy out of order: %+v", buy)
			}
			if back.Gain.Known != (back.Valued > 1 && back.OtherLife.Uses.Known && back.Difference.Known) {
				rt.Fatalf("a gain on %d values: %+v", back.Valued, back)
			}
		}
	})
}

// anyBook draws a few batches of a pair over two seasons, in quarters of trays.
func anyBook(rt *rapid.T, t testing.TB) *booktest.Book {
	b := newPairBook().book(t)
	sow(b, "heavy", "2025-02-20", "HEAVY", 1, 50) // so the two are a pair
	sow(b, "thin", "2025-03-10", "THIN", 1, 50)
	first := records.NewDate(2024, 11, 1)
	for i := range rapid.IntRange(0, 12).Draw(rt, "batches") {
		sown := first + records.Date(rapid.IntRange(0, 90).Draw(rt, "sown"))
		tray := rapid.SampledFrom([]string{"HEAVY", "THIN"}).Draw(rt, "tray")
		quarters := rapid.IntRange(1, 12).Draw(rt, "quarters")
		s := sow(b, fmt.Sprint("b", i), sown.String(), tray, float64(quarters)/4, float64(rapid.IntRange(0, 20).Draw(rt, "usable")))
		s.SetOut = sown + records.Date(rapid.IntRange(0, 40).Draw(rt, "days"))
	}
	return b
}

// The uses of all trays in the replay add up to the needs of the last finished seasons:
// parts sown on one day in one code are one need, those in THIN only of a crop that has
// a match (rule "The next tray").
func TestUsesAddUpToNeeds(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		f := tell(anyBook(rt, t).Book())
		seasons := f.batches.FinishedSeasons(3)
		days := map[string]float64{}
		for _, b := range f.batches.List {
			if slices.Contains(seasons, b.Season) && (b.Tray == "HEAVY" || len(f.Matches) > 0) {
				days[b.Tray+b.Sown.String()] += b.Trays
			}
		}
		needs, uses := 0.0, 0.0
		for _, trays := range days {
			needs += math.Ceil(trays)
		}
		for _, n := range f.Payback[0].Uses {
			uses += n * float64(len(seasons))
		}
		if math.Abs(uses-needs) > 1e-9 {
			rt.Fatalf("%v uses of %v needs", uses, needs)
		}
	})
}

// The order of rows changes no digit, nor does making the figures change what they are
// made of.
func TestOrderOfRowsChangesNothing(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		b := anyBook(rt, t)
		before := tell(b.Book())
		if again := New(before.batches, before.plants, before.money); !reflect.DeepEqual(again, before.Figures) {
			rt.Fatalf("again %+v\nbefore %+v", again, before.Figures)
		}
		slices.Reverse(b.Sowings)
		slices.Reverse(b.Trays)
		if after := tell(b.Book()); !reflect.DeepEqual(after.Figures, before.Figures) {
			rt.Fatalf("before %+v\nafter %+v", before.Figures, after.Figures)
		}
	})
}

// A farm by chance: figures are numbers, differences lie between -1 and 1, and a tray
// with a greater number is used no more often.
func TestLawsOfAnyFarm(t *testing.T) {
	for seed := range uint64(4) {
		f := tell(booktest.Farm(t, seed, 3, 60).Book())
		booktest.Finite(t, f.Figures, "trays")
		for _, m := range f.Matches {
			if math.Abs(m.Difference) > 1 || m.LastSown > m.FirstSown+matchDays || len(m.Batches) < 2 {
				t.Errorf("%+v", m)
			}
		}
		for _, back := range f.Payback {
			if !(back.Matches > 0) || len(back.Uses) == 0 {
				t.Errorf("a farm that tells nothing: %+v", back)
			}
		}
	}
}
