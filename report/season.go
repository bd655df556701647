package report

import "traybook/report/estimate"

// SimulatedCoverage is the share, in percent, of simulated 95 % intervals of rules
// 6 and 7 that held the true rate.
const SimulatedCoverage = estimate.SimulatedCoverage

// SeasonEmergence is the emergence of all counted batches of a season that were
// started from seed, all crops together. Its interval rests on the scatter of the
// whole book (rule 43); missing where that has too few batches (rule 6).
func (r *Report) SeasonEmergence(season int) Share {
	counted := those(r.Batches, func(b *Batch) bool { return b.Season == season && b.entersEmergence() })
	return r.share(ofEmergence, "", countsOf(counted, emergenceCount))
}
