package report

import (
	"math"

	"traybook/records"
	"traybook/report/estimate"
)

// trialDifferences are the differences in usable share that a trial is laid out
// to tell (rule 35).
var trialDifferences = []float64{0.02, 0.05, 0.10}

// trials returns how many sowing dates with one tray of each would tell each
// difference (rules 35, 70).
func (p *accounts) trials(pr *pair) []Trial {
	s := p.scatterOf(pr)
	var trials []Trial
	for _, d := range trialDifferences {
		t := Trial{Tray: pr.tray.code, Other: pr.other.code, Difference: d, S: s}
		if n := estimate.SideBySide(s.Value, d); s.Known && n > 0 {
			t.Sowings = records.Known(n)
		}
		trials = append(trials, t)
	}
	return trials
}

// scatterOf is the standard deviation of a match's difference: that of the
// matches where there are enough, else what the book's usable rate and scatter
// lead one to expect of one tray of each.
func (p *accounts) scatterOf(pr *pair) Num {
	if len(pr.matches) >= EnoughMatches {
		if paired, ok := estimate.PairedMean(pr.differences(), p.r.Book.Settings.Confidence); ok {
			return records.Known(paired.SD)
		}
	}
	rate, rho := p.r.bookUsable()
	if !rate.Known || !rho.Known {
		return Num{}
	}
	s := estimate.MixedSD(rate.Value, float64(pr.tray.cells), rho.Value)
	if math.IsInf(s, 0) {
		return Num{}
	}
	return records.Known(s)
}
