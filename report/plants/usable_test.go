package plants

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/internal/booktest"
)

// Rule "Usable plants", each source in its turn.
func TestUsablePlants(t *testing.T) {
	b := booktest.New(t)
	b.Leave(b.Sow("out", "2025-01-01", "orache", "x", "AIR", 1), "2025-02-10", 70, 5)
	b.Leave(b.Sow("over", "2025-01-02", "orache", "x", "AIR", 1), "2025-02-10", 104, 0)
	b.Sow("counted", "2025-01-03", "orache", "x", "AIR", 2).SetOut = b.Day("2025-02-10")
	b.Count("counted", "2025-01-20", 180)
	b.Look("counted", "2025-02-09", 20, 15)
	b.Sow("none", "2025-01-04", "orache", "x", "AIR", 1).SetOut = b.Day("2025-02-10")
	b.Count("none", "2025-01-20", 0)
	s := b.Sow("floor", "2025-01-05", "orache", "x", "AIR", 1)
	s.SetOut, s.PlantsOut = b.Day("2025-02-10"), records.Known(30)
	b.Sow("guess", "2025-01-06", "orache", "x", "AIR", 1).SetOut = b.Day("2025-02-10")
	b.Sow("part", "2025-01-25", "orache", "y", "WALL", 1)
	b.Out("part", "2025-02-08", 90, records.ToField, false)
	b.Sow("dark", "2025-01-25", "mibuna", "y", "WALL", 1)
	f := figures(t, b.Book(), "2025-02-12")
	// Group and crop: 75 + 100 (104 held at the cells) + 200 x 0.9 x 0.75 + 0 = 310 of 500 = 0.62.
	for _, want := range []struct {
		batch  string
		how    How
		plants float64
	}{
		{"out", ByOut, 75}, {"over", ByOut, 100}, {"counted", ByCount, 135}, {"none", ByCount, 0},
		{"floor", AtLeast, 30}, {"guess", Estimated, 62}, {"part", Estimated, 90},
	} {
		got := of(t, f, want.batch)
		if got.UsableHow != want.how || got.Capped != (want.batch == "over") {
			t.Errorf("%s: %s, want %s; capped %v", want.batch, got.UsableHow, want.how, got.Capped)
		}
		booktest.Known(t, want.batch, got.Usable, want.plants, 1e-12)
	}
	booktest.Missing(t, "no rate anywhere", of(t, f, "dark").Usable)
	u := booktest.Find(t, "usable", f.Usable, func(u Usable) bool { return u.Variety == "x" })
	if u.Batches != 4 || u.LeftOut != 2 {
		t.Errorf("usable: %+v", u)
	}
	booktest.Known(t, "usable rate", u.Share, 0.62, 1e-12)
	booktest.Known(t, "the book's", f.BookUsable, 0.62, 1e-12)
}

// A batch is estimated by its own group, 0.3, where that has a rate, and by its crop,
// (30 + 90) / 200, where it has none.
func TestEstimates(t *testing.T) {
	b := booktest.New(t)
	b.Leave(b.Sow("low", "2025-03-01", "orache", "x", "AIR", 1), "2025-04-10", 30, 0)
	b.Leave(b.Sow("high", "2025-03-01", "orache", "y", "AIR", 1), "2025-04-10", 90, 0)
	b.Sow("like", "2025-03-01", "orache", "x", "AIR", 1).SetOut = b.Day("2025-04-10")
	b.Sow("other", "2025-03-01", "orache", "z", "AIR", 1).SetOut = b.Day("2025-04-10")
	f := figures(t, b.Book())
	booktest.Known(t, "by its group", of(t, f, "like").Usable, 30, 1e-12)
	booktest.Known(t, "by its crop", of(t, f, "other").Usable, 60, 1e-12)
}

