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
//
// What a room knows of a batch is a record of its own that holds the record of the
// room before; the last of them, Record, holds all. Beside the chain stand estimate
// (numbers only), trade (facts of the trade) and words (how numbers are written);
// data, chart and package templates show what New returns.
//
// Here stands what looks at all rooms at once. In reading order: report.go (Report,
// New), options.go, inputs.go (what two people must agree on to get the same
// digits), week.go, week_batches.go and week_room.go (this week's work), grow.go
// (room and trays "if" the farm grew or switched codes), missing.go,
// missing_batches.go and traygaps.go (what the records cannot tell).
//
// # Work due
//
// What is to be done this week, as of today (rule "Today"); batches sown later are
// not looked at.
//
//   - count: an open batch from seed without a row in counts.csv, sown longer ago than
//     its crop's median T50, else 7 days. date is the first day on which that was so:
//     sown + whole days of it + 1. value is the days since it was sown.
//   - late: an open batch past planned; on the planned day itself it is not late.
//     value is the days past it.
//   - free: trays that come free, added up by day and code, from today to 13 days
//     after: the batch's end + tray_turnaround. An open batch is taken to end on the
//     planned day, else after its crop's median stay (rule "End of a batch").
//   - room: what is left today on the benches and in the chambers (rule "Room"); it
//     may be below 0.
//
// The seven and the 13 days are this review's own choice; they have no source.
//
// # Short
//
// An open batch of which both wanted and the cells sown are known is held against the
// low end of the usable rate of its group (rules "Usable plants", "Interval of a
// share"): expected = cells sown x that low end. It is told where expected is below
// wanted; value is wanted - expected. No interval, no line: a group of too few
// batches says nothing. date is the last day on which a re-sowing still makes the
// date: planned less the crop's median stay, that day counted; none without a
// planned day.
package report
