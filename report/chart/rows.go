package chart

import (
	"cmp"
	"math"
	"slices"
	"strings"
)

// rowNames holds the names and notes of a chart with one row a name.
type rowNames struct {
	rawNames, rawNotes []string
	pile               float64 // the least height of a row

	// As set, broken into lines:
	names, notes []string
	left, right  float64 // widths of the columns of names and of notes
	each         float64 // height of a row: that of the highest
}

// rowHeight is the least height of a row.
const rowHeight = 28

func (r *rowNames) add(name, note string) {
	r.rawNames, r.rawNotes = append(r.rawNames, name), append(r.rawNotes, note)
}

// columnWidths are the widest columns of names and of notes, tried in turn: a
// wider pair counts only if it spares every row a line and leaves leastPlot.
var columnWidths = [][2]float64{{205, 130}, {205, 150}, {240, 130}, {240, 150}, {270, 130}}

const leastPlot = 200

// set breaks names and notes into lines, the rows as low as they can be.
func (r *rowNames) set() {
	best := r.with(columnWidths[0])
	for _, w := range columnWidths[1:] {
		other := r.with(w)
		if from, to := other.plot(); other.each < best.each && to-from >= leastPlot {
			best = other
		}
	}
	*r = best
}

func (r rowNames) with(widths [2]float64) rowNames {
	r.names, r.notes, r.left, r.right = nil, nil, 0, 0
	r.each = math.Max(rowHeight, r.pile)
	for i, name := range r.rawNames {
		n, m := clip(wrap(name, widths[0]), maxLines), clip(wrap(r.rawNotes[i], widths[1]), maxLines)
		r.names, r.notes = append(r.names, strings.Join(n, "\n")), append(r.notes, strings.Join(m, "\n"))
		r.left, r.right = math.Max(r.left, widest(n)), math.Max(r.right, widest(m))
		r.each = math.Max(r.each, float64(max(len(n), len(m)))*lineHeight+8)
	}
	return r
}

// plot returns where the plot begins and ends from left to right.
func (r *rowNames) plot() (from, to float64) {
	return edge + r.left + 12, width - edge - math.Max(24, r.right+20)
}

// rows lays a chart of rows out: names left, notes right, numbers below, the
// lines' labels above. The names are set. It returns the chart's height.
func (s *sheet) rows(r rowNames, t ticks, a Axis, lines []Line) float64 {
	from, to := r.plot()
	if to-from < 330 && t == shareTicks {
		t.step = 25 // fewer marks, all of them written
	}
	s.uprights(lines, a, t, from, to)
	top, height := s.top(), r.each*float64(max(1, len(r.names)))
	axis := named(numberAxis(t, a.formatter()), a, 2*math.Min((from+to)/2-edge, width-edge-(from+to)/2))
	s.option["grid"] = map[string]any{"left": from, "right": width - to, "top": top, "height": height, "outerBoundsMode": "none"}
	s.option["xAxis"] = axis
	s.option["yAxis"] = []any{nameAxis(r.names, "left"), nameAxis(r.notes, "right")}
	more := strings.Count(axis["name"].(string), "\n") * lineHeight
	return top + height + axisRoom + float64(more)
}

// uprights adds reference lines from top to bottom of a plot. The label of the
// first in order ends at its line, the others begin at theirs, so that no line
// runs through a label; labels that would touch stand on levels of their own.
func (s *sheet) uprights(lines []Line, a Axis, t ticks, from, to float64) {
	lines = slices.Clone(lines)
	slices.SortStableFunc(lines, func(l, m Line) int { return cmp.Compare(l.At, m.At) })
	var ends []float64 // of the last label on each level
	for i, l := range lines {
		text := oneLine(l.Label, width-2*edge)
		x := from + (a.scaled(l.At)-t.min)/(t.max-t.min)*(to-from)
		w := textWidth(text, fontSize)
		left, side := math.Min(x+4, width-edge-w), 0
		if i == 0 && len(lines) > 1 && x-4-w >= edge {
			left = x - 4 - w
			side = 1
		}
		level := 0
		for level < len(ends) && ends[level]+8 > left {
			level++
		}
		if level == len(ends) {
			ends = append(ends, 0)
		}
		ends[level] = left + w
		s.shape(text, "@upright", ink, [][]any{{a.scaled(l.At), level, left + float64(side)*w, side}}, 0, -1, 0)
	}
	s.levels = len(ends)
}
