package templates

import (
	"cmp"
	"fmt"
	"html/template"
	"slices"
	"strings"

	"traybook/report/words"
)

// shell is what stands around the text of a page, with the links of its navigation beside
// it.
type shell struct {
	Title, Farm   string
	Class         string // of the body: the kind of page and its running head
	Heading       template.HTML
	Lead          template.HTML
	Banner        *banner
	Gaps          template.HTML // a line at its foot; empty: none
	Level         string        // of the ranges, in 100
	AsOf          string
	Before, After *navLink
}

// navLink is a page before or after another.
type navLink struct{ Href, Label string }

// headed is a view that says its own heading and lead, in place of the page's title.
type headed interface {
	head() (heading, lead template.HTML)
}

// turned is a view with a page before and after it.
type turned interface {
	turn() (before, after *navLink)
}

// frame is what stands around the text of a page.
func (s *site) frame(p *page, view any) shell {
	sp := p.spec
	sh := shell{
		Title: sp.title, Farm: s.farm(), Class: bodyClass(sp), Heading: template.HTML(template.HTMLEscapeString(sp.title)), Banner: s.banner(p),
		Level: words.Fixed(100*s.r.Book.Settings.Confidence, 0), AsOf: words.LongDate(s.r.Batches.Today),
	}
	if h, ok := view.(headed); ok {
		sh.Heading, sh.Lead = h.head()
	}
	if t, ok := view.(turned); ok {
		sh.Before, sh.After = t.turn()
	}
	if sp.logs != nil && !s.r.Options.Public {
		sh.Gaps = s.gapLine(p)
	}
	return sh
}

// bodyClass names the kind of page and, for its running head, its season.
func bodyClass(sp spec) string {
	return strings.TrimSpace("p-" + sp.kind + " " + runningPage(sp))
}

// runningPage is the name of the paper page that carries the page's running head.
func runningPage(sp spec) string {
	if sp.season == 0 {
		return "r-" + sp.kind
	}
	return fmt.Sprintf("r-%s-%d", sp.kind, sp.season)
}

// navigation is the pages of a plan that others lead to, so that no page has to look
// through all of them.
type navigation struct {
	top, contents []spec
	same          map[string][]spec // sister pages, by what they are called, earlier seasons first
}

// navigationOf sorts out a plan.
func navigationOf(plan []spec) navigation {
	n := navigation{same: map[string][]spec{}}
	for _, sp := range plan {
		if sp.top != "" {
			n.top = append(n.top, sp)
		}
		if sp.label != "" {
			n.contents = append(n.contents, sp)
		}
		if sp.same != "" {
			n.same[sp.same] = append(n.same[sp.same], sp)
		}
	}
	for _, sisters := range n.same {
		slices.SortStableFunc(sisters, func(a, b spec) int { return cmp.Compare(a.season, b.season) })
	}
	return n
}
