package main

import (
	"traybook/report"
	"traybook/report/words"
)

type checkCommand struct {
	Book string `arg:"" help:"The record book's folder."`
	JSON bool   `name:"json" help:"Problems as one JSON object a line."`
}

// Run says every problem, then one line that counts them.
func (c *checkCommand) Run(out *voice) error {
	l, err := load(out, c.Book)
	if err != nil {
		return err
	}
	if !l.fatal() && len(l.book.Sowings) > 0 {
		if _, err := l.compute(report.Options{}); err != nil {
			return err
		}
	}
	if err := out.problems(l.problems, c.JSON); err != nil {
		return err
	}
	rows, _, files := l.rows()
	bad := l.errors()
	out.result("%s in %s, %s, %s", words.Count(rows, "row", "rows"), words.Count(files, "file", "files"),
		words.Count(bad, "error", "errors"), words.Count(len(l.problems)-bad, "warning", "warnings"))
	if !l.fatal() && len(l.book.Sowings) == 0 {
		out.remark("%v", errNoSowing)
		return status(leftOut)
	}
	return l.status()
}
