package estimate

import (
	"math"
	"testing"
)

// By hand: 7 of 9 gives p = 7.5/10; 0.75 x 0.25 x 2 / 9 = 1/24. 0 of 9 gives p = 0.05: 0.0475/9.
func TestPooledVarianceByHand(t *testing.T) {
	near(t, "7 of 9", PooledVariance(7, 9, 2), 1.0/24, 1e-15)
	near(t, "0 of 9", PooledVariance(0, 9, 1), 0.0475/9, 1e-15)
	near(t, "9 of 9", PooledVariance(9, 9, 1), 0.0475/9, 1e-15)
	if v := PooledVariance(0, 0, 1); !math.IsInf(v, 1) {
		t.Errorf("nothing known: %v", v)
	}
}
