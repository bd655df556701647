package trays

import (
	"math"

	"traybook/records"
	"traybook/report/estimate"
	"traybook/report/plants"
)

// trialDifferences are the differences in usable share that a trial is laid out
// to tell (rule "Trial").
var trialDifferences = []float64{0.02, 0.05, 0.10}

// trials returns how many sowing dates with one tray of each would tell each
// difference.
func (pr *pair) trials(p *plants.Figures) []Trial {
	s := pr.spread(p)
	var trials []Trial
	for _, d := range trialDifferences {
		t := Trial{Tray: pr.tray.Code, Other: pr.other.Code, Difference: d, S: s}
		if n := estimate.SideBySide(s.Value, d); s.Known && n > 0 {
			t.Sowings = records.Known(n)
		}
		trials = append(trials, t)
	}
	return trials
}

// spread is the standard deviation of a match's difference: that of the matches
// where there are enough, else what the book's usable rate and scatter lead one to
// expect of one tray of each.
func (pr *pair) spread(p *plants.Figures) Num {
	if len(pr.matches) >= EnoughMatches {
		if paired, ok := estimate.PairedMean(pr.differences(), pr.settings.Confidence); ok {
			return records.Known(paired.SD)
		}
	}
	used, ok := p.UsableScatter.Of("")
	if !ok || !p.BookUsable.Known {
		return Num{}
	}
	s := estimate.MixedSD(p.BookUsable.Value, float64(pr.tray.Cells), used.Rho)
	if math.IsInf(s, 0) {
		return Num{}
	}
	return records.Known(s)
}
