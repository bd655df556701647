package templates

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/data"
)

var update = flag.Bool("update", false, "rewrite the golden pages")

// builds are the books whose pages are held to what every page must be, with the data
// files that they link to.
func builds(t *testing.T) map[string]build {
	t.Helper()
	grown := report.Options{Today: today, Season: 2024, Grow: 1.5, Switch: []batch.Switch{{From: "S72", To: "A72"}}}
	out := map[string]build{
		"house":         buildOf(t, houseReport(t), houseCharts()),
		"hostile house": buildOf(t, hostileReport(t), houseCharts()),
		"house, grown":  buildOf(t, reportOf(t, house, grown), nil),
		"empty":         buildOf(t, reportOfBook(t, &records.Book{}, nil, report.Options{}), nil),
	}
	for _, book := range []string{"tiny", "poor/sowings-only", "poor/third-blank", "poor/yearly-bill", "checks/c17"} {
		out[book] = buildOf(t, reportOf(t, example(book), report.Options{}), nil)
	}
	for _, b := range out {
		for f := range data.Files(b.report) {
			b.pages["data/"+f.Name+".csv"] = ""
		}
	}
	return out
}

// The golden pages are the text of every page of the tiny book, whose every figure is
// worked out by hand where the book is made, and of the house, which has every page.
func TestGoldenPages(t *testing.T) {
	golden(t, "tiny", buildOf(t, reportOf(t, example("tiny"), report.Options{}), nil))
	b := buildOf(t, houseReport(t), nil)
	golden(t, "house", b)
	if left := newSite(b.report, nil).left; len(left) > 0 {
		t.Errorf("the house has no page for %v, so no golden page tells of a change there", left)
	}
}

// golden compares a book's pages with testdata/pages/BOOK, page by page, or rewrites
// them.
func golden(t *testing.T, book string, b build) {
	t.Helper()
	dir := filepath.Join("testdata", "pages", book)
	if *update {
		rewrite(t, dir, b)
	}
	kept, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	if len(kept) != len(b.html()) {
		t.Errorf("%s holds %d pages, the book has %d", dir, len(kept), len(b.html()))
	}
	for _, page := range b.html() {
		want, err := os.ReadFile(filepath.Join(dir, goldenName(page)))
		if err != nil {
			t.Error(err)
			continue
		}
		if got := mainOf(t, page, b.pages[page]); got != string(want) {
			t.Errorf("%s of %s is another: %s\nAfter reading what changed, go test ./templates -update rewrites it.", page, book, firstDifference(got, string(want)))
		}
	}
}

func goldenName(page string) string { return strings.ReplaceAll(page, "/", "_") }

func rewrite(t *testing.T, dir string, b build) {
	t.Helper()
	if err := os.RemoveAll(dir); err != nil {
		t.Fatal(err)
	}
	if err := os.MkdirAll(dir, 0o755); err != nil {
		t.Fatal(err)
	}
	for _, page := range b.html() {
		if err := os.WriteFile(filepath.Join(dir, goldenName(page)), []byte(mainOf(t, page, b.pages[page])), 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// mainOf is what stands on a page between its navigation and its foot.
func mainOf(t *testing.T, page, body string) string {
	t.Helper()
	_, rest, ok := strings.Cut(body, `<main id="text">`)
	text, _, closed := strings.Cut(rest, "</main>")
	if !ok || !closed {
		t.Fatalf("%s has no main", page)
	}
	return strings.TrimSpace(text) + "\n"
}

func firstDifference(got, want string) string {
	g, w := strings.Split(got, "\n"), strings.Split(want, "\n")
	for i := range min(len(g), len(w)) {
		if g[i] != w[i] {
			return "\n got " + g[i] + "\nwant " + w[i]
		}
	}
	return "one is longer"
}

// The same report gives the same bytes, whatever its book is called.
func TestSameBytes(t *testing.T) {
	a, b := buildOf(t, hostileReport(t), houseCharts()), buildOf(t, hostileReport(t), houseCharts())
	for page := range a.pages {
		if a.pages[page] != b.pages[page] {
			t.Errorf("%s differs between two builds", page)
		}
	}
}

// A page for which the book has nothing is left out, also of the navigation, and
// the page of what is missing says what to write down.
func TestPagesLeftOut(t *testing.T) {
	b := buildOf(t, reportOf(t, example("poor/sowings-only"), report.Options{}), nil)
	for _, page := range b.html() {
		if strings.HasSuffix(page, "/costs.html") {
			t.Error("a book without money has a page of costs")
		}
		if strings.Contains(b.pages[page], `costs.html"`) {
			t.Errorf("%s leads to a page of costs", page)
		}
	}
	expect(t, textOf(t, b, "missing.html"), "What a transplant cost", "Write money and hours in costs.csv")
	expect(t, textOf(t, b, "index.html"), "Nothing that was sown has been counted", "Count the cells with a living seedling once",
		"What a transplant cost is not written down", "Write bills and hours into costs.csv")
}

// BenchmarkPages makes all pages of the example's four seasons, without charts.
func BenchmarkPages(b *testing.B) {
	r := reportOf(b, example("ottermoss"), report.Options{})
	for b.Loop() {
		for _, err := range Pages(r, nil) {
			if err != nil {
				b.Fatal(err)
			}
		}
	}
}

// Memory of a page that is said to be written is taken by those after it, and by nothing
// else: whoever writes page after page gets the same as who keeps them all.
func TestPagesInTheMemoryOfOthers(t *testing.T) {
	kept := buildOf(t, houseReport(t), nil).pages
	n := 0
	for f, err := range Pages(houseReport(t), nil) {
		if err != nil {
			t.Fatal(err)
		}
		if string(f.Body) != kept[f.Path] {
			t.Errorf("%s differs", f.Path)
		}
		clear(f.Body)
		f.Written()
		n++
	}
	if n != len(kept) {
		t.Errorf("%d pages, %d kept", n, len(kept))
	}
}
