package chart

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"
)

func TestCleanKeepsOnlyWhatAPageMayHold(t *testing.T) {
	raw := `<svg width="9" height="9" xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" version="1.1">
<style><![CDATA[.zr0-cls-0:hover{fill:red}]]></style><script>alert(1)</script>
<defs><clipPath id="zr12-c0"><path d="M0 0"></path></clipPath></defs>
<foreignObject><a href="https://example.org"><text>in</text></a></foreignObject>
<g clip-path="url(#zr12-c0)" class="zr12-cls-1" onclick="alert(1)" ecmeta_ssr_type="chart">
<use xlink:href="#zr12-p0"></use><use href="https://example.org/x.svg#a"></use><path fill="url(https://example.org/#a)"></path>
<text style="font-size:14px;font-family:x;white-space:pre;fill:red" xml:space="preserve">a &lt;b&gt; &amp; "c"</text></g></svg>`
	got, err := clean(raw, Spec{Name: "fig", Title: "<T>", Label: `"L"`, Width: 3, Height: 4})
	if err != nil {
		t.Fatal(err)
	}
	wellFormed(t, got)
	for _, want := range []string{
		`<svg viewBox="0 0 3 4" role="img" aria-labelledby="fig-title">`, `<title id="fig-title">&#34;L&#34;</title>`,
		`<clipPath id="fig-c0">`, `clip-path="url(#fig-c0)"`, `<use href="#fig-p0"/>`,
		`font-size="14"`, "a &lt;b&gt; &amp; &#34;c&#34;</text>",
	} {
		if !strings.Contains(got, want) {
			t.Errorf("%s is not in\n%s", want, got)
		}
	}
	for _, no := range []string{"zr12", "hover", "alert", "example.org", "font-family", "red", ">in<"} {
		if strings.Contains(got, no) {
			t.Errorf("%s is in\n%s", no, got)
		}
	}
}

func TestCleanRefusesWhatIsNoDrawing(t *testing.T) {
	for _, raw := range []string{"", "undefined", "<svg>", "<svg></g></svg>", "<style></style>"} {
		if got, err := clean(raw, Spec{Name: "a"}); err == nil {
			t.Errorf("%q became %q", raw, got)
		}
	}
}

func TestCacheKeepsWhatWasUsedLast(t *testing.T) {
	c := newCache(t.TempDir(), nil)
	start := time.Date(2025, 3, 1, 0, 0, 0, 0, time.UTC)
	for i := range cacheLimit + 3 {
		f := c.file(fmt.Sprint(i))
		if err := os.WriteFile(f, nil, 0o644); err != nil {
			t.Fatal(err)
		}
		when := start.Add(time.Duration(i) * time.Minute)
		if err := os.Chtimes(f, when, when); err != nil {
			t.Fatal(err)
		}
	}
	c.prune()
	left, _ := filepath.Glob(c.file("*"))
	_, err := os.Stat(c.file("2"))
	if len(left) != cacheLimit || err == nil {
		t.Errorf("%d drawings are left, the third oldest: %v", len(left), err)
	}
}

// Slim takes away what cannot be seen, rounds, joins strokes of one look and says once
// what neighbours share; nothing that is drawn goes.
func TestSlim(t *testing.T) {
	for _, tt := range []struct{ in, want string }{
		{`<rect width="9" height="9" fill="none"></rect><path d="M0 0L1 1" fill="transparent" stroke="none"></path>`, ``},
		{`<rect width="9" height="9" fill="none" stroke="red"></rect>`, `<rect width="9" height="9" fill="none" stroke="red"/>`},
		{`<path d="M1.04 2.06L3 4" fill="none" stroke="red"></path>` + "\n" + `<path d="M5 6" fill="none" stroke="red"></path>`, `<path d="M1 2.1L3 4M5 6" fill="none" stroke="red"/>`},
		{`<path d="M1 2" fill="none" stroke="red"></path><path d="M5 6" fill="none" stroke="blue"></path>`, `<path d="M1 2" fill="none" stroke="red"/><path d="M5 6" fill="none" stroke="blue"/>`},
		{`<path d="M1 2" fill="red"></path><path d="M5 6" fill="red"></path>`, `<g fill="red"><path d="M1 2"/><path d="M5 6"/></g>`},
		{`<text font-size="14px" fill="red" transform="translate(3.14159 2)">a</text>`, `<text font-size="14" fill="red" x="3.1" y="2">a</text>`},
		{`<text fill="red" y="9" transform="translate(3 2)">a &lt;</text><text fill="red" x="1" y="2">b</text>`, `<g fill="red"><text y="9" transform="translate(3 2)">a &lt;</text><text x="1" y="2">b</text></g>`},
		{`<g clip-path="url(#c)"><rect fill="none"></rect></g>`, ``},
	} {
		got, err := slim(`<svg>` + tt.in + `</svg>`)
		if want := strings.ReplaceAll(`<svg>`+tt.want+`</svg>`, `<svg></svg>`, `<svg/>`); err != nil || got != want {
			t.Errorf("%s\nis   %s\nwant %s (%v)", tt.in, got, want, err)
		}
	}
	if _, err := slim("<svg></svg><svg></svg>"); err == nil {
		t.Error("two drawings in one")
	}
}
