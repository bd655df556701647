package years

import (
	"fmt"
	"math"
	"reflect"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// Of any book the three parts add up to the change, of the farm and of every crop, and
// nothing is infinite.
func TestPartsAddUp(t *testing.T) {
	rows := 0
	for seed := range uint64(10) {
		f := figures(t, booktest.Farm(t, seed, 4, 30).Book())
		booktest.Finite(t, f, "figures")
		for _, c := range f.Years {
			c.adds(t)
			if c.Low.Known && !(c.Low.Value <= c.Same && c.Same <= c.High.Value) {
				t.Errorf("%+v", c)
			}
			rows++
		}
		for _, m := range Measures {
			for to := 2021; to <= 2023; to++ {
				farm, ok := f.Farm(to, m)
				sum := 0.0
				for _, d := range f.Drivers(to, m) {
					sum += d.Value
				}
				if ok {
					near(t, fmt.Sprint("drivers of ", m, " ", to), sum, farm.Change, 1e-11)
				}
			}
		}
	}
	if rows < 200 {
		t.Errorf("%d changes", rows)
	}
}

// twice is one season written a second time, as that of another year.
func twice(t *testing.T, seed uint64) *booktest.Book {
	b := booktest.Farm(t, seed, 1, 40)
	again := *booktest.Farm(t, seed, 1, 40).Book()
	const later = records.Date(365) // 2020 is a leap year: a day earlier in 2021
	for _, s := range again.Sowings {
		s.Code, s.Sown, s.Planned = "again "+s.Code, s.Sown+later, s.Planned+later
		if s.SetOut.Known() {
			s.SetOut += later
		}
		b.Sowings = append(b.Sowings, s)
	}
	b.CountsOf(&again, "again ", later)
	for _, o := range again.Outs {
		o.Batch, o.Date = "again "+o.Batch, o.Date+later
		b.Outs = append(b.Outs, o)
	}
	for _, s := range again.Scores {
		s.Batch, s.Date = "again "+s.Batch, s.Date+later
		b.Scores = append(b.Scores, s)
	}
	return b
}

// A season set beside itself has not changed, in any part.
func TestSeasonAgainstItself(t *testing.T) {
	for seed := range uint64(5) {
		for _, c := range figures(t, twice(t, seed).Book(), over).Years {
			if c.Measure == Cost { // the same plants bear no other season's money
				continue
			}
			if c.Change != 0 || c.Same != 0 || c.OtherKinds != 0 || c.OtherCrops.Value != 0 || math.Abs(c.Share-1) > 1e-12 {
				t.Errorf("%s %s: %v = %v %v %v, share %v", c.Measure, c.Crop, c.Change, c.Same, c.OtherKinds, c.OtherCrops.Value, c.Share)
			}
		}
	}
}

// Seasons the other way round: what rose fell, by as much, in every part.
func TestSeasonsTheOtherWayRound(t *testing.T) {
	for seed := range uint64(5) {
		r := roomsOf(t, booktest.Farm(t, seed, 2, 40).Book(), over)
		for _, m := range measures(r.g, r.p) {
			c := comparisonOf(m, r.b, r.m.Borne)
			there, back := Change{From: 2020, To: 2021}, Change{From: 2021, To: 2020}
			first, second := c.pools[0], c.pools[1]
			if !c.set(&there, first, second) || !c.set(&back, second, first) {
				t.Fatal(m.name)
			}
			near(t, "same", there.Same, -back.Same, 1e-12)
			near(t, "other kinds", there.OtherKinds, -back.OtherKinds, 1e-12)
			near(t, "other crops", there.OtherCrops.Value, -back.OtherCrops.Value, 1e-12)
			near(t, "share", there.Share, back.Share, 1e-12)
			near(t, "variance", there.variance, back.variance, 1e-12)
			if there.Same == 0 && there.OtherKinds == 0 {
				t.Error("nothing changed: nothing was tried")
			}
		}
	}
}

// The order of the logs' rows moves no digit.
func TestOrderOfRowsChangesNothing(t *testing.T) {
	plain, mixed := booktest.Farm(t, 3, 3, 40), booktest.Farm(t, 3, 3, 40)
	mixed.Shuffle(9)
	if want, got := figures(t, plain.Book()), figures(t, mixed.Book()); !reflect.DeepEqual(got, want) {
		t.Error("another order of rows gives other figures")
	}
}

// A crop that did as before but is grown more moves the farm by other crops alone.
func TestMoreOfAHardCrop(t *testing.T) {
	b := booktest.New(t)
	for i, hard := range []int{1, 5} {
		grown(b, 2024+i, "orache", "x", "AIR", 4, 95)
		grown(b, 2024+i, "celeriac", "c", "AIR", hard, 60)
	}
	c := figures(t, b.Book(), over).row(t, Emergence, "", 2025)
	if c.Same != 0 || c.OtherKinds != 0 || !(c.Change < -.1) {
		t.Errorf("%+v", c)
	}
	near(t, "other crops", c.OtherCrops.Value, c.Change, 1e-12)
}

// A sum that is 0 but for rounding is 0; one that is small beside its terms is not.
func TestNoiseIsNothing(t *testing.T) {
	terms := []Part{{Same: .1, OtherKinds: -.2, OtherCrops: .3}, {Same: -1e-4, OtherKinds: 1e-4, OtherCrops: 1e-4}}
	s := split{same: 1e-17, kinds: -1e-16, crops: 1e-16, parts: terms}.tidied()
	if s.same != 0 || s.kinds != 0 || s.crops != 0 {
		t.Errorf("%+v", s)
	}
	s = split{same: 1e-11, kinds: 1.9e-10, crops: 2.9e-10, parts: terms}.tidied()
	if s.same != 0 || s.kinds != 0 || s.crops != 0 {
		t.Errorf("%+v", s)
	}
	if s = (split{same: 1.1e-10, kinds: -2.1e-10, crops: 3.1e-10, parts: terms}).tidied(); s.same == 0 || s.kinds == 0 || s.crops == 0 {
		t.Errorf("%+v", s)
	}
}
