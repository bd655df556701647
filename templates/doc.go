// Package templates sets the figures of a report out as pages: a report and its
// drawn charts go in, HTML and the style sheet come out. It computes no figure,
// reads no file and knows no clock; it is the only place that rounds, writes
// units and reads Markdown.
//
// In reading order: templates.go (Page, Pages), plan.go (which pages there are),
// site.go (what every page shares), page.go (links and anchors), words.go
// (sentences with untrusted names in them), format.go (numbers and units),
// table.go and figure.go (tables and charts as the partials take them),
// notes.go (a season's notes), gaps.go (what the records could not tell), then a
// file NAME_view.go for each page beside html/NAME.html. Larger pages have parts
// of their own: trays_gain, trays_next, trays_trial and trays_room; leeway;
// losses and chambers; lots_trail. decision.go is the answer about trays wherever
// it stands; sheetfile.go (SheetFile) is the forms to print as one file.
//
// How to write a page: put a row into chapters (plan.go), write a function that
// turns the report into a small struct of plain fields (costs_view.go is the
// pattern), and html/NAME.html, which shows them. It finds:
//
//	p.table, t.add, t.under, t.foot    a table; {{template "table" .T}} shows it
//	p.figure                           a chart with its table; {{template "figure" .F}}
//	more                               tables and charts that open on request
//	p.to, p.batch, p.crop              links that know what pages there are
//	say, list, join, name              sentences; names in them are isolated
//	shareText, shareCell, days, ...    format.go and table.go write every number
//
// What the logs that feed the page (logs in the plan) lack is told at its end by
// the shell. A figure that notes may ask for goes into namedFigures
// (notefigures.go).
//
// Names, notes and codes of a book are untrusted: they reach a page through
// html/template, through say or through the Markdown reader, never otherwise.
package templates
