package templates

import (
	"slices"
	"strings"
	"testing"
)

// Names that try to be markup, a formula or to turn the line round come out as
// text, isolated, on every page.
func TestHostileNames(t *testing.T) {
	b := buildOf(t, hostileReport(t), houseCharts())
	isolated := map[string]bool{}
	for _, page := range b.html() {
		body := b.pages[page]
		for _, bad := range []string{"<script", "<img", "<b onmouseover"} {
			if strings.Contains(body, bad) {
				t.Errorf("%s holds %q as markup", page, bad)
			}
		}
		for _, e := range elements(t, page, body) {
			if strings.Contains(e.attrs["href"], "javascript:") {
				t.Errorf("%s links to %s", page, e.attrs["href"])
			}
			if e.name == "bdi" {
				isolated[strings.TrimSpace(e.text)] = true
			}
			if strings.Contains(e.text, "\u202e") && e.name == "bdi" && !strings.Contains(e.text, "\u202c") {
				t.Errorf("%s: a name turns the line round beyond itself", page)
			}
		}
	}
	for _, name := range []string{"lettuce", "Fenwimple", "FEN-25", "mice", "warm box", "LS25-7", "A72", "air-pruning", "Hollow Lane"} {
		if !isolated[hostileNames[name]] {
			t.Errorf("%s is nowhere to be read as it is", hostileNames[name])
		}
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
