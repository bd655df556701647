package chart

import (
	"encoding/json"
	"fmt"
	"maps"
	"math"
	"strings"

	"github.com/go-echarts/go-echarts/v2/charts"
	"github.com/go-echarts/go-echarts/v2/opts"
	"github.com/go-echarts/go-echarts/v2/types"
)

// Head is what every chart carries besides its numbers. See Spec.
type Head struct{ Name, Title, Label string }

// Sizes of a drawing, in pixels. Every chart is drawn twice, because one that fits
// a page is too small to read on a telephone.
const (
	wideWidth   = 620
	narrowWidth = 350

	maxLines = 4  // of one name; a longer one ends in an ellipsis, its table has it whole
	axisRoom = 52 // under the plot: marks and the axis' words
	edge     = 8  // around everything
)

// Colours are variables of the page's style sheet, so that one drawing serves
// light, dark and print.
const (
	ink   = "var(--ink)"
	rule  = "var(--rule)"
	paper = "var(--paper)"
)

// colour returns the colour of a series, six in all, then again from the first.
func colour(series int) string { return fmt.Sprintf("var(--c%d)", (series%6+6)%6+1) }

// icons are the legend's signs for the shapes of runtime/bridge.js, in order.
var icons = []string{"circle", "rect", "triangle", "diamond"}

// sheet gathers a chart: series from go-echarts, the rest as maps, because
// go-echarts cannot say all of it (a zero, a number as interval, silent).
type sheet struct {
	head   Head
	width  float64
	chart  *charts.Bar
	option map[string]any
	legend []any
	levels int     // of labels above the plot
	over   float64 // height of a row's name that stands out above the plot
	err    error
}

// narrowSuffix ends the names of narrow drawings.
const narrowSuffix = "-narrow"

// twice makes a chart in both widths.
func twice(h Head, build func(*sheet) Spec) Spec {
	spec := build(&sheet{head: h, width: wideWidth, chart: charts.NewBar(), option: map[string]any{}})
	h.Name = NarrowName(h.Name)
	narrow := build(&sheet{head: h, width: narrowWidth, chart: charts.NewBar(), option: map[string]any{}})
	spec.narrow = &narrow
	return spec
}

// narrow reports whether names stand above what they name, for want of room.
func (s *sheet) narrow() bool { return s.width < wideWidth }

// share is the part of a wide plot's room that there is from left to right.
func (s *sheet) share() float64 {
	const besidePlot = 90 // about
	return (s.width - besidePlot) / (wideWidth - besidePlot)
}

// fail keeps the first thing found wrong.
func (s *sheet) fail(err error) {
	if s.err == nil {
		s.err = err
	}
}

// shape adds a series drawn by a function of runtime/bridge.js. x and y are the
// places, in each item, of what the axes must hold.
func (s *sheet) shape(name, function, colour string, items [][]any, x, y any, panel int) {
	if name == "" {
		name = " " // ECharts would make one up
	}
	data := make([]opts.CustomData, len(items))
	for i, item := range items {
		data[i].Value = item
	}
	s.chart.Overlap(charts.NewCustom().AddSeries(name, data,
		charts.WithCustomChartOpts(opts.CustomChart{XAxisIndex: panel, YAxisIndex: panel, RenderItem: types.FuncStr(function)}),
		charts.WithEncodeOpts(opts.Encode{X: x, Y: y}),
		charts.WithItemStyleOpts(opts.ItemStyle{Color: colour})))
}

// key adds an entry to the legend. Its name must be that of a series.
func (s *sheet) key(name, icon, colour string) {
	s.legend = append(s.legend, map[string]any{"name": name, "icon": icon, "itemStyle": map[string]any{"color": colour, "borderWidth": 0}})
}

// heading writes the words of a vertical axis above it, from the left edge, the
// last of them line lines above the plot.
func (s *sheet) heading(a Axis, x, y float64, panel, line int) {
	words := s.words(a)
	for i, text := range words {
		s.shape(text, "@heading", ink, [][]any{{x, y, line + len(words) - 1 - i}}, -1, -1, panel)
	}
}

// words are the words of a vertical axis in lines.
func (s *sheet) words(a Axis) []string { return clip(wrap(a.title(), s.width-2*edge), 2) }

// The names of lines from left to right: the room of the piece of line before a
// name, and what stands between two.
const (
	sample = 32
	gap    = 20
)

// levelLines adds reference lines from left to right. Their names follow the words
// of the axis above the plot, on more lines of text where one will not do. It
// returns the line, counted from the plot, for those words and raises the room
// above by as much.
func (s *sheet) levelLines(lines []Line, a Axis) int {
	words, room := s.words(a), s.width-2*edge-sample
	x, row := edge+textWidth(words[len(words)-1], fontSize), 0
	lefts, rows := make([]float64, len(lines)), make([]int, len(lines))
	for i, l := range lines {
		need := gap + sample + textWidth(oneLine(l.Label, room), fontSize)
		if x+need > s.width-edge {
			x, row = edge-gap, row+1
		}
		lefts[i], rows[i] = x+gap+sample, row
		x += need
	}
	for i, l := range lines {
		s.shape(oneLine(l.Label, room), "@level", ink, [][]any{{a.scaled(l.At), lefts[i], row - rows[i]}}, -1, 0, 0)
	}
	s.levels += row + len(words) - 1
	return row
}

// top returns the room above the plot: legend, then labels of lines.
func (s *sheet) top() float64 {
	_, legend := s.flow()
	return edge + legend + float64(s.levels)*lineHeight + s.over + 4
}

// keyWidth is the room that a legend's entry takes besides its name: its sign and
// what stands before and after the name. keyGap stands between two entries, part
// of it beside them only.
const (
	keyWidth = 14 + 5 + keyPad + keyGap
	keyPad   = 10
	keyGap   = 6
)

