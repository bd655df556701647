// Package trays says whether a tray pays, and how many more to buy. It sets two tray
// codes side by side: what the dearer one cost, how often it is used and how long it
// lasts, how many more plants it gave where both were sown together, and what those
// plants are worth. New reads the batches, their plants and the money that they bear,
// and writes none of them. What follows is the law of these figures, rule by rule;
// all shares are fractions of 1, and nothing is rounded before it is written.
//
// # Pair
//
// A pair is two codes of trays.csv with the same number of cells and different kind,
// both with a price. The dearer is the tray, the cheaper the other; of equal prices the
// later code by bytes is the tray. Every two such codes are a pair, in order of tray,
// then other.
//
// # Matched sowings
//
// What two trays differ in shows only side by side. Alike are batches of one crop,
// variety, lot (a blank lot is one, too) and number of seeds a cell. Of the pair's
// batches that enter usable rates (usable plants out or counted, cells sown known), in
// order of sown, then batch, the first that is not yet taken opens a match, which takes
// all alike that were sown up to seven days after it. It counts if both codes are in
// it. The matches of a pair are numbered from 1, by first day sown, crop, variety, lot,
// seeds a cell.
//
// The rate of a code in a match is its usable plants over its cells sown, each added up
// over the batches; the match's difference d is the rate in the tray less the rate in
// the other.
//
// Fewer than 4 matches, or matches on fewer than 3 different first days, tell nothing:
// no figure that rests on them is given, neither difference nor value, gain, break-even,
// verdict or number to buy, and the reason is said. Else difference is the mean of d over
// all matches, and its interval reaches t x s / sqrt(S) to both sides: S the matches, s
// the standard deviation of d with divisor S - 1, t of Student with S - 1 degrees of
// freedom at the level confidence.
//
// Source of the interval: Student (1908), Biometrika 6:1-25.
//
// # Value of a plant
//
// One more usable plant is worth the transplant_value of book.csv. Where that is not
// written it is worth what one would save by sowing fewer cells, crop by crop:
//
//	(seed + mix + sowing labour) / usable plants
//
// over the batches of the crop from seed whose usable plants are out or counted, of all
// seasons. The money is what those batches first bore, carried cost left out. No crop
// has a value where the book has no money of any of the three, and a crop without a
// usable plant has none. The value of a pair is the mean over its matches with a value.
//
// A transplant that had to be bought in is dearer: where plug_price is written the
// answer is given a second time, with plug_price as the value at every match.
//
// # Life in a pair
//
// Either code has the life that rule "Life of a tray" gives it, by its own uses a
// season. The n-th tray of rule "The next tray" has the life that its own uses a season
// would give it; the life of the other, within the gain, stays.
//
// # Gain a use
//
// One use of the tray in place of the other gains, in money,
//
//	other's price / other's life in uses
//	+ mean of d x cells x value
//	- (minutes - other's minutes) x wage / 60
//
// with the cells of one tray, over the matches that have a value. Its low and high ends
// take the ends of the interval of d x cells x value, as in rule "Matched sowings", in
// place of the mean; with a single value there are none. Without a value, or where the
// other's life in uses is unknown, there is no gain. Where the minutes of either code or
// the wage is not written the third term is left out, and that is said.
//
// Losses in the field and earliness are not in it.
//
// # The average tray
//
// This asks whether the trays already owned paid. Payback in uses is price / gain, none
// where the gain is not above 0; in seasons it is that over the uses a season. Worth
// today is
//
//	-price + gain x uses a season x annuity(life in seasons)
//
// at discount_rate i a year, where the annuity of n = w + f seasons, w whole ones and a
// last part f, has every season's gain at the season's end and the last part's at its
// own:
//
//	(1 - (1+i)^-w) / i + f (1+i)^-n;  n at i = 0
//
// The verdict compares the price with gain x life in uses, without interest. Where the
// price is not above it with the low end of the gain, the tray "pays even at the low
// end"; else with the gain itself, it "pays in the middle of what the records show";
// else with the high end, it "pays only at the high end"; else it "pays not at all".
// There is no verdict where an end of the gain or the tray's life in uses is missing.
//
// Of a tray that differs from the other in nothing but its name and costs just what it
// saves, chance alone says that it pays in the middle or better in half of all books,
// and even at the low end in one of forty (TwinPaysMiddle, TwinPaysLow).
//
// Source of the annuity for whole n: PV of OpenFormula (OASIS, ODF 1.2 part 2); the last
// part is our own.
//
// # Break-even
//
// The plants that a use must give more than the other for the tray to cost no more:
//
//	(price / life in uses - other's price / other's life in uses
//	+ (minutes - other's minutes) x wage / 60) / value
//
// the minutes left out as in rule "Gain a use". It stands on one scale with the
// difference x cells.
//
// # The next tray
//
// The question is about the next tray to buy, not the average one: the more trays there
// are, the less often the last one is used. The last three seasons in which either code
// was sown are played again, each by itself. The parts of trays sown on one day in one
// code are added up and rounded up to whole trays. They are held from that day to the
// latest of their ends + tray_turnaround, and are free again on that day. By day, then
// code, each takes the free tray of the lowest number, a new one where none is free; both
// codes draw on one row of trays, numbered anew each season. Uses of tray n are the mean
// over those seasons of how often it was taken.
//
// Owned are the trays of the dearer code, today. Of each tray n beyond those owned, up to
// the last ever taken, are told its uses a season, its payback in seasons, payback in
// uses over those uses, and its worth today with those uses and the life that they leave
// it. Where there is no gain: uses alone.
//
// Source of the order in which trays are taken: greedy interval partitioning, Kleinberg
// and Tardos (2006), Algorithm Design, section 4.1.
//
// # How many to buy
//
// Buy up to the n at which the running sum of worth today, over the trays beyond those
// owned, is greatest and above 0; none where it never is. The low and the high number are
// the same with the low and the high end of the gain, and a tray pays (in the middle, at
// the low end, at the high end) up to its number. The numbers are told as they are, not
// rounded. Without a gain there are none; without its ends it is told which trays pay in
// the middle, and no more.
//
// # What would flip it
//
// The one value of a plant, and the one price, at which a life of the average tray gains
// just its price, all else as it is:
//
//	flip value = what a use costs more (rule "Break-even", before it is
//	             divided by the value) / (difference x cells)
//	flip price = gain x life in uses
//
// Either is missing where it would not be above 0, the flip value also where difference x
// cells is 0 but for the noise of floating point (below 1e-9). And one thing more is
// asked: whether the price is not above gain x life in uses, the life halved.
//
// # Trial
//
// Sown side by side, one tray of each, a difference d of 0.02, 0.05 or 0.10 in usable
// share is told at 95 % confidence in 80 of 100 trials with so many sowing dates, rounded
// up:
//
//	(z_.975 + z_.8)^2 s^2 / d^2 + z_.975^2 / 2
//
// s is the standard deviation of the differences of the pair's matches, where there are 4
// or more, else sqrt(2 p (1 - p) (1/cells + rho)), p and rho the book's usable rate and
// its scatter between batches; missing where either is.
//
// Source: Guenther (1981), Am. Stat. 35:243-244.
package trays
