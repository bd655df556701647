package money

import (
	"slices"
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/internal/booktest"
	"traybook/report/plants"
)

// Rule "Cost of a transplant" beside rule "Ledger": 30 + 70 are borne by two ended
// batches of 60 + 80 usable plants, of which 80 are a guess; the open batch's 50 stand
// in the money columns alone.
func TestCostTable(t *testing.T) {
	a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 60)
	b := newBatch(t, "b", "2025-03-01", "2025-03-11", "S", 1, 100, 80)
	c := newBatch(t, "c", "2025-03-01", "2025-03-11", "S", 1, 100, 40)
	b.UsableHow, c.EndHow = plants.Estimated, batch.Open
	m := moneyOf(&records.Book{Costs: []records.Cost{booktest.Row(t, "2025-03-02", records.Mix, 30, forBatch("a")),
		booktest.Row(t, "2025-03-02", records.Mix, 70, forBatch("b")), booktest.Row(t, "2025-03-02", records.Mix, 50, forBatch("c"))}}, a, b, c)
	got := m.Cost[0]
	if len(m.Cost) != 1 || got.Batches != 3 || got.Open != 1 || got.Rests != 2 {
		t.Fatalf("%+v", m.Cost)
	}
	booktest.Known(t, "total", got.Total, 150, 1e-9)
	booktest.Near(t, "behind the cost of one", got.Behind.Total(), 100, 1e-9)
	booktest.Known(t, "usable", got.Usable, 140, 0)
	booktest.Known(t, "a transplant", got.PerTransplant, 100.0/140, 1e-12)
	booktest.Known(t, "estimated", got.EstimatedShare, 80.0/140, 1e-12)
	booktest.Known(t, "failed: 30 x 0.4 + 70 x 0.2 of 100", got.FailedShare, 0.26, 1e-12)
	booktest.Missing(t, "a running batch's transplant", of(t, m, "c").PerTransplant)
	balanced(t, m)
}

// A batch of unknown cells stands in the cost of a transplant and not in the share of
// failed cells: 30 x 0.4 of 30. One without a figure of usable plants rests nothing.
func TestCostOfUnknownCells(t *testing.T) {
	a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 60)
	b := newBatch(t, "b", "2025-03-01", "2025-03-11", "S", 1, 100, 80)
	c := newBatch(t, "c", "2025-03-01", "2025-03-11", "S", 1, 100, 0)
	b.CellsSown, c.Usable = records.Maybe[int]{}, Num{}
	m := moneyOf(&records.Book{Costs: []records.Cost{booktest.Row(t, "2025-03-02", records.Mix, 30, forBatch("a")),
		booktest.Row(t, "2025-03-02", records.Mix, 70, forBatch("b"))}}, a, b, c)
	booktest.Known(t, "failed", m.Cost[0].FailedShare, 0.4, 1e-12)
	booktest.Known(t, "a transplant", m.Cost[0].PerTransplant, 100.0/140, 1e-12)
	if got := m.Cost[0]; got.Batches != 3 || got.Rests != 2 {
		t.Errorf("%+v", got)
	}
}

// Cells of plants that were potted on did not fail: failed_share takes the usable plants
// before those moved are taken off, 60 of 100, though 20 are left; the cost that stays,
// 90 x (1 - 40/60), is for those 20.
func TestCellsPottedOnDidNotFail(t *testing.T) {
	p := newBatch(t, "p", "2025-03-01", "2025-03-21", "S", 1, 100, 60)
	q := newBatch(t, "q", "2025-03-20", "2025-04-20", "T", 0.4, 100, 30)
	q.From = "p"
	m := moneyOf(&records.Book{Costs: []records.Cost{booktest.Row(t, "2025-03-01", records.Mix, 90, forBatch("p"))}}, p, q)
	kind := func(k string) Cost {
		return booktest.Find(t, k, m.Cost, func(c Cost) bool { return c.Kind == k })
	}
	booktest.Known(t, "usable left", kind("S").Usable, 20, 0)
	booktest.Known(t, "failed", kind("S").FailedShare, 0.4, 1e-12)
	booktest.Known(t, "each of those left", kind("S").PerTransplant, 30.0/20, 1e-12)
	booktest.Known(t, "failed of the heir", kind("T").FailedShare, 0.25, 1e-12)
	booktest.Known(t, "failed of both, 30 x 0.4 + 60 x 0.25 of 90", m.Seasons[0].FailedShare, 0.3, 1e-12)
	balanced(t, m)
}

