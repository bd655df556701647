package estimate

// Shares, in percent, of the 95 % intervals (rules "Scatter", "Interval of a share") that held the true rate in simulated
// seasons: four crops a book of 3 to 6 groups, rates of 0.5 to 0.99, 1 to 4 batches a group, 0.5 to 10 trays of 72 or 128 cells
// a batch, with scatter between batches and again between the trays of a batch. Groups without an interval ("too few batches")
// are not counted. TestSimulatedCoverage computes them anew, from a fixed seed, and fails where one differs.
const (
	// SimulatedCoverage: the crops of a book scatter alike, rho from 0.005 to 0.15.
	SimulatedCoverage = 96.8
	// SimulatedOwnCoverage: each has a rho of its own, from 0.005 to 0.10, and more scatter between trays.
	SimulatedOwnCoverage = 96.9
	// SimulatedWildCoverage is the bad case: the intervals of one wild crop, rho 0.20, of which there are two groups of two
	// batches, among three calm ones, rho 0.01, which lend it less scatter than it has. (With three groups of three it is 92.)
	SimulatedWildCoverage = 83.1
)
