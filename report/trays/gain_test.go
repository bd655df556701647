package trays

import (
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// The mix that larger cells take is a cost of each use: 20 ml more in 100 cells at what
// 40 ml of mix in the book cost. 12 sowings of 100 cells of 30 or 10 ml are 24 litres;
// 48 of mix make a litre 2, and 2 litres more a use 4.
func TestExtraMix(t *testing.T) {
	pb := newPairBook(1, 2, 4, 0, 3, 2)
	pb.heavy.CellML, pb.thin.CellML = records.Known(30.0), records.Known(10.0)
	b := pb.book(t)
	b.Cost("2025-01-01", records.Mix, 48)
	f := tell(b.Book())
	back := f.Payback[0]
	booktest.Known(t, "a use", back.MixAUse, 4, 1e-9)
	booktest.Known(t, "gain: 1.00 + 0.20 - 4.00", back.Gain, -2.8, 1e-9)
	booktest.Near(t, "the parts", back.GainTray.Value+back.GainPlants.Value+back.GainMix.Value, back.Gain.Value, 1e-12)
	booktest.Known(t, "break-even: 12 / 30 - 2 / 2 + 4, at 0.1", back.BreakEvenPlants, 34, 1e-8)
	if back.MixLeftOut {
		t.Error("the mix is counted, and said not to be")
	}
	// where one is owned, the second pays at a plant of (12 / 30 - 1 + 4) / 2, and where
	// THIN lasts 2 / (12 / 30 - 0.2 + 4) uses
	b.Trays[0].Count = records.Known(1)
	flips := tell(b.Book()).Decisions[0].Buy.First
	booktest.Known(t, "a plant", flips.Value, 1.7, 1e-8)
	booktest.Known(t, "life of the other", flips.OtherLife, 2/4.2, 1e-8)
}

// What a cell holds, or what mix costs, is not written: the term is left out, and said.
func TestMixLeftOut(t *testing.T) {
	for name, change := range map[string]func(*pairBook, *booktest.Book){
		"volume of the tray":  func(_ *pairBook, b *booktest.Book) { b.Trays[0].CellML = Num{} },
		"volume of the other": func(_ *pairBook, b *booktest.Book) { b.Trays[1].CellML = Num{} },
		"price of mix":        func(_ *pairBook, b *booktest.Book) { b.Costs = nil },
	} {
		pb := newPairBook(1, 2, 4, 0, 3, 2)
		pb.heavy.CellML, pb.thin.CellML = records.Known(30.0), records.Known(10.0)
		b := pb.book(t)
		b.Cost("2025-01-01", records.Mix, 48)
		change(&pb, b)
		back := tell(b.Book()).Payback[0]
		booktest.Known(t, name+": gain", back.Gain, 1.2, 1e-9)
		booktest.Missing(t, name+": a use", back.MixAUse)
		if !back.MixLeftOut || back.GainMix.Known {
			t.Errorf("%s: %+v", name, back)
		}
	}
}

// Cells of the same size take the same mix: counted, and 0.
func TestNoExtraMix(t *testing.T) {
	pb := newPairBook(1, 2, 4, 0, 3, 2)
	pb.heavy.CellML, pb.thin.CellML = records.Known(30.0), records.Known(30.0)
	b := pb.book(t)
	b.Cost("2025-01-01", records.Mix, 48)
	back := tell(b.Book()).Payback[0]
	booktest.Known(t, "a use", back.MixAUse, 0, 0)
	if back.MixLeftOut {
		t.Error("0 is a figure")
	}
}
