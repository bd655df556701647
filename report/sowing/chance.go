package sowing

import (
	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
	"traybook/report/plants"
	"traybook/report/rate"
)

// maxCellsPerPlant is up to how many cells a plant wanted one sowing is told for; a
// choice of ours.
const maxCellsPerPlant = 3

// Cells returns the smallest number of cells that give target plants with the chance
// sure, a share of 1, where each does with rate and cells are alike with correlation rho:
// columns rate_used and rho, the doubt about the rate in it. ok is false where more than
// three cells a plant would be needed (rule "How much to sow"). A target of 0 takes none.
func Cells(rate, rho float64, target int, sure float64) (n int, ok bool) {
	n = estimate.SmallestSowing(target, maxCellsPerPlant*target, rate, rho, sure)
	return n, n >= 0
}

// Chance is what a next sowing may count on: the usable rate of batches before it, with
// its interval, and how far a sowing may stray from it. RateUsed and Rho are missing
// where the book has too few batches to tell.
type Chance struct {
	Rate     rate.Rate // usable of cells sown; its Rho and DF are those of the scatter alone
	RateUsed Num       // held off 0 and 1 by half a plant
	Rho      Num       // scatter and the rate's own doubt together
}

// chanceOf pools batches of a crop (rule "How much to sow").
func chanceOf(of []*plants.Plants, scatter rate.Scatter, crop string) Chance {
	c := Chance{Rate: scatter.Rate(crop, rate.Counts(of, usableCount))}
	spread, ok := scatter.Of(crop)
	if !ok || !c.Rate.Share.Known {
		return c
	}
	doubt := estimate.DesignEffect(cellsBySeason(of), spread.Rho) / c.Rate.N
	c.RateUsed = records.Known((c.Rate.X + 0.5) / (c.Rate.N + 1))
	c.Rho = records.Known(spread.Rho + (1-spread.Rho)*doubt)
	return c
}

// cellsBySeason adds up the cells sown of each season: one season's weather touches
// all its batches.
func cellsBySeason(of []*plants.Plants) []float64 {
	var cells []float64
	for season := range batch.SplitBy(of, (*plants.Plants).SeasonRank).Met() {
		cells = append(cells, rate.Pool(rate.Counts(season, usableCount)).N)
	}
	return cells
}

// cells is how many to sow for so many plants; missing where that cannot be told or
// would be too many.
func (c Chance) cells(target int, sure float64) Whole {
	if !c.Rho.Known {
		return Whole{}
	}
	n, ok := Cells(c.RateUsed.Value, c.Rho.Value, target, sure)
	if !ok {
		return Whole{}
	}
	return records.Known(n)
}

// fails is the chance that so many cells give fewer plants than wanted.
func (c Chance) fails(cells, wanted int) Num {
	if !c.Rho.Known {
		return Num{}
	}
	return records.Known(1 - estimate.BetaBinomialAtLeast(wanted, cells, c.RateUsed.Value, c.Rho.Value))
}

// Gap says why there is no number of cells; empty: there is one.
type Gap string

// The reasons.
const (
	FewBatches Gap = "fewer than 3 batches"
	NoScatter  Gap = "too few batches in the whole book"
	NotSure    Gap = "no one sowing of up to three cells a plant is that sure"
)

// Gap says why a number of cells that rests on the chance is missing.
func (c Chance) Gap(cells Whole) Gap {
	switch {
	case cells.Known:
		return ""
	case c.Rate.Few():
		return FewBatches
	case !c.Rho.Known:
		return NoScatter
	}
	return NotSure
}
