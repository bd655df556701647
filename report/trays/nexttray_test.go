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
	if len(f.NextTray) != 0 || f.Decisions[0].Buy.N != 0 || fmt.Sprint(f.Payback[0].Uses) != "[6 6]" {
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
	if d := f.Decisions[0]; d.Owned != records.Known(2) || d.Buy.N != 2 || d.Buy.PeakInUse != 4 || fmt.Sprint(d.Buy.Seasons) != "[2025]" {
		t.Errorf("%+v", d.Buy)
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
	if d := tell(b.Book()).Decisions[0]; d.Owned != records.Known(5) {
		t.Errorf("owned %+v, want 2 and 3", d.Owned)
	}
}

// No gain: uses alone.
func TestNextTrayWithoutAGain(t *testing.T) {
	pb := newPairBook(1, 2, 3)
	pb.heavy.Count = records.Known(1)
	f := pb.tell(t)
	if n := f.NextTray[0]; n.Uses != 3 || n.WorthToday.Known || n.PaybackSeasons.Known || n.Pays.Known {
		t.Errorf("%+v", n)
	}
	if d := f.Decisions[0]; d.Owned != records.Known(1) || d.Buy != nil || d.Why != FewMatches || len(f.BuyIf) != 0 {
		t.Errorf("%+v", d)
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
		b := bothSown(t)
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
	b := bothSown(t)
	sow(b, "a", "2025-03-01", "HEAVY", 0.5, 50).SetOut = b.Day("2025-03-20")
	sow(b, "b", "2025-03-01", "HEAVY", 0.5, 50)
	sow(b, "c", "2025-03-15", "HEAVY", 1, 50)
	if got := fmt.Sprint(tell(b.Book()).Payback[0].Uses); got != "[1 1]" {
		t.Errorf("uses %s: the first tray is held until the 20th", got)
	}
}

// A tray is free again on the day its batch is out and it is washed, not a day before.
func TestTurnaroundHoldsATray(t *testing.T) {
	for turnaround, want := range map[int]string{0: "[3]", 1: "[3]", 2: "[2 1]", 11: "[2 1]", 12: "[1 1 1]"} {
		b := bothSown(t)
		b.Settings.TrayTurnaround = turnaround
		for i, sown := range []string{"2025-03-01", "2025-03-11", "2025-03-21"} { // out nine days later
			sow(b, fmt.Sprint(i), sown, "HEAVY", 1, 50)
		}
		if got := fmt.Sprint(tell(b.Book()).Payback[0].Uses); got != want {
			t.Errorf("%d days of washing: uses %s, want %s", turnaround, got, want)
		}
	}
}

// The last three finished seasons are gone through, each for as much: one without a
// sowing in either code counts as no use, one that still runs not at all.
func TestLastThreeFinishedSeasons(t *testing.T) {
	b := newPairBook().book(t)
	for i, sown := range []string{"2020-03-01", "2021-03-01", "2022-03-01", "2022-04-01"} {
		sow(b, fmt.Sprint(i), sown, "HEAVY", []float64{9, 1, 1, 2}[i], 50)
	}
	sow(b, "old", "2020-03-01", "THIN", 7, 50)
	sow(b, "thin", "2022-05-01", "THIN", 2, 50)
	sow(b, "else", "2023-03-01", "AIR", 4, 50)
	sow(b, "now", "2024-03-01", "HEAVY", 5, 50)
	open := b.Sow("open", "2024-03-20", "leek", "Arvo", "AIR", 1)
	told := tell(b.Book())
	if told.batches.Of(open.Code).Ended() {
		t.Fatal("2024 is over")
	}
	pairs, _ := pairsOf(told.batches)
	r := pairs[0].replay(standingsOf(told.batches, told.batches.Standings(1, nil)))
	if fmt.Sprint(r.seasons) != "[2021 2022 2023]" || len(r.uses) != 2 {
		t.Fatalf("%+v", r)
	}
	booktest.Near(t, "tray 1: 1 + 2 + 0 of three seasons", r.uses[0], 1, 1e-12)
	booktest.Near(t, "tray 2: once", r.uses[1], 1.0/3, 1e-12)
	if got := fmt.Sprint(r.notCompared); got != "[{leek 2}]" {
		t.Errorf("not compared in those seasons: %s", got)
	}
}

// Of crops that have no match only what stood in the tray itself draws on its row; what
// stood in the other is told and left out.
func TestCropsNeverComparedAreTold(t *testing.T) {
	pb := newPairBook(1, 2, 4, 0, 3, 2)
	pb.heavy.Count = records.Known(0)
	b := pb.book(t)
	for i, crop := range []string{"orache", "mibuna", "orache"} {
		sow(b, fmt.Sprint("other", i), "2025-02-03", "THIN", 1.5, 50).Crop = crop
	}
	sow(b, "heavy", "2025-03-10", "HEAVY", 1, 50).Crop = "mibuna"
	f := tell(b.Book())
	if got := fmt.Sprint(f.Payback[0].NotCompared); got != "[{mibuna 1.5} {orache 3}]" {
		t.Errorf("not compared: %s", got)
	}
	if got := fmt.Sprint(f.Payback[0].Uses); got != "[7 6]" {
		t.Errorf("uses %s: 6 dates with one of each, and one more of HEAVY", got)
	}
}

// The trays beyond those owned are sorted by their uses: a low number is not always
// used most. Tray 1 is held for long, tray 2 comes and goes.
func TestFurtherTraysAreSorted(t *testing.T) {
	b := bothSown(t)
	sow(b, "long", "2025-03-01", "HEAVY", 1, 50).SetOut = b.Day("2025-06-01")
	for i, sown := range []string{"2025-03-02", "2025-03-12", "2025-03-22"} {
		sow(b, fmt.Sprint(i), sown, "HEAVY", 1, 50)
	}
	for owned, want := range map[int]string{0: "[3 1]", 1: "[1 3]", 5: "[1 3]"} {
		b.Trays[0].Count = records.Known(owned)
		f := tell(b.Book())
		if got := fmt.Sprint(f.Payback[0].Uses); got != want || len(f.NextTray) != max(0, 2-owned) {
			t.Errorf("%d owned: uses %s, want %s; %+v", owned, got, want, f.NextTray)
		}
	}
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
	if len(buys) != 1 || buys[0].Tray != "HEAVY" || buys[0].Other != "THIN" || buys[0].Buy.N != 1 || buys[0].Owned != records.Known(2) {
		t.Errorf("%+v", buys)
	}
	as, _ := Next(f.Figures, f.batches, f.batches.Standings(1, nil))
	if fmt.Sprint(as) != fmt.Sprint(f.NextTray) {
		t.Errorf("as it is: %+v, not %+v", as, f.NextTray)
	}
}
