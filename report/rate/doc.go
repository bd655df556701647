// Package rate is a share over batches: pooled, with the scatter between batches, the
// interval that rests on it, and comparisons in words. It knows no seedling or plant:
// what is counted of a batch is handed in. Its rules follow.
//
// # The batch is the replicate
//
// Cells of one batch share day, lot, mix, tray and chamber, and so do its trays: they do
// well or badly together. A batch counts once, its trays added up, and how much batches
// differ makes an interval wide or narrow, not how many cells were counted. (Simulated:
// with every cell as a replicate fewer than four in five intervals of 95 % hold the
// truth; TestSimulatedCoverage in package estimate.) Fewer than 3 batches are too few to
// judge a group by.
//
// # Scatter
//
// How alike are the cells of one batch? One answer for each of three measures, which
// never lend to each other: emergence (cells looked at), usable plants (cells sown), and
// quality (plants looked at). In groups of batches that should do alike, of each batch x
// of n, over groups with two batches or more whose pooled share p lies strictly between
// 0 and 1, N the group's cells:
//
//	X2 = sum (x - n p)^2 / (n p (1 - p))
//	df = batches - groups
//	G  = sum (n - 1)(1 - n/N)
//
// A group is season, crop, variety, cells of a tray and kind; for emergence it is split
// by seeds_per_cell too. Sums are taken crop by crop; added up over all crops they are
// the book's. Of the book
//
//	rho_b = (X2 - df) / G, held within 0 and 0.5; 0 where G is
//
// with its df. Where that is below 3 there is no interval anywhere: too few batches. A
// crop's own sums lean on the book's, as if the book lent it 3 degrees of freedom:
//
//	rho = (X2 - df + 3 m rho_b) / (G + 3 m), held within 0 and 0.5; 0 where the divisor is
//	m   = G/df of the crop, of the book where either is 0
//
// with df + 3 degrees of freedom. A crop sown once so scatters as the book does; one of
// many batches speaks for itself. What is pooled over several groups of a crop takes the
// crop's, what is pooled across crops the book's. Columns rho and df are those used, empty
// where there is no interval.
//
// Sources: the moment estimator of an intra-class correlation from Pearson's chi-square:
// Williams (1982), Applied Statistics 31:144-148; Moore (1987), Applied Statistics
// 36:8-14 (both from memory). The prior is after the moderated variances of Smyth (2004),
// Stat. Appl. Genet. Mol. Biol. 3(1):3 (from memory); its weight of 3, and the bounds 3
// and 0.5, are choices of ours. Simulated: where crops are alike 95 to 97 of 100
// intervals of 95 % hold the truth; a single wild crop among calm ones is lent too little
// and has 83 to 89 (SimulatedCoverage and SimulatedWildCoverage in package estimate).
//
// # Interval of a share
//
// x of N over the batches pooled. Cells that are alike tell less than as many that are
// not: the design effect E = 1 + (sum n^2 / N - 1) rho, and N/E is the effective count n.
// The interval is Wilson's with continuity correction on n, with t of rho's degrees of
// freedom (Student) in place of z, at the level of the setting confidence: with p = x/N
// its lower end is Wilson's at p - 1/(2n), its upper at p + 1/(2n), each first held within
// 0..1, where Wilson's ends at p are
//
//	(p + t^2/2n -+ t sqrt(p (1 - p)/n + t^2/4n^2)) / (1 + t^2/n)
//
// It stays within 0..1; its lower end is exactly 0 where x is 0, its upper exactly 1
// where x is N. Batches of which nothing was looked at are not counted; of none there is
// no share.
//
// Sources: Wilson (1927), J. Am. Stat. Assoc. 22:209-212; the correction: Newcombe (1998),
// Stat. Med. 17:857-872, method 4, and R's prop.test; design effect by sizes: Kish (1965),
// Survey Sampling, and Rao and Scott (1992), Biometrics 48:577-585 (from memory).
//
// # Variance of a rate
//
// Where a variance is needed, p (1 - p) E / N with p = (x + 0.5)/(N + 1): the half keeps a
// rate of 0 or 1 from looking exact. E is the design effect of rule "Interval of a share".
//
// Source of the half: Anscombe (1956), Biometrika 43:461-464 (from memory).
//
// In reading order: rate.go (Rate, pooled; rates a seed, verdicts, medians), scatter.go
// (Scatter by crop and over the book, Rate with its interval). The arithmetic stands in
// package estimate.
package rate
