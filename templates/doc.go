// Package templates sets the figures of a report out as pages: a report and its
// drawn charts go in, HTML and the style sheet come out. It computes no figure,
// reads no file and knows no clock; it is the only place that rounds, writes
// units and reads Markdown.
//
// In reading order: templates.go (Page, Pages), plan.go (which pages there are),
// site.go (what every page shares), place.go (links and anchors), words.go
// (sentences with untrusted names in them), format.go (numbers and units),
// table.go and figure.go (tables and charts as the partials take them),
// notes.go (a season's notes), gaps.go (what the records could not tell), then a
// file NAME_view.go for each page beside html/NAME.html.
//
// How to write a page: put a row into the plan, write a function that turns the
// report into a small struct of plain fields, and html/NAME.html, which shows
// them. Names, notes and codes of a book are untrusted: they reach a page through
// html/template, through say or through the Markdown reader, never otherwise.
package templates
