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
func Specs(r *report.Report) []Spec { return bothWidths(figures(r)) }

// LeftOut stands in for every chart of a review built without them.
func LeftOut(r *report.Report) []Drawing {
	var out []Drawing
	for _, s := range figures(r) {
		out = append(out, Drawing{Name: s.Name, Missing: MissingLeftOut})
	}
	return out
}

// NarrowName is the name of a chart's drawing for a narrow screen.
func NarrowName(chart string) string { return chart + narrowSuffix }

// bothWidths puts each chart's narrow drawing after it.
func bothWidths(charts []Spec) []Spec {
	var specs []Spec
	for _, s := range charts {
		specs = append(specs, s, *s.narrow)
	}
	return specs
}

// figures returns every chart once.
func figures(r *report.Report) []Spec {
	var specs []Spec
	for _, year := range r.Batches.Seasons {
		if noteAsks(r, year, "losses") {
			specs = append(specs, losses(r, year)...)
		}
		specs = append(specs, weeks(r, year)...)
	}
	specs = append(specs, rooms(r, r.Season)...)
	return specs
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
