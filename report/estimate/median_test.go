package estimate

import (
	"math"
	"slices"
	"testing"
)

func TestMedian(t *testing.T) {
	for _, c := range []struct {
		xs   []float64
		want float64
	}{
		{nil, 0}, {[]float64{math.NaN()}, 0}, {[]float64{7}, 7}, {[]float64{3, 1, 2}, 2}, {[]float64{4, 1, 3, 2}, 2.5},
		{[]float64{5, math.NaN(), 1}, 3}, {[]float64{math.MaxFloat64, math.MaxFloat64}, math.MaxFloat64},
		{[]float64{math.Inf(-1), math.Inf(1), 1}, 1},
	} {
		before := slices.Clone(c.xs)
		if got := Median(c.xs); got != c.want {
			t.Errorf("%v: %v, want %v", c.xs, got, c.want)
		}
		if !slices.EqualFunc(before, c.xs, func(a, b float64) bool { return a == b || a != a && b != b }) {
			t.Errorf("%v was changed", before)
		}
	}
}
