package chart

import (
	"fmt"

	"traybook/report"
	"traybook/report/rate"
	"traybook/report/trays"
	"traybook/report/words"
)

// matches shows the matched sowings of a pair as plants a tray, with their mean,
// its range and the break-even on the same scale. Too few matches have no mean.
func matches(r *report.Report, p *trays.Payback) []Spec {
	cells := float64(p.Cells)
	strip := Strip{DotsName: "one matched sowing each", Note: words.Count(p.Matches, "match", "matches")}
	for _, m := range r.Trays.Matches {
		if m.Tray == p.Tray && m.Other == p.Other {
			strip.Dots = append(strip.Dots, m.Difference*cells)
		}
	}
	if len(strip.Dots) == 0 {
		return nil
	}
	strip.Mean, strip.Low, strip.High = times(p.Difference, cells), times(p.DifferenceLow, cells), times(p.DifferenceHigh, cells)
	strip.MeanName = "mean and its range"
	if strip.Mean == nil {
		strip.MeanName = "too few for a mean"
	}
	axis := Axis{Name: fmt.Sprintf("more usable plants a tray in %s", p.Tray), Unit: "plants", Signed: true}
	lines := []Line{{0, "no difference"}}
	if p.BreakEvenPlants.Known {
		lines = append(lines, Line{p.BreakEvenPlants.Value, "pays from " + tenths(p.BreakEvenPlants.Value)})
	}
	h := Head{Name: Name("matches", p.Tray, p.Other), Title: fmt.Sprintf("%s against %s, matched sowings", p.Tray, p.Other)}
	h.Label = h.Title + ". " + sayMatches(p, strip)
	return []Spec{DotsStrip(h, []Strip{strip}, axis, lines...)}
}

// sayMatches says what the dots come to.
func sayMatches(p *trays.Payback, s Strip) string {
	better := 0
	for _, d := range s.Dots {
		if d > 0 {
			better++
		}
	}
	out := fmt.Sprintf("In %d of %d matched sowings %s gave more usable plants.", better, len(s.Dots), p.Tray)
	if s.Mean == nil {
		return out + " They are too few for a mean."
	}
	out += fmt.Sprintf(" On average %s plants a tray", tenths(*s.Mean))
	if s.Low != nil && s.High != nil {
		out += fmt.Sprintf(", between %s and %s", tenths(*s.Low), tenths(*s.High))
	}
	if p.BreakEvenPlants.Known {
		out += fmt.Sprintf("; it pays from %s", tenths(p.BreakEvenPlants.Value))
	}
	return out + "."
}

// tenths writes a difference in plants: +6.5.
func tenths(v float64) string { return words.Signed(v, 1) }

// times turns a share of cells into plants a tray; missing stays missing.
func times(n rate.Num, by float64) *float64 {
	if !n.Known {
		return nil
	}
	return Num(n.Value * by)
}
