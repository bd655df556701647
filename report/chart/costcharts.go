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
// dearest first. A crop whose credits outweigh a part is left to the table.
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
		if row, ok := costRow(r, s); ok {
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

func costRow(r *report.Report, s report.Cost) (StackRow, bool) {
	if !s.PerTransplant.Known {
		return StackRow{}, false
	}
	row := StackRow{Name: s.Crop, Note: fmt.Sprintf("%.3f, %s", s.PerTransplant.Value, batches(s.Rests))}
	for _, p := range costParts {
		part := p.of(s.Behind) / s.Usable.Value
		if part < -1e-9 {
			return StackRow{}, false
		}
		row.Parts = append(row.Parts, Num(max(0, part)))
	}
	return row, true
}
