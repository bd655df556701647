package germination

import (
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// Rule "Timing": two trays, one first counted later; before its first count it has
// none. 20 on day 4, 20 + 50 on day 6, 30 + 50 on day 8: N = 80, half at 40.5, 4 + 2 x
// 20.5/50 = 4.82. A tray whose cells change is left out; counts of the day of sowing
// are dropped before that is looked at.
func TestTimingByTrays(t *testing.T) {
	b := booktest.New(t)
	b.Sow("two", "2025-03-01", "orache", "x", "AIR", 4)
	b.CountTray("two", "2025-03-05", 1, 20)
	b.CountTray("two", "2025-03-09", 1, 30)
	b.CountTray("two", "2025-03-01", 1, 0).Cells = records.Known[int32](50)
	b.CountTray("two", "2025-03-07", 2, 50)
	b.CountTray("two", "2025-03-05", 3, 90).Cells = records.Known[int32](100)
	b.CountTray("two", "2025-03-07", 3, 90).Cells = records.Known[int32](95)
	b.CountTray("two", "2025-03-01", 4, 30)
	f := figures(b, "2025-03-20")
	known(t, "T50", f.of(t, "two").T50, 4.82, 1e-12)
	known(t, "mean", f.of(t, "two").MeanDays, (20*4+50*6+10*8)/80.0, 1e-12)
}

// A group has the median, earliest and latest of its batches with a T50; those up
// before their first count are told beside, with the latest of those days; a group of
// such alone has no row. 20 then 80 of N = 80 is half up at 40.5: a third of the way.
func TestTimingOfAGroup(t *testing.T) {
	b := booktest.New(t)
	twice := func(code, crop, first, second string, a, z int) {
		b.Leave(b.Sow(code, "2025-03-01", crop, "x", "AIR", 1), "2025-04-10", 80, 0)
		b.Count(code, first, a)
		b.Count(code, second, z)
	}
	twice("a", "orache", "2025-03-05", "2025-03-11", 20, 80) // 4 + 6 x 20.5/60 = 6.05
	twice("b", "orache", "2025-03-07", "2025-03-13", 20, 80) // 8.05
	twice("c", "orache", "2025-03-10", "2025-03-16", 20, 80) // 11.05; last count on day 15, early before 16.1
	twice("d", "orache", "2025-03-06", "2025-03-21", 60, 80) // more than half on day 5
	twice("e", "orache", "2025-03-04", "2025-03-21", 60, 80) // on day 3
	twice("f", "orache", "2025-03-04", "2025-03-21", 0, 0)   // nothing came up
	twice("g", "mibuna", "2025-03-04", "2025-03-21", 60, 80)
	f := figures(b, "2025-05-01")
	if len(f.Timing) != 1 || f.Timing[0].Batches != 3 || f.Timing[0].Before != 2 || f.Timing[0].CountedEarly != 3 {
		t.Fatalf("timing: %+v", f.Timing)
	}
	row := f.Timing[0]
	known(t, "median", row.T50, 8.05, 1e-12)
	known(t, "earliest", row.Earliest, 6.05, 1e-12)
	known(t, "latest", row.Latest, 11.05, 1e-12)
	known(t, "mean days", row.Mean, (20*6+60*12)/80.0, 1e-12)
	known(t, "before", row.BeforeDay, 5, 0)
	missing(t, "T50 of nothing", f.of(t, "f").T50)
	missing(t, "before of nothing", f.of(t, "f").BeforeDay)
}

// A count on the day of sowing says nothing of time, whatever it holds: with one other
// count there is no T50, with two it is theirs, and nothing was up before day 0.
func TestCountsOfTheSowingDayAreDropped(t *testing.T) {
	b := booktest.New(t)
	for _, code := range []string{"once", "twice"} {
		b.Sow(code, "2025-03-01", "orache", "x", "AIR", 1)
		c := b.Count(code, "2025-03-01", 60)
		c.Lost = records.Known[int32](30)
		b.Count(code, "2025-03-07", 20)
	}
	b.Count("twice", "2025-03-09", 80)
	f := figures(b, "2025-05-01")
	missing(t, "T50 of one later count", f.of(t, "once").T50)
	missing(t, "before day", f.of(t, "once").BeforeDay)
	known(t, "T50", f.of(t, "twice").T50, 6+2*20.5/60, 1e-12) // 20 on day 6, 80 on day 8: half at 40.5
	known(t, "mean", f.of(t, "twice").MeanDays, (20*6+60*8)/80.0, 1e-12)
}

// One count tells no time, nor do two rows of one day.
func TestOneDayTellsNoTime(t *testing.T) {
	b := booktest.New(t)
	b.Sow("once", "2025-03-01", "orache", "x", "AIR", 2)
	b.CountTray("once", "2025-03-05", 1, 20)
	b.CountTray("once", "2025-03-05", 2, 80)
	once := figures(b, "2025-05-01").of(t, "once")
	missing(t, "T50", once.T50)
	missing(t, "before", once.BeforeDay)
}

// A batch that was not sown from seed never came up.
func TestNoTimingOfPlantsMoved(t *testing.T) {
	b := booktest.New(t)
	b.Sow("moved", "2025-03-01", "orache", "x", "AIR", 1).From = "elsewhere"
	b.Count("moved", "2025-03-05", 20)
	b.Count("moved", "2025-03-11", 80)
	f := figures(b, "2025-05-01")
	missing(t, "T50", f.of(t, "moved").T50)
	if len(f.Timing)+len(f.Emergence) > 0 {
		t.Errorf("timing %+v, emergence %+v", f.Timing, f.Emergence)
	}
}
