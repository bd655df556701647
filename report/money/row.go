package money

import (
	"cmp"
	"slices"

	"traybook/records"
)

// costRow is a row of costs.csv as money: hours times the wage.
type costRow struct {
	*records.Cost
	amount  float64
	largest float64 // of a pile of rows, the largest of their amounts without its sign; else 0
	season  int
	// First and last day of a shared row with a period, both counted (rule
	// "Bills over a period"). start may lie after end: then the row covers nothing.
	start, end records.Date
}

// pricedRows returns the rows that have an amount, in one order whatever the
// order of the file. Hours without a wage are no cost row (rule "Ledger").
func (a *accounts) pricedRows() []*costRow {
	rows, of := make([]*costRow, 0, len(a.book.Costs)), make([]costRow, len(a.book.Costs))
	for i := range a.book.Costs {
		c := &a.book.Costs[i]
		if amount, known := amountOf(c, a.all.Settings.Wage); known {
			of[i] = costRow{Cost: c, amount: amount, season: a.all.Settings.Season(c.Date)}
			rows = append(rows, &of[i])
		}
	}
	slices.SortStableFunc(rows, inOrder)
	return rows
}

// inOrder puts rows by date; every further column keeps sums of rows of one day from
// depending, in their last digit, on the order of the file.
func inOrder(a, b *costRow) int {
	if a.Date != b.Date {
		return cmp.Compare(a.Date, b.Date)
	}
	return cmp.Or(cmp.Compare(a.Category, b.Category), cmp.Compare(a.task(), b.task()),
		cmp.Compare(a.From, b.From), cmp.Compare(a.Until, b.Until), cmp.Compare(a.amount, b.amount),
		cmp.Compare(a.Batch, b.Batch), cmp.Compare(a.Crop, b.Crop), cmp.Compare(a.Tray, b.Tray))
}

func amountOf(c *records.Cost, wage Num) (float64, bool) {
	if c.Amount.Known {
		return c.Amount.Value, true
	}
	return c.Hours.Value * wage.Value, c.Hours.Known && wage.Known
}

// task is the task of labour, care where none is written.
func (c *costRow) task() records.Task {
	if c.Category == records.Labour && c.Task == "" {
		return records.CareTask
	}
	return c.Task
}

// sows reports whether the row is sowing labour.
func (c *costRow) sows() bool { return c.Category == records.Labour && c.task() == records.SowingTask }
