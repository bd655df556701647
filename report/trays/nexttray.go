package trays

import (
	"traybook/records"
	"traybook/report/money"
	"traybook/report/rate"
)

// nextTrays returns the use of each tray beyond those owned and what it would be
// worth, and how many more to buy: nil where that cannot be told (rules "The next
// tray", "How many to buy").
func (pr *pair) nextTrays(back *Payback, r replayed, owned int) ([]NextTray, *Buy) {
	var next []NextTray
	for i := owned; i < len(r.uses); i++ {
		uses := r.uses[i]
		next = append(next, NextTray{Tray: back.Tray, Other: back.Other, Nth: i + 1, Owned: owned, Uses: uses,
			WorthToday:     pr.worthOfNth(back.Gain, uses),
			PaybackSeasons: rate.Ratio(back.PaybackUses, records.Known(uses))})
	}
	if !back.Gain.Known {
		return next, nil
	}
	n := pr.buyUpTo(back.Gain, owned, r.uses)
	setPays(next, n, func(t *NextTray) *records.Maybe[bool] { return &t.Pays })
	if !back.GainLow.Known {
		return next, nil
	}
	low, high := pr.buyUpTo(back.GainLow, owned, r.uses), pr.buyUpTo(back.GainHigh, owned, r.uses)
	setPays(next, low, func(t *NextTray) *records.Maybe[bool] { return &t.PaysLow })
	setPays(next, high, func(t *NextTray) *records.Maybe[bool] { return &t.PaysHigh })
	return next, &Buy{Owned: owned, N: n - owned, Low: low - owned, High: high - owned, PeakInUse: len(r.uses), Seasons: r.seasons}
}

// worthOfNth is the worth today of a tray held so many times a season, with the
// life it then has (rule "Life in a pair").
func (pr *pair) worthOfNth(gain Num, uses float64) Num {
	often := records.Known(uses)
	return pr.worthToday(gain, often, money.LifeAt(pr.tray, often).Seasons)
}

// buyUpTo is the number of the tray at which the running sum of worth today of
// those beyond the owned is greatest and above 0; owned where none is. uses are
// those of trays 1, 2, ... a season.
func (pr *pair) buyUpTo(gain Num, owned int, uses []float64) int {
	best, most, running := owned, 0.0, 0.0
	for i := owned; i < len(uses); i++ {
		running += pr.worthOfNth(gain, uses[i]).Value
		if running > most {
			best, most = i+1, running
		}
	}
	return best
}

// setPays marks the trays: yes up to number n.
func setPays(next []NextTray, n int, pays func(*NextTray) *records.Maybe[bool]) {
	for i := range next {
		*pays(&next[i]) = records.Known(next[i].Nth <= n)
	}
}
