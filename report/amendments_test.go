package report

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"traybook/records"
	"traybook/report/estimate"
)

// Rule 2: half a tray of 25 cells is 13, rounded half up; trays are filled in turn
// and the last holds what is left.
func TestCellsSown(t *testing.T) {
	b := newBook(t)
	b.tray("ODD", "solid-wall", 25)
	b.sow("half", "2025-03-01", "orache", "x", "ODD", 0.5)
	b.sow("left", "2025-03-01", "orache", "x", "ODD", 2.4)
	b.sow("written", "2025-03-01", "orache", "x", "ODD", 3).Cells = records.Known(60)
	b.sow("strange", "2025-03-01", "orache", "x", "NOWHERE", 2)
	b.sow("known", "2025-03-01", "orache", "x", "NOWHERE", 2).Cells = records.Known(40)
	r := b.report()
	for code, want := range map[string]int{"half": 13, "left": 60, "written": 60, "known": 40} {
		if got := r.Batch(code).CellsSown; got != records.Known(want) {
			t.Errorf("%s: got %v, want %d", code, got, want)
		}
	}
	if s := r.Batch("strange"); s.CellsSown.Known || s.TrayCells.Known || s.Kind != "" {
		t.Errorf("unknown code: %+v", s)
	}
	for k, want := range []int{0, 25, 25, 10, 0} {
		if got := r.Batch("left").cellsOfTray(k); got != want {
			t.Errorf("tray %d: got %d, want %d", k, got, want)
		}
	}
}

// Rules 4 and 61: stays of 30, 40 and 50 days are written; one cleared with nothing
// usable after 5 says nothing. A batch of 50 days is open, of 51 taken to have stood 40,
// or up to its last count where that is later.
func TestEnds(t *testing.T) {
	b := newBook(t)
	for i, days := range []records.Date{30, 40, 50} {
		s := b.sow(fmt.Sprint("w", i), "2025-01-01", "orache", "x", "AIR", 1)
		b.leave(s, (s.Sown + days).String(), 50, 0)
	}
	b.sow("failed", "2025-01-01", "orache", "x", "AIR", 1)
	b.out("failed", "2025-01-06", 0, records.Dead, true)
	b.sow("open", "2025-03-12", "orache", "x", "AIR", 1)    // 50 days before 1 May
	b.sow("assumed", "2025-03-11", "orache", "x", "AIR", 2) // 51
	b.sow("late", "2025-03-10", "orache", "x", "AIR", 1)
	b.count("late", "2025-04-25", 60)
	b.sow("mibuna", "2025-03-06", "mibuna", "x", "AIR", 1) // no stay written, no trade figure: 56 days, to 1 May
	b.sow("leek", "2025-02-25", "leek", "x", "AIR", 1)     // 65 days, and the trade table has up to 10 weeks
	r := b.report("2025-05-01")
	for _, want := range []struct {
		batch string
		how   EndHow
		end   string
	}{
		{"failed", Written, "2025-01-06"}, {"open", Open, "2025-05-01"}, {"assumed", Assumed, "2025-04-20"},
		{"late", Assumed, "2025-04-25"}, {"mibuna", Open, "2025-05-01"}, {"leek", Open, "2025-05-01"},
	} {
		if got := r.Batch(want.batch); got.EndHow != want.how || got.End != day(t, want.end) {
			t.Errorf("%s: %s %v, want %s %s", want.batch, got.EndHow, got.End, want.how, want.end)
		}
	}
	near(t, "tray-days", r.Batch("assumed").TrayDays, 80, 0)
	if r := b.report("2025-05-02"); r.Batch("mibuna").EndHow != Assumed {
		t.Error("57 days without any stay written: not assumed")
	}
}

