// Package report computes the figures of a review from a checked record book.
//
// Everything here is a pure function of the book and the options: no file, no
// clock, no chance, no HTML. New computes each figure once; the pages and the
// data files only show them. Rules are numbered as in the list of figures in
// DEVELOPERS.md.
//
// In reading order: report.go (Report, New), batch.go (one batch: rules 1-5, 44,
// 60, 61), share.go (a rate with its sample and interval: 6-8, 43, 69),
// emergence.go, differences.go, lots.go, timing.go, losses.go, weeks.go,
// chambers.go, quality.go, leeway.go, usable.go, week.go.
//
// Money, in the order in which it is computed (money.go): traycode.go and life.go
// (a tray code over its purchases: 5, 24, 54), allocate.go, period.go and house.go
// (rows of costs.csv: 19, 21-23, 45, 50), seed.go (20), traycharge.go (24, 46),
// potting.go (25, 52), cost.go and costby.go (27, 60), ledger.go (26, 59), value.go
// (30), matches.go (28, 29, 70), gain.go, payback.go and flip.go (31, 32, 51, 65),
// nexttray.go (33, 66), trial.go (35), traygaps.go. Room: stay.go, place.go,
// room.go (34, 67), grow.go (both "if" the farm grew or switched codes).
package report
