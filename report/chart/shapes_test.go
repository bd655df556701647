package chart

import (
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"maps"
	"math"
	"os"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"
)

// hostile are names that a log may hold: markup, quotes, marks that turn the
// direction of text, what XML cannot hold, names of the table of functions,
// templates, and names without an end or a space.
var hostile = []string{
	"</script><script>alert(1)</script>", `"double" 'single' & <img src=x onerror=alert(1)>`,
	"\u202eright to left\u202c \u200f\u0627\u0644\u062e\u0633", "nul \x00 bell \x07 half \xff\xfe", "@dot", "{b} {c} {@[0]}", "__proto__", "constructor", "toString",
	"", "\n", strings.Repeat("endless", 60), strings.Repeat("word ", 200), "url(#zr0-c0)", "zr0-c0", "胡萝卜 🥕 e\u0301",
}

// shapes draws every kind of chart with the given words everywhere and a value
// v among its numbers.
func shapes(words string, v float64) []Spec {
	n, low, high := Num(v), Num(v-0.1), Num(v+0.1)
	h := func(name string) Head { return Head{name, words, words} }
	axis := Axis{Name: words, Unit: words, Mark: words}
	points := []Point{{"2025-03-01", n, low, high}, {"2025-03-08", nil, nil, nil}, {"2025-05-15", Num(3), Num(2), Num(4)}, {"2025-06-15", Num(2), Num(1), Num(4)}}
	return []Spec{
		StackedBars(h("stack"), []StackRow{{words, []*float64{n, nil, Num(1)}, words, ""}, {Name: words, Divider: words}}, []string{words, words, "c"}, axis),
		StepLines(h("steps"), []Series{{words, points}, {words, points}}, axis, Line{2, words}),
		Lines(h("lines"), []Series{{words, points}, {words, nil}}, axis, &Panel{axis, []Series{{words, points}}}, Line{2, words}),
	}
}

// Every name comes out as text, in shapes that take turns, and changes nothing in
// the charts that the same engine draws later.
func TestHostileNames(t *testing.T) {
	b, last := bundle(t), shapes("lettuce", 0.5)
	specs := shapes(hostile[0], 0.5)
	for i, words := range hostile[1:] {
		specs = append(specs, shapes(words, 0.5)[i%3])
	}
	for i := range specs {
		specs[i].Name = fmt.Sprintf("%s-%d", specs[i].Name, i)
	}
	all := drawAll(t, DrawerOptions{Bundle: b}, append(slices.Clone(specs), last...))
	for i, d := range all[:len(specs)] {
		wellFormed(t, d.SVG)
		if t.Failed() {
			t.Fatalf("name %q in %s", specs[i].Title, d.Name)
		}
		if i < 3 && (strings.Contains(d.SVG, "<script") || !strings.Contains(d.SVG, "&lt;/script&gt;")) {
			t.Errorf("%s: the name is not there as escaped text", d.Name)
		}
	}
	if !slices.Equal(all[len(specs):], drawAll(t, DrawerOptions{Bundle: b}, last)) {
		t.Error("charts drawn after hostile names differ")
	}
}

func TestShapesRefuseWhatIsNotANumber(t *testing.T) {
	for _, v := range []float64{math.NaN(), math.Inf(1), math.Inf(-1), 1e300} {
		for _, s := range shapes("x", v) {
			_, err := drawer(t, DrawerOptions{}).Draw([]Spec{s})
			if err == nil || !strings.Contains(err.Error(), strconv.Quote(s.Name)) {
				t.Errorf("%v in %s: %v", v, s.Name, err)
			}
		}
	}
}

func TestShapesWithoutRows(t *testing.T) {
	h := Head{Name: "empty"}
	for i, s := range []Spec{
		StackedBars(h, nil, nil, Axis{}),
	} {
		got, err := drawer(t, DrawerOptions{Bundle: bundle(t)}).Draw([]Spec{s})
		if err != nil || got[0].SVG == "" {
			t.Errorf("shape %d: %v", i, err)
		}
	}
	for _, s := range []Spec{StepLines(h, nil, Axis{}), Lines(h, []Series{{"x", nil}}, Axis{}, nil)} {
		if _, err := drawer(t, DrawerOptions{}).Draw([]Spec{s}); err == nil {
			t.Error("lines without a day were drawn")
		}
	}
}

func TestShapesSameBytes(t *testing.T) {
	b, specs := bundle(t), shapes("lettuce", 0.5)
	one := drawAll(t, DrawerOptions{Bundle: b}, specs)
	two := drawAll(t, DrawerOptions{Bundle: b, Workers: 2}, specs)
	slices.Reverse(specs)
	turned := drawAll(t, DrawerOptions{Bundle: b}, specs)
	slices.Reverse(turned)
	if !slices.Equal(one, two) || !slices.Equal(one, turned) {
		t.Error("drawings differ with the workers or the order")
	}
}

// The stock file of the same release must draw what the bundle draws.
func TestStockFileDrawsTheSame(t *testing.T) {
	own := bundle(t)
	stock, err := os.ReadFile("runtime/node_modules/echarts/dist/echarts.min.js")
	if err != nil {
		skipOrFail(t, "the stock file is not here: run `go generate ./...`")
	}
	specs := shapes("lettuce", 0.5)
	if !slices.Equal(drawAll(t, DrawerOptions{Bundle: own}, specs), drawAll(t, DrawerOptions{Bundle: stock}, specs)) {
		t.Error("the stock file draws otherwise than the bundle")
	}
}

