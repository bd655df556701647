package draw

import (
	"encoding/xml"
	"errors"
	"html/template"
	"io"
	"math"
	"strconv"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report/rate"
)

const hostile = `</text><script>alert(1)</script>"&`

func known(v float64) rate.Num { return records.Known(v) }

// wellDrawn checks that a drawing is well formed, that every place and length across
// lies within 0 to 100 %, that every number is one, and that no word of it is markup.
func wellDrawn(t *testing.T, what string, drawing template.HTML) {
	t.Helper()
	if strings.Contains(string(drawing), "NaN") || strings.Contains(string(drawing), "Inf") || strings.Contains(string(drawing), "<script") {
		t.Errorf("%s: %s", what, drawing)
	}
	d := xml.NewDecoder(strings.NewReader(string(drawing)))
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return
		}
		if err != nil {
			t.Fatalf("%s: %v in %s", what, err, drawing)
		}
		start, ok := token.(xml.StartElement)
		if !ok {
			continue
		}
		for _, a := range start.Attr {
			checkNumber(t, what, a.Name.Local, a.Value)
		}
	}
}

// checkNumber: shares lie within the drawing, sizes are not negative.
func checkNumber(t *testing.T, what, attribute, value string) {
	t.Helper()
	share, isShare := strings.CutSuffix(value, "%")
	v, err := strconv.ParseFloat(share, 64)
	if err != nil {
		return // a class, a reference, a path
	}
	if isShare && (v < 0 || v > 100) {
		t.Errorf("%s: %s is %s", what, attribute, value)
	}
	if (attribute == "width" || attribute == "height" || attribute == "r") && v < 0 {
		t.Errorf("%s: %s is %s", what, attribute, value)
	}
}

// odd are values that a scale from 0 to 1 does not hold.
var odd = []float64{-1e300, -3, -0.01, 0, 0.5, 1, 1.01, 17, 1e300, math.Inf(1), math.Inf(-1), math.NaN()}

// Whatever the values, no mark leaves its drawing.
func TestMarksStayInside(t *testing.T) {
	axes := map[string]Axis{"shares": Shares("g", 0.4), "no scale": {ID: "g"}, "signed": From("g", -3, 5, 1)}
	for name, a := range axes {
		for _, v := range odd {
			for _, w := range odd {
				marks := []Mark{Range(known(min(v, w)), known(max(v, w))), Range(rate.Num{}, known(w)), Bar(v, w, "neg"), Standing(Solid, min(v, w), max(v, w), known(v), known(w))}
				wellDrawn(t, name, a.Row(marks...))
			}
			marks := []Mark{Dot(Air, known(v), true), Dot(Solid, known(v), false), Dot(Crop, rate.Num{}, false), Before(known(v)), Packet(known(v)), Earlier(known(v)), Mean(v), Line(v), Count(v),
				Points(Solid, []float64{v, v, v, v, v, v, v, v, v, v}), Columns([]float64{v, 0.5}, 1, true), Columns([]float64{v}, 0, false), Shelves([]rate.Num{{}, known(0.5)}, 0.8)}
			wellDrawn(t, name, a.Plain(marks...))
		}
	}
}