// Rule 9: numbered rows alone count; of one tray and day the last row of the file.
// Ever came up: 60, then 40 living and 15 lost (55, never less than before), then 45
// and 10 more: 70.
func TestCounts(t *testing.T) {
	b := newBook(t)
	b.sow("n", "2025-03-01", "orache", "x", "AIR", 2)
	b.count("n", "2025-03-20", 1)
	b.countTray("n", "2025-03-08", 1, 50)
	b.countTray("n", "2025-03-10", 1, 90)
	b.countTray("n", "2025-03-08", 2, 70)
	b.countTray("n", "2025-03-08", 2, 80)
	b.sow("lost", "2025-03-01", "orache", "x", "AIR", 1)
	b.count("lost", "2025-03-06", 60)
	b.count("lost", "2025-03-10", 40).Lost = records.Known(15)
	b.count("lost", "2025-03-14", 45).Lost = records.Known(10)
	r := b.report("2025-04-30")
	known(t, "numbered, looked at", r.Batch("n").Looked, 200, 0)
	known(t, "numbered, emerged", r.Batch("n").Emerged, 170, 0)
	find(t, "tray numbers", r.Missing, func(m Missing) bool { return m.What == "tray numbers" })
	known(t, "living", r.Batch("lost").Emerged, 45, 0)
	known(t, "ever up", r.Batch("lost").EverUp, 70, 0)
	if up := r.Batch("lost").countSeries[0].everUp; up[1] != 60 {
		t.Errorf("ever up fell to %v", up[1])
	}
}

// Rule 56: an open batch last counted before twice the crop's median T50 is left out;
// an ended one stays in, marked.
func TestCountedTooEarly(t *testing.T) {
	b := newBook(t)
	old := b.sow("old", "2025-01-01", "orache", "x", "AIR", 1)
	b.leave(old, "2025-02-10", 80, 0)
	b.count("old", "2025-01-04", 25)
	b.count("old", "2025-01-06", 76)
	b.sow("open7", "2025-03-01", "orache", "x", "AIR", 1)
	b.count("open7", "2025-03-08", 50)
	b.look("open7", "2025-03-12", 20, 20)
	b.sow("open14", "2025-03-01", "orache", "x", "AIR", 1)
	b.count("open14", "2025-03-15", 50)
	b.look("open14", "2025-03-20", 20, 20)
	b.sow("young", "2025-03-10", "mibuna", "x", "AIR", 1)
	b.count("young", "2025-03-23", 50) // 13 days, no T50 of its crop
	r := b.report("2025-03-25")
	// 25 on day 3, 76 on day 5, half of 77 at 3 + 2 x 13.5/51 = 3.53: a count before day 7.06 is early.
	known(t, "T50", r.medianT50["orache"], 3+27.0/51, 1e-12)
	for code, early := range map[string]bool{"old": false, "open7": true, "open14": false, "young": true} {
		if r.Batch(code).Early != early {
			t.Errorf("%s: early %v", code, !early)
		}
	}
	if !r.Batch("old").CountedEarly {
		t.Error("an ended batch last counted on day 5 where a count is early before day 7 is not marked")
	}
	if e := r.Emergence[0]; len(r.Emergence) != 1 || e.Batches != 2 || e.LeftOut != 1 {
		t.Errorf("emergence: %+v", r.Emergence)
	}
	if r.Batch("open7").UsableHow == ByCount || r.Batch("open14").UsableHow != ByCount {
		t.Error("counted on an early count, or not on a late one")
	}
}

