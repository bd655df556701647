package templates

import "traybook/report/words"

// The frame of a page is written here, not through html/template: of a large book it is the
// larger part of thousands of pages, and the same on each but for a few words and links.
// Titles, and labels of the pages before and after, hold words of the book and are escaped;
// those of the contents are ours, addresses are made of slugs.

// Before the title of a page, and around its farm and its heading.
const (
	headTop = `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'self'; img-src 'self' data:; base-uri 'none'; form-action 'none'">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>`
	headIcon = `</title>
<link rel="icon" href="data:image/svg+xml,%3Csvg%20xmlns='http://www.w3.org/2000/svg'%20viewBox='0%200%2016%2016'%3E%3Cpath%20fill='%23226b2f'%20d='M1%201h6v6H1zM9%201h6v6H9zM1%209h6v6H1z'/%3E%3Cpath%20fill='none'%20stroke='%23226b2f'%20stroke-width='1.4'%20d='M9.7%209.7h4.6v4.6H9.7z'/%3E%3C/svg%3E">
<link rel="stylesheet" href="`
	headFarm = `">
<a class="skip" href="#text">Skip to the text</a>
<header class="top"><p class="farm"><a href="`
	headPages = `</bdi></a> <span>transplants</span></p>
<nav aria-label="Pages"><ul>`
)

// writeTop writes a page down to where its own text begins.
func (sh *shell) writeTop(w *pen, p *page) {
	w.put(headTop)
	w.escaped(sh.Title)
	w.put(" – ")
	w.escaped(sh.Farm)
	w.put(headIcon, p.root, `static/site.css">`, "\n", `<link rel="stylesheet" href="`, p.root, `static/paper.css" media="print">`,
		"\n</head>\n", `<body class="`, sh.Class, headFarm, p.root, `index.html"><bdi>`)
	w.escaped(sh.Farm)
	w.put(headPages)
	p.writeTopLinks(w)
	w.put("</ul></nav></header>\n", `<main id="text">`)
	sh.writeBanner(w)
	w.put("\n", `<div class="title"><h1>`, string(sh.Heading), "</h1>")
	p.writeSeasonLinks(w)
	if sh.Lead != "" {
		w.put("\n", `<p class="lead">`, string(sh.Lead), "</p>")
	}
	w.put("</div>\n")
}

// writeBanner says that rows were left out.
func (sh *shell) writeBanner(w *pen) {
	if sh.Banner == nil {
		return
	}
	it := "them"
	if sh.Banner.One {
		it = "it"
	}
	w.put("\n", `<p class="banner" role="note"><strong>`)
	w.escaped(sh.Banner.Text)
	w.put("</strong>: no figure uses ", it, ".")
	if sh.Banner.Href != "" {
		w.put(` <a href="`, sh.Banner.Href, `">See the problems</a>`)
	}
	w.put("</p>")
}

// writeEnd writes what stands behind the text of a page.
func (sh *shell) writeEnd(w *pen, p *page) {
	if p.byCrop != "" {
		w.put("\n", `<section class="wide" id="by-crop"><h2>A page for each crop</h2><div class="text"><p>The rest is too long for one page. Variety by variety and tray by tray it stands on a page for each crop: `,
			string(p.byCrop), ".</p></div></section>")
	}
	w.put("\n</main>\n", `<footer class="end">`)
	if sh.Gaps != "" {
		w.put(`<p class="gap">`, string(sh.Gaps), ` <a href="`, p.root, `missing.html">What is missing</a></p>`)
	}
	if sh.Before != nil || sh.After != nil {
		w.put("\n", `<nav class="pn" aria-label="Next">`)
		w.turn(sh.Before, "prev", "← ", "")
		w.put(" ")
		w.turn(sh.After, "next", "", " →")
		w.put("</nav>")
	}
	w.put("\n", `<nav id="contents" aria-label="Contents"><h2>Contents</h2><div class="con">`)
	p.writeContents(w)
	w.put("</div></nav>\n", `<p class="imprint">Made from the farm’s own records by traybook, as they stood on `, sh.AsOf,
		`. Figures are those of <a href="`, p.root, `method.html">the method</a>; ranges hold `, sh.Level, " times in 100.</p>\n</footer>\n</body>\n</html>\n")
}

// turn writes a link to the page before or after; none where there is no such page.
func (w *pen) turn(to *navLink, rel, before, after string) {
	if to != nil {
		w.put(`<a href="`, to.Href, `" rel="`, rel, `">`, before)
		w.escaped(to.Label)
		w.put(after, "</a>")
	}
}

// writeTopLinks writes the few links above each page, those of a season to the page's own.
func (p *page) writeTopLinks(w *pen) {
	for i := range p.nav.top {
		if sp := &p.nav.top[i]; p.leadsTo(sp) {
			p.writeNav(w, sp, sp.top)
		}
	}
	w.put(`<li><a href="#contents">Contents</a></li>`)
}

// writeSeasonLinks writes the links to the same page of each season; none where there is one
// alone.
func (p *page) writeSeasonLinks(w *pen) {
	sisters := p.nav.same[p.spec.same]
	if len(sisters) < 2 {
		return
	}
	w.put(`<nav class="sea" aria-label="Seasons"><ul>`)
	for i := range sisters {
		p.writeNav(w, &sisters[i], words.Year(sisters[i].season))
	}
	w.put("</ul></nav>")
}

// writeContents writes all pages at the foot of each: those of a season as of the page's own.
func (p *page) writeContents(w *pen) {
	for _, group := range []string{ofSeason, inSeasons, inHouse, inBook} {
		title := group
		if group == ofSeason {
			title = "The season " + words.Year(p.season)
		}
		begun := false
		for i := range p.nav.contents {
			sp := &p.nav.contents[i]
			if sp.group != group || !p.leadsTo(sp) {
				continue
			}
			if !begun {
				w.put("<div><h3>", title, "</h3><ul>")
			}
			begun = true
			p.writeNav(w, sp, sp.label)
		}
		if begun {
			w.put("</ul></div>")
		}
	}
}

// leadsTo reports whether the navigation of the page has a page: one of its season or of
// none.
func (p *page) leadsTo(sp *spec) bool { return sp.season == 0 || sp.season == p.season }

// writeNav writes a link of the navigation, which marks the page itself and the page above
// it.
func (p *page) writeNav(w *pen, sp *spec, label string) {
	w.put(`<li><a href="`, p.root, sp.path, `"`)
	switch sp.path {
	case p.spec.path:
		w.put(` aria-current="page"`)
	case p.spec.parent:
		w.put(` aria-current="true"`)
	}
	w.put(">", label, "</a></li>")
}
