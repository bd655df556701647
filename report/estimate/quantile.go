package estimate

import (
	"math"
	"sync"

	"gonum.org/v1/gonum/stat/distuv"
)

// Z returns the two-sided normal quantile: the z with P(-z <= X <= z) = conf for a standard normal X. Z(0.95) = 1.95996.
// conf lies between 0 and 1; at or below 0 (and for NaN) it is 0, at or above 1 it is +Inf.
// Source: Abramowitz and Stegun (1964), 26.2.
func Z(conf float64) float64 {
	if tail, ok := upperTail(conf); !ok {
		return tail
	}
	return -distuv.UnitNormal.Quantile((1 - conf) / 2)
}

// T returns the two-sided quantile of Student's t: the t with P(-t <= X <= t) = conf at df degrees of freedom, which may be
// a fraction. Without degrees of freedom (df at or below 0, or NaN) nothing is known and it is +Inf; at conf at or below
// 0 it is 0, at or above 1 it is +Inf. From manyDF on it is the first two terms of the expansion around Z.
// Source: Student (1908), Biometrika 6:1-25; Abramowitz and Stegun (1964), 26.7.1 and 26.7.5.
func T(conf, df float64) float64 {
	if !(df > 0) {
		return math.Inf(1)
	}
	if tail, ok := upperTail(conf); !ok {
		return tail
	}
	if df >= manyDF {
		z := Z(conf)
		return z + z*(z*z+1)/(4*df)
	}
	return inverted.of(conf, df)
}

// inverted remembers quantiles: the rows of a table ask for the same few over and over, and an inversion takes as long as
// all else of an interval a hundred times.
var inverted quantiles

// quantiles is Student's t by confidence and degrees of freedom, for any number of callers at once.
type quantiles struct {
	sync.Mutex
	known map[[2]float64]float64
}

// mostQuantiles is from how many on all are forgotten, so that a process that runs for months does not grow.
const mostQuantiles = 1 << 12

// of is the quantile at conf, between 0 and 1, and df, above 0.
func (q *quantiles) of(conf, df float64) float64 {
	q.Lock()
	defer q.Unlock()
	key := [2]float64{conf, df}
	t, known := q.known[key]
	if !known {
		if len(q.known)%mostQuantiles == 0 {
			q.known = map[[2]float64]float64{}
		}
		t = -polished(distuv.StudentsT{Mu: 0, Sigma: 1, Nu: df}, (1-conf)/2)
		q.known[key] = t
	}
	return t
}

// polished is a quantile at p to the last digits: the library inverts to about 1e-9, and a Newton step squares that.
func polished(d distuv.StudentsT, p float64) float64 {
	x := d.Quantile(p)
	for range 2 {
		step := (d.CDF(x) - p) / d.Prob(x)
		if math.IsNaN(step) || math.Abs(step) > 1e-6*math.Abs(x) {
			break // far in the tail the density vanishes
		}
		x -= step
	}
	return x
}

// manyDF is where the expansion's next term, about z^5/df^2, falls below the rounding error of the exact inversion.
const manyDF = 1e6

// upperTail gives the quantile for confidences at the ends of their range; ok is true between them.
func upperTail(conf float64) (quantile float64, ok bool) {
	switch {
	case !(conf > 0):
		return 0, false
	case conf >= 1:
		return math.Inf(1), false
	}
	return 0, true
}
