package templates

import (
	"cmp"
	"fmt"
	"html/template"
	"slices"
	"strings"

	"traybook/report/words"
)

// shell is what stands around the text of a page.
type shell struct {
	Title, Farm, Root string
	Home              string // address of the front page
	Class             string // of the body: the kind of page and its running head
	Heading           template.HTML
	Lead              template.HTML
	Top               []navLink
	Seasons           []navLink // the same page of each season
	Contents          []navGroup
	Banner            *banner
	ByCrop            template.HTML // links to pages of one crop each
	Gaps              *gapLine
	Method            string
	Level             string // of the ranges, in 100
	AsOf              string
	Before, After     *navLink
	page              *pen
}

// navGroup is a headed part of the contents.
type navGroup struct {
	Title string
	Links []navLink
}

// navLink is a page in the navigation. Current is page on the page itself, true
// on a page below it, else empty.
type navLink struct{ Href, Label, Current string }

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
		Title: sp.title, Farm: s.farm(), Root: p.root, Home: p.root + "index.html", Class: bodyClass(sp),
		Heading: template.HTML(template.HTMLEscapeString(sp.title)), Top: s.topLinks(p), Seasons: s.seasonLinks(p), Contents: s.contents(p),
		Banner: s.banner(p), ByCrop: p.byCrop, Method: p.root + "method.html",
		Level: words.Fixed(100*s.r.Book.Settings.Confidence, 0), AsOf: words.LongDate(s.r.Batches.Today), page: &s.out,
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

// topLinks are the few links above each page, those of a season to the page's own.
func (s *site) topLinks(p *page) []navLink {
	var out []navLink
	for _, sp := range s.nav.top {
		if sp.season == 0 || sp.season == p.season {
			out = append(out, navLink{p.root + sp.path, sp.top, currentOf(sp, p.spec)})
		}
	}
	return append(out, navLink{"#contents", "Contents", ""})
}

// seasonLinks lead to the same page of each season; none where there is one alone.
func (s *site) seasonLinks(p *page) []navLink {
	if len(s.nav.same[p.spec.same]) < 2 {
		return nil
	}
	var out []navLink
	for _, sp := range s.nav.same[p.spec.same] {
		out = append(out, navLink{p.root + sp.path, fmt.Sprint(sp.season), currentOf(sp, p.spec)})
	}
	return out
}

// contents are all pages at the foot of each: those of a season as of the page's own.
func (s *site) contents(p *page) []navGroup {
	groups := []navGroup{{Title: fmt.Sprint("The season ", p.season)}, {Title: inSeasons}, {Title: inHouse}, {Title: inBook}}
	at := map[string]int{ofSeason: 0, inSeasons: 1, inHouse: 2, inBook: 3}
	for _, sp := range s.nav.contents {
		if sp.season != 0 && sp.season != p.season {
			continue
		}
		g := &groups[at[sp.group]]
		g.Links = append(g.Links, navLink{p.root + sp.path, sp.label, currentOf(sp, p.spec)})
	}
	return slices.DeleteFunc(groups, func(g navGroup) bool { return len(g.Links) == 0 })
}

// currentOf marks the page itself, and the page above it.
func currentOf(sp, here spec) string {
	switch sp.path {
	case here.path:
		return "page"
	case here.parent:
		return "true"
	}
	return ""
}

// Lists of links are written here, straight into the page as rows are, not link by link
// through html/template: every page has them.

// TopList writes the links above each page.
func (sh shell) TopList() template.HTML { return sh.page.links(sh.Top) }

// SeasonList writes the links to the same page of each season.
func (sh shell) SeasonList() template.HTML { return sh.page.links(sh.Seasons) }

// ContentsList writes the contents at the foot of each page.
func (sh shell) ContentsList() template.HTML {
	for _, g := range sh.Contents {
		sh.page.put("<div><h3>")
		sh.page.text(g.Title)
		sh.page.put("</h3><ul>")
		sh.page.links(g.Links)
		sh.page.put("</ul></div>")
	}
	return ""
}

// links writes links as the items of a list, and leaves nothing for html/template.
func (w *pen) links(links []navLink) template.HTML {
	for _, l := range links {
		w.put("<li><a")
		w.attribute("href", l.Href)
		w.attribute("aria-current", l.Current)
		w.put(">")
		w.text(l.Label)
		w.put("</a></li>")
	}
	return ""
}
