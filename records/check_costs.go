package records

import "fmt"

// checkCostForms reports costs that are not either money or hours. Only labour has a
// wage to price hours with.
func (l *loader) checkCostForms() {
	for e := range alive(l.costs) {
		amount, hours := e.is.Amount.Known, e.is.Hours.Known
		const expected = "exactly one of amount and hours is expected"
		switch {
		case amount && hours:
			e.problem("amount-or-hours", "hours", "both amount and hours are written", expected, "write a row for each")
		case !amount && !hours:
			e.problem("amount-or-hours", "amount", "neither amount nor hours is written", expected, "")
		case hours && e.is.Category != Labour:
			e.problem("amount-or-hours", "hours", "hours of the category "+quote(string(e.is.Category)), "hours of labour are expected",
				"write labour, or an amount")
		}
	}
}

// checkPeriods reports periods of costs and changes that end before they begin; a blank
// until of a cost is the day of the bill.
func (l *loader) checkPeriods() {
	for e := range alive(l.costs) {
		until := e.is.Until
		if !until.Known() {
			until = e.is.Date
		}
		if e.is.From.Known() && e.is.From > until {
			e.problem("from-after-until", "from", fmt.Sprintf("from %s is after %s", e.is.From, until), "a period that begins before it ends is expected",
				"where until is blank the period ends on date")
		}
	}
	l.checkChanges()
}

// checkChanges reports changes that end before they begin.
func (l *loader) checkChanges() {
	for e := range alive(l.changes) {
		if e.is.Until.Known() && e.is.Until < e.is.Date {
			e.problem("from-after-until", "until", fmt.Sprintf("until %s is before %s", e.is.Until, e.is.Date), "a period that begins before it ends is expected", "")
		}
	}
}

// checkWage warns once of hours that no wage turns into money.
func (l *loader) checkWage() {
	if l.settings.Wage.Known {
		return
	}
	n, first := 0, row{}
	for e := range alive(l.costs) {
		if e.is.Hours.Known {
			if n++; n == 1 {
				first = e.row
			}
		}
	}
	if n > 0 {
		first.problem("no-wage", "hours", plural(n, "row")+" of hours and no wage", "a wage in book.csv is expected", "until then hours are shown, not priced")
	}
}

// checkTasks warns of a task beside what is no labour; it is not used.
func (l *loader) checkTasks() {
	for e := range alive(l.costs) {
		if e.is.Category != Labour && e.text("task") != "" {
			e.problem("task", "task", "a task of the category "+quote(string(e.is.Category)), "a task of labour is expected", "the task is not used")
		}
	}
}

// checkRepeats leaves out costs that stand in trays.csv or lots.csv already
// (rule "Repeats").
func (l *loader) checkRepeats() {
	for e := range alive(l.costs) {
		if !e.is.Amount.Known {
			continue
		}
		if twin := l.twin(e.is); twin.log != nil {
			e.problem("repeats", "amount", quote(e.text("amount"))+" repeats "+twin.line().pos().File+", "+twin.inWords(),
				"trays in trays.csv and seed lots in lots.csv alone are expected", "the row is left out: delete it")
			e.leaveOut()
		}
	}
}

// twin is the purchase or the lot that a cost repeats.
func (l *loader) twin(c *Cost) row {
	switch c.Category {
	case Seed:
		for e := range alive(l.lots) {
			if repeatsLot(c, e.is, l.batch(c.Batch)) {
				return e.row
			}
		}
	case Equipment, Other:
		for e := range alive(l.trays) {
			if repeatsPurchase(c, e.is) {
				return e.row
			}
		}
	}
	return row{}
}

// repeatsLot reports whether a cost of seed is the price of a lot once more; of is the
// row of the batch that the cost names, if any.
func repeatsLot(c *Cost, lot *Lot, of *entry[Sowing]) bool {
	return lot.Price.Known && lot.Bought == c.Date && sameCents(lot.Price.Value, c.Amount.Value) &&
		(c.Crop == "" || c.Crop == lot.Crop) && (c.Batch == "" || of != nil && of.is.Lot == lot.Code)
}

// repeatsPurchase reports whether a cost is a purchase of trays once more.
func repeatsPurchase(c *Cost, p *Purchase) bool {
	return p.Price.Known && p.Count.Known && p.Bought == c.Date && sameCents(float64(p.Count.Value)*p.Price.Value, c.Amount.Value) &&
		(c.Tray == "" || c.Tray == p.Tray)
}

// sameCents reports whether two amounts are the same to the cent.
func sameCents(a, b float64) bool { return RoundHalfUp(a*100) == RoundHalfUp(b*100) }
