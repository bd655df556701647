package sowing

import (
	"testing"

	"traybook/records"
)

// alike is n batches of a lot.
func alike(n int, g gap) []gap {
	var all []gap
	for range n {
		all = append(all, g)
	}
	return all
}

func with(lists ...[]gap) (all []gap) {
	for _, l := range lists {
		all = append(all, l...)
	}
	return all
}

// Each bound of "sow more", at it and beyond it.
func TestSowMore(t *testing.T) {
	fair := gap{"", 100, 100}
	for _, c := range []struct {
		name string
		gaps []gap
		want Advice
	}{
		{"3 batches short", alike(3, gap{"", 100, 90}), SowMore},
		{"2 batches", alike(2, gap{"", 100, 50}), ""},
		{"a third short", with(alike(2, gap{"", 100, 50}), alike(4, fair)), SowMore},
		{"fewer than a third", with(alike(2, gap{"", 100, 50}), alike(5, fair)), ""},
		{"short by a twentieth", alike(3, gap{"", 100, 95}), ""},
		{"short by more", alike(3, gap{"", 100, 94}), SowMore},
		{"a quarter of left over", with(alike(2, gap{"", 100, 50}), alike(2, gap{"", 100, 300})), ""},
		{"more than a quarter", with(alike(2, gap{"", 100, 49}), alike(2, gap{"", 100, 300})), SowMore},
		{"as wanted", alike(3, fair), ""},
	} {
		if got := balanceOf(t, c.gaps...); got.Advice != c.want || got.ByLot.Known {
			t.Errorf("%s: %+v, want %q", c.name, got, c.want)
		}
	}
}

// Short by one lot alone is no reason to sow more: the rest must say so too, with three
// batches or more. Batches without a lot are one, where any has a lot.
func TestShortByOneLot(t *testing.T) {
	fair, bad := gap{"G", 100, 100}, gap{"A", 100, 60}
	for _, c := range []struct {
		name  string
		gaps  []gap
		want  Advice
		byLot string
	}{
		{"one bad lot", with(alike(2, bad), alike(4, fair)), "", "A"},
		{"two bad lots", with(alike(2, bad), alike(2, gap{"B", 100, 70}), alike(2, fair)), SowMore, ""},
		{"too few without it", with(alike(2, bad), alike(2, gap{"B", 100, 70})), "", "A"},
		{"most short, not first", with(alike(2, gap{"A", 100, 99}), alike(2, gap{"B", 100, 50}), alike(2, fair)), "", "B"},
		{"no lot is one", with(alike(2, gap{"", 100, 60}), alike(4, fair)), "", ""},
		{"equal ones by bytes", with(alike(3, gap{"B", 100, 80}), alike(2, gap{"A", 100, 70})), SowMore, ""},
	} {
		got := balanceOf(t, c.gaps...)
		if got.Advice != c.want || got.ByLot.Known != (c.want == "") || got.ByLot.Value != c.byLot {
			t.Errorf("%s: %+v, want %q, but for %q", c.name, got, c.want, c.byLot)
		}
	}
}

// "Sow less": 3 batches or more, none short, more left over than 0.3 of wanted.
func TestSowLess(t *testing.T) {
	for _, c := range []struct {
		name string
		gaps []gap
		want Advice
	}{
		{"three tenths", alike(3, gap{"", 100, 130}), ""},
		{"more", alike(3, gap{"", 100, 131}), SowLess},
		{"two batches", alike(2, gap{"", 100, 200}), ""},
		{"one short", with(alike(3, gap{"", 100, 200}), alike(1, gap{"", 100, 99})), ""},
		{"none wanted", alike(3, gap{"", 0, 10}), SowLess},
		{"nothing at all", alike(3, gap{"", 0, 0}), ""},
	} {
		if got := balanceOf(t, c.gaps...); got.Advice != c.want {
			t.Errorf("%s: %+v, want %q", c.name, got, c.want)
		}
	}
}

// What being sure leaves over, where that is more than 0.3, is no reason to sow less; the
// crop's largest counts.
func TestBeingSureIsNotTooMuch(t *testing.T) {
	rows := []Row{{Target: records.Known(100), LeftOver: Num{Value: 20, Known: true}}, {Target: records.Known(100), LeftOver: Num{Value: 50, Known: true}},
		{Target: records.Known(100)}, {Target: records.Known(10), LeftOver: Num{Value: 1, Known: true}}}
	for i := range rows {
		rows[i].Crop = "orache"
	}
	sure := sureLeaves(append(rows, Row{Group: rows[3].Group}))["orache"]
	near(t, "share", sure, 0.5, 1e-15)
	b := Balance{Batches: 3, Sums: Sums{Wanted: 300, Usable: 450, LeftOver: 150}}
	if b.advise(nil, sure); b.Advice != "" {
		t.Errorf("as being sure costs: %q", b.Advice)
	}
	b.LeftOver = 151
	if b.advise(nil, sure); b.Advice != SowLess {
		t.Errorf("more than being sure costs: %q", b.Advice)
	}
}

// The table's own figure is meant: stray sowings that leave a third over are no reason to
// sow less.
func TestStraySowingsLeaveMuchOver(t *testing.T) {
	b := orache(t)
	for i, usable := range []int{65, 95, 80} {
		b.Leave(&b.Sowings[6+i], "2025-04-10", usable, 0)
	}
	want(b, 60, 60, 60)
	f := figures(t, b.Book())
	r := f.row(t, "orache", "red", "air-pruning")
	if got := f.Balance[0]; !(r.LeftOver.Value > 0.4*60) || !(got.LeftOver > 0.3*got.Wanted) || got.Advice != "" {
		t.Errorf("being sure leaves %v over; %+v", r.LeftOver, got)
	}
}
