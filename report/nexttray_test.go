package report

import (
	"fmt"
	"testing"

	"traybook/records"
)

// Buying by hand. 4 trays of HEAVY or THIN are wanted on each of six dates, 2 of HEAVY
// are owned; trays 3 and 4 each stand in use 6 times a season. At a gain of 1.2
// a use and 30 uses of life each is worth 36 - 12 = 24.
func TestNextTrayByHand(t *testing.T) {
	r := newPairBook(1, 2, 4, 0, 3, 2).report(t)
	if len(r.NextTray) != 0 || r.Payback[0].Buy.N != 0 || fmt.Sprint(r.Payback[0].Uses) != "[6 6]" {
		t.Fatalf("2 are wanted, 2 owned: %+v", r.Payback[0].Buy)
	}
	for _, b := range r.Batches {
		b.Trays = 2
		b.CellsSown = records.Known(200)
		b.Usable.Value *= 2
	}
	r = moneyOf(r.Book, r.Batches...)
	if len(r.NextTray) != 2 {
		t.Fatalf("%+v", r.NextTray)
	}
	for i, n := range r.NextTray {
		if n.Nth != 3+i || n.Owned != 2 || n.Uses != 6 {
			t.Errorf("%+v", n)
		}
		known(t, "worth", n.WorthToday, 24, 1e-9)
		known(t, "payback in seasons", n.PaybackSeasons, 10.0/6, 1e-9)
	}
	if buy := r.Payback[0].Buy; buy.N != 2 || buy.Low != 2 || buy.High != 2 || buy.PeakInUse != 4 {
		t.Errorf("%+v", buy)
	}
}

// Where only the high end pays, only the high end buys.
func TestBuyAtTheEnds(t *testing.T) {
	pb := newPairBook(1, 2, 4, 0, 3, 2) // gain 1.2, from 1.05 to 1.35
	pb.heavy.Price, pb.heavy.Count = records.Known(37.0), records.Known(1)
	r := pb.report(t)
	buy := r.Payback[0].Buy
	if buy.N != 0 || buy.Low != 0 || buy.High != 1 || buy.Owned != 1 {
		t.Errorf("%+v", buy)
	}
	n := r.NextTray[0]
	if n.Pays.Value || n.PaysLow.Value || !n.PaysHigh.Value || !n.Pays.Known {
		t.Errorf("%+v", n)
	}
}

// No gain: uses alone (rule 66).
func TestNextTrayWithoutAGain(t *testing.T) {
	pb := newPairBook(1, 2, 3)
	pb.heavy.Count = records.Known(1)
	r := pb.report(t)
	if n := r.NextTray[0]; n.Uses != 3 || n.WorthToday.Known || n.Pays.Known || r.Payback[0].Buy != nil {
		t.Errorf("%+v", n)
	}
}

// Parts of a tray make up whole ones, exactly: 0.1 + 0.2 + 0.7 is one tray.
func TestPartsOfATray(t *testing.T) {
	pb := newPairBook()
	var batches []*Batch
	for i, part := range []float64{0.1, 0.2, 0.7} {
		batches = append(batches, newBatch(t, fmt.Sprint(i), "2025-03-01", "2025-04-01", "HEAVY", part, 100, 0))
	}
	r := moneyOf(&records.Book{Trays: []records.Purchase{pb.heavy, pb.thin}}, batches...)
	if got := fmt.Sprint(r.Payback[0].Uses); got != "[1]" {
		t.Error(got)
	}
}

// Trial sizes against R 4.2.2, power.t.test(delta = d, sd = 0.0577350269189626,
// power = .8, type = "paired")$n for d of 0.02, 0.05, 0.10: Guenther's sum, rounded
// up, lies within one sowing of it.
func TestTrialSizes(t *testing.T) {
	pb := newPairBook(-5, 5, -5, 5) // sd 5 x 2 / sqrt(3) = 5.7735 of 100
	r := pb.report(t)
	known(t, "s", r.Trial[0].S, 0.0577350269189626, 1e-12)
	for i, n := range []float64{67.35332, 12.52053, 4.848452} {
		near(t, "sowings", float64(r.Trial[i].Sowings.Value), n, 1)
	}
}
