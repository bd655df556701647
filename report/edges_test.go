package report

import (
	"testing"

	"traybook/records"
)

// Rule 18: 100 cells, 50 of 100 up, 8 of 10 fit: 40 counted; but 55 went out already.
func TestCountedIsNotBelowWhatWentOut(t *testing.T) {
	b := newBook(t)
	for _, code := range []string{"counted", "out"} {
		b.sow(code, "2025-03-01", "orache", "x", "AIR", 1)
		b.count(code, "2025-03-20", 50).Cells = records.Known(100)
		b.look(code, "2025-04-10", 10, 8)
	}
	b.out("out", "2025-04-12", 55, records.ToField, false)
	r := b.report()
	for code, want := range map[string]float64{"counted": 40, "out": 55} {
		if r.Batch(code).UsableHow != ByCount {
			t.Errorf("%s: usable %s", code, r.Batch(code).UsableHow)
		}
		known(t, code, r.Batch(code).Usable, want, 1e-12)
	}
}

// Rule 58: where a crop's other lots come up better than their packets say, the
// allowance is 0, not below.
func TestAllowanceIsNotBelowNothing(t *testing.T) {
	b := newBook(t)
	for _, code := range []string{"L1", "L2", "L3", "L4"} {
		b.lot(code, "orache", 0.80)
		b.sow(code, "2025-03-01", "orache", "x", "AIR", 1).Lot = code
		b.count(code, "2025-03-30", 90).Cells = records.Known(100)
	}
	for _, l := range b.report().Lots {
		known(t, l.Lot.Lot, l.Allowance, 0, 0)
	}
}

// Rule 50: the outdoor temperature of a day is the middle of its low and high, and
// of several rows of a day the last stands.
func TestColdOfADay(t *testing.T) {
	d := day(t, "2025-03-01")
	reading := func(low, high float64) records.HouseReading {
		return records.HouseReading{Date: d, OutLow: records.Known(low), OutHigh: records.Known(high)}
	}
	if got := outdoors([]records.HouseReading{reading(0, 2), reading(2, 10)})[d]; got != 9 {
		t.Errorf("%v degrees below 15, want 9", got)
	}
	if got := outdoors([]records.HouseReading{reading(20, 24)})[d]; got != 0 {
		t.Errorf("%v degrees below 15 on a warm day, want 0", got)
	}
}
