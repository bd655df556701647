// Package data holds the data files of a review: every figure of a report as
// plain tables, ready to be written as CSV under data/.
//
// Task: name the files and their columns, and put figures into cells. No figure
// is computed here, nothing is rounded. In reading order: cell.go (one value),
// file.go (one table and its CSV), then the tables by subject: book.go,
// germination.go, quality.go, cost.go, trays.go, room.go, years.go, sowing.go.
package data

import "traybook/report"

// Files returns all data files of a report, in a fixed order.
func Files(r *report.Report) []File {
	return []File{
		inputs(r), batches(r),
		emergence(r), differences(r), lots(r), timing(r), losses(r), weeks(r), climate(r), chambers(r),
		quality(r), leeway(r), usable(r),
		cost(r), ledger(r),
		payback(r), decision(r), buyIf(r), matches(r), nextTray(r), trial(r), load(r), inUse(r),
		changes(r), heating(r),
		sow(r), balance(r), wishes(r),
		week(r), problems(r),
	}
}