// flow sets the legend's entries side by side, with a break where the next would
// not fit, so that they never overlap. It returns them with the breaks, and their
// height.
func (s *sheet) flow() (entries []any, height float64) {
	x, high := 0.0, 0.0
	for _, k := range s.legend {
		lines := strings.Split(k.(map[string]any)["name"].(string), "\n")
		w := keyWidth + widest(lines)
		if x > 0 && x+w > s.width-2*edge {
			entries = append(entries, map[string]any{"name": "\n"})
			x, height, high = 0, height+high, 0
		}
		x, high = x+w, math.Max(high, float64(len(lines))*lineHeight+keyGap)
		entries = append(entries, k)
	}
	return entries, height + high
}

// legendOption sets the keys out in lines that fit the width.
func (s *sheet) legendOption() map[string]any {
	entries, _ := s.flow()
	return map[string]any{
		"data": entries, "left": edge - 5, "top": edge - 5, "padding": 5, "align": "left",
		"itemWidth": 14, "itemHeight": 14, "itemGap": keyGap,
		"textStyle": map[string]any{"color": ink, "fontSize": fontSize, "lineHeight": lineHeight, "padding": []any{0, keyPad, 0, 0}},
	}
}

// depth says what lies under and over the lines and bars, which ECharts puts at
// 2 and 3.
var depth = map[any]int{"@band": 1, "@level": 5, "@upright": 3, "@heading": 5, "@divider": 5}

// spec closes the sheet: series from go-echarts, the rest put in.
func (s *sheet) spec(height float64) Spec {
	spec := Spec{Name: s.head.Name, Title: s.head.Title, Label: s.head.Label, Width: int(s.width), Height: int(math.Ceil(height))}
	o, err := plainOption(s.chart)
	if err != nil {
		s.fail(err)
	}
	for _, each := range asList(o["series"]) {
		series := each.(map[string]any)
		series["silent"] = true
		if z, ok := depth[series["renderItem"]]; ok {
			series["z"] = z
		}
	}
	maps.Copy(o, s.option)
	if len(s.legend) > 0 {
		o["legend"] = s.legendOption()
	}
	o["animation"] = false
	o["textStyle"] = map[string]any{"color": ink, "fontSize": fontSize, "fontFamily": "sans-serif"}
	spec.Option, spec.err = o, s.err
	return spec
}

// plainOption returns the series of a go-echarts chart as plain maps. What
// go-echarts adds unasked is dropped.
func plainOption(c *charts.Bar) (map[string]any, error) {
	c.Validate()
	b, err := json.Marshal(c.JSON())
	if err != nil {
		return map[string]any{}, fmt.Errorf("%w: %w", errNotFinite, err)
	}
	var all map[string]any
	if err := json.Unmarshal(b, &all); err != nil {
		return map[string]any{}, err
	}
	return map[string]any{"series": all["series"]}, nil
}

func asList(v any) []any {
	l, _ := v.([]any)
	return l
}

// numberAxis returns the option of an axis of numbers.
func numberAxis(t ticks, formatter string) map[string]any {
	return map[string]any{
		"type": "value", "min": t.min, "max": t.max, "interval": t.step,
		"axisLabel": map[string]any{"formatter": formatter, "color": ink, "fontSize": fontSize, "hideOverlap": true},
		"axisLine":  map[string]any{"show": false}, "axisTick": map[string]any{"show": false},
		"splitLine": map[string]any{"lineStyle": map[string]any{"color": rule}},
	}
}

// dateAxis returns the option of an axis of days, as long as share of that of a
// wide drawing.
func dateAxis(first, last, share float64) map[string]any {
	marks, formatter := dayMarks(first, last, share)
	return map[string]any{
		"type": "value", "min": first, "max": last,
		"axisLabel": map[string]any{"formatter": formatter, "color": ink, "fontSize": fontSize, "lineHeight": lineHeight, "customValues": marks, "hideOverlap": true},
		"axisLine":  map[string]any{"show": true, "onZero": false, "lineStyle": map[string]any{"color": ink}},
		"axisTick":  map[string]any{"show": true, "customValues": marks, "lineStyle": map[string]any{"color": ink}},
		"splitLine": map[string]any{"show": false},
	}
}

// named puts an axis' words under it, broken into lines of at most room pixels.
func named(axis map[string]any, a Axis, room float64) map[string]any {
	axis["name"] = strings.Join(wrap(a.title(), room), "\n")
	axis["nameLocation"], axis["nameGap"] = "middle", 28
	axis["nameTextStyle"] = map[string]any{"color": ink, "fontSize": fontSize, "lineHeight": lineHeight}
	return axis
}

// nameAxis returns the option of an axis of names, the first at the top.
func nameAxis(names []string, position string) map[string]any {
	return map[string]any{
		"type": "category", "data": names, "inverse": true, "position": position,
		"axisLabel": map[string]any{"interval": 0, "color": ink, "fontSize": fontSize, "lineHeight": lineHeight, "margin": map[string]int{"left": 12, "right": 16}[position]},
		"axisLine":  map[string]any{"show": position == "left", "onZero": false, "lineStyle": map[string]any{"color": rule}},
		"axisTick":  map[string]any{"show": false},
	}
}

// oneLine cuts a text to one line, with an ellipsis if anything is left out.
func oneLine(text string, width float64) string { return clip(wrap(text, width), 1)[0] }

// clip keeps some lines and marks what is left out.
func clip(lines []string, most int) []string {
	if len(lines) <= most {
		return lines
	}
	kept := append([]string(nil), lines[:most]...)
	kept[most-1] += "…"
	return kept
}
