package templates

import (
	"strings"
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/rate"
	"traybook/report/sowing"
	"traybook/report/years"
)

// The front page answers in the order in which a grower asks, each with its number, what
// it rests on and the page that tells more.
func TestFrontPageAnswers(t *testing.T) {
	expect(t, textOf(t, buildOf(t, houseReport(t), nil), "index.html"),
		"1 row of 1 file was left out: no figure uses it.",
		"The season 2025", "32 batches in 50 trays sown. The season is still under way: the figures stand as of 10 June 2025.",
		"Ragamuffin came up badly", "of the cells came up", "lettuce Ragamuffin (28 fewer in 100 cells)", "27 of 29 batches were counted, 2,736 cells.", "Germination, 2025",
		"cost was labour", "a transplant cost", "25 batches, 1,709 plants fit to set out", "Costs, 2025",
		"more A72 to buy", "8 matched sowings on 8 dates.", "Trays and what would change it",
		"against 2024", "Year over year",
		"fell short of the field", "How much to sow",
		"The season in words", "Crop by crop")
}

// What came up: a heading for each verdict, varieties before crops.
func TestUpTitles(t *testing.T) {
	total := rateOf(800, 1000, 9, 0.77, 0.83)
	differs := func(variety string, by float64, v rate.Verdict) germination.Difference {
		return germination.Difference{Season: 2025, Crop: "kale", Variety: variety, Difference: num(by), Verdict: v}
	}
	crop := func(crop string, share float64) germination.Emergence {
		e := germination.Emergence{Group: batch.Group{Season: 2025, Crop: crop}, Rate: rateOf(share*1000, 1000, 5, share-0.02, share+0.02)}
		e.SeedsPerCell = records.Known(1)
		return e
	}
	worse, better := differs("Low", -0.3, rate.ClearlyLower), differs("High", 0.2, rate.ClearlyHigher)
	tests := []struct {
		want   string
		differ []germination.Difference
		crops  []germination.Emergence
		total  rate.Rate
	}{
		{"Low came up badly", []germination.Difference{better, worse}, []germination.Emergence{crop("leek", 0.5)}, total},
		{"Lowest and Low came up badly", []germination.Difference{worse, differs("Lowest", -0.4, rate.ClearlyLower)}, nil, total},
		{"D, C and 2 more came up badly", []germination.Difference{worse, differs("B", -0.31, rate.ClearlyLower), differs("C", -0.32, rate.ClearlyLower), differs("D", -0.33, rate.ClearlyLower)}, nil, total},
		{"Leek came up worst", []germination.Difference{better}, []germination.Emergence{crop("leek", 0.5), crop("beet", 0.8)}, total},
		{"High came up better than the rest of its crop", []germination.Difference{better}, nil, total},
		{"High and Higher came up better than the rest of their crops", []germination.Difference{better, differs("Higher", 0.1, rate.ClearlyHigher)}, nil, total},
		{"Leek came up best", nil, []germination.Emergence{crop("leek", 0.95)}, total},
		{"No crop and no variety stood clearly apart", []germination.Difference{differs("A", -0.1, rate.NoDifference), differs("B", -0.5, rate.TooFew)}, []germination.Emergence{crop("leek", 0.8)}, total},
		{"Too few batches were counted to set any crop apart", nil, nil, rateOf(80, 100, 2, 0, 0)},
		{"Too few batches were sown alike to set any crop apart", nil, nil, rateOf(800, 1000, 21, 0, 0)},
	}
	for _, tt := range tests {
		r := houseReport(t)
		r.Germination.Differences, r.Germination.Crops = tt.differ, tt.crops
		r.Germination.Seasons[2025] = tt.total
		f := pageOf(t, r).upFinding(2025)
		if got := bare(f.Title); got != tt.want {
			t.Errorf("got %q, want %q", got, tt.want)
		}
	}
}

// What a plant cost: a heading for what is known of it, the share in words where a simple
// fraction is near.
func TestCostTitles(t *testing.T) {
	r := houseReport(t)
	p := pageOf(t, r)
	if got := bare(p.costTitle(costOf("", 3, 1, 0))); got != "60 % of a plant’s cost was labour" {
		t.Errorf("got %q", got)
	}
	nothing := costOf("", 3, 0, 0)
	if got := bare(p.costTitle(nothing)); got != "A transplant cost nothing that is written down" {
		t.Errorf("got %q", got)
	}
	for share, want := range map[float64]string{0.97: "nearly all", 0.75: "three quarters", 0.66: "two thirds", 0.5: "half", 0.4: "two fifths", 0.33: "a third", 0.25: "a quarter", 0.2: "a fifth", 0.6: "60 %", 0.05: "5 %"} {
		if got := bare(partWords(share)); got != want {
			t.Errorf("%g: %q, want %q", share, got, want)
		}
	}
	open := r.Money.Seasons[len(r.Money.Seasons)-1]
	open.PerTransplant = rate.Num{}
	r.Money.Seasons[len(r.Money.Seasons)-1] = open
	if f := p.costFinding(2025); f.Big != "?" || bare(f.Title) != "What a transplant cost cannot be told yet" {
		t.Errorf("an open season: %+v", f)
	}
}

