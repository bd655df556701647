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
// later code by bytes is the tray. Both were sown, from seed, with one crop's variety: two
// codes that never were have no row, for no two sowings of theirs could be matched. Every
// two such codes are a pair, in order of tray, then other. Of more than 40 codes with a
// price that were sown from seed, the 40 with the most such batches, and of as many the
// earlier by bytes, are set side by side; how many are not is said.
//
// # Matched sowings
//
// What two trays differ in shows only side by side. Alike are batches of one crop,
// variety, lot (a blank lot is one, too) and number of seeds a cell. Of the pair's
// batches from seed that enter usable rates (usable plants out or counted, cells sown
// known), in order of sown, then batch, the first that is not yet taken opens a match,
// which takes all alike that were sown up to seven days after it. It counts if both codes
// are in it. The matches of a pair are numbered from 1, by first day sown, crop, variety,
// lot, seeds a cell.
//
// The rate of a code in a match is its usable plants over its cells sown, each added up
// over the batches; the match's difference d is the rate in the tray less the rate in
// the other.
//
// Fewer than 4 matches, or matches on fewer than 3 different first days, tell nothing:
// no figure that rests on them is given, neither difference nor value, gain, break-even,
// verdict or number to buy; the reason is said, and the trial that would tell. Else
// difference is the mean of d over all matches, and its interval reaches t x s / sqrt(S)
// to both sides: S the matches, s the standard deviation of d with divisor S - 1, t of
// Student with S - 1 degrees of freedom at the level confidence.
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
// A transplant that had to be bought in is dearer, but an extra plant spares one only
// where it fills a gap. Where plug_price is written and the tray gave more plants, the
// answer is given a second time, every match with a value valued at
//
//	plug_price x sum min(a, wanted - usable, not below 0) / sum a,  a = difference x cells sown
//
// over the other's ended batches with `wanted` whose usable plants are out or counted;
// without such a batch it is not.
//
// # Life in a pair
//
// Either code would do the same work. So `lasts` of both is turned into uses with the
// uses a season of the tray, as rule "Life of a tray" has it; where those are unknown each
// code's by its own:
//
//	life in uses    = the smaller of uses and lasts x uses a season, not below 1
//	life in seasons = life in uses / uses a season
//
// A tray does not last less than the trays of its code have stood already: where the
// book's tray-uses of the other, over its trays bought, lie above its life in uses, they
// are its life, and that is said. A code of which a count is blank tells nothing so.
//
// The n-th tray of rule "The next tray" has the life that its own uses a season would
// give it; the life of the other, within the gain, stays.
//
// # Gain a use
//
// One use of the tray in place of the other gains, in money,
//
//	other's price / other's life in uses
//	+ mean of d x cells x value
//	- (minutes - other's minutes) x wage / 60
//	- (cell_ml - other's cell_ml) x cells x price of a millilitre of mix
//
// with the cells of one tray, over the matches that have a value; with fewer than two
// there is no gain, for no range could be told. Its low and high ends take the ends of
// the interval of d x cells x value, as in rule "Matched sowings", in place of the mean.
// Without the other's life in uses there is no gain either. Where the minutes of either
// code or the wage is not written the third term is left out, where a volume or the price
// is not known the fourth, and that is said. The price of a millilitre is the mix borne by
// the batches of the last three finished seasons with a volume, over the millilitres of
// all their cells sown.
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
// Where the uses a season are unknown it is -price + gain x life in uses. What is 0 but
// for the noise of floating point, 1e-9 of the larger term, is 0.
//
// The verdict asks whether worth today is 0 or more. Where it is with the low end of the
// gain, the tray "pays even at the low end"; else with the gain itself, it "pays in the
// middle of what the records show"; else with the high end, it "pays only at the high
// end"; else it "pays not at all". There is no verdict without a gain or the tray's life
// in uses.
//
// What chance alone says of a tray that differs from the other in nothing but its name,
// and the bad case beside the good, stands at TwinPaysMiddle.
//
// Source of the annuity for whole n: PV of OpenFormula (OASIS, ODF 1.2 part 2); the last
// part is our own.
//
// # Break-even
//
// The plants that a use must give more than the other for the average tray to be worth
// just its price today:
//
//	(price / (uses a season x annuity(life in seasons)) - other's price / other's life in uses
//	+ (minutes - other's minutes) x wage / 60 + the extra mix) / value
//
// the last two terms before the bar as in rule "Gain a use"; where the uses a season are
// unknown it begins with price / life in uses. It stands on one scale with the difference
// x cells.
//
// # The next tray
//
// The question is about the next tray to buy, not the average one: the more trays there
// are, the less often the last one is used. The last three finished seasons (rule
// "Seasons") are gone through again, each by itself; one without a sowing in either code
// counts as no use. Everything sown in the tray counts, and of what was sown in the other
// the crops that have a match: nobody knows what the tray would do for the rest, which
// are told and left out. The parts of trays sown on one day in one code are added up and
// rounded up to whole trays. They are held from that day to the latest of their ends +
// tray_turnaround, and are free again on that day. By day, then code, each takes the free
// tray of the lowest number, a new one where none is free; both codes draw on one row of
// trays, numbered anew each season. Uses of tray n are the mean over those seasons of how
// often it was taken.
//
// Owned are the trays of the dearer code, today; where a count of it is blank there are no
// rows, and that is said. The uses of the trays beyond those owned are sorted, most first.
// Of each, up to the last ever taken, are told its uses a season, its payback in seasons,
// payback in uses over those uses, and its worth today with those uses and the life that
// they leave it (rules "Life in a pair", "The average tray"). Where there is no gain: uses
// alone.
//
// Source of the order in which trays are taken: greedy interval partitioning, Kleinberg
// and Tardos (2006), Algorithm Design, section 4.1.
//
// # How many to buy
//
// Buy up to the n at which the running sum of worth today, over the trays beyond those
// owned, is greatest and above 0; none where it never is. A tray that is worth just its
// price is not bought. The low and the high number are the least and the most over the
// ends of the gain and over the life of the other, in uses:
//
//	as written (rule "Life in a pair")
//	tray-uses / trays bought, not below 1 and not above the written
//	tray-uses / trays gone where 3 or more are, not below the written
//
// the last two only where every count of the other is written. Where the middle number is
// 0 at one of these lives and not at another, it turns on how long the other lasts, and
// that is said. A tray pays (in the middle, at the low end, at the high end) up to its
// number.
//
// The numbers are told as they are, not rounded; with them the money out, number x price,
// and the sum of worth today of the trays so counted, in the middle and at the ends of the
// gain. Buying is said outright only where the low number is above 0; else, with the
// middle above 0, it may pay. Where the worth is under a tenth of the money out it is
// about even. Without a gain, or where nobody knows how many are owned, there is no
// number, and the reason is said.
//
// # What would flip it
//
// Two trays are asked: the first beyond those owned, with which the answer becomes none,
// and where more than one is counted the last, with which it becomes fewer. With u the
// uses a season of that tray it is worth just its price today where
//
//	gain x u x annuity(life in uses / u) = price
//
// Told are the price, the one value of a plant over the matches with a value, the life of
// the tray in uses and the life of the other in uses that make it so, each alone, all else
// as it is, to 1e-9. Here no life is held at 1 and neither lasts nor uses caps one; the
// life found is told in seasons, too, over u. Missing is what would not be above 0, a
// price not above the other's (the two would change places), a value where the plants
// gained are 0 but for noise (1e-9), a life that interest puts out of reach, and all where
// the tray would never be used. And one thing more of the first: whether its worth today
// is above 0 at half its life in uses.
//
// Source of the life for whole seasons: NPER of OpenFormula.
//
// # If
//
// How many to buy if the life of the other in uses, as rule "Life in a pair" has it, were
// 0.5, 1, 1.5 or 2 times as long, not below 1, and a plant were worth what is figured,
// half of it in every match, or what plants bought in are (rule "Value of a plant") where
// that is shown. Low and high are those of the ends of the gain alone. None where there is
// no number to buy.
//
// # Trial
//
// Sown side by side, k = 1 or 4 trays of each, a difference d of 0.02, 0.05 or 0.10 in
// usable share is told at 95 % confidence in 80 of 100 trials with so many sowing dates,
// rounded up:
//
//	(z_.975 + z_.8)^2 s^2 / d^2 + z_.975^2 / 2
//	s^2 = 2 p (1 - p) / (k cells) + e^2
//
// p is the book's usable rate, cells those of one tray. The first term is the chance of the
// cells, which more trays lessen; e^2 is what dates differ beyond it, which they do not:
// over all pairs with 4 matches or more, S of them in a pair,
//
//	[sum (d - the pair's mean)^2 - sum (S - 1)/S x sum p (1 - p)(1/cells_tray + 1/cells_other)] / sum (S - 1)
//
// not below 0, cells_tray and cells_other being the cells sown of a match; where there is
// no such pair 2 p (1 - p) rho, rho the scatter of the book's usable rate. Missing where p
// or rho is.
//
// Source: Guenther (1981), Am. Stat. 35:243-244; the components of variance by equating
// the sum of squares to its mean.
//
// In reading order: pair.go, matches.go, value.go and plug.go (the pair, what was sown side
// by side, what a plant is worth), life.go, gain.go, worth.go (a use, and what a tray is
// worth), payback.go and verdict.go (the average tray), replay.go, nexttray.go, buy.go,
// flip.go, buyif.go (the next ones), trial.go, twin.go (what chance alone would say), new.go
// (New, Next).
package trays
