package templates

import (
	"strings"
	"testing"

	"traybook/records"
	"traybook/report/trays"
)

// The answer about trays in each of its forms.
func TestTrayAnswers(t *testing.T) {
	base := trays.Payback{Tray: "A", Other: "S", Gain: num(1), GainLow: num(0.5), GainHigh: num(1.5), Price: num(10), Matches: 6, Dates: 5}
	tests := []struct {
		name   string
		change func(*trays.Payback)
		want   string
	}{
		{"buy", func(pb *trays.Payback) {
			pb.Verdict, pb.Buy = trays.PaysMiddle, &trays.Buy{N: 12, Low: 0, High: 33}
		}, "Buy about 10 more A (0 to 35)."},
		{"none now", func(pb *trays.Payback) { pb.Verdict, pb.Buy = trays.PaysHigh, &trays.Buy{N: 0, High: 21} }, "Buy no more A for now (0 to 20)."},
		{"none", func(pb *trays.Payback) { pb.Verdict, pb.Buy = trays.PaysNever, &trays.Buy{PeakInUse: 3} }, "Buy no more A: a further tray would not pay for itself."},
		{"two are not none", func(pb *trays.Payback) {
			pb.Verdict, pb.Buy = trays.PaysLow, &trays.Buy{N: 2, Low: 1, High: 3, PeakInUse: 9}
		}, "Buy 2 more A (1 to 5)."},
		{"idle", func(pb *trays.Payback) { pb.Verdict, pb.Buy = trays.PaysLow, &trays.Buy{Owned: 9, PeakInUse: 9} }, "Buy no more A: a further tray would stand idle."},
		{"shorter life", func(pb *trays.Payback) {
			pb.Verdict, pb.Buy = trays.PaysLow, &trays.Buy{N: 2, High: 3, First: trays.Flips{Price: num(20), Life: num(10)}}
		}, "It would not pay if a tray cost more than USD 20.00, or if a tray lasted fewer than 10 uses."},
		{"loses plants, but is cheap", func(pb *trays.Payback) {
			pb.Verdict, pb.Difference, pb.Buy = trays.PaysLow, num(-0.01), &trays.Buy{N: 2, High: 3, First: trays.Flips{Value: num(0.2)}}
		}, "It would not pay if one more plant were worth more than USD 0.200."},
		{"how many is not known", func(pb *trays.Payback) { pb.Verdict = trays.PaysLow }, "A pays even at the low end; how many more cannot be told."},
		{"turned round", func(pb *trays.Payback) {
			pb.Verdict, pb.Buy = trays.PaysNever, &trays.Buy{First: trays.Flips{Price: num(7)}}
		}, "It would pay if a tray cost less than USD 7.00."},
		{"no match", func(pb *trays.Payback) { pb.Why = trays.NoMatches }, "The records cannot tell whether A pays beside S. No crop, variety and lot was sown in both within a week."},
		{"few matches", func(pb *trays.Payback) { pb.Why, pb.Matches = trays.FewMatches, 1 }, "Matched sowings found: 1; it takes 4. To see a difference of 5 plants in 100, sow one tray of each side by side, same seed and same day, on 69 dates."},
		{"few dates", func(pb *trays.Payback) { pb.Why, pb.Dates = trays.FewDates, 2 }, "The matched sowings began on 2 dates; it takes 3."},
		{"no value", func(pb *trays.Payback) { pb.Why = trays.NoValue }, "write transplant_value into book.csv"},
		{"no life", func(pb *trays.Payback) { pb.Why = trays.NoLife }, "How long A lasts is not known"},
		{"no other life", func(pb *trays.Payback) { pb.Why = trays.NoOtherLife }, "How long S lasts is not known"},
	}
	r := houseReport(t)
	r.Trays.Trial = []trays.Trial{{Tray: "A", Other: "S", Difference: 0.05, Sowings: records.Known(69)}}
	p := pageOf(t, r)
	for _, tt := range tests {
		pb := base
		tt.change(&pb)
		a := p.trayAnswer(pb)
		if got := bare(join(a.Verdict, a.Reason, a.Changes)); !strings.Contains(got, tt.want) {
			t.Errorf("%s: %q is not in\n%s", tt.name, tt.want, got)
		}
	}
}

// A pair that can be told stands before one that cannot, whatever its code: the front
// page repeats the first verdict at its head.
func TestKnownAnswerFirst(t *testing.T) {
	r := houseReport(t)
	known := r.Trays.Payback[0]
	r.Trays.Payback = []trays.Payback{{Tray: "A1", Other: "S1", Why: trays.NoMatches}, known, {Tray: "Z1", Other: "S1", Why: trays.NoMatches}}
	expect(t, textOf(t, buildOf(t, r, nil), "index.html"), "Buy more trays? Buy about 15 more A72", "What came up",
		"Buy more trays?", "Buy about 15 more A72", "whether A1 pays", "whether Z1 pays")
}
