package estimate

import (
	"testing"

	"pgregory.net/rapid"
)

// Newcombe (1998), Stat. Med. 17:873-890, Table II, a, b, f, g.
func TestNewcombeAgreesWithTableII(t *testing.T) {
	want := expected(t, "binom_diff")
	for _, r := range rows(t, "binom_diff.csv") {
		name, z := r["case"], Z(r.number(t, "conf"))
		n1, n2 := r.number(t, "n1"), r.number(t, "n2")
		p1, p2 := r.number(t, "x1")/n1, r.number(t, "x2")/n2
		diff, ci := Newcombe(p1, Wilson(p1, n1, z), p2, Wilson(p2, n2, z))
		near(t, name, diff, want(name, "difference"), 1e-12)
		near(t, name+" low", ci.Low, want(name, "hybrid_score_lower"), 1e-9)
		near(t, name+" high", ci.High, want(name, "hybrid_score_upper"), 1e-9)
	}
}

// -1 <= low <= difference <= high <= 1, and swapping the two turns the interval round.
func TestNewcombeLaws(t *testing.T) {
	share := func(t *rapid.T, name string) (float64, Interval) {
		p := rapid.Float64Range(0, 1).Draw(t, name)
		return p, Wilson(p, rapid.Float64Range(0, 500).Draw(t, "n of "+name), rapid.Float64Range(0, 13).Draw(t, "q of "+name))
	}
	rapid.Check(t, func(t *rapid.T) {
		p1, a := share(t, "p1")
		p2, b := share(t, "p2")
		diff, ci := Newcombe(p1, a, p2, b)
		const slack = 1e-12
		if ci.Low < -1-slack || ci.Low > diff || diff > ci.High || ci.High > 1+slack {
			t.Fatalf("%v does not hold %v", ci, diff)
		}
		if back, turned := Newcombe(p2, b, p1, a); back != -diff || turned != (Interval{-ci.High, -ci.Low}) {
			t.Fatalf("turned round: %v %v against %v %v", back, turned, diff, ci)
		}
	})
}
