package trays

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/rate"
)

// decide returns the use of each tray beyond those owned and what it would be worth,
// and how many more to buy (rules "The next tray", "How many to buy"). It sorts the
// uses of the trays beyond those owned, most first.
func (pr *pair) decide(back *Payback, r replayed, b *batch.Batches) ([]NextTray, Decision) {
	d := Decision{Tray: back.Tray, Other: back.Other, Owned: pr.tray.OwnedOn(b.Today), Why: whyNoGain(back)}
	if !d.Owned.Known {
		d.Why = NoOwned
		return nil, d
	}
	beyond := r.beyond(d.Owned.Value)
	next := pr.nextTrays(back, d.Owned.Value, beyond)
	if !back.Gain.Known {
		return next, d
	}
	d.Buy = pr.buy(back, beyond)
	d.Buy.Owned, d.Buy.PeakInUse, d.Buy.Seasons = d.Owned.Value, len(r.uses), r.seasons
	d.Buy.mark(next)
	return next, d
}

// beyond is the uses of the trays beyond those owned, sorted in place, most first.
func (r replayed) beyond(owned int) []float64 {
	beyond := r.uses[min(owned, len(r.uses)):]
	slices.SortFunc(beyond, func(a, b float64) int { return cmp.Compare(b, a) })
	return beyond
}

// nextTrays are the trays beyond those owned; without a gain their uses alone.
func (pr *pair) nextTrays(back *Payback, owned int, beyond []float64) []NextTray {
	var next []NextTray
	for i, uses := range beyond {
		n := NextTray{Tray: back.Tray, Other: back.Other, Nth: owned + i + 1, Owned: owned, Uses: uses,
			PaybackSeasons: rate.Ratio(back.PaybackUses, records.Known(uses))}
		if back.Gain.Known {
			n.WorthToday = records.Known(pr.worthOfNext(back.Gain.Value, uses))
		}
		next = append(next, n)
	}
	return next
}

// termAt is the term of a tray that is used so often a season (rule "Life in a pair").
func (pr *pair) termAt(uses float64) term {
	return term{uses, lifeAt(pr.tray, records.Known(uses)).Uses.Value}
}

// worthOfNext is the worth today of a tray held so many times a season.
func (pr *pair) worthOfNext(gain, uses float64) float64 {
	return pr.worth(gain, pr.termAt(uses))
}

// mark says which trays pay: each of the three numbers, up to its own end.
func (b *Buy) mark(next []NextTray) {
	for i := range next {
		further := i + 1
		next[i].Pays = records.Known(further <= b.N)
		next[i].PaysLow, next[i].PaysHigh = records.Known(further <= b.Low), records.Known(further <= b.High)
	}
}
