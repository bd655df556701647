package templates

import (
	"html/template"
	"slices"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
)

// withNote is the report of the house with another note of a season.
func withNote(t *testing.T, year int, text string) *report.Report {
	t.Helper()
	return changedHouse(t, func(b *records.Book) {
		b.Notes = []records.Note{{File: "notes/x.md", Year: year, Text: text}}
	})
}

// noteOf renders a note on the front page of the house.
func noteOf(t *testing.T, text string) string {
	t.Helper()
	b := buildOf(t, withNote(t, 2025, text), houseCharts())
	_, rest, ok := strings.Cut(b.pages["index.html"], `<div class="say note">`)
	if !ok {
		t.Fatal("the note is not on the page")
	}
	note, _, _ := strings.Cut(rest, `<div class="side">`)
	return note
}

func TestNotes(t *testing.T) {
	tests := []struct {
		name, text string
		want       []string
		never      []string
	}{
		{"headings go below the page's, in order", "# A\n\n#### Été\n\n# A\n", []string{`<h3 id="note-a">A</h3>`, `<h4 id="note-ete">`, `<h3 id="note-a-2">`}, []string{"<h1"}},
		{"raw HTML is dropped", "a <b onclick=x>c</b>\n\n<script>alert(1)</script>\n", []string{"<p>a c</p>"}, []string{"<b", "<script", "onclick", "omitted"}},
		{"links that run something are words", "[x](javascript:alert(1)) [y](<java\tscript:z>) [z](&#106;avascript:a) [d](data:text/html,z) <vbscript:q> [f](file:///etc/passwd) [b](blob:x) [s](filesystem:x) [h](//example.org/x) [r](../x.html)",
			[]string{"<p>x y z d vbscript:q f b s h r</p>"}, []string{"<a", "href"}},
		{"links to the web tell no one", "[w](https://example.org/a?b=c&d) <http://example.org> <a@example.org>",
			[]string{`<a href="https://example.org/a?b=c&amp;d" rel="noreferrer">w</a>`, `<a href="http://example.org" rel="noreferrer">http://example.org</a>`, `<a href="mailto:a@example.org" rel="noreferrer">a@example.org</a>`}, nil},
		{"links to pages by name", "[g](germination) [i](index) [w](week) [m](method) [l](lettuce) [o](<bunching onion>) [p](bunching%20onion) [n](nonsense) [x](germination.html)",
			[]string{`<a href="2025/germination.html">g</a>`, `<a href="2025/index.html">i</a>`, `<a href="week.html">w</a>`, `<a href="method.html">m</a>`, `<a href="2025/records/lettuce.html">l</a>`,
				`<a href="2025/records/bunching-onion.html">o</a>`, `<a href="2025/records/bunching-onion.html">p</a>`, " n x</p>"}, nil},
		{"pictures become their words", "![the *tap*](https://example.org/a.png)", []string{"<em>the <em>tap</em></em>"}, []string{"<img", "example.org"}},
		{"tables align by class and can be scrolled", "| a | b |\n|---|--:|\n| 1 | 2 |\n", []string{`<th scope="col" class="num">b</th>`, `<td class="num">2</td>`, "<caption>Table 1 of the notes</caption>"}, []string{"style=", "align="}},
		{"struck out", "~~gone~~", []string{"<del>gone</del>"}, nil},
		{"attributes are text", "# A {onclick=x}\n", nil, []string{"<h3 onclick"}},
		{"a figure with its table", "```figure emergence\n```\n", []string{`<figure id="figure-what-came-up">`, "<svg", `id="rows-emergence"`}, []string{"<pre"}},
		{"a figure with words of the grower's own", "```figure emergence\nAfter the *cold* week <b>\n```\n", []string{`</strong> <bdi>After the *cold* week &lt;b&gt;</bdi></figcaption>`}, nil},
		{"other fenced blocks are text", "```go\n<b>\n```\n", []string{"<pre><code>&lt;b&gt;\n</code></pre>"}, nil},
	}
	for _, tt := range tests {
		got := noteOf(t, tt.text)
		for _, want := range tt.want {
			if !strings.Contains(got, want) && !strings.Contains(got, swapAttributes(want)) {
				t.Errorf("%s: %q is not in\n%s", tt.name, want, got)
			}
		}
		for _, never := range tt.never {
			if strings.Contains(got, never) {
				t.Errorf("%s: %q is in\n%s", tt.name, never, got)
			}
		}
	}
}

// swapAttributes is a head with its attributes the other way round.
func swapAttributes(want string) string {
	return strings.ReplaceAll(want, `scope="col" class="num"`, `class="num" scope="col"`)
}

