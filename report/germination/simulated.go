package germination

import "traybook/report/estimate"

// SimulatedCoverage and SimulatedWildCoverage are the shares, in percent, of simulated
// 95 % intervals of rules "Scatter" and "Interval of a share" that contained the true
// rate: where crops scatter alike, and, the bad case, of one wild crop among calm ones.
const (
	SimulatedCoverage     = estimate.SimulatedCoverage
	SimulatedWildCoverage = estimate.SimulatedWildCoverage
)

// Shares, in percent, of simulated seasons of a crop in which rule "Varieties" is wrong:
// batches of 100 cells, beside three other crops of six varieties of four batches. The
// tests compute them anew, from fixed seeds, and fail where one differs.
const (
	// SimulatedFalseVerdicts: six varieties of four batches come up alike, at 85 %, crops
	// scatter alike (rho 0.01, 0.05 or 0.15), and any is called clearly higher or lower.
	SimulatedFalseVerdicts = 2.6
	// SimulatedWildVerdicts is the bad case: the same of a wild crop, rho 0.20, of which there
	// are two varieties of three batches, among calm ones, rho 0.01, which lend it less
	// scatter than it has.
	SimulatedWildVerdicts = 8.7
	// SimulatedBystanders: of six varieties of four batches one comes up at 60 % of the
	// others, and some other is called clearly higher or lower.
	SimulatedBystanders = 1.0
)
