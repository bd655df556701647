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
	booktest.Near(t, "the three parts", back.GainTray.Value+back.GainPlants.Value+back.GainMinutes.Value, back.Gain.Value, 1e-12)
	if back.MinutesLeftOut || back.Why != "" {
		t.Errorf("left out: %+v", back)
	}
}

// Worth today at 5 %: gains of 1.2 x 3 uses a season over 12 seasons are worth what
// OpenFormula's PV(0.05;12;-3.6) gives, 3.6 x 8.863252 (ODF 1.2 part 2, 6.12.41).
func TestWorthToday(t *testing.T) {
	pb := newPairBook(2, 2, 2, 2, 2, 2)
	pb.discount, pb.heavy.Uses = records.Known(0.05), records.Known(36.0)
	booktest.Known(t, "worth", pb.back(t).WorthToday, -12+3.6*8.863251636, 1e-6)
}

// The verdict by price <= gain x life at the low end, the middle and the high end.
func TestVerdicts(t *testing.T) {
	gains := []float64{1, 2, 4, 0, 3, 2} // gain a use 1.2, from 1.05 to 1.35
	for price, want := range map[float64]PaysVerdict{17: PaysLow, 19: PaysLow, 31: PaysLow, 35: PaysMiddle, 37: PaysHigh, 50: PaysNever} {
		pb := newPairBook(gains...)
		pb.heavy.Price = records.Known(price)
		back := pb.back(t)
		if back.Verdict != want {
			t.Errorf("price %v: %q, want %q", price, back.Verdict, want)
		}
		if half := back.HalfLifePays; !half.Known || half.Value != (price <= 18) {
			t.Errorf("price %v, half life: %v", price, half)
		}
	}
}

// A tray that gains just its price in its life pays.
func TestJustItsPricePays(t *testing.T) {
	pb := newPairBook(0, 0, 0, 0) // 1 a use, 30 uses
	pb.heavy.Price = records.Known(30.0)
	if back := pb.back(t); back.Verdict != PaysLow {
		t.Errorf("%q", back.Verdict)
	}
}

// The answer at plug_price values every match at it.
func TestPlugPrice(t *testing.T) {
	pb := newPairBook(2, 2, 2, 2)
	if at := pb.back(t).AtPlugPrice; at != nil {
		t.Errorf("a plug price that nobody wrote: %+v", at)
	}
	pb.plug = records.Known(0.5)
	at := pb.back(t).AtPlugPrice
	booktest.Known(t, "gain 1 + 2 x 0.5", at.Gain, 2, 1e-12)
	booktest.Known(t, "uses", at.PaybackUses, 6, 1e-12)
	booktest.Known(t, "worth of 2 uses a season over 15", at.WorthToday, -12+2*2*15, 1e-9)
	if at.Verdict != PaysLow {
		t.Errorf("%q", at.Verdict)
	}
}

// What flips the answer, each alone, brings the price to gain x life (rule "What would
// flip it"); at no discount the tray is then worth 0 today.
func TestFlipsBreakEven(t *testing.T) {
	base := newPairBook(1, 2, 4, 0, 3, 2)
	base.wage, base.heavy.Minutes, base.thin.Minutes = records.Known(15.0), records.Known(4.0), records.Known(1.0)
	base.thin.Uses, base.value = records.Known(8.0), records.Known(1.0)
	back := base.back(t)
	for name, flip := range map[string]func(*pairBook){
		"value": func(pb *pairBook) { pb.value = back.FlipValue },
		"price": func(pb *pairBook) { pb.heavy.Price = back.FlipPrice },
		"life":  func(pb *pairBook) { pb.heavy.Uses = back.PaybackUses },
	} {
		pb := base
		flip(&pb)
		at := pb.back(t)
		booktest.Near(t, name, at.Gain.Value*at.Life.Uses.Value, at.Price.Value, 1e-9)
		booktest.Known(t, name+": worth today", at.WorthToday, 0, 1e-9)
	}
	// On one scale with the difference x cells (rule "Break-even").
	even := base
	even.value = back.FlipValue
	booktest.Known(t, "break-even plants", even.back(t).BreakEvenPlants, back.Difference.Value*100, 1e-9)
}

// What cannot flip the answer is not told: no value of a plant above 0 brings a tray
// level that is cheaper a use and gives more, and none does where plants gained are 0.
func TestNothingFlips(t *testing.T) {
	cheaper := newPairBook(1, 2, 1, 2)
	cheaper.heavy.Uses = records.Known(300.0)
	booktest.Missing(t, "value, cheaper and better", cheaper.back(t).FlipValue)
	booktest.Missing(t, "value, no plants gained", newPairBook(1, -1, 2, -2).back(t).FlipValue)
	worse := newPairBook(-20, -21, -22, -23) // 2.15 lost a use, 1.00 saved
	booktest.Missing(t, "price, nothing gained", worse.back(t).FlipPrice)
}
