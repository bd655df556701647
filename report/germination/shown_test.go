package germination

import (
	"slices"
	"testing"

	"traybook/report/internal/booktest"
	"traybook/report/rate"
)

// How the share up went, by day of a count: each tray as last counted by then, over the
// cells of those counted by then. 40 of 100, then 40 + 90 of 200, then 80 + 90.
func TestUpBy(t *testing.T) {
	b := booktest.New(t)
	b.Sow("a", "2025-03-01", "orache", "x", "AIR", 2)
	b.CountTray("a", "2025-03-06", 1, 40)
	b.CountTray("a", "2025-03-08", 2, 90)
	b.CountTray("a", "2025-03-20", 1, 80)
	b.Sow("none", "2025-03-01", "orache", "x", "AIR", 2)
	f := figures(b, "2025-05-01")
	want := []Up{{b.Day("2025-03-06"), 0.4}, {b.Day("2025-03-08"), 0.65}, {b.Day("2025-03-20"), 0.85}}
	if got := slices.Collect(f.of(t, "a").UpBy()); !slices.Equal(got, want) {
		t.Errorf("got %v", got)
	}
	if got := slices.Collect(f.of(t, "none").UpBy()); got != nil {
		t.Errorf("of no count: %v", got)
	}
}

// The Monday of an ISO week, which may lie in the year before; of no week there is none.
func TestMondays(t *testing.T) {
	for week, want := range map[string]string{"2025-W10": "2025-03-03", "2026-W01": "2025-12-29", "2026-W53": "2026-12-28", "2021-W01": "2021-01-04"} {
		if got := (Week{Week: week}).Monday(); got != booktest.Day(t, want) || isoWeek(got) != week {
			t.Errorf("%s: %v, want %s", week, got, want)
		}
	}
	if got := (Week{}).Monday(); got.Known() {
		t.Errorf("of no week: %v", got)
	}
}

// The lot that a verdict rests on is told by its code, or that none was written.
func TestLotWord(t *testing.T) {
	for lot, want := range map[string]string{"L7": "L7", "": "none written"} {
		d := Difference{Verdict: rate.LowerByLot, Lot: lot}
		if d.LotWord() != want || d.Words() != "lower, by one lot: "+want {
			t.Errorf("%q: %q, %q", lot, d.LotWord(), d.Words())
		}
	}
}
