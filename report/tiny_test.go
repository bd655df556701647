package report

import (
	"os"
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/internal/booktest"
	"traybook/report/plants"
)

// tiny is the report of examples/tiny, whose figures are worked out by hand below.
func tiny(t testing.TB) *Report {
	t.Helper()
	book, problems := records.Load(os.DirFS("../examples/tiny"))
	r, err := New(book, problems, Options{})
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func TestTinyBatches(t *testing.T) {
	r := tiny(t)
	if r.Batches.Today != booktest.Day(t, "2025-04-12") || r.Season != 2025 {
		t.Errorf("last date %v, season %d", r.Batches.Today, r.Season)
	}
	// 3 March to 12 April: 28 days left of March (with the 3rd), 11 of April, the last not counted: 40.
	// Emergence D: 50 cells - 8 empty = 42. Usable: A 85 + 5; C 150 + 40, cleared; E cleared with nothing.
	for _, want := range []struct {
		batch                                   string
		cells                                   int
		trayDays, looked, emerged, ever, plants float64
	}{
		{"A", 100, 80, 100, 95, 95, 90},
		{"B", 100, 80, 100, 90, 90, 80},
		{"C", 200, 160, 200, 196, 196, 190},
		{"D", 50, 40, 50, 42, 42, 40},
		{"E", 50, 40, 50, 10, 40, 0},
	} {
		b := r.Record(want.batch)
		if b.CellsSown != records.Known(want.cells) || b.EndHow != batch.Written || b.UsableHow != plants.ByOut {
			t.Errorf("%s: cells %v, end %s, usable %s", want.batch, b.CellsSown, b.EndHow, b.UsableHow)
		}
		booktest.Near(t, want.batch+" tray-days", b.TrayDays, want.trayDays, 0)
		booktest.Known(t, want.batch+" looked at", b.Looked, want.looked, 0)
		booktest.Known(t, want.batch+" emerged", b.Emerged, want.emerged, 0)
		booktest.Known(t, want.batch+" ever up", b.EverUp, want.ever, 0)
		booktest.Known(t, want.batch+" usable", b.Usable, want.plants, 0)
	}
}

func TestTinyGermination(t *testing.T) {
	r := tiny(t)
	if len(r.Germination.Emergence) != 4 || r.Germination.Emergence[0].Variety != "Conefield" || r.Germination.Emergence[3].Kind != "solid-wall" {
		t.Fatalf("emergence: %+v", r.Germination.Emergence)
	}
	// B and E: 90 + 10 of 100 + 50. Two batches in one group, one in each other: df = 5 - 4 = 1, too few for an interval.
	e := r.Germination.Emergence[3]
	booktest.Known(t, "lettuce in walls", e.Share, 100.0/150, 1e-15)
	booktest.Known(t, "per seed", e.SeedRate, 100.0/150, 1e-15)
	booktest.Missing(t, "low", e.Low)
	booktest.Missing(t, "rho", e.Rho)
	if e.Batches != 2 || e.Trays != 3 {
		t.Errorf("batches %d, trays %v", e.Batches, e.Trays)
	}
	// A: N = 95, half at 48: between 28 on day 3 and 68 on day 5, at 3 + 2 x 20/40 = 4.
	// Mean: (28 x 3 + 40 x 5 + 27 x 8) / 95 = 500/95. E was up before its first count, day 7.
	if len(r.Germination.Timing) != 1 {
		t.Fatalf("timing: %+v", r.Germination.Timing)
	}
	booktest.Known(t, "T50", r.Germination.Timing[0].T50, 4, 1e-12)
	booktest.Known(t, "mean days", r.Germination.Timing[0].Mean, 500.0/95, 1e-12)
	booktest.Known(t, "before day", r.Record("E").BeforeDay, 7, 0)
	if l := r.Germination.Losses[0]; len(r.Germination.Losses) != 1 || l.Cells != 30 || l.Batches != 1 || l.Cause != "dried out" || l.ByMonth[3] != 30 {
		t.Errorf("losses: %+v", r.Germination.Losses)
	}
	// All were sown on Monday 3 March 2025, in ISO week 10.
	if w := r.Germination.Weeks[1]; len(r.Germination.Weeks) != 2 || w.Week != "2025-W10" || w.X != 195 || w.N != 250 {
		t.Errorf("weeks: %+v", r.Germination.Weeks)
	}
}

func TestTinyLots(t *testing.T) {
	r := tiny(t)
	// L1: A 95, B 90, E 10 + 30 lost = 225 of 250. Label 95 %; one other lot: 0.10 allowed, and 0.9 is above 0.85.
	l := booktest.Find(t, "L1", r.Germination.Lots, func(l germination.Lot) bool { return l.Code == "L1" })
	booktest.Known(t, "rate", l.SeedRate, 0.9, 1e-15)
	booktest.Known(t, "allowance", l.Allowance, 0.10, 0)
	booktest.Known(t, "minimum (7 CFR 201.31: lettuce 80)", l.Minimum, 0.80, 1e-15)
	booktest.Known(t, "seeds sown", l.SeedsSown, 250, 0)
	booktest.Known(t, "seeds bought", l.SeedsBought, 1000, 0)
	if l.Below != germination.BelowNo || l.Counted != 3 {
		t.Errorf("below %v, counted %d", l.Below, l.Counted)
	}
}

func TestTinyQuality(t *testing.T) {
	r := tiny(t)
	// B: scores 3 and more are fit: 7 + 8 + 2 = 17 of 20.
	q := booktest.Find(t, "B", r.Plants.Quality, func(q plants.Quality) bool { return q.Kind == "solid-wall" })
	booktest.Known(t, "usable share", q.Share, 0.85, 1e-15)
	for i, want := range []float64{1, 2, 7, 8, 2} {
		booktest.Known(t, "score", q.S[i], want, 0)
	}
	// Looks a day before planned, one batch of a kind: no share.
	for _, l := range r.Plants.Leeway {
		booktest.Missing(t, "leeway", l.Share)
		if l.DaysLate != 0 || l.Batches != 1 {
			t.Errorf("leeway: %+v", l)
		}
	}
	if len(r.Plants.Leeway) != 4 { // lettuce and all crops, each by kind
		t.Errorf("leeway: %d rows", len(r.Plants.Leeway))
	}
	u := booktest.Find(t, "usable in walls", r.Plants.Usable, func(u plants.Usable) bool { return u.Crop == "lettuce" && u.Kind == "solid-wall" })
	booktest.Known(t, "usable rate", u.Share, 80.0/150, 1e-15)
}

func TestTinyWeek(t *testing.T) {
	r := tiny(t)
	// All left on 12 April; with three days to wash, 6 and 4 trays are free on the 15th: on
	// Monday 14 April none is, on the seven after it all. E gave none of the 40 wanted.
	free := r.Lines(Freeing)
	if len(free) != 2 || len(r.Week) != 1+2+2*8 {
		t.Fatalf("week: %+v", r.Week)
	}
	for i, want := range []struct {
		code  string
		trays float64
	}{{"A50", 6}, {"S50", 4}} {
		w, left := free[i], r.Lines(TraysLeft)
		if w.Subject != want.code || w.Date != booktest.Day(t, "2025-04-15") || w.Value.Value != want.trays {
			t.Errorf("week: %+v", w)
		}
		if left[i].Subject != want.code || left[i].Date != booktest.Day(t, "2025-04-14") || left[i].Value.Value != 0 || left[2+i].Value.Value != want.trays {
			t.Errorf("left: %+v", left[:4])
		}
	}
	fell := r.Lines(Fell)
	if len(fell) != 1 || fell[0].Subject != "E" || fell[0].Value.Value != 40 {
		t.Errorf("fell short: %+v", fell)
	}
}
