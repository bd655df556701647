package batch

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// Rule "End of a batch": stays of 30, 40 and 50 days are written; one cleared with
// nothing usable after 5 says nothing. A batch of 50 days is open, of 51 taken to have
// stood 40, or up to its last count where that is later.
func TestEnds(t *testing.T) {
	b := booktest.New(t)
	for i, days := range []records.Date{30, 40, 50} {
		s := b.Sow(fmt.Sprint("w", i), "2025-01-01", "orache", "x", "AIR", 1)
		b.Leave(s, (s.Sown + days).String(), 50, 0)
	}
	b.Sow("failed", "2025-01-01", "orache", "x", "AIR", 1)
	b.Sow("open", "2025-03-12", "orache", "x", "AIR", 1)    // 50 days before 1 May
	b.Sow("assumed", "2025-03-11", "orache", "x", "AIR", 2) // 51
	b.Sow("late", "2025-03-10", "orache", "x", "AIR", 1)
	b.Sow("mibuna", "2025-03-06", "mibuna", "x", "AIR", 1) // no stay written, no trade figure: 56 days, to 1 May
	b.Sow("leek", "2025-02-25", "leek", "x", "AIR", 1)     // 65 days, and the trade table has up to 10 weeks
	traces := map[string]Trace{"failed": {Cleared: b.Day("2025-01-06"), Nothing: true}, "late": {Last: b.Day("2025-04-25")}}
	all := settled(b, "2025-05-01", traces)
	for _, want := range []struct {
		batch string
		how   EndHow
		end   string
	}{
		{"failed", Written, "2025-01-06"}, {"w1", Written, "2025-02-10"}, {"open", Open, "2025-05-01"}, {"assumed", Assumed, "2025-04-20"},
		{"late", Assumed, "2025-04-25"}, {"mibuna", Open, "2025-05-01"}, {"leek", Open, "2025-05-01"},
	} {
		got := all.Of(want.batch)
		if got.EndHow != want.how || got.End != b.Day(want.end) || got.Ended() != (want.how != Open) {
			t.Errorf("%s: %s %v, want %s %s", want.batch, got.EndHow, got.End, want.how, want.end)
		}
	}
	booktest.Near(t, "tray-days", all.Of("assumed").TrayDays, 80, 0)
	if all.Stays["orache"] != (Stay{40, 50}) {
		t.Errorf("stays: %v", all.Stays)
	}
	if all := settled(b, "2025-05-02", traces); all.Of("mibuna").EndHow != Assumed {
		t.Error("57 days without any stay written: not assumed")
	}
}

// Rule "Medians": stays of 30 and 41 days have their median at 35.5, rounded half up.
func TestMedianStayIsWholeDays(t *testing.T) {
	b := booktest.New(t)
	for code, out := range map[string]string{"a": "2025-01-31", "b": "2025-02-11"} {
		b.Leave(b.Sow(code, "2025-01-01", "orache", "x", "AIR", 1), out, 50, 0)
	}
	if got := settled(b, "2025-05-01", nil).Stays.Of("orache"); got != (Stay{36, 41}) {
		t.Errorf("got %v", got)
	}
}

// Rule "End of a batch": a crop without a written stay has that of the trade table,
// one that stands there not either 8 weeks.
func TestUsualStay(t *testing.T) {
	for crop, days := range map[string]int{"leek": 70, "agretti": 56} {
		if got := (Stays{}).Of(crop); got != (Stay{days, days}) {
			t.Errorf("%s: %v, want %d", crop, got, days)
		}
	}
}

// A batch set out before it was sown, a mistype, has stood no day, and one sown after
// today has stood none yet.
func TestNoDayIsNegative(t *testing.T) {
	b := booktest.New(t)
	b.Leave(b.Sow("back", "2025-03-01", "orache", "x", "AIR", 2), "2025-02-01", 5, 0)
	b.Sow("ahead", "2025-06-01", "orache", "x", "AIR", 2)
	all := settled(b, "2025-05-01", nil)
	for _, one := range all.List {
		booktest.Near(t, one.Code, one.TrayDays, 0, 0)
	}
	if all.Stays["orache"] != (Stay{0, 0}) || all.Of("ahead").End != b.Day("2025-06-01") {
		t.Errorf("stays %v, end %v", all.Stays, all.Of("ahead").End)
	}
	for _, s := range all.Standings(1, nil) {
		if s.End < s.Sown {
			t.Errorf("%s ends before it begins", s.Crop)
		}
	}
}
