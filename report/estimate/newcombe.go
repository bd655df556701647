package estimate

import "math"

// Newcombe returns the difference p1 - p2 of two independent shares and its hybrid score interval, from the shares'
// own intervals a and b (method 10):
//
//	low  = diff - sqrt((p1 - a.Low)^2 + (b.High - p2)^2)
//	high = diff + sqrt((a.High - p1)^2 + (p2 - b.Low)^2)
//
// Each interval must hold its share, as Wilson's and ShareInterval's do; the result then lies within [-1, 1]. Where either
// share is unknown its interval is [0, 1], and the result is as wide as that leaves it.
// Source: Newcombe (1998), Stat. Med. 17:873-890, method 10.
func Newcombe(p1 float64, a Interval, p2 float64, b Interval) (diff float64, ci Interval) {
	diff = p1 - p2
	below := math.Hypot(p1-a.Low, b.High-p2)
	above := math.Hypot(a.High-p1, p2-b.Low)
	return diff, Interval{Low: diff - below, High: diff + above}
}
