package money

import (
	"math"

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
		b.Cost = records.Known(b.Parts.Total())
		if b.Ended() {
			b.PerTransplant = rate.Ratio(b.Cost, b.usableLeft())
		}
	}
}

// noMoney is what is left of a sum of money by rounding alone, where all of it was
// carried on (rule "Missing").
const noMoney = 1e-9

// costSum adds up a group: its usable plants, those of them guessed, and the cost
// behind them; cost of batches whose cells are known, and that of failed cells.
type costSum struct {
	Cost
	usable, guessed, cost  float64
	ofCells, ofCellsFailed float64
}

// add adds a batch. All of them bear money; what a transplant cost rests on those
// that ended with a figure of usable plants.
func (s *costSum) add(b *Borne) {
	s.Parts = s.Parts.plus(b.Parts)
	s.Batches++
	if !b.Ended() {
		s.Open++
		return
	}
	if usable := b.usableLeft(); usable.Known {
		s.rest(b, usable.Value)
	}
}

// rest lets the cost of a transplant rest on a batch.
func (s *costSum) rest(b *Borne, usable float64) {
	cost := b.Parts.Total()
	s.Behind = s.Behind.plus(b.Parts)
	s.Rests++
	s.usable += usable
	s.cost += cost
	if !b.Measured() {
		s.guessed += usable
	}
	if cells := b.CellsSown.Or(0); cells > 0 {
		s.ofCells += cost
		s.ofCellsFailed += cost * (1 - usable/float64(cells))
	}
}

// close returns the group's row; without any money in the book, of plants alone.
func (s *costSum) close(money bool) Cost {
	c := s.Cost
	if s.Rests > 0 {
		c.Usable = records.Known(s.usable)
		c.EstimatedShare = rate.Ratio(records.Known(s.guessed), c.Usable)
	}
	if !money {
		return c
	}
	c.Total = records.Known(c.Parts.Total())
	c.PerTransplant = rate.Ratio(records.Known(s.cost), c.Usable)
	if math.Abs(s.ofCells) > noMoney {
		c.FailedShare = records.Known(s.ofCellsFailed / s.ofCells)
	}
	return c
}