// At least: the plants written of an ended batch with plants_out or a row of out.csv.
// Neither surplus alone nor dead plants alone say how many went; they leave the crop's
// rate, 0.6, above what is written (rule "Usable plants").
func TestAtLeast(t *testing.T) {
	none := records.Maybe[int]{}
	for _, tt := range []struct {
		name         string
		tray         string
		out, surplus records.Maybe[int]
		to           records.Destination // of a row of 25 plants; empty: no row
		ended        bool
		how          How
		want         float64
	}{
		{"plants_out", "AIR", records.Known(40), none, "", true, AtLeast, 40},
		{"plants_out 0", "AIR", records.Known(0), none, "", true, AtLeast, 0},
		{"just its cells", "AIR", records.Known(100), none, "", true, AtLeast, 100},
		{"more than its cells", "AIR", records.Known(130), none, "", true, AtLeast, 100},
		{"still open", "AIR", records.Known(40), none, "", false, Estimated, 60},
		{"surplus alone", "AIR", none, records.Known(7), "", true, Estimated, 60},
		{"much surplus alone", "AIR", none, records.Known(80), "", true, Estimated, 80},
		{"surplus beyond its cells", "AIR", none, records.Known(130), "", true, Estimated, 100},
		{"a row to the field", "AIR", none, none, records.ToField, true, AtLeast, 25},
		{"a row to surplus", "AIR", none, none, records.ToSurplus, true, AtLeast, 25},
		{"a row of dead plants", "AIR", none, none, records.Dead, true, Estimated, 60},
		{"no cells, plants_out", "NOWHERE", records.Known(40), none, "", true, AtLeast, 40},
		{"no cells, a row", "NOWHERE", none, none, records.Sold, true, AtLeast, 25},
		{"no cells, surplus alone", "NOWHERE", none, records.Known(7), "", true, "", 0},
	} {
		b := booktest.New(t)
		b.Leave(b.Sow("known", "2025-03-01", "orache", "x", "AIR", 1), "2025-04-10", 60, 0)
		s := b.Sow("one", "2025-03-10", "orache", "y", tt.tray, 1)
		if s.PlantsOut, s.Surplus = tt.out, tt.surplus; tt.ended {
			s.SetOut = b.Day("2025-04-10")
		}
		if tt.to != "" {
			b.Out("one", "2025-04-09", 25, tt.to, false)
		}
		one := of(t, figures(t, b.Book()), "one")
		if one.UsableHow != tt.how || one.Usable.Known != (tt.how != "") || one.Usable.Value != tt.want {
			t.Errorf("%s: %v, %s", tt.name, one.Usable, one.UsableHow)
		}
		if one.Capped != (tt.out.Or(0)+tt.surplus.Or(0) > 100) {
			t.Errorf("%s: capped %v", tt.name, one.Capped)
		}
	}
}

// 100 cells, 50 of 100 up, 8 of 10 fit: 40 counted; but 55 went out already.
func TestCountedIsNotBelowWhatWentOut(t *testing.T) {
	b := booktest.New(t)
	for _, code := range []string{"counted", "out"} {
		b.Sow(code, "2025-03-01", "orache", "x", "AIR", 1)
		b.Count(code, "2025-03-20", 50).Cells = records.Known[int32](100)
		b.Look(code, "2025-04-10", 10, 8)
	}
	b.Out("out", "2025-04-12", 55, records.ToField, false)
	f := figures(t, b.Book())
	for code, want := range map[string]float64{"counted": 40, "out": 55} {
		if got := of(t, f, code); got.UsableHow != ByCount {
			t.Errorf("%s: usable %s", code, got.UsableHow)
		}
		booktest.Known(t, code, of(t, f, code).Usable, want, 1e-12)
	}
}

// An open batch counted before 14 days is not counted: its crop's rate, 0.75, is
// taken in place of its own, 0.4 (rules "Counted early", "Usable plants").
func TestCountedEarlyIsEstimated(t *testing.T) {
	b := booktest.New(t)
	b.Leave(b.Sow("out", "2025-01-01", "orache", "x", "AIR", 1), "2025-02-10", 75, 0)
	for code, counted := range map[string]string{"early": "2025-03-14", "ripe": "2025-03-15"} {
		b.Sow(code, "2025-03-01", "orache", "x", "AIR", 1)
		b.Count(code, counted, 50)
		b.Look(code, "2025-03-20", 10, 8)
	}
	f := figures(t, b.Book())
	for code, how := range map[string]How{"early": Estimated, "ripe": ByCount} {
		if got := of(t, f, code); got.UsableHow != how {
			t.Errorf("%s: %s, want %s", code, got.UsableHow, how)
		}
	}
	booktest.Known(t, "ripe", of(t, f, "ripe").Usable, 40, 1e-12)
	booktest.Known(t, "early, by its group: 75 + 40 of 200", of(t, f, "early").Usable, 57.5, 1e-12)
}

// Plants that died are not usable, however many; they clear the batch. Those sold are
// usable and not in the field.
func TestDeadPlantsAreNotUsable(t *testing.T) {
	b := booktest.New(t)
	b.Sow("one", "2025-03-01", "orache", "x", "AIR", 1)
	b.Out("one", "2025-04-09", 7, records.Sold, false)
	b.Out("one", "2025-04-10", 60, records.ToField, false)
	b.Out("one", "2025-04-12", 25, records.Dead, true)
	one := of(t, figures(t, b.Book()), "one")
	if one.UsableHow != ByOut || one.EndHow != batch.Written || one.End != b.Day("2025-04-12") || !one.HasOuts {
		t.Errorf("usable %s, end %s %v", one.UsableHow, one.EndHow, one.End)
	}
	booktest.Known(t, "usable", one.Usable, 67, 0)
	booktest.Known(t, "to the field", one.FieldOut, 60, 0)
}