// A cell costs what all batches of known cells bear over their cells, open ones too: 30 +
// 50 of 100 + 40, though 70 more are borne by a batch whose cells nobody knows.
func TestCostOfACell(t *testing.T) {
	a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 60)
	b := newBatch(t, "b", "2025-03-01", "2025-03-11", "S", 1, 100, 80)
	c := newBatch(t, "c", "2025-03-01", "2025-03-11", "S", 0.4, 100, 40)
	b.CellsSown, c.EndHow = records.Maybe[int]{}, batch.Open
	m := moneyOf(&records.Book{Costs: []records.Cost{booktest.Row(t, "2025-03-02", records.Mix, 30, forBatch("a")),
		booktest.Row(t, "2025-03-02", records.Mix, 70, forBatch("b")), booktest.Row(t, "2025-03-02", records.Mix, 50, forBatch("c"))}}, a, b, c)
	booktest.Known(t, "a cell", m.Cost[0].PerCell, 80.0/140, 1e-12)
	booktest.Missing(t, "a cell, without money", moneyOf(&records.Book{}, a).Cost[0].PerCell)
	booktest.Missing(t, "a cell, no cells known", moneyOf(&records.Book{Costs: []records.Cost{booktest.Row(t, "2025-03-02", records.Mix, 70)}}, b).Cost[0].PerCell)
}

// What was all carried on leaves a cost of exactly 0, though floating point leaves dust,
// and nothing of it failed: p takes over 0.1 and hands on 0.1 + 0.2 (rule "Missing").
func TestNothingLeftOfACost(t *testing.T) {
	o := newBatch(t, "o", "2025-02-01", "2025-03-01", "S", 1, 100, 60)
	p := newBatch(t, "p", "2025-03-01", "2025-03-21", "T", 1, 100, 60)
	q := newBatch(t, "q", "2025-03-20", "2025-04-20", "U", 0.6, 100, 50)
	p.From, q.From = "o", "p"
	m := moneyOf(&records.Book{Costs: []records.Cost{booktest.Row(t, "2025-03-01", records.Other, 0.1, forBatch("o")),
		booktest.Row(t, "2025-03-01", records.Mix, 0.2, forBatch("p"))}}, o, p, q)
	if left := of(t, m, "p").Parts; 0.2+left.Carried == 0 {
		t.Fatal("no dust: other sums are needed")
	}
	left := booktest.Find(t, "p", m.Cost, func(c Cost) bool { return c.Kind == "T" })
	booktest.Known(t, "total", left.Total, 0, 0)
	booktest.Known(t, "a cell", left.PerCell, 0, 0)
	booktest.Known(t, "the batch", of(t, m, "p").Cost, 0, 0)
	booktest.Missing(t, "failed of nothing", left.FailedShare)
	booktest.Near(t, "carried over all", m.Seasons[0].Parts.Carried, 0, 0)
}

// A refund that undoes two bills leaves exactly 0, in the ledger and of each batch, be
// they shared by weight, by days, or by plants gone (rule "Missing").
func TestRefundLeavesNoDust(t *testing.T) {
	amounts := []float64{0.1, 0.2, -0.3}
	if amounts[0]+amounts[1]+amounts[2] == 0 {
		t.Fatal("no dust: other sums are needed")
	}
	for _, tt := range []struct {
		category Category
		task     records.Task
	}{{records.Feed, ""}, {records.Water, ""}, {records.Heat, ""}, {records.Labour, records.SowingTask}, {records.Labour, records.OutTask}} {
		var costs []records.Cost
		for _, amount := range amounts {
			costs = append(costs, booktest.Row(t, "2025-03-31", tt.category, amount, task(tt.task), from(t, "2025-03-01")))
		}
		m := moneyOf(&records.Book{Costs: costs}, newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 60), newBatch(t, "b", "2025-03-04", "2025-03-31", "S", 1.3, 100, 77))
		line := ledgerLine(t, m, 2025, tt.category)
		if line.Ledger != 0 || line.Borne != 0 || line.Unborne != 0 {
			t.Errorf("%s: %+v", tt.category, line)
		}
		for _, b := range m.Borne {
			if b.Parts != (Parts{}) || b.Sowing != 0 {
				t.Errorf("%s %s: %s bears %v", tt.category, tt.task, b.Code, b.Parts)
			}
		}
	}
}

