package templates

import (
	"html/template"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/money"
	"traybook/report/room"
	"traybook/report/trays"
)

// aPair is a pair of which everything is known, and which has eight trays to buy.
func aPair() pairOf {
	return pairOf{id: "pair-a-s",
		Payback: trays.Payback{Tray: "A", Other: "S", Cells: 72, Matches: 5, Dates: 4, Valued: 5, Verdict: trays.PaysLow,
			Difference: num(0.05), DifferenceLow: num(0.02), DifferenceHigh: num(0.08), Value: num(0.1),
			Gain: num(0.76), GainLow: num(0.55), GainHigh: num(0.98), GainTray: num(0.5), GainPlants: num(0.36), GainMinutes: num(-0.1),
			Price: num(12), OtherPrice: num(2), Life: money.Life{Uses: num(30), Seasons: num(10), UsesPerSeason: num(3)}, OtherLife: money.Life{Uses: num(4)},
			Minutes: num(6), OtherMinutes: num(5.7), UsesPerSeason: num(3), PaybackUses: num(15.8), PaybackSeasons: num(5.3), WorthToday: num(6), BreakEvenPlants: num(0.2)},
		Decision: trays.Decision{Tray: "A", Other: "S", Owned: records.Known(18),
			Buy: &trays.Buy{Owned: 18, N: 8, Low: 4, High: 9, PeakInUse: 57, Seasons: []int{2024, 2025}, Outlay: 96, Worth: 60, WorthLow: 20, WorthHigh: 90}}}
}

// The title of each verdict about buying.
func TestBuyTitles(t *testing.T) {
	tests := []struct {
		want   string
		change func(*trays.Decision)
	}{
		{"Buy eight more A", func(*trays.Decision) {}},
		{"Buy 15 more A", func(d *trays.Decision) { d.Buy.N = 15 }},
		{"Eight more A may pay", func(d *trays.Decision) { d.Buy.Low = 0 }},
		{"Buy no more A", func(d *trays.Decision) { d.Buy.N, d.Buy.Low, d.Buy.High = 0, 0, 0 }},
		{"Buy no more A for now", func(d *trays.Decision) { d.Buy.N, d.Buy.Low, d.Buy.High = 0, 0, 7 }},
		{"Whether more A pay turns on how long S lasts", func(d *trays.Decision) { d.Buy.TurnsOnOtherLife = true }},
		{"For A the records cannot tell", func(d *trays.Decision) { d.Buy, d.Why = nil, trays.FewMatches }},
		{"How many more A to buy cannot be told", func(d *trays.Decision) { d.Buy, d.Why = nil, trays.NoOwned }},
	}
	for _, tt := range tests {
		a := aPair()
		tt.change(&a.Decision)
		if got := bare(a.buyTitle()); got != tt.want {
			t.Errorf("got %q, want %q", got, tt.want)
		}
	}
}

