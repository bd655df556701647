package trays

import (
	"math"

	"traybook/records"
	"traybook/report/estimate"
	"traybook/report/rate"
)

// flips fills what would flip the answer (rule "What would flip it"): of the first
// further tray, and where more than one is counted of the last. A tray that would never
// be used has none.
func (s stake) flips(back *Payback, b *Buy, beyond []float64) {
	if len(beyond) == 0 {
		return
	}
	b.First = s.flipsAt(back, beyond[0])
	short := s.termAt(beyond[0])
	short.life /= 2
	b.HalfLifePays = records.Known(s.worth(back.Gain.Value, short) > 0)
	if b.N > 1 {
		b.Last = s.flipsAt(back, beyond[b.N-1])
	}
}

// flipsAt is the value of each thing, all else as it is, at which a tray that is used
// so often a season is worth just its price today:
//
//	gain x uses a season x annuity(life in uses / uses a season) = price
func (s stake) flipsAt(back *Payback, uses float64) Flips {
	gain, price := back.Gain.Value, s.tray.Price.Value
	earned := s.termAt(uses).annuity(s.settings.DiscountRate)
	f := Flips{Price: above0(gain * earned)}
	if f.Price.Value <= s.other.Price.Value { // the two codes would change places
		f.Price = Num{}
	}
	needed := price / earned // a use
	f.Value = s.flipValue(back, needed)
	rest := sum(needed, -s.plants.mid, s.minutes, s.mix) // what the other must cost a use
	f.OtherLife = rate.Ratio(above0(s.other.Price.Value), records.Known(rest))
	if seasons, ok := estimate.AnnuityLife(s.settings.DiscountRate, price/(gain*uses)); ok {
		f.LifeSeasons, f.Life = above0(seasons), above0(seasons*uses)
	}
	return f
}

// flipValue is the one value of a plant, over the matches with a value, at which a use
// gains just what is needed; missing where the plants gained are 0 but for noise.
func (s stake) flipValue(back *Payback, needed float64) Num {
	each, _ := gainedOf(s.inMoney(oneValue(records.Known(1.0))), s.settings.Confidence)
	short := sum(needed, -back.GainTray.Value, s.minutes, s.mix)
	if math.Abs(each.mid) < noise {
		return Num{}
	}
	return above0(short / each.mid)
}

// above0 is a figure that there is none of unless it is above 0.
func above0(x float64) Num {
	if !(x > 0) || math.IsInf(x, 0) {
		return Num{}
	}
	return records.Known(x)
}
