package chart

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"
)

func TestTicks(t *testing.T) {
	tests := []struct {
		name   string
		axis   Axis
		values []float64
		want   ticks
	}{
		{"shares run from 0 to 100", Axis{Percent: true}, []float64{0.4, 0.6}, ticks{0, 100, 20}},
		{"a share above 1 is still shown", Axis{Percent: true}, []float64{0.4, 1.1}, ticks{0, 120, 20}},
		{"differences keep their own range", Axis{Percent: true, Signed: true}, []float64{-0.05, 0.12}, ticks{-5, 15, 5}},
		{"amounts begin at zero", Axis{}, []float64{12, 17}, ticks{0, 20, 5}},
		{"unless told otherwise", Axis{Min: Num(10)}, []float64{12, 17}, ticks{10, 18, 2}},
		{"no end leaves a number outside", Axis{Min: Num(13), Max: Num(15)}, []float64{12, 17}, ticks{0, 20, 5}},
		{"nothing to show", Axis{}, nil, ticks{0, 1, 0.2}},
		{"counts", Axis{Whole: true}, []float64{2}, ticks{0, 2, 1}},
		{"small amounts", Axis{}, []float64{0.031}, ticks{0, 0.04, 0.01}},
	}
	for _, tt := range tests {
		var values []*float64
		for _, v := range tt.values {
			values = append(values, Num(v))
		}
		got, err := tt.axis.ticks(append(values, nil))
		if err != nil || math.Abs(got.min-tt.want.min)+math.Abs(got.max-tt.want.max)+math.Abs(got.step-tt.want.step) > 1e-9 {
			t.Errorf("%s: %v, %v; want %v", tt.name, got, err, tt.want)
		}
	}
	if _, err := (Axis{}).ticks([]*float64{Num(math.NaN())}); !errors.Is(err, errNotFinite) {
		t.Errorf("not a number: %v", err)
	}
}

// Whatever the numbers, the axis holds them and has a readable number of marks.
func TestTicksHoldEveryNumber(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := Axis{Percent: rapid.Bool().Draw(t, "percent"), Signed: rapid.Bool().Draw(t, "signed")}
		if rapid.Bool().Draw(t, "fixed") {
			a.Min, a.Max = Num(rapid.Float64Range(-1e6, 1e6).Draw(t, "min")), Num(rapid.Float64Range(-1e6, 1e6).Draw(t, "max"))
		}
		low, high := rapid.Float64Range(-1e9, 1e9).Draw(t, "low"), rapid.Float64Range(-1e9, 1e9).Draw(t, "high")
		got, err := a.ticks([]*float64{&low, &high})
		if err != nil {
			t.Fatal(err)
		}
		slack := got.step * 1e-6
		for _, v := range []float64{low, high} {
			if s := a.scaled(v); s < got.min-slack || s > got.max+slack {
				t.Errorf("%g is outside %v", s, got)
			}
		}
		if n := (got.max - got.min) / got.step; n < 1-1e-6 || n > 8 {
			t.Errorf("%g steps in %v", n, got)
		}
	})
}

func TestSay(t *testing.T) {
	tests := []struct {
		axis Axis
		v    float64
		want string
	}{
		{Axis{Percent: true}, 0.876, "88 %"},
		{Axis{Percent: true}, 0.825, "83 %"}, // half-way away from zero, as in a table
		{Axis{Unit: "cents"}, 10.25, "10.3 cents"},
		{Axis{Signed: true}, -0.001, "0.00"},
		{Axis{Percent: true, Signed: true}, 0.04, "+4 %"},
		{Axis{Unit: "cents"}, 12.46, "12.5 cents"},
		{Axis{Unit: "trays"}, 1234, "1234 trays"},
		{Axis{}, 0.5, "0.50"},
		{Axis{Signed: true}, -3, "-3"},
	}
	for _, tt := range tests {
		if got := tt.axis.say(tt.v); got != tt.want {
			t.Errorf("%v: %q, want %q", tt.v, got, tt.want)
		}
	}
}
