package trays

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/internal/booktest"
)

// numbers are the low, middle and high number to buy.
func (b *Buy) numbers() [3]int { return [3]int{b.Low, b.N, b.High} }

// Each end of the gain buys for itself: at 37 a tray only the high end pays, at 35 the
// middle, too, at 31 all. Of THIN nobody knows how many were bought: its life is as
// written.
func TestBuyAtTheEnds(t *testing.T) {
	for price, want := range map[float64][3]int{37: {0, 0, 1}, 35: {0, 1, 1}, 31: {1, 1, 1}} {
		pb := newPairBook(1, 2, 4, 0, 3, 2) // gain 1.2, from 1.05 to 1.35
		pb.heavy.Price, pb.heavy.Count, pb.thin.Count = records.Known(price), records.Known(1), uncounted
		f := pb.tell(t)
		buy, n := f.Decisions[0].Buy, f.NextTray[0]
		if buy.numbers() != want || buy.TurnsOnOtherLife {
			t.Errorf("price %v: buy %v, want %v", price, buy.numbers(), want)
		}
		for i, pays := range []records.Maybe[bool]{n.PaysLow, n.Pays, n.PaysHigh} {
			if pays != records.Known(want[i] == 1) {
				t.Errorf("price %v: the second tray: %+v", price, n)
			}
		}
		if sure, may := want[0] > 0, want[1] > 0 && want[0] == 0; buy.Sure() != sure || buy.MayPay() != may {
			t.Errorf("price %v: sure %v, may pay %v", price, buy.Sure(), buy.MayPay())
		}
	}
}

// The range runs over the other's life, too. THIN at 2 is written to last 2 uses: 1.00 a
// use. 2 more plants gain 0.20: 30 uses are worth 36. Each of those bought stood 1 use so
// far: 2.00 a use, 66. If 3 of the 6 sown are gone it may last but 2, as written; if it
// was written as 1 use and 6 went to 3 gone, 2: 1.00 a use, 36 again.
func TestBuyRunsOverTheOthersLife(t *testing.T) {
	for _, tt := range []struct {
		price, written float64
		gone           int
		want           [3]int
		turns          bool
	}{
		{40, 2, 0, [3]int{0, 0, 1}, true}, // at 1 use of THIN it would pay
		{70, 2, 0, [3]int{0, 0, 0}, false},
		{35, 2, 0, [3]int{1, 1, 1}, false},
		{40, 1, 0, [3]int{1, 1, 1}, false},
		{40, 1, 3, [3]int{0, 1, 1}, true}, // at 2 uses it would not
		{40, 1, 2, [3]int{1, 1, 1}, false},
	} {
		pb := newPairBook(2, 2, 2, 2, 2, 2)
		pb.heavy.Price, pb.heavy.Count, pb.thin.Uses = records.Known(tt.price), records.Known(1), records.Known(tt.written)
		buy := pb.withGone(t, tt.gone).Decisions[0].Buy
		if buy.numbers() != tt.want || buy.TurnsOnOtherLife != tt.turns {
			t.Errorf("%+v: %v, %v over %v", tt, buy.numbers(), buy.TurnsOnOtherLife, buy.OtherLives)
		}
	}
}

// Both ends run over each life: at 2 uses of THIN a use gains 1.05 to 1.35, at 1 use 2.05
// to 2.35, 30 times. Where 1 is written and 6 went to 3 gone, the low end is that of 2.
func TestBothEndsRunOverEachLife(t *testing.T) {
	for _, tt := range []struct {
		price, written float64
		gone           int
		want           [3]int
	}{
		{68, 2, 0, [3]int{0, 0, 1}}, // 30 x 2.35 = 70.5
		{35, 1, 3, [3]int{0, 1, 1}}, // 30 x 1.05 = 31.5
		{35, 1, 2, [3]int{1, 1, 1}},
	} {
		pb := oneMore(1, 2, 4, 0, 3, 2)
		pb.heavy.Price, pb.thin.Uses = records.Known(tt.price), records.Known(tt.written)
		if buy := pb.withGone(t, tt.gone).Decisions[0].Buy; buy.numbers() != tt.want {
			t.Errorf("%+v: %v over %v", tt, buy.numbers(), buy.OtherLives)
		}
	}
}

