package chart

import (
	"fmt"
	"math"
	"sort"

	"github.com/go-echarts/go-echarts/v2/charts"
	"github.com/go-echarts/go-echarts/v2/opts"
)

// Point is a value on a day.
type Point struct {
	Date string // ISO: 2025-03-01
	// Value is missing where nil: the line breaks there.
	Value *float64
	// Low and High make a band around a line of Lines; StepLines has none.
	Low, High *float64
}

// Series is a named run of points in any order.
type Series struct {
	Name   string
	Points []Point
}

// Panel is a second plot under the first, over the same days, with a scale of
// its own: two scales in one plot invent a connection where their lines cross.
type Panel struct {
	Axis   Axis
	Series []Series
}

// Heights of the plots of Lines and StepLines, in pixels.
const (
	plotHeight  = 250
	panelHeight = 120
	panelGap    = 44
)

// Lines shows how values went over days, each with the band of its interval,
// and what else is worth seeing beside them in a panel below (nil: none).
func Lines(h Head, series []Series, axis Axis, beside *Panel, lines ...Line) Spec {
	panels := []Panel{{axis, series}}
	if beside != nil {
		panels = append(panels, *beside)
	}
	return twice(h, func(s *sheet) Spec { return s.days(panels, lines, "") })
}

// StepLines shows counts that hold until the next change: trays on a bench, with
// its capacity as a line.
func StepLines(h Head, series []Series, axis Axis, lines ...Line) Spec {
	return twice(h, func(s *sheet) Spec { return s.days([]Panel{{axis, series}}, lines, "end") })
}

// days draws panels over common days, the lines in the first. The scale of the first panel
// holds its reference lines too, so that a capacity above all that ever stood is seen.
func (s *sheet) days(panels []Panel, lines []Line, step string) Spec {
	first, last := s.span(panels)
	named := s.seriesOf(panels, step)
	above := s.levelLines(lines, panels[0].Axis)
	var grids, xs, ys []any
	top := s.top() + lineHeight + 4
	left := s.left(panels, lines)
	for i, p := range panels {
		t, err := p.Axis.ticks(append(pointValues(p.Series), lineValues(i, lines)...))
		if err != nil {
			s.fail(err)
		}
		height := []float64{plotHeight, panelHeight}[i]
		grids = append(grids, map[string]any{"left": left, "right": edge + 20, "top": top, "height": height, "outerBoundsMode": "none"})
		xs = append(xs, onPanel(dateAxis(first, last, s.share()), i, i == len(panels)-1))
		ys = append(ys, onPanel(numberAxis(t, p.Axis.formatter()), i, true))
		s.heading(p.Axis, first, t.min, i, []int{above, 0}[i])
		top += height + panelGap
	}
	s.option["grid"], s.option["xAxis"], s.option["yAxis"] = grids, xs, ys
	if s.head.Label == "" {
		s.head.Label = s.head.Title + ". " + sayRows(named, panels[0].Axis)
	}
	return s.spec(top - panelGap + lineHeight*2 + edge + 4)
}

// seriesOf adds every line with its band and its entry in the legend. It returns the
// points of the first panel as rows, to be spoken. One line alone needs no legend: the
// heading says what it is.
func (s *sheet) seriesOf(panels []Panel, step string) []saidFigure {
	var spoken []saidFigure
	names := s.seriesNames(allNames(panels))
	n := 0
	for i, p := range panels {
		for _, one := range p.Series {
			points := s.sorted(one.Points)
			s.line(names[n], points, n, i, step, p.Axis)
			s.bandOf(names[n], points, n, i, p.Axis)
			s.key(names[n], icons[n%len(icons)], colour(n))
			for _, pt := range one.Points {
				if i == 0 {
					spoken = append(spoken, saidFigure{Name: one.Name + " " + pt.Date, Value: pt.Value})
				}
			}
			n++
		}
	}
	if n == 1 {
		s.legend = nil
	}
	return spoken
}

