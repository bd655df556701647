package main

import (
	"maps"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"

	"traybook/records"
	"traybook/report"
	"traybook/report/chart"
	"traybook/report/data"
	"traybook/templates"
)

type buildCommand struct {
	Book    string            `arg:"" help:"The record book's folder."`
	Out     string            `placeholder:"DIR" help:"Where the review goes (BOOK/site)."`
	Season  int               `placeholder:"YEAR" help:"The season reviewed on the front page (the last)."`
	Today   string            `placeholder:"DATE" help:"Stands for today, as 2026-05-17 (the last date in the book)."`
	Strict  bool              `help:"Build nothing while any row has an error."`
	Grow    float64           `placeholder:"FACTOR" help:"Show room and trays if every batch had this many times its trays."`
	Switch  map[string]string `placeholder:"FROM=TO" help:"Show room and trays if batches of one tray code stood in another."`
	NoCache bool              `help:"Draw every chart anew."`
	Echarts string            `placeholder:"FILE" help:"Draw charts with this copy of ECharts."`
	JSON    bool              `name:"json" help:"Problems as one JSON object a line."`
}

// Run builds the review: read, compute, draw, set, swap in.
func (c *buildCommand) Run(out *voice) error {
	l, err := load(c.Book)
	if err != nil {
		return err
	}
	options, err := c.options()
	if err != nil {
		return err
	}
	if l.fatal() || c.Strict && l.errors() > 0 {
		return c.refuse(out, l)
	}
	r, err := l.compute(options)
	if err != nil {
		return withProblems(out, l, c.JSON, err)
	}
	drawings, drawn, err := c.draw(out, r)
	if err != nil {
		return err
	}
	files, pages, err := site(r, drawings)
	if err != nil {
		return err
	}
	if err := out.problems(r.Problems, c.JSON); err != nil {
		return err
	}
	dir := c.folder()
	if err := writeSite(dir, files); err != nil {
		return err
	}
	l.problems = r.Problems
	return c.summary(out, l, dir, pages, drawn)
}

// refuse says the problems and that nothing was built.
func (c *buildCommand) refuse(out *voice, l loaded) error {
	if err := out.problems(l.problems, c.JSON); err != nil {
		return err
	}
	out.remark("nothing was built: %s to mend", counted(l.errors(), "error"))
	if l.fatal() {
		return status(nothing)
	}
	return status(leftOut)
}

// withProblems says the problems before a failure that they explain.
func withProblems(out *voice, l loaded, asJSON bool, err error) error {
	if e := out.problems(l.problems, asJSON); e != nil {
		return e
	}
	return err
}

func (c *buildCommand) folder() string {
	if c.Out != "" {
		return filepath.Clean(c.Out)
	}
	return filepath.Join(c.Book, "site")
}

func (c *buildCommand) options() (report.Options, error) {
	o := report.Options{Season: c.Season, Grow: c.Grow}
	if c.Grow < 0 {
		return o, failure("give a factor such as 1.2", "--grow %g: below 0", c.Grow)
	}
	for _, from := range slices.Sorted(maps.Keys(c.Switch)) {
		o.Switch = append(o.Switch, report.Switch{From: from, To: c.Switch[from]})
	}
	var err error
	o.Today, err = today(c.Today)
	return o, err
}

func today(s string) (records.Date, error) {
	if s == "" {
		return 0, nil
	}
	d, ok := records.ParseISO(s)
	if !ok {
		return 0, failure("write it as 2026-05-17", "--today %s: not a date", s)
	}
	return d, nil
}

// draw draws the charts and counts those that came out.
func (c *buildCommand) draw(out *voice, r *report.Report) (templates.Charts, int, error) {
	bundle := chart.Bundle()
	if c.Echarts != "" {
		var err error
		if bundle, err = os.ReadFile(c.Echarts); err != nil {
			return nil, 0, err
		}
	}
	if bundle == nil {
		out.remark("no chart runtime, so a line stands where each chart would be; " +
			"run go generate ./... in traybook's source and build it anew, or give --echarts FILE")
	}
	d, err := chart.NewDrawer(chart.DrawerOptions{
		Bundle: bundle, CacheDir: c.cacheDir(), Workers: runtime.GOMAXPROCS(0), Progress: out.progress,
	})
	if err != nil {
		return nil, 0, err
	}
	drawings, err := d.Draw(chart.Specs(r))
	if err != nil { // the other charts are drawn, and the page says which is not
		out.remark("%v", err)
	}
	charts, drawn := templates.Charts{}, 0
	for _, g := range drawings {
		charts[g.Name] = g
		if g.Missing == "" {
			drawn++
		}
	}
	return charts, drawn, nil
}

// cacheDir is where drawn charts are kept; empty: nowhere.
func (c *buildCommand) cacheDir() string {
	dir, err := os.UserCacheDir()
	if err != nil || c.NoCache {
		return ""
	}
	return filepath.Join(dir, "traybook", "charts")
}

// site sets the pages and the data files.
func site(r *report.Report, charts templates.Charts) ([]siteFile, int, error) {
	pages, remarks, err := templates.Pages(r, charts)
	if err != nil {
		return nil, 0, err
	}
	r.Problems = append(r.Problems, remarks...)
	records.SortProblems(r.Problems)
	var files []siteFile
	html := 0
	for _, p := range pages {
		files = append(files, siteFile{p.Path, p.Body})
		if strings.HasSuffix(p.Path, ".html") {
			html++
		}
	}
	for _, f := range data.Files(r) {
		body, err := f.CSV()
		if err != nil {
			return nil, 0, err
		}
		files = append(files, siteFile{"data/" + f.Name + ".csv", body})
	}
	return files, html, nil
}

func (c *buildCommand) summary(out *voice, l loaded, dir string, pages, drawn int) error {
	_, left, _ := l.rows()
	out.result("%s, %s, %s left out; open %s", counted(pages, "page"), counted(drawn, "chart"),
		counted(left, "row"), filepath.Join(dir, "index.html"))
	if l.errors() > 0 {
		return status(leftOut)
	}
	return nil
}
