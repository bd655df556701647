package trays

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// Bad input of every kind: no figure where there can be none, the reason said, and
// never a number that is none.
func TestWhatCannotBeTold(t *testing.T) {
	six := []float64{1, 2, 3, 1, 2, 3}
	for _, tt := range []struct {
		name   string
		change func(*pairBook)
		why    Reason
	}{
		{"three matches", func(pb *pairBook) { pb.gains = six[:3] }, FewMatches},
		{"other's life unknown: of neither is known how often it is used", func(pb *pairBook) {
			pb.thin.Uses, pb.thin.Lasts, pb.thin.Count, pb.heavy.Count = Num{}, records.Known(3.0), uncounted, uncounted
		}, NoOtherLife},
		{"other never counted, but it does the work of the tray", func(pb *pairBook) {
			pb.thin.Uses, pb.thin.Lasts, pb.thin.Count = Num{}, records.Known(3.0), uncounted
		}, ""},
		{"life 0 stands for not written", func(pb *pairBook) { pb.thin.Uses = records.Known(0.0) }, ""},
		{"price 0", func(pb *pairBook) { pb.thin.Price = records.Known(0.0) }, ""},
		{"both at 0", func(pb *pairBook) { pb.thin.Price, pb.heavy.Price = records.Known(0.0), records.Known(0.0) }, ""},
		{"no life at all", func(pb *pairBook) { pb.heavy.Uses, pb.thin.Uses = Num{}, Num{} }, ""},
		{"no wage", func(pb *pairBook) { pb.heavy.Minutes, pb.thin.Minutes = records.Known(9.0), records.Known(1.0) }, ""},
		{"broken beyond those bought", func(pb *pairBook) { pb.heavy.Count = records.Known(-3) }, ""},
		{"more in use than owned", func(pb *pairBook) { pb.heavy.Count = records.Known(1) }, ""},
	} {
		pb := newPairBook(six...)
		tt.change(&pb)
		back := pb.back(t)
		if back.Why != tt.why {
			t.Errorf("%s: why %q, want %q", tt.name, back.Why, tt.why)
		}
		if !back.MinutesLeftOut {
			t.Errorf("%s: minutes", tt.name)
		}
	}
	apart := newPairBook().book(t)
	sow(apart, "h", "2025-03-01", "HEAVY", 1, 80)
	sow(apart, "t", "2025-04-01", "THIN", 1, 80)
	if f := tell(apart.Book()); f.Payback[0].Why != NoMatches || len(f.NextTray) != 0 {
		t.Errorf("never sown together: %+v", f.Payback[0])
	}
}

// Fewer than four matches, or on fewer than three dates, give no figure that rests on
// them, not even those that the prices and lives alone would give.
func TestTooFewMatchesTellNothing(t *testing.T) {
	pb := newPairBook(1, 2, 3)
	pb.plug = records.Known(1.0)
	back := pb.back(t)
	for what, figure := range map[string]Num{"difference": back.Difference, "value": back.Value, "gain": back.Gain, "payback": back.PaybackUses,
		"worth": back.WorthToday, "break-even": back.BreakEvenPlants} {
		booktest.Missing(t, what, figure)
	}
	if back.Verdict != "" || back.AtPlugPrice != nil || back.Buy != nil {
		t.Errorf("%+v", back)
	}
	booktest.Known(t, "price", back.Price, 12, 0)
}

// Matches of one day are one date: four on one or two dates tell nothing, on three
// they do.
func TestFewDates(t *testing.T) {
	for _, tt := range []struct {
		days  []string
		dates int
		why   Reason
	}{
		{[]string{"2025-03-01", "2025-03-01", "2025-03-01", "2025-03-01"}, 1, FewDates},
		{[]string{"2025-03-01", "2025-03-01", "2025-03-09", "2025-03-09"}, 2, FewDates},
		{[]string{"2025-03-01", "2025-03-01", "2025-03-09", "2025-03-10"}, 3, ""},
	} {
		b := newPairBook().book(t)
		for i, sown := range tt.days {
			for _, tray := range []string{"HEAVY", "THIN"} {
				sow(b, fmt.Sprint(tray, i), sown, tray, 1, 80).Variety = fmt.Sprint(i)
			}
		}
		back := tell(b.Book()).Payback[0]
		if back.Why != tt.why || back.Matches != 4 || back.Dates != tt.dates || back.Difference.Known != (tt.why == "") {
			t.Errorf("%v: %+v", tt.days, back)
		}
	}
}

// One match with a value tells no range, so no gain: no verdict and no number to buy.
func TestOneMatchWithAValue(t *testing.T) {
	pb := newPairBook(1, 2, 3, 1)
	pb.value, pb.plug, pb.heavy.Count = Num{}, records.Known(1.0), records.Known(1)
	b := pb.book(t)
	b.Costs = []records.Cost{booktest.Row(t, "2025-01-02", records.Mix, 8, func(c *records.Cost) { c.Batch = "HEAVY0" })}
	for i := range b.Sowings {
		s := &b.Sowings[i]
		s.Wanted = records.Known(99)
		if s.Code != "HEAVY0" && s.Code != "THIN0" {
			s.Crop, s.PlantsOut = "chard", records.Known(0) // no usable plant of the crop: no value
		}
	}
	f := tell(b.Book())
	back := f.Payback[0]
	booktest.Known(t, "value: 8 / (81 + 80)", back.Value, 8.0/161, 1e-12)
	if back.Why != FewValues || back.Valued != 1 || back.Gain.Known || back.GainLow.Known || back.Verdict != "" || back.AtPlugPrice != nil {
		t.Errorf("one value: %+v", back)
	}
	if d := f.Decisions[0]; d.Buy != nil || d.Why != FewValues || len(f.BuyIf) != 0 {
		t.Errorf("%+v", d)
	}
	if n := f.NextTray[0]; n.Uses != 4 || n.WorthToday.Known || n.Pays.Known {
		t.Errorf("%+v", n)
	}
}

// A tray whose own life cannot be told has a gain and no verdict, on the average; it is
// not known either how many are owned.
func TestLifeOfTheTrayUnknown(t *testing.T) {
	pb := newPairBook(1, 2, 3, 1)
	pb.heavy.Uses, pb.heavy.Lasts, pb.heavy.Count = Num{}, records.Known(3.0), uncounted
	if back := pb.back(t); back.Why != NoLife || !back.Gain.Known || back.Verdict != "" || back.WorthToday.Known {
		t.Errorf("no life: %+v", back)
	}
}
