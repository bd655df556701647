package templates

import (
	"bytes"
	"encoding/csv"
	"io/fs"
	"os"
	"path"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"traybook/records"
	"traybook/report"
	"traybook/report/chart"
	"traybook/report/rate"
)

// house is a small invented book of every log, in which every page has something to
// tell; today is the day on which it is read.
var (
	house = os.DirFS("testdata/house")
	today = records.NewDate(2025, 6, 10)
)

func example(name string) fs.FS { return os.DirFS("../examples/" + name) }

// reportOf makes the report of a book as a build does.
func reportOf(t testing.TB, book fs.FS, o report.Options) *report.Report {
	t.Helper()
	b, problems := records.Load(book)
	return reportOfBook(t, b, problems, o)
}

// reportOfBook is reportOf for a book that a test has changed.
func reportOfBook(t testing.TB, b *records.Book, problems []records.Problem, o report.Options) *report.Report {
	t.Helper()
	problems = append(problems, Notes(b)...)
	records.SortProblems(problems)
	r, err := report.New(b, problems, o)
	if err != nil {
		t.Fatal(err)
	}
	return r.With(Unfilled(r))
}

func houseReport(t testing.TB) *report.Report {
	t.Helper()
	return reportOf(t, house, report.Options{Today: today})
}

// changedHouse is the report of the house after a change of its rows.
func changedHouse(t testing.TB, change func(*records.Book)) *report.Report {
	t.Helper()
	b, problems := records.Load(house)
	change(b)
	return reportOfBook(t, b, problems, report.Options{Today: today})
}

// hostileNames try to break a page, to be a formula, or to turn a line round.
var hostileNames = map[string]string{
	"lettuce": `</script><script>alert(1)</script>`, "Fenwimple": `=cmd|' /C calc'!A0`, "FEN-25": "\u202eתרד\u202c <img src=x onerror=alert(2)>",
	"a quick look": `"><b onmouseover=alert(3)>`, "mice": `<b onmouseover=alert(4)>`, "warm box": `<script>alert(5)`, "picture": `<img src=x>`,
	"LS25-7": `L<img src=x>7`, "A72": `A<b onmouseover=x>72`, "air-pruning": `air"pruning`, "Hollow Lane": `Hollow </title><script>alert(6)</script>`,
}

// hostileNote is a season's note that tries the same.
const hostileNote = "# \"><b onmouseover=alert(7)>\n\n<script>alert(8)</script>\n\n[x](javascript:alert(9))\n\n![the tap](https://example.org/t.png)\n\n```figure emergence\n```\n"

// swapped is a book with cells swapped for others, in every log.
func swapped(t testing.TB, book fs.FS, cells map[string]string) fstest.MapFS {
	t.Helper()
	out := fstest.MapFS{}
	names, err := fs.Glob(book, "*.csv")
	if err != nil || len(names) == 0 {
		t.Fatalf("%d logs, %v", len(names), err)
	}
	for _, name := range names {
		body, err := fs.ReadFile(book, name)
		if err != nil {
			t.Fatal(err)
		}
		rows, err := csv.NewReader(bytes.NewReader(body)).ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		for _, row := range rows {
			for i, cell := range row {
				if to, ok := cells[cell]; ok {
					row[i] = to
				}
			}
		}
		var text bytes.Buffer
		if err := csv.NewWriter(&text).WriteAll(rows); err != nil {
			t.Fatal(err)
		}
		out[name] = &fstest.MapFile{Data: text.Bytes()}
	}
	return out
}

func hostileReport(t testing.TB) *report.Report {
	t.Helper()
	book := swapped(t, house, hostileNames)
	book["notes/2025.md"] = &fstest.MapFile{Data: []byte(hostileNote)}
	return reportOf(t, book, report.Options{Today: today})
}

// build is a site as a test sees it.
type build struct {
	pages  map[string]string
	report *report.Report
}

func buildOf(t testing.TB, r *report.Report, charts Charts) build {
	t.Helper()
	b := build{map[string]string{}, r}
	for page, err := range Pages(r, charts) {
		if err != nil {
			t.Fatal(err)
		}
		if _, twice := b.pages[page.Path]; twice {
			t.Errorf("%s is written twice", page.Path)
		}
		b.pages[page.Path] = string(page.Body)
	}
	return b
}

// html are the paths of the pages, in order.
func (b build) html() []string {
	var names []string
	for name := range b.pages {
		if path.Ext(name) == ".html" {
			names = append(names, name)
		}
	}
	slices.Sort(names)
	return names
}

// pageOf is a page of the house on which a part can be made by itself.
func pageOf(t testing.TB, r *report.Report) *page {
	t.Helper()
	return newPage(newSite(r, nil), spec{path: "x.html"})
}

// drawn is a drawing with ids and references as the drawer makes them.
func drawn(name string) chart.Drawing {
	return chart.Drawing{Name: name, SVG: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 640 200" role="img" aria-labelledby="` + name + `-title ` + name + `-desc"><title id="` + name + `-title">T</title><desc id="` + name + `-desc">D</desc>` +
		`<defs><clipPath id="` + name + `-c1"><path d="M0 0L9 9"></path></clipPath></defs><rect x="20" y="20" width="400" height="60" fill="var(--c1)" clip-path="url(#` + name + `-c1)"></rect><text x="20" y="120" fill="var(--ink)" font-size="14">url(#` + name + `-c1) is only text</text></svg>`}
}

// houseCharts are drawings of some of the house's charts; one could not be made.
func houseCharts() Charts {
	matches := chart.Name("matches", "A72", "S72")
	weeks := chart.Name("weeks", "2025", "lettuce")
	return Charts{"emergence-2025": drawn("emergence-2025"), "costs-2025": drawn("costs-2025"), weeks: drawn(weeks), matches: {Name: matches, Missing: chart.MissingRuntime}}
}

func day(t testing.TB, iso string) records.Date {
	t.Helper()
	d, ok := records.ParseISO(iso)
	if !ok {
		t.Fatalf("%s is no date", iso)
	}
	return d
}

func num(v float64) rate.Num { return records.Known(v) }

// rateOf is x of n over batches, with an interval where high is above 0.
func rateOf(x, n float64, batches int, low, high float64) rate.Rate {
	r := rate.Rate{Batches: batches, X: x, N: n, Share: num(x / n)}
	if high > 0 {
		r.Low, r.High = num(low), num(high)
	}
	return r
}

// textOf is the text of a page as a reader sees it, spaces made plain.
func textOf(t *testing.T, b build, page string) string {
	t.Helper()
	for _, e := range elements(t, page, b.pages[page]) {
		if e.name == "main" {
			return strings.Join(strings.Fields(e.text), " ")
		}
	}
	t.Fatalf("%s has no main", page)
	return ""
}

// bare takes the tags off a sentence and makes its spaces plain.
func bare[T ~string](html T) string {
	var b strings.Builder
	inside := false
	for _, r := range string(html) {
		switch {
		case r == '<':
			inside = true
		case r == '>' && inside:
			inside = false
		case !inside:
			b.WriteRune(r)
		}
	}
	return strings.Join(strings.Fields(b.String()), " ")
}

// expect asks for sentences, one after the other.
func expect(t *testing.T, text string, sentences ...string) {
	t.Helper()
	at := 0
	for _, s := range sentences {
		i := strings.Index(text[at:], s)
		if i < 0 {
			t.Errorf("after what comes before, %q is not in\n%s", s, text[at:])
			return
		}
		at += i + len(s)
	}
}