// What stands beside the number: its money, what would change it, its range, or why the
// records cannot tell.
func TestPairFinding(t *testing.T) {
	cannot := func(why trays.Reason) func(*pairOf) {
		return func(a *pairOf) { a.Decision.Buy, a.Decision.Why = nil, why }
	}
	tests := []struct {
		name   string
		change func(*pairOf)
		want   string
	}{
		{"worth", func(*pairOf) {}, "Eight cost USD 96.00 and are worth USD 60.00 more than that today (+20.00 to +90.00). Each use of A gained USD 0.76 over S (0.55 to 0.98), in 5 matched sowings on 4 dates."},
		{"one", func(a *pairOf) { a.Decision.Buy.N, a.Decision.Buy.Outlay = 1, 12 }, "It costs USD 12.00 and is worth"},
		{"about even", func(a *pairOf) { a.Decision.Buy.Worth = 5 }, "That is about even."},
		{"may pay", func(a *pairOf) { a.Decision.Buy.Low = 0 }, "At the low end of what the records show, none pays; at the high end, nine do."},
		{"range", func(*pairOf) {}, "4 to 9"},
		{"none", func(a *pairOf) { a.Decision.Buy.N, a.Decision.Buy.High = 0, 0 }, "none even at the high end The next tray would be used too seldom"},
		{"idle", func(a *pairOf) { a.Decision.Buy.N, a.Decision.Buy.Owned = 0, 57 }, "No further tray would have been used: 57 are owned, and at most 57 were needed at once."},
		{"fewer, then none", func(a *pairOf) {
			a.Decision.Buy.First, a.Decision.Buy.Last = trays.Flips{Price: num(20)}, trays.Flips{Price: num(15)}
		}, "What would change it. Fewer if a tray cost USD 15.00 or more, none from USD 20.00."},
		{"each alone", func(a *pairOf) { a.Decision.Buy.First = trays.Flips{Price: num(20), Life: num(10)} },
			"What would change it. None if a tray cost USD 20.00 or more; none if it lasted 10 uses or fewer."},
		{"what would make it pay", func(a *pairOf) {
			a.Decision.Buy.N, a.Decision.Buy.First = 0, trays.Flips{Price: num(7), Value: num(0.2)}
		},
			"The first would pay if a tray cost less than USD 7.00, or if a plant were worth more than USD 0.200."},
		{"half its life", func(a *pairOf) { a.Decision.Buy.HalfLifePays = records.Known(false) }, "At half its life the first would not pay."},
		{"stood longer", func(a *pairOf) { a.OtherRaised = true }, "S has already stood more uses than its written life"},
		{"owned", func(*pairOf) {}, "18 owned, at USD 12.00 each."},
		{"owned unknown", func(a *pairOf) { a.Decision.Owned = records.Maybe[int]{} }, "How many are owned is not written."},
		{"no match", cannot(trays.NoMatches), "No crop, variety and lot was sown in both within a week."},
		{"few matches", func(a *pairOf) { cannot(trays.FewMatches)(a); a.Matches = 1 }, "1 of 4 matches Matched sowings found: 1; it takes 4. To see a difference of 5 plants in 100, sow one tray of each side by side, same seed and same day, on 69 dates."},
		{"few dates", func(a *pairOf) { cannot(trays.FewDates)(a); a.Dates = 2 }, "The matched sowings began on 2 dates; it takes 3."},
		{"no value", cannot(trays.NoValue), "write transplant_value into book.csv"},
		{"owned not counted", cannot(trays.NoOwned), "How many A are owned is not known: a count in trays.csv is blank."},
		{"no life", cannot(trays.NoLife), "How long A lasts is not known"},
		{"no other life", cannot(trays.NoOtherLife), "How long S lasts is not known"},
	}
	r := houseReport(t)
	r.Trays.Trial = []trays.Trial{{Tray: "A", Other: "S", Trays: 1, Difference: 0.05, Sowings: records.Known(69)}}
	p := pageOf(t, r)
	for _, tt := range tests {
		a := aPair()
		tt.change(&a)
		f := p.pairFinding(a)
		if got := bare(join(append([]template.HTML{f.Range}, append(f.Say, f.Note)...)...)); !strings.Contains(got, tt.want) {
			t.Errorf("%s: %q is not in\n%s", tt.name, tt.want, got)
		}
	}
}

// Whether the owned trays paid, verdict by verdict.
func TestOwnedTrays(t *testing.T) {
	p := pageOf(t, houseReport(t))
	for want, change := range map[string]func(*pairOf){
		"A pays even at the low end of what the records show: a use gained USD 0.76 (0.55 to 0.98). It has paid for itself after 15.8 uses, 5.3 seasons; it lasts 30 uses, which is 10 seasons.": func(*pairOf) {},
		"A pays in the middle of what the records show, but not at its low end":                      func(a *pairOf) { a.Verdict = trays.PaysMiddle },
		"A pays only at the high end of what the records show":                                       func(a *pairOf) { a.Verdict = trays.PaysHigh },
		"A does not pay, not even at the high end of what the records show":                          func(a *pairOf) { a.Verdict = trays.PaysNever },
		"It never earns back its price: in the middle of what the records show, a use gains nothing": func(a *pairOf) { a.PaybackUses = money.Num{} },
		"its life is not written, so one season is taken":                                            func(a *pairOf) { a.Payback.Life.Assumed = true },
		"how many uses it survives is not known":                                                     func(a *pairOf) { a.Payback.Life = money.Life{} },
	} {
		a := aPair()
		change(&a)
		if got := bare(join(p.ownedSentences(a)...)); !strings.Contains(got, want) {
			t.Errorf("%q is not in\n%s", want, got)
		}
	}
	unknown := aPair()
	unknown.Verdict = ""
	if p.ownedSentences(unknown) != nil {
		t.Error("a verdict on trays without one")
	}
}

