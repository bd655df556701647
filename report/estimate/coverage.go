package estimate

// SimulatedCoverage is the share, in percent, of the 95 % intervals (rules "Scatter", "Interval of a share") that held the
// true rate in simulated seasons: four crops a book of 3 to 6 groups, 1 to 4 batches a group, 0.5 to 10 trays of 72 or 128
// cells a batch, with scatter between batches and again between the trays of a batch. Groups without an interval ("too few
// batches") are not counted. TestSimulatedCoverage computes it anew, from a fixed seed, and fails where it differs.
const SimulatedCoverage = 94.6