// Every name shows something of the house, which has a bit of all, under ids that stand
// nowhere else on the page, also where it is asked for twice.
func TestEveryNamedFigure(t *testing.T) {
	var text strings.Builder
	for range 2 {
		for _, name := range figureNames() {
			text.WriteString("```figure " + name + "\n```\n\n")
		}
	}
	r := changedHouse(t, func(b *records.Book) {
		b.Notes = []records.Note{{File: "notes/x.md", Year: 2025, Text: text.String()}}
		b.Wishes = []records.Wish{{Crop: "lettuce", Variety: "Fenwimple", Plants: 100, Planned: day(t, "2026-05-01"), Tray: "S72"}}
		b.Changes = []records.Change{{Date: day(t, "2025-03-01"), What: "a finer mix"}}
		for d := day(t, "2024-01-01"); d < today; d++ {
			b.House = append(b.House, records.HouseReading{Date: d, Low: num(8), High: num(18), OutLow: num(-2), OutHigh: num(6)})
		}
	})
	same(t, noteProblems(r), nil)
	b, body := buildOf(t, r, houseCharts()), ""
	idsOf(t, b)
	for _, page := range b.html() { // the note is too long for the front page
		if strings.HasPrefix(page, "2025/notes") {
			all := elements(t, page, b.pages[page])
			lawHeadings(t, page, all)
			lawTables(t, page, all)
			body += b.pages[page]
		}
	}
	p := newPage(newSite(r, nil), spec{path: "index.html", season: 2025})
	for _, name := range figureNames() {
		of, _ := p.noteFigures(name, 2025)
		for _, f := range of {
			if n := strings.Count(body, "<figcaption><strong>"+template.HTMLEscapeString(f.Title)+"</strong>"); n != 2 {
				t.Errorf("%s: %q stands %d times on the page", name, f.Title, n)
			}
		}
	}
}

// The method page lists every name, and every name of a page leads to one.
func TestNamesAreListed(t *testing.T) {
	b := buildOf(t, houseReport(t), nil)
	text := textOf(t, b, "method.html")
	for _, f := range namedFigures {
		expect(t, text, f.Name+f.Shows)
	}
	for _, page := range pageNames() {
		if at := linkedPage(page, 2025, func(string) string { return "" }); b.pages[at] == "" {
			t.Errorf("%s leads to %q, which is no page", page, at)
		}
	}
}

// noteProblems are the problems of a report that stand in its notes.
func noteProblems(r *report.Report) []string {
	var out []string
	for _, p := range r.Problems {
		if strings.HasPrefix(p.File, "notes/") && p.Severity == records.Warning {
			out = append(out, p.String())
		}
	}
	return out
}

func same(t *testing.T, got, want []string) {
	t.Helper()
	if strings.Join(got, "\n") != strings.Join(want, "\n") {
		t.Errorf("got\n%s\nwant\n%s", strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

// What no page shows of a note is told at its line: a picture, HTML, a link to no page, a
// figure by no name of ours, a figure or a page for which the book holds nothing.
func TestNoteProblems(t *testing.T) {
	text := "# 2025\n\nHot.\n\n```figure nothing\n```\n\nA ![tap](http://example.org/t.png)\nand ![bed](bed.jpg)\n\n```figure losses\n```\n" +
		"\n<div>\nx\n</div>\n\na <b>b</b>\n[js](JavaScript:a) [no](nonsense)\n[seed](lots) [c](tomato)\n"
	picture, block, link := "its words are shown in its place; say it in words, or take it out", "the block is left out of the page", "; its words stand without a link"
	never := []string{
		"notes/x.md:5:1: a figure \"nothing\"; one of " + strings.Join(figureNames(), ", ") + " is expected; " + block,
		"notes/x.md:8:1: a picture from elsewhere \"http://example.org/t.png\"; pages that load nothing from elsewhere are expected; " + picture,
		"notes/x.md:9:1: a picture \"bed.jpg\"; words, tables and figures: pictures are not copied to the site are expected; " + picture,
		"notes/x.md:14:1: HTML; Markdown alone is expected; the HTML is left out of the page",
		"notes/x.md:18:1: HTML; Markdown alone is expected; the HTML is left out of the page",
		"notes/x.md:19:1: a link to \"JavaScript:a\"; an address that begins with http, https or mailto is expected" + link,
		"notes/x.md:19:1: a link to \"nonsense\"; a page’s name (" + strings.Join(pageNames(), ", ") + " or a crop of the season) is expected" + link,
	}
	same(t, noteProblems(withNote(t, 2025, text)), never) // 18 cells were lost, tomatoes sown
	noTomato := "notes/x.md:20:1: a link to \"tomato\"; a page’s name (" + strings.Join(pageNames(), ", ") + " or a crop of the season) is expected" + link
	unfilled := "notes/x.md:11:1: the figure \"losses\"; records to make it from are expected; " + block + "; the page of what is missing says what to write down"
	want := append(slices.Clone(never), noTomato, unfilled)
	got := noteProblems(withNote(t, 2024, text))
	slices.Sort(want)
	slices.Sort(got)
	same(t, got, want)
	same(t, noteProblems(withNote(t, 2023, text)), nil) // nothing was sown: no page shows the note
	tiny, _ := records.Load(example("poor/sowings-only"))
	tiny.Notes = []records.Note{{File: "notes/x.md", Year: tiny.Settings.Season(tiny.Sowings[0].Sown), Text: "[m](costs)"}}
	same(t, noteProblems(reportOfBook(t, tiny, nil, report.Options{})), []string{"notes/x.md:1:1: a link to \"costs\"; records to make this page from are expected" + link})
}

// What is told of a note is told on the page of what is missing, too, and a block
// that was left out leaves nothing behind.
func TestNoteProblemsAreShown(t *testing.T) {
	b := buildOf(t, withNote(t, 2024, "Hot.\n\n```figure losses\n```\n\n```figure nothing\n```\n"), nil)
	expect(t, textOf(t, b, "missing.html"), "in the logs and notes", "notes/x.md, line 3", `the figure "losses"`, "notes/x.md, line 6", `a figure "nothing"`)
	expect(t, strings.Join(strings.Fields(b.pages["2024/index.html"]), " "), `<p>Hot.</p> </div><div class="side">`)
}
