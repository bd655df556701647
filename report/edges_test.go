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
		known(t, l.Lot.Code, l.Allowance, 0, 0)
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

// Rule 18: plants that died are not usable, however many; they clear the batch.
func TestDeadPlantsAreNotUsable(t *testing.T) {
	b := newBook(t)
	b.sow("one", "2025-03-01", "orache", "x", "AIR", 1)
	b.out("one", "2025-04-10", 60, records.ToField, false)
	b.out("one", "2025-04-12", 25, records.Dead, true)
	one := b.report().Batch("one")
	if one.UsableHow != ByOut || one.EndHow != Written || one.End != day(t, "2025-04-12") {
		t.Errorf("usable %s, end %s %v", one.UsableHow, one.EndHow, one.End)
	}
	known(t, "usable", one.Usable, 60, 0)
}

// Rule 40: a re-sowing on this very day still makes the date; trays are told that
// come free within 14 days, today counted.
func TestWeekEnds(t *testing.T) {
	b := newBook(t)
	for _, code := range []string{"a", "b", "c", "d"} {
		b.leave(b.sow(code, "2025-01-10", "orache", "x", "AIR", 1), "2025-02-19", 60, 0) // 40 days
	}
	for code, planned := range map[string]string{"today": "2025-05-11", "past": "2025-05-10"} { // 40 days from 1 April, 31 March
		s := b.sow(code, "2025-03-25", "orache", "x", "AIR", 1)
		s.Planned, s.Wanted = day(t, planned), records.Known(90)
	}
	for code, planned := range map[string]string{"in": "2025-04-11", "out": "2025-04-12"} { // free on 14 and 15 April
		b.sow(code, "2025-03-24", "mibuna", "x", "WALL", 1).Planned = day(t, planned)
	}
	r := b.report("2025-04-01")
	short := weekOf(r, Short)
	if len(short) != 2 || short[0].Subject != "past" || short[0].ResowPossible || !short[1].ResowPossible {
		t.Errorf("short: %+v", short)
	}
	if free := weekOf(r, Freeing); len(free) != 1 || free[0].Date != day(t, "2025-04-14") || free[0].Value.Value != 1 {
		t.Errorf("coming free: %+v", free)
	}
}
