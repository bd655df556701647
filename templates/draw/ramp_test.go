package draw

import (
	"strings"
	"testing"

	"traybook/records"
	"traybook/report/rate"
)

// Of 20 plants 2, 3, 5, 6 and 4 have the scores 1 to 5, fit from 3: on an axis from -0.5
// to 1 the line at fit stands a third across, 25 % of the plants to its left.
func TestRamp(t *testing.T) {
	a := Scores("g", 0.3)
	if a.Min != -0.5 || a.Max != 1 {
		t.Fatalf("axis from %v to %v", a.Min, a.Max)
	}
	var plants [5]rate.Num
	for i, n := range []float64{2, 3, 5, 6, 4} {
		plants[i] = records.Known(n)
	}
	row := string(a.Row(Ramp(plants, 3)))
	for _, want := range []string{ // 0.1 of 1.5 are 6.7 %
		`class="q1" x="16.7%" y="4" width="6.7%"`, `class="q2" x="23.3%" y="4" width="10%"`, `class="q3" x="33.3%" y="4" width="16.7%"`,
		`class="q5" x="70%" y="4" width="13.3%"`, `class="fit" x="33.3%"`,
	} {
		if !strings.Contains(row, want) {
			t.Errorf("%s is not in %s", want, row)
		}
	}
	plants[0] = rate.Num{}
	if strings.Contains(string(a.Row(Ramp(plants, 3))), "q1") {
		t.Error("a score that no plant has is drawn")
	}
	if row := a.Row(Ramp([5]rate.Num{}, 3)); strings.Contains(string(row), "rect") {
		t.Errorf("a ramp of no plants: %s", row)
	}
}

// The axis of scores has room for what is not fit, and names its line.
func TestScoresAxis(t *testing.T) {
	for unfit, from := range map[float64]float64{0: -0.25, 0.25: -0.25, 0.26: -0.5, 1: -1} {
		if a := Scores("g", unfit); a.Min != from {
			t.Errorf("%v not fit: from %v, want %v", unfit, a.Min, from)
		}
	}
	words := ""
	for _, tick := range Scores("g", 0.6).Ticks {
		words += tick.Word + " "
	}
	if words != "50 fit 50 100 " {
		t.Errorf("ticks %q", words)
	}
}

// A share that is not known leaves its column empty; one below the line is paler.
func TestShelves(t *testing.T) {
	row := string(Axis{ID: "g", Max: 1}.Row(Shelves([]rate.Num{records.Known(0.9), {}, records.Known(0.5), records.Known(0.8)}, 0.8)))
	if strings.Count(row, `class="b"`) != 2 || strings.Count(row, `class="b lo"`) != 1 || strings.Count(row, `class="p1"`) != 3 {
		t.Errorf("%s", row)
	}
	if !strings.Contains(row, `x="50%" y="4" width="11.3%"`) { // half of 22.5
		t.Errorf("the third column is not half full: %s", row)
	}
}

// The tick of the season before stands where its value is, and nowhere off the scale.
func TestEarlier(t *testing.T) {
	a := Axis{ID: "g", Max: 2}
	if row := string(a.Row(Earlier(records.Known(0.5)))); !strings.Contains(row, `class="p" x="25%"`) {
		t.Errorf("%s", row)
	}
	for _, v := range []rate.Num{{}, records.Known(2.5)} {
		if row := string(a.Row(Earlier(v))); strings.Contains(row, "rect") {
			t.Errorf("%v: %s", v, row)
		}
	}
}
