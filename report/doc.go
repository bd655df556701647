// Package report computes the figures of a review from a checked record book.
//
// Everything here is a pure function of the book and the options: no file, no
// clock, no chance, no HTML. New computes each figure once; the pages and the data
// files only show them.
//
// Each subject stands in a room of its own, whose package comment states its rules
// in full; code and tests refer to a rule by its name, as in: rule "Cells sown".
// New calls the rooms in the order in which figures rest on each other, each a
// function of values that returns a value:
//
//	batch        what was sown, how long it stood; seasons, tray codes
//	rate         shares with their sample and interval; scatter
//	germination  counts, what came up, by variety, lot, week, chamber
//	plants       looks at quality, leeway, usable plants
//	money        what the batches bear, what a transplant cost
//	trays        whether trays pay, how many more to buy
//	room         the load of benches, chambers and tray codes
//	years        season against season, like sowings for like; heat beside the cold
//	sowing       how much to sow, what the fields want, what was short
//
// What a room knows of a batch is a record of its own that holds the record of the
// room before; the last of them, Record, holds all. Beside the chain stand estimate
// (numbers only), trade (facts of the trade) and words (how numbers are written);
// data, chart and package templates show what New returns.
//
// Here stands what looks at all rooms at once. In reading order: report.go (Report,
// New), options.go, inputs.go (what two people must agree on to get the same
// digits), week.go and week_*.go (this week's work), grow.go (room and trays "if" the
// farm grew or switched codes), missing.go and missing_*.go (what the records cannot
// tell, where to write it and how long that takes).
//
// # Work due
//
// What is to be done this week, as of today (rule "Today"); batches sown later are
// not looked at. Alarms of the last 14 days stand before it (rule "Alarms").
//
//   - count: an open batch from seed without a row in counts.csv, sown longer ago than
//     its crop's median T50, else 7 days. date is the first day on which that was so:
//     sown + whole days of it + 1. value is the days since it was sown. Also an open
//     batch from seed of which the last count came early (rule "Counted early"), once
//     sown + twice the crop's median T50 (none: 14 days), rounded up, has come: that
//     day is its date, and its note again.
//   - late: an open batch past planned; on the planned day itself it is not late.
//     value is the days past it. Beside it stands what was still fit so late, of its own
//     crop and kind of tray where three batches were looked at then (rule "Leeway").
//   - free: trays that come free, added up by day and code, from today to 13 days
//     after: the batch's end + tray_turnaround. An open batch is taken to end on the
//     planned day, else after its crop's median stay (rule "End of a batch"), and never
//     before today.
//   - left: the trays of each code of trays.csv that are free on each of the eight
//     Mondays after today, if nothing more is sown: owned on that day less those not yet
//     free as above; below 0 where more are used than owned. None of a code of which
//     nobody knows how many are owned (rule "Tray codes").
//   - room: what is left today on the benches and in the chambers (rule "Room"); it
//     may be below 0.
//
// The days and Mondays are this review's own choice; they have no source.
//
// # Short
//
// Three ways in which a batch gives fewer plants than are wanted of it.
//
// Likely short: an open batch with wanted and a count that is not early. By what its crop
// kept of what came up,
//
//	forecast  = cells sown x its emergence x rate kept
//	rate kept = sum usable / sum (cells sown x emergence), not above 1
//
// over the crop's batches of all seasons with usable by out or counted (rule "Usable
// plants"), an emergence above 0 and a written end; of fewer than 3 such batches the
// book's; of still fewer none. It is told where the forecast is below wanted: value =
// wanted - forecast. date is the last day on which a new sowing still makes the date:
// planned, else sown + the crop's median stay, less that stay; past it, it is too late.
//
// Sown too few: an open batch from seed with wanted and no such count, where the chance of
// wanted plants or more lies below 0.1 (less 1e-12). The plants of its cells are
// beta-binomial with the usable rate of the measured batches from seed, all seasons, of
// its crop, variety, cells and kind, of fewer than 3 its crop and cells, else its crop,
// else none, and the crop's rho of rule "How much to sow". Where wanted is above its cells
// the chance is 0. value = wanted - cells sown x that rate; date likewise.
//
// What the rate rests on is said of both: the batches, and what they have in common.
//
// Fell short: a batch that ended, written or assumed, today or in the 29 days before, with
// usable by out or counted below wanted, and that no other batch replaces. date is its
// end, value = wanted - usable.
//
// Sources: none; the bounds are choices of ours. (Tried on the earlier seasons of the
// example, each batch told as of the days after its count: TestShortInEarlierSeasons says
// how often what was told came true.)
//
// # In earlier years
//
// What was sown a year ago in the days ahead, and what came of it: the batches sown in the
// seven days from the same day and month of the year before, 28 February for a 29th that
// it lacks. date is sown, value the usable plants.
package report