// Rules 18 and 49, each source in its turn.
func TestUsablePlants(t *testing.T) {
	b := newBook(t)
	b.leave(b.sow("out", "2025-01-01", "orache", "x", "AIR", 1), "2025-02-10", 70, 5)
	b.leave(b.sow("over", "2025-01-02", "orache", "x", "AIR", 1), "2025-02-10", 104, 0)
	b.sow("counted", "2025-01-03", "orache", "x", "AIR", 2).SetOut = day(t, "2025-02-10")
	b.count("counted", "2025-01-20", 180)
	b.look("counted", "2025-02-09", 20, 15)
	b.sow("none", "2025-01-04", "orache", "x", "AIR", 1).SetOut = day(t, "2025-02-10")
	b.count("none", "2025-01-20", 0)
	s := b.sow("floor", "2025-01-05", "orache", "x", "AIR", 1)
	s.SetOut, s.PlantsOut = day(t, "2025-02-10"), records.Known(30)
	b.sow("guess", "2025-01-06", "orache", "x", "AIR", 1).SetOut = day(t, "2025-02-10")
	b.sow("part", "2025-01-25", "orache", "y", "WALL", 1)
	b.out("part", "2025-02-08", 90, records.ToField, false)
	b.sow("dark", "2025-01-25", "mibuna", "y", "WALL", 1)
	r := b.report("2025-02-12")
	// Group and crop: 75 + 100 (104 held at the cells) + 200 x 0.9 x 0.75 + 0 = 310 of 500 = 0.62.
	for _, want := range []struct {
		batch  string
		how    UsableHow
		plants float64
	}{
		{"out", ByOut, 75}, {"over", ByOut, 100}, {"counted", ByCount, 135}, {"none", ByCount, 0},
		{"floor", AtLeast, 30}, {"guess", Estimated, 62}, {"part", Estimated, 90},
	} {
		got := r.Batch(want.batch)
		if got.UsableHow != want.how {
			t.Errorf("%s: %s, want %s", want.batch, got.UsableHow, want.how)
		}
		known(t, want.batch, got.Usable, want.plants, 1e-12)
	}
	missing(t, "no rate anywhere", r.Batch("dark").Usable)
	u := find(t, "usable", r.Usable, func(u Usable) bool { return u.Variety == "x" })
	if u.Batches != 4 || u.LeftOut != 2 {
		t.Errorf("usable: %+v", u)
	}
	known(t, "usable rate", u.Share, 0.62, 1e-12)
}

// Rules 15 and 64: two trays, one first counted later; before its first count it
// holds none. 20 on day 4, 20 + 50 on day 6, 30 + 50 on day 8: N = 80, half at 40.5,
// 4 + 2 x 20.5/50 = 4.82. A tray whose cells change and one counted on day 0 only are left out.
func TestTimingByTrays(t *testing.T) {
	b := newBook(t)
	b.sow("two", "2025-03-01", "orache", "x", "AIR", 4)
	b.countTray("two", "2025-03-05", 1, 20)
	b.countTray("two", "2025-03-09", 1, 30)
	b.countTray("two", "2025-03-07", 2, 50)
	b.countTray("two", "2025-03-05", 3, 90).Cells = records.Known(100)
	b.countTray("two", "2025-03-07", 3, 90).Cells = records.Known(95)
	b.countTray("two", "2025-03-01", 4, 0)
	r := b.report("2025-03-20")
	known(t, "T50", r.Batch("two").T50, 4.82, 1e-12)
	known(t, "mean", r.Batch("two").MeanDays, (20*4+50*6+10*8)/80.0, 1e-12)
}

// Rule 11: 3 seeds a cell, 7 of 8 cells up: 1 - (1/8)^(1/3) = 1/2 a seed. Two numbers of
// seeds in a group: none.
func TestSeedsPerCell(t *testing.T) {
	b := newBook(t)
	s := b.sow("three", "2025-03-01", "orache", "x", "AIR", 1)
	s.Cells, s.SeedsPerCell = records.Known(80), 3
	b.count("three", "2025-03-20", 70)
	b.lot("L", "orache", 0.9)
	s.Lot = "L"
	r := b.report("2025-04-10")
	known(t, "per seed", r.Emergence[0].SeedRate, 0.5, 1e-12)
	known(t, "per seed of the lot", r.Lots[0].SeedRate, 0.5, 1e-12)
	known(t, "seeds sown", r.Lots[0].SeedsSown, 240, 0)
	b.sow("one", "2025-03-01", "orache", "x", "AIR", 1).Lot = "L"
	b.count("one", "2025-03-20", 70)
	r = b.report("2025-04-10")
	missing(t, "per seed of one and three", r.Emergence[0].SeedRate)
	missing(t, "rate of the lot", r.Lots[0].SeedRate)
}

