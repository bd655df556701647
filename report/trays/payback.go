package trays

import (
	"traybook/records"
	"traybook/report/estimate"
	"traybook/report/money"
	"traybook/report/rate"
)

// payback computes a pair's figures (rule "The average tray"): price, life, minutes and
// mix always, the others where there are matches enough. ofOther are the batches in the
// other.
func (pr *pair) payback(m *money.Figures, ofOther []*money.Borne) Payback {
	tray, other := pr.tray, pr.other
	back := Payback{Tray: tray.Code, Other: other.Code, Cells: tray.Cells, Matches: len(pr.matches), Dates: pr.firstDates(),
		Price: tray.Price, OtherPrice: other.Price, Minutes: tray.Minutes, OtherMinutes: other.Minutes, Why: pr.enough()}
	pr.lives(&back, m.Lives)
	pr.extras(&back, m.MixPerML)
	if back.Why == "" {
		pr.fromMatches(&back)
		back.AtPlugPrice = pr.atPlugPrice(&back, ofOther)
	}
	return back
}

// fromMatches fills what rests on the matches.
func (pr *pair) fromMatches(back *Payback) {
	paired, _ := estimate.PairedMean(pr.differences(), pr.settings.Confidence)
	back.Difference, back.DifferenceLow, back.DifferenceHigh = records.Known(paired.Mean), records.Known(paired.CI.Low), records.Known(paired.CI.High)
	back.Value, back.Valued = pr.meanValue()
	pr.gains(back)
	back.PaybackUses = rate.Ratio(back.Price, back.Gain)
	back.PaybackSeasons = rate.Ratio(back.PaybackUses, back.UsesPerSeason)
	back.WorthToday = pr.averageWorth(back, back.Gain)
	back.Verdict = pr.verdict(back, back.Gain, back.GainLow, back.GainHigh)
	back.Why = whyNot(back)
	back.BreakEvenPlants = pr.breakEven(back)
}

// averageAnnuity is what 1 a use of the average tray is worth today: its uses a season
// over its life, or where those are unknown its life in uses without interest.
func (pr *pair) averageAnnuity(back *Payback) Num {
	life, uses := back.Life.Uses, back.UsesPerSeason
	if !life.Known || !uses.Known {
		return life
	}
	return records.Known(term{uses.Value, life.Value}.annuity(pr.settings.DiscountRate))
}

// averageWorth is the worth today of the average tray at a gain a use.
func (pr *pair) averageWorth(back *Payback, gain Num) Num {
	earned := times(gain, pr.averageAnnuity(back))
	if !earned.Known {
		return Num{}
	}
	return records.Known(sum(earned.Value, -back.Price.Value))
}

// breakEven is the plants a use at which the average tray is worth just its price
// (rule "Break-even"); missing where a life in uses is, or a plant is worth nothing.
func (pr *pair) breakEven(back *Payback) Num {
	perUse := rate.Ratio(back.Price, pr.averageAnnuity(back))
	if !perUse.Known || !back.GainTray.Known {
		return Num{}
	}
	dearer := sum(perUse.Value, -back.GainTray.Value, -back.GainMinutes.Or(0), back.MixAUse.Or(0))
	return rate.Ratio(records.Known(dearer), back.Value)
}