// By hand, on an axis from 0.6 to 1: 0.7 stands a quarter across, 0.9 three quarters.
func TestMarks(t *testing.T) {
	a := Shares("g", 0.65)
	tests := []struct {
		mark Mark
		want string
	}{
		{Range(known(0.7), known(0.9)), `<rect class="w" x="25%" y="8.5" width="50%" height="2"/>`},
		{Range(known(0.5), known(0.9)), `<rect class="w" x="0%" y="8.5" width="75%" height="2"/><rect class="cut" x="2%"`},
		{Range(known(0.7), known(1.2)), `<rect class="cut" x="97%"`},
		{Dot(Crop, known(0.8), false), `<circle class="k" cx="50%" cy="9.5" r="4.5"/>`},
		{Dot(Air, known(0.8), true), `<circle class="a h" cx="50%"`},
		{Dot(Solid, known(0.8), false), `<rect class="s" x="50%" y="5.5" width="8" height="8"/>`},
		{Before(known(0.9)), `<rect class="p" x="75%" y="3" width="2" height="13"/>`},
		{Packet(known(0.9)), `<rect class="lab" x="75%" y="1" width="2" height="17"/>`},
		{Earlier(known(0.9)), `<rect class="p" x="75%" y="2" width="2" height="15"/>`},
		{Bar(0.9, 0.7, "neg"), `<rect class="b neg" x="25%" y="4" width="50%" height="11"/>`},
		{Bar(0.7, 1.1, ""), `<rect class="b" x="25%" y="4" width="75%" height="11"/><rect class="cut" x="97%"`},
		{Columns([]float64{2, 1, 0}, 2, false), `<rect class="b" x="0%" y="4" width="30%" height="11"/><rect class="b" x="33.3%" y="4" width="15%" height="11"/></svg>`},
		{Columns([]float64{3}, 2, true), `<rect class="b h" x="0%" y="4" width="90%" height="11"/><rect class="cut" x="73.8%"`},
		{Points(Air, []float64{0.7, 0.7, 0.7}), `cy="17.5" r="2.6"/><circle class="m a" cx="25%" cy="11.5" r="2.6"/><circle class="m a" cx="25%" cy="23.5" r="2.6"/>`},
		{Mean(0.7), `<rect class="mean" x="25%"`},
		{Line(0.7), `<rect class="p1" x="25%"`},
		{Shelves([]rate.Num{known(0.5), {}, known(0.9)}, 0.8), `<rect class="b lo" x="0%" y="4" width="15%" height="11"/><rect class="p1" x="24%" y="2" width="1" height="15"/><rect class="b" x="66.7%" y="4" width="27%" height="11"/>`},
	}
	for _, tt := range tests {
		if got := string(a.Row(tt.mark)); !strings.Contains(got, tt.want) {
			t.Errorf("%s is not in %s", tt.want, got)
		}
	}
	for what, mark := range map[string]Mark{"no range": Range(known(0.7), rate.Num{}), "no dot": Dot(Crop, rate.Num{}, false), "a tick off the scale": Before(known(0.3)), "none before": Earlier(rate.Num{}), "no line": Line(0)} {
		if got := string(a.Plain(mark)); got != `<svg class="r" aria-hidden="true"></svg>` {
			t.Errorf("%s draws %s", what, got)
		}
	}
}

// A kind of tray has its mark by its name, whatever the capitals; other words share one.
func TestKinds(t *testing.T) {
	for name, want := range map[string]Kind{"air-pruning": Air, "Air-Pruning": Air, "SOLID-WALL": Solid, "flat": Other, "": Other, hostile: Other} {
		if got := KindOf(name); got != want {
			t.Errorf("%s: %s", name, got)
		}
	}
	for kind, want := range map[Kind]string{Crop: `<circle class="k"`, Air: `<circle class="a"`, Solid: `<rect class="q s0"`, Other: `<rect class="q f0"`} {
		if got := string(Key(kind)); !strings.Contains(got, want) {
			t.Errorf("%s: %s", kind, got)
		}
		wellDrawn(t, "key", Key(kind))
	}
}

// wordsOf are the words of an axis' ticks.
func wordsOf(a Axis) string {
	var out []string
	for _, t := range a.Ticks {
		word := t.Word
		if t.Zero {
			word = "[" + word + "]"
		}
		out = append(out, word)
	}
	return strings.Join(out, " ")
}

