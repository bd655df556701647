package estimate

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"
)

// Values of R's qnorm and qt, see testdata/generate.R.
func TestQuantilesAgreeWithR(t *testing.T) {
	seen := 0
	for _, r := range rows(t, "r_expected.csv") {
		a, want := r["args"], r.number(t, "value")
		switch r["quantity"] {
		case "z":
			near(t, "Z "+a, Z(number(t, a)), want, 1e-12*want)
		case "t":
			args := r.numbers(t, "args")
			near(t, "T "+a, T(args[0], args[1]), want, 1e-11*want)
		default:
			continue
		}
		seen++
	}
	if seen != 72 {
		t.Errorf("tested %d quantiles, want 72", seen)
	}
}

func TestQuantilesAtTheEnds(t *testing.T) {
	inf, nan := math.Inf(1), math.NaN()
	for _, c := range []struct{ got, want float64 }{
		{Z(0), 0}, {Z(-1), 0}, {Z(nan), 0}, {Z(1), inf}, {Z(2), inf},
		{T(0, 5), 0}, {T(1, 5), inf}, {T(nan, 5), 0},
		{T(0.95, 0), inf}, {T(0.95, -1), inf}, {T(0.95, nan), inf},
		{T(0.95, inf), Z(0.95)},
	} {
		if c.got != c.want {
			t.Errorf("got %v, want %v", c.got, c.want)
		}
	}
}

// A quantile asked for again, and again after very many others, is the same to the last bit.
func TestQuantilesAreRemembered(t *testing.T) {
	conf := 0.95
	first := T(conf, 7.25)
	for i := range 2*mostQuantiles + 10 {
		inverted.of(0.5, 3+float64(i)/7)
	}
	if again := T(conf, 7.25); again != first || first != -polished(distuv.StudentsT{Sigma: 1, Nu: 7.25}, (1-conf)/2) {
		t.Errorf("%v, then %v", first, again)
	}
	if n := len(inverted.known); n > mostQuantiles {
		t.Errorf("%d are remembered", n)
	}
}

// No jump where the expansion takes over from the inversion.
func TestTJoinsItsExpansion(t *testing.T) {
	for _, conf := range []float64{0.5, 0.95, 0.9999} {
		near(t, "T", T(conf, manyDF), T(conf, math.Nextafter(manyDF, 0)), 1e-9)
	}
}
