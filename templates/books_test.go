package templates

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
	"traybook/report/data"
)

var (
	update  = flag.Bool("update", false, "rewrite the golden pages")
	writeTo = flag.String("write", "", "also write the sample's pages into this folder, to be looked at")
)

// build is a site as a test sees it.
type build struct {
	pages   map[string]string
	remarks []records.Problem
	report  *report.Report
}

func buildOf(t testing.TB, r *report.Report, charts Charts) build {
	t.Helper()
	got, remarks, err := Pages(r, charts)
	if err != nil {
		t.Fatal(err)
	}
	b := build{map[string]string{}, remarks, r}
	for _, page := range got {
		if _, twice := b.pages[page.Path]; twice {
			t.Errorf("%s is written twice", page.Path)
		}
		b.pages[page.Path] = string(page.Body)
	}
	for _, f := range data.Files(r) {
		b.pages["data/"+f.Name+".csv"] = ""
	}
	return b
}

// buildBook reads a book of the examples and makes its pages.
func buildBook(t testing.TB, book string) build {
	t.Helper()
	b, problems := records.Load(os.DirFS(filepath.Join("..", "examples", filepath.FromSlash(book))))
	r, err := report.New(b, problems, report.Options{})
	if err != nil {
		t.Fatal(err)
	}
	return buildOf(t, r, nil)
}

// builds are the books whose pages are held to what every page must be.
func builds(t *testing.T) map[string]build {
	t.Helper()
	out := map[string]build{
		"sample":  buildOf(t, sample(t, false), sampleCharts()),
		"hostile": buildOf(t, sample(t, true), sampleCharts()),
		"empty":   buildOf(t, emptyReport(t), nil),
	}
	for _, book := range []string{"tiny", "poor/sowings-only", "poor/third-blank", "poor/yearly-bill"} {
		out[book] = buildBook(t, book)
	}
	return out
}

func emptyReport(t *testing.T) *report.Report {
	t.Helper()
	r, err := report.New(&records.Book{}, nil, report.Options{})
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// The golden pages are the text of pages of the tiny book, whose every figure is
// worked out by hand where the book is made.
func TestGoldenPages(t *testing.T) {
	b := buildBook(t, "tiny")
	for _, page := range []string{"index.html", "costs.html", "missing.html", "records.html", "records/2025-lettuce.html"} {
		got := mainOf(t, page, b.pages[page])
		file := filepath.Join("testdata", "tiny", strings.ReplaceAll(page, "/", "_"))
		if *update {
			if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
				t.Fatal(err)
			}
			if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
				t.Fatal(err)
			}
			continue
		}
		want, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		if got != string(want) {
			t.Errorf("%s is not %s: %s\nAfter reading what changed, go test ./templates -update rewrites it.", page, file, firstDifference(got, string(want)))
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

// TestWrite writes the sample's pages where a folder was asked for.
func TestWrite(t *testing.T) {
	if *writeTo == "" {
		t.Skip("no folder given with -write")
	}
	for page, body := range buildOf(t, sample(t, false), sampleCharts()).pages {
		file := filepath.Join(*writeTo, filepath.FromSlash(page))
		if err := os.MkdirAll(filepath.Dir(file), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(file, []byte(body), 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// The same report gives the same bytes.
func TestSameBytes(t *testing.T) {
	a, b := buildOf(t, sample(t, true), sampleCharts()), buildOf(t, sample(t, true), sampleCharts())
	for page := range a.pages {
		if a.pages[page] != b.pages[page] {
			t.Errorf("%s differs between two builds", page)
		}
	}
}

// BenchmarkPages makes all pages of the example's four seasons, without charts.
func BenchmarkPages(b *testing.B) {
	book, problems := records.Load(os.DirFS(filepath.Join("..", "examples", "ottermoss")))
	r, err := report.New(book, problems, report.Options{})
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		if _, _, err := Pages(r, nil); err != nil {
			b.Fatal(err)
		}
	}
}
