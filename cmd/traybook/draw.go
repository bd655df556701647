package main

import (
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strings"

	"traybook/report"
	"traybook/report/chart"
	"traybook/report/words"
	"traybook/templates"
)

// draw draws the charts and counts those that came out. A chart that fails costs its own
// place on a page and nothing else; only where a script given by a file draws nothing at
// all is the build given up.
func (c *buildCommand) draw(out *voice, r *report.Report) (templates.Charts, int, error) {
	if c.NoCharts {
		return byName(chart.LeftOut(r)), 0, nil
	}
	bundle, err := c.bundle(out)
	if err != nil {
		return nil, 0, err
	}
	d, err := chart.NewDrawer(chart.DrawerOptions{
		Bundle: bundle, CacheDir: c.cacheDir(), Workers: runtime.GOMAXPROCS(0), Apart: apart,
		Progress: func(done, total int) { out.progress(done/2, total/2) }, // each chart is drawn twice
	})
	if err != nil {
		return nil, 0, c.badBundle(err)
	}
	drawings, err := d.Draw(chart.Specs(r))
	charts := byName(drawings)
	drawn := countDrawn(charts)
	if err != nil && drawn == 0 && c.Echarts != "" {
		return nil, 0, c.badBundle(err)
	}
	if err != nil { // the other charts are drawn, and the page says which is not
		out.remark("%s", firstLine(err))
	}
	return charts, drawn, nil
}

// drawsApart is the argument of this program where it only draws for another one of it.
const drawsApart = "--draw-apart"

// apart is this program again, to draw with a script of somebody else's.
func apart() *exec.Cmd {
	self, err := os.Executable()
	if err != nil {
		self = os.Args[0]
	}
	return exec.Command(self, drawsApart)
}

// byName are drawings as the pages look for them.
func byName(drawings []chart.Drawing) templates.Charts {
	charts := make(templates.Charts, len(drawings))
	for _, g := range drawings {
		charts[g.Name] = g
	}
	return charts
}

// countDrawn counts the charts that came out, each once for both its drawings. A chart is
// drawn wide for a screen and narrow for a phone, and is one chart to whoever counts them.
func countDrawn(charts templates.Charts) (n int) {
	for name, g := range charts {
		if _, ok := charts[chart.NarrowName(name)]; ok && g.Missing == "" {
			n++
		}
	}
	return n
}

// bundle is the chart runtime to draw with; nil where there is none.
func (c *buildCommand) bundle(out *voice) ([]byte, error) {
	if c.Echarts != "" {
		return c.readBundle()
	}
	b := chart.Bundle()
	if b == nil {
		out.remark("no chart runtime, so a line stands where each chart would be; " +
			"run go generate ./... in traybook's source and build it anew, or give --echarts FILE")
	}
	return b, nil
}

// mostOfBundle bounds the file of --echarts, bytes: ECharts is 1 MB.
const mostOfBundle = 8 << 20

// readBundle reads the file of --echarts, which may be a device that never ends.
func (c *buildCommand) readBundle() ([]byte, error) {
	f, err := os.Open(c.Echarts)
	if err != nil {
		return nil, c.badBundle(reason(err))
	}
	defer f.Close()
	b, err := io.ReadAll(io.LimitReader(f, mostOfBundle+1))
	switch {
	case err != nil:
		return nil, c.badBundle(reason(err))
	case len(b) > mostOfBundle:
		return nil, c.badBundle(fmt.Errorf("the file is larger than %d MB", mostOfBundle>>20))
	}
	return b, nil
}

// badBundle says that no chart can be drawn with the file of --echarts.
func (c *buildCommand) badBundle(err error) error {
	return failure("give the file echarts.min.js of ECharts; nothing was built", "--echarts %s: %s", c.Echarts, firstLine(err))
}

// firstLine says the first of several errors and how many more there are.
func firstLine(err error) string {
	lines := strings.Split(strings.TrimSpace(err.Error()), "\n")
	lines = slices.DeleteFunc(lines, func(s string) bool { return strings.TrimSpace(s) == "" })
	if len(lines) > 1 {
		return lines[0] + "; and " + words.Count(len(lines)-1, "more line", "more lines") + " like it"
	}
	return lines[0]
}

// cacheDir is where drawn charts are kept; empty: nowhere.
func (c *buildCommand) cacheDir() string {
	dir, err := os.UserCacheDir()
	if err != nil || c.NoCache {
		return ""
	}
	return filepath.Join(dir, "traybook", "charts")
}
