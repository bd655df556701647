// Package data holds the data files of a review: every figure of a report as
// plain tables, ready to be written as CSV under data/.
//
// Task: name the files and their columns, and put figures into cells. No figure
// is computed here, nothing is rounded. In reading order: cell.go (one value),
// file.go (one table and its CSV), then the tables by subject: book.go,
// germination.go, quality.go, cost.go, trays.go, room.go, years.go, sowing.go.
package data

import (
	"iter"

	"traybook/report"
)

// files makes each data file, in order.
var files = []func(*report.Report) File{
	inputs, batches,
	emergence, differences, lots, timing, losses, weeks, climate, chambers,
	quality, leeway, usable,
	cost, ledger,
	payback, decision, buyIf, matches, nextTray, trial, load, inUse,
	changes, heating,
	sow, balance, wishes,
	week, problems,
}

// Files gives all data files of a report, in a fixed order, each made when it is asked
// for: those of a large book together are larger than the book.
func Files(r *report.Report) iter.Seq[File] {
	return func(yield func(File) bool) {
		for _, of := range files {
			if !yield(of(r)) {
				return
			}
		}
	}
}
