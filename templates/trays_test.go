package templates

import (
	"html/template"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/money"
	"traybook/report/rate"
	"traybook/report/room"
	"traybook/report/trays"
)

// The page tells the answer first, then the pair: verdict, worth, the gain in its
// parts, the matches one by one, the next tray. By hand: a use of S72 costs 2.20 / 4,
// half a minute 18 / 120; the half tray among 22.5 at once takes a whole one.
func TestTraysPage(t *testing.T) {
	text := textOf(t, buildOf(t, houseReport(t), nil), "trays.html")
	expect(t, text, "Buy about 15 more A72 (10 to 15).", "What would change it:", "Not counted: losses in the field, earliness,", "Not tax advice.",
		"A72 beside S72: 72 cells", "A72 pays even at the low end of what the records show. At USD 12.00 it has paid for itself after", "uses", "seasons at 1.3 uses a season; it lasts 12.5 uses, which is 10 seasons.",
		"Counting 5 % a year for the money tied up, what a tray gains over its life is worth", "more than its price today.",
		"Where one more plant saves buying one in at USD 0.350, it pays even at the low end",
		"A use of S72 not spent", "USD 2.20 over 4 uses", "+0.55", "More usable plants", "+6.9 a tray (+2.8 to +10.9)",
		"Extra minutes", "6 against 5.5 minutes, at USD 18.00 an hour", "−0.15", "Gain a use", "8 matches on 8 dates",
		"The 8 matched sowings, one by one", "2024-03-04", "66 of 72", "120 of 144", "+8.3", "LA24-1 and LS24-1", "LA25-3, LS25-3 and LS25-4",
		"The sowings of 2024 and 2025 were gone through again", "23 trays of the two were needed at once; 4 of A72 are owned. Up to the",
		"5th to 9th", "2", "yes", "yes", "yes", "18th to 23rd", "0.5", "no", "50 of 100 are said to pay", "The benches bind first.", "count not written")
	if strings.Contains(text, "The trial that would tell") {
		t.Error("a trial is proposed though the records can tell")
	}
}

// aPair is a pair of which everything is known.
func aPair() trays.Payback {
	return trays.Payback{Tray: "A72", Other: "S72", Cells: 72, Matches: 5, Dates: 4, Valued: 5, Verdict: trays.PaysLow,
		Difference: num(0.05), DifferenceLow: num(0.02), DifferenceHigh: num(0.08), Value: num(0.1),
		MixLeftOut: true, Gain: num(0.76), GainLow: num(0.55), GainHigh: num(0.98), GainTray: num(0.5), GainPlants: num(0.36), GainMinutes: num(-0.1),
		Price: num(12), OtherPrice: num(2), Life: money.Life{Uses: num(30), Seasons: num(10), UsesPerSeason: num(3)}, OtherLife: money.Life{Uses: num(4)},
		Minutes: num(6), OtherMinutes: num(5.7), UsesPerSeason: num(3), PaybackUses: num(15.8), PaybackSeasons: num(5.3), WorthToday: num(6),
		BreakEvenPlants: num(0.2), Buy: &trays.Buy{Owned: 18, N: 8, Low: 4, High: 9, PeakInUse: 57, Seasons: []int{2024, 2025}}}
}

// pairText is all that the page tells of a pair.
func pairText(t *testing.T, p *page, pb trays.Payback) string {
	t.Helper()
	pair := p.trayPair(pb)
	var out strings.Builder
	for _, words := range pair.Words {
		out.WriteString(string(words) + " ")
	}
	for _, row := range append(pair.Gain.Bodies[0].Rows, pair.Gain.Foot...) {
		for _, c := range row.Cells {
			out.WriteString(string(c.Value) + " " + string(c.Sub) + " ")
		}
	}
	return bare(template.HTML(out.String()) + pair.Matches.Caption + " " + pair.NextWords)
}

