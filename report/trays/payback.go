package trays

import (
	"traybook/records"
	"traybook/report/estimate"
	"traybook/report/money"
	"traybook/report/rate"
)

// payback computes a pair's figures (rule "The average tray"): price, life and minutes
// always, the others where there are matches enough. lives are those of rule "Life in a
// pair", by code.
func (pr *pair) payback(lives map[string]money.Life) Payback {
	tray, other := pr.tray, pr.other
	back := Payback{Tray: tray.Code, Other: other.Code, Cells: tray.Cells, Matches: len(pr.matches), Dates: pr.firstDates(),
		Price: tray.Price, OtherPrice: other.Price, Life: lives[tray.Code], OtherLife: lives[other.Code],
		Minutes: tray.Minutes, OtherMinutes: other.Minutes, UsesPerSeason: lives[tray.Code].UsesPerSeason, Why: pr.enough()}
	_, minutes := pr.extraMinutes()
	back.MinutesLeftOut = !minutes.Known
	if back.Why == "" {
		pr.fromMatches(&back)
	}
	return back
}

// fromMatches fills what rests on the matches.
func (pr *pair) fromMatches(back *Payback) {
	paired, _ := estimate.PairedMean(pr.differences(), pr.settings.Confidence)
	back.Difference, back.DifferenceLow, back.DifferenceHigh = records.Known(paired.Mean), records.Known(paired.CI.Low), records.Known(paired.CI.High)
	back.Value, back.Valued = pr.meanValue()
	g := pr.gain(back.OtherLife.Uses, pr.inMoney(Num{}))
	back.GainTray, back.GainPlants, back.GainMinutes = g.tray, g.plants, g.minutes
	back.Gain, back.GainLow, back.GainHigh = g.mid, g.low, g.high
	back.PaybackUses = rate.Ratio(back.Price, g.mid)
	back.PaybackSeasons = rate.Ratio(back.PaybackUses, back.UsesPerSeason)
	back.WorthToday = pr.worthToday(g.mid, back.UsesPerSeason, back.Life.Seasons)
	back.Verdict = paysVerdict(back.Price, back.Life.Uses, g)
	back.Why = whyNot(back)
	pr.flips(back)
	back.AtPlugPrice = pr.atPlugPrice(back)
}

// atPlugPrice is the answer with a bought-in transplant's price as the value of
// all matches; nil where none is written.
func (pr *pair) atPlugPrice(back *Payback) *PlugPrice {
	value := pr.settings.PlugPrice
	if !value.Known {
		return nil
	}
	g := pr.gain(back.OtherLife.Uses, pr.inMoney(value))
	return &PlugPrice{Value: value, Gain: g.mid, GainLow: g.low, GainHigh: g.high,
		PaybackUses: rate.Ratio(back.Price, g.mid),
		WorthToday:  pr.worthToday(g.mid, back.UsesPerSeason, back.Life.Seasons),
		Verdict:     paysVerdict(back.Price, back.Life.Uses, g)}
}
