package data

import (
	"traybook/records"
	"traybook/report"
	"traybook/report/batch"
)

// inputs are the settings and assumptions that the figures rest on, each with where it
// comes from. Values are words, as the page of method prints them: a setting as it was
// written, or what a figure took where none was. A reader who works a figure out anew
// starts here.
func inputs(r *report.Report) File {
	type row = records.Input
	return table("inputs", 1, r.Inputs,
		column[row]{"name", func(i row) Cell { return str(i.Name) }},
		column[row]{"value", func(i row) Cell { return str(i.Value) }},
		column[row]{"source", func(i row) Cell { return str(i.Source) }},
	)
}

// batches has a row for each sowing: when it ended and what came of it (rules "Cells
// sown", "End of a batch", "Usable plants", "Cost of a transplant"). end_how tells whether
// end was written, is assumed, or the batch still stands; usable_how whether usable was
// counted out or is a guess. Shares are of 1, money is in the book's currency. A batch
// with a row here may still be in no rate: cells_sown or usable is then empty.
func batches(r *report.Report) File {
	type row = *report.Record
	return table("batches", 1, r.Records,
		column[row]{"batch", func(b row) Cell { return str(b.Code) }},
		column[row]{"season", func(b row) Cell { return num(b.Season) }},
		column[row]{"sown", func(b row) Cell { return date(b.Sown) }},
		column[row]{"crop", func(b row) Cell { return str(b.Crop) }},
		column[row]{"variety", func(b row) Cell { return str(b.Variety) }},
		column[row]{"tray", func(b row) Cell { return str(b.Tray) }},
		column[row]{"trays", func(b row) Cell { return num(b.Trays) }},
		column[row]{"cells_sown", func(b row) Cell { return maybe(b.CellsSown) }},
		column[row]{"end", func(b row) Cell { return date(b.End) }},
		column[row]{"end_how", func(b row) Cell { return str(b.EndHow) }},
		column[row]{"tray_days", func(b row) Cell { return num(b.TrayDays) }},
		column[row]{"emergence", func(b row) Cell { return maybe(b.Emergence()) }},
		column[row]{"usable", func(b row) Cell { return maybe(b.Usable) }},
		column[row]{"usable_how", func(b row) Cell { return str(b.UsableHow) }},
		column[row]{"cost", func(b row) Cell { return maybe(b.Cost) }},
		column[row]{"per_transplant", func(b row) Cell { return maybe(b.PerTransplant) }},
	)
}

// week is the work due as of today (rules "Alarms", "Work due", "Short", "In earlier
// years"). A row of Monday's free trays has the tray code for its subject and may be below
// 0, where more trays of a code are sown than owned. value counts days, plants or trays,
// as what asks for.
func week(r *report.Report) File {
	type row = report.WeekLine
	return table("week", 3, r.Week,
		column[row]{"what", func(w row) Cell { return str(w.What) }},
		column[row]{"date", func(w row) Cell { return date(w.Date) }},
		column[row]{"subject", func(w row) Cell { return str(w.Subject) }},
		column[row]{"value", func(w row) Cell { return maybe(w.Value) }},
		column[row]{"note", func(w row) Cell { return str(w.Note) }},
	)
}

// problems is what was found in the logs. A line or column of 0 is none: the problem is
// of a whole file.
func problems(r *report.Report) File {
	type row = records.Problem
	at := func(n int) Cell {
		if n == 0 {
			return Cell{}
		}
		return num(n)
	}
	return table("problems", 3, r.Problems,
		column[row]{"file", func(p row) Cell { return str(p.File) }},
		column[row]{"line", func(p row) Cell { return at(p.Line) }},
		column[row]{"column", func(p row) Cell { return at(p.Column) }},
		column[row]{"severity", func(p row) Cell { return str(p.Severity.String()) }},
		column[row]{"cell", func(p row) Cell { return str(p.Cell) }},
		column[row]{"found", func(p row) Cell { return str(p.Found) }},
		column[row]{"expected", func(p row) Cell { return str(p.Expected) }},
		column[row]{"remedy", func(p row) Cell { return str(p.Remedy) }},
	)
}

// groupColumns are the key columns of a table by group. Every table by group begins with
// these five, in this order, so that two files can be joined on them. cells is empty where
// no row of trays.csv has the tray code; kind then is too.
func groupColumns[T any](of func(T) batch.Group) []column[T] {
	return []column[T]{
		{"season", func(t T) Cell { return num(of(t).Season) }},
		{"crop", func(t T) Cell { return str(of(t).Crop) }},
		{"variety", func(t T) Cell { return str(of(t).Variety) }},
		{"cells", func(t T) Cell { return maybe(of(t).Cells) }},
		{"kind", func(t T) Cell { return str(of(t).Kind) }},
	}
}
