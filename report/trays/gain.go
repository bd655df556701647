package trays

import (
	"traybook/records"
	"traybook/report/estimate"
	"traybook/report/rate"
)

// gains is what one use of the dearer tray gains over the other, in money: its three
// parts, the middle and its two ends. The ends are missing where one match alone has
// a value.
type gains struct{ tray, plants, minutes, mid, low, high Num }

// gain computes a use's gain (rule "Gain a use") over the plants gained at each match,
// in money: it is missing where there is none, or the other's life in uses is unknown.
func (pr *pair) gain(otherUses Num, money []float64) gains {
	extra, minutes := pr.extraMinutes()
	mean, ends := meanOf(money, pr.settings.Confidence)
	g := gains{tray: rate.Ratio(pr.other.Price, otherUses), plants: mean, minutes: minutes}
	if !g.tray.Known || !mean.Known {
		return g
	}
	rest := g.tray.Value - extra
	g.mid = records.Known(rest + mean.Value)
	if ends != nil {
		g.low, g.high = records.Known(rest+ends.Low), records.Known(rest+ends.High)
	}
	return g
}

// meanOf is the mean and, of two or more, its interval.
func meanOf(xs []float64, confidence float64) (Num, *estimate.Interval) {
	if len(xs) == 0 {
		return Num{}, nil
	}
	if paired, ok := estimate.PairedMean(xs, confidence); ok {
		return records.Known(paired.Mean), &paired.CI
	}
	total := 0.0
	for _, x := range xs {
		total += x
	}
	return records.Known(total / float64(len(xs))), nil
}

// extraMinutes is the money that a use of the tray takes in labour beyond the
// other's, and the same as a part of gain; 0 and missing where either code's
// minutes or the wage is not written.
func (pr *pair) extraMinutes() (extra float64, part Num) {
	wage := pr.settings.Wage
	if !wage.Known || !pr.tray.Minutes.Known || !pr.other.Minutes.Known {
		return 0, Num{}
	}
	extra = (pr.tray.Minutes.Value - pr.other.Minutes.Value) * wage.Value / 60
	return extra, records.Known(-extra)
}

// worthToday is -price + gain x uses a season x the annuity of the life in seasons
// (rule "The average tray").
func (pr *pair) worthToday(gain, uses, seasons Num) Num {
	price := pr.tray.Price
	if !price.Known || !gain.Known || !uses.Known || !seasons.Known {
		return Num{}
	}
	return records.Known(-price.Value + gain.Value*uses.Value*estimate.Annuity(pr.settings.DiscountRate, seasons.Value))
}
