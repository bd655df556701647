// Package germination is what came up: how much, how fast, of which seed, in which
// week and chamber. Count reads the counts, New makes all figures of them. Its rules
// follow; those of scatter and intervals are stated by package rate, those of seasons
// and ends by package batch.
//
// # Counts
//
// A batch's count is, tray by tray, its last one: emerged, or cells - empty where empty
// is written, of the cells looked at, held within 0 and those. Cells looked at are as
// written, else those sown in the tray or batch; a row of which they are unknown is not
// used. If any count of a batch has a tray number, only numbered rows count, and that is
// said. Of several rows of one tray on one day the last of the file stands. A seedling
// lost before the last count so counts against emergence. What ever came up is what lives
// and all `lost` so far, never less than at an earlier count and over the batch not more
// than the cells looked at; rules "Timing" and "Lots" use that.
//
// # Counted early
//
// A batch whose last count came before twice the crop's median T50 (rule "Timing"; over
// the batches of all seasons that have one) carries "counted early". An open batch so
// marked is left out of emergence, rates a seed, varieties, lots, weeks and chambers, and
// its usable plants are not counted; where the crop has no T50 yet, an open batch last
// counted younger than 14 days is left out likewise (common practice, no source). An
// ended batch stays in. Batches left out are told beside each group.
//
// # Emergence
//
// Of the cells looked at, how many held a living seedling at the last count? By season,
// crop, variety, cells of a tray and kind, over batches from seed: emerged / cells looked
// at, added up over the batches, with the interval of the crop's scatter (rule "Interval
// of a share"). A group without a count has no row. Trays are those sown. Pages sort by
// emergence; groups of fewer than 3 batches stand below a line, "sown too seldom to
// judge". A crop of a season, all its varieties and trays together, has its interval by
// the crop's scatter, a season over all crops by the book's.
//
// Of 100 simulated intervals of 95 % SimulatedCoverage held the true rate.
//
// # Per seed
//
// With k seeds to a cell, in all batches of a group alike, a rate of cells p is 1 - (1 -
// p)^(1/k) a seed, seeds taken as independent; its ends likewise. Groups of several k have
// none. A cell that fails as a whole makes each of its seeds look bad.
//
// Source: group testing; Thompson (1962), Biometrics 18:568-578 (from memory).
//
// # Named crops
//
// The front page names the crop of a season that came up best and the one or, of 4 crops
// and more, two that came up worst, of those with 3 batches or more.
//
// # Varieties
//
// Did a variety come up better than the other varieties of its crop, like with like? A
// stratum is a season, crop, cells of a tray, kind and seeds_per_cell; those with the
// variety and at least one other are compared, over all seasons up to the one reviewed.
// With N1 cells looked at of the variety and N2 of the others, d their difference of
// emergence and v the sum of their variances (rule "Variance of a rate") in a stratum:
//
//	w = N1 N2 / (N1 + N2)
//	difference = sum w d / sum w,  variance = sum w^2 v / (sum w)^2
//
// and the interval is by t of the crop's degrees of freedom at the level 1 - (1 -
// confidence)/m, m the number of varieties of the crop that are judged: all verdicts of
// a crop together are wrong no more often than one alone may be. In words: clearly higher
// where the interval lies above 0, clearly lower where below, else no clear difference.
// Fewer than 3 batches on either side, added over the strata, or no scatter known: the
// difference alone, "too few batches". A variety that never stood beside another has no
// row.
//
// Sources: the weights are those of Cochran (1954), Biometrics 10:417-451 (from memory);
// the level is Bonferroni's inequality.
//
// # Lots
//
// Is a lot as good as its packet says? Every lot of lots.csv has a row: what ever came up
// of the cells looked at, over its batches that enter emergence, as a rate a seed (rule
// "Per seed") with its interval by the crop's scatter of emergence. Emergence in a mix is
// not a laboratory test, so that a lot may lie below its packet by an allowance: the
// median of packet - rate over the crop's other lots that have both, not below 0, where
// there are 3 of them or more; else 0.10 (common practice, no source). A lot is below its
// packet where even the upper end of its interval is lower than packet - allowance;
// unknown without an interval. Crops named beet, beets, beetroot or chard are sown in
// clusters of several seeds and not compared. Ranked by the gap are lots with one seed a
// cell, and those that are below. Beside it stands the legal minimum of the crop.
//
// Seeds sown are those of all batches of the lot, unknown where those of any are. Seeds
// bought are as written, else grams x seeds_per_gram, else grams x the middle of the trade
// table's range, marked as guessed.
//
// Source of the minimum: 7 CFR 201.31 (Federal Seed Act regulations), in the trade table.
//
// # Timing
//
// How fast did a batch from seed come up? Of one counted on two days or more, T50 is the
// day, counted from sowing, on which what ever came up reaches (N + 1)/2 by straight line
// between counts, from 0 on day 0; N = all that ever came up. Where more than half of N
// stood at the first count there is none, only "before" that day; none where nothing came
// up. Mean days = sum of those new at each count x its day / N. A tray keeps its last
// figure until it is counted again, and holds none before its first count; one whose
// cells looked at change, or that was counted on the day of sowing only, is left out. A
// group has the median of its batches with a T50, the earliest, the latest, and the median
// of their mean days; none has no row.
//
// Sources: Coolbear, Francis and Grierson (1984), J. Exp. Bot. 35:1609-1617; mean time:
// Labouriau (1983), as in Ranal and Santana (2006), Rev. Bras. Bot. 29:1-11.
//
// # Losses, weeks, chambers
//
// Losses: cells `lost` in counts that are used, of all batches, by season and crop of the
// batch and cause of the row, with the month of the count; batches are those with such a
// row.
//
// Weeks: emergence without an interval, by season, crop and ISO week of sowing (ISO 8601,
// of the year that owns the week). Beside it the mean temperature from sowing until 7 days
// after: of each batch the mean of the readings of its chamber up to chamber_out where
// written; their mean over the batches that have any; else likewise of the house, by the
// middle of each day's low and high (the median of several rows of a day).
//
// Chambers: every season and chamber in which a batch stood or a temperature was read.
// Batches by their season, as in "Emergence"; a batch stood in a chamber where one is
// written, or, where readings have no chamber's name, where chamber_out is. Readings by the
// season of their own date: number, mean, lowest, highest. Days in = the median of
// chamber_out - sown, where written. Crop by crop: the readings of the days on which any
// of its batches is known to have stood there, from sown to chamber_out, both counted, at
// most 60 days; each reading once; their mean, and the share of them below or above the
// crop's usual range, whose ends are usual (trade table; unknown crops have none).
//
// In reading order: figures.go (the types), counts.go (Count: the rows that are used, tray
// by tray), counted.go (a batch with its counts), germination.go (New), emergence.go,
// differences.go (varieties), lots.go, timing.go, losses.go, readings.go (temperatures),
// weeks.go, chambers.go.
package germination