// Axes begin and end at round numbers that hold every value.
func TestAxes(t *testing.T) {
	plain := func(v float64) string { return strconv.FormatFloat(v, 'g', 6, 64) }
	d := records.NewDate
	tests := []struct {
		a        Axis
		min, max float64
		words    string
	}{
		{Shares("g", 0.65), 0.6, 1, "60 80 100"},
		{Shares("g", 0.93), 0.8, 1, "80 85 90 95 100"},
		{Shares("g", -4), 0, 1, "0 20 40 60 80 100"},
		{Shares("g", 7), 0.8, 1, "80 85 90 95 100"},
		{Differences("g", 0.3, 100), -0.4, 0.4, "−40 −20 [0] +20 +40"},
		{Differences("g", 0, 100), -0.01, 0.01, "−1 [0] +1"},
		{From("g", -3, 5, 1), -4, 6, "−4 −2 [0] +2 +4 +6"},
		{From("g", 2, 5, 1), 0, 6, "[0] +2 +4 +6"},
		{From("g", 0, 0, 1), 0, 1, "[0] +1"},
		{Amounts("g", 0.71, plain), 0, 1, "0 0.5 1"},
		{Amounts("g", 0, plain), 0, 1, "0 1"},
		{Amounts("g", 30, plain), 0, 30, "0 10 20 30"},
		{Days("g", d(2025, 2, 20), d(2025, 5, 3)), float64(d(2025, 2, 20)), float64(d(2025, 5, 3)), "Mar Apr May"},
		{Days("g", d(2024, 1, 1), d(2024, 12, 31)), float64(d(2024, 1, 1)), float64(d(2024, 12, 31)), "Jan  Mar  May  Jul  Sep  Nov "},
		{Days("g", d(2024, 1, 9), d(2024, 1, 9)), float64(d(2024, 1, 9)), float64(d(2024, 1, 10)), ""},
	}
	for _, tt := range tests {
		if math.Abs(tt.a.Min-tt.min) > 1e-9 || math.Abs(tt.a.Max-tt.max) > 1e-9 || wordsOf(tt.a) != tt.words {
			t.Errorf("from %g to %g, %q; want %g to %g, %q", tt.a.Min, tt.a.Max, wordsOf(tt.a), tt.min, tt.max, tt.words)
		}
		wellDrawn(t, tt.words, tt.a.Head())
	}
	for _, v := range []float64{1e-300, 1e300, 7e-12} {
		wellDrawn(t, "far numbers", Amounts("g", v, plain).Head())
	}
	for _, v := range odd {
		for _, a := range []Axis{Amounts("g", v, plain), Differences("g", v, 100), From("g", v, -v, 1)} {
			if len(a.Ticks) < 2 || len(a.Ticks) > 20 || !(a.Max > a.Min) {
				t.Errorf("%g: %d ticks from %g to %g", v, len(a.Ticks), a.Min, a.Max)
			}
		}
	}
}

// The words of an axis and of columns are text, its lines stand once, by its id.
func TestHeads(t *testing.T) {
	a := Axis{ID: "gx", Max: 4, Ticks: []Tick{{At: 1, Word: hostile}, {At: 4, Word: "4", Zero: true}}}
	got := string(a.Head())
	for _, want := range []string{`<text x="25%" y="13">&lt;/text&gt;&lt;script&gt;`, `<g id="gx"><rect class="g" x="25%" y="-9" width="1" height="38"/><rect class="z" x="100%"`} {
		if !strings.Contains(got, want) {
			t.Errorf("%s is not in %s", want, got)
		}
	}
	wellDrawn(t, "head", a.Head())
	columns := ColumnsHead("gc", []string{hostile, "b"})
	if !strings.Contains(string(columns), `<text class="l" x="50%" y="13">b</text>`) || !strings.Contains(string(columns), `<g id="gc">`) {
		t.Errorf("columns: %s", columns)
	}
	wellDrawn(t, "columns", columns)
	if row := string(a.Row()); row != `<svg class="r" aria-hidden="true"><use href="#gx"/></svg>` {
		t.Errorf("a row repeats more than its grid: %s", row)
	}
}
