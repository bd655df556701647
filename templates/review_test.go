package templates

import (
	"strings"
	"testing"
	"testing/fstest"

	"traybook/report"
	"traybook/report/chart"
)

// logsOf is a book of logs given as text.
func logsOf(logs map[string]string) fstest.MapFS {
	book := fstest.MapFS{}
	for name, text := range logs {
		book[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return book
}

// The banner stands on every page, and only where an error left rows out: a row that
// only repeats what another log tells is warned of, no more.
func TestBanner(t *testing.T) {
	sowings := "batch,sown,crop,variety,lot,tray,trays,cells\nB1,2025-03-01,kale,Pinderby,L1,T72,1,72\nB2,2025-03-08,kale,Pinderby,L1,T72,1,72\n"
	counts := "batch,date,emerged\nB1,2025-03-12,60\n"
	lots := "lot,crop,variety,bought,price\nL1,kale,Pinderby,2025-01-05,9.5\n"
	tests := []struct{ name, banner, counts, costs string }{
		{"none", "", counts, ""},
		{"one row", "1 row of 1 file was left out: no figure uses it.", counts + "B2,2025-03-19,6O\n", ""},
		{"three rows", "3 rows of 2 files were left out: no figure uses them.", counts + "B2,2025-03-19,6O\nB2,2025-03-20,x\n", "date,category,amount\n2025-03-01,heat,x\n"},
		{"a repeat", "", counts, "date,category,amount,note\n2025-01-05,seed,9.50,kale\n"},
	}
	for _, tt := range tests {
		book := logsOf(map[string]string{"sowings.csv": sowings, "counts.csv": tt.counts, "lots.csv": lots})
		if tt.costs != "" {
			book["costs.csv"] = &fstest.MapFile{Data: []byte(tt.costs)}
		}
		r := reportOf(t, book, report.Options{})
		if tt.name == "a repeat" && (len(r.Problems) != 1 || r.Problems[0].Check != repeatsCheck) {
			t.Fatalf("no row repeats another: %v", r.Problems)
		}
		b := buildOf(t, r, nil)
		for _, page := range b.html() {
			if tt.banner != "" {
				expect(t, textOf(t, b, page), tt.banner)
			} else if strings.Contains(b.pages[page], `class="banner"`) {
				t.Errorf("%s: %s has a banner", tt.name, page)
			}
		}
	}
}

// A public edition has no page of what is missing: it says that rows were left out, and no
// link of it leads nowhere.
func TestPublicBanner(t *testing.T) {
	book := logsOf(map[string]string{
		"sowings.csv": "batch,sown,crop,variety,tray,trays,cells\nB1,2025-03-01,kale,Pinderby,T72,1,72\n",
		"counts.csv":  "batch,date,emerged\nB1,2025-03-12,60\nB1,2025-03-13,6O\n"})
	for _, public := range []bool{false, true} {
		b := buildOf(t, reportOf(t, book, report.Options{Public: public}), nil)
		ids := idsOf(t, b)
		for _, page := range b.html() {
			expect(t, textOf(t, b, page), "1 row of 1 file was left out: no figure uses it.")
			leadsSomewhere(t, page, b.pages[page], ids)
			if leads := strings.Contains(b.pages[page], "missing.html#problems"); leads == public {
				t.Errorf("public %v: %s leads to the problems: %v", public, page, leads)
			}
		}
	}
}

// A chart stands beside its table; where it could not be drawn, a line says so. A chart
// shown twice has ids of its own each time, its words as they are.
func TestCharts(t *testing.T) {
	b := buildOf(t, houseReport(t), houseCharts())
	if page := b.pages["2025/germination.html"]; !strings.Contains(page, `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 640 200"`) {
		t.Error("the chart of lettuce by week is not on the page of germination")
	}
	p := newPage(newSite(houseReport(t), houseCharts()), spec{path: "x.html"})
	first, second := p.figure("emergence-2025", "A", "", nil), p.figure("emergence-2025", "B", "", nil)
	if first.ID == second.ID || strings.Contains(string(second.SVG), ` id="emergence-2025-c1"`) ||
		!strings.Contains(string(second.SVG), `clip-path="url(#chart-emergence-2025-2-emergence-2025-c1)"`) ||
		!strings.Contains(string(second.SVG), `aria-labelledby="chart-emergence-2025-2-emergence-2025-title chart-emergence-2025-2-emergence-2025-desc"`) ||
		!strings.Contains(string(second.SVG), ">url(#emergence-2025-c1) is only text<") {
		t.Errorf("a chart shown twice keeps its ids, or its words change: %s", second.SVG)
	}
	if f := p.figure(chart.Name("matches", "A72", "S72"), "C", "", nil); f.Missing != chart.MissingRuntime || f.SVG != "" || !f.Shown() || f.Filled() {
		t.Errorf("a chart that could not be drawn says nothing: %+v", f)
	}
}
