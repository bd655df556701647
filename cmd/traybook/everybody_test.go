package main

import (
	"context"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"
)

// checkers is where npm puts the programs that pages are checked with; see its
// package.json. They are no part of traybook, and only tests need them.
const checkers = "testdata/checkers"

// checker is a file of a checker, or the test is skipped.
func checker(t *testing.T, name string) string {
	t.Helper()
	path := filepath.Join(checkers, "node_modules", name)
	if _, err := os.Stat(path); err != nil {
		skipOrFail(t, "no "+name+": run npm ci --ignore-scripts in cmd/traybook/"+checkers)
	}
	return path
}

// faultyPage is what each checker must find fault with, or it has checked nothing: no
// language, a picture without words, an id twice.
const faultyPage = `<!DOCTYPE html><html><head><title>Faulty</title></head><body><main><h1 id="a">Faulty</h1><p id="a"><img src="data:,"></p></main></body></html>`

// faulty writes that page into a folder of its own.
func faulty(t *testing.T) (folder, name string) {
	t.Helper()
	folder, name = t.TempDir(), "faulty.html"
	if err := os.WriteFile(filepath.Join(folder, name), []byte(faultyPage), 0o644); err != nil {
		t.Fatal(err)
	}
	return folder, name
}

// axeRun lets axe-core judge the page, and tells each violation in a line. It loads
// nothing (preload), as the pages forbid it.
const axeRun = `axe.run(document, {%s resultTypes: ['violations'], preload: false}).then(r =>
	r.violations.map(v => v.id + ': ' + v.help + ': ' + v.nodes.slice(0, 3).map(n => n.target.join(' ') + ' ' + (n.any[0]?.message ?? '')).join('; ')))`

// sight is a way to look at a page, and what axe-core judges in it.
type sight struct {
	scheme string
	width  int64
	rules  string
}

// sights are a telephone, a desk and a tablet, by day and by night: all that axe-core has
// but what it calls experimental; of the dark, what differs there; of the tablet, which
// shows what one of the others shows, all but the contrast, which takes longest.
var sights = []sight{
	{"light", 390, ""}, {"light", 1280, ""}, {"light", 768, "rules: {'color-contrast': {enabled: false}},"},
	{"dark", 390, inTheDark}, {"dark", 1280, inTheDark},
}

const inTheDark = "runOnly: ['color-contrast', 'link-in-text-block'],"

// readableByAll judges one page of each kind in every sight.
func readableByAll(t *testing.T, browser context.Context, site string) {
	t.Helper()
	source, err := os.ReadFile(checker(t, "axe-core/axe.min.js"))
	if err != nil {
		t.Fatal(err)
	}
	load := chromedp.Evaluate[string](string(source) + "\n;axe.version")
	inTabs(t, browser, site, onePageOfEachKind(t, site), func(t *testing.T, ctx context.Context, page string) {
		if _, err := chromedp.Run(ctx, load); err != nil {
			t.Fatalf("%s: %v", page, err)
		}
		for _, s := range sights {
			for _, v := range violations(t, ctx, s) {
				t.Errorf("%s, %s, %d wide: %s", page, s.scheme, s.width, v)
			}
		}
	})
	folder, name := faulty(t)
	inTabs(t, browser, folder, []string{name}, func(t *testing.T, ctx context.Context, page string) {
		_, err := chromedp.Run(ctx, load)
		if found := violations(t, ctx, sights[0]); err != nil || len(found) < 2 {
			t.Errorf("of a page without language and with a picture without words axe says only %q, %v", found, err)
		}
	})
}

// violations are what axe-core, which the page has, says of it.
func violations(t *testing.T, ctx context.Context, s sight) []string {
	t.Helper()
	_, err := chromedp.Call(ctx, emulation.SetEmulatedMedia, emulation.SetEmulatedMediaParams{
		Features: []*emulation.MediaFeature{{Name: "prefers-color-scheme", Value: s.scheme}}})
	err2 := chromedp.Do(ctx, chromedp.EmulateViewport(s.width, 900))
	found, err3 := chromedp.Run(ctx, chromedp.Evaluate[[]string](fmt.Sprintf(axeRun, s.rules), chromedp.EvalAwaitPromise))
	if err := errors.Join(err, err2, err3); err != nil {
		t.Fatal(err)
	}
	return found
}