// drawn is one element of a drawing.
type drawn struct {
	name string
	attr map[string]string
	text string
}

// elements draws a chart and lists its elements in order.
func elements(t *testing.T, s Spec) []drawn {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(drawAll(t, DrawerOptions{Bundle: bundle(t)}, []Spec{s})[0].SVG))
	var all []drawn
	var groups []map[string]string // open ones: what they hand on to their parts
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			return all
		}
		if err != nil {
			t.Fatal(err)
		}
		switch e := token.(type) {
		case xml.StartElement:
			one := drawn{e.Name.Local, map[string]string{}, ""}
			for _, g := range groups {
				maps.Copy(one.attr, g)
			}
			for _, a := range e.Attr {
				one.attr[a.Name.Local] = a.Value
			}
			all = append(all, one)
			handed := map[string]string{}
			if one.name == "g" {
				for _, a := range e.Attr {
					handed[a.Name.Local] = a.Value
				}
			}
			groups = append(groups, handed)
		case xml.EndElement:
			groups = groups[:len(groups)-1]
		case xml.CharData:
			all[len(all)-1].text += strings.TrimSuffix(string(e), "\n")
		}
	}
}

// texts returns what a drawing says, line by line, without its title.
func texts(all []drawn) []string {
	var out []string
	for _, e := range all {
		if e.name == "text" {
			out = append(out, e.text)
		}
	}
	return out
}

// rectangle matches the path of a bar.
var rectangle = regexp.MustCompile(`^M([-0-9.]+) [-0-9.]+l([-0-9.]+) 0l`)

func TestBarsStandOnZeroInProportion(t *testing.T) {
	rows := []StackRow{{Name: "a", Parts: []*float64{Num(2), Num(4)}}, {Name: "b", Parts: []*float64{Num(8), Num(1)}}}
	from, long := map[string][]float64{}, map[string][]float64{}
	for _, e := range elements(t, StackedBars(Head{Name: "stack"}, rows, []string{"x", "y"}, Axis{})) {
		if m := rectangle.FindStringSubmatch(e.attr["d"]); m != nil && strings.HasPrefix(e.attr["fill"], "var(--c") {
			x, _ := strconv.ParseFloat(m[1], 64)
			w, _ := strconv.ParseFloat(m[2], 64)
			if w > 20 { // not the legend's
				from[e.attr["fill"]], long[e.attr["fill"]] = append(from[e.attr["fill"]], x), append(long[e.attr["fill"]], w)
			}
		}
	}
	x, y := long["var(--c1)"], long["var(--c2)"]
	if len(x) != 2 || len(y) != 2 {
		t.Fatalf("bars %v", long)
	}
	if from["var(--c1)"][0] != from["var(--c1)"][1] {
		t.Error("the bars do not begin at one place")
	}
	for _, got := range []float64{x[1] / 8, y[0] / 4, y[1] / 1} {
		if math.Abs(got-x[0]/2) > 0.5 {
			t.Errorf("a unit is %g long here and %g there", got, x[0]/2)
		}
	}
}

func TestMissingValuesAreGaps(t *testing.T) {
	bands := 0
	points := []Point{{"2025-03-01", Num(1), Num(0), Num(2)}, {"2025-03-02", Num(1), Num(0), Num(2)}, {Date: "2025-03-03"}, {"2025-03-04", Num(1), Num(0), Num(2)}, {"2025-03-05", Num(1), Num(0), Num(2)}}
	for _, e := range elements(t, Lines(Head{Name: "lines"}, []Series{{"a", points}}, Axis{}, nil)) {
		if e.attr["fill-opacity"] == "0.2" || e.attr["opacity"] == "0.2" {
			bands++
		}
	}
	if bands != 2 {
		t.Errorf("%d bands; the gap must leave two", bands)
	}
}

func TestDaysAreMarked(t *testing.T) {
	tests := []struct {
		from, to string
		want     []string
	}{
		{"2025-02-03", "2025-03-03", []string{"3 Feb", "10 Feb", "17 Feb", "24 Feb", "3 Mar"}},
		{"2023-03-01", "2025-09-01", []string{"Apr", "Oct", "Jan", "2024", "2025"}},
		{"2024-11-20", "2025-03-10", []string{"Dec", "Jan", "2025", "Feb", "Mar"}},
	}
	for _, tt := range tests {
		said := texts(elements(t, StepLines(Head{Name: "days"}, []Series{{"a", []Point{{Date: tt.from, Value: Num(1)}, {Date: tt.to, Value: Num(2)}}}}, Axis{Name: "Trays"})))
		for _, w := range tt.want {
			if !slices.Contains(said, w) {
				t.Errorf("%s to %s: %q is not among %q", tt.from, tt.to, w, said)
			}
		}
	}
	_, err := drawer(t, DrawerOptions{}).Draw([]Spec{StepLines(Head{Name: "days"}, []Series{{"a", []Point{{Date: "3.2.2025"}}}}, Axis{})})
	if err == nil || !strings.Contains(err.Error(), "3.2.2025") {
		t.Errorf("a date that is none: %v", err)
	}
}