// Rules 14 and 58: gaps of the three other lots 0.02, 0.05 and 0.30: their median
// is allowed. Beet and chard are not compared.
func TestLotsAgainstThePacket(t *testing.T) {
	b := newBook(t)
	for i, up := range []int{88, 85, 60, 80} {
		lot := fmt.Sprint("L", i)
		b.lot(lot, "orache", 0.9)
		for j, off := range []int{-1, 0, 1} {
			code := fmt.Sprint(lot, j)
			b.sow(code, "2025-03-01", "orache", "x"+lot, "AIR", 1).Lot = lot
			b.count(code, "2025-03-20", up+off)
		}
	}
	b.lot("B", "Beetroot", 0.9)
	r := b.report("2025-04-01")
	last := find(t, "L3", r.Lots, func(l LotFigure) bool { return l.Lot.Code == "L3" })
	known(t, "allowance", last.Allowance, 0.05, 1e-12)
	if !last.Below.Known || !last.Below.Value == (last.SeedHigh.Value < 0.85) {
		t.Errorf("below: %+v", last)
	}
	if l := find(t, "L2", r.Lots, func(l LotFigure) bool { return l.Lot.Code == "L2" }); !l.Below.Value {
		t.Errorf("60 of 100 three times, 0.9 on the packet: %+v", l)
	}
	beet := find(t, "B", r.Lots, func(l LotFigure) bool { return l.Lot.Code == "B" })
	missing(t, "allowance of beet", beet.Allowance)
	if beet.Below.Known || !beet.Cluster {
		t.Errorf("beet: %+v", beet)
	}
}

// Rule 57 by hand: one crop, two strata (the codes), varieties P and Q, no scatter
// between batches (equal counts: rho 0, df of the crop 8).
//
//	AIR:  P 90 of 100 three times, Q 80 three times. w = 300 x 300 / 600 = 150, d = 0.1
//	WALL: P 70 three times, Q 66 three times.        w = 150,                   d = 0.04
//
// difference = (150 x 0.1 + 150 x 0.04) / 300 = 0.07; variance = (v1 + v2 + v3 + v4) / 4
// with v = p(1-p)/300, p = (x + 0.5)/301; m = 2, so T at 97.5 % of 12 - 4 = 8.
func TestDifferenceByHand(t *testing.T) {
	b := newBook(t)
	up := map[string]int{"AIRP": 90, "AIRQ": 80, "WALLP": 70, "WALLQ": 66}
	for key, n := range up {
		for i := range 3 {
			code := fmt.Sprint(key, i)
			b.sow(code, "2025-03-01", "orache", key[len(key)-1:], key[:len(key)-1], 1)
			b.count(code, "2025-03-20", n)
		}
	}
	r := b.report("2025-04-01")
	variance := 0.0
	for _, n := range up {
		p := (float64(3*n) + 0.5) / 301
		variance += p * (1 - p) / 300 / 4
	}
	d := find(t, "P", r.Differences, func(d Difference) bool { return d.Variety == "P" })
	known(t, "difference", d.Difference, 0.07, 1e-12)
	half := estimate.T(0.975, 8) * math.Sqrt(variance)
	known(t, "low", d.Low, 0.07-half, 1e-12)
	known(t, "high", d.High, 0.07+half, 1e-12)
	if d.Batches != 6 || d.OtherBatches != 6 || d.Verdict != verdictOf(0.07-half, 0.07+half) {
		t.Errorf("got %+v", d)
	}
}

// Rule 57: two batches are too few for a verdict, the difference alone is told; a
// variety that never stood beside another has no row; a later season adds to it.
func TestDifferenceOfFewBatches(t *testing.T) {
	b := newBook(t)
	sow := func(code, date, variety, tray string, up int) {
		b.sow(code, date, "orache", variety, tray, 1)
		b.count(code, (day(t, date) + 19).String(), up)
	}
	for i := range 2 {
		sow(fmt.Sprint("p", i), "2024-03-01", "P", "AIR", 90+i)
		sow(fmt.Sprint("q", i), "2024-03-01", "Q", "AIR", 50+i)
	}
	sow("alone", "2024-03-01", "R", "WALL", 50)
	for i := range 3 {
		sow(fmt.Sprint("P", i), "2025-03-01", "P", "AIR", 90+i)
		sow(fmt.Sprint("Q", i), "2025-03-01", "Q", "AIR", 50+i)
	}
	r := b.report("2025-05-01")
	of := func(season int, variety string) Difference {
		return find(t, variety, r.Differences, func(d Difference) bool { return d.Season == season && d.Variety == variety })
	}
	if d := of(2024, "P"); d.Verdict != TooFew || d.Low.Known || d.Difference.Value != 0.4 {
		t.Errorf("2024: %+v", d)
	}
	if d := of(2025, "P"); d.Verdict != ClearlyHigher || d.Batches != 5 {
		t.Errorf("2025: %+v", d)
	}
	if d := of(2025, "Q"); d.Verdict != ClearlyLower {
		t.Errorf("2025: %+v", d)
	}
	if len(r.Differences) != 4 {
		t.Errorf("%d rows, want 4", len(r.Differences))
	}
}

