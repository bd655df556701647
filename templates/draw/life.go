package draw

import (
	"fmt"
	"html/template"
	"strings"

	"traybook/report/rate"
)

// Life is what became of one batch, days counted from its sowing. A day below 0 is
// unknown. Everything in it is days and shares, so that a life can be drawn without a
// book.
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

// Draw draws a life on the axis of its page. A count holds until the next one, or the end:
// what came up in between was not seen.
func (l Life) Draw(a Axis) template.HTML { return template.HTML(l.Append(nil, a)) }

// Append draws a life behind what stands in out. A page has tens of its parts for each of
// hundreds of batches.
func (l Life) Append(out []byte, a Axis) []byte {
	out = appendAll(out, `<svg class="life" aria-hidden="true"><use href="#`, a.ID, `"/>`)
	for i, c := range l.Counts {
		until := l.End
		if i+1 < len(l.Counts) {
			until = l.Counts[i+1].Day
		}
		if h := c.Share * (ground - full); h > 0 && until > c.Day {
			out = a.appendBox(out, "up", c.Day, until, ground-h, h)
		}
	}
	out = a.appendBox(out, lineClass(l.Kind), 0, l.End, ground, l.thick())
	if l.Chamber > 0 {
		out = a.appendBox(out, "ch", 0, l.Chamber, ground, 10)
	}
	for _, k := range l.Looks {
		out = k.append(out, a.across(k.Day))
	}
	if l.Planned >= 0 {
		out = a.appendUpright(out, "pl", l.Planned, `" y="2" width="2" height="68"/>`)
	}
	if l.Ended {
		out = a.appendUpright(out, "end", l.End, `" y="10" width="2" height="60"/>`)
	}
	return append(out, `</svg>`...)
}

// appendBox draws a rectangle from one value to another, y and height in pixels.
func (a Axis) appendBox(out []byte, class string, from, to, y, height float64) []byte {
	left := a.across(from)
	return appendRect(out, class, left, y, a.across(to)-left, height)
}

// appendRect draws a rectangle: x and width in percent, y and height in pixels.
func appendRect(out []byte, class string, x, y, width, height float64) []byte {
	out = appendPixels(appendAll(out, `<rect class="`, class, `" x="`), x)
	out = appendPixels(append(out, `%" y="`...), y)
	out = appendPixels(append(out, `" width="`...), width)
	out = appendPixels(append(out, `%" height="`...), height)
	return append(out, `"/>`...)
}

// appendUpright draws what stands upright on a value; rest is all behind its place.
func (a Axis) appendUpright(out []byte, class string, at float64, rest string) []byte {
	out = appendPixels(appendAll(out, `<rect class="`, class, `" x="`), a.across(at))
	return appendAll(out, "%", rest)
}

// lineClass is the class of the line of a kind of tray.
func lineClass(k Kind) string {
	switch k {
	case Air:
		return "la"
	case Solid:
		return "ls"
	}
	return "l" + string(k)
}

// thick is how thick the line of a kind of tray is, pixels.
func (l Life) thick() float64 { return thickness[l.Kind] }

var thickness = map[Kind]float64{Air: 3, Solid: 6, Other: 4.5}

// scoreClasses are the classes of the scores, the lowest first.
var scoreClasses = [...]string{"q1", "q2", "q3", "q4", "q5"}

// append sets the scores one above the other, the lowest lowest, and a bar across where
// fit begins; x is their place in percent.
func (k Look) append(out []byte, x float64) []byte {
	y := ground
	for i, s := range k.Scores {
		if h := s * (ground - full); h > 0 {
			y -= h
			out = appendPixels(appendAll(out, `<rect class="`, scoreClasses[i], `" x="`), x)
			out = appendPixels(append(out, `%" y="`...), y)
			out = appendPixels(append(out, `" width="9" height="`...), h)
			out = append(out, `"/>`...)
		}
	}
	out = appendPixels(append(out, `<rect class="fit" x="`...), x)
	out = appendPixels(append(out, `%" y="`...), ground-(1-k.Fit)*(ground-full)-0.8)
	return append(out, `" width="17" height="1.5"/>`...)
}

// Standing draws, in a table's row, when a batch stood in the house: a line as thick
// as its kind of tray asks for, black while in the chamber, an upright on the planned
// day.
func Standing(k Kind, from, to float64, chamberUntil, planned rate.Num) Mark {
	return func(a Axis, out []byte) []byte {
		left, thick := a.across(from), thickness[k]
		out = appendRect(out, lineClass(k), left, 9.5-thick/2, max(a.across(to)-left, 0.4), thick)
		if chamberUntil.Known && chamberUntil.Value > from {
			out = appendRect(out, "ch", left, 4, a.across(chamberUntil.Value)-left, 11)
		}
		if planned.Known && !a.beyond(planned.Value) {
			out = a.appendUpright(out, "pl", planned.Value, `" y="1" width="2" height="17"/>`)
		}
		return out
	}
}

// Count marks, on a standing line, a day on which the batch was counted.
func Count(day float64) Mark {
	return func(a Axis, out []byte) []byte {
		return fmt.Appendf(out, `<circle class="ct" cx="%s" cy="9.5" r="2.6"/>`, percent(a.across(day)))
	}
}
