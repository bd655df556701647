// Package estimate holds the numerical methods behind the figures: numbers go in, numbers come out. It knows no tray, no
// seed and no record; it opens no file, reads no clock and uses no chance.
//
// What each file answers, in reading order:
//
//	quantile.go      Z, T: how many standard errors an interval reaches
//	wilson.go        Interval, Wilson: the interval of one share
//	newcombe.go      Newcombe: the interval of a difference of two shares
//	scatter.go       Count, Scatter, ScatterOf, DesignEffect: how much more batches differ than chance alone allows (rule 6)
//	share.go         ShareInterval: the interval of a share whose replicate is the batch (rule 7)
//	coverage.go      SimulatedCoverage: how often those intervals hold the truth
//	variance.go      PooledVariance: a variance where one is needed (rule 8)
//	perseed.go       PerSeed: from filled cells to seeds (rule 11)
//	t50.go           T50, MeanGerminationTime: how fast a batch came up (rule 15)
//	paired.go        Paired, PairedMean: the mean of matched differences (rule 29)
//	sidebyside.go    SideBySide, MixedSD: how large a trial must be (rule 35)
//	recovery.go      CapitalRecovery: the yearly charge of a price (rule 24)
//	annuity.go       Annuity: the worth today of a yearly gain (rule 31)
//	npv.go           NPV: the worth today of uneven yearly flows
//	occupancy.go     Span, Step, Occupancy, Peak, DaysOver: how much stood on each day (rule 34)
//	replay.go        Need, Replay: how often each of n trays would have been used (rule 33)
//	median.go        Median (rule 42)
//	kitagawa.go      Weighted, Kitagawa: a change split into rate and mix (rule 36)
//	betabinomial.go  BetaBinomialAtLeast, SmallestSowing: how many to sow (rule 39)
//
// No function panics on a number, and none returns NaN for finite ones: outside its domain each returns the value that its
// comment names, the one that claims least. Shares are fractions of 1.
package estimate
