package germination

import (
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// Emergence of examples/tiny by hand: D 50 cells - 8 empty = 42; E 10 living, 30 lost.
func TestTinyCounts(t *testing.T) {
	f := tiny(t)
	for _, want := range []struct {
		batch                 string
		looked, emerged, ever float64
	}{{"A", 100, 95, 95}, {"B", 100, 90, 90}, {"C", 200, 196, 196}, {"D", 50, 42, 42}, {"E", 50, 10, 40}} {
		c := f.of(t, want.batch)
		known(t, want.batch+" looked at", c.Looked, want.looked, 0)
		known(t, want.batch+" emerged", c.Emerged, want.emerged, 0)
		known(t, want.batch+" ever up", c.EverUp, want.ever, 0)
	}
}

func TestTinyGermination(t *testing.T) {
	f := tiny(t)
	if len(f.Emergence) != 4 || f.Emergence[0].Variety != "Conefield" || f.Emergence[3].Kind != "solid-wall" {
		t.Fatalf("emergence: %+v", f.Emergence)
	}
	// B and E: 90 + 10 of 100 + 50. Two batches in one group, one in each other: df = 5 - 4 = 1, too few for an interval.
	e := f.Emergence[3]
	known(t, "lettuce in walls", e.Share, 100.0/150, 1e-15)
	known(t, "per seed", e.SeedRate, 100.0/150, 1e-15)
	missing(t, "low", e.Low)
	missing(t, "rho", e.Rho)
	if e.Batches != 2 || e.Trays != 3 {
		t.Errorf("batches %d, trays %v", e.Batches, e.Trays)
	}
	// A: N = 95, half at 48: between 28 on day 3 and 68 on day 5, at 3 + 2 x 20/40 = 4.
	// Mean: (28 x 3 + 40 x 5 + 27 x 8) / 95 = 500/95. E was up before its first count, day 7.
	if len(f.Timing) != 1 {
		t.Fatalf("timing: %+v", f.Timing)
	}
	known(t, "T50", f.Timing[0].T50, 4, 1e-12)
	known(t, "mean days", f.Timing[0].Mean, 500.0/95, 1e-12)
	known(t, "before day", f.of(t, "E").BeforeDay, 7, 0)
	if l := f.Losses[0]; len(f.Losses) != 1 || l.Cells != 30 || l.Batches != 1 || l.Cause != "dried out" || l.ByMonth[3] != 30 {
		t.Errorf("losses: %+v", f.Losses)
	}
	// All were sown on Monday 3 March 2025, in ISO week 10.
	if w := f.Weeks[1]; len(f.Weeks) != 2 || w.Week != "2025-W10" || w.X != 195 || w.N != 250 {
		t.Errorf("weeks: %+v", f.Weeks)
	}
}

func TestTinyLots(t *testing.T) {
	// L1: A 95, B 90, E 10 + 30 lost = 225 of 250. Too few batches for an interval; one other lot: 0.10 allowed, and the packet says 0.95.
	l := tiny(t).lot(t, "L1")
	known(t, "rate", l.SeedRate, 0.9, 1e-15)
	known(t, "allowance", l.Allowance, 0.10, 0)
	known(t, "minimum (7 CFR 201.31: lettuce 80)", l.Minimum, 0.80, 1e-15)
	known(t, "seeds sown", l.SeedsSown, 250, 0)
	known(t, "seeds bought", l.SeedsBought, 1000, 0)
	if l.Below != BelowNo || l.Counted != 3 {
		t.Errorf("below %q, counted %d", l.Below, l.Counted)
	}
}

// Losses add up by season, crop and cause, of every count that is used: two counts of a
// batch are one batch, and an unwritten cause is a row of its own.
func TestLosses(t *testing.T) {
	b := booktest.New(t)
	alike(b, "", "orache", "x", 90, 80)
	lose := func(batch, date string, cells int, cause string) {
		c := b.Count(batch, date, 50)
		c.Lost = records.Known(int32(cells))
		b.Say(c, records.Said{Cause: cause})
	}
	lose("a", "2025-03-25", 4, "mice")
	lose("a", "2025-04-02", 3, "mice")
	lose("b", "2025-04-03", 2, "mice")
	lose("b", "2025-04-04", 5, "")
	lose("b", "2025-04-05", 0, "flood")
	lose("b", "2025-04-06", 9, "slugs")
	lose("b", "2025-04-06", 1, "slugs") // the last row of a day stands
	want := []Loss{
		{Season: 2025, Crop: "orache", Cause: "", Cells: 5, Batches: 1},
		{Season: 2025, Crop: "orache", Cause: "mice", Cells: 9, Batches: 2},
		{Season: 2025, Crop: "orache", Cause: "slugs", Cells: 1, Batches: 1},
	}
	want[0].ByMonth[4], want[1].ByMonth[3], want[1].ByMonth[4], want[2].ByMonth[4] = 5, 4, 5, 1
	got := figures(b, "2025-05-01").Losses
	if len(got) != len(want) {
		t.Fatalf("got %+v", got)
	}
	for i := range want {
		if got[i] != want[i] {
			t.Errorf("got %+v, want %+v", got[i], want[i])
		}
	}
}
