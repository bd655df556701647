package templates

import (
	"html/template"
	"regexp"
	"strconv"

	"traybook/report/chart"
)

// figure is a chart with the table of its numbers. Either may be missing.
type figure struct {
	ID      string
	Title   string
	Caption template.HTML
	SVG     template.HTML
	Narrow  template.HTML // the same chart for a narrow screen
	Drawing template.HTML // in place of a chart: a drawing that fits every screen
	Missing string        // why there is no chart
	Table   *table
	Crop    string
	chart   bool  // it has a chart, drawn or not
	Rows    *rows // in place of chart and table: rows that tell their story
}

// figure returns the chart of a name (made by chart.Name, as in package chart;
// empty for none) with a caption and the table of its numbers (nil for none).
func (p *page) figure(chartName, title string, caption template.HTML, t *table) *figure {
	id := "figure-" + slug(title)
	if chartName != "" {
		id = "figure-" + chartName
	}
	f := &figure{ID: p.id(id), Title: title, Caption: caption, Table: t}
	p.pieces = append(p.pieces, f)
	f.chart = chartName != ""
	if d, ok := p.charts[chartName]; ok {
		f.Missing = d.Missing
		f.SVG = template.HTML(p.ownIDs(d))
		if n, ok := p.charts[chart.NarrowName(chartName)]; ok && n.SVG != "" {
			f.Narrow = template.HTML(p.ownIDs(n))
		}
	}
	return f
}

// rowsFigure is rows that tell their story, under a title.
func (p *page) rowsFigure(title string, t *rows) *figure {
	return &figure{ID: p.id("figure-" + slug(title)), Title: title, Rows: t}
}

// seasonChart is the name of a figure's chart for a season.
func seasonChart(figure string, season int) string { return chart.Name(figure, strconv.Itoa(season)) }

// Shown reports whether there is anything to show.
func (f *figure) Shown() bool {
	return f != nil && (f.SVG != "" || f.Missing != "" || f.Filled())
}

// Filled reports whether it tells anything without its chart, which may not be drawn.
func (f *figure) Filled() bool {
	return f != nil && (f.Drawing != "" || f.Table != nil && !f.Table.Empty() || !f.Rows.Empty())
}

// Where an id stands in a drawing; text in it has its quotes escaped.
var (
	chartIDs  = regexp.MustCompile(` (?:id|aria-labelledby)="[^"]*"`)
	chartRefs = regexp.MustCompile(`="(?:url\()?#`)
	idStart   = regexp.MustCompile(`(["\s])([a-z])`)
)

// ownIDs gives the ids inside a chart another start where the page shows the same
// chart twice. Ids inside a drawing begin with its name.
func (p *page) ownIDs(d chart.Drawing) string {
	start := p.id("chart-" + d.Name)
	if start == "chart-"+d.Name {
		return d.SVG
	}
	svg := chartIDs.ReplaceAllStringFunc(d.SVG, func(attribute string) string {
		attribute = attribute[1:] // the space before its name
		return " " + idStart.ReplaceAllString(attribute, "${1}"+start+"-${2}")
	})
	return chartRefs.ReplaceAllString(svg, "${0}"+start+"-")
}
