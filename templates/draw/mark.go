package draw

import (
	"fmt"
	"html/template"
	"math"
	"strings"

	"traybook/report/rate"
)

// Mark draws one thing on the axis of its table, behind what stands in out. It is given as
// a function so that a row of a table need not know its axis before all rows have told how
// far they reach.
type Mark func(a Axis, out []byte) []byte

// Kind is what a mark stands for: a crop as a whole or a kind of tray. It has a
// colour and a shape.
type Kind string

// The kinds.
const (
	Crop  Kind = "k" // a black circle
	Air   Kind = "a" // a blue circle
	Solid Kind = "s" // an ochre square
	Other Kind = "f" // a grey square
)

// KindOf returns the mark of a kind of tray as trays.csv names it. A kind of the farm's
// own, or none, has the grey square: it is compared like any other and has no colour of
// its own.
func KindOf(kind string) Kind {
	switch strings.ToLower(kind) {
	case "air-pruning":
		return Air
	case "solid-wall":
		return Solid
	}
	return Other
}

// Range is the line from one end of an interval to the other; none where it is not known.
// An interval of no width still has a hair, so that it is seen to be known.
func Range(low, high rate.Num) Mark {
	return func(a Axis, out []byte) []byte {
		if !low.Known || !high.Known {
			return out
		}
		from, to := a.across(low.Value), a.across(high.Value)
		out = appendRect(out, "w", from, 8.5, math.Max(to-from, 0.2), 2)
		return a.slit(a.slit(out, low.Value, 5), high.Value, 5)
	}
}

// slit is cut where a value goes beyond the scale.
func (a Axis) slit(out []byte, v float64, y float64) []byte {
	if !a.beyond(v) {
		return out
	}
	at := 97.0
	if v < a.Min {
		at = 2
	}
	return fmt.Appendf(out, `<rect class="cut" x="%s" y="%s" width="3" height="9"/>`, percent(at), pixels(y))
}

// Dot is the value itself; hollow where it rests on too few batches or on an estimate.
// Hollow is told in words in the caption of each table; colour and shape alone would be
// lost in print or on some eyes.
func Dot(k Kind, v rate.Num, hollow bool) Mark {
	return func(a Axis, out []byte) []byte {
		if !v.Known {
			return out
		}
		return appendShape(out, k, a.across(v.Value), 9.5, hollow)
	}
}

// appendShape draws a circle or, for the other kinds of tray, a square, centred on x,
// which is in percent.
func appendShape(out []byte, k Kind, x, y float64, hollow bool) []byte {
	shape, at, end := "rect", "", `" width="8" height="8"/>`
	if k == Crop || k == Air {
		shape, at, end = "circle", "c", `" r="4.5"/>`
	} else {
		y -= 4
	}
	class := `" `
	if hollow {
		class = ` h" `
	}
	out = appendPixels(appendAll(out, "<", shape, ` class="`, string(k), class, at, `x="`), x)
	out = appendPixels(appendAll(out, `%" `, at, `y="`), y)
	return append(out, end...)
}

// Before is the grey tick of the season before.
func Before(v rate.Num) Mark { return upright("p", `" y="3" width="2" height="13"/>`, v) }

// Packet is the upright line of what a packet of seed promises, or of any figure that
// a value is held against.
func Packet(v rate.Num) Mark { return upright("lab", `" y="1" width="2" height="17"/>`, v) }

// Earlier is Before across a bar: it stands out of the bar, and a slit on either side
// sets it apart.
func Earlier(v rate.Num) Mark {
	return func(a Axis, out []byte) []byte {
		if !v.Known || a.beyond(v.Value) {
			return out
		}
		x := percent(a.across(v.Value))
		return fmt.Appendf(out, `<rect class="cut t" x="%s" y="4" width="4" height="11"/><rect class="p" x="%s" y="2" width="2" height="15"/>`, x, x)
	}
}

func upright(class, rest string, v rate.Num) Mark {
	return func(a Axis, out []byte) []byte {
		if !v.Known || a.beyond(v.Value) {
			return out
		}
		return a.appendUpright(out, class, v.Value, rest)
	}
}

