package trays

import (
	"math"

	"traybook/records"
	"traybook/report/rate"
)

// flips fills the break-even and what would flip the answer, each alone (rules
// "Break-even", "What would flip it").
func (pr *pair) flips(back *Payback) {
	if dearer := pr.dearerBy(back); dearer.Known {
		back.BreakEvenPlants = rate.Ratio(dearer, back.Value)
		back.FlipValue = flip(dearer, back.Difference.Value*float64(back.Cells))
	}
	if !back.Gain.Known || !back.Life.Uses.Known {
		return
	}
	life := back.Gain.Value * back.Life.Uses.Value
	if life > 0 {
		back.FlipPrice = records.Known(life)
	}
	back.HalfLifePays = records.Known(back.Price.Value <= life/2)
}

// dearerBy is what a use of the tray costs more than one of the other, in money,
// whatever plants it gives; missing where either life in uses is.
func (pr *pair) dearerBy(back *Payback) Num {
	extra, _ := pr.extraMinutes()
	perUse, otherPerUse := rate.Ratio(back.Price, back.Life.Uses), rate.Ratio(back.OtherPrice, back.OtherLife.Uses)
	if !perUse.Known || !otherPerUse.Known {
		return Num{}
	}
	return records.Known(perUse.Value - otherPerUse.Value + extra)
}

// noPlants is what differences that cancel out may leave by rounding alone.
const noPlants = 1e-9

// flip is money over plants, either of which may be below 0; missing unless the
// result is above 0.
func flip(money Num, plants float64) Num {
	if !money.Known || math.Abs(plants) < noPlants || money.Value/plants <= 0 {
		return Num{}
	}
	return records.Known(money.Value / plants)
}
