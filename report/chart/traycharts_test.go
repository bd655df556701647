package chart

import (
	"slices"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
)

func TestMatchesWithTheirMean(t *testing.T) {
	r := reportOf()
	for _, d := range []float64{-0.05, 0.1, 0.15, 0.2} {
		r.Matches = append(r.Matches, report.Match{Tray: "A50", Other: "S50", Difference: d})
	}
	r.Matches = append(r.Matches, report.Match{Tray: "A50", Other: "T50", Difference: 1})
	p := &report.Payback{Tray: "A50", Other: "S50", Cells: 50, Matches: 4, Difference: known(0.1), DifferenceLow: known(-0.07), DifferenceHigh: known(0.27), BreakEvenPlants: known(2.04)}
	s := only(t, matches(r, p))
	names, notes := rowsOf(s)
	same(t, "names", names, "mean and its range", "one matched sowing each")
	same(t, "notes", notes, "4 matches", "")
	if dots := items(t, s, "single"); len(dots) != 4 || dots[0][0] != -2.5 || dots[3][0] != 10.0 {
		t.Errorf("dots %v", dots)
	}
	if at := items(t, s, "pays from +2.0"); at[0][0] != 2.04 {
		t.Errorf("break-even %v", at)
	}
	if want := "In 3 of 4 matched sowings A50 gave more usable plants. On average +5.0 plants a tray, between −3.5 and +13.5; it pays from +2.0."; !strings.HasSuffix(s.Label, want) {
		t.Errorf("label %q", s.Label)
	}
	few := &report.Payback{Tray: "A50", Other: "T50", Cells: 50, Matches: 1}
	names, notes = rowsOf(only(t, matches(r, few)))
	same(t, "names", names, "too few for a mean", "one matched sowing each")
	same(t, "notes", notes, "1 match", "")
}

func TestNextTraysStopWherePayingStops(t *testing.T) {
	r := reportOf()
	next := func(nth int, uses float64, pays, high bool) {
		r.NextTray = append(r.NextTray, report.NextTray{Tray: "A50", Other: "S50", Nth: nth, Uses: uses, Pays: records.Known(pays), PaysHigh: records.Known(high)})
	}
	next(11, 3, true, true)
	next(12, 3, true, true)
	next(13, 2, false, true)
	next(14, 1, false, false)
	next(15, 1, false, false)
	p := &report.Payback{Tray: "A50", Other: "S50", Verdict: "pays", Buy: &report.Buy{Owned: 10, N: 2, Low: 1, High: 3}}
	s := only(t, nextTrays(r, p))
	names, notes := rowsOf(s)
	same(t, "names", names, "trays 11 to 12", "", "tray 13", "trays 14 to 15")
	same(t, "notes", notes, "3.0 uses", "", "2.0 uses", "1.0 uses")
	same(t, "legend", legend(s), payWords[pays], payWords[paysNot], payWords[paysPerhaps])
	if at := items(t, s, "2 more would pay; 1 at the low end, 3 at the high"); at[0][1] != 1.0 {
		t.Errorf("the stop stands at %v", at)
	}
	p.Buy = &report.Buy{Owned: 10}
	if names, _ := rowsOf(only(t, nextTrays(r, p))); names[0] != "" {
		t.Errorf("rows %q: buying stops before the first", names)
	}
	p.Verdict = ""
	if len(nextTrays(r, p)) != 0 {
		t.Error("a pair without a verdict has a chart of next trays")
	}
}

func TestRoomsUntilToday(t *testing.T) {
	r := reportOf()
	r.LastDate = records.NewDate(2025, 5, 1)
	r.Batches = []*report.Batch{{Season: 2025, EndHow: report.Open}}
	r.Room = []report.Room{
		{Season: 2025, Place: "bench", Kind: report.BenchPlace, Capacity: known(40), Peak: 30, PeakDate: records.NewDate(2025, 3, 1)},
		{Season: 2025, Place: "A50", Kind: report.TrayPlace, Capacity: known(12), Peak: 1},
	}
	r.InUse = []report.InUse{
		{Date: records.NewDate(2024, 12, 1), Place: "bench", Trays: 5}, {Date: records.NewDate(2025, 3, 1), Place: "bench", Trays: 30},
		{Date: records.NewDate(2025, 5, 1), Place: "bench", Trays: 0},
	}
	specs := rooms(r, 2025)
	if len(specs) != 2 {
		t.Fatalf("%d charts", len(specs))
	}
	var levels []float64
	for _, p := range items(t, specs[0], "Bench places taken") {
		levels = append(levels, p[1].(float64))
	}
	if !slices.Equal(levels, []float64{5, 30, 30}) { // what stands today has not left
		t.Errorf("levels %v", levels)
	}
	for i, want := range []string{"Bench places taken, 2025. At most 30 trays, on 1 March; room for 40 trays.", "A50 trays in use, 2025. At most 1 tray; 12 owned."} {
		if specs[i].Label != want {
			t.Errorf("label %q, want %q", specs[i].Label, want)
		}
	}
}