// Bar is a bar between two values; class adds to its look: h hollow, neg a loss, lo
// pale, or the class of a kind of tray.
func Bar(from, to float64, class string) Mark {
	return func(a Axis, out []byte) []byte {
		left, right := a.across(math.Min(from, to)), a.across(math.Max(from, to))
		out = appendRect(out, strings.TrimSpace("b "+class), left, 4, math.Max(right-left, 0.2), 11)
		return a.slit(out, math.Max(from, to), 5)
	}
}

// Columns draws one small bar for each part of a whole, every part in a column of its
// own on one scale, so that each can be compared down the rows. most is the value
// that fills a column; hollow where the parts are mostly estimated.
func Columns(parts []float64, most float64, hollow bool) Mark {
	return func(_ Axis, out []byte) []byte {
		width := 100 / float64(len(parts))
		class := "b"
		if hollow {
			class = "b h"
		}
		for i, v := range parts {
			full := width * 0.9
			w := full * math.Min(math.Max(v/most, 0), 1)
			if !(w > 0.05) { // too small to be seen, or nothing fills a column
				continue
			}
			out = appendRect(out, class, float64(i)*width, 4, w, 11)
			if v > most*(1+1e-9) {
				out = fmt.Appendf(out, `<rect class="cut" x="%s" y="3" width="3" height="13"/>`, percent(float64(i)*width+full*0.82))
			}
		}
		return out
	}
}

// ColumnsHead is the head of such columns: the words at the left of each, and their
// grid.
func ColumnsHead(id string, names []string) template.HTML {
	a := Axis{ID: id, Max: 100}
	var b strings.Builder
	b.WriteString(`<svg class="ax" aria-hidden="true">`)
	for i, n := range names {
		at := 100 / float64(len(names)) * float64(i)
		a.Ticks = append(a.Ticks, Tick{At: at})
		fmt.Fprintf(&b, `<text class="l" x="%s" y="13">%s</text>`, percent(at), template.HTMLEscapeString(n))
	}
	b.WriteString(a.grid(-9, 38) + `</svg>`)
	return template.HTML(b.String())
}

// Points draws a dot for every value, those that would cover each other one above the
// other, in a row 35 pixels high. Values within a hundredth of the width of one another
// count as covering.
func Points(k Kind, values []float64) Mark {
	return func(a Axis, out []byte) []byte {
		at := map[int]int{}
		for _, v := range values {
			p := a.across(v)
			cell := int(math.Round(p))
			n := at[cell]
			at[cell]++
			y := 17.5 + 6*float64((n+1)/2)*float64(1-2*(n%2))
			out = appendPixels(appendAll(out, `<circle class="m `, string(k), `" cx="`), p)
			out = appendPixels(append(out, `%" cy="`...), math.Min(math.Max(y, 3), 32))
			out = append(out, `" r="2.6"/>`...)
		}
		return out
	}
}

// Mean is the upright line of a mean in a row of points.
func Mean(v float64) Mark {
	return func(a Axis, out []byte) []byte {
		return a.appendUpright(out, "mean", v, `" y="8" width="2" height="19"/>`)
	}
}

// Key is the shape of a kind, small, to stand before its word.
func Key(k Kind) template.HTML { return keys[k] }

// keys are the shapes, made once: a large book has them by the ten thousand.
var keys = map[Kind]template.HTML{Crop: round(Crop), Air: round(Air), Solid: square(Solid), Other: square(Other)}

func round(k Kind) template.HTML {
	return template.HTML(`<svg class="key" aria-hidden="true"><circle class="` + string(k) + `" cx="6" cy="6" r="4.5"/></svg>`)
}

func square(k Kind) template.HTML {
	return template.HTML(`<svg class="key" aria-hidden="true"><rect class="q ` + string(k) + `0" x="2" y="2" width="8" height="8"/></svg>`)
}

// Line is the upright line of a value that bars are held against; 0: none.
func Line(v float64) Mark {
	return func(a Axis, out []byte) []byte {
		if !(v > 0) {
			return out
		}
		return a.appendUpright(out, "p1", v, `" y="1" width="1.5" height="17"/>`)
	}
}
