package estimate

import (
	"math"
	"math/rand/v2"
	"reflect"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// Two small farms made up and swept by two other programs, see testdata/README.txt.
func TestPeakAgreesWithReference(t *testing.T) {
	spans := map[string][]Span{}
	for _, r := range rows(t, "intervals.csv") {
		spans[r["case"]] = append(spans[r["case"]], Span{
			int(r.number(t, "start")), int(r.number(t, "end")), r.number(t, "trays"),
		})
	}
	want := expected(t, "intervals")
	for _, name := range []string{"simple", "weighted"} {
		amount, day, ok := Peak(Occupancy(spans[name]))
		if !ok || amount != want(name, "peak_trays") || float64(day) != want(name, "first_peak_time") {
			t.Errorf("%s: %v on day %d, ok %v", name, amount, day, ok)
		}
	}
}

func TestOccupancyCases(t *testing.T) {
	for _, c := range []struct {
		name  string
		spans []Span
		want  []Step
	}{
		{"nothing", nil, nil},
		{"one", []Span{{3, 7, 2}}, []Step{{3, 2}, {7, 0}}},
		{"touching, alike: no change on day 7", []Span{{7, 9, 2}, {3, 7, 2}}, []Step{{3, 2}, {9, 0}}},
		{"touching, unlike", []Span{{3, 7, 2}, {7, 9, 5}}, []Step{{3, 2}, {7, 5}, {9, 0}}},
		{"tenths leave nothing behind", []Span{{1, 4, .1}, {2, 5, .2}, {3, 6, .3}}, []Step{{1, .1}, {2, .1 + .2}, {3, .6}, {4, .5}, {5, .3}, {6, 0}}},
		{"great and small", []Span{{1, 4, 1e300}, {2, 5, 1e-300}}, []Step{{1, 1e300}, {4, 1e-300}, {5, 0}}},
		{"a capacity taken away", []Span{{1, 9, -10}, {2, 5, 12}}, []Step{{1, -10}, {2, 2}, {5, -10}, {9, 0}}},
		{"the great cancel, the small is left", []Span{{1, 4, 1e17}, {1, 4, 1}, {1, 4, -1e17}}, []Step{{1, 1}, {4, 0}}},
		{"no spans at all", []Span{{3, 3, 2}, {5, 4, 2}, {1, 9, 0}, {1, 9, math.NaN()}, {1, 9, math.Inf(1)}}, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := Occupancy(c.spans)
			if len(got) != len(c.want) {
				t.Fatalf("got %v, want %v", got, c.want)
			}
			for i, step := range c.want {
				near(t, "level", got[i].Amount, step.Amount, 1e-15*math.Abs(step.Amount))
				if got[i].Day != step.Day {
					t.Errorf("got %v, want %v", got, c.want)
				}
			}
		})
	}
}

func TestPeakWithoutSteps(t *testing.T) {
	if amount, day, ok := Peak(nil); amount != 0 || day != 0 || ok {
		t.Errorf("got %v on %d, %v", amount, day, ok)
	}
}

func TestDaysOver(t *testing.T) {
	steps := []Step{{3, 2}, {7, 5}, {9, 3}, {12, 0}}
	for _, c := range []struct {
		capacity float64
		until    int
		want     int
	}{{1, 20, 9}, {2, 20, 5}, {2, 8, 1}, {2, 7, 0}, {5, 20, 0}, {1, 0, 0}, {-1, 15, 12}} {
		if got := DaysOver(steps, c.capacity, c.until); got != c.want {
			t.Errorf("over %v until %d: %d days, want %d", c.capacity, c.until, got, c.want)
		}
	}
	if got := DaysOver(nil, -1, 9); got != 0 {
		t.Errorf("without steps: %d", got)
	}
}

// Against counting day by day: every level, the peak and its first day, the days over; it ends at 0; the order of the
// spans changes nothing, not the last bit.
func TestOccupancyLaws(t *testing.T) {
	const last = 40
	rapid.Check(t, func(t *rapid.T) {
		spans := rapid.SliceOf(rapid.Custom(func(t *rapid.T) Span {
			start := rapid.IntRange(0, last).Draw(t, "start")
			return Span{start, rapid.IntRange(start, last).Draw(t, "end"), float64(rapid.IntRange(0, 400).Draw(t, "tenths")) / 10}
		})).Draw(t, "spans")
		steps := Occupancy(spans)
		if len(steps) > 0 && steps[len(steps)-1].Amount != 0 {
			t.Fatalf("ends at %v", steps[len(steps)-1])
		}
		turned := slices.Clone(spans)
		slices.Reverse(turned)
		if !reflect.DeepEqual(Occupancy(turned), steps) {
			t.Fatal("the order of the spans matters")
		}
		checkByDay(t, spans, steps, last)
	})
}

// Where no sum is rounded, adding up in float64 gives what adding up exactly does; where
// one is, it says so: quarters of trays never round, tenths soon do.
func TestPlainLevelsAreExact(t *testing.T) {
	rounds := 0
	rapid.Check(t, func(t *rapid.T) {
		parts := rapid.SampledFrom([]float64{4, 10}).Draw(t, "parts of a tray")
		spans := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) Span {
			start := rapid.IntRange(0, 20).Draw(t, "start")
			return Span{start * rapid.SampledFrom([]int{1, 1, 1, -1 << 30}).Draw(t, "back"), start + rapid.IntRange(1, 20).Draw(t, "days")*rapid.SampledFrom([]int{1, 1, 1, 1 << 40}).Draw(t, "times"), float64(rapid.IntRange(1, 400).Draw(t, "amount")) / parts}
		}), 1, 12).Draw(t, "spans")
		steps, exact := plainLevels(spans)
		if exact && !reflect.DeepEqual(steps, exactLevels(changesOf(spans))) {
			t.Fatalf("%v, exactly %v", steps, exactLevels(changesOf(spans)))
		}
		if !exact {
			rounds++
			if parts == 4 {
				t.Fatal("a sum of quarters was rounded")
			}
		}
	})
	if rounds == 0 {
		t.Error("no sum of tenths was rounded: half of this was not tried")
	}
}

func checkByDay(t *rapid.T, spans []Span, steps []Step, last int) {
	const capacity, slack = 50.05, 1e-9
	peak, peakDay, over, level, next := 0.0, 0, 0, 0.0, 0
	for day := 0; day <= last; day++ {
		stands := 0.0
		for _, s := range spans {
			if s.Start <= day && day < s.End {
				stands += s.Amount
			}
		}
		if next < len(steps) && steps[next].Day == day {
			level, next = steps[next].Amount, next+1
		}
		if math.Abs(level-stands) > slack {
			t.Fatalf("day %d: level %v, by count %v", day, level, stands)
		}
		if stands > peak+slack {
			peak, peakDay = stands, day
		}
		if stands > capacity {
			over++
		}
	}
	if amount, day, ok := Peak(steps); ok && (math.Abs(amount-peak) > slack || day != peakDay) || ok != (peak > 0) {
		t.Fatalf("peak %v on %d, by count %v on %d", amount, day, peak, peakDay)
	}
	if got := DaysOver(steps, capacity, last+1); got != over {
		t.Fatalf("%d days over, by count %d", got, over)
	}
}

func BenchmarkOccupancy30000Spans(b *testing.B) {
	random := rand.New(rand.NewPCG(1, 2))
	spans := make([]Span, 30000)
	for i := range spans {
		start := random.IntN(3650)
		spans[i] = Span{start, start + 14 + random.IntN(60), float64(1+random.IntN(100)) / 10}
	}
	for b.Loop() {
		Occupancy(spans)
	}
}
