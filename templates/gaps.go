package templates

import (
	"html/template"
	"slices"
	"strconv"
	"strings"

	"traybook/report"
	"traybook/report/batch"
	"traybook/report/words"
)

// gapLine ends a page: how much the records of its season could not tell, what of it
// costs most, and where the list stands.
type gapLine struct {
	Text template.HTML
	Href string
}

// mostGaps is how many gaps the line at a page's foot names.
const mostGaps = 2

// gapLine tells of the gaps in the logs that feed a page, those of its season and those
// of all seasons; nil where there is none.
func (s *site) gapLine(p *page) *gapLine {
	gaps := s.r.Missing
	of := template.HTML("in the records")
	if p.spec.season != 0 {
		gaps, of = s.r.MissingIn(p.spec.season), say("in the records of %s", words.Year(p.spec.season))
	}
	gaps = batch.Filter(gaps, func(m report.Missing) bool { return touches(m, p.spec.logs) })
	if len(gaps) == 0 {
		return nil
	}
	var named []template.HTML
	for _, m := range gaps {
		if len(m.Batches) > 0 && len(named) < mostGaps {
			named = append(named, say("%s%s without %s", words.Batches(len(m.Batches)), gapSeason(m, p.spec.season), name(m.What)))
		}
	}
	line := &gapLine{Text: say("%s %s.", words.Plural(len(gaps), "gap", "gaps"), of), Href: p.href("missing.html")}
	if len(named) > 0 {
		line.Text = say("%s %s; the costliest: %s.", words.Plural(len(gaps), "gap", "gaps"), of, list(named))
	}
	return line
}

// gapSeason names the season of a gap where the page speaks of several.
func gapSeason(m report.Missing, season int) string {
	if m.Season == 0 || m.Season == season {
		return ""
	}
	return " of " + words.Year(m.Season)
}

// touches reports whether a gap is in one of the logs: its remedy names it. A gap
// that names no log is everyone's.
func touches(m report.Missing, logs []string) bool {
	named := batch.Filter(allLogs, func(log string) bool { return strings.Contains(m.Remedy, log) })
	return len(named) == 0 || slices.ContainsFunc(named, func(log string) bool { return contains(logs, log) })
}

// gapID is the anchor of the gap with number i, from 0, of the list of all that is
// missing.
func gapID(i int) string { return "gap-" + strconv.Itoa(i+1) }
