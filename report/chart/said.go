package chart

import (
	"fmt"
	"strings"
)

// saidFigure is a figure of a chart with its name, as the drawing's words tell it.
type saidFigure struct {
	Name  string
	Value *float64 // nil: none
}

// sayRows says how many figures there are and which are highest and lowest.
func sayRows(rows []saidFigure, a Axis) string {
	var low, high *saidFigure
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