// A batch of unknown cells has what went out and enters no rate; without a figure of
// plants it has none, whatever the rate of its crop.
func TestUsableOfUnknownCells(t *testing.T) {
	b := booktest.New(t)
	b.Leave(b.Sow("known", "2025-03-01", "orache", "x", "AIR", 1), "2025-04-10", 40, 0)
	b.Leave(b.Sow("strange", "2025-03-01", "orache", "x", "NOWHERE", 1), "2025-04-10", 170, 5)
	b.Sow("nothing", "2025-03-01", "orache", "x", "NOWHERE", 1).SetOut = b.Day("2025-04-10")
	f := figures(t, b.Book())
	booktest.Known(t, "out", of(t, f, "strange").Usable, 175, 0)
	booktest.Missing(t, "without a figure", of(t, f, "nothing").Usable)
	booktest.Known(t, "the book's rate", f.BookUsable, 0.4, 0)
	if !of(t, f, "strange").Measured() || of(t, f, "strange").EntersUsable() {
		t.Error("measured, and without cells for a rate")
	}
}

// What looks and counts say of an end: a batch that came up with nothing, or was cleared
// of dead plants only, gave nothing, be it counted early; one of which no plants are
// written may have given some. The latest date is that of any row.
func TestTraces(t *testing.T) {
	b := booktest.New(t)
	b.Sow("bare", "2025-03-01", "orache", "x", "AIR", 1).ChamberOut = b.Day("2025-03-04")
	b.Sow("dead", "2025-03-01", "orache", "x", "AIR", 1)
	b.Out("dead", "2025-04-12", 25, records.Dead, true)
	b.Sow("early", "2025-03-01", "orache", "x", "AIR", 1)
	b.Count("early", "2025-03-03", 0)
	b.Sow("unsure", "2025-03-01", "orache", "x", "AIR", 1).SetOut = b.Day("2025-04-20")
	b.Count("unsure", "2025-04-01", 50)
	b.Look("unsure", "2025-04-25", 10, 9)
	book := b.Book()
	sown := batch.Sowings(book)
	got := Traces(sown, germination.Count(sown, book), Read(sown, book))
	for i, want := range []struct {
		code, cleared, last string
		nothing             bool
	}{
		{"bare", "", "2025-03-04", false}, {"dead", "2025-04-12", "2025-04-12", true},
		{"early", "", "2025-03-03", true}, {"unsure", "", "2025-04-25", false},
	} {
		if g := got[i]; sown[i].Code != want.code || g.Nothing != want.nothing || g.Cleared.String() != want.cleared || g.Last.String() != want.last {
			t.Errorf("%s: %+v", want.code, g)
		}
	}
}

// A row rests on the scatter of its own crop, drawn to the book's by the prior of three
// (rule "Scatter"). Eight batches each, calm (70 and 71 of 100) and wild (30 and 90):
// X2 is 0.0962 and 300, G 693 and m 99 for either, so the book's rho is (300.0962 - 14) /
// 1386 = 0.206419, and the crops' are (X2 - 7 + 3 x 99 x 0.206419) / (693 + 3 x 99).
func TestUsableByTheScatterOfItsCrop(t *testing.T) {
	b := booktest.New(t)
	for crop, plants := range map[string][2]int{"calm": {70, 71}, "wild": {30, 90}} {
		for i := range 8 {
			b.Leave(b.Sow(fmt.Sprint(crop, i), "2025-03-01", crop, "x", "AIR", 1), "2025-04-10", plants[i%2], 0)
		}
	}
	f := figures(t, b.Book())
	calm, wild := f.Usable[0], f.Usable[1]
	booktest.Known(t, "rho of the calm crop", calm.Rho, 0.054952, 1e-6)
	booktest.Known(t, "rho of the wild crop", wild.Rho, 0.357885, 1e-6)
	booktest.Known(t, "degrees of freedom, and three", calm.DF, 10, 0)
	book, ok := f.UsableScatter.Of("")
	booktest.Near(t, "rho of the book", book.Rho, 0.206419, 1e-6)
	if book.DF != 14 || !ok {
		t.Errorf("the book's %+v", book)
	}
	if calm.High.Value-calm.Low.Value >= (wild.High.Value-wild.Low.Value)/2 {
		t.Errorf("calm %+v, wild %+v", calm.Rate, wild.Rate)
	}
}
