package draw

import (
	"fmt"
	"html/template"
	"math"
	"strconv"
	"strings"
)

// Axis is what all drawings of one table share: a scale from Min to Max, with Max
// above Min, and the values that are written in the table's head. ID is the name of
// its grid on the page, letters and digits. Write says how a value is written.
type Axis struct {
	ID       string
	Min, Max float64
	Ticks    []Tick
}

// Tick is a value of an axis with its word. Zero draws its line stronger: what a
// difference is counted from.
type Tick struct {
	At   float64
	Word string
	Zero bool
}

// across is a value's place as a percent of the width, within the drawing.
func (a Axis) across(v float64) float64 {
	if !(a.Max > a.Min) || math.IsNaN(v) {
		return 0
	}
	return 100 * min(max((v-a.Min)/(a.Max-a.Min), 0), 1)
}

// beyond reports whether a value lies off the scale, but for the last digit.
func (a Axis) beyond(v float64) bool {
	near := (a.Max - a.Min) * 1e-9
	return v > a.Max+near || v < a.Min-near
}

// percent writes a place across to a tenth, without a needless zero: 35.4%.
func percent(p float64) string { return pixels(p) + "%" }

// pixels writes a length to a tenth.
func pixels(y float64) string {
	var room [24]byte
	return string(appendPixels(room[:0], y))
}

// appendPixels is pixels behind what stands in out. Drawings hold thousands of them, so
// whole tenths are written as the integers that they are.
func appendPixels(out []byte, y float64) []byte {
	n := math.Round(y * 10)
	if math.IsNaN(n) || math.Abs(n) >= 1<<53 {
		return strconv.AppendFloat(out, n/10, 'f', -1, 64)
	}
	whole, tenth := int64(n)/10, int64(math.Abs(n))%10
	if n < 0 && whole == 0 {
		out = append(out, '-')
	}
	if out = strconv.AppendInt(out, whole, 10); tenth != 0 {
		out = append(out, '.', byte('0'+tenth))
	}
	return out
}

// appendAll appends texts one after the other.
func appendAll(out []byte, texts ...string) []byte {
	for _, s := range texts {
		out = append(out, s...)
	}
	return out
}

// Head is the axis as it stands in the head of its column: the words of the ticks,
// and the grid that every row of the table repeats.
func (a Axis) Head() template.HTML {
	var b strings.Builder
	b.WriteString(`<svg class="ax" aria-hidden="true">`)
	for _, t := range a.Ticks {
		fmt.Fprintf(&b, `<text x="%s" y="13">%s</text>`, percent(a.across(t.At)), template.HTMLEscapeString(t.Word))
	}
	b.WriteString(a.grid(-9, 38) + `</svg>`)
	return template.HTML(b.String())
}

// grid defines the axis' lines once; rows use them by name.
func (a Axis) grid(y, height int) string {
	var b strings.Builder
	fmt.Fprintf(&b, `<defs><g id="%s">`, a.ID)
	for _, t := range a.Ticks {
		class := "g"
		if t.Zero {
			class = "z"
		}
		fmt.Fprintf(&b, `<rect class="%s" x="%s" y="%d" width="1" height="%d"/>`, class, percent(a.across(t.At)), y, height)
	}
	b.WriteString(`</g></defs>`)
	return b.String()
}

// Row draws marks on the axis' grid, the first lowest.
func (a Axis) Row(marks ...Mark) template.HTML {
	return template.HTML(a.AppendRow(make([]byte, 0, 320), marks...))
}

// AppendRow is Row behind what stands in out.
func (a Axis) AppendRow(out []byte, marks ...Mark) []byte {
	out = appendAll(out, `<svg class="r" aria-hidden="true"><use href="#`, a.ID, `"/>`)
	for _, m := range marks {
		out = m(a, out)
	}
	return append(out, `</svg>`...)
}

// Plain draws marks without a grid.
func (a Axis) Plain(marks ...Mark) template.HTML {
	out := []byte(`<svg class="r" aria-hidden="true">`)
	for _, m := range marks {
		out = m(a, out)
	}
	return template.HTML(append(out, `</svg>`...))
}
