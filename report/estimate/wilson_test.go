package estimate

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// NIST/SEMATECH e-Handbook 7.2.4.1, Newcombe (1998) Table I, Brown, Cai and DasGupta (2001); R's prop.test.
func TestWilsonAgreesWithPublishedCases(t *testing.T) {
	want := expected(t, "binom_one")
	for _, r := range rows(t, "binom_one.csv") {
		name, n, conf := r["case"], r.number(t, "n"), r.number(t, "conf")
		p := r.number(t, "x") / n
		if r["sides"] == "lower" { // a one-sided limit at conf is a two-sided one at 2 conf - 1
			near(t, name, Wilson(p, n, Z(2*conf-1)).Low, want(name, "wilson_lower_one_sided"), 1e-9)
			continue
		}
		ci := Wilson(p, n, Z(conf))
		near(t, name+" low", ci.Low, want(name, "wilson_lower"), 1e-9)
		near(t, name+" high", ci.High, want(name, "wilson_upper"), 1e-9)
	}
}

// With continuity correction: Newcombe (1998), Table I, method 4, and outputs of R's prop.test that were printed: 6 of 52 in R's
// bug report 2794 (2003), 340 of 400 on the R-help list (February 2007). Each also to all digits, from R 4.2.2.
func TestWilsonCorrectedAgreesWithPublishedCases(t *testing.T) {
	for _, r := range rows(t, "binom_corrected.csv") {
		name, n := r["case"]+" "+r["x"]+" of "+r["n"]+" at "+r["conf"], r.number(t, "n")
		ci := WilsonCorrected(r.number(t, "x")/n, n, Z(r.number(t, "conf")))
		near(t, name+" low", ci.Low, r.number(t, "low"), 1e-9)
		near(t, name+" high", ci.High, r.number(t, "high"), 1e-9)
		if r["printed_low"] != "" {
			printed := math.Pow(10, -r.number(t, "digits")) / 2 * (1 + 1e-9)
			near(t, name+" low as printed", ci.Low, r.number(t, "printed_low"), printed)
			near(t, name+" high as printed", ci.High, r.number(t, "printed_high"), printed)
		}
	}
}

// A tray of 128 with 102 filled: 79.7 %, 71.9 to 85.7 %, worked by hand.
func TestWilsonOfATray(t *testing.T) {
	ci := Wilson(102.0/128, 128, Z(0.95))
	near(t, "low", ci.Low, 0.719, 0.0005)
	near(t, "high", ci.High, 0.857, 0.0005)
}

// The broomrape counts of Crowder (1978): a fractional, effective n.
func TestWilsonOnAnEffectiveCount(t *testing.T) {
	want := expected(t, "orobanche")
	for name, group := range broomrape(t) {
		_, n, _ := total(group)
		ci := Wilson(want(name, "pooled_proportion"), n/want(name, "design_effect"), Z(0.95))
		near(t, name+" low", ci.Low, want(name, "wilson_on_effective_n_lower"), 1e-9)
		near(t, name+" high", ci.High, want(name, "wilson_on_effective_n_upper"), 1e-9)
	}
}

func TestWilsonAtTheEnds(t *testing.T) {
	inf, nan, nothing := math.Inf(1), math.NaN(), Interval{0, 1}
	for _, c := range []struct {
		p, n, q float64
		want    Interval
	}{
		{0.5, 0, 2, nothing}, {0.5, -3, 2, nothing}, {0.5, 10, inf, nothing}, {0.5, 10, 1e200, nothing},
		{nan, 10, 2, nothing}, {0.5, nan, 2, nothing}, {0.5, 10, nan, nothing}, {0.5, 10, -1, nothing},
		{0.25, inf, 2, Interval{0.25, 0.25}}, {0.25, 8, 0, Interval{0.25, 0.25}},
	} {
		if got := Wilson(c.p, c.n, c.q); got != c.want {
			t.Errorf("Wilson(%v, %v, %v) = %v, want %v", c.p, c.n, c.q, got, c.want)
		}
	}
	for _, n := range []float64{0.3, 1, 72, 12345.6} {
		none, all := Wilson(0, n, 1.96), Wilson(1, n, 1.96)
		if none.Low != 0 || none.High >= 1 || all.High != 1 || all.Low <= 0 {
			t.Errorf("n = %v: none %v, all %v", n, none, all)
		}
	}
}

// For all: 0 <= low <= p <= high <= 1; a wider confidence and fewer cells never narrow it; none and all mirror each other.
func TestWilsonLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := rapid.Float64Range(0, 1).Draw(t, "p")
		n := rapid.Float64Range(1e-3, 1e6).Draw(t, "n")
		q := rapid.Float64Range(0, 700).Draw(t, "q")
		ci := Wilson(p, n, q)
		if !(0 <= ci.Low && ci.Low <= p && p <= ci.High && ci.High <= 1) {
			t.Fatalf("%v does not hold %v", ci, p)
		}
		const slack = 1e-12
		for _, wider := range []Interval{Wilson(p, n, q*1.5), Wilson(p, n/2, q)} {
			if wider.Low > ci.Low+slack || wider.High < ci.High-slack {
				t.Fatalf("%v does not hold %v", wider, ci)
			}
		}
		if other := Wilson(1-p, n, q); math.Abs(1-other.High-ci.Low) > 1e-9 {
			t.Fatalf("%v does not mirror %v", other, ci)
		}
	})
}

// For all: 0 <= low <= p <= high <= 1, exact at the ends; never narrower than without the correction; none and all mirror each
// other.
func TestWilsonCorrectedLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := rapid.Float64Range(0, 1).Draw(t, "p")
		n := rapid.Float64Range(1e-3, 1e6).Draw(t, "n")
		q := rapid.Float64Range(0, 700).Draw(t, "q")
		ci, plain := WilsonCorrected(p, n, q), Wilson(p, n, q)
		if !(0 <= ci.Low && ci.Low <= p && p <= ci.High && ci.High <= 1) {
			t.Fatalf("%v does not hold %v", ci, p)
		}
		if ci.Low > plain.Low || ci.High < plain.High {
			t.Fatalf("%v is narrower than %v", ci, plain)
		}
		if other := WilsonCorrected(1-p, n, q); math.Abs(1-other.High-ci.Low) > 1e-9 {
			t.Fatalf("%v does not mirror %v", other, ci)
		}
	})
	for _, n := range []float64{0.3, 1, 72, 12345.6} {
		none, all := WilsonCorrected(0, n, 1.96), WilsonCorrected(1, n, 1.96)
		if none.Low != 0 || !(none.High > 0) || all.High != 1 || !(all.Low < 1) {
			t.Errorf("n = %v: none %v, all %v", n, none, all)
		}
	}
	nan, nothing := math.NaN(), Interval{0, 1}
	for _, c := range [][3]float64{{0, 0, 2}, {1, -3, 2}, {0.5, 10, math.Inf(1)}, {nan, 10, 2}, {0.5, nan, 2}, {0.5, 10, nan}} {
		if got := WilsonCorrected(c[0], c[1], c[2]); got != nothing {
			t.Errorf("WilsonCorrected(%v) = %v, want nothing known", c, got)
		}
	}
}
