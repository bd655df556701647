package chart

import (
	"cmp"
	"fmt"
	"slices"

	"traybook/report"
)

// costParts are the pieces of a transplant's cost that the chart tells apart.
var costParts = []struct {
	name string
	of   func(report.Parts) float64
}{
	{"seed", func(p report.Parts) float64 { return p.Seed }},
	{"mix", func(p report.Parts) float64 { return p.Mix }},
	{"labour", func(p report.Parts) float64 { return p.Labour }},
	{"heat", func(p report.Parts) float64 { return p.Heat }},
	{"trays", func(p report.Parts) float64 { return p.TrayCharge }},
	{"everything else", func(p report.Parts) float64 {
		return p.Power + p.Water + p.Feed + p.Equipment + p.Other + p.Carried
	}},
}

// costs shows what a usable transplant of each crop cost and of what, the
// dearest first.
func costs(r *report.Report, year int) []Spec {
	crops := r.CostBy(func(b *report.Batch) (report.Group, bool) {
		return report.Group{Season: year, Crop: b.Crop}, b.Season == year
	})
	slices.SortStableFunc(crops, func(a, b report.Cost) int {
		return cmp.Compare(b.PerTransplant.Value, a.PerTransplant.Value)
	})
	var names []string
	for _, p := range costParts {
		names = append(names, p.name)
	}
	var rows []StackRow
	for _, s := range crops {
		if row, ok := costRow(s); ok {
			rows = append(rows, row)
		}
	}
	if len(rows) == 0 {
		return nil
	}
	h := Head{Name: season("costs", year), Title: shown(fmt.Sprintf("Cost of a usable transplant by crop, %d", year), len(rows), "dearest")}
	axis := Axis{Name: "cost of a usable transplant", Unit: r.Book.Settings.Currency}
	return []Spec{StackedBars(h, rows[:min(len(rows), mostRows)], names, axis)}
}

// costRow is a crop's bar. What was potted on took its share of every part along
// (rule 25): the parts of what stayed are as much smaller, so that they add up to
// the cost. A crop with a credit larger than the rest of its part has its number
// and no bar.
func costRow(s report.Cost) (StackRow, bool) {
	if !s.PerTransplant.Known {
		return StackRow{}, false
	}
	row := StackRow{Name: s.Crop, Note: fmt.Sprintf("%.3f, %s", s.PerTransplant.Value, batches(s.Rests))}
	behind := s.Behind
	if behind.Carried < 0 {
		behind = stayed(behind)
		row.Name += ", after potting on"
	}
	var parts []*float64
	for _, p := range costParts {
		part := p.of(behind) / s.Usable.Value
		if part < -1e-9 {
			row.Note += ", a credit: no bar"
			return row, true
		}
		parts = append(parts, Num(max(0, part)))
	}
	row.Parts = parts
	return row, true
}

// stayed takes from every part the same share of what was handed on.
func stayed(p report.Parts) report.Parts {
	total := p.Total()
	if !(total-p.Carried > 0) {
		return p
	}
	share := total / (total - p.Carried)
	return report.Parts{
		Seed: share * p.Seed, Mix: share * p.Mix, Labour: share * p.Labour, Heat: share * p.Heat, Power: share * p.Power, Water: share * p.Water,
		Feed: share * p.Feed, Equipment: share * p.Equipment, Other: share * p.Other, TrayCharge: share * p.TrayCharge,
	}
}
