package sowing

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// gap is a batch's lot, the plants wanted of it and those it gave.
type gap struct {
	lot            string
	wanted, usable int
}

// asked sows a batch of 2025 for each gap.
func asked(b *booktest.Book, crop string, gaps ...gap) {
	b.Helper()
	for i, g := range gaps {
		s := b.Sow(fmt.Sprint(crop, i), "2025-03-01", crop, "x", "AIR", 4)
		s.Lot, s.Wanted = g.lot, records.Known(g.wanted)
		b.Leave(s, "2025-04-10", g.usable, 0)
	}
}

// balanceOf is the balance of one crop with such batches.
func balanceOf(t testing.TB, gaps ...gap) Balance {
	t.Helper()
	b := booktest.New(t)
	asked(b, "orache", gaps...)
	f := figures(t, b.Book())
	if len(f.Balance) != 1 {
		t.Fatalf("%d rows", len(f.Balance))
	}
	return f.Balance[0]
}

// Sums by hand: short by 20 and 10, over by 30 and, of a wanted 0, by 5; one as wanted.
func TestBalanceSums(t *testing.T) {
	got := balanceOf(t, gap{"", 100, 80}, gap{"", 50, 40}, gap{"", 100, 130}, gap{"", 0, 5}, gap{"", 60, 60})
	want := Balance{Season: 2025, Crop: "orache", Batches: 5, Sums: Sums{Wanted: 310, Usable: 315, ShortBatches: 2, Short: 30, LeftOver: 35}, Advice: SowMore}
	if got != want {
		t.Errorf("got  %+v\nwant %+v", got, want)
	}
}

// Only ended batches with wanted written and plants out or counted; by season and crop.
func TestWhoIsInTheBalance(t *testing.T) {
	b := booktest.New(t)
	asked(b, "orache", gap{"", 100, 80}, gap{"", 100, 80})
	b.Sowings[1].Wanted = records.Maybe[int]{}
	asked(b, "mibuna", gap{"", 100, 80}, gap{"", 100, 80})
	b.Sowings[3].Surplus = records.Maybe[int]{} // at least
	open := b.Sow("open", "2025-04-01", "mibuna", "x", "AIR", 1)
	open.Wanted = records.Known(100)
	b.Count("open", "2025-04-30", 90)
	b.Look("open", "2025-04-30", 20, 18) // counted, but open
	counted := b.Sow("counted", "2024-04-01", "mibuna", "x", "AIR", 1)
	counted.Wanted, counted.SetOut = records.Known(100), b.Day("2024-05-01")
	b.Count("counted", "2024-04-20", 90)
	b.Look("counted", "2024-04-20", 20, 18)
	potted := b.Sow("potted", "2024-04-01", "orache", "x", "AIR", 1)
	potted.Start, potted.Wanted = records.FromPlug, records.Known(50)
	b.Leave(potted, "2024-05-01", 60, 0)
	f := figures(t, b.Book(), "2025-04-30")
	var got string
	for _, r := range f.Balance {
		got += fmt.Sprintf("%d %s %d: %v %v; ", r.Season, r.Crop, r.Batches, r.Short, r.LeftOver)
	}
	if want := "2024 mibuna 1: 19 0; 2024 orache 1: 0 10; 2025 mibuna 1: 20 0; 2025 orache 1: 20 0; "; got != want {
		t.Errorf("got %s", got)
	}
}

// Counted plants are products of shares: 100 cells, all up, 56 of 100 fit are 56 wanted,
// though in float64 a hair more, and 57 a hair less.
func TestNoiseIsNotShort(t *testing.T) {
	b := booktest.New(t)
	for i, fit := range []int{56, 57} {
		const looked = 100
		s := b.Sow(fmt.Sprint(i), "2025-03-01", "orache", "x", "AIR", 1)
		s.Wanted, s.SetOut = records.Known(100*fit/looked), b.Day("2025-05-01")
		b.Count(s.Code, "2025-04-20", 100)
		b.Look(s.Code, "2025-04-20", looked, fit)
	}
	if got := figures(t, b.Book()).Balance[0]; got.ShortBatches != 0 || got.Short != 0 || got.LeftOver != 0 {
		t.Errorf("got %+v", got)
	}
}

// The front page names up to three crops on either side, those with most first.
func TestNamed(t *testing.T) {
	b := booktest.New(t)
	for i, crop := range []string{"e", "d", "c", "b", "a"} {
		asked(b, crop, gap{"", 100, 100 - 10*(i%3)}, gap{"", 100, 101})
	}
	asked(b, "z", gap{"", 100, 100})
	short, over := figures(t, b.Book()).Named(2025)
	var got string
	for _, r := range append(short, over...) {
		got += r.Crop
	}
	if got != "cad"+"abc" { // short by 20, 10, 10; over by 1 each
		t.Errorf("named %s", got)
	}
	if short, over := figures(t, b.Book()).Named(2024); len(short)+len(over) != 0 {
		t.Error("names of a season without a sowing")
	}
	b = booktest.New(t)
	asked(b, "z", gap{"", 100, 100})
	if short, over := figures(t, b.Book()).Named(2025); len(short)+len(over) != 0 {
		t.Error("a crop that gave what was wanted is named")
	}
}
