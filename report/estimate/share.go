package estimate

// ShareInterval returns the pooled share of some batches and its interval at confidence conf: Wilson's with continuity
// correction on the effective count N/D, with Student's t of df in place of z (rule "Interval of a share"). rho and df are
// those of the crop, or of the book (rule "Scatter"). Low is exactly 0 where no cell counts, high exactly 1 where all do.
// Batches with n at or below 0 are ignored; without any, p is 0 and the interval [0, 1]; with df at or below 0 the interval is
// [0, 1]: nothing known.
// Source: Wilson (1927) and Newcombe (1998), on an effective count as in Dean and Pagano (2015), J. Surv. Stat. Methodol.
// 3:484-503, to which the R package survey refers for the same (svyciprop, method wilson, with t of the design's degrees of
// freedom).
func ShareInterval(counts []Count, rho, df, conf float64) (p float64, ci Interval) {
	x, n, batches := total(counts)
	if batches == 0 {
		return 0, Interval{0, 1}
	}
	squares := 0.0
	for _, c := range counts {
		if c.N > 0 {
			squares += c.N * c.N
		}
	}
	p = x / n
	return p, WilsonCorrected(p, n/DesignEffectOf(n, squares, rho), T(conf, df))
}
