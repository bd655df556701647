package years

// SimulatedFalse is the share of made farms that stays below: of those in which nothing
// changed but which varieties, trays and crops were grown, so many are told that a season
// came out clearly higher or lower, for the farm or for any of its crops. At 95 % one in
// twenty is to be expected; TestOtherKindsAreNoChange makes 400 of them anew and holds both
// measures below it.
const SimulatedFalse = 0.10
