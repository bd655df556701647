package sowing

// How often the cells told reach the plants wanted, as shares of simulated seasons, with
// sure_of_target at 90 % (rule "How much to sow"). The tests of the same farms compute them
// anew, from fixed seeds, and fail where one no longer holds.
const (
	// SimulatedLeast and SimulatedMost are the bounds of four crops whose cells are alike by
	// 0.05 at most, in groups of 3 to 20 batches (TestCellsToldReachThePlantsWanted).
	SimulatedLeast = 0.85
	SimulatedMost  = 0.93
	// SimulatedWild is the bad case: cells alike by 0.1, and only three batches of each group
	// (TestWildScatterAndThreeBatches).
	SimulatedWild = 0.845
)
