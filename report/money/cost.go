package money

import (
	"traybook/records"
	"traybook/report/rate"
)

// batchCosts totals what each batch bears. Nothing is known where the book has
// no money at all; a transplant's cost rests on ended batches (rule
// "Cost of a transplant").
func (a *accounts) batchCosts() {
	if len(a.has) == 0 {
		return
	}
	for _, b := range a.borne {
		b.Cost = records.Known(b.Parts.Total()) // the tables take it from here
		if b.Ended() {
			b.PerTransplant = rate.Ratio(b.Cost, b.UsableLeft())
		}
	}
}

// costSum adds up a group. Of a book without money a batch's cost, and its parts, are 0.
type costSum struct {
	Cost
	all, behind     partsTally
	cost, cells     tally   // of batches whose cells are known, and those cells
	usable, guessed float64 // plants behind the cost of one, and those of them not measured
	ended, failed   tally   // cost behind it where cells are known, and its part in cells that failed
}

// add adds a batch. All of them bear money; what a transplant cost rests on those
// that ended with a figure of usable plants.
func (s *costSum) add(b *Borne) {
	s.all.add(&b.Parts)
	s.Batches++
	if b.CellsSown.Known {
		s.cost.add(b.Cost.Value)
		s.cells.add(float64(b.CellsSown.Value))
	}
	switch {
	case !b.Ended():
		s.Open++
	case b.Usable.Known:
		s.rest(b)
	}
}

// rest lets the cost of a transplant rest on a batch. Plants that were potted on are
// none of its transplants, but their cells did not fail.
func (s *costSum) rest(b *Borne) {
	s.behind.add(&b.Parts)
	s.Rests++
	left := b.UsableLeft().Value
	s.usable += left
	if !b.Measured() {
		s.guessed += left
	}
	if cells := b.CellsSown.Or(0); cells > 0 {
		s.ended.add(b.Cost.Value)
		s.failed.add(b.Cost.Value * (1 - b.Usable.Value/float64(cells)))
	}
}

// close returns the group's row; without any money in the book, of plants alone.
func (s *costSum) close(money bool) Cost {
	c := s.Cost
	c.Parts, c.Behind = s.all.parts(), s.behind.parts()
	if s.Rests > 0 {
		c.Usable = records.Known(s.usable)
		c.EstimatedShare = rate.Ratio(records.Known(s.guessed), c.Usable)
	}
	if !money {
		return c
	}
	c.Total = records.Known(c.Parts.Total())
	c.PerTransplant = rate.Ratio(records.Known(c.Behind.Total()), c.Usable)
	c.PerCell = rate.Ratio(records.Known(s.cost.value()), records.Known(s.cells.value()))
	if cost := s.ended.value(); cost != 0 {
		c.FailedShare = records.Known(s.failed.value() / cost)
	}
	return c
}
