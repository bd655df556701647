package draw

import (
	"fmt"
	"html/template"
	"math"
	"strings"

	"traybook/records"
	"traybook/report/rate"
)

// Year is a season in the house day by day: trays on the benches and in the chambers,
// each from its step until the next, and the lowest and highest temperature.
type Year struct {
	ID, Title   string // the id of its title; what the drawing shows, in words
	First, Last records.Date
	Bands       []Band
	Marks       []records.Date // days on which something was changed, numbered from 1
}

// Band is one of the strips of the year, one above the other. Least is below 0 only for
// temperatures; what stood begins at 0.
type Band struct {
	Name   string
	Class  string // bench, chamb or temp
	Height float64
	Most   float64 // what fills the height
	Steps  []Step  // of bench and chamb
	Spans  []Span  // of temp
	Limit  rate.Num
	Says   string // the limit in words
	Peak   records.Date
	PeakAt float64
	PeakIs string // the peak in words; empty: not written
	Least  float64
}

// Step is how much stands from a day on.
type Step struct {
	Day records.Date
	Is  float64
}

// Span is the lowest and highest of one day.
type Span struct {
	Day       records.Date
	Low, High float64
}

// bandGap is the room above each band for its words, pixels.
const bandGap = 30.0

// Draw draws the year. Words stand outside the parts that stretch. A month of which less
// than a fortnight is drawn has no word, as it would run into its neighbour's.
func (y Year) Draw() template.HTML {
	var b, grid strings.Builder
	days := float64(y.Last - y.First + 1)
	at := func(d records.Date) float64 { return 100 * float64(d-y.First) / days }
	total := 0.0
	for _, band := range y.Bands {
		total += band.Height + bandGap
	}
	fmt.Fprintf(&b, `<svg class="yr" height="%s" role="img" aria-labelledby="%s"><title id="%s">%s</title>`, pixels(y.tall(total)), y.ID, y.ID, template.HTMLEscapeString(y.Title))
	months := monthsBetween(y.First, y.Last)
	for i, d := range months {
		fmt.Fprintf(&grid, `<rect class="g" x="%s" y="0" width="1" height="%s"/>`, percent(at(d)), pixels(total))
		end := y.Last + 1
		if i+1 < len(months) {
			end = months[i+1]
		}
		if end-d > 14 {
			fmt.Fprintf(&grid, `<text x="%s" y="%s">%s</text>`, percent((at(d)+at(end))/2), pixels(total+17), d.Month().String()[:3])
		}
	}
	b.WriteString(grid.String())
	for i, d := range y.Marks {
		fmt.Fprintf(&b, `<rect class="z" x="%s" y="0" width="1" height="%s"/><text class="an c" x="%s" y="%s">%d</text>`, percent(at(d)), pixels(total+20), percent(at(d)), pixels(total+32), i+1)
	}
	top := 0.0
	for _, band := range y.Bands {
		band.draw(&b, y, days, top, at)
		top += band.Height + bandGap
	}
	b.WriteString(`</svg>`)
	return template.HTML(b.String())
}

// down is a value's place below the top of the band, pixels. What lies beyond the band is
// held at its edge; without a span everything lies at the bottom.
func (s Band) down(v float64) float64 {
	span := s.Most - s.Least
	if !(span > 0) {
		return s.Height
	}
	return s.Height * (1 - math.Min(math.Max((v-s.Least)/span, 0), 1))
}

// draw draws the band from its top: the shape stretches with the page, its words do not,
// so they stand outside of it.
func (s Band) draw(b *strings.Builder, y Year, days, top float64, at func(records.Date) float64) {
	base := top + bandGap
	fmt.Fprintf(b, `<svg y="%s" viewBox="0 0 %s %s" preserveAspectRatio="none" width="100%%" height="%s"><path class="%s" d="%s"/></svg>`,
		pixels(base), pixels(days), pixels(s.Height), pixels(s.Height), s.Class, s.path(y))
	fmt.Fprintf(b, `<text class="lb" x="0" y="%s">%s</text>`, pixels(base-16), template.HTMLEscapeString(s.Name))
	if s.Limit.Known {
		line := base + s.down(s.Limit.Value)
		fmt.Fprintf(b, `<rect class="need" x="0" y="%s" width="100%%" height="1"/><text class="an e" x="100%%" y="%s">%s</text>`, pixels(line), pixels(line-4), template.HTMLEscapeString(s.Says))
	}
	if s.PeakIs == "" {
		return
	}
	x, peak := at(s.Peak), base+s.down(s.PeakAt)
	side, dx := "e", -10
	if x < 30 {
		side, dx = "", 10
	}
	if s.Class != "temp" {
		fmt.Fprintf(b, `<circle class="k" cx="%s" cy="%s" r="3.5"/>`, percent(x), pixels(peak))
	}
	fmt.Fprintf(b, `<text class="an b %s" x="%s" dx="%d" y="%s">%s</text>`, side, percent(x), dx, pixels(s.peakWords(base, peak, x)), template.HTMLEscapeString(s.PeakIs))
}

// peakWords is how far down the words of the peak stand: beside it, but clear of the
// limit's line, and of the limit's own words at the right end.
func (s Band) peakWords(base, peak, x float64) float64 {
	line := base + s.down(s.Limit.Value)
	switch {
	case !s.Limit.Known || line < peak-13 || line > peak+2:
		return peak - 2
	case x < 85:
		return line - 4
	}
	return line + 14
}

// path is the outline of what stood, or a stroke for each day's temperatures. The unit
// across is a day. Days outside of the season are left out, and a day of one temperature
// still has a short stroke.
func (s Band) path(y Year) string {
	var b strings.Builder
	day := func(d records.Date) int { return int(min(max(d, y.First), y.Last+1) - y.First) }
	for _, p := range s.Spans {
		if p.Day >= y.First && p.Day <= y.Last {
			fmt.Fprintf(&b, "M%d.5 %sV%s", day(p.Day), pixels(s.down(p.Low)), pixels(math.Min(s.down(p.High), s.down(p.Low)-0.6)))
		}
	}
	if len(s.Steps) == 0 {
		return b.String()
	}
	fmt.Fprintf(&b, "M0 %s", pixels(s.Height))
	for _, step := range s.Steps {
		if step.Day <= y.Last {
			fmt.Fprintf(&b, "H%dV%s", day(step.Day), pixels(s.down(step.Is)))
		}
	}
	fmt.Fprintf(&b, "H%sV%sZ", pixels(float64(y.Last-y.First+1)), pixels(s.Height))
	return b.String()
}

// tall is the height of the drawing: its bands, the months and, where any, the numbers
// of the marks.
func (y Year) tall(bands float64) float64 {
	if len(y.Marks) > 0 {
		return bands + 36
	}
	return bands + 22
}