// Each verdict and each quarrel between figures in words.
func TestTrayVerdicts(t *testing.T) {
	tests := []struct {
		name   string
		change func(*trays.Payback)
		want   string
	}{
		{"low", func(pb *trays.Payback) {}, "A use of S72 not spent USD 2.00 over 4 uses +0.50 More usable plants +3.6 a tray (+1.4 to +5.8), at USD 0.100 a plant"},
		{"next", func(pb *trays.Payback) {}, "Up to the 26th a tray is worth its price: 8 more, 4 at the low end of the gain and 9 at the high end."},
		{"middle", func(pb *trays.Payback) { pb.Verdict = trays.PaysMiddle }, "A72 pays in the middle of what the records show, but not at its low end."},
		{"high", func(pb *trays.Payback) { pb.Verdict, pb.WorthToday = trays.PaysHigh, num(-1) }, "A72 pays only at the high end of what the records show."},
		{"never", func(pb *trays.Payback) { pb.Verdict, pb.PaybackUses = trays.PaysNever, rate.Num{} }, "A72 does not pay, not even at the high end of what the records show. It never earns back its price of USD 12.00"},
		{"too slow", func(pb *trays.Payback) { pb.WorthToday = num(-2) }, "worth USD 2.00 less than its price today. So it earns its price back, but too slowly to be worth the money meanwhile."},
		{"other sign", func(pb *trays.Payback) { pb.Verdict = trays.PaysHigh }, "That is so although its uses, reckoned one by one, do not add up to its price"},
		{"at plug_price", func(pb *trays.Payback) {
			pb.AtPlugPrice = &trays.PlugPrice{Value: num(0.32), Gain: num(2.5), GainLow: num(1.7), GainHigh: num(3.2), PaybackUses: num(4.8), WorthToday: num(51), Verdict: trays.PaysLow}
		}, "Where one more plant saves buying one in at USD 0.320, it pays even at the low end of what the records show: a use gains USD 2.50 (1.70 to 3.20), and it is paid for after 4.8 uses; worth today USD 51.00."},
		{"minutes", func(pb *trays.Payback) { pb.MinutesLeftOut, pb.GainMinutes = true, rate.Num{} }, "left out: the minutes of both trays, or the wage, are not written"},
		{"valued", func(pb *trays.Payback) { pb.Valued = 3 }, "What a plant is worth is known for 3 of the 5 matches"},
		{"assumed life", func(pb *trays.Payback) { pb.Life.Assumed = true }, "its life is not written, so one season is taken"},
		{"idle", func(pb *trays.Payback) { pb.Buy = &trays.Buy{Owned: 20, PeakInUse: 12} }, "So no further tray would ever have been used."},
		{"not the next", func(pb *trays.Payback) { pb.Buy = &trays.Buy{Owned: 20, PeakInUse: 32} }, "Already the next tray, the 21st, would stand idle too often to earn its price, even at the high end of the gain."},
	}
	p := pageOf(t, houseReport(t))
	for _, tt := range tests {
		pb := aPair()
		tt.change(&pb)
		if text := pairText(t, p, pb); !strings.Contains(text, tt.want) {
			t.Errorf("%s: %q is not in\n%s", tt.name, tt.want, text)
		}
	}
}

// Where the records cannot tell there is no figure, but the reason, and the trial
// that would tell with how to lay it out and write it down.
func TestTraysCannotTell(t *testing.T) {
	few := changedHouse(t, func(b *records.Book) { // two of the matched sowings are left
		b.Sowings = batch.Filter(b.Sowings, func(s records.Sowing) bool {
			return !strings.HasPrefix(s.Code, "LA") || s.Code == "LA24-1" || s.Code == "LA24-2"
		})
		b.Counts, b.Scores = nil, nil
	})
	text := textOf(t, buildOf(t, few, nil), "trays.html")
	expect(t, text, "The records cannot tell whether A72 pays beside S72. Matched sowings found: 2; it takes 4.", "The records cannot tell whether A72 pays: no figure is given.",
		"The trial that would tell", "How to lay it out", "one tray of each code", "Stand them side by side", "Swap their places", "How to write it down", "sowings.csv", "surplus")
	if strings.Contains(text, "Gain a use") || strings.Contains(text, "How many more") {
		t.Error("a figure is given though the records cannot tell")
	}
	none := changedHouse(t, func(b *records.Book) {
		b.Trays = batch.Filter(b.Trays, func(p records.Purchase) bool { return p.Tray != "A72" })
	})
	expect(t, textOf(t, buildOf(t, none, nil), "trays.html"), "There are no two tray codes of the same cells", "can be told once both codes stand in trays.csv", "How to lay it out")
}

// Room: what binds first in each of its states.
func TestRoom(t *testing.T) {
	p := pageOf(t, houseReport(t))
	bench := func(growth float64, over int) []room.Load {
		return []room.Load{{Place: "A72", Kind: room.TrayPlace, Uncounted: true}, {Place: room.BenchName, Capacity: num(100), Peak: 100 / (1 + growth),
			PeakDate: day(t, "2025-04-07"), DaysOver: records.Known(over), GrowthLeft: num(growth), BindsFirst: true}}
	}
	tests := []struct {
		loads []room.Load
		want  string
	}{
		{bench(0.25, 0), "The benches bind first. On 7 April 2025 (week 15) 80 of 100 were taken: everything could grow by 25 % before they are full."},
		{bench(0, 0), "The benches bind first. On 7 April 2025 (week 15) 100 of 100 were taken: there is no room to grow."},
		{bench(-0.2, 3), "The benches bind first. On 7 April 2025 (week 15) 125 of 100 were taken: everything would have to shrink by 20 % to fit, and on 3 days more stood than there is room for."},
		{bench(0, 0)[:1], "What binds first cannot be told: write bench_places and chamber_places into book.csv, and count into trays.csv."},
	}
	for _, tt := range tests {
		if got := bare(p.bindsWords(tt.loads)); got != tt.want {
			t.Errorf("got %q, want %q", got, tt.want)
		}
	}
}

// The "if" of growth and of another tray code stands at the end of the page: 22.5 trays
// of both codes at once, half as many more, make 33.75 of the one.
func TestRoomIf(t *testing.T) {
	r := reportOf(t, house, report.Options{Today: today, Grow: 1.5, Switch: []batch.Switch{{From: "S72", To: "A72"}}})
	expect(t, textOf(t, buildOf(t, r, nil), "trays.html"),
		"If every batch had 1.5 times its trays and what stood in S72 stood in A72:", "The A72 trays bind first.", "33.75 of 4 were taken",
		"Buy about 25 more A72", "What a use gains is taken as the records show it.")
}
