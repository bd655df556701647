package templates

import (
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
)

// trayReport is a report with one pair of trays of which everything is known.
func trayReport(t *testing.T, change func(*report.Payback)) *report.Report {
	r := sample(t, false)
	r.Book.Trays = []records.Purchase{{Tray: "A72", Cells: 72, Kind: "air-pruning"}}
	pb := report.Payback{Tray: "A72", Other: "S72", Cells: 72, Matches: 5, Dates: 4, Valued: 5, Verdict: report.PaysLow,
		Difference: num(0.05), DifferenceLow: num(0.02), DifferenceHigh: num(0.08), Value: num(0.1),
		Gain: num(0.76), GainLow: num(0.55), GainHigh: num(0.98), GainTray: num(0.5), GainPlants: num(0.36), GainMinutes: num(-0.1),
		Price: num(12), OtherPrice: num(2), Life: report.Life{Uses: num(30), Seasons: num(10), UsesPerSeason: num(3)}, OtherLife: report.Life{Uses: num(4)},
		Minutes: num(6), OtherMinutes: num(5.7), UsesPerSeason: num(3), PaybackUses: num(15.8), PaybackSeasons: num(5.3), WorthToday: num(6),
		BreakEvenPlants: num(0.2), Buy: &report.Buy{Owned: 18, N: 8, Low: 4, High: 9, PeakInUse: 57, Seasons: []int{2024, 2025}}}
	change(&pb)
	r.Payback = []report.Payback{pb}
	r.Matches = []report.Match{{Tray: "A72", Other: "S72", Number: 1, Crop: "lettuce", Variety: "Fenwimple", Lot: "L1", FirstSown: day(t, "2025-03-04"),
		CellsTray: 72, UsableTray: 60, CellsOther: 144, UsableOther: 100, Difference: 60.0/72 - 100.0/144, Batches: []string{"B01 Fenwimple", "B03 Fenwimple"}}}
	yes, no := records.Known(true), records.Known(false)
	for i, uses := range []float64{2.67, 2.67, 1} {
		r.NextTray = append(r.NextTray, report.NextTray{Tray: "A72", Other: "S72", Nth: 19 + i, Uses: uses, Pays: map[bool]records.Maybe[bool]{true: yes, false: no}[uses > 2], PaysLow: no, PaysHigh: yes})
	}
	r.Trial = []report.Trial{{Tray: "A72", Other: "S72", Difference: 0.02, Sowings: records.Known(421)}, {Tray: "A72", Other: "S72", Difference: 0.05, Sowings: records.Known(69)}, {Tray: "A72", Other: "S72", Difference: 0.10, Sowings: records.Known(19)}}
	return r
}

// The page tells the answer first, then the pair: verdict, worth, the gain in its
// parts, the matches one by one, the next tray.
func TestTraysPage(t *testing.T) {
	text := words(t, buildOf(t, trayReport(t, func(*report.Payback) {}), nil), "trays.html")
	expect(t, text, "Buy about 10 more A72 (5 to 10).", "What would change it:", "Not counted: losses in the field, earliness,", "Not tax advice.",
		"A72 beside S72: 72 cells", "A72 pays even at the low end of what the records show. At USD 12.00 it has paid for itself after 15.8 uses, 5.3 seasons at 3 uses a season; it lasts 30 uses, which is 10 seasons.",
		"Counting 5 % a year for the money tied up, what a tray gains over its life is worth USD 6.00 more than its price today.",
		"A use of S72 not spent", "USD 2.00 over 4 uses", "+0.50", "More usable plants", "+3.6 a tray (+1.4 to +5.8), at USD 0.100 a plant", "+0.36",
		"Extra minutes", "6 against 5.7 minutes", "−0.10", "Gain a use", "+0.76", "(+0.55 to +0.98)",
		"The 5 matched sowings, one by one", "2025-03-04", "60 of 72", "100 of 144", "+13.9", "B01 Fenwimple and B03 Fenwimple",
		"The sowings of 2024 and 2025 were gone through again", "57 trays of the two were needed at once; 18 of A72 are owned. Up to the 26th a tray is worth its price: 8 more, 4 at the low end of the gain and 9 at the high end.",
		"19th to 20th", "2.7", "yes", "no", "yes", "21st", "1", "no", "50 of 100 are said to pay")
	if strings.Contains(text, "The trial that would tell") {
		t.Error("a trial is proposed though the records can tell")
	}
}