// Money out and worth are those of the middle number: 2 trays at 12 that are each worth
// 1.2 x 30 - 12 = 24, from 1.05 x 30 - 12 to 1.35 x 30 - 12.
func TestMoneyOutAndWorth(t *testing.T) {
	pb := newPairBook(1, 2, 4, 0, 3, 2)
	pb.trays, pb.thin.Count = 2, records.Known(12)
	f := pb.tell(t)
	back, buy := f.Payback[0], f.Decisions[0].Buy
	booktest.Near(t, "money out", buy.Outlay, 24, 0)
	booktest.Near(t, "worth", buy.Worth, 48, 1e-9)
	booktest.Near(t, "low", buy.WorthLow, 2*(30*back.GainLow.Value-12), 1e-9)
	booktest.Near(t, "high", buy.WorthHigh, 2*(30*back.GainHigh.Value-12), 1e-9)
	if buy.AboutEven() {
		t.Error("48 on 24 is about even")
	}
	pb.heavy.Price = records.Known(33.0) // worth 3 each: under a tenth
	if buy = pb.decision(t).Buy; buy.N != 2 || !buy.AboutEven() {
		t.Errorf("6 on 66: %+v", buy)
	}
	pb.heavy.Price = records.Known(100.0)
	if buy = pb.decision(t).Buy; buy.N != 0 || buy.Outlay != 0 || buy.Worth != 0 || buy.WorthLow != 0 || buy.WorthHigh != 0 || buy.AboutEven() {
		t.Errorf("none to buy: %+v", buy)
	}
}

// Buying goes on while the running sum grows, and stops at a tray that is worth just its
// price: 30 uses at 5 seasons, 5 u - 10 for u uses a season.
func TestRunningSumDecides(t *testing.T) {
	pr := &pair{tray: &batch.TrayCode{Price: records.Known(10.0), Lasts: records.Known(5.0)}, other: &batch.TrayCode{Price: records.Known(0.0)}}
	s := stake{pair: pr}
	for _, tt := range []struct {
		uses []float64
		want int
	}{
		{[]float64{1, 1, 1}, 0},
		{[]float64{3, 2, 2}, 1}, // the second is worth just its price
		{[]float64{3, 2.5, 2, 1}, 2},
		{[]float64{3, 3, 2.5, 2.5}, 4},
		{nil, 0},
	} {
		if got := s.count(1, 1, tt.uses); got != tt.want {
			t.Errorf("uses %v: buy %d, want %d", tt.uses, got, tt.want)
		}
	}
}

// All trays of the dearer code are gone: the first to buy is tray 1.
func TestAllTraysGone(t *testing.T) {
	pb := newPairBook(1, 2, 4, 0, 3, 2)
	b := pb.book(t)
	row := pb.heavy
	row.Bought, row.Count = b.Day("2025-02-01"), records.Known(-2)
	b.Trays = append(b.Trays, row)
	f := tell(b.Book())
	booktest.Finite(t, f.Figures, "trays")
	if d := f.Decisions[0]; d.Owned != records.Known(0) || d.Buy.N != 2 || f.NextTray[0].Nth != 1 || f.Payback[0].Life.Shown.Gone != 2 {
		t.Errorf("%+v %+v", d, f.NextTray)
	}
}

// With a blank count of the tray nobody knows which tray is the next: no rows, no number
// to buy, no "if", and that is said. The average tray has its answer.
func TestOwnedUnknown(t *testing.T) {
	pb := newPairBook(1, 2, 4, 0, 3, 2)
	pb.heavy.Count = uncounted
	f := pb.tell(t)
	if d := f.Decisions[0]; d.Owned.Known || d.Buy != nil || d.Why != NoOwned {
		t.Errorf("%+v", d)
	}
	if len(f.NextTray)+len(f.BuyIf) != 0 || f.Payback[0].Verdict == "" {
		t.Errorf("%+v %+v", f.NextTray, f.BuyIf)
	}
	next, decisions := Next(f.Figures, f.batches, f.batches.Standings(2, nil))
	if len(next) != 0 || len(decisions) != 1 || decisions[0].Buy != nil {
		t.Errorf("%+v %+v", next, decisions)
	}
}

// More trays owned than were ever used at once: nothing further, and nothing to flip.
func TestMoreOwnedThanUsed(t *testing.T) {
	pb := newPairBook(1, 2, 4, 0, 3, 2)
	pb.heavy.Count = records.Known(9)
	buy := pb.decision(t).Buy
	if buy.numbers() != [3]int{} || buy.Owned != 9 || buy.HalfLifePays.Known || fmt.Sprint(buy.First, buy.Last) != fmt.Sprint(Flips{}, Flips{}) {
		t.Errorf("%+v", buy)
	}
}
