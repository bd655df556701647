package templates

import (
	"slices"
	"strings"
	"testing"
	"testing/fstest"
	"time"
	"unicode"

	"traybook/records"
)

// parts are the elements that Markdown may become in a note, with their attributes.
var parts = map[string]string{
	"p": "", "em": "", "strong": "", "del": "", "code": "", "pre": "", "br": "", "hr": "", "blockquote": "", "ul": "", "ol": "start", "li": "",
	"h3": "id", "h4": "id", "h5": "id", "h6": "id", "a": "href rel title", "div": "class tabindex role aria-label", "table": "", "caption": "",
	"thead": "", "tbody": "", "tr": "", "th": "scope class", "td": "class",
}

// FuzzNotes reads any note of a season and sets it on the season's page: no panic and no
// end that does not come, every problem on one line inside the note, no words lost, and
// on the page nothing but Markdown's own elements, with links that lead to pages or away
// as they may.
func FuzzNotes(f *testing.F) {
	for _, text := range []string{
		hostileNote, "# A\n\n#### B\n\nA *b* **c** ~~d~~ `e`  \nf\n\n> g\n>> h\n\n1. i\n   - j\n\n---\n", "| a | b |\n|:-:|--:|\n| 1 | <i> |\n",
		"[a](lettuce) [b](JavaScript:x) [c](http://example.org \"t\\\"i\") <mailto:a@example.org> [d](a&#10;b) [e]\n\n[e]: data:text/html,x 'y'\n",
		"[x](java\tscript:a) [y](\x01javascript:a) [z](&#1;javascript&colon;a) [v](//example.org) ![p](blob:x) [![q](r)](week)\n", "```figure costs\n*a* <b>\n```\n\n~~~figure nothing\n",
		"<!-- a\n\nb --> <?c?> <![CDATA[d]]> &lt;e&gt; &#0; <f\n>\n", "plain words of a wet spring\n\n    and more\n", "\ufeff# \u202eA\u2028b\r\rc\r\n", "[a\n b](c)\n[a b]: <d\n", "[](http://0\")0",
	} {
		f.Add(text)
	}
	s := newSite(houseReport(f), nil)
	f.Fuzz(func(t *testing.T, text string) {
		defer time.AfterFunc(20*time.Second, func() { panic("a note takes more than 20 s") }).Stop()
		b, problems := records.Load(fstest.MapFS{
			"sowings.csv":   {Data: []byte("batch,sown,crop,variety,tray,trays\nA,2025-03-03,lettuce,Fenwimple,A72,2\n")},
			"notes/2025.md": {Data: []byte(text)},
		})
		for _, p := range append(problems, Notes(b)...) {
			if p.File != "notes/2025.md" || p.Line < 0 || p.Line > 1+strings.Count(strings.ReplaceAll(text, "\r", "\n"), "\n") && !strings.HasPrefix(text, "\xff\xfe") && !strings.HasPrefix(text, "\xfe\xff") {
				t.Errorf("%v is not inside the note: %q", p, text)
			}
			if strings.ContainsFunc(p.String(), func(r rune) bool { return !unicode.IsGraphic(r) }) {
				t.Errorf("no clear line: %q", p.String())
			}
		}
		if (len(b.Notes) == 1) == slices.ContainsFunc(problems, func(p records.Problem) bool { return strings.Contains(p.Remedy, "the note is not read") }) {
			t.Fatalf("%d notes, %v", len(b.Notes), problems)
		}
		for _, n := range b.Notes {
			clean(t, s, n)
		}
	})
}

// clean checks what a note becomes.
func clean(t *testing.T, s *site, n records.Note) {
	t.Helper()
	p := newPage(s, spec{path: "index.html", season: n.Year})
	blocks, err := p.noteBlocks(n, n.Year)
	if err != nil {
		t.Fatal(err)
	}
	html := joined(blocks)
	shown := strings.Map(func(r rune) rune { // an XML reader wants no other marks in a text
		if r < ' ' && r != '\n' && r != '\t' || r == '\ufffe' || r == '\uffff' {
			return ' '
		}
		return r
	}, string(html))
	figures := len(readNote(n).figures()) > 0 // which have elements of their own
	for _, e := range elements(t, n.Text, "<div>"+shown+"</div>") {
		allowed, known := parts[e.name]
		if !known && (!figures || slices.Contains([]string{"script", "img", "iframe", "object", "embed", "style", "link", "meta", "base", "form", "input"}, e.name)) {
			t.Errorf("%q becomes <%s>: %s", n.Text, e.name, html)
		}
		for name, value := range e.attrs {
			if !figures && !slices.Contains(strings.Fields(allowed), name) || strings.HasPrefix(name, "on") || name == "src" {
				t.Errorf("%q becomes <%s %s=%q>", n.Text, e.name, name, value)
			}
		}
		if href, ok := e.attrs["href"]; ok && !figures && !leads(s, href) {
			t.Errorf("%q leads to %q", n.Text, href)
		}
	}
	if plain := !strings.ContainsFunc(n.Text, func(r rune) bool { return !unicode.IsLetter(r) && r != ' ' && r != '\n' }); plain {
		if all := elements(t, n.Text, "<div>"+shown+"</div>"); strings.Join(strings.Fields(all[0].text), " ") != strings.Join(strings.Fields(n.Text), " ") {
			t.Errorf("%q became %s", n.Text, html)
		}
	}
}

// leads reports whether an address leads to a page of the site, or away by a scheme that
// runs nothing.
func leads(s *site, href string) bool {
	scheme, _, _ := strings.Cut(href, ":")
	return s.paths[href] || slices.Contains([]string{"http", "https", "mailto"}, strings.ToLower(scheme))
}