var (
	yearOf = regexp.MustCompile(`^\d{4}/`)
	cropOf = regexp.MustCompile(`^records/.*`)
)

// onePageOfEachKind is, of the pages that differ in season or crop alone, the one with
// most on it.
func onePageOfEachKind(t *testing.T, site string) []string {
	t.Helper()
	most, size := map[string]string{}, map[string]int64{}
	for _, page := range htmlPages(t, site) {
		kind := cropOf.ReplaceAllString(yearOf.ReplaceAllString(page, "YEAR/"), "CROP")
		info, err := os.Stat(filepath.Join(site, page))
		if err != nil {
			t.Fatal(err)
		}
		if info.Size() > size[kind] {
			most[kind], size[kind] = page, info.Size()
		}
	}
	var pages []string
	for _, page := range most {
		pages = append(pages, page)
	}
	slices.Sort(pages)
	return pages
}

// Every page is HTML as the standard has it.
func TestPagesAreValid(t *testing.T) {
	program := checker(t, "html-validate/bin/html-validate.mjs")
	node, err := exec.LookPath("node")
	if err != nil {
		skipOrFail(t, "no node on this machine: no page was validated")
	}
	folder, name := faulty(t)
	sites := append([]string{folder, exampleSite(t).site, hostileSite(t)}, others(t)...)
	out, err := exec.Command(node, append([]string{program, "--config", checkers + "/html-validate.json", "--formatter", "text"}, sites...)...).CombinedOutput()
	if failed := new(exec.ExitError); err == nil || !errors.As(err, &failed) {
		t.Fatalf("the page with faults passed: %v %s", err, out)
	}
	expected := 0
	for line := range strings.Lines(string(out)) {
		if strings.HasPrefix(line, filepath.Join(folder, name)+":") {
			expected++
		} else {
			t.Errorf("%s", strings.TrimSpace(line))
		}
	}
	if expected == 0 {
		t.Error("no fault was found in the page with faults")
	}
}

// others are what is built in other ways: the books that lack much, the sheets, one
// page to send.
func others(t *testing.T) (places []string) {
	t.Helper()
	for i, args := range [][]string{
		{"build", "../../examples/tiny"},
		{"build", "../../examples/ottermoss-broken"},
		{"build", "../../examples/poor/sowings-only"},
		{"build", "../../examples/poor/third-blank"},
		{"build", "../../examples/ottermoss", "--public"},
		{"build", "../../examples/ottermoss", "--single"},
		{"sheets", "../../examples/tiny"},
	} {
		place := filepath.Join(t.TempDir(), fmt.Sprintf("site%d", i))
		if args[0] == "sheets" {
			place += ".html"
		}
		var said strings.Builder
		if code := run(append(args, "--out", place), &said, &said); code != done && code != leftOut {
			t.Fatalf("%v: status %d: %s", args, code, said.String())
		}
		places = append(places, place)
	}
	return places
}

// What a page may weigh, in bytes as they stand on the disk: the most of any page, and
// of the first page of a season that is over. A slow line in a greenhouse loads them.
const (
	heaviestPage  = 400_000
	heaviestFront = 90_000
)

// No page is heavy.
func TestPagesAreLight(t *testing.T) {
	site := exampleSite(t).site
	for _, page := range htmlPages(t, site) {
		info, err := os.Stat(filepath.Join(site, page))
		if err != nil {
			t.Fatal(err)
		}
		most := int64(heaviestPage)
		if filepath.Base(page) == "index.html" {
			most = heaviestFront
		}
		if info.Size() > most {
			t.Errorf("%s: %d bytes, more than %d", page, info.Size(), most)
		}
	}
}
