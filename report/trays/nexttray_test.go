package trays

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/internal/booktest"
)

// Buying by hand. 4 trays of HEAVY or THIN are wanted on each of six dates, 2 of HEAVY
// are owned; trays 3 and 4 each stand in use 6 times a season. At a gain of 1.2
// a use and 30 uses of life each is worth 36 - 12 = 24.
func TestNextTrayByHand(t *testing.T) {
	pb := newPairBook(1, 2, 4, 0, 3, 2)
	f := pb.tell(t)
	if len(f.NextTray) != 0 || f.Payback[0].Buy.N != 0 || fmt.Sprint(f.Payback[0].Uses) != "[6 6]" {
		t.Fatalf("2 are wanted, 2 owned: %+v", f.Payback[0].Buy)
	}
	pb.trays = 2
	f = pb.tell(t)
	if len(f.NextTray) != 2 {
		t.Fatalf("%+v", f.NextTray)
	}
	for i, n := range f.NextTray {
		if n.Nth != 3+i || n.Owned != 2 || n.Uses != 6 {
			t.Errorf("%+v", n)
		}
		booktest.Known(t, "worth", n.WorthToday, 24, 1e-9)
		booktest.Known(t, "payback in seasons", n.PaybackSeasons, 10.0/6, 1e-9)
	}
	if buy := f.Payback[0].Buy; buy.N != 2 || buy.Low != 2 || buy.High != 2 || buy.PeakInUse != 4 || fmt.Sprint(buy.Seasons) != "[2025]" {
		t.Errorf("%+v", buy)
	}
}

// Each end of the gain buys for itself: at 37 a tray only the high end pays, at 35 the
// middle, too, at 31 all.
func TestBuyAtTheEnds(t *testing.T) {
	for price, want := range map[float64][3]int{37: {0, 0, 1}, 35: {0, 1, 1}, 31: {1, 1, 1}} {
		pb := newPairBook(1, 2, 4, 0, 3, 2) // gain 1.2, from 1.05 to 1.35
		pb.heavy.Price, pb.heavy.Count = records.Known(price), records.Known(1)
		f := pb.tell(t)
		buy, n := f.Payback[0].Buy, f.NextTray[0]
		if got := [3]int{buy.Low, buy.N, buy.High}; got != want || buy.Owned != 1 {
			t.Errorf("price %v: buy %v, want %v", price, got, want)
		}
		for i, pays := range []records.Maybe[bool]{n.PaysLow, n.Pays, n.PaysHigh} {
			if pays != records.Known(want[i] == 1) {
				t.Errorf("price %v: the second tray: %+v", price, n)
			}
		}
	}
}

// Owned is what was bought of the tray by today, not later.
func TestOwnedToday(t *testing.T) {
	pb := newPairBook(1, 2, 4, 0, 3, 2)
	b := pb.book(t)
	for i, bought := range []string{"2025-01-05", "2026-01-01"} {
		row := pb.heavy
		row.Bought, row.Count = b.Day(bought), records.Known(3+i)
		b.Trays = append(b.Trays, row)
	}
	if buy := tell(b.Book()).Payback[0].Buy; buy.Owned != 5 {
		t.Errorf("owned %d, want 2 and 3", buy.Owned)
	}
}

// A tray that is not worth its price does not stop the count where further ones make
// up for it: the running sum decides, not each tray alone. Buying stops where the sum is
// greatest.
func TestRunningSumDecides(t *testing.T) {
	pr := &pair{tray: &batch.TrayCode{Price: records.Known(10.0), Lasts: records.Known(5.0)}}
	gain := records.Known(1.0) // a tray used u times a season is worth 5 u - 10
	for want, uses := range map[int][]float64{
		0: {1, 1, 1},
		1: {3, 2, 2}, // the second is worth just its price
		2: {3, 2.5, 1, 2},
		4: {3, 1, 3, 2.5},
	} {
		if got := pr.buyUpTo(gain, 0, uses); got != want {
			t.Errorf("uses %v: buy %d, want %d", uses, got, want)
		}
	}
	if got := pr.buyUpTo(gain, 6, []float64{9, 9}); got != 6 {
		t.Errorf("more owned than ever used: up to %d, want none beyond 6", got)
	}
}

// No gain: uses alone.
func TestNextTrayWithoutAGain(t *testing.T) {
	pb := newPairBook(1, 2, 3)
	pb.heavy.Count = records.Known(1)
	f := pb.tell(t)
	if n := f.NextTray[0]; n.Uses != 3 || n.WorthToday.Known || n.Pays.Known || f.Payback[0].Buy != nil {
		t.Errorf("%+v", n)
	}
}

