// Package sowing is the next season's sowing table: how many cells and trays to sow for
// the plants that a field needs, what the written wishes take of trays, seed, days and
// room, and which crops were sown too little or too much. It reads the usable plants of
// the batches and changes nothing of theirs. Its rules follow; scatter between batches is
// stated by package rate, usable plants by package plants.
//
// # How much to sow
//
// How many cells must be sown so that a wanted number of plants is reached in most
// seasons, not on average? Asked of measured batches from seed (rule "Usable plants"),
// all seasons together, by crop, variety, cells of a tray and kind, where a group has 3
// batches or more: the smallest n with
//
//	P(X >= N) >= sure_of_target (less 1e-12)
//
// where N is the plants wanted and X, the plants that n cells give, is beta-binomial:
// each cell gives a plant with the rate, and cells of one sowing do well or badly
// together.
//
//	rate used = (usable + 0.5) / (cells sown + 1)
//	rho used  = rho + (1 - rho) E / cells sown
//	E         = 1 + (sum n^2 / cells sown - 1) rho
//
// rho is the crop's by rule "Scatter", measured over all such groups of two batches or
// more, whatever the season. The second term is the doubt about the rate itself, which
// rests on so few sowings: a sowing's rate lies about the group's by rho p q and the
// group's about the truth by p q E / cells, and the two variances add. In E, the design
// effect of rule "Interval of a share", n is the cells of a season, all its batches
// added up, as one season's weather touches them all. Without rho (the whole book has too
// few batches) there is no number of cells.
//
// The table is told for N = 100 plants and for the target: the median over the group's
// batches of `wanted` above 0, else, where none has it, of plants out to the field above
// 0, rounded up. No number above 3 N is told: no one sowing of up to three cells a plant
// is that sure, and several sowings, which do not fail together, need fewer. Trays are
// cells / cells of a tray, rounded up, unknown where the tray code is. What being sure
// leaves over, as a rule:
//
//	left over = cells to sow x usable / cells sown - target
//
// Beside it stands the plain habit of sowing a fifth more than is wanted: the chance, by
// the same X, that 120 cells give fewer than 100 plants.
//
// Sources: the beta-binomial, Skellam (1948), J. R. Stat. Soc. B 10:257-261; the halves,
// Anscombe (1956), Biometrika 43:461-464. The bounds of 3 batches and of 3 N are choices
// of ours. (Simulated with sure_of_target at 90 % and a correlation up to 0.05: the cells
// told reach the plants wanted in 85 to 93 % of seasons from groups of 3, 5, 6, 10 and 20
// batches, TestCellsToldReachThePlantsWanted. The bad case: at 0.1, from 3 batches, in 80
// to 87 %, TestWildScatterAndThreeBatches.)
//
// # Wishes
//
// A row of wishes.csv says how many plants of a crop the fields want. Its cells are as in
// rule "How much to sow" with N = the plants, for its crop and variety in the cells and
// kind of its tray code. A blank tray is the code in which most trays of the crop were
// sown from seed in the last finished season (rule "Seasons"), else, where it was not
// sown then, in the whole book; of equal ones the first by bytes. The rate is that of the
// first of these with 3 batches or more, and which one is said:
//
//	the variety in these cells and kind   (not where the variety is blank)
//	the crop in these cells and kind, its varieties together
//	the crop, in whatever it was sown
//
// and none where the crop has fewer. In the second, rho is that of the same rule with
// groups of crop, cells and kind, in the third of crop alone, for all crops of the book,
// so that what varieties and trays differ by counts as scatter. Batches are those that
// the rate rests on. Trays are as in the table. Seeds are cells x the median
// seeds_per_cell of the crop's batches from seed.
//
// The day to sow by is planned less the stay that four in five of the crop's written
// stays (rule "End of a batch") do not exceed, the smallest such; of fewer than 5 stays
// the longest; without any the one that stands in for them there. A row without a planned
// day has none.
//
// Rows with a day, a tray code and trays would take room as in rule "Room": on the
// benches trays x places from the day to sow by up to planned, of their code trays from
// that day up to planned + tray_turnaround. Added up over all wishes, week by week from
// Monday, stands the most on any day of the week beside what holds it on that day:
// bench_places, trays owned. It is an "if" of the wishes alone: what stands in the house
// already is not in it, and days in a chamber count for the benches, as no wish says how
// many they will be.
//
// Seed in hand is seeds bought less seeds sown of each lot (rule "Lots"), not below 0. A
// wish that names a variety takes of that variety's lots; one that does not, of what
// these leave over of any lot of the crop. To buy is what is missing: 0 where lots that
// are known hold enough, unknown where a lot whose seed is unknown might; without any lot
// written it is all that is needed, and said. Seeds needed are unknown where those of any
// wish are.
//
// Sources: none; four in five is a choice of ours.
//
// # What to sow more of
//
// Did a crop give what was wanted of it? By season and crop, over batches that ended with
// `wanted` written (0 is) and usable plants out or counted (rule "Usable plants"): plants
// wanted, plants usable, batches that gave fewer than wanted, the sum of what they lacked
// and the sum of what the others gave beyond. Within 1e-9 of wanted is as wanted.
//
//	sow more  3 batches or more, a third or more of them short, short above left over / 4
//	          and above 0.05 x wanted; and all of that still without the lot that was most
//	          short (batches without a lot are one; not asked where no lot is written)
//	sow less  3 batches or more, none short, left over above wanted x the larger of 0.3
//	          and left over / target of rule "How much to sow" (the crop's largest): more
//	          than being sure costs
//
// A crop that was short by one lot alone is told so: more of the same seed would not have
// helped. The front page names the three crops of its season with most plants short, and
// the three with most left over; equal ones by bytes.
//
// Sources: none; the bounds are choices of ours.
//
// In reading order: figures.go (the types, New), level.go (batches by variety, by cells
// and kind, by crop), chance.go (rate used, rho used, Cells), table.go (the table),
// wishes.go, code.go (the tray code of a wish), sowby.go, weeks.go (the room they would
// take), reorder.go (seed in hand), balance.go, advice.go (sow more, sow less),
// simulated.go (how often the cells told are enough).
package sowing
