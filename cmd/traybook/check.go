package main

import (
	"traybook/report"
	"traybook/report/words"
)

type checkCommand struct {
	Book string `arg:"" help:"The record book: a folder, or a workbook (.xlsx, .ods)."`
	telling
}

// Run says every problem, the columns that are not read, and one line that counts.
func (c *checkCommand) Run(out *voice) error {
	l, err := load(out, c.Book)
	if err != nil {
		return err
	}
	if !l.fatal() && len(l.book.Sowings) > 0 && len(l.book.Notes) > 0 { // a note may ask for a figure that the book cannot give
		if _, err := l.compute(report.Options{}); err != nil {
			return err
		}
	}
	if err := out.problems(l.problems, c.telling); err != nil {
		return err
	}
	out.unread(l.book)
	rows, _, files := l.rows()
	in := words.Count(files, "file", "files")
	if placeOf(c.Book).workbook {
		in = words.Count(files, "sheet", "sheets")
	}
	out.result("%s in %s, %s", words.Count(rows, "row", "rows"), in, l.tally())
	if !l.fatal() && len(l.book.Sowings) == 0 {
		out.remark("%v", errNoSowing)
		return status(leftOut)
	}
	return l.status()
}
