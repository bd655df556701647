package data

import (
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/money"
)

// cost is what the batches of a group bear and what a transplant cost (rule "Cost of a
// transplant"). It has a column for each category, in the order of the ledger, empty where
// the book has no money of it: what is not written is not 0. carried is what came over
// with plants potted on from another group, below 0 where it went on with them. Categories
// and carried add up to total. failed_share is a share of 1 of the money, not of the
// plants; estimated_share one of the plants.
func cost(r *report.Report) File {
	type row = money.Cost
	columns := join(groupColumns(func(c row) batch.Group { return c.Group }),
		[]column[row]{
			{"batches", func(c row) Cell { return num(c.Batches) }},
			{"usable", func(c row) Cell { return maybe(c.Usable) }},
		})
	for _, category := range money.Categories {
		known := r.Money.Has[category]
		columns = append(columns, column[row]{string(category), func(c row) Cell { return maybe(only(known, c.Parts.Of(category))) }})
	}
	return table("cost", 5, r.Money.Cost, append(columns,
		column[row]{"carried", func(c row) Cell { return maybe(only(c.Total.Known, c.Parts.Carried)) }},
		column[row]{"total", func(c row) Cell { return maybe(c.Total) }},
		column[row]{"failed_share", func(c row) Cell { return maybe(c.FailedShare) }},
		column[row]{"per_transplant", func(c row) Cell { return maybe(c.PerTransplant) }},
		column[row]{"estimated_share", func(c row) Cell { return maybe(c.EstimatedShare) }},
		column[row]{"per_cell", func(c row) Cell { return maybe(c.PerCell) }},
	)...)
}

// ledger sets the money written beside what batches bear of it (rule "Ledger"): ledger =
// borne + unborne, line by line. Money is in the book's currency. The trays' yearly charge
// is a line like the others, though nobody sends a bill for it. unborne is what no batch
// could bear: heat for an empty house, trays that lay idle.
func ledger(r *report.Report) File {
	type row = money.LedgerLine
	return table("ledger", 2, r.Money.Ledger,
		column[row]{"season", func(l row) Cell { return num(l.Season) }},
		column[row]{"category", func(l row) Cell { return str(l.Category) }},
		column[row]{"ledger", func(l row) Cell { return num(l.Ledger) }},
		column[row]{"borne", func(l row) Cell { return num(l.Borne) }},
		column[row]{"unborne", func(l row) Cell { return num(l.Unborne) }},
	)
}
