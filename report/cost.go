package report

import (
	"cmp"
	"math"

	"traybook/records"
)

// Parts is money by category; the tray charge and cost carried from batch to
// batch stand beside the categories of costs.csv.
type Parts struct {
	Seed, Mix, Labour, Heat, Power, Water, Feed, Equipment, Other float64
	TrayCharge                                                    float64
	Carried                                                       float64
}

// Cost is what a group's batches bear and what a transplant cost (rules 19-27,
// 52, 59, 60). Has tells which categories the book has; the others are missing.
type Cost struct {
	Group
	Batches        int // all of the group: what Parts and Total rest on
	Open           int // of them open
	Rests          int // ended with a figure of usable plants: what the other figures rest on
	Usable         Num
	Parts          Parts
	Behind         Parts // of Parts, what the batches bear that PerTransplant rests on: it adds up to PerTransplant times Usable
	Total          Num
	FailedShare    Num
	PerTransplant  Num
	EstimatedShare Num
}

// LedgerLine is a season's money of a category (rule 26).
type LedgerLine struct {
	Season                 int
	Category               string // of costs.csv, or tray_charge
	Ledger, Borne, Unborne float64
}

// TrayCharge is the ledger's category of the trays' yearly charge.
const TrayCharge = "tray_charge"

// HasCategory tells whether the book has any money of a category (rule 59).
func (r *Report) HasCategory(c records.Category) bool { return r.hasCategory[c] }

// batchCosts totals what each batch bears. Nothing is known where the book has
// no money at all; a transplant's cost rests on ended batches (rule 60).
func (p *accounts) batchCosts() {
	if len(p.has) == 0 {
		return
	}
	for _, b := range p.r.Batches {
		b.Cost = records.Known(b.Parts.Total())
		if b.Ended() {
			b.PerTransplant = ratio(b.Cost, b.usableLeft())
		}
	}
}

// ratio is a over b; missing where either is or b is not above 0.
func ratio(a, b Num) Num {
	if !a.Known || !b.Known || !(b.Value > 0) {
		return Num{}
	}
	return records.Known(a.Value / b.Value)
}

// costTable returns the cost of every group. The columns of money are what all
// its batches bear, so that they add up to what the ledger calls borne (rule 26);
// usable plants, the cost of one and the shares rest on the ended batches with a
// figure of usable plants (rules 27, 60).
func (p *accounts) costTable() []Cost {
	return p.r.CostBy(func(b *Batch) (Group, bool) { return b.Group(), true })
}

// noMoney is what is left of a sum of money by rounding alone, where all of it was
// carried on.
const noMoney = 1e-9

// costSum adds up a group: its usable plants, those of them guessed, and the cost
// behind them; cost of batches whose cells are known, and that of failed cells.
type costSum struct {
	Cost
	usable, guessed, cost  float64
	ofCells, ofCellsFailed float64
}

func (s *costSum) add(b *Batch) {
	s.Parts = s.Parts.plus(b.Parts)
	s.Batches++
	if !b.Ended() {
		s.Open++
		return
	}
	usable := b.usableLeft()
	if !usable.Known {
		return
	}
	cost := b.Parts.Total()
	s.Behind = s.Behind.plus(b.Parts)
	s.Rests++
	s.usable += usable.Value
	s.cost += cost
	if !b.Measured() {
		s.guessed += usable.Value
	}
	if cells := b.CellsSown.Or(0); cells > 0 {
		s.ofCells += cost
		s.ofCellsFailed += cost * (1 - usable.Value/float64(cells))
	}
}

func (s *costSum) close(money bool) Cost {
	c := s.Cost
	if s.Rests > 0 {
		c.Usable = records.Known(s.usable)
		c.EstimatedShare = ratio(records.Known(s.guessed), c.Usable)
	}
	if !money {
		return c
	}
	c.Total = records.Known(c.Parts.Total())
	c.PerTransplant = ratio(records.Known(s.cost), c.Usable)
	if math.Abs(s.ofCells) > noMoney {
		c.FailedShare = records.Known(s.ofCellsFailed / s.ofCells)
	}
	return c
}

// groupOrder sorts groups by their key columns; unknown cells come first.
func groupOrder(a, b Group) int {
	return cmp.Or(cmp.Compare(a.Season, b.Season), cmp.Compare(a.Crop, b.Crop), cmp.Compare(a.Variety, b.Variety),
		cmp.Compare(a.Cells.Or(-1), b.Cells.Or(-1)), cmp.Compare(a.Kind, b.Kind))
}
