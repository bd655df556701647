package chart

import (
	"fmt"
	"math"
	"slices"
)

// Strip is a row of single values with their mean.
type Strip struct {
	// MeanName and DotsName stand at the left of the mean and of the dots.
	MeanName, DotsName string
	Dots               []float64
	// Mean is drawn with its interval above the dots; nil: none. Without Low
	// and High it is hollow.
	Mean, Low, High *float64
	// Note stands at the right of the mean.
	Note string
}

// dotStep is the room of one dot of a strip, in pixels.
const dotStep = 11

// DotsStrip shows every single value as a dot and the mean with its interval
// above: the differences of matched sowings. Lines mark what the mean has to
// be compared with: zero, the break-even.
func DotsStrip(h Head, strips []Strip, axis Axis, lines ...Line) Spec {
	return twice(h, func(s *sheet) Spec { return s.strips(strips, axis, lines) })
}

// strips draws on one sheet, wide or narrow.
func (s *sheet) strips(strips []Strip, axis Axis, lines []Line) Spec {
	var values []*float64
	var names rowNames
	var spoken []DotRow
	for _, one := range strips {
		names.add(one.MeanName, one.Note)
		names.add(one.DotsName, "")
		values = append(values, one.Mean, one.Low, one.High)
		for i := range one.Dots {
			values = append(values, &one.Dots[i])
		}
		spoken = append(spoken, DotRow{Name: one.MeanName, Value: one.Mean})
	}
	t, err := axis.ticks(append(values, lineValues(0, lines)...))
	if err != nil {
		s.fail(err)
	}
	names.set(s)
	means, dots, most := stripItems(strips, axis, t, names)
	names.raise(float64(most)*dotStep + 10)
	s.shape("single", "@dot", colour(1), dots, 0, 1, 0)
	s.shape("mean", "@dot", colour(0), means, []int{0, 2, 3}, 1, 0)
	if s.head.Label == "" {
		s.head.Label = fmt.Sprintf("%s. %s", s.head.Title, sayRows(spoken, axis))
	}
	return s.spec(s.rows(names, t, axis, lines))
}

// stripItems returns the items of means and dots for the function "@dot", and
// the height of the highest pile of dots.
func stripItems(strips []Strip, a Axis, t ticks, names rowNames) (means, dots [][]any, most int) {
	from, to := names.plot()
	for i, one := range strips {
		hollow := 0
		if one.Low == nil || one.High == nil {
			hollow = 1
		}
		means = append(means, []any{a.value(one.Mean), 2 * i, a.value(one.Low), a.value(one.High), hollow, 3, 0, 6})
		piles := map[int]int{}
		for _, d := range slices.Sorted(slices.Values(one.Dots)) {
			place := int(math.Floor((a.scaled(d) - t.min) / (t.max - t.min) * (to - from) / dotStep))
			dots = append(dots, []any{a.scaled(d), 2*i + 1, nil, nil, 0, 0, shift(piles[place]), 4.5})
			piles[place]++
			most = max(most, piles[place])
		}
	}
	return means, dots, most
}

// shift returns how far the nth dot of a pile stands from the row's middle:
// 0, above, below, further above and so on.
func shift(n int) float64 {
	far := float64((n+1)/2) * dotStep
	if n%2 == 1 {
		return -far
	}
	return far
}