// aChange is a farm's change of emergence: like sowings, three quarters of the cells, moved
// it by three points, so that they moved by four themselves.
func aChange(v rate.Verdict, usual float64) years.Change {
	c := years.Change{From: 2024, To: 2025, Measure: years.Emergence, Change: 0.05, Same: 0.03, OtherKinds: -0.01, OtherCrops: num(0.03), Share: 0.75,
		Low: num(0.015), High: num(0.045), Verdict: v}
	if v == rate.ClearlyLower {
		c.Same, c.Low, c.High, c.Change = -0.03, num(-0.045), num(-0.015), -0.01
	}
	c.Before.Figure, c.After.Figure = num(0.8), num(0.8+c.Change)
	if usual > 0 {
		c.Usual = num(usual)
	}
	return c
}

// Season beside season: a heading for each verdict, and never a cause.
func TestChangeTitles(t *testing.T) {
	alone := aChange(rate.TooFew, 0)
	alone.Share, alone.Same = 0, 0
	level := aChange(rate.NoDifference, 0)
	level.Same = -0.0003
	tests := []struct {
		c           years.Change
		title, says string
	}{
		{aChange(rate.ClearlyHigher, 0), "Like sowings came up better than in 2024", "Two seasons cannot tell weather from work."},
		{aChange(rate.ClearlyHigher, 0.05), "Like sowings came up better than in 2024, as seasons do", "That is no more than this farm’s seasons differ, 5.0 in 100."},
		{aChange(rate.ClearlyHigher, 0.02), "Like sowings came up better than in 2024", "That is more than they usually differ, up to 2.0 in 100."},
		{aChange(rate.ClearlyLower, 0), "Like sowings came up worse than in 2024", "came up 4.0 fewer in 100 than in 2024"},
		{aChange(rate.ClearlyLower, 0.05), "Like sowings came up worse than in 2024, as seasons do", "no more than this farm’s seasons differ"},
		{aChange(rate.NoDifference, 0.05), "Like sowings: no clear difference from 2024", "Like sowings, 75 % of the cells, came up 4.0 more in 100 than in 2024. The whole farm’s change, +5.0 in 100: like sowings +3.0, other varieties and trays −1.0 and growing other crops +3.0."},
		{level, "Like sowings: no clear difference from 2024", "Like sowings, 75 % of the cells, came up as in 2024, to within 0.1 in 100."},
		{aChange(rate.TooFew, 0), "Too few batches to set like sowings beside those of 2024", "other varieties and trays −1.0 and growing other crops +3.0."},
		{alone, "Nothing was sown alike in 2024", "No variety stood in the same tray in both 2024 and 2025."},
	}
	for _, tt := range tests {
		r := houseReport(t)
		r.Years.Years = []years.Change{tt.c}
		f := pageOf(t, r).yearsFinding(2025)
		if got := bare(f.Title); got != tt.title {
			t.Errorf("got %q, want %q", got, tt.title)
		}
		expect(t, bare(join(f.Say...)), tt.says)
		if text := bare(join(f.Say...)); strings.Contains(text, "because") || strings.Contains(text, "thanks to") {
			t.Errorf("a cause is named: %s", text)
		}
	}
	r := houseReport(t)
	r.Years.Years = nil
	f := pageOf(t, r).yearsFinding(2024)
	if bare(f.Title) != "There is no season to compare this one with" || bare(join(f.Say...)) != "It is the first season of the book." || f.Big != "?" {
		t.Errorf("the first season: %+v", f)
	}
}

// What to sow more of and less of: a heading for each case.
func TestSowTitles(t *testing.T) {
	of := func(crop string, a sowing.Advice, short, over float64) sowing.Balance {
		return sowing.Balance{Season: 2025, Crop: crop, Batches: 4, Advice: a, Sums: sowing.Sums{Short: short, LeftOver: over, ShortBatches: 2}}
	}
	lot := of("leek", "", 20, 0)
	lot.ByLot = records.Known("L7")
	tests := []struct {
		title, says string
		of          []sowing.Balance
	}{
		{"Sow more spinach and kale, less beet", "", []sowing.Balance{of("kale", sowing.SowMore, 30, 0), of("spinach", sowing.SowMore, 50, 0), of("beet", sowing.SowLess, 0, 80)}},
		{"Sow more kale", "", []sowing.Balance{of("kale", sowing.SowMore, 30, 0)}},
		{"Sow less beet", "", []sowing.Balance{of("beet", sowing.SowLess, 0, 80)}},
		{"No crop was short or over often enough to change what is sown", "Short by one seed lot alone, so question the lot before sowing more: leek (L7).", []sowing.Balance{lot}},
		{"What to sow more of cannot be told", "No batch that has ended has both", nil},
	}
	for _, tt := range tests {
		r := houseReport(t)
		r.Sowing.Balance = tt.of
		f := pageOf(t, r).sowFinding(2025)
		if got := bare(f.Title); got != tt.title {
			t.Errorf("got %q, want %q", got, tt.title)
		}
		if text := bare(join(f.Say...)); !strings.Contains(text, tt.says) {
			t.Errorf("%q is not in %s", tt.says, text)
		}
	}
}
