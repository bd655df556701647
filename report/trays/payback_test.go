package trays

import (
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// Checks C16 and C17 of the trade: spread evenly, a heavy tray of 12.00 against a
// thin one of 2.00 that lasts 2 uses is paid back in 12 uses, in 4 years at 3
// uses a year; 6 or 18 where the thin tray lasts 1 or 3. With 2 more usable plants a
// tray at 0.10 and 0.25 more of washing, a use gains 0.95: 12.63 uses.
func TestPaybackByHand(t *testing.T) {
	for thinUses, want := range map[float64]float64{2: 12, 1: 6, 3: 18} {
		pb := newPairBook(0, 0, 0, 0, 0, 0)
		pb.thin.Uses = records.Known(thinUses)
		booktest.Known(t, "uses", pb.back(t).PaybackUses, want, 1e-9)
	}
	back := newPairBook(0, 0, 0, 0, 0, 0).back(t) // 6 sown in 2 trays: 3 uses a year
	booktest.Known(t, "uses a season", back.UsesPerSeason, 3, 0)
	booktest.Known(t, "seasons", back.PaybackSeasons, 4, 1e-9)

	pb := newPairBook(1, 2, 3, 2, 1, 3)
	pb.wage, pb.heavy.Minutes, pb.thin.Minutes = records.Known(15.0), records.Known(2.0), records.Known(1.0)
	back = pb.back(t)
	booktest.Known(t, "gain: 1.00 + 0.20 - 0.25", back.Gain, 0.95, 1e-12)
	booktest.Known(t, "uses", back.PaybackUses, 12/0.95, 1e-9)
	booktest.Near(t, "the parts", back.GainTray.Value+back.GainPlants.Value+back.GainMinutes.Value, back.Gain.Value, 1e-12)
	if back.MinutesLeftOut || !back.MixLeftOut || back.Why != "" {
		t.Errorf("left out: %+v", back)
	}
}

// A use that gains nothing never pays a tray back.
func TestNoPaybackWithoutAGain(t *testing.T) {
	back := newPairBook(-10, -10, -10, -10).back(t) // 1.00 saved, 1.00 lost
	booktest.Known(t, "gain", back.Gain, 0, 0)
	booktest.Missing(t, "payback", back.PaybackUses)
	booktest.Known(t, "worth today", back.WorthToday, -12, 0)
	if back.Verdict != PaysNever {
		t.Errorf("%q", back.Verdict)
	}
}

// Worth today at 5 %: gains of 1.2 x 3 uses a season over 12 seasons are worth what
// OpenFormula's PV(0.05;12;-3.6) gives, 3.6 x 8.863252 (ODF 1.2 part 2, 6.12.41).
func TestWorthToday(t *testing.T) {
	pb := newPairBook(2, 2, 2, 2, 2, 2)
	pb.discount, pb.heavy.Uses = records.Known(0.05), records.Known(36.0)
	booktest.Known(t, "worth", pb.back(t).WorthToday, -12+3.6*8.863251636, 1e-6)
	pb.heavy.Count = uncounted // nobody knows how often one is used: no season, no interest
	back := pb.back(t)
	booktest.Missing(t, "uses a season", back.UsesPerSeason)
	booktest.Known(t, "worth of 36 uses", back.WorthToday, -12+1.2*36, 1e-9)
}

// The verdict by worth today at the low end, the middle and the high end. A gain of 1.2 a
// use, from 1.05 to 1.35, over 10 seasons of 3 uses is worth 36, at 5 % no more than
// 1.2 x 3 x 7.721735 = 27.80: interest turns verdicts.
func TestVerdicts(t *testing.T) {
	for _, tt := range []struct {
		interest, price float64
		want            PaysVerdict
	}{
		{0, 17, PaysLow}, {0, 31, PaysLow}, {0, 35, PaysMiddle}, {0, 37, PaysHigh}, {0, 50, PaysNever},
		{0.05, 24, PaysLow}, {0.05, 26, PaysMiddle}, {0.05, 30, PaysHigh}, {0.05, 32, PaysNever},
	} {
		pb := newPairBook(1, 2, 4, 0, 3, 2)
		pb.heavy.Price, pb.discount = records.Known(tt.price), records.Known(tt.interest)
		if got := pb.back(t).Verdict; got != tt.want {
			t.Errorf("price %v at %v: %q, want %q", tt.price, tt.interest, got, tt.want)
		}
	}
}

// A tray that is worth just its price pays, be the sum off by the noise of floating
// point: 0.1 x 30 uses against 3.
func TestJustItsPricePays(t *testing.T) {
	pb := newPairBook(0, 0, 0, 0)
	pb.heavy.Price, pb.thin.Price = records.Known(3.0), records.Known(0.2)
	back := pb.back(t)
	booktest.Known(t, "worth today", back.WorthToday, 0, 0)
	if back.Verdict != PaysLow {
		t.Errorf("%q", back.Verdict)
	}
}

// Break-even: with just so many more plants a use the tray is worth its price today.
func TestBreakEven(t *testing.T) {
	even := func(pb pairBook) pairBook {
		pb.wage, pb.heavy.Minutes, pb.thin.Minutes = records.Known(15.0), records.Known(4.0), records.Known(1.0)
		pb.thin.Uses, pb.discount = records.Known(8.0), records.Known(0.05)
		pb.usable, pb.trays, pb.value = 20, 100, records.Known(0.25)
		pb.heavy.Count, pb.thin.Count = records.Known(200), records.Known(600)
		return pb
	}
	plants := even(newPairBook(1, 2, 4, 0, 3, 2)).back(t).BreakEvenPlants
	// 12 / (3 x 7.721735) - 2 / 8 + 3 x 15 / 60 = 1.018025, at 0.25 a plant
	booktest.Known(t, "plants", plants, 4*(12/(3*7.72173493)-0.25+0.75), 1e-7)
	just := even(newPairBook(plants.Value, plants.Value, plants.Value, plants.Value, plants.Value, plants.Value)).back(t)
	booktest.Known(t, "worth today", just.WorthToday, 0, 0.05) // of plants in whole numbers, 100 trays to a batch
	booktest.Known(t, "difference x cells", just.Difference, plants.Value/100, 1e-4)

	unknown := newPairBook(1, 2, 4, 0, 3, 2)
	unknown.heavy.Count = uncounted
	booktest.Known(t, "uses a season unknown: 12 / 30 - 2 / 2", unknown.back(t).BreakEvenPlants, (0.4-1)/0.1, 1e-9)
	unknown.value = records.Known(0.0)
	booktest.Missing(t, "plants worth nothing", unknown.back(t).BreakEvenPlants)
}
