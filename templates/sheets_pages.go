package templates

import (
	"fmt"
	"strconv"

	"traybook/report/words"
)

// What a row of a form and a label take, bytes, about.
const (
	formRowBytes = 500
	labelBytes   = 420
)

// sheetPages cuts sheets that are too long for a page into several, each with some of the
// forms' rows, then the labels. It returns the first.
func (p *page) sheetPages(v sheetsPage) sheetsPage {
	pages := []sheetsPage{v}
	last := func() *sheetsPage { return &pages[len(pages)-1] }
	room := mostBytes
	next := func() {
		pages, room = append(pages, v), mostBytes
		last().Forms, last().Labels = nil, nil
	}
	last().Forms, last().Labels = nil, nil
	for _, f := range v.Forms {
		for i, rows := range chunks(f.Rows, func(formRow) int { return formRowBytes }, room, mostBytes) {
			if i > 0 {
				next()
			}
			some := f
			some.Rows = rows
			last().Forms = append(last().Forms, some)
			room -= formRowBytes * len(rows)
		}
	}
	for i, labels := range chunks(v.Labels, func(label) int { return labelBytes }, room, mostBytes) {
		if i > 0 {
			next()
		}
		last().Labels = labels
	}
	p.addSheets(pages)
	return pages[0]
}

// addSheets makes the pages after the first, and leads from each to all.
func (p *page) addSheets(pages []sheetsPage) {
	if len(pages) == 1 {
		return
	}
	parts := []part{{path: p.spec.path, word: "1"}}
	for i := range pages[1:] {
		parts = append(parts, part{path: p.below(strconv.Itoa(i + 2)), word: markup(words.Whole(i + 2))})
	}
	pages[0].Pages = linksTo(p.root, parts, 0)
	for i := 1; i < len(pages); i++ {
		sp := p.spec
		sp.path, sp.label, sp.parent = parts[i].path, "", p.spec.path
		sp.title = fmt.Sprintf("%s, part %d", sp.title, i+1)
		at := newPage(p.site, sp)
		pages[i].Title, pages[i].Link, pages[i].Pages = sp.title, at.href("static/sheets.css"), linksTo(at.root, parts, i)
		p.extras = append(p.extras, extra{sp, pages[i]})
	}
}
