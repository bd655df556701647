package chart

import (
	"math"
	"strings"

	"github.com/go-echarts/go-echarts/v2/opts"
)

// Bar is one column of GroupedBars.
type Bar struct {
	// Value is the column's height; nil leaves a gap.
	Value *float64
	// Low and High are drawn as a whisker; either missing: none.
	Low, High *float64
	// Few draws the column hollow: too few batches.
	Few bool
}

// BarSeries is one column in each band, in the bands' order.
type BarSeries struct {
	Name string
	Bars []Bar
}

// GroupedBars shows columns side by side in each of a few bands, with whiskers:
// usable plants by days late and kind of tray. Columns stand on zero. Seven
// bands at most keep their names readable. Lines are drawn from left to right. A
// narrow drawing has no room for columns: each band is a row of dots.
func GroupedBars(h Head, bands []string, series []BarSeries, axis Axis, lines ...Line) Spec {
	return twice(h, func(s *sheet) Spec {
		t, err := axis.ticks(append(barValues(series), lineValues(0, lines)...))
		if err != nil {
			s.fail(err)
		}
		if s.head.Label == "" {
			s.head.Label = h.Title + ". " + sayRows(spokenBars(bands, series), axis)
		}
		if s.narrow() {
			return s.bandRows(bands, series, t, axis, lines)
		}
		return s.bars(bands, series, t, axis, lines)
	})
}

// bars draws the bands as columns.
func (s *sheet) bars(bands []string, series []BarSeries, t ticks, axis Axis, lines []Line) Spec {
	names := s.seriesNames(seriesOfBars(series))
	for i, one := range series {
		s.bar(names[i], barData(one, i, len(bands), axis), i, opts.BarChart{BarGap: "10%", BarCategoryGap: "25%"})
		if len(series) > 1 {
			s.key(names[i], "rect", colour(i))
		}
	}
	for i, one := range series {
		s.shape(names[i]+" interval", "@whisker", ink, whiskers(one, i, len(series), len(bands), axis), 0, []int{1, 2}, 0)
	}
	s.decalsFor(len(series))
	s.heading(axis, 0, t.min, 0, s.levelLines(lines, axis))
	return s.spec(s.columns(bands, t, axis))
}

// bandRows draws the bands as rows, in each the dots of all series under one
// another.
func (s *sheet) bandRows(bands []string, series []BarSeries, t ticks, axis Axis, lines []Line) Spec {
	var rows rowNames
	for _, b := range bands {
		rows.add(b, "")
	}
	rows.set(s)
	rows.raise(float64(len(series)) * 2 * markHalf)
	for i, name := range s.seriesNames(seriesOfBars(series)) {
		if i == len(series) {
			break // the one name of no series
		}
		down := (float64(2*i+1) - float64(len(series))) * markHalf
		s.shape(name, "@dot", colour(i), bandItems(series[i], i, len(bands), down, axis), []int{0, 2, 3}, 1, 0)
		if len(series) > 1 {
			s.key(name, icons[i%len(icons)], colour(i))
		}
	}
	return s.spec(s.rows(rows, t, axis, lines))
}

// bandItems returns the items of a series for the function "@dot", down pixels
// below the middle of their rows. Dots are hollow where columns are.
func bandItems(one BarSeries, series, bands int, down float64, a Axis) [][]any {
	var items [][]any
	for i, b := range one.Bars[:min(bands, len(one.Bars))] {
		hollow := 0
		if b.Few {
			hollow = 1
		}
		items = append(items, []any{a.value(b.Value), i, a.value(b.Low), a.value(b.High), hollow, series, down, 5})
	}
	return items
}

// barValues are all numbers that the axis has to hold, ends of intervals included.
func barValues(series []BarSeries) []*float64 {
	var values []*float64
	for _, one := range series {
		for _, b := range one.Bars {
			values = append(values, b.Value, b.Low, b.High)
		}
	}
	return values
}

// spokenBars are the columns as rows, to be spoken.
func spokenBars(bands []string, series []BarSeries) []saidFigure {
	var spoken []saidFigure
	for _, one := range series {
		for k, b := range one.Bars[:min(len(bands), len(one.Bars))] {
			spoken = append(spoken, saidFigure{Name: one.Name + ", " + bands[k], Value: b.Value})
		}
	}
	return spoken
}

// seriesOfBars names the series.
func seriesOfBars(series []BarSeries) []string {
	var names []string
	for _, one := range series {
		names = append(names, one.Name)
	}
	return names
}

// columns lays out a chart of columns and returns its height.
func (s *sheet) columns(bands []string, t ticks, a Axis) float64 {
	left := edge + a.markWidth(t) + 12
	each := (s.width-left-edge)/math.Max(1, float64(len(bands))) - 6
	names, lines := make([]string, len(bands)), 1
	for i, b := range bands {
		w := clip(wrap(b, each), maxLines)
		names[i], lines = strings.Join(w, "\n"), max(lines, len(w))
	}
	top := s.top() + lineHeight + 4
	x := nameAxis(names, "bottom")
	x["inverse"] = false
	x["axisLine"] = map[string]any{"show": true, "lineStyle": map[string]any{"color": ink}}
	s.option["grid"] = map[string]any{"left": left, "right": edge, "top": top, "height": plotHeight, "outerBoundsMode": "none"}
	s.option["xAxis"], s.option["yAxis"] = x, numberAxis(t, a.formatter())
	return top + plotHeight + float64(lines)*lineHeight + 12 + edge
}

// barData are the columns of one series, band by band; a missing one leaves its place.
func barData(one BarSeries, series, bands int, a Axis) []opts.BarData {
	data := make([]opts.BarData, bands)
	for i := range min(bands, len(one.Bars)) {
		data[i].Value = a.value(one.Bars[i].Value)
		if one.Bars[i].Few {
			data[i].ItemStyle = &opts.ItemStyle{Color: paper, BorderColor: colour(series), BorderWidth: 2}
		}
	}
	return data
}

// whiskers returns the items for the function "@whisker".
func whiskers(one BarSeries, series, all, bands int, a Axis) [][]any {
	var items [][]any
	for i, b := range one.Bars[:min(bands, len(one.Bars))] {
		items = append(items, []any{i, a.value(b.Low), a.value(b.High), series, all})
	}
	return items
}
