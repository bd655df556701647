package templates

import (
	"strings"
	"testing"
	"testing/fstest"

	"traybook/report"
	"traybook/report/germination"
	"traybook/report/rate"
)

// The front page answers in the order in which a grower asks, each with number,
// interval and sample.
func TestFrontPageAnswers(t *testing.T) {
	expect(t, textOf(t, buildOf(t, houseReport(t), houseCharts()), "index.html"),
		"1 row of 1 file was left out: no figure uses it.",
		"Season 2025", "32 batches in 50 trays sown. The season is still under way: the figures stand as of 10 June 2025.",
		"Buy more trays? Buy about 15 more A72 (10 to 15).",
		"What came up, and what did badly?", "27 batches, 2,736 cells. Worst came up lettuce with", "best bunching onion with",
		"Over the seasons up to this one clearly worse than the other varieties of their crop: lettuce Ragamuffin.",
		"What did a transplant cost, and of what?", "A usable transplant cost USD", "25 batches, 1,709 usable plants.", "Most of it was labour", "heat", "mix",
		"Buy more trays?", "Buy about 15 more A72 (10 to 15).", "in 8 matched sowings on 8 dates.", "it lasts 12.5. The farm owns 4.",
		"What would change it: It would not pay if a tray cost more than", "if one more plant were worth less than", "or if a tray lasted fewer than",
		"Not counted: losses in the field, earliness,", "Not tax advice.",
		"Keep", "lettuce Fenwimple: in 100 cells 27 more came up than of the crop’s other varieties", "16 batches against 9 batches",
		"Question this one", "lettuce Ragamuffin: in 100 cells 28 fewer came up", "8 batches against 17 batches",
		"2 varieties had batches enough",
		"The season in words", "The figures", "Other seasons",
		"What the records could not tell", "Date set out 1 batch", "Write down: set_out in sowings.csv, or a row with last = yes in out.csv.")
}

// The two lists begin with the variety farthest from the others, be it better or worse.
func TestFarthestVerdictFirst(t *testing.T) {
	r := houseReport(t)
	r.Germination.Differences = nil
	for _, d := range []struct {
		variety string
		by      float64
	}{{"near", 0.08}, {"far", 0.30}, {"nearly", -0.09}, {"middle", 0.20}, {"farther", -0.40}} {
		verdict := map[bool]rate.Verdict{true: rate.ClearlyHigher, false: rate.ClearlyLower}[d.by > 0]
		r.Germination.Differences = append(r.Germination.Differences, germination.Difference{Season: 2025, Crop: "lettuce", Variety: d.variety, Batches: 4, OtherBatches: 5,
			Difference: num(d.by), Low: num(d.by - 0.05), High: num(d.by + 0.05), Verdict: verdict})
	}
	expect(t, textOf(t, buildOf(t, r, nil), "index.html"),
		"Keep", "lettuce far: in 100 cells 30 more", "lettuce middle: in 100 cells 20 more", "lettuce near: in 100 cells 8 more",
		"Question this one", "lettuce farther: in 100 cells 40 fewer", "lettuce nearly: in 100 cells 9 fewer")
}

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

// A chart stands beside its table; where it could not be drawn, a line says so.
func TestCharts(t *testing.T) {
	b := buildOf(t, houseReport(t), houseCharts())
	index := b.pages["index.html"]
	for _, want := range []string{`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 640 200"`, "No chart here: traybook was built without its drawing library."} {
		if !strings.Contains(index, want) {
			t.Errorf("%q is not on the front page", want)
		}
	}
	p := newPage(newSite(houseReport(t), houseCharts()), spec{path: "x.html"})
	first, second := p.figure("costs-2025", "A", "", nil), p.figure("costs-2025", "B", "", nil)
	if first.ID == second.ID || strings.Contains(string(second.SVG), ` id="costs-2025-c1"`) ||
		!strings.Contains(string(second.SVG), `clip-path="url(#chart-costs-2025-2-costs-2025-c1)"`) ||
		!strings.Contains(string(second.SVG), `aria-labelledby="chart-costs-2025-2-costs-2025-title chart-costs-2025-2-costs-2025-desc"`) ||
		!strings.Contains(string(second.SVG), ">url(#costs-2025-c1) is only text<") {
		t.Errorf("a chart shown twice keeps its ids, or its words change: %s", second.SVG)
	}
}
