package estimate

import (
	"testing"

	"pgregory.net/rapid"
)

// By hand from TestScatterByHand: n = N/D = 20/(10/3) = 6, so Wilson's at 0.6 -+ 1/12 on 6 with t of 4 df.
func TestShareIntervalByHand(t *testing.T) {
	p, ci := ShareInterval([]Count{{8, 10}, {4, 10}}, 7.0/27, 4, 0.95)
	const q = 2.7764451051978 // qt(0.975, 4) of R 4.2.2
	near(t, "p", p, 0.6, 1e-15)
	near(t, "low", ci.Low, Wilson(0.6-1.0/12, 6, q).Low, 1e-9)
	near(t, "high", ci.High, Wilson(0.6+1.0/12, 6, q).High, 1e-9)
}

func TestShareIntervalWithNothingKnown(t *testing.T) {
	if p, ci := ShareInterval(nil, 0, 5, 0.95); p != 0 || ci != (Interval{0, 1}) {
		t.Errorf("no batches: %v %v", p, ci)
	}
	if p, ci := ShareInterval([]Count{{3, 4}}, 0.1, 0, 0.95); p != 0.75 || ci != (Interval{0, 1}) {
		t.Errorf("no degrees of freedom: %v %v", p, ci)
	}
}

// 0 <= low <= p <= high <= 1; exact ends; more scatter never narrows; the order of the batches changes nothing.
func TestShareIntervalLaws(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		counts := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) Count {
			n := rapid.IntRange(1, 1280).Draw(t, "n")
			return Count{X: float64(rapid.IntRange(0, n).Draw(t, "x")), N: float64(n)}
		}), 1, 8).Draw(t, "counts")
		rho, df := rapid.Float64Range(0, .5).Draw(t, "rho"), rapid.Float64Range(.5, 60).Draw(t, "df")
		p, ci := ShareInterval(counts, rho, df, 0.95)
		if !(0 <= ci.Low && ci.Low <= p && p <= ci.High && ci.High <= 1) {
			t.Fatalf("%v does not hold %v", ci, p)
		}
		x, n, _ := total(counts)
		if x == 0 && ci.Low != 0 || x == n && ci.High != 1 {
			t.Fatalf("%v of %v: %v", x, n, ci)
		}
		_, narrow := ShareInterval(counts, 0, df, 0.95)
		if narrow.Low < ci.Low-1e-12 || narrow.High > ci.High+1e-12 {
			t.Fatalf("without scatter %v, with %v", narrow, ci)
		}
		if x > 0 && x < n && !(ci.Low < p && p < ci.High) {
			t.Fatalf("%v of %v: %v has no width", x, n, ci)
		}
		counts[0], counts[len(counts)-1] = counts[len(counts)-1], counts[0]
		if q, turned := ShareInterval(counts, rho, df, 0.95); q != p || turned != ci {
			t.Fatalf("turned round: %v %v", turned, ci)
		}
	})
}
