// Package templates sets the figures of a report out as pages: a report and its
// drawn charts go in, HTML and the style sheet come out. It computes no figure,
// reads no file and knows no clock. Package words writes every number; this is the
// only place that puts sentences together, makes HTML and reads Markdown.
//
// In reading order: templates.go (File, Pages), plan.go (which pages there are),
// site.go (what every page shares), page.go (links and anchors), frame.go and
// frame_html.go (the shell around a page), say.go (sentences with untrusted names in them), pen.go (the same into one
// buffer, for what there are a hundred thousand of), finding.go, rows.go,
// rows_groups.go, table.go, cells.go and figure.go (what the partials show), categories.go (the words
// for money), cut.go, cut_rows.go and cut_pieces.go (pages that are too long), gaps.go
// (what the records could not tell), as_sheets.go (logs as the sheets of a workbook),
// notes.go, notes_links.go,
// notes_render.go and notefigures.go (a season's notes), then a file NAME_view.go for
// each page beside html/NAME.html. Larger pages have parts of their own: front_*;
// germ_*, losses and chambers; costs_*; quality_rows and leeway; lots_*; trays_* and
// decision; rec_*, story, story_logs and story_end; week_*, sheets_* and missing_*. single.go (Single) is
// a review as one file, sheetfile.go (SheetFile) the forms to print as one.
//
// # How to write a page
//
// Put a row into chapters (plan.go), write a function that turns the report into a
// small struct of plain fields (costs_view.go is the pattern), and html/NAME.html,
// which shows them. It finds:
//
//	finding                            an answer with its number large
//	p.rows, t.under, t.add             rows that tell their story, drawn by package draw
//	p.table, t.add                     a table; {{template "table" .T}} shows it
//	p.rows, t.add, t.under, told       rows that draw what they tell; {{template "rows" .T}}
//	cropTable                          crops and their groups, few batches below a line
//	p.figure                           a chart with its table; {{template "figure" .F}}
//	more                               tables and charts that open on request
//	p.to, p.batch, p.crop              links that know what pages there are
//	say, list, join, name              sentences; names in them are isolated
//	words.ShareText, shareCell, ...    package words and cells.go write every number
//
// What the logs that feed the page (logs in the plan) lack is told at its end by
// the shell. A figure that notes may ask for goes into namedFigures
// (notefigures.go).
//
// # No page is too long
//
// A page stays below 400 kB however large the book is, and what is cut says so. What
// p.rows, p.table and p.figure make is weighed, and where it is too much it moves to pages
// below the page's own address (cut.go): groups of rows that t.of gives to a crop, rows and
// charts with a Crop, to a page of the crop; rows that still are too many, to numbered
// pages. A view has nothing to do for that but to name the crops. Where other pages lead to
// what moves, the parts are laid out before anything is written: batches (rec_pages.go),
// lots (lots_parts.go), pairs of trays (trays_pairs.go). A list in a sentence ends after
// mostInList things.
//
// Tables, stories and the frame are written by hand in rows_html.go, table_html.go, story.go
// and frame_html.go: through html/template they take ten times as long. A pen writes them
// straight into their page, stories behind what its template shows (longEnded), tables where
// the template asks for them (Write). What belongs to a batch is kept by its Nth. Rows of
// figures are picked as pointers. A page is its taker's until that says Written.
//
// # What notes lack is told first
//
// Pages adds no problem to a report: what they show of problems would be stale.
// Notes reads the season notes before the figures are made, and tells of pictures,
// HTML, links that lead nowhere and figures by a wrong name. Unfilled tells which
// figures and pages they ask for in vain; it needs the report, but none of its pages. A build puts both among the problems
// of the logs, then sets pages and data files.
//
// # Untrusted text
//
// Names, notes and codes of a book are untrusted: they reach a page through
// html/template, through say, through a pen's text, escaped, name, code, note or amount, or through
// the Markdown reader, never otherwise.
package templates
