package main

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"path/filepath"

	"traybook/cmd/traybook/internal/folder"
	"traybook/report"
	"traybook/report/words"
	"traybook/templates"
)

type sheetsCommand struct {
	Book  string `arg:"" help:"The record book: a folder, or a workbook (.xlsx, .ods)."`
	Out   string `required:"" placeholder:"FILE" help:"The file to write, such as sheets.html; it must not exist or be such a file."`
	Today string `placeholder:"DATE" help:"Stands for today, as 2026-05-17 (the last date in the book)."`
	Since string `placeholder:"DATE" help:"Labels for what was sown from this day on (the last 7 days)."`
}

// sheetsMark opens every file of sheets; only such a file is written over.
const sheetsMark = "<!DOCTYPE html><!-- sheets made by traybook -->\n"

// Run writes one printable file. With no batch due the forms are blank and still written:
// paper is needed all the same.
func (c *sheetsCommand) Run(out *voice) error {
	l, err := load(out, c.Book)
	if err != nil {
		return err
	}
	day, err := today(c.Today)
	if err != nil {
		return err
	}
	since, err := dateOf("--since", c.Since)
	if err != nil {
		return err
	}
	if l.fatal() {
		return refuse(out, l, telling{})
	}
	r, err := l.compute(report.Options{Today: day})
	if err != nil {
		return withProblems(out, l, telling{}, err)
	}
	sheets, err := templates.SheetFile(r, since)
	if err != nil {
		return err
	}
	if err := out.problems(l.problems, telling{}); err != nil {
		return err
	}
	out.total(l, telling{})
	if err := writeSheets(out, c.Out, sheets.Body); err != nil {
		return err
	}
	out.result("forms for %s, %s; open and print %s", words.Count(sheets.Batches, "batch", "batches"), words.Count(sheets.Labels, "label", "labels"), c.Out)
	return l.status()
}

// writeSheets writes the file beside its place and moves it in.
func writeSheets(out *voice, name string, body []byte) error {
	if _, err := os.Stat(filepath.Dir(name)); err != nil {
		return cannotWrite(name, err)
	}
	return whileHeld(out, name, mayWriteOver, func(place *folder.Held) error {
		if err := place.PutFile(append([]byte(sheetsMark), body...)); err != nil {
			return cannotWrite(name, err)
		}
		return nil
	})
}

// mayWriteOver refuses what is not a file of sheets.
func mayWriteOver(name string) error {
	old, err := os.ReadFile(name)
	switch {
	case name == "":
		return failure("name a file such as sheets.html", "--out: no file is named")
	case err != nil && !errors.Is(err, fs.ErrNotExist):
		return failure("name a new file", "--out %s: %v", name, reason(err))
	case err == nil && !bytes.HasPrefix(old, []byte(sheetsMark)):
		return failure("name a new file", "--out %s: traybook did not make the file that stands there", name)
	}
	return nil
}
