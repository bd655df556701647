package money

import (
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// Potting on, by hand (rule "Potting on"). Plugs p cost 90, 100 usable, 80 potted on to
// q and r, 15 to the field: share 0.8, 72 given, split by their cells 90 and 30: 54 and
// 18. q costs 10 itself; its 64 go on whole to s, since nothing is known of its usable
// plants.
func TestPottingOn(t *testing.T) {
	p := newBatch(t, "p", "2025-03-01", "2025-03-21", "S", 1, 100, 100)
	q := newBatch(t, "q", "2025-03-20", "2025-04-20", "S", 0.9, 100, 0)
	r := newBatch(t, "r", "2025-03-20", "2025-04-20", "S", 0.3, 100, 20)
	s := newBatch(t, "s", "2025-04-20", "2025-05-20", "S", 0.6, 100, 50)
	q.From, r.From, s.From = "p", "p", "q"
	q.Usable, q.UsableHow = Num{}, ""
	book := &records.Book{
		Costs: []records.Cost{booktest.Row(t, "2025-03-01", records.Other, 90, forBatch("p")), booktest.Row(t, "2025-03-21", records.Mix, 10, forBatch("q"))},
		Outs: []records.Out{{Batch: "p", Date: booktest.Day(t, "2025-03-20"), Plants: 50, To: records.ToPottedOn},
			{Batch: "p", Date: booktest.Day(t, "2025-03-20"), Plants: 30, To: records.ToPottedOn},
			{Batch: "p", Date: booktest.Day(t, "2025-03-20"), Plants: 15, To: records.ToField}},
	}
	m := moneyOf(book, p, q, r, s)
	for _, tt := range []struct {
		code           string
		carried, total float64
	}{{"p", -72, 18}, {"q", 54 - 64, 0}, {"r", 18, 18}, {"s", 64, 64}} {
		b := of(t, m, tt.code)
		booktest.Near(t, tt.code+" carried", b.Parts.Carried, tt.carried, 1e-9)
		booktest.Near(t, tt.code+" cost", b.Cost.Value, tt.total, 1e-9)
	}
	booktest.Near(t, "p, plants moved", of(t, m, "p").PlantsMoved, 80, 0)
	booktest.Known(t, "p, 20 plants left", of(t, m, "p").PerTransplant, 18.0/20, 1e-9)
	balanced(t, m)
}

// Without potted-on rows the heirs' cells move, at most all that was usable.
func TestPottingOnByCells(t *testing.T) {
	for usable, carried := range map[float64]float64{80: -45, 30: -60, 0: -60} {
		p := newBatch(t, "p", "2025-03-01", "2025-03-21", "S", 1, 100, usable)
		q := newBatch(t, "q", "2025-03-20", "2025-04-20", "S", 0.6, 100, 50)
		q.From = "p"
		m := moneyOf(&records.Book{Costs: []records.Cost{booktest.Row(t, "2025-03-01", records.Other, 60, forBatch("p"))}}, p, q)
		booktest.Near(t, "p", of(t, m, "p").Parts.Carried, carried, 1e-9)
		if each := of(t, m, "p").PerTransplant; usable <= 60 && each.Known {
			t.Errorf("a cost for plants that are all potted on: %v", each)
		}
		balanced(t, m)
	}
}

// Heirs of unknown cells share by trays 1 : 3; a batch not sown after the one that it
// names takes nothing over.
func TestPottingOnByTrays(t *testing.T) {
	p := newBatch(t, "p", "2025-03-01", "2025-03-21", "S", 1, 100, 0)
	q := newBatch(t, "q", "2025-03-20", "2025-04-20", "S", 1, 100, 50)
	r := newBatch(t, "r", "2025-03-20", "2025-04-20", "S", 3, 100, 50)
	s := newBatch(t, "s", "2025-03-01", "2025-04-20", "S", 3, 100, 50)
	q.CellsSown, r.CellsSown = records.Maybe[int]{}, records.Maybe[int]{}
	q.From, r.From, s.From = "p", "p", "p"
	m := moneyOf(&records.Book{Costs: []records.Cost{booktest.Row(t, "2025-03-01", records.Other, 60, forBatch("p"))}}, p, q, r, s)
	for code, want := range map[string]float64{"p": 0, "q": 15, "r": 45, "s": 0} {
		bears(t, "by trays", m, code, want)
	}
	balanced(t, m)
}
