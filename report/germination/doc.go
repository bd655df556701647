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
// marked is left out of emergence, rates a seed, varieties, lots, weeks, chambers and
// climate, and its usable plants are not counted; where the crop has no T50 yet, an open
// batch last counted younger than 14 days is left out likewise (common practice, no
// source). An ended batch stays in. Batches left out are told beside each group.
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
// Of 100 simulated intervals of 95 % SimulatedCoverage held the true rate, of a wild crop
// among calm ones SimulatedWildCoverage.
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
// The front page names a crop as having come up worst or best only where it stood apart: 3
// batches or more in the season, one seed a cell in all of them, and its interval wholly
// below or above the season's rate over all crops. The one furthest off comes first. Where
// there is none, no crop stood clearly apart.
//
// # Varieties
//
// Did a variety come up better than the other varieties of its crop, like with like? A
// stratum is a season, crop, cells of a tray, kind and seeds_per_cell; those with the
// variety and at least one other are compared, over all seasons up to the one reviewed.
// With N1 cells looked at of the variety and N2 of the others, and d their difference of
// emergence in a stratum:
//
//	w = N1 N2 / (N1 + N2)
//	difference = sum w d / sum w,  variance = sum w^2 v / (sum w)^2
//
// where v is the larger of the sum of their own variances (rule "Variance of a rate") and
// of that which they have if both come up alike, with p = (x1 + x2 + 0.5)/(N1 + N2 + 1)
// for both: a side that came up whole would look surer than it is. The interval is by t of
// the crop's degrees of freedom, the three lent by the book among them, at the level 1 -
// (1 - confidence)/m, m the number of varieties of the crop that are judged: all verdicts
// of a crop together are wrong no more often than one alone may be.
//
// One bad variety makes no good ones, so the crop is judged in rounds. In the first all
// varieties with 3 batches or more on both sides, added over the strata, are judged; m is
// their number and stays. Of those whose interval leaves out 0 the one with the largest
// |difference| / standard error (ties: the first by bytes) is set aside with its verdict,
// its batches count no more, and the others are judged anew among themselves, those of too
// few batches standing by, until none is clear. With two varieties of the crop left, of
// however many batches, both have that round's verdict: each is the other's mirror. One
// that then has fewer than 3 batches on a side keeps its last. Batches, other batches,
// difference and interval are those of the round that settled it.
//
// In words: clearly higher where the interval lies above 0, clearly lower where below, else
// no clear difference. A clear verdict may be one lot's doing: each lot of the variety's
// own batches is left out in turn, in the round that settled it, batches without a lot
// taken as one, unless the variety has no lot written at all. Where it is no longer clear
// on the same side then, or a side has fewer than 3 batches, or nothing is left to compare,
// the verdict is "higher, by one lot: X" or "lower, by one lot: X"; of several such lots X
// is the one that moves the difference most, then the first by bytes. Such a variety is not
// named on the front page. Fewer than 3 batches on either side, or no scatter known: the
// difference from all others alone, "too few batches". A variety that never stood beside
// another has no row.
//
// Simulated: of equal varieties some one is called clear in SimulatedFalseVerdicts of 100
// seasons of a crop, in a wild crop among calm ones in SimulatedWildVerdicts; beside one
// bad variety another in SimulatedBystanders.
//
// Sources: the weights are those of Cochran (1954), Biometrics 10:417-451 (from memory);
// the level is Bonferroni's inequality.
//
// # Lots
//
// Is a lot as good as its packet says? Every lot of lots.csv has a row: what ever came up
// of the cells looked at, over its batches that enter emergence, as a rate a seed with its
// interval by the crop's scatter of emergence. Where any of those batches has several seeds
// to a cell there is no rate: a full cell hides how many of its seeds failed. Emergence in
// a mix is not a laboratory test, so that a lot may lie below its packet by an allowance.
// With gap = label - rate, over the crop's other lots that have both, where there are 3 of
// them or more,
//
//	allowance = the larger of 0.05 and median gap + 0.05, not above 0.20
//
// else 0.10. (Common practice and choices of ours, no source.) Is the lot below its packet?
//
//	no      rate >= label - allowance: within what a mix allows
//	unsure  else, where the upper end of its interval reaches label - allowance, there is
//	        no interval, or the batches were all sown on one day, whose weather they
//	        share: too few batches to tell
//	yes     else
//
// Empty without a rate or a label. Beet and chard, by any name the trade table knows, are
// sown in clusters of several seeds and not compared: allowance and answer are empty.
// Beside it stands the legal minimum of the crop, where the setting legal_minimum asks for
// it.
//
// Seeds sown are those of all batches of the lot, unknown where those of any are. Seeds
// bought are as written, else grams x seeds_per_gram, else grams x the middle of the trade
// table's range, marked as guessed.
//
// Source of the minimum: 7 CFR 201.31 (Federal Seed Act regulations), in the trade table.
//
// # Timing
//
// How fast did a batch from seed come up? Counts of the day of sowing, or before, are
// dropped before all else. Of one counted on two days or more, T50 is the day, counted from
// sowing, on which what ever came up reaches (N + 1)/2 by straight line between counts,
// from 0 on day 0; N = all that ever came up. Where more than half of N stood at the first
// count there is none, only "before" that day; none where nothing came up. Mean days = sum
// of those new at each count x its day / N. A tray keeps its last figure until it is
// counted again, and holds none before its first count; one whose cells looked at change is
// left out. A group has the median of its batches with a T50, the earliest, the latest, and
// the median of their mean days; none has no row.
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
// Weeks: emergence with its interval by the crop's scatter, by season, crop and ISO week
// of sowing (ISO 8601, of the year that owns the week). Beside it the mean temperature of
// the 7 days from sowing: of each batch the mean of the readings of its chamber while it
// stood there; their mean over the batches that have any; else likewise of the house, by
// the middle of each day's low and high, of several rows of a day the last.
//
// Chambers: every season and chamber with a name in which a batch stood (rule "Chamber
// stays"), or in which a temperature was read. Batches by their season, as in "Emergence".
// Readings by the season of their own date: number, mean, lowest, highest. Days in = the
// median of chamber_out - sown, where written. Crop by crop: the readings of the days on
// which any of its batches stood there, assumed stays too, none past the batch's end; each
// reading once; their mean, and the share of them below or above the temperatures at which
// the crop comes up well, whose ends are usual (trade table; unknown crops have none).
//
// # Climate
//
// Heat beside emergence. Of a batch as in "Emergence", of one seed a cell, the mean of the
// house's highs over 7 days, where 5 of them or more were read: from the day it was sown,
// or from the day it left its chamber (rule "Chamber stays", assumed stays too). Of several
// rows of a day the last stands. The mean is rounded half up to 0.1 C and falls in a band:
// below 20 C, from 20, 25, 30, or 35 C and above; a band goes by its lower end, the first
// by BelowAllBands. By crop and band, all seasons together: emergence with its interval by
// the crop's scatter. A page shows the crops that have two bands of 3 batches or more. The
// bands and the days are choices of ours; warm days came with other things, and the table
// claims no cause.
//
// # Alarms
//
// Was it too warm, or too cold, for what stood there? A row a day and place:
//
//	chamber  the warmest reading of a day on which a batch stood in it (rule "Chamber
//	         stays", assumed stays too, none past the batch's end), where it lies above
//	         the trade table's germ_max_f of a crop in it, or 40 C where it knows no crop
//	         in it; the batches are those it was too warm for, of a crop unknown above 40 C
//	house    the lowest low of a day, where below 1 C, else the highest high, where above
//	         40 C, whether anything stood there or not; the batches are those that stood
//	         there and in no chamber
//
// An alarm has the season of its date. 40 C and 1 C are common practice, no source.
//
// In reading order: figures.go (the types), counts.go (Count: the rows that are used), series.go
// (them tray by tray), counted.go (a batch with its counts), germination.go (New), emergence.go,
// strata.go and differences.go (varieties), lots.go, timing.go, losses.go, readings.go
// (temperatures), stays.go (who stood where on a day), weeks.go, chambers.go, climate.go,
// alarms.go, simulated.go (how often the method errs).
package germination
