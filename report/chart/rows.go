package chart

import (
	"cmp"
	"maps"
	"math"
	"slices"
	"strings"
)

// rowNames holds the names and notes of a chart with one row a name. They stand
// beside the plot, or in a narrow drawing above what they name.
type rowNames struct {
	rawNames, rawNotes []string
	width              float64 // of the drawing

	// As set, broken into lines:
	names, notes []string
	left, right  float64 // widths of the columns of names and of notes
	above        float64 // height of names above their marks; 0: beside the plot
	half         float64 // height of marks above and below the middle of their row
	each         float64 // height of a row: that of the highest
}

// rowHeight is the least height of a row beside whose plot names stand; markHalf is
// half the height of a row's marks, rowGap what stands between marks and the next
// name.
const (
	rowHeight = 28
	markHalf  = 11
	rowGap    = 10
)

// add puts a row under the last.
func (r *rowNames) add(name, note string) {
	r.rawNames, r.rawNotes = append(r.rawNames, name), append(r.rawNotes, note)
}

// columnWidths are the widest columns of names and of notes, tried in turn: a
// wider pair counts only if it spares every row a line and leaves leastPlot.
var columnWidths = [][2]float64{{205, 130}, {205, 150}, {240, 130}, {240, 150}, {270, 130}}

const leastPlot = 200

// set breaks names and notes into lines, the rows as low as they can be.
func (r *rowNames) set(s *sheet) {
	r.width = s.width
	if s.narrow() {
		r.setAbove()
		return
	}
	best := r.beside(columnWidths[0])
	for _, w := range columnWidths[1:] {
		other := r.beside(w)
		if from, to := other.plot(); other.each < best.each && to-from >= leastPlot {
			best = other
		}
	}
	*r = best
}

func (r rowNames) beside(widths [2]float64) rowNames {
	r.names, r.notes, r.left, r.right, r.each = nil, nil, 0, 0, rowHeight
	for i, name := range r.rawNames {
		n, m := clip(wrap(name, widths[0]), maxLines), clip(wrap(r.rawNotes[i], widths[1]), maxLines)
		r.names, r.notes = append(r.names, strings.Join(n, "\n")), append(r.notes, strings.Join(m, "\n"))
		r.left, r.right = math.Max(r.left, widest(n)), math.Max(r.right, widest(m))
		r.each = math.Max(r.each, float64(max(len(n), len(m)))*lineHeight+8)
	}
	return r
}

// setAbove puts each name above its marks, from the left, and its note at the
// right end of the name's last line.
func (r *rowNames) setAbove() {
	lines := 1
	for i, name := range r.rawNames {
		n, m := sideBySide(name, r.rawNotes[i], r.width-2*inset)
		r.names, r.notes = append(r.names, strings.Join(n, "\n")), append(r.notes, strings.Join(m, "\n"))
		lines = max(lines, len(n), len(m))
	}
	r.above = float64(lines)*lineHeight + 2
	r.raise(2 * markHalf)
}

// sideBySide breaks a name and its note into the fewest lines that stand beside one
// another.
func sideBySide(name, note string, room float64) (names, notes []string) {
	for _, w := range []float64{0.6, 0.45, 0.35} {
		m := clip(wrap(note, w*room), maxLines)
		left := room
		if note != "" {
			left -= widest(m) + 14
		}
		n := clip(wrap(name, left), maxLines)
		if names == nil || max(len(n), len(m)) < max(len(names), len(notes)) {
			names, notes = n, m
		}
	}
	return names, notes
}

// raise makes the rows high enough for marks of a height.
func (r *rowNames) raise(height float64) {
	r.half = math.Max(r.half, height/2)
	if r.above > 0 {
		height += r.above + rowGap
	}
	r.each = math.Max(r.each, height)
}

// inset is where the plot of a narrow drawing begins and ends.
const inset = edge + 6

// plot returns where the plot begins and ends from left to right.
func (r *rowNames) plot() (from, to float64) {
	if r.above > 0 {
		return inset, r.width - inset
	}
	return edge + r.left + 12, r.width - edge - math.Max(24, r.right+20)
}

// axis returns the option of the axis of names or of notes.
func (r *rowNames) axis(names []string, position string) map[string]any {
	axis := nameAxis(names, position)
	if r.above > 0 {
		maps.Copy(axis["axisLabel"].(map[string]any), map[string]any{
			"inside": true, "margin": 0, "align": position, "verticalAlign": "bottom", "padding": []any{0, 0, r.half, 0},
			"textBorderColor": paper, "textBorderWidth": 3,
		})
	}
	return axis
}

// rows lays a chart of rows out: names left, notes right, numbers below, the
// lines' labels above. The names are set. It returns the chart's height.
func (s *sheet) rows(r rowNames, t ticks, a Axis, lines []Line) float64 {
	from, to := r.plot()
	if to-from < 330 && t == shareTicks {
		t.step = 25 // fewer marks, all of them written
	}
	s.over = math.Max(0, r.above+r.half-r.each/2)
	s.uprights(lines, a, t, from, to)
	top, height := s.top(), r.each*float64(max(1, len(r.names)))
	axis := named(numberAxis(t, a.formatter()), a, 2*math.Min((from+to)/2-edge, s.width-edge-(from+to)/2))
	if r.above > 0 { // marks at the ends of the plot stay within the drawing
		maps.Copy(axis["axisLabel"].(map[string]any), map[string]any{"alignMinLabel": "left", "alignMaxLabel": "right"})
	}
	s.option["grid"] = map[string]any{"left": from, "right": s.width - to, "top": top, "height": height, "outerBoundsMode": "none"}
	s.option["xAxis"] = axis
	s.option["yAxis"] = []any{r.axis(r.names, "left"), r.axis(r.notes, "right")}
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
		text := oneLine(l.Label, s.width-2*edge)
		x := from + (a.scaled(l.At)-t.min)/(t.max-t.min)*(to-from)
		w := textWidth(text, fontSize)
		left, side := math.Min(x+4, s.width-edge-w), 0
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
		s.shape(text, "@upright", ink, [][]any{{a.scaled(l.At), float64(level) + s.over/lineHeight, left + float64(side)*w, side}}, 0, -1, 0)
	}
	s.levels = len(ends)
}
