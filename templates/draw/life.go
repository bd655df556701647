package draw

import (
	"fmt"
	"html/template"
	"strings"

	"traybook/report/rate"
)

// Life is what became of one batch, days counted from its sowing. A day below 0 is
// unknown.
type Life struct {
	Kind    Kind
	End     float64 // days it stood
	Chamber float64 // days in the chamber from sowing on; 0: none
	Planned float64
	Ended   bool
	Counts  []Up
	Looks   []Look
}

// Up is the share of cells up from a day on.
type Up struct{ Day, Share float64 }

// Look is a look at quality: the share of plants at each score from the lowest, in
// Scores, and the share below what is fit. Where only fit and unfit were told, Scores
// holds two: unfit as score 2, fit as score 4.
type Look struct {
	Day    float64
	Scores [5]float64
	Fit    float64
}

// The lines of a life, pixels down: full is where all cells are up, ground is the
// house's floor.
const (
	full   = 10.0
	ground = 66.0
)

// Lives is the axis of days that all lives of a page share: from the sowing to the
// longest stay, written each ten days. Grid holds its lines and words, to stand once
// on the page.
func Lives(id string, longest float64) (a Axis, grid template.HTML) {
	a = Axis{ID: id, Max: 10}
	for a.Max < longest {
		a.Max += 10
	}
	step := 10.0
	for a.Max/step > 8 {
		step += 10
	}
	var b strings.Builder
	fmt.Fprintf(&b, `<svg class="defs" aria-hidden="true"><defs><g id="%s">`, id)
	for d := 0.0; d <= a.Max; d += step {
		at, class, word := percent(a.across(d)), "an c", pixels(d)
		if d == 0 {
			class, word = "an", "day 0"
		}
		fmt.Fprintf(&b, `<rect class="g" x="%s" y="6" width="1" height="60"/><text class="%s" x="%s" y="92">%s</text>`, at, class, at, word)
	}
	b.WriteString(`</g></defs></svg>`)
	return a, template.HTML(b.String())
}

// Draw draws a life on the axis of its page.
func (l Life) Draw(a Axis) template.HTML {
	var b strings.Builder
	fmt.Fprintf(&b, `<svg class="life" aria-hidden="true"><use href="#%s"/>`, a.ID)
	box := func(class string, from, to, y, height float64) {
		left := a.across(from)
		for _, part := range [...]string{`<rect class="`, class, `" x="`, percent(left), `" y="`, pixels(y), `" width="`, percent(a.across(to) - left), `" height="`, pixels(height), `"/>`} {
			b.WriteString(part) // a page has tens of these for each batch
		}
	}
	for i, c := range l.Counts {
		until := l.End
		if i+1 < len(l.Counts) {
			until = l.Counts[i+1].Day
		}
		if h := c.Share * (ground - full); h > 0 && until > c.Day {
			box("up", c.Day, until, ground-h, h)
		}
	}
	box("l"+string(l.Kind), 0, l.End, ground, l.thick())
	if l.Chamber > 0 {
		box("ch", 0, l.Chamber, ground, 10)
	}
	for _, k := range l.Looks {
		k.draw(&b, percent(a.across(k.Day)))
	}
	if l.Planned >= 0 {
		fmt.Fprintf(&b, `<rect class="pl" x="%s" y="2" width="2" height="68"/>`, percent(a.across(l.Planned)))
	}
	if l.Ended {
		fmt.Fprintf(&b, `<rect class="end" x="%s" y="10" width="2" height="60"/>`, percent(a.across(l.End)))
	}
	b.WriteString(`</svg>`)
	return template.HTML(b.String())
}

// thick is how thick the line of a kind of tray is, pixels.
func (l Life) thick() float64 { return thickness[l.Kind] }

var thickness = map[Kind]float64{Air: 3, Solid: 6, Other: 4.5}

// draw sets the scores one above the other, the lowest lowest, and a bar across where
// fit begins.
func (k Look) draw(b *strings.Builder, x string) {
	y := ground
	for i, s := range k.Scores {
		if h := s * (ground - full); h > 0 {
			y -= h
			fmt.Fprintf(b, `<rect class="q%d" x="%s" y="%s" width="9" height="%s"/>`, i+1, x, pixels(y), pixels(h))
		}
	}
	fmt.Fprintf(b, `<rect class="fit" x="%s" y="%s" width="17" height="1.5"/>`, x, pixels(ground-(1-k.Fit)*(ground-full)-0.8))
}

// Standing draws, in a table's row, when a batch stood in the house: a line as thick
// as its kind of tray asks for, black while in the chamber, an upright on the planned
// day.
func Standing(k Kind, from, to float64, chamberUntil, planned rate.Num) Mark {
	return func(a Axis, b *strings.Builder) {
		l := Life{Kind: k}
		left := a.across(from)
		for _, part := range [...]string{`<rect class="l`, string(k), `" x="`, percent(left), `" y="`, pixels(9.5 - l.thick()/2), `" width="`, percent(max(a.across(to)-left, 0.4)), `" height="`, pixels(l.thick()), `"/>`} {
			b.WriteString(part)
		}
		if chamberUntil.Known && chamberUntil.Value > from {
			fmt.Fprintf(b, `<rect class="ch" x="%s" y="4" width="%s" height="11"/>`, percent(left), percent(a.across(chamberUntil.Value)-left))
		}
		if planned.Known && !a.beyond(planned.Value) {
			fmt.Fprintf(b, `<rect class="pl" x="%s" y="1" width="2" height="17"/>`, percent(a.across(planned.Value)))
		}
	}
}

// Count marks, on a standing line, a day on which the batch was counted.
func Count(day float64) Mark {
	return func(a Axis, b *strings.Builder) {
		fmt.Fprintf(b, `<circle class="ct" cx="%s" cy="9.5" r="2.6"/>`, percent(a.across(day)))
	}
}
