package templates

import (
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
	_, rest, ok := strings.Cut(b.pages["index.html"], "<h2>The season in words</h2>")
	if !ok {
		t.Fatal("the note is not on the page")
	}
	note, _, _ := strings.Cut(rest, "<h2>")
	return note
}

func TestNotes(t *testing.T) {
	tests := []struct {
		name, text string
		want       []string
		never      []string
	}{
		{"headings go below the page's, in order", "# A\n\n#### Été\n\n# A\n", []string{`<h3 id="note-a">A</h3>`, `<h4 id="note-ete">`, `<h3 id="note-a-2">`}, []string{"<h1"}},
		{"raw HTML is dropped", "a <b onclick=x>c</b>\n\n<script>alert(1)</script>\n", nil, []string{"<b", "<script", "onclick"}},
		{"links that run something are emptied", "[x](javascript:alert(1)) [y](data:text/html,z)", nil, []string{"javascript:", "data:"}},
		{"pictures become their words", "![the *tap*](https://example.org/a.png)", []string{"<em>the <em>tap</em></em>"}, []string{"<img", "example.org"}},
		{"tables align by class and can be scrolled", "| a | b |\n|---|--:|\n| 1 | 2 |\n", []string{`<th scope="col" class="num">b</th>`, `<td class="num">2</td>`, "<caption>Table 1 of the notes</caption>"}, []string{"style=", "align="}},
		{"struck out", "~~gone~~", []string{"<del>gone</del>"}, nil},
		{"attributes are text", "# A {onclick=x}\n", nil, []string{"<h3 onclick"}},
		{"a figure with its table", "```figure emergence\n```\n", []string{`<figure id="figure-emergence-2025">`, "<svg", `<table id="table-emergence">`}, []string{"<pre"}},
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

// A figure that a note has shown is not shown again below.
func TestNoteFigureOnce(t *testing.T) {
	b := buildOf(t, withNote(t, 2025, "```figure emergence\n```\n"), houseCharts())
	if n := strings.Count(b.pages["index.html"], "<svg"); n != 2 {
		t.Errorf("%d drawings on the front page, want emergence in the note and costs below it", n)
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

// What no page shows of a note is told at its line: a picture, a figure by no name of
// ours, a figure for which the book holds nothing.
func TestNoteProblems(t *testing.T) {
	text := "# 2025\n\nHot.\n\n```figure nothing\n```\n\nA ![tap](http://example.org/t.png)\nand ![bed](bed.jpg)\n\n```figure losses\n```\n"
	picture, block := "its words are shown in its place; say it in words, or take it out", "the block is left out of the page"
	named := "notes/x.md:5:1: a figure \"nothing\"; one of emergence, cost, losses, quality, leeway, ledger, trays is expected; " + block
	here := "notes/x.md:8:1: a picture \"bed.jpg\"; words, tables and figures: pictures are not copied to the site are expected; " + picture
	elsewhere := "notes/x.md:8:1: a picture from elsewhere \"http://example.org/t.png\"; pages that load nothing from elsewhere are expected; " + picture
	unfilled := "notes/x.md:11:1: the figure \"losses\"; records to make it from are expected; " + block + "; the page of what is missing says what to write down"
	same(t, noteProblems(withNote(t, 2025, text)), []string{named, here, elsewhere}) // 18 cells were lost
	same(t, noteProblems(withNote(t, 2024, text)), []string{named, here, elsewhere, unfilled})
	same(t, noteProblems(withNote(t, 2023, text)), nil) // nothing was sown: no page shows the note
}

// What is told of a note is told on the page of what is missing, too, and a block
// that was left out leaves nothing behind.
func TestNoteProblemsAreShown(t *testing.T) {
	b := buildOf(t, withNote(t, 2024, "Hot.\n\n```figure losses\n```\n\n```figure nothing\n```\n"), nil)
	expect(t, textOf(t, b, "missing.html"), "in the logs and notes", "notes/x.md, line 3", `the figure "losses"`, "notes/x.md, line 6", `a figure "nothing"`)
	expect(t, strings.Join(strings.Fields(b.pages["season/2024.html"]), " "), "<p>Hot.</p> </section>")
}
