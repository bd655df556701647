package trays

import (
	"slices"

	"traybook/report/batch"
	"traybook/report/money"
	"traybook/report/plants"
)

// New sets every pair of tray codes side by side. It changes nothing of what it
// reads.
func New(b *batch.Batches, p *plants.Figures, m *money.Figures) *Figures {
	f := &Figures{PlantValue: plantValues(b.Settings.TransplantValue, m)}
	stood := standingsOf(b, b.Standings(1, nil))
	of, borne := comparedOf(m.Borne), map[string][]*money.Borne{}
	for _, code := range batch.SplitBy(m.Borne, (*money.Borne).TrayRank).Groups {
		borne[code[0].Tray] = code
	}
	pairs, leftOut := pairsOf(b)
	f.LeftOut = leftOut
	matches := 0
	for _, pr := range pairs {
		pr.match(of, f.PlantValue)
		matches += len(pr.matches)
	}
	f.Matches = slices.Grow(f.Matches, matches)
	tells := trialOf(p, pairs)
	for _, pr := range pairs {
		back := pr.payback(m, borne[pr.other.Code])
		replay := pr.replay(stood)
		next, d := pr.decide(&back, replay, b)
		back.Buy, back.Uses, back.NotCompared = d.Buy, replay.uses, replay.notCompared
		f.Payback = append(f.Payback, back)
		f.Decisions = append(f.Decisions, d)
		f.BuyIf = append(f.BuyIf, pr.buyIf(&back)...)
		f.Matches = append(f.Matches, pr.matches...)
		f.NextTray = append(f.NextTray, next...)
		f.Trial = append(f.Trial, tells.sizes(pr)...)
	}
	return f
}

// Next is the next trays and how many to buy if the batches had stood so: with more
// trays, or in other codes. What a use gains and what is owned stay as the records
// show.
func Next(f *Figures, b *batch.Batches, standings []batch.Standing) ([]NextTray, []Decision) {
	var next []NextTray
	var decisions []Decision
	stood := standingsOf(b, standings)
	for i := range f.Payback {
		back := &f.Payback[i]
		pr := &pair{tray: b.Codes[back.Tray], other: b.Codes[back.Other], settings: b.Settings}
		pr.matches = batch.Filter(f.Matches, func(m Match) bool { return m.Tray == back.Tray && m.Other == back.Other })
		trays, d := pr.decide(back, pr.replay(stood), b)
		next, decisions = append(next, trays...), append(decisions, d)
	}
	return next, decisions
}
