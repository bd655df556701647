package report

import (
	"math"

	"traybook/records"
)

// flips fills the break-even and what would flip the answer, each alone (rules
// 32, 51, 65).
func (p *accounts) flips(back *Payback, pr *pair) {
	extra, _ := p.extraMinutes(pr)
	perUse, otherPerUse := ratio(back.Price, back.Life.Uses), ratio(back.OtherPrice, back.OtherLife.Uses)
	if perUse.Known && otherPerUse.Known {
		dearer := records.Known(perUse.Value - otherPerUse.Value + extra)
		back.BreakEvenPlants = ratio(dearer, back.Value)
		back.FlipValue = flip(dearer, back.Difference.Value*float64(back.Cells))
	}
	if back.Gain.Known && back.Life.Uses.Known {
		life := back.Gain.Value * back.Life.Uses.Value
		if life > 0 {
			back.FlipPrice = records.Known(life)
		}
		back.HalfLifePays = records.Known(back.Price.Value <= life/2)
	}
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

// atPlugPrice is the answer with a bought-in transplant's price as the value of
// all matches; nil where none is written.
func (p *accounts) atPlugPrice(back *Payback, pr *pair) *PlugPrice {
	value := p.r.Book.Settings.PlugPrice
	if !value.Known {
		return nil
	}
	g := p.gain(pr, pr.inMoney(value))
	return &PlugPrice{Value: value, Gain: g.mid, GainLow: g.low, GainHigh: g.high, PaybackUses: ratio(back.Price, g.mid),
		WorthToday: p.worthToday(back.Price, g.mid, back.UsesPerSeason, back.Life.Seasons),
		Verdict:    paysVerdict(back.Price, back.Life.Uses, g)}
}