// Parts of a tray sown on one day make up whole ones, exactly: 0.1 + 2.7 + 0.2 is three
// trays, though in float64 it adds up to a hair more. A twentieth more takes one more.
func TestPartsOfATray(t *testing.T) {
	tenth := []float64{0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1, 0.1}
	for _, tt := range []struct {
		parts []float64
		want  string
	}{
		{[]float64{0.1, 0.2, 0.7}, "[1]"},
		{[]float64{0.1, 2.7, 0.2}, "[1 1 1]"},
		{[]float64{2.2, 0.7, 0.1}, "[1 1 1]"},
		{[]float64{2.2, 0.7, 0.15}, "[1 1 1 1]"},
		{append(tenth, 0.05), "[1 1]"},
		{tenth, "[1]"},
		{[]float64{0.25}, "[1]"},
	} {
		b := newPairBook().book(t)
		for i, part := range tt.parts {
			sow(b, fmt.Sprintf("%02d", i), "2025-03-01", "HEAVY", part, 0)
		}
		if got := fmt.Sprint(tell(b.Book()).Payback[0].Uses); got != tt.want {
			t.Errorf("%v: uses %s, want %s", tt.parts, got, tt.want)
		}
	}
}

// Batches of one day and code are one need, held until the last of them is out.
func TestHeldUntilTheLastIsOut(t *testing.T) {
	b := newPairBook().book(t)
	sow(b, "a", "2025-03-01", "HEAVY", 0.5, 50).SetOut = b.Day("2025-03-20")
	sow(b, "b", "2025-03-01", "HEAVY", 0.5, 50)
	sow(b, "c", "2025-03-15", "THIN", 1, 50)
	if got := fmt.Sprint(tell(b.Book()).Payback[0].Uses); got != "[1 1]" {
		t.Errorf("uses %s: the first tray is held until the 20th", got)
	}
}

// A tray is free again on the day its batch is out and it is washed, not a day before.
func TestTurnaroundHoldsATray(t *testing.T) {
	for turnaround, want := range map[int]string{0: "[3]", 1: "[3]", 2: "[2 1]", 11: "[2 1]", 12: "[1 1 1]"} {
		b := newPairBook().book(t)
		b.Settings.TrayTurnaround = turnaround
		for i, sown := range []string{"2025-03-01", "2025-03-11", "2025-03-21"} { // out nine days later
			sow(b, fmt.Sprint(i), sown, []string{"HEAVY", "THIN"}[i%2], 1, 50)
		}
		if got := fmt.Sprint(tell(b.Book()).Payback[0].Uses); got != want {
			t.Errorf("%d days of washing: uses %s, want %s", turnaround, got, want)
		}
	}
}

// The last three seasons in which either code was sown count, and each for as much.
func TestLastThreeSeasonsAreReplayed(t *testing.T) {
	b := newPairBook().book(t)
	for i, sown := range []string{"2020-03-01", "2021-03-01", "2022-03-01", "2024-03-01", "2024-04-01"} {
		sow(b, fmt.Sprint(i), sown, "HEAVY", []float64{9, 1, 1, 1, 2}[i], 50)
	}
	sow(b, "else", "2025-03-01", "AIR", 4, 50)
	pr := pairsOf(tell(b.Book()).batches)[0]
	r := pr.replay(tell(b.Book()).batches.Standings(1, nil))
	if fmt.Sprint(r.seasons) != "[2021 2022 2024]" || len(r.uses) != 2 {
		t.Fatalf("%+v", r)
	}
	booktest.Near(t, "tray 1: 1 + 1 + 2 of three seasons", r.uses[0], 4.0/3, 1e-12)
	booktest.Near(t, "tray 2: once", r.uses[1], 1.0/3, 1e-12)
}

// "If" the farm grew by half and sowed THIN in place of HEAVY: 3 trays at once each
// date, 2 owned, so that the third is used on all 6 dates, at the gain of the records.
func TestNextIfTheFarmGrew(t *testing.T) {
	f := newPairBook(1, 2, 3, 1, 2, 3).tell(t)
	next, buys := Next(f.Figures, f.batches, f.batches.Standings(1.5, []batch.Switch{{From: "HEAVY", To: "THIN"}}))
	if len(next) != 1 || next[0].Nth != 3 || next[0].Uses != 6 || len(f.NextTray) != 0 {
		t.Fatalf("%+v", next)
	}
	booktest.Known(t, "worth: 30 uses at 1.2, less 12", next[0].WorthToday, 24, 1e-9)
	if len(buys) != 1 || buys[0].Tray != "HEAVY" || buys[0].Other != "THIN" || buys[0].N != 1 || buys[0].Owned != 2 {
		t.Errorf("%+v", buys)
	}
	as, _ := Next(f.Figures, f.batches, f.batches.Standings(1, nil))
	if fmt.Sprint(as) != fmt.Sprint(f.NextTray) {
		t.Errorf("as it is: %+v, not %+v", as, f.NextTray)
	}
}
