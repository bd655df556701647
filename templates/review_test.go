package templates

import (
	"path"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
)

// words is the text of a page as a reader sees it, spaces made plain.
func words(t *testing.T, b build, page string) string {
	t.Helper()
	for _, e := range elements(t, page, b.pages[page]) {
		if e.name == "main" {
			return strings.Join(strings.Fields(e.text), " ")
		}
	}
	t.Fatalf("%s has no main", page)
	return ""
}

func expect(t *testing.T, text string, sentences ...string) {
	t.Helper()
	at := 0
	for _, s := range sentences {
		i := strings.Index(text[at:], s)
		if i < 0 {
			t.Errorf("after what comes before, %q is not in\n%s", s, text)
			return
		}
		at += i + len(s)
	}
}

// The front page answers in the order in which a grower asks, each with number,
// interval and sample. The figures are those of the report made by hand.
func TestFrontPageAnswers(t *testing.T) {
	expect(t, words(t, buildOf(t, sample(t, false), sampleCharts()), "index.html"),
		"3 rows of 2 files were left out: no figure uses them.",
		"Season 2025", "7 batches in 14 trays sown.", "Buy more trays? Buy about 25 more A72 (10 to 40).",
		"What came up, and what did badly?", "Over the seasons up to this one clearly worse than the other varieties of their crop: lettuce Ragamuffin.",
		"What did a transplant cost, and of what?",
		"Buy more trays?", "Buy about 25 more A72 (10 to 40).",
		"Each use of A72 gained USD 1.42 (0.40 to 2.40) over S72, in 14 matched sowings on 9 dates. A tray at USD 12.00 has paid for itself after 8.5 uses; it lasts 30. The farm owns 40.",
		"What would change it: It would not pay if a tray cost more than USD 31.00, if one more plant were worth less than USD 0.080, or if a tray lasted fewer than 8.5 uses. At half the life it would still pay.",
		"Not counted: losses in the field, earliness,", "Not tax advice.",
		"Keep", "lettuce Fenwimple: in 100 cells 22 more came up than of the crop’s other varieties (+10.0 to +30.0); 5 batches against 4 batches",
		"Question this one", "lettuce Ragamuffin: in 100 cells 22 fewer came up", "(−30.0 to −10.0)",
		"The season in words", "The figures", "Other seasons",
		"What the records could not tell", "Date set out 2 batches", "Write down: Fill set_out in sowings.csv, or write a row in out.csv.")
}

// The answer about trays in each of its forms.
func TestTrayAnswers(t *testing.T) {
	base := report.Payback{Tray: "A", Other: "S", Gain: num(1), GainLow: num(0.5), GainHigh: num(1.5), Price: num(10), Matches: 6, Dates: 5}
	tests := []struct {
		name   string
		change func(*report.Payback)
		want   string
	}{
		{"buy", func(pb *report.Payback) {
			pb.Verdict, pb.Buy = report.PaysMiddle, &report.Buy{N: 12, Low: 0, High: 33}
		}, "Buy about 10 more A (0 to 35)."},
		{"none now", func(pb *report.Payback) { pb.Verdict, pb.Buy = report.PaysHigh, &report.Buy{N: 0, High: 21} }, "Buy no more A for now (0 to 20)."},
		{"none", func(pb *report.Payback) { pb.Verdict, pb.Buy = report.PaysNever, &report.Buy{PeakInUse: 3} }, "Buy no more A: a further tray would not pay for itself."},
		{"two are not none", func(pb *report.Payback) {
			pb.Verdict, pb.Buy = report.PaysLow, &report.Buy{N: 2, Low: 1, High: 3, PeakInUse: 9}
		}, "Buy 2 more A (1 to 5)."},
		{"idle", func(pb *report.Payback) { pb.Verdict, pb.Buy = report.PaysLow, &report.Buy{Owned: 9, PeakInUse: 9} }, "Buy no more A: a further tray would stand idle."},
		{"shorter life", func(pb *report.Payback) {
			pb.Verdict, pb.FlipPrice, pb.PaybackUses = report.PaysLow, num(20), num(10)
		}, "It would not pay if a tray cost more than USD 20.00, or if a tray lasted fewer than 10 uses."},
		{"loses plants, but is cheap", func(pb *report.Payback) {
			pb.Verdict, pb.Difference, pb.FlipValue = report.PaysLow, num(-0.01), num(0.2)
		}, "It would not pay if one more plant were worth more than USD 0.200."},
		{"how many is not known", func(pb *report.Payback) { pb.Verdict = report.PaysLow }, "A pays even at the low end; how many more cannot be told."},
		{"turned round", func(pb *report.Payback) { pb.Verdict, pb.FlipPrice = report.PaysNever, num(7) }, "It would pay if a tray cost less than USD 7.00."},
		{"no match", func(pb *report.Payback) { pb.Why = report.NoMatches }, "The records cannot tell whether A pays beside S. No crop, variety and lot was sown in both within a week."},
		{"few matches", func(pb *report.Payback) { pb.Why, pb.Matches = report.FewMatches, 1 }, "Matched sowings found: 1; it takes 4. To see a difference of 5 plants in 100, sow one tray of each side by side, same seed and same day, on 69 dates."},
		{"few dates", func(pb *report.Payback) { pb.Why, pb.Dates = report.FewDates, 2 }, "The matched sowings began on 2 dates; it takes 3."},
		{"no value", func(pb *report.Payback) { pb.Why = report.NoValue }, "write transplant_value into book.csv"},
		{"no life", func(pb *report.Payback) { pb.Why = report.NoLife }, "How long A lasts is not known"},
		{"no other life", func(pb *report.Payback) { pb.Why = report.NoOtherLife }, "How long S lasts is not known"},
	}
	for _, tt := range tests {
		r := sample(t, false)
		pb := base
		tt.change(&pb)
		r.Payback = []report.Payback{pb}
		r.Trial = []report.Trial{{Tray: "A", Other: "S", Difference: 0.05, Sowings: records.Known(69)}}
		if got := words(t, buildOf(t, r, nil), "index.html"); !strings.Contains(got, tt.want) {
			t.Errorf("%s: %q is not in\n%s", tt.name, tt.want, got)
		}
	}
}

