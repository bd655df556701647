package chart

import (
	"fmt"
	"hash/fnv"
	"slices"
	"strings"

	"traybook/records"
	"traybook/report"
	"traybook/report/rate"
	"traybook/report/words"
)

// Name makes a figure's name of its parts: lower-case letters, digits and
// hyphens. A part that holds anything else gets a short sum of its bytes, so that
// two different parts never make the same name.
func Name(parts ...string) string {
	out := make([]string, len(parts))
	for i, p := range parts {
		out[i] = slug(p)
	}
	return strings.Join(out, "-")
}

// slug keeps what a name may hold, and adds a sum of the bytes where that is not all.
func slug(s string) string {
	var b strings.Builder
	for _, r := range s {
		if r >= 'a' && r <= 'z' || r >= '0' && r <= '9' {
			b.WriteRune(r)
		}
	}
	if b.String() == s && s != "" {
		return s
	}
	sum := fnv.New32a()
	sum.Write([]byte(s))
	return fmt.Sprintf("%sx%08x", b.String(), sum.Sum32())
}

// season names a figure of a season.
func season(figure string, year int, more ...string) string {
	return Name(append([]string{figure, fmt.Sprint(year)}, more...)...)
}

// Specs returns every chart that a page shows, in a fixed order: those of a
// season's review for all seasons, the others for the season reviewed, for seasons
// whose note asks for them, and for the whole book. A chart that would have
// nothing to show is not among them. Each comes twice, for a page and then, under
// the name that NarrowName gives, for a narrow screen.
func Specs(r *report.Report) []Spec {
	var specs []Spec
	for _, f := range figures(r) {
		specs = append(specs, f.spec().both()...)
	}
	return specs
}

// LeftOut stands in for every chart of a review built without them. Nothing of a chart is
// made for it but its name.
func LeftOut(r *report.Report) []Drawing {
	var out []Drawing
	for _, f := range figures(r) {
		out = append(out, Drawing{Name: f.name, Missing: MissingLeftOut})
	}
	return out
}

// NarrowName is the name of a chart's drawing for a narrow screen.
func NarrowName(chart string) string { return chart + narrowSuffix }

// both are a chart's drawings, the narrow one last.
func (s Spec) both() []Spec { return []Spec{s, *s.narrow} }

// figure is a chart that there is: its name, and what makes the rest of it under that name
// when it is to be drawn.
type figure struct {
	name string
	make func(name string) Spec
}

// spec makes the chart.
func (f figure) spec() Spec { return f.make(f.name) }

// figures returns every chart once.
func figures(r *report.Report) []figure {
	var all []figure
	for _, year := range r.Batches.Seasons {
		if noteAsks(r, year, "losses") {
			all = append(all, losses(r, year)...)
		}
		all = append(all, weeks(r, year)...)
	}
	return append(all, rooms(r, r.Season)...)
}

// noteAsks reports whether a season's note may hold a fenced block "figure NAME".
func noteAsks(r *report.Report, year int, figure string) bool {
	return slices.ContainsFunc(r.Book.Notes, func(n records.Note) bool {
		return n.Year == year && strings.Contains(n.Text, "figure") && strings.Contains(n.Text, figure)
	})
}

// pointer is a figure as charts take it: nil where it is missing.
func pointer(n rate.Num) *float64 {
	if !n.Known {
		return nil
	}
	return &n.Value
}

// batches writes a sample: 1 batch, 12 batches.
func batches(n int) string { return words.Count(n, "batch", "batches") }

// percent writes a share of 1 as a table does, as plain text: 83 %.
func percent(share float64) string { return words.PercentNumber(share) + " %" }
