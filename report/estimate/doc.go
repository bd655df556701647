// Package estimate holds the numerical methods behind the figures: numbers go in, numbers come out. It knows no tray, no
// seed and no record; it opens no file, reads no clock and uses no chance.
//
// What each file answers, in reading order, and the rule that needs it; the rules stand in the packages whose figures they
// are:
//
//	quantile.go      Z, T: how many standard errors an interval reaches
//	wilson.go        Interval, Wilson, WilsonCorrected: the interval of one share, and with continuity correction
//	scatter.go       Count, Scatter, ScatterOf, Prior, DesignEffect, DesignEffectOf: how far batches differ beyond chance, a
//	                 crop leaning on its book (rule "Scatter")
//	share.go         ShareInterval: the interval of a share whose replicate is the batch (rule "Interval of a share")
//	coverage.go      SimulatedCoverage, SimulatedOwnCoverage, SimulatedWildCoverage: how often those intervals hold the truth
//	variance.go      PooledVariance: a variance where one is needed (rule "Variance of a rate"); Pooled, DifferenceVariance: that
//	                 of two rates' difference (rule "Varieties")
//	perseed.go       PerSeed: from filled cells to seeds (rule "Per seed")
//	t50.go           T50, MeanGerminationTime: how fast a batch came up (rule "Timing")
//	paired.go        Paired, PairedMean: the mean of matched differences (rule "Matched sowings")
//	sidebyside.go    SideBySide, TrialSD: how large a trial must be (rule "Trial")
//	recovery.go      CapitalRecovery: the yearly charge of a price (rule "Tray charge")
//	annuity.go       Annuity, AnnuityLife: the worth today of a yearly gain, and the life that makes it (rules "The average tray",
//	                 "What would flip it")
//	occupancy.go     Span, Step, Occupancy, Peak, DaysOver: how much stood on each day (rule "Room")
//	replay.go        Need, Replay: how often each of n trays would have been used (rule "The next tray")
//	median.go        Median (rule "Medians")
//	kitagawa.go      Weighted, Kitagawa: a change split into rate and mix
//	betabinomial.go  BetaBinomialAtLeast, SmallestSowing: how many to sow
//
// No function panics on a number, and none returns NaN for finite ones: outside its domain each returns the value that its
// comment names, the one that claims least. Shares are fractions of 1.
package estimate
