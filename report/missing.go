package report

import (
	"cmp"
	"slices"
	"strings"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/money"
	"traybook/report/trays"
)

// Missing is something the records cannot tell: what is missing, what it touches, what
// that costs the review, and what to write down, where.
type Missing struct {
	What    string   // in a grower's words: "date set out"
	Season  int      // the season whose figures it touches; 0: all of them
	Batches []string // codes of the batches it touches, sorted; none of a log that is not there
	Touched int      // how many batches it takes something from
	Weight  float64  // by which gaps are sorted: Touched times how much of their figures it takes
	Costs   string   // what the gap takes away
	Remedy  string   // which column of which log to fill
	Places  []Place  // where; none where nothing can be mended afterwards
	Minutes int      // to write all of it down, an estimate; 0 where there is no place
}

// Place is a cell to fill: of a row that is there its line in the file and, where the log
// has the column, the spreadsheet's name of the cell; else of a row to add.
type Place struct {
	File, Column string
	Line         int    // 0: a row to add
	Cell         string // empty: a row, or a column, to add
	Of           string // the batch, lot, tray code or setting that it is about; empty: a whole log
}

// How long it takes to write things down, minutes each; estimates of ours. What is
// written in a diary is typed, what stands on a bill is looked for first.
const (
	typing  = 1 // a cell
	adding  = 2 // a row
	looking = 3 // for a bill, a packet or a shelf to count
	asking  = 5 // for a setting
)

// How much of a batch's figures a gap takes, by which the costliest comes first; choices of
// ours.
const (
	whole  = 1.0 // a figure that much rests on: what came up, what was usable, what it cost
	part   = 0.5 // such a figure is guessed, or lacks a part
	detail = 0.1 // something that stands beside the figures
	none   = 0.0 // no figure of a batch
)

// gap is one kind of Missing without what it touches: where it is to be written, how many
// minutes a place takes, and how much it takes from each batch.
type gap struct {
	what, costs, remedy string
	log, column         string
	minutes             int
	weight              float64
}

// missing returns the gap as it touches so many batches.
func (g gap) missing(season, touched int, batches []string, places []Place) Missing {
	return Missing{What: g.what, Season: season, Batches: batches, Touched: touched, Weight: float64(touched) * g.weight, Costs: g.costs, Remedy: g.remedy,
		Places: places, Minutes: g.minutes * len(places)}
}

// naming returns the gap with the codes that it is about in its words.
func (g gap) naming(codes []string) gap {
	g.what += ": " + strings.Join(codes, ", ")
	return g
}

// place is the gap's column in a row of its log.
func (g gap) place(book *records.Book, row records.At, of string) Place {
	at := book.Where(row, g.log, g.column)
	return Place{File: cmp.Or(at.File, g.log), Column: g.column, Line: at.Line, Cell: at.Cell, Of: of}
}

// newRow is a row to add to the gap's log.
func (g gap) newRow(of string) Place { return Place{File: g.log, Column: g.column, Of: of} }

// missingOf lists what the records cannot tell, the costliest first: of the trays, whole logs, rows and cells of batches, seed lots, settings. Of a book without a
// sowing there is nothing to tell but of its trays.
func missingOf(book *records.Book, b *batch.Batches, m *money.Figures, g *germination.Figures, t *trays.Figures) []Missing {
	list := trayGapsOf(book, b, m, t)
	if len(m.Borne) > 0 {
		list = slices.Concat(list, logsMissing(book, m.Borne), batchesMissing(book, b.Today, m.Borne, g), lotsMissing(book, b, g), settingsMissing(book, m.Borne))
	}
	slices.SortStableFunc(list, func(a, b Missing) int { return cmp.Compare(b.Weight, a.Weight) })
	return list
}

// MissingIn returns what touches a season: its own gaps and those of all seasons.
func (r *Report) MissingIn(season int) []Missing {
	return batch.Filter(r.Missing, func(m Missing) bool { return m.Season == 0 || m.Season == season })
}

// codesOf lists the code of each.
func codesOf[T any](list []T, code func(T) string) []string {
	codes := slices.Grow([]string(nil), len(list)) // nil of none
	for _, x := range list {
		codes = append(codes, code(x))
	}
	return codes
}

// codeOf is a batch's code.
func codeOf(b *Record) string { return b.Code }

// has reports whether the book has a log, or any row of it.
func has(book *records.Book, log string) bool {
	rows := map[string]int{"counts.csv": len(book.Counts), "scores.csv": len(book.Scores), "trays.csv": len(book.Trays), "lots.csv": len(book.Lots),
		"costs.csv": len(book.Costs), "chamber.csv": len(book.Chamber), "house.csv": len(book.House), "out.csv": len(book.Outs)}
	return book.Has(log) || rows[log] > 0
}
