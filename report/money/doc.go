// Package money is what transplants cost. Every sum of a record book (rows of
// costs.csv, seed lots, trays) is entered in a ledger by season and category and shared
// out among the batches that it was spent on (allocate.go, days.go, seed.go,
// traycharge.go); batches that were potted on hand their cost to those that came of
// them (potting.go); tables then say what a usable transplant cost, and of what
// (cost.go, table.go). A part of a row is exact to floating point, so that the ledger
// and the tables agree to the cent; a sum of which rounding alone is left, less than
// 1e-9 of its largest term, is 0 (tally.go; rule "Missing").
//
// A shared row is one without batch, crop and tray. The shares below are of the row's
// amount: a batch with a weight w of all weights W bears amount x w / W.
//
// # Direct rows
//
// A row with a batch goes to that batch, whatever its season; where there is no such
// batch it is unborne. One with a crop, a tray or both goes to the batches of its
// season that have them: seed by seeds sown, mix as in rule "Mix", sowing labour by
// trays, labour of setting out by usable plants, all else by tray-days. Where all
// weights are 0: by trays; where there is no such batch: unborne. from and until of
// such a row say nothing. Where all weights of shared seed, mix, feed, equipment or
// other are 0, they go by trays too.
//
// # Seed
//
// Of a lot with a price: price / the larger of seeds bought and seeds sown from it in
// the whole book, x the seeds that a batch sowed from it. Seeds bought are as written,
// else grams x seeds per gram, as written or at the middle of the trade table's range.
// Seed in hand is in no season and not in the ledger: it stands with the lots.
//
// Shared rows of seed go to the season's batches without a priced lot, by seeds sown;
// where none of those sowed a seed, to all that did (a batch that was potted on sowed
// none and bears none); where nobody did, by trays.
//
// # Mix
//
// Shared mix goes to the season's batches by cell_ml x cells sown; by cells alone if the
// volume of any of them is unknown. A batch of unknown cells takes none.
//
// # Other shared rows
//
// Shared feed, equipment and other go to the season's batches by tray-days.
//
// # Bills over a period
//
// Shared rows of heat, power, water and labour have a period from..until, both days
// counted. A missing end is the row's date. A missing start is the day after the latest
// end of the shared rows of its category (of labour: and task) that have an earlier date
// in its season, else the season's first day; rows of one date have the same start; it
// is never after the row's own end. A season's only such row, with neither from nor
// until, covers the whole season. Labour without a task is care.
//
// A row falls on the batches of whatever season: sowing labour by trays sown in the
// period; labour of setting out by usable plants of the batches that ended in it (an end
// written or assumed), and where only batches without a plant did, by their tray-days
// in it, else by their trays; care, power and water by tray-days in it. A row in whose
// period nothing stood (was sown, ended) is unborne. Of more rows of setting out than a
// farm has, times its batches (mostFailed in share.go), the last go by trays at once.
//
// # Heat
//
// A row of heat has a period as above. Its heated days are the period's days in
// heating_months, all of them where none is. It goes by tray-days on those, each day
// weighted by
//
//	max(0, 15 C - (out_low + out_high) / 2)
//
// if house.csv has both readings for every one of them; of several rows of a day the
// last with both stands. Where all weights are 0: by tray-days on the heated days alone.
// A row on whose heated days nothing stood is unborne: what stood on the other days did
// not cause it.
//
// Sources: none for the 15 C as a house's balance point; common practice.
//
// # Life of a tray
//
// Uses per season = trays sown / trays owned in a season (rule "Tray codes"), the mean of
// the yearly ratios over those of the last three finished seasons in which the code was
// owned. Where that is 0, or the code was owned in none of them: the ratio of the season
// at hand; where that is 0 or unknown too: unknown. A season in which nobody knows how
// many were owned is none in which the code was owned.
//
// Years in use = lasts; where that is blank beside written uses 15, where neither is
// written 1, each marked. Life in uses = the smaller of uses and years x uses per season;
// life in seasons = the smaller of years and uses / uses per season; of those known.
// Where uses per season are unknown: uses and years alone.
//
// What the book itself shows of a life stands beside it in words, "N of M trays gone so
// far, after U tray-uses": the negative counts of the code, the trays ever bought of it
// (unknown where a count is blank) and the trays ever sown in it. It enters rules "Life in
// a pair" and "How many to buy" only.
//
// Sources: none for the 15 years beside uses; common practice.
//
// # Tray charge
//
// A purchase with a price and a count is charged a season
//
//	price x i (1+i)^n / ((1+i)^n - 1) x trays left of it   (i = 0: price / n x trays)
//
// where i = discount_rate and n = life in seasons, which may be a fraction: in the season
// of bought and the following, floor(n) seasons whole, then for the fraction left that
// part of the charge. No date: every season. Rows with a negative count take from the
// oldest purchase, and so on to the later ones, from the season of their date on; a
// purchase with a blank count bears no charge, which is listed under what is missing.
//
// A code first sown in the running season has a charge as any other: its life rests on
// that season's uses. The charge goes to the batches sown that season in the code, by
// trays; trays in which nothing was sown are unborne. It stands in the ledger as
// tray_charge for every season from the first to the last sowing's, at 0 too, once any
// purchase has a price and a count. Minutes a use are no part of it: that labour is in
// costs.csv.
//
// Sources: capital recovery, as ASABE EP496 charges farm machines; the same as the
// payment PMT of OpenFormula (OASIS, ODF 1.2 part 2, 6.12.37), against whose published
// case it is tested.
//
// # Potting on
//
// Batches that were potted on or pricked out take over the cost of the batch that they
// name in from, where they were sown after it. Plants moved = its rows of out.csv to
// potted-on, else the cells sown of its new batches. Given = its cost, taken-over cost
// included, x min(1, moved / its usable plants), all where those are unknown or 0;
// split over the new batches by cells sown, all unknown: by trays.
//
// The columns keep what was first borne; carried = taken over - given, 0 over the whole
// book; total = all columns + carried. The plants moved are taken off the usable plants
// of from in rules "Cost of a transplant" and "Year over year". Batches are settled by
// sown, then batch, so that cost can be handed on through several; one that was not sown
// after its from is an error (package records).
//
// # Ledger
//
// Money by season and category: a row of costs.csv belongs to the season of its date,
// seed of a lot to the sowing's, a tray charge to its own. borne = what batches of any
// season bear, unborne = the rest (an empty house, trays that lay idle), a line of its
// own; ledger = borne + unborne to 0.005. Over the whole book borne = the sum of the table
// of cost, category by category. Of what is unborne stands why: nothing stood (was sown,
// ended) on its days; no batch is what the row names; nothing was sown that season; the
// trays lay idle. Hours without a wage are no cost row.
//
// # Cost of a transplant
//
// The money columns, batches and total stand over all batches of a group. usable,
// per_transplant, failed_share and estimated_share rest on its ended batches (written or
// assumed) with a figure of usable plants of any kind:
//
//	usable           their usable plants, plants moved taken off
//	per_transplant   their cost / usable
//	estimated_share  the part of usable that is at least or estimated
//	failed_share     sum of cost x (1 - plants / cells) / sum of cost, over those of known
//	                 cells; plants are the usable ones before those moved are taken off,
//	                 since their cells did not fail; none where that cost is 0
//	per_cell         total / cells sown, both of the group's batches whose cells are
//	                 known, open ones too
//
// A group of open batches only has none of the first four: a running season is not cheap
// because half of it is paid. A batch's own per_transplant likewise. A category of which
// the book has no row (seed: nor priced lot; tray_charge: no purchase with a price and a
// count) is missing, else it is 0 where nothing was borne; without any money in the book
// every sum is missing.
//
// The groups are season x crop x variety x cells x kind; and, for the pages, season x
// crop, season, season x cells x kind, and the month of the end of a season's ended
// batches, where it lies in that season.
//
// Sources: none; own arithmetic.
//
// Beside the tables stands the price of a millilitre of mix, which rule "Gain a use"
// states and takes (mix.go).
package money
