package templates

import (
	"html/template"
	"strconv"
	"strings"

	"traybook/report"
	"traybook/report/words"
)

// gaps ends a page: what the records could not tell, and what to write down.
type gaps struct {
	Gaps []gap
	All  string // address of the page of all that is missing
}

// gap is one thing the records could not tell.
type gap struct {
	ID      string
	What    string
	Sample  string // how many batches it touches
	Costs   string
	Remedy  string
	Batches template.HTML // links; on the missing page only
	Href    string        // to it on the missing page
}

// gapsOf are the gaps in the logs that feed a page.
func (s *site) gapsOf(p *page) *gaps {
	g := &gaps{All: p.href("missing.html")}
	for i, m := range s.r.Missing {
		if touches(m, p.spec.logs) {
			g.Gaps = append(g.Gaps, p.gap(i, m))
		}
	}
	return g
}

// touches reports whether a gap is in one of the logs: its remedy names it. A gap
// that names no log is everyone's.
func touches(m report.Missing, logs []string) bool {
	named := false
	for _, log := range allLogs {
		if strings.Contains(m.Remedy, log) {
			named = true
			if contains(logs, log) {
				return true
			}
		}
	}
	return !named
}

// gap is the gap with number i, from 0, of the list of all that is missing.
func (p *page) gap(i int, m report.Missing) gap {
	id := "gap-" + strconv.Itoa(i+1)
	g := gap{ID: id, What: capital(m.What), Costs: sentence(m.Costs), Remedy: stopped(m.Remedy), Href: p.href("missing.html#" + id)}
	if n := len(m.Batches); n > 0 {
		g.Sample = words.Batches(n)
	}
	return g
}
