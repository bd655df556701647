package trays

import (
	"traybook/records"
	"traybook/report/estimate"
	"traybook/report/rate"
)

// gained is what the plants of a use are worth over the other's, in money: the mean
// over the matches with a value, and its ends.
type gained struct{ mid, low, high float64 }

// gainedOf is the mean of money and its interval; not ok for fewer than two.
func gainedOf(money []float64, confidence float64) (g gained, ok bool) {
	mean, ok := estimate.PairedMean(money, confidence)
	return gained{mean.Mean, mean.CI.Low, mean.CI.High}, ok
}

// stake is all that a use gains or costs beside the life of the other and the price of
// the tray.
type stake struct {
	*pair
	plants       gained
	minutes, mix float64 // money a use beyond the other's; 0 where left out
}

// gain is what a use gains where the other lasts so many uses (rule "Gain a use"), in
// money, at one end of what the plants are worth or in the middle.
func (s stake) gain(plants, otherUses float64) float64 {
	return sum(s.other.Price.Value/otherUses, plants, -s.minutes, -s.mix)
}

// stakeOf makes the stake of a pair at the value that each match is given; not ok
// where fewer than two have one.
func (pr *pair) stakeOf(back *Payback, valueAt func(Match) Num) (s stake, ok bool) {
	s = stake{pair: pr, minutes: -back.GainMinutes.Or(0), mix: back.MixAUse.Or(0)}
	s.plants, ok = gainedOf(pr.inMoney(valueAt), pr.settings.Confidence)
	return s, ok
}

// extras fills what a use costs beyond the other's in labour and mix, each left out
// where a part of it is not written. perML is the price of a millilitre of mix.
func (pr *pair) extras(back *Payback, perML Num) {
	back.GainMinutes = negative(times(minus(pr.tray.Minutes, pr.other.Minutes), perMinute(pr.settings.Wage)))
	back.MixAUse = times(times(minus(pr.tray.CellML, pr.other.CellML), records.Known(float64(pr.tray.Cells))), perML)
	back.GainMix = negative(back.MixAUse)
	back.MinutesLeftOut, back.MixLeftOut = !back.GainMinutes.Known, !back.MixAUse.Known
}

// perMinute turns a wage an hour into money a minute.
func perMinute(wage Num) Num { return rate.Ratio(wage, records.Known(60.0)) }

// minus and times are missing where either number is; so is the negative of none. A
// negative of 0 is 0, not the -0 of floating point.
func minus(a, b Num) Num {
	if !a.Known || !b.Known {
		return Num{}
	}
	return records.Known(a.Value - b.Value)
}

func times(a, b Num) Num {
	if !a.Known || !b.Known {
		return Num{}
	}
	return records.Known(a.Value * b.Value)
}

func negative(a Num) Num { return minus(records.Known(0.0), a) }

// gains fills the gain of a use and its parts (rule "Gain a use"); none where fewer
// than two matches have a value, or the other's life in uses is unknown.
func (pr *pair) gains(back *Payback) {
	back.GainTray = rate.Ratio(back.OtherPrice, back.OtherLife.Uses)
	s, ok := pr.stakeOf(back, written)
	if !ok {
		return
	}
	back.GainPlants = records.Known(s.plants.mid)
	if life := back.OtherLife.Uses; life.Known {
		back.Gain = records.Known(s.gain(s.plants.mid, life.Value))
		back.GainLow = records.Known(s.gain(s.plants.low, life.Value))
		back.GainHigh = records.Known(s.gain(s.plants.high, life.Value))
	}
}
