package chart

import (
	"fmt"
	"strings"
)

// DotRow is one row of a DotWhisker.
type DotRow struct {
	Name string
	// Value is drawn as a dot; nil leaves the row empty.
	Value *float64
	// Low and High are drawn as a line with end caps. Where either is missing
	// the dot is hollow: too few batches for an interval.
	Low, High *float64
	// Series is the row's place in the list of series.
	Series int
	// Few draws the dot hollow though there is an interval.
	Few bool
	// Mark is drawn as an upright stroke, what the dot is to be compared with:
	// the packet's rate. Nil: none. Axis.Mark names it.
	Mark *float64
	// Note stands at the right: the sample, or why there is no value.
	Note string
}

// DotWhisker shows a value with its interval for each row, the first at the
// top, coloured and shaped by series (none or one: no legend). Lines are drawn
// from top to bottom with their labels above.
func DotWhisker(h Head, rows []DotRow, series []string, axis Axis, lines ...Line) Spec {
	return twice(h, func(s *sheet) Spec { return s.dots(rows, series, axis, lines) })
}

// dots draws on one sheet, wide or narrow.
func (s *sheet) dots(rows []DotRow, series []string, axis Axis, lines []Line) Spec {
	var values []*float64
	var names rowNames
	for _, r := range rows {
		names.add(r.Name, r.Note)
		values = append(values, r.Value, r.Low, r.High, r.Mark)
	}
	for _, l := range lines {
		values = append(values, &l.At)
	}
	t, err := axis.ticks(values)
	if err != nil {
		s.fail(err)
	}
	names.set(s)
	s.marks(rows, axis)
	for i, name := range s.seriesNames(series) {
		s.shape(name, "@dot", colour(i), dotItems(rows, i, max(1, len(series)), axis), []int{0, 2, 3}, 1, 0)
		if len(series) > 1 {
			s.key(name, icons[i%len(icons)], colour(i))
		}
	}
	if s.head.Label == "" {
		s.head.Label = s.head.Title + ". " + sayRows(rows, axis)
	}
	return s.spec(s.rows(names, t, axis, lines))
}

// marks draws the strokes that dots are compared with, and names them.
func (s *sheet) marks(rows []DotRow, a Axis) {
	var items [][]any
	for i, r := range rows {
		if r.Mark != nil {
			items = append(items, []any{a.value(r.Mark), i})
		}
	}
	if len(items) > 0 {
		s.shape(a.Mark, "@stroke", ink, items, 0, 1, 0)
		s.key(a.Mark, "path://M5,0L9,0L9,14L5,14Z", ink)
	}
}

// dotItems returns the items of one series for the function "@dot".
func dotItems(rows []DotRow, series, all int, a Axis) [][]any {
	var items [][]any
	for i, r := range rows {
		if min(max(r.Series, 0), all-1) != series {
			continue
		}
		hollow := 0
		if r.Few || r.Low == nil || r.High == nil {
			hollow = 1
		}
		items = append(items, []any{a.value(r.Value), i, a.value(r.Low), a.value(r.High), hollow, series, 0, 5})
	}
	return items
}

// sayRows says how many figures there are and which are highest and lowest.
func sayRows(rows []DotRow, a Axis) string {
	var low, high *DotRow
	n := 0
	for i := range rows {
		r := &rows[i]
		if r.Value == nil {
			continue
		}
		n++
		if low == nil || *r.Value < *low.Value {
			low = r
		}
		if high == nil || *r.Value > *high.Value {
			high = r
		}
	}
	switch n {
	case 0:
		return "There is no figure yet."
	case 1:
		return fmt.Sprintf("%s: %s.", low.Name, a.say(*low.Value))
	}
	return fmt.Sprintf("%d figures, the highest %s (%s), the lowest %s (%s).", n, a.say(*high.Value), high.Name, a.say(*low.Value), low.Name)
}

// seriesNames returns names fit for a legend: two lines each at most, none empty,
// none twice.
func (s *sheet) seriesNames(names []string) []string {
	if len(names) == 0 {
		return []string{"all"}
	}
	out, seen := make([]string, len(names)), map[string]int{}
	for i, n := range names {
		n = strings.Join(clip(wrap(n, s.width-2*edge-keyWidth-40), 2), "\n")
		if n == "" {
			n = "no name"
		}
		seen[n]++
		if seen[n] > 1 {
			n = fmt.Sprintf("%s (%d)", n, seen[n])
		}
		out[i] = n
	}
	return out
}
