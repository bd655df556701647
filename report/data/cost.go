package data

import (
	"traybook/records"
	"traybook/report"
)

// parts are the cost columns between usable and total, in the contract's order.
var parts = []struct {
	category records.Category
	of       func(report.Parts) float64
}{
	{records.Seed, func(p report.Parts) float64 { return p.Seed }},
	{records.Mix, func(p report.Parts) float64 { return p.Mix }},
	{records.Labour, func(p report.Parts) float64 { return p.Labour }},
	{records.Heat, func(p report.Parts) float64 { return p.Heat }},
	{records.Power, func(p report.Parts) float64 { return p.Power }},
	{records.Water, func(p report.Parts) float64 { return p.Water }},
	{records.Feed, func(p report.Parts) float64 { return p.Feed }},
	{records.Equipment, func(p report.Parts) float64 { return p.Equipment }},
	{records.Other, func(p report.Parts) float64 { return p.Other }},
	{report.TrayCharge, func(p report.Parts) float64 { return p.TrayCharge }},
}

func cost(r *report.Report) File {
	type row = report.Cost
	columns := join(groupColumns(func(c row) report.Group { return c.Group }),
		[]column[row]{
			{"batches", func(c row) Cell { return num(c.Batches) }},
			{"usable", func(c row) Cell { return maybe(c.Usable) }},
		})
	for _, p := range parts {
		known := r.HasCategory(p.category)
		columns = append(columns, column[row]{string(p.category), func(c row) Cell { return maybe(only(known, p.of(c.Parts))) }})
	}
	return table("cost", 5, r.Cost, append(columns,
		column[row]{"carried", func(c row) Cell { return maybe(only(c.Total.Known, c.Parts.Carried)) }},
		column[row]{"total", func(c row) Cell { return maybe(c.Total) }},
		column[row]{"failed_share", func(c row) Cell { return maybe(c.FailedShare) }},
		column[row]{"per_transplant", func(c row) Cell { return maybe(c.PerTransplant) }},
		column[row]{"estimated_share", func(c row) Cell { return maybe(c.EstimatedShare) }},
	)...)
}

func ledger(r *report.Report) File {
	type row = report.LedgerLine
	return table("ledger", 2, r.Ledger,
		column[row]{"season", func(l row) Cell { return num(l.Season) }},
		column[row]{"category", func(l row) Cell { return str(l.Category) }},
		column[row]{"ledger", func(l row) Cell { return num(l.Ledger) }},
		column[row]{"borne", func(l row) Cell { return num(l.Borne) }},
		column[row]{"unborne", func(l row) Cell { return num(l.Unborne) }},
	)
}