// Each verdict and each quarrel between figures in words.
func TestTrayVerdicts(t *testing.T) {
	tests := []struct {
		name   string
		change func(*report.Payback)
		want   string
	}{
		{"middle", func(pb *report.Payback) { pb.Verdict = report.PaysMiddle }, "A72 pays in the middle of what the records show, but not at its low end."},
		{"high", func(pb *report.Payback) { pb.Verdict, pb.WorthToday = report.PaysHigh, num(-1) }, "A72 pays only at the high end of what the records show."},
		{"never", func(pb *report.Payback) { pb.Verdict, pb.PaybackUses = report.PaysNever, report.Num{} }, "A72 does not pay, not even at the high end of what the records show. It never earns back its price of USD 12.00"},
		{"too slow", func(pb *report.Payback) { pb.WorthToday = num(-2) }, "worth USD 2.00 less than its price today. So it earns its price back, but too slowly to be worth the money meanwhile."},
		{"other sign", func(pb *report.Payback) { pb.Verdict = report.PaysHigh }, "That is so although its uses, reckoned one by one, do not add up to its price"},
		{"at plug_price", func(pb *report.Payback) {
			pb.AtPlugPrice = &report.PlugPrice{Value: num(0.32), Gain: num(2.5), GainLow: num(1.7), GainHigh: num(3.2), PaybackUses: num(4.8), WorthToday: num(51), Verdict: report.PaysLow}
		}, "Where one more plant saves buying one in at USD 0.320, it pays even at the low end of what the records show: a use gains USD 2.50 (1.70 to 3.20), and it is paid for after 4.8 uses; worth today USD 51.00."},
		{"minutes", func(pb *report.Payback) { pb.MinutesLeftOut, pb.GainMinutes = true, report.Num{} }, "left out: the minutes of both trays, or the wage, are not written"},
		{"valued", func(pb *report.Payback) { pb.Valued = 3 }, "What a plant is worth is known for 3 of the 5 matches"},
		{"assumed life", func(pb *report.Payback) { pb.Life.Assumed = true }, "its life is not written, so one season is taken"},
		{"idle", func(pb *report.Payback) { pb.Buy = &report.Buy{Owned: 20, PeakInUse: 12} }, "So no further tray would ever have been used."},
		{"not the next", func(pb *report.Payback) { pb.Buy = &report.Buy{Owned: 20, PeakInUse: 32} }, "Already the next tray, the 21st, would stand idle too often to earn its price, even at the high end of the gain."},
	}
	for _, tt := range tests {
		if text := words(t, buildOf(t, trayReport(t, tt.change), nil), "trays.html"); !strings.Contains(text, tt.want) {
			t.Errorf("%s: %q is not in\n%s", tt.name, tt.want, text)
		}
	}
}

// Where the records cannot tell there is no figure, but the reason, and the trial
// that would tell with how to lay it out and write it down.
func TestTraysCannotTell(t *testing.T) {
	text := words(t, buildOf(t, trayReport(t, func(pb *report.Payback) {
		*pb = report.Payback{Tray: "A72", Other: "S72", Cells: 72, Matches: 2, Dates: 2, Why: report.FewMatches}
	}), nil), "trays.html")
	expect(t, text, "The records cannot tell whether A72 pays beside S72.", "The records cannot tell whether A72 pays: no figure is given.",
		"The trial that would tell", "421", "69", "19", "How to lay it out", "one tray of each code", "Stand them side by side", "Swap their places", "How to write it down", "sowings.csv", "surplus")
	if strings.Contains(text, "Gain a use") || strings.Contains(text, "How many more") {
		t.Error("a figure is given though the records cannot tell")
	}
	none := trayReport(t, func(*report.Payback) {})
	none.Payback, none.Trial = nil, nil
	expect(t, words(t, buildOf(t, none, nil), "trays.html"), "There are no two tray codes of the same cells", "can be told once both codes stand in trays.csv", "How to lay it out")
}

// Room: what binds first in each of its states, and the "if".
func TestRoom(t *testing.T) {
	room := func(growth float64, over int) []report.Room {
		return []report.Room{{Season: 2025, Place: "A72", Kind: report.TrayPlace, Uncounted: true, Peak: 3, PeakDate: day(t, "2025-04-01"), Capacity: num(0), GrowthLeft: num(-1), DaysOver: records.Known(9)},
			{Season: 2025, Place: report.BenchName, Capacity: num(100), Peak: 100 / (1 + growth), PeakDate: day(t, "2025-04-07"), DaysOver: records.Known(over), GrowthLeft: num(growth), BindsFirst: true}}
	}
	for growth, want := range map[float64]string{0.25: "On 7 April 2025 (week 15) 80 of 100 were taken: everything could grow by 25 % before they are full.",
		0: "100 of 100 were taken: there is no room to grow.", -0.2: "125 of 100 were taken: everything would have to shrink by 20 % to fit, and on 3 days more stood than there is room for."} {
		r := trayReport(t, func(*report.Payback) {})
		r.Room = room(growth, map[bool]int{true: 3}[growth < 0])
		expect(t, words(t, buildOf(t, r, nil), "trays.html"), "The benches bind first.", want, "The benches", "A72 trays", "count not written")
	}
	r := trayReport(t, func(*report.Payback) {})
	r.If = &report.If{Grow: 1.2, Switch: []report.Switch{{From: "S72", To: "A72"}}, Room: room(-0.2, 3),
		Buys: []report.PairBuy{{Tray: "A72", Other: "S72", Buy: &report.Buy{Owned: 18, N: 22, Low: 11, High: 31, PeakInUse: 70}}, {Tray: "A50", Other: "S50"}}}
	expect(t, words(t, buildOf(t, r, nil), "trays.html"), "What binds first cannot be told: write bench_places and chamber_places into book.csv",
		"If every batch had 1.2 times its trays and what stood in S72 stood in A72:", "The benches bind first.", "Buy about 20 more A72 (10 to 30).", "What a use gains is taken as the records show it.")
}
