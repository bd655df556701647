package draw

import (
	"fmt"
	"math"

	"traybook/report/rate"
	"traybook/report/words"
)

// Scores is the axis of ramps: shares of the plants scored in percent, those not fit to
// the left of the line at fit, those fit to its right. unfit is the largest share not fit
// of any row, of 1. Both sides are of all plants scored, so the two ends of a bar add up
// to the same length in every row.
func Scores(id string, unfit float64) Axis {
	const step = 0.5
	a := Axis{ID: id, Min: -max(math.Ceil(unfit*4-1e-9)/4, 0.25), Max: 1}
	for v := -step; v <= 1; v += step {
		word := words.PercentNumber(math.Abs(v))
		if v == 0 {
			word = "fit"
		}
		if v >= a.Min {
			a.Ticks = append(a.Ticks, Tick{At: v, Word: word, Zero: v == 0})
		}
	}
	return a
}

// Ramp draws the plants at each score, from the worst to the best, as one bar of five
// steps that is cut at fit: the scores below from, counted from 1, stand to the left of
// the line. Nothing is drawn where no plant was scored.
func Ramp(plants [5]rate.Num, from int) Mark {
	return func(a Axis, out []byte) []byte {
		total, at := 0.0, 0.0
		for i, n := range plants {
			total += n.Or(0)
			if i+1 < from {
				at -= n.Or(0)
			}
		}
		if !(total > 0) {
			return out
		}
		for i, n := range plants {
			left, right := a.across(at/total), a.across((at+n.Or(0))/total)
			at += n.Or(0)
			if right-left < 0.05 {
				continue // a share too small to be seen
			}
			out = appendRect(out, scoreClasses[i], left, 4, right-left, 11)
		}
		return a.appendUpright(out, "fit", 0, `" y="1" width="1.5" height="17"/>`)
	}
}

// Shelves draws one bar for each of several shares, every one in a column of its own that
// 1 would fill, with a line across each at one share of all. A share that is not known
// leaves its column empty. What is below the line by less than the noise of binary
// fractions counts as on it.
func Shelves(shares []rate.Num, line float64) Mark {
	return func(_ Axis, out []byte) []byte {
		width := 100 / float64(len(shares))
		full := width * 0.9
		for i, s := range shares {
			if !s.Known {
				continue
			}
			left := float64(i) * width
			class := "b"
			if s.Value < line-1e-9 {
				class = "b lo"
			}
			out = appendRect(out, class, left, 4, max(full*s.Value, 0.2), 11)
			out = fmt.Appendf(out, `<rect class="p1" x="%s" y="2" width="1" height="15"/>`, percent(left+full*line))
		}
		return out
	}
}
