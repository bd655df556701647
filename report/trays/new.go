package trays

import (
	"traybook/report/batch"
	"traybook/report/money"
	"traybook/report/plants"
)

// New sets every pair of tray codes side by side. It changes nothing of what it
// reads.
func New(b *batch.Batches, p *plants.Figures, m *money.Figures) *Figures {
	f := &Figures{PlantValue: plantValues(b.Settings.TransplantValue, m)}
	standings := b.Standings(1, nil)
	for _, pr := range pairsOf(b) {
		pr.match(m.Borne, f.PlantValue)
		back := pr.payback(m.Lives)
		replay := pr.replay(standings)
		next, buy := pr.nextTrays(&back, replay, pr.tray.OwnedOn(b.Today))
		back.Buy, back.Uses = buy, replay.uses
		f.Payback = append(f.Payback, back)
		f.Matches = append(f.Matches, pr.matches...)
		f.NextTray = append(f.NextTray, next...)
		f.Trial = append(f.Trial, pr.trials(p)...)
	}
	return f
}

// Next is the next trays and how many to buy if the batches had stood so: with more
// trays, or in other codes. What a use gains and what is owned stay as the records
// show.
func Next(f *Figures, b *batch.Batches, standings []batch.Standing) ([]NextTray, []PairBuy) {
	var next []NextTray
	var buys []PairBuy
	for i := range f.Payback {
		back := &f.Payback[i]
		pr := &pair{tray: b.Codes[back.Tray], other: b.Codes[back.Other], settings: b.Settings}
		trays, buy := pr.nextTrays(back, pr.replay(standings), pr.tray.OwnedOn(b.Today))
		next = append(next, trays...)
		buys = append(buys, PairBuy{Tray: back.Tray, Other: back.Other, Buy: buy})
	}
	return next, buys
}
