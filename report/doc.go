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
// chambers.go, quality.go, leeway.go, usable.go, cost.go, ledger.go, payback.go,
// matches.go, nexttray.go, trial.go, room.go, week.go.
package report
