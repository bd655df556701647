package draw

import (
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report/rate"
)

// A life of 40 days on an axis of 50: up to 56 pixels high where all is up.
func TestLife(t *testing.T) {
	a, grid := Lives("gl", 41)
	wellDrawn(t, "grid", grid)
	if a.Max != 50 || !strings.Contains(string(grid), `<text class="an" x="0%" y="92">day 0</text>`) || !strings.Contains(string(grid), `<text class="an c" x="80%" y="92">40</text>`) {
		t.Fatalf("to %g: %s", a.Max, grid)
	}
	l := Life{Kind: Solid, End: 40, Chamber: 5, Planned: 35, Ended: true, Counts: []Up{{10, 0.5}, {20, 1}},
		Looks: []Look{{Day: 30, Scores: [5]float64{0, 0.25, 0, 0.75, 0}, Fit: 0.75}}}
	got := string(l.Draw(a))
	for _, want := range []string{
		`<rect class="up" x="20%" y="38" width="20%" height="28"/>`, `<rect class="up" x="40%" y="10" width="40%" height="56"/>`,
		`<rect class="ls" x="0%" y="66" width="80%" height="6"/>`, `<rect class="ch" x="0%" y="66" width="10%" height="10"/>`,
		`<rect class="q2" x="60%" y="52" width="9" height="14"/><rect class="q4" x="60%" y="10" width="9" height="42"/>`, `<rect class="fit" x="60%" y="51.2"`,
		`<rect class="pl" x="70%" y="2"`, `<rect class="end" x="80%" y="10"`,
	} {
		if !strings.Contains(got, want) {
			t.Errorf("%s is not in %s", want, got)
		}
	}
	open := string(Life{Kind: Air, End: 7, Planned: -1}.Draw(a))
	if strings.Contains(open, `class="pl"`) || strings.Contains(open, `class="end"`) || strings.Contains(open, `class="ch"`) || !strings.Contains(open, `height="3"/>`) {
		t.Errorf("an open batch without a plan: %s", open)
	}
	for _, v := range odd {
		wellDrawn(t, fmt.Sprint("life of ", v), Life{Kind: Other, End: v, Chamber: v, Planned: v, Ended: true, Counts: []Up{{v, 0.5}, {0, 1}}, Looks: []Look{{Day: v}}}.Draw(a))
	}
	if long, grid := Lives("gl", 800); long.Max != 800 || strings.Count(string(grid), "<text") > 10 {
		t.Errorf("a long life has %d words on %g days", strings.Count(string(grid), "<text"), long.Max)
	}
}

// A batch in a row: its line as thick as its kind asks for, a planned day off the scale
// left out.
func TestStanding(t *testing.T) {
	a := Axis{ID: "g", Min: 100, Max: 200}
	got := string(a.Row(Standing(Air, 110, 160, known(115), known(150)), Count(120)))
	for _, want := range []string{`<rect class="la" x="10%" y="8" width="50%" height="3"/>`, `<rect class="ch" x="10%" y="4" width="5%" height="11"/>`, `<rect class="pl" x="50%"`, `<circle class="ct" cx="20%"`} {
		if !strings.Contains(got, want) {
			t.Errorf("%s is not in %s", want, got)
		}
	}
	if got := string(a.Row(Standing(Solid, 110, 160, rate.Num{}, known(250)))); strings.Contains(got, `"pl"`) || strings.Contains(got, `"ch"`) {
		t.Errorf("a plan off the scale, or no chamber, is drawn: %s", got)
	}
}