// A page for which the book has nothing is left out, also of the navigation, and
// the page of what is missing says what to write down.
func TestPagesLeftOut(t *testing.T) {
	b := buildBook(t, "poor/sowings-only")
	if _, ok := b.pages["costs.html"]; ok {
		t.Error("a book without money has a page of costs")
	}
	for page, body := range b.pages {
		if path.Ext(page) == ".html" && strings.Contains(body, `costs.html"`) {
			t.Errorf("%s leads to the page of costs", page)
		}
	}
	expect(t, words(t, b, "missing.html"), "What a transplant cost", "Write money and hours in costs.csv")
	expect(t, words(t, b, "index.html"), "The records cannot tell: no batch of this season has a germination count", "The records cannot tell: no money")
}

// The banner stands on every page, and only where an error left rows out.
func TestBanner(t *testing.T) {
	r := sample(t, false)
	with := buildOf(t, r, nil)
	r.Book.Files = []records.File{{Name: "counts.csv", Rows: 4, LeftOut: 1}}
	one := buildOf(t, r, nil)
	r.Book.Files[0].LeftOut, r.Problems = 1, []records.Problem{{Pos: records.Pos{File: "counts.csv", Line: 3}, Severity: records.Warning, Check: "repeats", Found: "told twice"}}
	repeated := buildOf(t, r, nil)
	r.Book.Files[0].LeftOut = 0
	without := buildOf(t, r, nil)
	for page := range with.pages {
		if path.Ext(page) != ".html" {
			continue
		}
		expect(t, words(t, with, page), "3 rows of 2 files were left out: no figure uses them.")
		expect(t, words(t, one, page), "1 row of 1 file was left out: no figure uses it.")
		if strings.Contains(without.pages[page], `class="banner"`) {
			t.Errorf("%s has a banner though nothing was left out", page)
		}
		if strings.Contains(repeated.pages[page], `class="banner"`) {
			t.Errorf("%s has a banner for a row that only repeats another", page)
		}
	}
}

// A chart stands beside its table; where it could not be drawn, a line says so.
func TestCharts(t *testing.T) {
	b := buildOf(t, sample(t, false), sampleCharts())
	index := b.pages["index.html"]
	for _, want := range []string{`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 640 200"`, "No chart here: traybook was built without its drawing library."} {
		if !strings.Contains(index, want) {
			t.Errorf("%q is not on the front page", want)
		}
	}
	p := newPlace(newSite(sample(t, false), sampleCharts()), spec{path: "x.html"})
	first, second := p.figure("costs-2025", "A", "", nil), p.figure("costs-2025", "B", "", nil)
	if first.ID == second.ID || strings.Contains(string(second.SVG), ` id="costs-2025-c1"`) ||
		!strings.Contains(string(second.SVG), `clip-path="url(#chart-costs-2025-2-costs-2025-c1)"`) ||
		!strings.Contains(string(second.SVG), `aria-labelledby="chart-costs-2025-2-costs-2025-title chart-costs-2025-2-costs-2025-desc"`) ||
		!strings.Contains(string(second.SVG), ">url(#costs-2025-c1) is only text<") {
		t.Errorf("a chart shown twice keeps its ids, or its words change: %s", second.SVG)
	}
}
