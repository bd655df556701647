package batch

import (
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// stay sows a batch that left its chamber after so many days; below 0: no one wrote when.
func stay(b *booktest.Book, code, sown, crop, chamber string, days int) {
	s := b.Sow(code, sown, crop, "x", "AIR", 1)
	s.Chamber = chamber
	if days >= 0 {
		s.ChamberOut = booktest.Day(b, sown) + records.Date(days)
	}
}

// Rule "Chamber stays": a batch in a named chamber of which no one wrote when it left
// stays as its crop does, else as long as others in that chamber, else 3 days. Stays with
// or without a chamber's name are written ones; 2 and 5 days are 3.5, rounded half up.
func TestAssumedChamberStays(t *testing.T) {
	b := booktest.New(t)
	stay(b, "o1", "2024-03-01", "orache", "box", 2)
	stay(b, "o2", "2025-03-01", "orache", "", 5)
	stay(b, "m1", "2025-03-01", "mibuna", "box", 8)
	stay(b, "m2", "2025-03-01", "mibuna", "box", 8)
	stay(b, "crop", "2025-04-01", "orache", "shed", -1)
	stay(b, "chamber", "2025-04-01", "agretti", "box", -1) // 2, 8, 8: 8
	stay(b, "usual", "2025-04-01", "agretti", "shed", -1)
	stay(b, "none", "2025-04-01", "agretti", "", -1)
	all := settled(b, "2025-06-20", nil)
	for code, want := range map[string]string{"o2": "2025-03-06", "crop": "2025-04-05", "chamber": "2025-04-09", "usual": "2025-04-04"} {
		one := all.Of(code)
		if one.ChamberUntil != b.Day(want) || one.ChamberAssumed != (code != "o2") {
			t.Errorf("%s: until %v, assumed %v; want %s", code, one.ChamberUntil, one.ChamberAssumed, want)
		}
	}
	if one := all.Of("none"); one.ChamberUntil.Known() || one.ChamberAssumed || one.InChamber(one.Sown) {
		t.Errorf("stood in no chamber: %v", one.ChamberUntil)
	}
	if one := all.Of("crop"); !one.InChamber(b.Day("2025-04-01")) || !one.InChamber(b.Day("2025-04-04")) || one.InChamber(b.Day("2025-04-05")) || one.InChamber(b.Day("2025-03-31")) {
		t.Error("a stay runs from sown until the day before it left")
	}
}

// An assumed stay ends with the batch; that of an open one runs past today, which the
// room it takes does not. A written one stands as written, its room ends with the batch.
func TestChamberStaysAreCut(t *testing.T) {
	b := booktest.New(t)
	stay(b, "o1", "2025-01-01", "orache", "box", 10)
	stay(b, "gone", "2025-03-01", "orache", "box", -1)
	b.Leave(&b.Sowings[1], "2025-03-05", 50, 0)
	stay(b, "open", "2025-03-20", "orache", "box", -1)
	stay(b, "today", "2025-03-24", "orache", "box", -1)
	stay(b, "late", "2025-03-01", "mibuna", "box", 30)
	b.Leave(&b.Sowings[4], "2025-03-10", 50, 0)
	stay(b, "back", "2025-03-20", "orache", "box", -1) // set out before it was sown, a mistype
	b.Leave(&b.Sowings[5], "2025-03-02", 50, 0)
	all := settled(b, "2025-03-24", nil)
	until, rooms := map[string]string{}, map[string]string{}
	for i, s := range all.Standings(1, nil) {
		until[all.List[i].Code], rooms[all.List[i].Code] = all.List[i].ChamberUntil.String(), s.ChamberOut.String()
	}
	for code, want := range map[string][2]string{
		"gone": {"2025-03-05", "2025-03-05"}, "open": {"2025-03-30", "2025-03-24"}, "today": {"2025-04-03", "2025-03-24"},
		"late": {"2025-03-31", "2025-03-10"}, "back": {"2025-03-20", "2025-03-20"},
	} {
		if got := [2]string{until[code], rooms[code]}; got != want {
			t.Errorf("%s: %v, want %v", code, got, want)
		}
	}
}

// A chamber_out before the sowing, a mistype, is a stay of no day.
func TestNoChamberStayIsNegative(t *testing.T) {
	b := booktest.New(t)
	stay(b, "back", "2025-03-10", "orache", "box", 0)
	b.Sowings[0].ChamberOut = b.Day("2025-02-10")
	stay(b, "next", "2025-04-10", "orache", "box", -1)
	if one := settled(b, "2025-04-12", nil).Of("next"); one.ChamberUntil != one.Sown || one.InChamber(one.Sown) {
		t.Errorf("until %v", one.ChamberUntil)
	}
}
