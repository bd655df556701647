package report

import (
	"traybook/records"
	"traybook/report/estimate"
)

// pairs computes what hangs on two codes side by side: rules 28-33, 35.
func (p *accounts) pairs() {
	values := p.plantValues()
	p.r.plantValue = values
	stays := p.r.stays(1, nil)
	for _, pr := range pairsOf(p.codes) {
		pr.match(p.r.Batches, values)
		back := p.payback(pr)
		replay := p.replay(pr, stays)
		next, buy := p.nextTrays(&back, pr, replay)
		back.Buy, back.Uses = buy, replay.uses
		p.r.Payback = append(p.r.Payback, back)
		p.r.Matches = append(p.r.Matches, pr.matches...)
		p.r.NextTray = append(p.r.NextTray, next...)
		p.r.Trial = append(p.r.Trial, p.trials(pr)...)
	}
}

// TwinPaysMiddle and TwinPaysLow are what chance alone says of a tray that is
// the twin of the other in all but name and costs just what it saves: the shares
// of books in which it is said to pay in the middle or better, and even at the
// low end of a 95 % interval. Both were met in 1,000 simulated books of eight
// matched sowings (0.50 and 0.03).
const (
	TwinPaysMiddle = 0.5
	TwinPaysLow    = 0.025
)

// gains is what one use of the dearer tray gains over the other: the middle and
// its two ends; the ends are missing where one match alone has a value.
type gains struct{ tray, plants, minutes, mid, low, high Num }

// gain computes rule 31 over the plants gained at each match, in money: it is
// missing where there is none, or the other's life in uses is unknown.
func (p *accounts) gain(pr *pair, money []float64) gains {
	other := pr.other
	g := gains{tray: ratio(other.price, other.life.Uses)}
	extra, minutes := p.extraMinutes(pr)
	g.minutes = minutes
	mean, ends := meanOf(money, p.r.Book.Settings.Confidence)
	g.plants = mean
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
func meanOf(xs []float64, conf float64) (Num, *estimate.Interval) {
	if len(xs) == 0 {
		return Num{}, nil
	}
	if paired, ok := estimate.PairedMean(xs, conf); ok {
		return records.Known(paired.Mean), &paired.CI
	}
	return records.Known(sum(xs) / float64(len(xs))), nil
}

// extraMinutes is the money that a use of the tray takes in labour beyond the
// other's, and the same as a part of gain; 0 and missing where either code's
// minutes or the wage is not written (rule 51).
func (p *accounts) extraMinutes(pr *pair) (extra float64, part Num) {
	wage := p.r.Book.Settings.Wage
	if !wage.Known || !pr.tray.minutes.Known || !pr.other.minutes.Known {
		return 0, Num{}
	}
	extra = (pr.tray.minutes.Value - pr.other.minutes.Value) * wage.Value / 60
	return extra, records.Known(-extra)
}

// inMoney returns d x cells x value of the matches: at their own values, leaving
// out matches without one, or at a value given for all.
func (pr *pair) inMoney(value Num) []float64 {
	var money []float64
	for _, m := range pr.matches {
		v := m.Value
		if value.Known {
			v = value
		}
		if v.Known {
			money = append(money, m.Difference*float64(pr.tray.cells)*v.Value)
		}
	}
	return money
}

// worthToday is -price + gain x uses a season x the annuity of the life (rule 31).
func (p *accounts) worthToday(price, gain, uses, seasons Num) Num {
	if !price.Known || !gain.Known || !uses.Known || !seasons.Known {
		return Num{}
	}
	return records.Known(-price.Value + gain.Value*uses.Value*estimate.Annuity(p.r.Book.Settings.DiscountRate, seasons.Value))
}

// paysVerdict compares the price with what a life gains at the low end, in the
// middle and at the high end (rule 31); empty where one is missing.
func paysVerdict(price, uses Num, g gains) PaysVerdict {
	if !price.Known || !uses.Known || !g.low.Known {
		return ""
	}
	for _, at := range []struct {
		gain    Num
		verdict PaysVerdict
	}{{g.low, PaysLow}, {g.mid, PaysMiddle}, {g.high, PaysHigh}} {
		if price.Value <= at.gain.Value*uses.Value {
			return at.verdict
		}
	}
	return PaysNever
}
