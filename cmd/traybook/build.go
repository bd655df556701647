package main

import (
	"iter"
	"maps"
	"path/filepath"
	"slices"

	"traybook/cmd/traybook/internal/folder"
	"traybook/records"
	"traybook/report"
	"traybook/report/data"
	"traybook/report/words"
	"traybook/templates"
)

type buildCommand struct {
	Book     string            `arg:"" help:"The record book: a folder, or a workbook (.xlsx, .ods)."`
	Out      string            `placeholder:"DIR" help:"Where the review goes (BOOK/site)."`
	Season   *int              `placeholder:"YEAR" help:"The season reviewed on the front page (the last)."`
	Today    string            `placeholder:"DATE" help:"Stands for today, as 2026-05-17 (the last date in the book)."`
	Strict   bool              `help:"Build nothing while any row has an error."`
	Grow     *float64          `placeholder:"FACTOR" help:"Show room and trays if every batch had this many times its trays."`
	Switch   map[string]string `placeholder:"FROM=TO" help:"Show room and trays if batches of one tray code stood in another."`
	NoCache  bool              `help:"Draw every chart anew."`
	NoCharts bool              `help:"Leave the charts out: tables and figures alone."`
	Echarts  string            `placeholder:"FILE" help:"Draw charts with this copy of ECharts."`
	edition
	telling
}

// Run builds the review: read, compute, draw, set, swap in. The place is held all
// the while, so that of two builds the one that read the book last ends last.
func (c *buildCommand) Run(out *voice) error {
	if err := placeOf(c.Book).find(); err != nil {
		return err
	}
	options, err := c.options()
	if err != nil {
		return err
	}
	return whileHeld(out, c.folder(), mayReplace, func(site *folder.Held) error {
		return c.build(out, options, site)
	})
}

func (c *buildCommand) build(out *voice, options report.Options, place *folder.Held) error {
	l, err := load(out, c.Book)
	if err != nil {
		return err
	}
	if l.fatal() || c.Strict && l.errors() > 0 {
		return refuse(out, l, c.telling)
	}
	keepWithin(placeOf(c.Book), toBuild, leastToBuild)
	r, err := c.compute(&l, options)
	if err != nil {
		return withProblems(out, l, c.telling, err)
	}
	return c.publish(out, l, r, place)
}

// publish draws the charts, says the problems, and sets the pages into their place.
// Problems are said after the charts, as drawing shows its progress on the same screen,
// and before the pages, so that they are said even where the disk is full.
func (c *buildCommand) publish(out *voice, l loaded, r *report.Report, place *folder.Held) error {
	drawings, drawn, err := c.draw(out, r)
	if err != nil {
		return err
	}
	if err := out.problems(l.problems, c.telling); err != nil {
		return err
	}
	out.total(l, c.telling)
	pages, err := putSite(place, c.folder(), c.site(r, drawings))
	if err != nil {
		return err
	}
	return c.summary(out, l, pages, drawn)
}

// refuse says the problems and that nothing was built.
func refuse(out *voice, l loaded, how telling) error {
	if err := out.problems(l.problems, how); err != nil {
		return err
	}
	out.remark("nothing was built: %s to mend", words.Count(l.errors(), "error", "errors"))
	if l.fatal() {
		return status(nothing)
	}
	return status(leftOut)
}

// withProblems says the problems before a failure that they explain.
func withProblems(out *voice, l loaded, how telling, err error) error {
	if e := out.problems(l.problems, how); e != nil {
		return e
	}
	return err
}

// folder is where the review goes: --out, else site in the book's own folder, or in
// the one beside a workbook.
func (c *buildCommand) folder() string {
	if c.Out != "" {
		return filepath.Clean(c.Out)
	}
	return placeOf(c.Book).site()
}

// options are the flags as report wants them, where 0 stands for what was not given. What
// is given is checked before the book is read: a mistyped date is answered at once.
func (c *buildCommand) options() (o report.Options, err error) {
	if err := c.edition.check(); err != nil {
		return o, err
	}
	if c.Season != nil {
		if o.Season = *c.Season; o.Season < 1 {
			return o, failure("give a year such as 2026", "--season %d: not a year", o.Season)
		}
	}
	if c.Grow != nil {
		if o.Grow = *c.Grow; !(o.Grow > 0 && o.Grow <= report.MostGrowth) {
			return o, failure("give a factor such as 1.2", "--grow %g: not a factor above 0 and at most %d", o.Grow, report.MostGrowth)
		}
	}
	for _, from := range slices.Sorted(maps.Keys(c.Switch)) {
		o.Switch = append(o.Switch, report.Switch{From: from, To: c.Switch[from]})
	}
	o.Today, err = today(c.Today)
	return o, err
}

// today reads --today; 0 where it was not given, for report to take the book's last
// date.
func today(s string) (records.Date, error) { return dateOf("--today", s) }

// dateOf reads the date of a flag; unknown where none was given.
func dateOf(flag, s string) (records.Date, error) {
	if s == "" {
		return 0, nil
	}
	d, ok := records.ParseISO(s)
	if !ok {
		return 0, failure("write it as 2026-05-17", "%s %s: not a date", flag, s)
	}
	return d, nil
}

// site gives the pages and then the data files, each made when it is asked for and none
// kept, as the pages of a large book together are larger than it.
func site(r *report.Report, charts templates.Charts) iter.Seq2[folder.File, error] {
	return func(yield func(folder.File, error) bool) {
		for p, err := range templates.Pages(r, charts) {
			if !yield(folder.File{Path: p.Path, Body: p.Body, Written: p.Written}, err) {
				return
			}
		}
		for f := range data.Files(r) {
			body, err := f.CSV()
			if !yield(folder.File{Path: "data/" + f.Name + ".csv", Body: body}, err) {
				return
			}
		}
	}
}

// summary says on one line what was made and what was left out. Its status is 1 where rows
// were left out, although the review is there. A row that only repeats another file's
// money is not counted, as no figure lacks it.
func (c *buildCommand) summary(out *voice, l loaded, pages, drawn int) error {
	_, left, _ := l.rows()
	out.result("%s, %s, %s left out; open %s", words.Count(pages, "page", "pages"), words.Count(drawn, "chart", "charts"),
		words.Count(left, "row", "rows"), filepath.Join(c.folder(), c.first()))
	return l.status()
}
