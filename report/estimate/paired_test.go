package estimate

import (
	"math"
	"testing"
)

// R's t.test on the sleep data of Student (1908) and two short rows, see testdata/generate.R.
func TestPairedMeanAgreesWithR(t *testing.T) {
	tested := 0
	for _, r := range rows(t, "r_expected.csv") {
		parts := map[string]func(Paired) float64{
			"paired_mean": func(p Paired) float64 { return p.Mean },
			"paired_sd":   func(p Paired) float64 { return p.SD },
			"paired_se":   func(p Paired) float64 { return p.SE },
			"paired_low":  func(p Paired) float64 { return p.CI.Low },
			"paired_high": func(p Paired) float64 { return p.CI.High },
		}
		part := parts[r["quantity"]]
		if part == nil {
			continue
		}
		args := r.numbers(t, "args")
		p, ok := PairedMean(args[1:], args[0])
		if !ok || p.N != len(args)-1 {
			t.Fatalf("%s: ok %v, n %d", r["args"], ok, p.N)
		}
		near(t, r["quantity"]+" "+r["args"], part(p), r.number(t, "value"), 1e-9)
		tested++
	}
	if tested != 30 {
		t.Errorf("tested %d values, want 30", tested)
	}
}

func TestPairedMeanEnds(t *testing.T) {
	for _, d := range [][]float64{nil, {1}, {1, math.NaN()}, {1, math.Inf(1)}} {
		if p, ok := PairedMean(d, 0.95); ok || p != (Paired{}) {
			t.Errorf("%v: %v %v", d, p, ok)
		}
	}
	p, ok := PairedMean([]float64{2, 2, 2}, 1)
	if !ok || p.CI != (Interval{2, 2}) || p.SD != 0 {
		t.Errorf("equal differences: %+v", p)
	}
}
