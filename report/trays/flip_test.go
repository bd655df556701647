package trays

import (
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// oneMore is a pair of which a second tray is asked, used 6 times a season.
func oneMore(gains ...float64) pairBook {
	pb := newPairBook(gains...)
	pb.heavy.Count = records.Known(1)
	return pb
}

// Where it turns, by OpenFormula (ODF 1.2 part 2): 72 uses at 6 a season are 12 seasons,
// and PMT(0.05;12;1000) is -112.825410020815 (testdata of package estimate), so that a
// gain of 1.2 x 6 a season pays up to 7.2 x 1000 / 112.8254. The life that pays 30 is
// what NPER(0.05;7.2;-30) gives in seasons, the whole ones paid at their ends and the rest
// at its own.
func TestFlipsByOpenFormula(t *testing.T) {
	pb := oneMore(2, 2, 2, 2, 2, 2)
	pb.heavy.Uses, pb.heavy.Lasts, pb.discount = records.Known(72.0), records.Known(99.0), records.Known(0.05)
	f := pb.decision(t).Buy.First
	pays := 7.2 * 1000 / 112.825410020815
	booktest.Known(t, "price", f.Price, pays, 1e-9)

	pb.heavy.Price = records.Known(pays) // turned round: the 12 seasons of the case
	buy := pb.decision(t).Buy
	booktest.Known(t, "life", buy.First.Life, 72, 1e-8)
	booktest.Known(t, "life in seasons", buy.First.LifeSeasons, 12, 1e-9)
	booktest.Known(t, "value", buy.First.Value, 0.1, 1e-9)
	booktest.Known(t, "life of the other", buy.First.OtherLife, 2, 1e-9)
	if buy.HalfLifePays != records.Known(false) {
		t.Error("at 6 of 12 seasons it pays")
	}
}

// What flips by hand, without interest: 30 uses at 1.2 pay 36. At a price of 24 a use must
// gain 0.8: THIN may last 2 / (0.8 - 0.2) uses, a plant may be worth nothing at all, 20
// uses are enough.
func TestFlipsByHand(t *testing.T) {
	pb := oneMore(2, 2, 2, 2, 2, 2)
	pb.heavy.Price = records.Known(24.0)
	buy := pb.decision(t).Buy
	booktest.Known(t, "price", buy.First.Price, 36, 1e-9)
	booktest.Known(t, "life of the other", buy.First.OtherLife, 2/0.6, 1e-9)
	booktest.Missing(t, "value", buy.First.Value)
	booktest.Known(t, "life", buy.First.Life, 20, 1e-9)
	booktest.Known(t, "in seasons of 6 uses", buy.First.LifeSeasons, 20.0/6, 1e-9)
	if buy.HalfLifePays != records.Known(false) || buy.N != 1 || buy.Last != (Flips{}) {
		t.Errorf("half of 36 is below 24, and one tray alone has no last: %+v", buy)
	}
	pb.heavy.Price = records.Known(17.0)
	if buy = pb.decision(t).Buy; buy.HalfLifePays != records.Known(true) {
		t.Errorf("half of 36 is above 17: %+v", buy)
	}
}

// The first and the last tray counted turn at different prices, where the last is used
// less: 6 trays a season of 2 dates, of 3 more on one.
func TestFewerAndNone(t *testing.T) {
	pb := oneMore(2, 2, 2, 2, 2, 2)
	pb.heavy.Lasts = records.Known(4.0) // used once a season: 4 uses
	b := pb.book(t)
	b.Sowings[0].Trays, b.Sowings[0].PlantsOut = 2, records.Known(164)
	buy := tell(b.Book()).Decisions[0].Buy
	// trays 2 and 3: 6 and 1 uses a season; 1.2 x 24 and 1.2 x 4
	booktest.Known(t, "none", buy.First.Price, 1.2*24, 1e-9)
	if buy.N != 1 {
		t.Fatalf("at 12 the third does not pay: %+v", buy)
	}
	b.Trays[0].Price = records.Known(4.0)
	buy = tell(b.Book()).Decisions[0].Buy
	booktest.Known(t, "none", buy.First.Price, 1.2*24, 1e-9)
	booktest.Known(t, "fewer", buy.Last.Price, 1.2*4, 1e-9)
	booktest.Known(t, "none, by life", buy.First.Life, 4/1.2, 1e-9)
	booktest.Known(t, "fewer, by life", buy.Last.LifeSeasons, 4/1.2, 1e-9)
	if buy.N != 2 || buy.First.Life != buy.Last.Life || buy.First.LifeSeasons == buy.Last.LifeSeasons {
		t.Errorf("%+v", buy)
	}
}

// What cannot flip the answer is not told.
func TestNothingFlips(t *testing.T) {
	cheaper := oneMore(1, 2, 1, 2)
	cheaper.heavy.Uses = records.Known(300.0)
	cheaper.heavy.Lasts = records.Known(100.0)
	booktest.Missing(t, "value, cheaper and better", cheaper.decision(t).Buy.First.Value)
	booktest.Missing(t, "value, no plants gained", oneMore(1, -1, 2, -2).decision(t).Buy.First.Value)
	worse := oneMore(-20, -21, -22, -23).decision(t).Buy // 2.15 lost a use, 1.00 saved
	booktest.Missing(t, "price, nothing gained", worse.First.Price)
	booktest.Missing(t, "life, nothing gained", worse.First.Life)
	booktest.Known(t, "life of the other, so short that it saves enough", worse.First.OtherLife, 2/(12.0/30+2.15), 1e-9)
	dear := oneMore(2, 2, 2, 2)
	dear.heavy.Price, dear.discount = records.Known(200.0), records.Known(0.05) // 4.8 a season for ever is worth 96
	booktest.Missing(t, "no life is long enough", dear.decision(t).Buy.First.Life)
	plants := oneMore(30, 30, 31, 30) // more than pays the tray, however long the other lasts
	booktest.Missing(t, "life of the other", plants.decision(t).Buy.First.OtherLife)
	free := oneMore(2, 2, 2, 2)
	free.thin.Price = records.Known(0.0)
	booktest.Missing(t, "life of what costs nothing", free.decision(t).Buy.First.OtherLife)
}

// A price at which the two codes would change places is none: at 0.05 a use HEAVY would
// have to cost less than THIN.
func TestFlipPriceBelowTheOthers(t *testing.T) {
	pb := oneMore(-9, -9.5, -10, -9.5) // 0.95 lost, 1.00 saved: 30 x 0.05 = 1.5 of 2
	buy := pb.decision(t).Buy
	if buy.N != 0 {
		t.Fatalf("%+v", buy)
	}
	booktest.Missing(t, "price", buy.First.Price)
	pb.thin.Price = records.Known(1.9)
	booktest.Missing(t, "at 0.95 saved nothing is gained", pb.decision(t).Buy.First.Price)
}
