package years

import (
	"math"
	"testing"

	"traybook/records"
	"traybook/report/estimate"
	"traybook/report/internal/booktest"
	"traybook/report/rate"
)

// replicated is two crops in two seasons, each sown three times alike: the scatter of the
// book has 3 x 4 - 4 = 8 degrees of freedom.
func replicated(t testing.TB, orache, mibuna [2][3]int) *booktest.Book {
	b := booktest.New(t)
	for i := range 2 {
		for _, up := range orache[i] {
			grown(b, 2024+i, "orache", "x", "AIR", 1, up)
		}
		for _, up := range mibuna[i] {
			grown(b, 2024+i, "mibuna", "m", "WALL", 1, up)
		}
	}
	return b
}

// The interval of like sowings, anew from the rule: one group a crop, so that the variance
// is that of its two seasons; two crops, each at 97.5 %; of the farm half the weight each.
func TestIntervalOfAChange(t *testing.T) {
	b := replicated(t, [2][3]int{{80, 90, 85}, {60, 50, 55}}, [2][3]int{{70, 75, 72}, {71, 74, 70}})
	r := roomsOf(t, b.Book(), over)
	f := New(r.b, r.g, r.p, r.m, nil, nil)
	variance := func(crop string, x float64) float64 {
		used, ok := r.g.Scatter.Of(crop)
		if !ok {
			t.Fatal("no scatter")
		}
		p := (x + 0.5) / 301
		return p * (1 - p) * (1 + 99*used.Rho) / 300
	}
	sum := 0.0
	for crop, up := range map[string][2]float64{"orache": {255, 165}, "mibuna": {217, 215}} {
		used, _ := r.g.Scatter.Of(crop)
		v := variance(crop, up[0]) + variance(crop, up[1])
		half := estimate.T(0.975, used.DF) * math.Sqrt(v)
		c := f.row(t, Emergence, crop, 2025)
		known(t, crop+" low", c.Low, (up[1]-up[0])/300-half, 1e-12)
		known(t, crop+" high", c.High, (up[1]-up[0])/300+half, 1e-12)
		sum += v / 4
	}
	used, _ := r.g.Scatter.Of("")
	farm := f.row(t, Emergence, "", 2025)
	known(t, "farm low", farm.Low, farm.Same-estimate.T(0.95, used.DF)*math.Sqrt(sum), 1e-12)
	for crop, want := range map[string]rate.Verdict{"": rate.ClearlyLower, "orache": rate.ClearlyLower, "mibuna": rate.NoDifference} {
		if c := f.row(t, Emergence, crop, 2025); c.Verdict != want {
			t.Errorf("%s: %s, want %s: %v to %v", crop, c.Verdict, want, c.Low, c.High)
		}
	}
}

// A crop alone in having like sowings is judged at the book's own level: m counts crops
// with an interval, not all crops.
func TestOnlyCropsWithAnIntervalMakeItStricter(t *testing.T) {
	alone := replicated(t, [2][3]int{{80, 90, 85}, {60, 50, 55}}, [2][3]int{})
	b := replicated(t, [2][3]int{{80, 90, 85}, {60, 50, 55}}, [2][3]int{})
	for i := range b.Sowings {
		if s := &b.Sowings[i]; s.Crop == "mibuna" && s.Sown >= b.Day("2025-01-01") {
			s.Variety = "n"
		}
	}
	width := func(b *booktest.Book) float64 {
		c := figures(t, b.Book(), over).row(t, Emergence, "orache", 2025)
		return c.High.Value - c.Low.Value
	}
	two, one := width(alone), width(b)
	r := roomsOf(t, b.Book(), over)
	used, _ := r.g.Scatter.Of("orache")
	near(t, "width", two/one, estimate.T(0.975, used.DF)/estimate.T(0.95, used.DF), 1e-9)
	if c := figures(t, b.Book(), over).row(t, Emergence, "mibuna", 2025); c.Low.Known || c.Verdict != rate.TooFew {
		t.Errorf("%+v", c)
	}
}

// With two changes or more before it, a change is set beside what the farm's seasons
// usually differ by: .1 and -.2 before give t(.975; 2) x sqrt((.01 + .04)/2).
func TestUsual(t *testing.T) {
	b := booktest.New(t)
	for i, up := range []int{70, 80, 60, 90} {
		grown(b, 2022+i, "orache", "x", "AIR", 1, up)
		grown(b, 2022+i, "orache", "x", "AIR", 1, up)
	}
	f := figures(t, b.Book(), over)
	for _, crop := range []string{"", "orache"} {
		missing(t, "usual before", f.row(t, Emergence, crop, 2024).Usual)
		c := f.row(t, Emergence, crop, 2025)
		known(t, "usual", c.Usual, estimate.T(0.95, 2)*math.Sqrt(0.025), 1e-12)
		near(t, "t", estimate.T(0.95, 2), 4.302652729696142, 1e-9) // R: qt(.975, 2)
		if c.Habit() != Within {
			t.Errorf("%+v: %q", c.Verdict, c.Habit())
		}
	}
}

// A change without like sowings says nothing of what is usual; one that is not clear has
// no habit.
func TestUsualRestsOnLikeSowings(t *testing.T) {
	b := booktest.New(t)
	for i, up := range []int{70, 80, 60, 90} {
		grown(b, 2022+i, "orache", "x", "AIR", 1, up)
	}
	b.Sowings[1].Variety = "y"
	f := figures(t, b.Book(), over)
	c := f.row(t, Emergence, "orache", 2025)
	missing(t, "usual", c.Usual)
	if c.Habit() != "" {
		t.Errorf("habit %q", c.Habit())
	}
	within := Change{Same: .1, Share: .5, Usual: records.Known(.2), Verdict: rate.ClearlyHigher}
	beyond := Change{Same: -.11, Share: .5, Usual: records.Known(.2), Verdict: rate.ClearlyLower}
	unclear := Change{Same: -.11, Share: .5, Usual: records.Known(.2), Verdict: rate.NoDifference}
	if within.Habit() != Within || beyond.Habit() != Beyond || unclear.Habit() != "" {
		t.Errorf("%q %q %q", within.Habit(), beyond.Habit(), unclear.Habit())
	}
}

// Of two groups in a crop each enters with its mean weight squared: x is 1/4 of the cells,
// then 1/2, y the rest.
func TestVarianceOverGroups(t *testing.T) {
	b := booktest.New(t)
	for i, trays := range []int{1, 3} {
		for _, up := range []int{70, 80} {
			grown(b, 2024+i, "orache", "x", "AIR", trays, up)
			grown(b, 2024+i, "orache", "y", "AIR", 3, up)
		}
	}
	r := roomsOf(t, b.Book(), over)
	used, ok := r.g.Scatter.Of("orache")
	if !ok {
		t.Fatal("no scatter")
	}
	variance := func(trays float64) float64 { // two batches of so many trays, 3 in 4 of which came up
		n := 200 * trays
		p := (.75*n + .5) / (n + 1)
		return p * (1 - p) * (1 + (n/2-1)*used.Rho) / n
	}
	x, y := 3.0/8, 5.0/8
	want := x*x*(variance(1)+variance(3)) + y*y*(2*variance(3))
	c := New(r.b, r.g, r.p, r.m, nil, nil).row(t, Emergence, "orache", 2025)
	known(t, "high", c.High, estimate.T(.95, used.DF)*math.Sqrt(want), 1e-12)
}
