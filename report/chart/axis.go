package chart

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"

	"traybook/report/words"
)

// Axis is a scale of numbers.
type Axis struct {
	// Name says what is measured, Unit in what; both stand beside the axis.
	Name, Unit string
	// Min and Max fix an end; nil: found from the numbers, zero included. An end
	// that would leave a number outside is not kept.
	Min, Max *float64
	// Percent: the numbers are shares of 1, shown as percent. Unless it is
	// Signed, the axis runs from 0 to 100 % so that charts can be compared.
	Percent bool
	// Signed: the numbers are differences; the axis is not held to 0..100 %,
	// and what is above zero is written with a plus.
	Signed bool
	// Whole: the numbers are counts; no mark stands between two of them.
	Whole bool
	// Near: the axis begins near the lowest number instead of at zero, for
	// scales whose zero means nothing: temperatures.
	Near bool
	// Mark names the marks of a chart's rows in its legend.
	Mark string
}

// Line is a reference: a break-even, a capacity, a packet's rate.
type Line struct {
	At    float64
	Label string
}

// Num returns a pointer to v, for the values that may be missing.
func Num(v float64) *float64 { return &v }

// title returns the words beside the axis. Percent stands at the marks already. A unit
// that the name already holds is not said twice.
func (a Axis) title() string {
	switch {
	case a.Unit == "" || a.Unit != a.Name && strings.Contains(a.Name, a.Unit):
		return a.Name
	case a.Name == "":
		return a.Unit
	}
	return a.Name + ", " + a.Unit
}

// value returns a number as it is plotted: nil if missing. What is not finite
// stays so and is refused when the chart is written.
func (a Axis) value(v *float64) any {
	if v == nil {
		return nil
	}
	return a.scaled(*v)
}

// scaled rounds off what adding up shares leaves behind the ninth digit.
func (a Axis) scaled(v float64) float64 {
	if a.Percent {
		v *= 100
	}
	return math.Round(v*1e9) / 1e9
}

// formatter names the function that writes the axis' numbers; empty: ECharts'. The
// functions stand in runtime/bridge.js and write numbers as the tables do.
func (a Axis) formatter() string {
	switch {
	case a.Percent && a.Signed:
		return "@signedPercent"
	case a.Percent:
		return "@percent"
	case a.Signed:
		return "@signed"
	}
	return "@plain"
}

// say writes a number of the axis in words, three digits at most, rounded as a table
// rounds it.
func (a Axis) say(v float64) string {
	v = a.scaled(v)
	sign := ""
	if a.Signed && v > 0 {
		sign = "+"
	}
	unit, places := a.Unit, decimals(v)
	if a.Percent {
		unit, places = "%", 0
	}
	return strings.TrimSpace(sign + strconv.FormatFloat(words.Round(v, places), 'f', places, 64) + " " + unit)
}

// decimals returns how many places show about three digits of v.
func decimals(v float64) int {
	switch size := math.Abs(v); {
	case size >= 100 || v == math.Trunc(v):
		return 0
	case size >= 10:
		return 1
	}
	return 2
}

// ticks is the scale of an axis: its ends and the step between its marks.
type ticks struct{ min, max, step float64 }

// shareTicks is the one scale of shares.
var shareTicks = ticks{0, 100, 20}

// markWidth returns the width of the widest mark of an axis, as the formatters
// of runtime/bridge.js write it.
func (a Axis) markWidth(t ticks) float64 {
	w := 0.0
	for i := range int((t.max-t.min)/t.step+0.5) + 1 {
		v := math.Round((t.min+float64(i)*t.step)*1e6) / 1e6
		text := strconv.FormatFloat(v, 'f', -1, 64) + strings.Repeat(",", int(math.Log10(math.Abs(v)+1)/3))
		if a.Signed {
			text += "+"
		}
		if a.Percent {
			text += " %"
		}
		w = math.Max(w, textWidth(text, fontSize))
	}
	return w
}

var errNotFinite = errors.New("a number is not finite")

// ticks returns ends and steps that hold every given value (nil ones are
// missing). It answers errNotFinite, and ends that will do, for a value that no
// axis can hold.
func (a Axis) ticks(values []*float64) (ticks, error) {
	low, high := math.Inf(1), math.Inf(-1)
	for _, p := range values {
		if p == nil {
			continue
		}
		v := a.scaled(*p)
		if math.IsNaN(v) || math.Abs(v) > 1e12 {
			return ticks{0, 1, 1}, errNotFinite
		}
		low, high = math.Min(low, v), math.Max(high, v)
	}
	if low > high {
		low, high = 0, 0
	}
	return a.round(low, high), nil
}

// round widens low..high to round ends. Shares have one scale in all charts, unless some
// lie outside of 0 to 100 %, so that two charts can be laid side by side.
func (a Axis) round(low, high float64) ticks {
	if a.Percent && !a.Signed && low >= 0 && high <= 100 {
		return shareTicks
	}
	from, to := math.Min(low, 0), math.Max(high, 0)
	if a.Near {
		from, to = low, high
	}
	if a.Min != nil && a.scaled(*a.Min) <= low {
		from = a.scaled(*a.Min)
	}
	if a.Max != nil && a.scaled(*a.Max) >= high {
		to = a.scaled(*a.Max)
	}
	if to <= from {
		to = from + 1
	}
	step := niceStep((to - from) / 5)
	if math.Ceil(to/step-1e-9)*step-to > (to-from)*0.3 {
		step = niceStep((to - from) / 6) // less of the plot is left empty
	}
	if a.Whole {
		step = math.Max(1, step)
	}
	return ticks{math.Floor(from/step+1e-9) * step, math.Ceil(to/step-1e-9) * step, step}
}

// niceStep returns the smallest of 1, 2 or 5 times a power of ten not below v.
func niceStep(v float64) float64 {
	base := math.Pow(10, math.Floor(math.Log10(v)))
	for _, m := range []float64{1, 2, 5} {
		if m*base >= v*(1-1e-9) {
			return m * base
		}
	}
	return 10 * base
}

// dayNumber returns an ISO date as days since 1970-01-01. The day is that of the calendar,
// without an hour or a zone.
func dayNumber(date string) (float64, error) {
	t, err := time.Parse(time.DateOnly, date)
	if err != nil {
		return 0, fmt.Errorf("%q is not a date such as 2025-03-01", date)
	}
	return float64(t.Unix() / 86400), nil
}

// dayMarks returns the days that carry a mark between two days, and the
// function that writes them: weeks in a short span, else the firsts of months,
// few enough to stand side by side on an axis share as long as a wide drawing's.
func dayMarks(first, last, share float64) (marks []float64, formatter string) {
	if last-first <= 70 {
		step := 7 * math.Max(1, math.Ceil((last-first)/56/share))
		for d := first; d <= last; d += step {
			marks = append(marks, d)
		}
		return marks, "@day"
	}
	step := monthStep((last - first) / share)
	year := time.Unix(int64(first)*86400, 0).UTC().Year()
	for i := 0; ; i += step {
		d := float64(time.Date(year, time.Month(1+i), 1, 0, 0, 0, 0, time.UTC).Unix() / 86400)
		if d > last {
			return marks, "@month"
		}
		if d >= first {
			marks = append(marks, d)
		}
	}
}

// monthStep returns how many months lie between two marks so that at most about
// fourteen fit a wide drawing, Januaries among them: they carry the year.
func monthStep(days float64) int {
	for _, step := range []int{1, 2, 3, 4, 6, 12, 24, 60} {
		if days/30.4/float64(step) <= 14 {
			return step
		}
	}
	return 120
}
