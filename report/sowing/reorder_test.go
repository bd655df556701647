package sowing

import (
	"testing"

	"traybook/records"
	"traybook/report/germination"
	"traybook/report/internal/booktest"
)

// hand is a lot of orache with seeds bought and sown; below 0 is unknown.
func hand(code, variety string, bought, sown float64) germination.Lot {
	known := func(x float64) Num { return Num{Value: max(x, 0), Known: x >= 0} }
	return germination.Lot{Lot: records.Lot{Code: code, Crop: "orache", Variety: variety}, SeedsBought: known(bought), SeedsSown: known(sown)}
}

// needs is a wish of orache; below 0 is unknown.
func needs(variety string, seeds float64) Wish {
	return Wish{Wish: records.Wish{Crop: "orache", Variety: variety}, Seeds: Num{Value: max(seeds, 0), Known: seeds >= 0}}
}

// buys is what is bought of a variety; missing is -1.
func buys(t *testing.T, orders []Order, variety string) float64 {
	t.Helper()
	o := booktest.Find(t, variety, orders, func(o Order) bool { return o.Variety == variety })
	if !o.Buy.Known {
		return -1
	}
	return o.Buy.Value
}

// Bought less sown, over all lots of a variety; what is missing is bought, never less
// than nothing.
func TestReorder(t *testing.T) {
	lots := []germination.Lot{hand("R1", "red", 500, 420), hand("R2", "red", 300, 0), hand("G1", "green", 100, 250), hand("Y1", "yellow", 90, 0)}
	got := Reorder([]Wish{needs("red", 300), needs("red", 200.5), needs("green", 40), needs("new", 70)}, lots)
	for variety, want := range map[string]float64{"red": 120.5, "green": 40, "new": 70, "yellow": 0} {
		if buy := buys(t, got, variety); buy != want {
			t.Errorf("%s: buy %v, want %v", variety, buy, want)
		}
	}
	var order string
	for _, o := range got {
		order += o.Variety + " "
	}
	if order != "green new red yellow " {
		t.Errorf("order: %s", order)
	}
	red, green, fresh := got[2], got[0], got[1]
	known(t, "in hand", red.Left, 380, 0)
	known(t, "needed", red.Needed, 500.5, 0)
	if red.Wishes != 2 || len(red.Lots) != 2 || red.Lots[0].Lot != "R1" || red.NoLot || red.Lots[0].Oversown {
		t.Errorf("red: %+v", red)
	}
	known(t, "of R1", red.Lots[0].Left, 80, 0)
	known(t, "more sown than bought", green.Left, 0, 0)
	if !green.Lots[0].Oversown || !fresh.NoLot {
		t.Errorf("green %+v, new %+v", green, fresh)
	}
	missing(t, "in hand without a lot", fresh.Left)
}

// A wish without a variety draws on what those with one leave, of any variety.
func TestReorderOfAnyVariety(t *testing.T) {
	lots := []germination.Lot{hand("R1", "red", 500, 0), hand("G1", "green", 100, 0)}
	got := Reorder([]Wish{needs("", 250), needs("red", 400), needs("green", 150)}, lots)
	for variety, want := range map[string]float64{"red": 0, "green": 50, "": 150} {
		if buy := buys(t, got, variety); buy != want {
			t.Errorf("%q: buy %v, want %v", variety, buy, want)
		}
	}
	if got[0].Variety != "" || got[0].NoLot || len(got[0].Lots) != 0 {
		t.Errorf("first: %+v", got[0])
	}
	known(t, "left by the others", got[0].Left, 100, 0)
	got = Reorder([]Wish{needs("", 250), needs("red", 400)}, append(lots, hand("B1", "", 30, 0)))
	if buy := buys(t, got, ""); buy != 20 { // 100 of red, 100 of green, 30 of no variety
		t.Errorf("with a lot of no variety: buy %v", buy)
	}
	alone := Reorder([]Wish{needs("", 250)}, nil)
	if !alone[0].NoLot || alone[0].Buy.Value != 250 {
		t.Errorf("no lot at all: %+v", alone)
	}
}

// What nobody knows stays unknown: seed in hand where a lot's is, unless the others are
// enough; what to buy where a need is.
func TestReorderOfUnknown(t *testing.T) {
	lots := []germination.Lot{hand("R1", "red", 500, 0), hand("R2", "red", -1, 100), hand("G1", "green", 500, -1), hand("Y1", "yellow", 100, 0)}
	got := Reorder([]Wish{needs("red", 450), needs("green", 450), needs("yellow", -1), needs("yellow", 10), needs("", 20)}, lots)
	for variety, want := range map[string]float64{"red": 0, "green": -1, "yellow": -1, "": 0} { // 50 of R1 are left for sure
		if buy := buys(t, got, variety); buy != want {
			t.Errorf("%q: buy %v, want %v", variety, buy, want)
		}
	}
	for _, o := range got {
		if o.Variety != "yellow" {
			if o.Left != (Num{}) {
				t.Errorf("in hand of %q: %v", o.Variety, o.Left)
			}
		} else {
			known(t, "in hand", o.Left, 100, 0)
			missing(t, "needed", o.Needed)
		}
	}
	got = Reorder([]Wish{needs("red", 450), needs("", 60)}, lots[:2])
	if buys(t, got, "") != -1 {
		t.Errorf("what an unknown lot leaves: %+v", got[0])
	}
	got = Reorder([]Wish{needs("yellow", -1), needs("", 20)}, lots[3:])
	if buys(t, got, "") != -1 {
		t.Errorf("what an unknown need leaves: %+v", got[0])
	}
	got = Reorder([]Wish{needs("new", -1), needs("", 20)}, nil)
	if buys(t, got, "") != 20 {
		t.Errorf("no seed leaves none: %+v", got[0])
	}
}

// Seeds bought by weight at the trade table's number a gram are marked.
func TestReorderGuessed(t *testing.T) {
	lot := hand("R1", "red", 500, 0)
	lot.SeedsGuessed = true
	if got := Reorder(nil, []germination.Lot{lot}); len(got) != 1 || !got[0].Lots[0].Guessed || got[0].Buy.Value != 0 {
		t.Errorf("got %+v", got)
	}
}
