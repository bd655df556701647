package trays

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// ifWords puts the "if" of a pair in words.
func ifWords(rows []BuyIf) []string {
	var words []string
	for _, r := range rows {
		words = append(words, fmt.Sprintf("%v %s %d %d %d", r.Factor, r.Value, r.Low, r.N, r.High))
	}
	return words
}

// How many to buy if THIN at 2 lasted 1, 2, 3, 4 uses, and 2 more plants a use were worth
// 0.10 or half of it: 30 uses at 2.2, 1.2, 0.87, 0.7 are worth 66, 36, 26, 21, at half
// 63, 33, 23, 18. The second tray costs 34; the range of the plants is that of the gain
// alone.
func TestIfByHand(t *testing.T) {
	pb := oneMore(1, 2, 4, 0, 3, 2) // 0.05 to 0.35 of plants
	pb.heavy.Price = records.Known(34.0)
	f := pb.tell(t)
	want := "[0.5 figured 1 1 1 0.5 half 1 1 1 1 figured 0 1 1 1 half 0 0 1 1.5 figured 0 0 0 1.5 half 0 0 0 2 figured 0 0 0 2 half 0 0 0]"
	if got := fmt.Sprint(ifWords(f.BuyIf)); got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
	if row, ok := f.If("HEAVY", "THIN", 1, Figured); !ok || row.N != 1 {
		t.Errorf("%+v, %v", row, ok)
	}
	if row, ok := f.If("HEAVY", "THIN", 1, BoughtIn); ok {
		t.Errorf("no plug price is written: %+v", row)
	}
}

// Half is half of the value of each match: 30 uses at 1.1 pay 32.9, not 33.1.
func TestIfHalf(t *testing.T) {
	for price, want := range map[float64]int{32.9: 1, 33.1: 0} {
		pb := oneMore(2, 2, 2, 2)
		pb.heavy.Price = records.Known(price)
		f := pb.tell(t)
		if row, _ := f.If("HEAVY", "THIN", 1, Half); row.N != want {
			t.Errorf("at %v: %+v", price, row)
		}
	}
}

// The other never lasts less than a use: at half of 1 it lasts 1.
func TestIfNeverBelowAUse(t *testing.T) {
	pb := oneMore(2, 2, 2, 2)
	pb.thin.Uses, pb.heavy.Price = records.Known(1.0), records.Known(67.0) // 30 x 2.2 = 66
	for _, row := range pb.tell(t).BuyIf {
		if row.High != 0 {
			t.Errorf("%+v", row)
		}
	}
}

// Bought in a plant is worth what it fills a gap with.
func TestIfBoughtIn(t *testing.T) {
	pb := oneMore(2, 2, 2, 2, 2, 2)
	pb.plug, pb.heavy.Price = records.Known(1.0), records.Known(50.0)
	b := pb.book(t)
	for i := range b.Sowings {
		b.Sowings[i].Wanted = records.Known(81) // THIN gave 80: one of two extra plants fills a gap
	}
	f := tell(b.Book())
	bought, _ := f.If("HEAVY", "THIN", 1, BoughtIn) // 30 x (1 + 2 x 0.5) = 60
	figured, _ := f.If("HEAVY", "THIN", 1, Figured)
	if bought.N != 1 || figured.N != 0 || len(f.BuyIf) != 12 || f.BuyIf[0].Value != BoughtIn {
		t.Errorf("%+v", f.BuyIf)
	}
}

// Matches of a crop without a value count at none of the values, nor at that at which the
// answer turns: here of eight matches, 4 of chard, the four of leek with 2 more plants.
func TestMatchesWithoutAValueCountNowhere(t *testing.T) {
	pb := oneMore(2, 2, 2, 2, 0, 0, 0, 0)
	pb.value, pb.plug, pb.heavy.Price = Num{}, records.Known(1.0), records.Known(50.0)
	b := pb.book(t)
	b.Cost("2025-01-01", records.Mix, 162)
	for i := range b.Sowings {
		s := &b.Sowings[i]
		if s.Wanted = records.Known(90); i >= 8 {
			s.Crop, s.PlantsOut = "chard", records.Known(0)
		}
	}
	f := tell(b.Book())
	back, buy := f.Payback[0], f.Decisions[0].Buy
	if back.Valued != 4 || back.Matches != 8 {
		t.Fatalf("%+v", back)
	}
	// a ninth of the mix on each of 16 batches, half of them leek: 81 on 4 x (82 + 80) plants
	booktest.Known(t, "gain: 1 + 2 x value", back.Gain, 1+2*81.0/648, 1e-12)
	booktest.Known(t, "a plant turns it at (50 / 30 - 1) / 2", buy.First.Value, (50.0/30-1)/2, 1e-9)
	booktest.Known(t, "bought in: 1 + 2 x 1, all gaps filled", back.AtPlugPrice.Gain, 3, 1e-9)
}
