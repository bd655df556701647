// Package report computes the figures of a review from a checked record book.
//
// Everything here is a pure function of the book and the options: no file, no
// clock, no chance, no HTML. New computes each figure once; the pages and the
// data files only show them. Rules are numbered as in the list of figures in
// DEVELOPERS.md.
//
// In reading order: report.go (Report, New, in the order in which figures rest on
// each other), options.go, inputs.go. A batch: batch.go (the type), batches.go (rules 1-3, 44),
// counts.go (9, 56), scores.go (63), outs.go, ends.go (4, 60, 61). A rate with its
// sample and interval: share.go, scatter.go (6-8, 43, 69). What came up: germination.go
// (the types), emergence.go (10, 11), differences.go (57), lots.go (14, 58), timing.go
// (15, 64), losses.go, readings.go, weeks.go, chambers.go, season.go. Plants: quality.go
// (16), leeway.go (17), usable.go (18, 49). week.go (40). missing.go (what the records
// cannot tell).
//
// Money, in the order in which it is computed (money.go): traycode.go and life.go
// (a tray code over its purchases: 5, 24, 54), allocate.go, period.go and house.go
// (rows of costs.csv: 19, 21-23, 45, 50), seed.go (20), traycharge.go (24, 46),
// potting.go (25, 52), cost.go and costby.go (27, 60), ledger.go (26, 59), value.go
// (30), matches.go (28, 29, 70), gain.go, payback.go and flip.go (31, 32, 51, 65),
// nexttray.go (33, 66), trial.go (35), traygaps.go. Room: stay.go, place.go,
// room.go (34, 67), grow.go (both "if" the farm grew or switched codes).
package report
