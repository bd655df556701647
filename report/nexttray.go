package report

import (
	"cmp"
	"math"
	"slices"

	"traybook/records"
	"traybook/report/estimate"
)

// replayed is the uses of trays 1, 2, ... of a pair, a season (rules 33, 66).
type replayed struct {
	seasons []int
	uses    []float64
}

// replay hands trays of a pair's two codes, numbered on one row and anew each
// season, to the needs of the last three seasons in which either was sown.
func (p *accounts) replay(pr *pair, stays []stay) replayed {
	needs := map[int][]dayNeed{}
	for _, n := range p.dayNeeds(pr, stays) {
		needs[n.season] = append(needs[n.season], n)
	}
	seasons := last(sortedKeys(needs), lastSeasons)
	r := replayed{seasons: seasons}
	for _, season := range seasons {
		for i, held := range estimate.Replay(eachTray(needs[season])) {
			if i == len(r.uses) {
				r.uses = append(r.uses, 0)
			}
			r.uses[i] += float64(held) / float64(len(seasons))
		}
	}
	return r
}

// dayNeed is the trays of one code sown on one day.
type dayNeed struct {
	season    int
	sown, end records.Date
	code      string
	trays     float64
}

// dayNeeds adds up what was sown on one day in one code, held until the latest
// of them is out and its tray washed, by day and code.
func (p *accounts) dayNeeds(pr *pair, stays []stay) []dayNeed {
	type key struct {
		sown records.Date
		code string
	}
	of := map[key]*dayNeed{}
	for _, s := range stays {
		if s.code != pr.tray.code && s.code != pr.other.code {
			continue
		}
		n := of[key{s.sown, s.code}]
		if n == nil {
			n = &dayNeed{season: s.season, sown: s.sown, code: s.code}
			of[key{s.sown, s.code}] = n
		}
		n.trays += s.trays
		n.end = max(n.end, s.end+records.Date(p.r.Book.Settings.TrayTurnaround))
	}
	needs := make([]dayNeed, 0, len(of))
	for _, n := range of {
		needs = append(needs, *n)
	}
	slices.SortFunc(needs, func(a, b dayNeed) int { return cmp.Or(cmp.Compare(a.sown, b.sown), cmp.Compare(a.code, b.code)) })
	return needs
}

// roundingError is what added parts of trays may miss a whole tray by: no tenth of
// a tray has an exact float64.
const roundingError = 1e-9

// eachTray counts every day's trays out, rounded up to whole ones.
func eachTray(days []dayNeed) []estimate.Need {
	var needs []estimate.Need
	for _, n := range days {
		for range int(math.Ceil(n.trays - roundingError)) {
			needs = append(needs, estimate.Need{Start: int(n.sown), End: int(n.end)})
		}
	}
	return needs
}

// nextTrays returns the use of each tray beyond those owned and what it would be
// worth, and how many more to buy: nil where that cannot be told.
func (p *accounts) nextTrays(back *Payback, pr *pair, r replayed) ([]NextTray, *Buy) {
	owned := pr.tray.ownedOn(p.r.LastDate)
	var next []NextTray
	for i := owned; i < len(r.uses); i++ {
		uses := r.uses[i]
		next = append(next, NextTray{Tray: back.Tray, Other: back.Other, Nth: i + 1, Owned: owned, Uses: uses,
			WorthToday:     p.worthOfNth(pr, back.Gain, uses),
			PaybackSeasons: ratio(back.PaybackUses, records.Known(uses))})
	}
	if !back.Gain.Known {
		return next, nil
	}
	n := p.buyUpTo(pr, back.Gain, owned, r)
	setPays(next, n, func(t *NextTray) *records.Maybe[bool] { return &t.Pays })
	if !back.GainLow.Known {
		return next, nil
	}
	low, high := p.buyUpTo(pr, back.GainLow, owned, r), p.buyUpTo(pr, back.GainHigh, owned, r)
	setPays(next, low, func(t *NextTray) *records.Maybe[bool] { return &t.PaysLow })
	setPays(next, high, func(t *NextTray) *records.Maybe[bool] { return &t.PaysHigh })
	return next, &Buy{Owned: owned, N: n - owned, Low: low - owned, High: high - owned, PeakInUse: len(r.uses), Seasons: r.seasons}
}

// worthOfNth is the worth today of a tray held so many times a season, with the
// life it then has.
func (p *accounts) worthOfNth(pr *pair, gain Num, uses float64) Num {
	often := records.Known(uses)
	return p.worthToday(pr.tray.price, gain, often, pr.tray.lifeAt(often).Seasons)
}

// buyUpTo is the number of the tray at which the running sum of worth today of
// those beyond the owned is greatest and above 0; owned where none is.
func (p *accounts) buyUpTo(pr *pair, gain Num, owned int, r replayed) int {
	best, most, running := owned, 0.0, 0.0
	for i := owned; i < len(r.uses); i++ {
		running += p.worthOfNth(pr, gain, r.uses[i]).Value
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
