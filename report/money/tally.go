package money

import "math"

// noise is what rounding alone may leave of a sum, as a part of its largest term (rule
// "Missing").
const noise = 1e-9

// tally is a sum of money that knows its largest term.
type tally struct{ sum, largest float64 }

// add adds a term.
func (t *tally) add(x float64) { t.join(tally{x, math.Abs(x)}, 1) }

// join adds all terms of another sum, each so many times, which is not below 0.
func (t *tally) join(o tally, times float64) {
	t.sum += o.sum * times
	if largest := o.largest * times; largest > t.largest {
		t.largest = largest
	}
}

// value is the sum, exactly 0 where only noise is left of it.
func (t tally) value() float64 {
	if math.Abs(t.sum) < noise*t.largest {
		return 0
	}
	return t.sum
}

// total joins sums into one.
func total(sums []tally) tally {
	var all tally
	for _, t := range sums {
		all.join(t, 1)
	}
	return all
}