// Rules 16, 17 and 63: looks of a day are added, the latest stands; a mark is no look;
// bands begin on days 0, 1, 4, 8 and 15; three batches are needed for a share.
func TestLooks(t *testing.T) {
	b := newBook(t)
	for i := range 3 {
		code := fmt.Sprint("b", i)
		b.sow(code, "2025-03-01", "orache", "x", "AIR", 1).Planned = day(t, "2025-04-10")
		b.look(code, "2025-04-10", 10, 10)
		b.look(code, "2025-04-11", 10, 9)
		b.look(code, "2025-04-11", 10, 8)
		b.look(code, "2025-04-13", 10, 7)
		b.Scores = append(b.Scores, records.Score{Batch: code, Date: day(t, "2025-04-20"), Score: records.Known(4)})
	}
	b.look("b0", "2025-04-25", 10, 1) // 15 days late
	r := b.report("2025-04-28")
	known(t, "looked at, the latest day", r.Batch("b1").QualityOf, 10, 0)
	known(t, "fit", r.Batch("b1").QualityGood, 7, 0)
	want := map[int][3]float64{0: {3, 30, 30}, 1: {3, 90, 72}, 15: {1, 10, 1}}
	for _, l := range r.Leeway {
		if w := want[l.DaysLate]; [3]float64{float64(l.Batches), l.N, l.X} != w || l.Share.Known != (l.Batches >= 3) {
			t.Errorf("%q band %d: %+v", l.Crop, l.DaysLate, l)
		}
	}
	if len(r.Leeway) != 6 || r.Leeway[0].Crop != "" {
		t.Errorf("leeway: %d rows", len(r.Leeway))
	}
	if q := r.Quality[0]; q.Marks != 3 || q.Batches != 3 || q.S[0].Known {
		t.Errorf("quality: %+v", q)
	}
	for late, band := range map[int]int{-9: 0, 0: 0, 1: 1, 3: 1, 4: 2, 7: 2, 8: 3, 14: 3, 15: 4, 99: 4} {
		if got := bandOf(late); got != band {
			t.Errorf("%d days late: band %d, want %d", late, got, band)
		}
	}
}

// Rule 17 in words: 90 % fit in time, too few looks 1-3 days late, exactly 80 % 4-7
// days late, 70 % after that, whatever comes later.
func TestLastFit(t *testing.T) {
	b := newBook(t)
	look := func(late, batches, usable int) {
		for i := range batches {
			code := fmt.Sprint(late, "-", i)
			s := b.sow(code, "2025-03-01", "orache", "x", "AIR", 1)
			s.Planned = day(t, "2025-04-10")
			b.look(code, (s.Planned + records.Date(late)).String(), 10, usable)
		}
	}
	look(0, 3, 9)
	look(2, 2, 1)
	look(5, 3, 8)
	look(9, 3, 7)
	look(20, 3, 10)
	r := b.report()
	for _, crop := range []string{"orache", ""} {
		bands := slices.DeleteFunc(slices.Clone(r.Leeway), func(l Leeway) bool { return l.Crop != crop })
		if last := LastFit(bands); last < 0 || bands[last].DaysLate != 4 {
			t.Errorf("%q: place %d of %+v", crop, last, bands)
		}
	}
	if last := LastFit(nil); last != -1 {
		t.Errorf("no bands: place %d", last)
	}
}