// A season of ten days: 100 places of 130 pixels, 50 taken from the third day on.
func TestYear(t *testing.T) {
	first := records.NewDate(2025, 3, 1)
	y := Year{ID: "year", Title: hostile, First: first, Last: first + 9, Bands: []Band{
		{Name: hostile, Class: "bench", Height: 130, Most: 100, Steps: []Step{{first - 5, 20}, {first + 2, 50}, {first + 12, 90}}, Limit: known(80), Says: hostile, Peak: first + 5, PeakAt: 50, PeakIs: hostile},
		{Name: "House", Class: "temp", Height: 40, Least: -10, Most: 30, Spans: []Span{{first, 0, 20}, {first - 1, 0, 9}, {first + 3, 5, 5}}, Peak: first, PeakAt: 20, PeakIs: "20 °C"},
		{Name: "Nothing", Class: "chamb", Height: 36},
	}}
	got := string(y.Draw())
	wellDrawn(t, "year", y.Draw())
	for _, want := range []string{
		`height="318" role="img" aria-labelledby="year"><title id="year">&lt;/text&gt;`, // 130 + 40 + 36 + 3 x 30 + 22
		`d="M0 130H0V104H2V65H10V130Z"`, `viewBox="0 0 10 130"`,
		`<rect class="need" x="0" y="56" width="100%" height="1"/>`, // 30 + 130 x (1 - 0.8)
		`<circle class="k" cx="50%" cy="95" r="3.5"/>`,
		`d="M0.5 30V10M3.5 25V24.4"`,
	} {
		if !strings.Contains(got, want) {
			t.Errorf("%s is not in %s", want, got)
		}
	}
	// Each month longer than half of one is named once, in its middle.
	long := string(Year{ID: "y", First: records.NewDate(2024, 12, 1), Last: records.NewDate(2025, 2, 28)}.Draw())
	if names := regexp.MustCompile(`>(\w{3})</text>`).FindAllStringSubmatch(long, -1); len(names) != 3 || names[0][1] != "Dec" || names[2][1] != "Feb" {
		t.Errorf("months %v", names)
	}
	for _, v := range odd[:len(odd)-1] {
		wellDrawn(t, "year", Year{ID: "y", First: first, Last: first + 3, Bands: []Band{{Class: "bench", Height: 10, Most: 1, Steps: []Step{{first, v}}, PeakIs: "x", Peak: first, PeakAt: v, Limit: known(v)}}}.Draw())
	}
}

var cell = regexp.MustCompile(`<rect x="(\d+)" y="(\d+)" width="(\d+)" height="(\d+)" fill="url\(#(c[ue])\)"/>`)

// In a tray the cells drawn are those it has, and as many hold a seedling as do; no two
// stand on the same place.
func TestTray(t *testing.T) {
	for _, tt := range []struct{ cells, filled int }{{72, 61}, {72, 0}, {72, 72}, {1, 1}, {7, 3}, {128, 100}, {51, 50}, {72, 90}, {72, -4}} {
		drawing := Tray("tray", hostile, tt.cells, tt.filled)
		wellDrawn(t, fmt.Sprint(tt), drawing)
		taken, count := map[[2]int]bool{}, map[string]int{}
		for _, m := range cell.FindAllStringSubmatch(string(drawing), -1) {
			var at [4]int
			for i := range at {
				at[i], _ = strconv.Atoi(m[i+1])
			}
			for x := at[0]; x < at[0]+at[2]; x += 15 {
				for y := at[1]; y < at[1]+at[3]; y += 15 {
					if taken[[2]int{x, y}] {
						t.Errorf("%v: two cells at %d, %d", tt, x, y)
					}
					taken[[2]int{x, y}] = true
					count[m[5]]++
				}
			}
		}
		if want := min(max(tt.filled, 0), tt.cells); count["cu"] != want || count["cu"]+count["ce"] != tt.cells {
			t.Errorf("%v: %d with a seedling and %d without", tt, count["cu"], count["ce"])
		}
	}
}

// Three trays owned and two more: a bar a fifth of the width each, the one to buy in the
// colour of its kind.
func TestNext(t *testing.T) {
	got := Next(3, []float64{4, 1}, 1, Air, 2)
	wellDrawn(t, "next", got)
	for _, want := range []string{`<rect class="own" x="0" y="59" width="60%"`, `<rect class="a" x="60%" y="7" width="14.4%" height="57"/>`, `<rect class="b" x="80%" y="49.8" width="14.4%" height="14.3"/>`,
		`<rect class="need" x="60%" y="35.5" width="40%"`, "3 owned", "5th tray"} {
		if !strings.Contains(string(got), want) {
			t.Errorf("%s is not in %s", want, got)
		}
	}
	if strings.Contains(string(Next(3, []float64{4}, 1, Solid, 0)), `class="need"`) {
		t.Error("a line at nothing")
	}
	for _, none := range [][]float64{nil, {0, 0}} {
		if got := Next(0, none, 0, Air, 0); got != "" {
			t.Errorf("nothing used: %s", got)
		}
	}
}

func TestOrdinal(t *testing.T) {
	for n, want := range map[int]string{1: "1st", 2: "2nd", 3: "3rd", 4: "4th", 11: "11th", 12: "12th", 13: "13th", 21: "21st", 102: "102nd", 111: "111th"} {
		if got := Ordinal(n); got != want {
			t.Errorf("%d: %s", n, got)
		}
	}
}
