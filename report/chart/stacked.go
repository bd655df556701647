package chart

import (
	"fmt"
	"slices"

	"github.com/go-echarts/go-echarts/v2/charts"
	"github.com/go-echarts/go-echarts/v2/opts"
)

// StackRow is one bar of StackedBars.
type StackRow struct {
	Name string
	// Parts are the bar's pieces in the order of the chart's parts; nil, or one
	// too few, leaves a piece out. None is negative.
	Parts []*float64
	// Note stands at the right: the total, the sample.
	Note string
	// Divider is written over a line across the plot in place of a bar.
	Divider string
}

// decals tell the parts of a bar apart without colour: a plain one, then strokes
// that differ in direction and width, thin enough not to trouble the eye.
var decals = []any{
	map[string]any{"symbol": "none"},
	decal(-45, 1, 7), decal(45, 1, 5), decal(90, 2, 6), decal(0, 1, 4), decal(-20, 2, 4),
}

// decal returns strokes of a thickness, gap pixels apart, turned by degrees.
func decal(degrees, stroke, gap float64) map[string]any {
	return map[string]any{
		"symbol": "rect", "color": paper, "rotation": degrees * 3.141592653589793 / 180,
		"dashArrayX": []any{1, 0}, "dashArrayY": []any{stroke, gap},
	}
}

// StackedBars shows what each row is made of: bars from zero, the first row at the top,
// the parts side by side in the order given, told apart by colour and by hatching. Parts
// that no row has are left out of the legend and keep their colour, so that a part looks
// the same in every season's chart.
func StackedBars(h Head, rows []StackRow, parts []string, axis Axis) Spec {
	return twice(h, func(s *sheet) Spec { return s.stack(rows, parts, axis) })
}

// stack draws on one sheet, wide or narrow.
func (s *sheet) stack(rows []StackRow, parts []string, axis Axis) Spec {
	var names rowNames
	var totals []*float64
	for _, r := range rows {
		names.add(s.stackName(r), r.Note)
		totals = append(totals, s.total(r))
	}
	names.set(s)
	t, err := axis.ticks(totals)
	if err != nil {
		s.fail(err)
	}
	for i, name := range s.seriesNames(parts) {
		s.bar(name, stackData(rows, i, axis), i, opts.BarChart{Stack: "all", BarWidth: "16"})
		if hasPart(rows, i) {
			s.key(name, "rect", colour(i))
		}
	}
	for i, r := range rows {
		if r.Divider != "" { // after the bars: hatching goes by a series' place
			s.shape(s.dividerWords(r), "@divider", ink, [][]any{{0, i}}, 0, 1, 0)
		}
	}
	s.decalsFor(len(parts))
	if s.head.Label == "" {
		s.head.Label = fmt.Sprintf("%s. %s", s.head.Title, sayTotals(rows, totals, axis))
	}
	return s.spec(s.rows(names, t, axis, nil))
}

// stackName is what stands at a row; the words of a divider stand above it where
// all names do.
func (s *sheet) stackName(r StackRow) string {
	if s.narrow() && r.Divider != "" {
		return r.Divider
	}
	return r.Name
}

// dividerWords are what is written over a divider's line.
func (s *sheet) dividerWords(r StackRow) string {
	const room = 400
	if s.narrow() {
		return ""
	}
	return oneLine(r.Divider, room)
}

// hasPart reports whether any bar has a piece of a part.
func hasPart(rows []StackRow, part int) bool {
	return slices.ContainsFunc(rows, func(r StackRow) bool { return part < len(r.Parts) && value(r.Parts[part]) != 0 })
}

// decalsFor hatches bars where there are several kinds to tell apart.
func (s *sheet) decalsFor(kinds int) {
	s.option["aria"] = map[string]any{
		"enabled": kinds > 1, "label": map[string]any{"enabled": false},
		"decal": map[string]any{"show": kinds > 1, "decals": decals},
	}
}

// total adds up a row's parts and refuses a negative one.
func (s *sheet) total(r StackRow) *float64 {
	sum := 0.0
	for _, p := range r.Parts {
		if p == nil {
			continue
		}
		if *p < 0 {
			s.fail(fmt.Errorf("a part of %q is below zero; parts of a stack cannot be", r.Name))
		}
		sum += *p
	}
	return &sum
}

// stackData is one part of every bar; a bar with too few parts leaves it out.
func stackData(rows []StackRow, part int, a Axis) []opts.BarData {
	data := make([]opts.BarData, len(rows))
	for i, r := range rows {
		if part < len(r.Parts) {
			data[i].Value = a.value(r.Parts[part])
		}
	}
	return data
}

// bar adds a series of bars.
func (s *sheet) bar(name string, data []opts.BarData, series int, o opts.BarChart) {
	s.chart.AddSeries(name, data, charts.WithBarChartOpts(o), charts.WithItemStyleOpts(opts.ItemStyle{Color: colour(series)}))
}

// sayTotals reads out the whole bars: their parts stand in the table beside.
func sayTotals(rows []StackRow, totals []*float64, a Axis) string {
	dots := make([]saidFigure, len(rows))
	for i, r := range rows {
		dots[i] = saidFigure{Name: r.Name, Value: totals[i]}
	}
	return sayRows(dots, a)
}
