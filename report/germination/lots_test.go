package germination

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// lot finds the row of a lot.
func (f *Figures) lot(t *testing.T, code string) Lot {
	t.Helper()
	return booktest.Find(t, code, f.Lots, func(l Lot) bool { return l.Code == code })
}

// sowLot sows a lot of a crop, a batch of 100 cells on each of so many days, counted a
// little off the number that came up: off, 0, -off, off ...
func sowLot(b *booktest.Book, lot, crop string, up, off, batches int) {
	for i := range batches {
		code := fmt.Sprint(lot, i)
		sown := b.Day("2025-03-01") + records.Date(i)
		s := b.Sow(code, sown.String(), crop, "x"+lot, "AIR", 1)
		s.Lot = lot
		b.Count(code, (sown + 20).String(), up+off*(1-i%3))
	}
}

// Rule "Lots": what is allowed is the median gap of the three other lots and 0.05 more.
// Labels are 0.90, rates 0.88, 0.85, 0.60 and 0.80, gaps 0.02, 0.05, 0.30 and 0.10.
func TestLotsAgainstThePacket(t *testing.T) {
	b := booktest.New(t)
	for i, up := range []int{88, 85, 60, 80} {
		lot := fmt.Sprint("L", i)
		b.Lot(lot, "orache", 0.9)
		sowLot(b, lot, "orache", up, 1, 3)
	}
	f := figures(b, "2025-04-01")
	for lot, want := range map[string]struct {
		allowance float64
		below     Below
	}{
		"L0": {0.15, BelowNo}, "L1": {0.15, BelowNo}, "L2": {0.10, BelowYes},
		"L3": {0.10, BelowNo}, // 0.80 of 0.90 - 0.10: as much as asked for
	} {
		l := f.lot(t, lot)
		known(t, lot+" allowance", l.Allowance, want.allowance, 1e-12)
		if l.Below != want.below || l.Days != 3 {
			t.Errorf("%s: below %q of %d days, want %q; %v to %v", lot, l.Below, l.Days, want.below, l.SeedLow, l.SeedHigh)
		}
	}
	known(t, "gap", f.lot(t, "L2").Gap(), 0.3, 1e-12)
}

// With fewer than three other lots that can tell, 0.10 is allowed: a lot without a label,
// of another crop or never sown tells nothing. Lots that beat their packets are no reason
// to ask more than 0.05 of this one, lots that miss by much none to allow more than 0.20.
func TestAllowance(t *testing.T) {
	for name, c := range map[string]struct {
		label float64
		want  float64
	}{"beaten": {0.70, 0.05}, "met": {0.80, 0.05}, "missed": {0.88, 0.13}, "missed by much": {0.99, 0.20}} {
		b := booktest.New(t)
		for i := range 3 {
			lot := fmt.Sprint("L", i)
			b.Lot(lot, "orache", c.label)
			sowLot(b, lot, "orache", 80, 0, 2)
		}
		b.Lot("bare", "orache", 0.9).GermLabel = Num{}
		sowLot(b, "bare", "orache", 80, 0, 2)
		b.Lot("unsown", "orache", 0.8)
		b.Lot("other", "mibuna", 0.8)
		for _, l := range figures(b, "2025-04-10").Lots {
			want := 0.10
			if l.Code == "bare" || l.Code == "unsown" {
				want = c.want
			}
			known(t, name+" "+l.Code, l.Allowance, want, 1e-12)
		}
	}
}

// Below what is allowed, a lot is told from its packet only where its whole interval lies
// lower and its batches were sown on more than one day; else too few batches tell.
func TestBelowOrUnsure(t *testing.T) {
	for name, c := range map[string]struct {
		up, off, batches int
		oneDay, alone    bool
		want             Below
	}{
		"well below":       {60, 1, 6, false, false, BelowYes},
		"one day":          {60, 1, 6, true, false, BelowUnsure},
		"a little":         {79, 1, 2, false, false, BelowUnsure},
		"scattered":        {65, 30, 3, false, false, BelowUnsure},
		"no interval":      {60, 1, 2, false, true, BelowUnsure},
		"no interval, met": {80, 0, 2, false, true, BelowNo},
	} {
		b := booktest.New(t)
		b.Lot("L", "orache", 0.9)
		sowLot(b, "L", "orache", c.up, c.off, c.batches)
		for i := range b.Sowings {
			if c.oneDay {
				b.Sowings[i].Sown = b.Day("2025-03-01")
			}
		}
		if !c.alone {
			alike(b, "m", "mibuna", "x", 80, 81, 79, 80)
		}
		l := figures(b, "2025-04-10").lot(t, "L")
		if l.Below != c.want || l.SeedHigh.Known == c.alone {
			t.Errorf("%s: %q, want %q; %+v", name, l.Below, c.want, l.Rate)
		}
	}
}

