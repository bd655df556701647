package batch

import (
	"slices"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// Rule "Tray codes": of two purchases of one day the dearer counts as the later; their
// order in the log moves no figure.
func TestPurchasesOfOneDayInAnyOrder(t *testing.T) {
	cheap, dear := bought(t, "2025-01-10", 4), bought(t, "2025-01-10", 2)
	cheap.Price, cheap.Lasts = records.Known(9.0), records.Known(8.0)
	dear.Price, dear.Lasts = records.Known(12.0), records.Known(5.0)
	for _, c := range []*TrayCode{code(t, cheap, dear), code(t, dear, cheap)} {
		if c.Price.Value != 12 || c.Lasts.Value != 5 {
			t.Errorf("price %v, lasts %v; the dearer of the day is 12 and lasts 5", c.Price, c.Lasts)
		}
	}
}

// Tied in date and price, the larger of each further value is the later.
func TestPurchasesOfOneDayAndPrice(t *testing.T) {
	for name, change := range map[string]func(*records.Purchase){
		"lasts":   func(p *records.Purchase) { p.Lasts = records.Known(9.0) },
		"uses":    func(p *records.Purchase) { p.Uses = records.Known(40.0) },
		"minutes": func(p *records.Purchase) { p.Minutes = records.Known(3.0) },
		"places":  func(p *records.Purchase) { p.Places = records.Known(2.0) },
		"count":   func(p *records.Purchase) { p.Count = records.Known(9) },
	} {
		one, two := bought(t, "2025-01-10", 4), bought(t, "2025-01-10", 4)
		change(&two)
		for _, rows := range [][]records.Purchase{{one, two}, {two, one}} {
			if got := code(t, rows...).Rows[1]; got != two {
				t.Errorf("%s: later is %+v", name, got)
			}
		}
	}
}

// Every value is that of the latest purchase that has it written; a life of 0 is none.
func TestLatestWrittenValueStands(t *testing.T) {
	first, later, none := bought(t, "2023-01-10", 4), bought(t, "2024-01-10", 4), bought(t, "2025-01-10", 4)
	first.Price, first.Uses, first.Minutes, first.Places, first.CellML = records.Known(8.0), records.Known(30.0), records.Known(2.0), records.Known(1.5), records.Known(18.0)
	later.Price, later.Lasts = records.Known(9.0), records.Known(6.0)
	none.Lasts, none.Uses = records.Known(0.0), records.Known(-1.0)
	c := code(t, none, later, first)
	for name, got := range map[string]struct {
		is   Num
		want float64
	}{"price": {c.Price, 9}, "lasts": {c.Lasts, 6}, "uses": {c.Uses, 30}, "minutes": {c.Minutes, 2}, "cell volume": {c.CellML, 18}} {
		booktest.Known(t, name, got.is, got.want, 0)
	}
	codes := Codes{"A72": c, "A50": code(t, bought(t, "2025-01-10", 1))}
	if codes.Places("A72") != 1.5 || codes.Places("A50") != 1 || codes.Places("unknown") != 1 {
		t.Errorf("places %v, %v", codes.Places("A72"), codes.Places("unknown"))
	}
	if got := codes.Sorted(); !slices.Equal(got, []string{"A50", "A72"}) {
		t.Errorf("sorted: %v", got)
	}
}

// Trays owned add up by date, one without a date always; more gone than were bought
// leaves none, never fewer.
func TestTraysOwned(t *testing.T) {
	always := bought(t, "2025-01-10", 3)
	always.Bought = 0
	c := code(t, always, bought(t, "2024-05-01", 4), bought(t, "2025-05-01", -5), bought(t, "2026-05-01", -6), bought(t, "2027-01-01", 8))
	for day, want := range map[string]int{"2020-01-01": 3, "2024-04-30": 3, "2024-05-01": 7, "2025-05-01": 2, "2026-05-01": 0, "2027-01-01": 4} {
		if got := c.OwnedOn(booktest.Day(t, day)); got != records.Known(want) {
			t.Errorf("%s: %v owned, want %d", day, got, want)
		}
	}
	settings := records.Settings{SeasonStarts: 1}
	for season, want := range map[int]int{2023: 3, 2024: 7, 2025: 7, 2026: 2, 2027: 4} {
		if got := c.OwnedIn(settings.SeasonDays(season)); got != records.Known(want) {
			t.Errorf("%d: %v owned, want %d", season, got, want)
		}
	}
	if !c.BrokenBeyondBought() {
		t.Error("11 gone of 7 are not noticed")
	}
	if trays, ok := c.Bought(); trays != 15 || !ok || c.Gone() != 11 {
		t.Errorf("bought %d, %v, gone %d; want 15 and 11", trays, ok, c.Gone())
	}
}

// Broken and bought on one day are weighed together.
func TestBrokenOnTheDayOfBuying(t *testing.T) {
	if code(t, bought(t, "2025-01-10", -2), bought(t, "2025-01-10", 2)).BrokenBeyondBought() {
		t.Error("2 bought and 2 broken on one day are more gone than bought")
	}
}

// A blank count in any row of a code leaves what is owned unknown, on every day; what is
// written as gone is known still.
func TestOwnedIsUnknownWhereACountIsBlank(t *testing.T) {
	blank := bought(t, "2026-01-10", 0)
	blank.Count = records.Maybe[int]{}
	c := code(t, blank, bought(t, "2025-01-10", 3), bought(t, "2025-06-10", -5))
	day := booktest.Day(t, "2025-03-01")
	if c.Counted() || c.OwnedOn(day).Known || c.OwnedIn(day, day+100).Known || c.BrokenBeyondBought() {
		t.Errorf("owned %v, %v, beyond %v", c.OwnedOn(day), c.OwnedIn(day, day+100), c.BrokenBeyondBought())
	}
	if trays, ok := c.Bought(); ok || trays != 3 || c.Gone() != 5 {
		t.Errorf("bought %d, %v, gone %d", trays, ok, c.Gone())
	}
	if c := code(t, bought(t, "2025-01-10", 0)); !c.Counted() || c.OwnedOn(day) != records.Known(0) {
		t.Error("none owned is not told from unknown")
	}
}
