package trays

import (
	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
	"traybook/report/plants"
)

// What a trial is laid out for (rule "Trial"): the differences in usable share to tell,
// and the trays of each code on a date.
var (
	trialDifferences = []float64{0.02, 0.05, 0.10}
	trialTrays       = []int{1, 4}
)

// basis is what all trials of a book rest on: its usable rate, and how far the
// differences of matches scatter beyond the chance of their cells, as a variance.
type basis struct {
	usable, beyond float64
	known          bool
}

// trialOf is the basis for the pairs of a book; unknown where its usable rate or its
// scatter is.
func trialOf(p *plants.Figures, pairs []*pair) basis {
	used, ok := p.UsableScatter.Of("")
	if !ok || !p.BookUsable.Known {
		return basis{}
	}
	rate := p.BookUsable.Value
	beyond, ok := scatterOfMatches(batch.Filter(pairs, func(pr *pair) bool { return len(pr.matches) >= EnoughMatches }), rate)
	if !ok {
		beyond = 2 * rate * (1 - rate) * used.Rho
	}
	return basis{rate, beyond, true}
}

// scatterOfMatches is the variance of the differences of matches about their pair's mean,
// less what cells alone make of it at a usable rate, and so below 0 at times, which counts
// as 0 (estimate.TrialSD); not ok without a pair:
//
//	[sum (d - mean)^2 - sum (S - 1)/S x sum p (1 - p)(1/cells_tray + 1/cells_other)] / sum (S - 1)
func scatterOfMatches(pairs []*pair, rate float64) (beyond float64, ok bool) {
	squares, chance, df := 0.0, 0.0, 0.0
	for _, pr := range pairs {
		n := float64(len(pr.matches))
		paired, _ := estimate.PairedMean(pr.differences(), pr.settings.Confidence)
		squares += paired.SD * paired.SD * (n - 1)
		for _, m := range pr.matches {
			chance += (n - 1) / n * rate * (1 - rate) * (1/m.CellsTray + 1/m.CellsOther)
		}
		df += n - 1
	}
	if df == 0 {
		return 0, false
	}
	return (squares - chance) / df, true
}

// sizes returns how many sowing dates would tell each difference in a pair.
func (b basis) sizes(pr *pair) []Trial {
	var trials []Trial
	for _, d := range trialDifferences {
		for _, k := range trialTrays {
			t := Trial{Tray: pr.tray.Code, Other: pr.other.Code, Difference: d, Trays: k}
			if cells := float64(k * pr.tray.Cells); b.known && cells > 0 {
				t.S = records.Known(estimate.TrialSD(b.usable, cells, b.beyond))
				if n := estimate.SideBySide(t.S.Value, d); n > 0 {
					t.Sowings = records.Known(n)
				}
			}
			trials = append(trials, t)
		}
	}
	return trials
}