// A lot without a label or without a count is not compared; of several seeds to a cell
// there is no rate: a full cell hides how many failed.
func TestLotsNotCompared(t *testing.T) {
	b := booktest.New(t)
	b.Lot("bare", "orache", 0.9).GermLabel = Num{}
	sowLot(b, "bare", "orache", 50, 1, 3)
	b.Lot("unsown", "orache", 0.9)
	b.Lot("three", "orache", 0.9)
	sowLot(b, "three", "orache", 50, 1, 3)
	b.Sowings[5].SeedsPerCell = 3
	b.Lot("thrice", "orache", 0.9)
	sowLot(b, "thrice", "orache", 50, 1, 3)
	for i := range 3 {
		b.Sowings[6+i].SeedsPerCell = 3
	}
	f := figures(b, "2025-04-10")
	known(t, "a rate without a label", f.lot(t, "bare").SeedRate, 0.5, 1e-12)
	for _, l := range f.Lots {
		if l.Below != "" || l.Gap().Known {
			t.Errorf("%s: %q", l.Code, l.Below)
		}
		if l.Code != "bare" {
			missing(t, l.Code, l.SeedRate)
			missing(t, l.Code, l.SeedHigh)
		}
	}
	if l := f.lot(t, "thrice"); l.N != 300 || l.X != 150 || l.Counted != 3 {
		t.Errorf("cells are counted still: %+v", l)
	}
}

// Beet and chard, by whatever name, are sown in clusters of several seeds and not
// compared; a crop that only sounds like it is.
func TestClustersAreNotCompared(t *testing.T) {
	for crop, cluster := range map[string]bool{"beet": true, "Beets": true, "beetroot": true, "chard": true, "Swiss chard": true, "beet (red)": true,
		"sugarbeetle": false, "orache": false} {
		b := booktest.New(t)
		b.Lot("L", crop, 0.9)
		sowLot(b, "L", crop, 50, 1, 3)
		l := figures(b, "2025-04-10").lot(t, "L")
		if l.Cluster != cluster || l.Allowance.Known == cluster || (l.Below == "") != cluster || l.Gap().Known == cluster {
			t.Errorf("%s: cluster %v, allowance %v, below %q", crop, l.Cluster, l.Allowance, l.Below)
		}
	}
}

// The legal minimum stands beside a lot where the setting says so.
func TestLegalMinimumBesideALot(t *testing.T) {
	b := booktest.New(t)
	b.Lot("L", "Lettuces", 0.9)
	missing(t, "elsewhere", figures(b, "2025-04-10").Lots[0].Minimum)
	b.Settings.LegalMinimum = true
	known(t, "in the United States (7 CFR 201.31: lettuce 80)", figures(b, "2025-04-10").Lots[0].Minimum, 0.80, 0)
}

// A lot's rate counts what ever came up, not what still lives; a batch not counted is
// sown from it, and no more.
func TestLotCountsWhatEverCameUp(t *testing.T) {
	b := booktest.New(t)
	b.Lot("L", "orache", 0.9)
	b.Sow("b", "2025-03-01", "orache", "x", "AIR", 1).Lot = "L"
	b.Count("b", "2025-03-20", 50).Lost = records.Known[int32](30)
	b.Sow("a", "2025-03-01", "orache", "x", "AIR", 2).Lot = "L"
	f := figures(b, "2025-04-10")
	l := f.lot(t, "L")
	known(t, "of the seed", l.SeedRate, 0.8, 1e-15)
	known(t, "of the group", f.Emergence[0].Share, 0.5, 1e-15)
	known(t, "seeds sown", l.SeedsSown, 300, 0)
	if l.Counted != 1 || len(l.Sown) != 2 || l.Sown[0] != "a" {
		t.Errorf("lot: %+v", l)
	}
}

// Seeds bought: as written, else by the packet's seeds a gram, else guessed from the
// trade table (lettuce 800 to 1,000 a gram: 900); of a crop it lacks unknown. Seeds sown
// are unknown where the cells of any batch are.
func TestSeedsBought(t *testing.T) {
	num := records.Known[float64]
	for name, c := range map[string]struct {
		lot     records.Lot
		want    Num
		guessed bool
	}{
		"written": {records.Lot{Crop: "lettuce", Seeds: num(500), Grams: num(1), SeedsPerGram: num(7)}, num(500), false},
		"packet":  {records.Lot{Crop: "lettuce", Grams: num(2), SeedsPerGram: num(700)}, num(1400), false},
		"guessed": {records.Lot{Crop: "lettuce", Grams: num(2)}, num(1800), true},
		"unknown": {records.Lot{Crop: "orache", Grams: num(2)}, Num{}, false},
		"nothing": {records.Lot{Crop: "lettuce", SeedsPerGram: num(700)}, Num{}, false},
	} {
		if got, guessed := SeedsBought(c.lot); got != c.want || guessed != c.guessed {
			t.Errorf("%s: %v, guessed %v", name, got, guessed)
		}
	}
	b := booktest.New(t)
	b.Lot("L", "orache", 0.9)
	b.Sow("a", "2025-03-01", "orache", "x", "AIR", 1).Lot = "L"
	b.Sow("b", "2025-03-01", "orache", "x", "NOWHERE", 1).Lot = "L"
	missing(t, "seeds sown", figures(b, "2025-04-10").Lots[0].SeedsSown)
}
