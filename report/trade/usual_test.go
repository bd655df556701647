package trade

import (
	"math"
	"testing"
)

// fahrenheit turns degrees Celsius round.
func fahrenheit(c float64) float64 { return c*9/5 + 32 }

// The temperatures at which a crop comes up well, Fahrenheit: the optimum range of Knott's
// Handbook, less the warm part where Harrington and Minges (1954) found fewer normal
// seedlings: tomato 83 % at 30 C but 46 % at 35 C; spinach 82 % at 15 C, 52 % at 20 C,
// though chambers are set to 70 F (University of Delaware); onion 91 % and 73 %.
func TestUsualRange(t *testing.T) {
	for crop, want := range map[string][2]float64{
		"kale": {45, 95}, "lettuce": {40, 80}, "tomato": {70, 86}, "spinach": {45, 70}, "onion": {50, 86}, "cucumber": {60, 95},
		"celery": {60, 70}, "cabbage": {45, 95}, "eggplant": {75, 90},
	} {
		facts, _ := Crop(crop)
		low, high := facts.Usual()
		if math.Abs(fahrenheit(low)-want[0]) > 0.06 || math.Abs(fahrenheit(high)-want[1]) > 0.06 { // set points are to a tenth of a degree Celsius
			t.Errorf("%s: %.1f to %.1f F, want %v", crop, fahrenheit(low), fahrenheit(high), want)
		}
	}
}

// Of every crop: the usual range holds the set points of chambers and ends below the
// temperature above which little comes up. Kale at 73 F is no fault.
func TestUsualRangesAreSound(t *testing.T) {
	for name, c := range crops() {
		low, high := c.Usual()
		if !(low <= c.ChamberLowC+0.06 && c.ChamberHighC <= high+0.06 && high <= c.GermMaxC) {
			t.Errorf("%s: usual %.1f to %.1f, set %.1f to %.1f, most %.1f", name, low, high, c.ChamberLowC, c.ChamberHighC, c.GermMaxC)
		}
	}
	kale, _ := Crop("kale")
	if low, high := kale.Usual(); !(low < (73-32)/1.8 && (73-32)/1.8 < high) {
		t.Errorf("kale: %v to %v", low, high)
	}
}

// The hottest that a crop bears, Fahrenheit (IFAS; cabbage 95 to 100).
func TestGermMax(t *testing.T) {
	for crop, want := range map[string]float64{"lettuce": 85, "tomato": 95, "cabbage": 100, "cucumber": 106, "spinach": 85} {
		if facts, _ := Crop(crop); math.Abs(fahrenheit(facts.GermMaxC)-want) > 1e-9 {
			t.Errorf("%s: %v", crop, fahrenheit(facts.GermMaxC))
		}
	}
}