// A pair that can be told stands before one that cannot, whatever its code.
func TestKnownAnswerFirst(t *testing.T) {
	r := houseReport(t)
	known, why := r.Trays.Payback[0], trays.Decision{Why: trays.NoMatches}
	r.Trays.Payback = []trays.Payback{{Tray: "A1", Other: "S1"}, known, {Tray: "Z1", Other: "S1"}}
	a1, z1 := why, why
	a1.Tray, a1.Other, z1.Tray, z1.Other = "A1", "S1", "Z1", "S1"
	r.Trays.Decisions = append(r.Trays.Decisions, a1, z1)
	expect(t, textOf(t, buildOf(t, r, nil), "index.html"), "more A72 to buy", "For A1 the records cannot tell.", "For Z1 the records cannot tell.")
}

// The page tells the answer first, then what stands behind it. By hand: a use of S72 costs
// 2.20 / 4 = 0.55, half a minute at 18 an hour 0.15.
func TestTraysPage(t *testing.T) {
	text := textOf(t, buildOf(t, houseReport(t), nil), "trays.html")
	expect(t, text, "more A72 to buy", "Each use of A72 gained USD", "8 matched sowings on 8 dates", "What would change it.", "Not counted: losses in the field, earliness,", "Not tax advice.",
		"Did those we own pay?", "How far to trust a verdict", "matched sowings gave more plants in A72", "A use of A72 gains USD", "+0.55", "−0.15", "Gain a use",
		"Room", "The benches bind first.", "count not written")
	if strings.Contains(text, "The trial that would tell") {
		t.Error("a trial is proposed though the records can tell")
	}
}

// Where the records cannot tell there is no figure, but the reason, and the trial that
// would tell with how to lay it out and write it down.
func TestTraysCannotTell(t *testing.T) {
	few := changedHouse(t, func(b *records.Book) { // two of the matched sowings are left
		b.Sowings = batch.Filter(b.Sowings, func(s records.Sowing) bool {
			return !strings.HasPrefix(s.Code, "LA") || s.Code == "LA24-1" || s.Code == "LA24-2"
		})
		b.Counts, b.Scores = nil, nil
	})
	text := textOf(t, buildOf(t, few, nil), "trays.html")
	expect(t, text, "for A72 the records cannot tell", "2 of 4 matches", "Matched sowings found: 2; it takes 4.",
		"The trial that would tell", "How to lay it out", "one tray of each code", "Stand them side by side", "Swap their places", "How to write it down", "sowings.csv", "surplus")
	if strings.Contains(text, "Gain a use") {
		t.Error("a figure is given though the records cannot tell")
	}
	none := changedHouse(t, func(b *records.Book) {
		b.Trays = batch.Filter(b.Trays, func(p records.Purchase) bool { return p.Tray != "A72" })
	})
	expect(t, textOf(t, buildOf(t, none, nil), "trays.html"), "Whether dearer trays pay cannot be told", "There are no two tray codes of the same cells")
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

// The "if" of growth and of another tray code: 22.5 trays of both codes at once, half as
// many more, make 33.75 of the one.
func TestRoomIf(t *testing.T) {
	r := reportOf(t, house, report.Options{Today: today, Grow: 1.5, Switch: []batch.Switch{{From: "S72", To: "A72"}}})
	expect(t, textOf(t, buildOf(t, r, nil), "trays.html"),
		"If every batch had 1.5 times its trays and what stood in S72 stood in A72:", "The A72 trays bind first.", "33.75 of 4 were taken", "What a use gains is taken as the records show it.")
}
