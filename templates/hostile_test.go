package templates

import (
	"path"
	"slices"
	"strings"
	"testing"
)

// Names that try to be markup, a formula or to turn the line round come out as
// text, isolated, on every page.
func TestHostileNames(t *testing.T) {
	b := buildOf(t, sample(t, true), sampleCharts())
	isolated := 0
	for page, body := range b.pages {
		if path.Ext(page) != ".html" {
			continue
		}
		for _, bad := range []string{"<script>alert", "<img src=x", "<b onmouseover", "javascript:"} {
			if strings.Contains(body, bad) {
				t.Errorf("%s holds %q as markup", page, bad)
			}
		}
		for _, e := range elements(t, page, body) {
			if e.name == "bdi" && strings.Contains(e.text, "</script><script>alert(1)</script>") {
				isolated++
			}
			if strings.Contains(e.text, "\u202e") && e.name == "bdi" && !strings.Contains(e.text, "\u202c") {
				t.Errorf("%s: a name turns the line round beyond itself", page)
			}
		}
	}
	if isolated == 0 {
		t.Error("the hostile crop is nowhere to be read")
	}
	index := elements(t, "index.html", b.pages["index.html"])
	if !slices.ContainsFunc(index, func(e *element) bool { return e.name == "bdi" && e.text == `=cmd|' /C calc'!A0` }) {
		t.Error("the name that is a formula is not shown as it is")
	}
}

// Names whose slugs are alike, or which have no letter at all, still get pages and
// anchors of their own.
func TestSlugsAreUnique(t *testing.T) {
	var ids slugs
	var got []string
	for _, s := range []string{"Pak Choi", "pak-choi", "pak choi 2", "Résumé", "白菜", "菠菜", "../../etc/passwd", "CON"} {
		got = append(got, ids.unique(s, "x"))
	}
	want := []string{"pak-choi", "pak-choi-2", "pak-choi-2-2", "resume", "x", "x-2", "etc-passwd", "con"}
	if !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}

func TestSay(t *testing.T) {
	tests := []struct{ got, want string }{
		{string(say("%s of %s", name("<b>"), 3)), "<bdi>&lt;b&gt;</bdi> of 3"},
		{string(say("%s", `"&'`)), "&#34;&amp;&#39;"},
		{string(list([]string{"a", "b", "c"})), "a, b and c"},
		{string(list([]name{"a"})), "<bdi>a</bdi>"},
		{string(join("a.", "", "b.")), "a. b."},
		{string(say("%s", name("%s"))), "<bdi>%s</bdi>"},
	}
	for _, tt := range tests {
		if tt.got != tt.want {
			t.Errorf("got %s, want %s", tt.got, tt.want)
		}
	}
}
