package estimate

import (
	"math"
	"testing"
)

// R's power.t.test (paired, exact) asks for as many dates, give or take one: Guenther's formula is an approximation.
func TestSideBySideAgreesWithR(t *testing.T) {
	tested := 0
	for _, r := range rows(t, "r_expected.csv") {
		if r["quantity"] != "side_by_side" {
			continue
		}
		a := r.numbers(t, "args")
		near(t, r["args"], float64(SideBySide(a[0], a[1])), math.Ceil(r.number(t, "value")), 1)
		tested++
	}
	if tested != 12 {
		t.Errorf("tested %d trials, want 12", tested)
	}
}

// By hand: (1.959964 + 0.841621)^2 = 7.848880; x 0.0025/0.0004 = 49.0555; + 1.920729 = 50.976, so 51.
func TestSideBySideByHand(t *testing.T) {
	if got := SideBySide(0.05, 0.02); got != 51 {
		t.Errorf("got %d, want 51", got)
	}
}

func TestSideBySideWithoutAnAnswer(t *testing.T) {
	inf, nan := math.Inf(1), math.NaN()
	for _, c := range [][2]float64{{.1, 0}, {.1, -1}, {.1, nan}, {.1, inf}, {-1, .1}, {nan, .1}, {inf, .1}, {1e9, 1e-9}} {
		if got := SideBySide(c[0], c[1]); got != 0 {
			t.Errorf("%v: %d dates", c, got)
		}
	}
	if got := SideBySide(0, 0.1); got != 2 {
		t.Errorf("no scatter: %d dates, want 2", got)
	}
}

// By hand: 2 x 0.8 x 0.2 / 128 + 0.0096 = 0.0025 + 0.0096 = 0.0121; its root is 0.11.
func TestTrialSDByHand(t *testing.T) {
	near(t, "128 cells", TrialSD(0.8, 128, 0.0096), 0.11, 1e-12)
	near(t, "nothing beyond chance", TrialSD(0.5, 2, -1), 0.5, 1e-12)
	for _, sd := range []float64{TrialSD(.8, 0, .03), TrialSD(.8, -1, .03), TrialSD(math.NaN(), 9, .03), TrialSD(.8, 9, math.NaN()), TrialSD(1, 0, 0)} {
		if !math.IsInf(sd, 1) || SideBySide(sd, 0.05) != 0 {
			t.Errorf("nothing known: %v", sd)
		}
	}
}