// allNames are the names of all panels, which share one legend.
func allNames(panels []Panel) []string {
	var names []string
	for _, p := range panels {
		for _, one := range p.Series {
			names = append(names, one.Name)
		}
	}
	return names
}

// line adds one line; its dashes differ from the others' for grey print.
func (s *sheet) line(name string, points []Point, series, panel int, step string, a Axis) {
	data := make([]opts.LineData, len(points))
	for i, p := range points {
		data[i].Value = []any{s.day(p.Date), a.value(p.Value)}
	}
	chart := opts.LineChart{XAxisIndex: panel, YAxisIndex: panel, Symbol: icons[series%len(icons)], SymbolSize: 7, ShowSymbol: opts.Bool(step == "")}
	if step != "" {
		chart.Step = step
	}
	s.chart.Overlap(charts.NewLine().AddSeries(name, data, charts.WithLineChartOpts(chart),
		charts.WithItemStyleOpts(opts.ItemStyle{Color: colour(series)}),
		charts.WithLineStyleOpts(opts.LineStyle{Color: colour(series), Width: 2, Type: []string{"solid", "dashed", "dotted"}[series%3]})))
}

// bandOf draws intervals as a band behind a line; it breaks where one is missing.
func (s *sheet) bandOf(name string, points []Point, series, panel int, a Axis) {
	var items [][]any
	some := false
	for _, p := range points {
		items = append(items, []any{s.day(p.Date), a.value(p.Low), a.value(p.High)})
		some = some || p.Low != nil && p.High != nil
	}
	if some {
		s.shape(name, "@band", colour(series), items, 0, []int{1, 2}, panel)
	}
}

// left returns the room that the widest mark of the vertical axes takes.
func (s *sheet) left(panels []Panel, lines []Line) float64 {
	w := 0.0
	for i, p := range panels {
		if t, err := p.Axis.ticks(append(pointValues(p.Series), lineValues(i, lines)...)); err == nil {
			w = math.Max(w, p.Axis.markWidth(t))
		}
	}
	return edge + w + 12
}

// pointValues are all numbers that a panel has to hold, ends of intervals included.
func pointValues(series []Series) []*float64 {
	var v []*float64
	for _, one := range series {
		for _, p := range one.Points {
			v = append(v, p.Value, p.Low, p.High)
		}
	}
	return v
}

// lineValues returns where the lines of a panel stand; only the first has any.
func lineValues(panel int, lines []Line) []*float64 {
	var v []*float64
	for _, l := range lines {
		if panel == 0 {
			v = append(v, &l.At)
		}
	}
	return v
}

// sorted returns points by date; ISO dates sort as text.
func (s *sheet) sorted(points []Point) []Point {
	out := append([]Point(nil), points...)
	sort.SliceStable(out, func(i, j int) bool { return out[i].Date < out[j].Date })
	return out
}

// day is a date as a place on the axis; what is no date fails the chart.
func (s *sheet) day(date string) float64 {
	d, err := dayNumber(date)
	if err != nil {
		s.fail(err)
	}
	return d
}

// span returns the first and the last day of all points. A single day is given one to
// either side, so that its point does not lie on the edge. A span of centuries is a
// mistyped year and fails the chart, not the page.
func (s *sheet) span(panels []Panel) (first, last float64) {
	first, last = math.Inf(1), math.Inf(-1)
	for _, p := range panels {
		for _, one := range p.Series {
			for _, pt := range one.Points {
				d := s.day(pt.Date)
				first, last = math.Min(first, d), math.Max(last, d)
			}
		}
	}
	switch {
	case first > last:
		s.fail(fmt.Errorf("there is no point to draw"))
		return 0, 1
	case first == last:
		return first - 1, last + 1
	case last-first > 36600:
		s.fail(fmt.Errorf("the days span more than a hundred years"))
		return 0, 1
	}
	return first, last
}

// onPanel gives an axis to a panel, with or without its labels.
func onPanel(axis map[string]any, panel int, labels bool) map[string]any {
	axis["gridIndex"] = panel
	axis["axisLabel"].(map[string]any)["show"] = labels
	return axis
}