// The same batches by crop, by season, by cells and kind, and by month of their end.
// Of three of 2024 one ends in 2025: it stands in no month of its season. An open batch
// stands in none either.
func TestCostByOtherKeys(t *testing.T) {
	a := newBatch(t, "a", "2024-03-01", "2024-04-11", "S", 1, 100, 60)
	b := newBatch(t, "b", "2024-12-01", "2025-01-11", "S", 1, 100, 80)
	c := newBatch(t, "c", "2024-03-05", "2024-03-31", "T", 1, 50, 40)
	d := newBatch(t, "d", "2025-03-01", "2025-05-01", "T", 1, 50, 25)
	e := newBatch(t, "e", "2025-03-01", "2025-05-01", "T", 1, 50, 25)
	f := newBatch(t, "f", "2025-03-01", "2025-05-31", "T", 1, 50, 25)
	c.Crop, e.EndHow = "kale", batch.Open
	var costs []records.Cost
	for code, amount := range map[string]float64{"a": 6, "b": 8, "c": 20, "d": 50, "e": 70, "f": 3} {
		costs = append(costs, booktest.Row(t, "2025-01-01", records.Other, amount, forBatch(code)))
	}
	m := moneyOf(&records.Book{Costs: costs}, a, b, c, d, e, f)
	type row struct {
		key     batch.Group
		batches int
		total   float64
	}
	rows := func(table []Cost) (all []row) {
		for _, c := range table {
			all = append(all, row{c.Group, c.Batches, c.Total.Value})
		}
		return all
	}
	size := func(season, cells int, kind string) batch.Group {
		return batch.Group{Season: season, Cells: records.Known(cells), Kind: kind}
	}
	for _, tt := range []struct {
		name string
		got  []Cost
		want []row
	}{
		{"crops", m.Crops, []row{{batch.Group{Season: 2024, Crop: "kale"}, 1, 20}, {batch.Group{Season: 2024, Crop: "leek"}, 2, 14}, {batch.Group{Season: 2025, Crop: "leek"}, 3, 123}}},
		{"seasons", m.Seasons, []row{{batch.Group{Season: 2024}, 3, 34}, {batch.Group{Season: 2025}, 3, 123}}},
		{"sizes", m.Sizes, []row{{size(2024, 50, "T"), 1, 20}, {size(2024, 100, "S"), 2, 14}, {size(2025, 50, "T"), 3, 123}}},
		{"crops of 2025", InSeason(m.Crops, 2025), []row{{batch.Group{Season: 2025, Crop: "leek"}, 3, 123}}},
	} {
		if got := rows(tt.got); !slices.Equal(got, tt.want) {
			t.Errorf("%s: %v, want %v", tt.name, got, tt.want)
		}
	}
	type monthRow struct {
		season int
		first  string
		row
	}
	var months []monthRow
	for _, c := range m.Months {
		months = append(months, monthRow{c.Season, c.First.String(), row{c.Group, c.Batches, c.Total.Value}})
	}
	season := func(s int) batch.Group { return batch.Group{Season: s} }
	want := []monthRow{{2024, "2024-03-01", row{season(2024), 1, 20}}, {2024, "2024-04-01", row{season(2024), 1, 6}}, {2025, "2025-05-01", row{season(2025), 2, 53}}}
	if !slices.Equal(months, want) {
		t.Errorf("months: %v, want %v", months, want)
	}
	if c, ok := m.Season(2025); !ok || c.Total.Value != 123 {
		t.Errorf("2025: %+v", c)
	}
	if c, ok := m.Season(2026); ok {
		t.Errorf("2026: %+v", c)
	}
}

// The first day of a season is in it, the first of the next is not: a batch that ended on
// 1 January stands in that month only where it was sown then.
func TestMonthsAtTheTurnOfTheSeason(t *testing.T) {
	m := moneyOf(&records.Book{Costs: []records.Cost{booktest.Row(t, "2025-01-01", records.Other, 5)}},
		newBatch(t, "new", "2025-01-01", "2025-01-01", "S", 1, 100, 1), newBatch(t, "old", "2024-12-01", "2025-01-01", "S", 1, 100, 1))
	if len(m.Months) != 1 || m.Months[0].Season != 2025 || m.Months[0].First.String() != "2025-01-01" || m.Months[0].Batches != 1 {
		t.Errorf("%+v", m.Months)
	}
	if c, ok := m.Season(2024); !ok || c.Batches != 1 {
		t.Errorf("the first season: %+v", c)
	}
}

// Check C15 of the trade (own arithmetic): 128 cells with seed at 0.03, mix 0.555, a
// tray of 2.00 over 2 uses, 9 minutes at 20 an hour, room for 2.05: 10.445 a tray,
// 0.0995 for each of 105 plants used.
func TestCostOfAPlantUsed(t *testing.T) {
	tray := records.Purchase{Tray: "S", Kind: "x", Cells: 128, Count: records.Known(1), Price: records.Known(2.0), Uses: records.Known(2.0), Bought: booktest.Day(t, "2025-01-01")}
	book := &records.Book{Trays: []records.Purchase{tray}, Costs: []records.Cost{
		booktest.Row(t, "2025-03-01", records.Seed, 128*0.03), booktest.Row(t, "2025-03-01", records.Mix, 0.555),
		booktest.Row(t, "2025-03-01", records.Labour, 0, hours(0.15)), booktest.Row(t, "2025-03-01", records.Other, 2.05)}}
	book.Settings.Wage = records.Known(20.0)
	m := moneyOf(book, newBatch(t, "a", "2025-03-01", "2025-04-05", "S", 1, 128, 105))
	booktest.Known(t, "a tray", m.Cost[0].Total, 10.445, 1e-9)
	booktest.Known(t, "a plant used", m.Cost[0].PerTransplant, 0.0995, 0.00005)
	balanced(t, m)
}

// Every category has a place of its own in Parts; one that is none has no money.
func TestPartsByCategory(t *testing.T) {
	var sums partsTally
	if len(Categories) != len(sums.by) {
		t.Fatalf("%d categories, %d places", len(Categories), len(sums.by))
	}
	for i, c := range Categories {
		sums.bear(placeOf(c), tally{float64(i + 1), float64(i + 1)})
	}
	sums.bear(placeOf("rent"), tally{99, 99})
	p := sums.parts()
	for i, c := range Categories {
		if p.Of(c) != float64(i+1) {
			t.Errorf("%s: %v", c, p.Of(c))
		}
	}
	if p.Of("rent") != 0 || p.Total() != 55 {
		t.Errorf("a category that is none: %v", p)
	}
}
