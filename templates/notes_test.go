package templates

import (
	"strings"
	"testing"

	"traybook/records"
)

// noteOf renders a note on the front page of the sample.
func noteOf(t *testing.T, text string) (string, []records.Problem) {
	t.Helper()
	r := sample(t, false)
	r.Book.Notes = []records.Note{{File: "notes/2025.md", Year: 2025, Text: text}}
	b := buildOf(t, r, sampleCharts())
	_, rest, ok := strings.Cut(b.pages["index.html"], "<h2>The season in words</h2>")
	if !ok {
		t.Fatal("the note is not on the page")
	}
	note, _, _ := strings.Cut(rest, "<h2>")
	return note, b.remarks
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
		got, _ := noteOf(t, tt.text)
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
	r := sample(t, false)
	b := buildOf(t, r, sampleCharts())
	if n := strings.Count(b.pages["index.html"], "<svg"); n != 2 {
		t.Errorf("%d drawings on the front page, want emergence in the note and costs below it", n)
	}
}

func TestNoteRemarks(t *testing.T) {
	text := "# 2025\n\nHot.\n\n```figure nothing\n```\n\nA ![tap](http://example.org/t.png)\nand ![bed](bed.jpg)\n\n```figure trays\n```\n"
	_, remarks := noteOf(t, text)
	want := []struct {
		line  int
		found string
	}{{5, `a figure "nothing"`}, {8, `a picture "bed.jpg"`}, {8, `a picture from elsewhere "http://example.org/t.png"`}}
	if len(remarks) != len(want) {
		t.Fatalf("got %v", remarks)
	}
	for i, w := range want {
		got := remarks[i]
		if got.File != "notes/2025.md" || got.Line != w.line || got.Found != w.found || got.Severity != records.Warning {
			t.Errorf("got %v, want line %d, %s", got, w.line, w.found)
		}
	}
	if !strings.Contains(remarks[0].Expected, "emergence, cost") {
		t.Errorf("%q does not name the figures there are", remarks[0].Expected)
	}
}

// A figure for which the book holds nothing is remarked upon, not shown empty.
func TestNoteFigureWithoutRecords(t *testing.T) {
	r := sample(t, false)
	r.Payback = nil
	r.Book.Notes = []records.Note{{File: "notes/2025.md", Year: 2025, Text: "```figure trays\n```\n"}}
	b := buildOf(t, r, nil)
	if len(b.remarks) != 1 || b.remarks[0].Line != 1 || b.remarks[0].Found != `the figure "trays"` {
		t.Errorf("got %v", b.remarks)
	}
}
