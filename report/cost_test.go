package report

import (
	"testing"

	"traybook/records"
)

func bought(t testing.TB, tray, date string, count int, price, lasts float64) records.Purchase {
	t.Helper()
	p := records.Purchase{Tray: tray, Kind: tray, Cells: 100, Count: records.Known(count), Price: records.Known(price)}
	if lasts > 0 {
		p.Lasts = records.Known(lasts)
	}
	if count < 0 {
		p.Price = Num{}
	}
	if date != "" {
		p.Bought = day(t, date)
	}
	return p
}

// Seed of a lot costs its price over the larger of seeds bought and sown (rule
// 20): 10 for 1000 seeds, of which 400 sown, leaves 6 in hand and out of the
// ledger; 200 bought and 400 sown bear all 10. A lot never sown is in no season.
func TestSeedOfALot(t *testing.T) {
	for bought, want := range map[float64]float64{1000: 1, 200: 2.5} {
		a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 50)
		b := newBatch(t, "b", "2026-03-01", "2026-03-11", "S", 3, 100, 50)
		a.Lot, b.Lot = "L1", "L1"
		book := &records.Book{Lots: []records.Lot{
			{Code: "L1", Seeds: records.Known(bought), Price: records.Known(10.0)},
			{Code: "L2", Seeds: records.Known(5.0), Price: records.Known(99.0)},
		}}
		r := moneyOf(book, a, b)
		near(t, "a", a.Parts.Seed, want, 1e-12)
		near(t, "b", b.Parts.Seed, 3*want, 1e-12)
		near(t, "ledger 2025", ledgerLine(t, r, 2025, records.Seed).Ledger, want, 1e-12)
		balanced(t, r)
	}
}

// Shared seed falls on batches without a priced lot; on all where each has one.
func TestSharedSeed(t *testing.T) {
	lots := []records.Lot{{Code: "L1", Price: records.Known(10.0)}, {Code: "L2"}}
	for _, tt := range []struct {
		lotOfB string
		a, b   float64
	}{{"", 10, 8}, {"L2", 10, 8}, {"L1", 5 + 4, 5 + 4}} {
		a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 50)
		b := newBatch(t, "b", "2025-03-01", "2025-03-11", "S", 1, 100, 50)
		a.Lot, b.Lot = "L1", tt.lotOfB
		r := moneyOf(&records.Book{Lots: lots, Costs: []records.Cost{row(t, "2025-03-01", records.Seed, 8)}}, a, b)
		near(t, "a", a.Parts.Seed, tt.a, 1e-12)
		near(t, "b", b.Parts.Seed, tt.b, 1e-12)
		balanced(t, r)
	}
}

// charges are the tray charges of the ledger by season, borne and unborne.
func charges(r *Report) map[int]LedgerLine {
	of := map[int]LedgerLine{}
	for _, l := range r.Ledger {
		if l.Category == TrayCharge {
			of[l.Season] = l
		}
	}
	return of
}

// A tray's price is recovered over its life, in the season of its purchase and
// the following; a life of 2.5 seasons ends with half a season's charge (rules
// 24, 46). By hand, at 0 %: 10 trays at 5 over 2.5 seasons are 20 a season.
func TestTrayCharge(t *testing.T) {
	var batches []*Batch
	for _, s := range []string{"2022", "2023", "2024", "2025", "2026"} {
		batches = append(batches, newBatch(t, "b"+s, s+"-03-01", s+"-03-11", "S", 1, 100, 50))
	}
	tests := []struct {
		name string
		rows []records.Purchase
		want [5]float64 // 2022 to 2026
	}{
		{"2.5 seasons", []records.Purchase{bought(t, "S", "2023-02-01", 10, 5, 2.5)}, [5]float64{0, 20, 20, 10, 0}},
		{"no date: every season", []records.Purchase{bought(t, "S", "", 10, 5, 2.5)}, [5]float64{20, 20, 20, 20, 20}},
		{"half a season", []records.Purchase{bought(t, "S", "2023-02-01", 10, 5, 0.5)}, [5]float64{0, 50, 0, 0, 0}},
		{"bought before the first sowing", []records.Purchase{bought(t, "S", "2021-02-01", 10, 5, 2.5)}, [5]float64{20, 10, 0, 0, 0}},
		{"4 broken in 2024", []records.Purchase{bought(t, "S", "2023-02-01", 10, 5, 2.5), bought(t, "S", "2024-06-01", -4, 0, 0)},
			[5]float64{0, 20, 12, 6, 0}},
		{"the oldest go first", []records.Purchase{bought(t, "S", "2022-02-01", 10, 5, 5), bought(t, "S", "2023-02-01", 10, 15, 5),
			bought(t, "S", "2024-06-01", -14, 0, 0)}, [5]float64{10, 40, 18, 18, 18}},
		{"more broken than bought by then", []records.Purchase{bought(t, "S", "2022-02-01", 10, 5, 5), bought(t, "S", "2023-02-01", -14, 0, 0),
			bought(t, "S", "2024-02-01", 10, 5, 5)}, [5]float64{10, 0, 6, 6, 6}},
		{"life of one season where none is written", []records.Purchase{bought(t, "S", "2023-02-01", 10, 5, 0)}, [5]float64{0, 50, 0, 0, 0}},
		{"blank count: nothing", []records.Purchase{bought(t, "S", "2023-02-01", 10, 5, 5), {Tray: "S", Kind: "S", Cells: 100, Price: records.Known(9.0)}},
			[5]float64{0, 10, 10, 10, 10}},
	}
	for _, tt := range tests {
		r := moneyOf(&records.Book{Trays: tt.rows}, batches...)
		of := charges(r)
		for i, want := range tt.want {
			near(t, tt.name, of[2022+i].Ledger, want, 1e-9)
			near(t, tt.name+", borne", of[2022+i].Borne, want, 1e-9)
		}
		balanced(t, r)
	}
}

// Trays in which nothing was sown are a cost that no batch bears (rule 26), also
// in a season without any sowing between others.
func TestIdleTraysAreUnborne(t *testing.T) {
	a := newBatch(t, "a", "2023-03-01", "2023-03-11", "S", 1, 100, 50)
	b := newBatch(t, "b", "2025-03-01", "2025-03-11", "T", 1, 100, 50)
	r := moneyOf(&records.Book{Trays: []records.Purchase{bought(t, "S", "2023-01-01", 4, 10, 4)}}, a, b)
	of := charges(r)
	near(t, "2023 borne", of[2023].Borne, 10, 1e-9)
	near(t, "2024 unborne", of[2024].Unborne, 10, 1e-9)
	near(t, "2025 unborne", of[2025].Unborne, 10, 1e-9)
	balanced(t, r)
}

// Capital recovery through the whole path: the purchase of 1000 over 12 seasons at
// 5 % costs 112.825410020815 a season: PMT(0.05;12;1000) of OpenFormula (OASIS,
// ODF 1.2 part 2, 6.12.37), recomputed with R 4.2.2.
func TestTrayChargeIsThePublishedPayment(t *testing.T) {
	book := &records.Book{Trays: []records.Purchase{bought(t, "S", "2025-01-01", 1, 1000, 12)}}
	book.Settings.DiscountRate = 0.05
	a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 50)
	r := moneyOf(book, a)
	near(t, "charge", ledgerLine(t, r, 2025, TrayCharge).Borne, 112.825410020815, 1e-6)
	known(t, "a transplant", a.PerTransplant, 112.825410020815/50, 1e-7)
}

// Life (rules 24, 54): 4 of 2 owned trays sown are 2 uses a season; 3 years hold
// 6 uses, 5 uses hold 2.5 years; the smaller ends it.
func TestLife(t *testing.T) {
	none, n := Num{}, func(v float64) Num { return records.Known(v) }
	tests := []struct {
		name                  string
		trays                 float64 // sown
		lasts, uses           Num
		wantUses, wantSeasons Num
		assumed               bool
	}{
		{"years alone", 4, n(3), none, n(6), n(3), false},
		{"uses alone", 4, none, n(5), n(5), n(2.5), false},
		{"uses end first", 4, n(3), n(5), n(5), n(2.5), false},
		{"years end first", 4, n(2), n(5), n(4), n(2), false},
		{"neither", 4, none, none, n(2), n(1), true},
		{"never sown", 0, n(3), n(5), n(5), n(3), false},
		{"never sown, neither", 0, none, none, none, n(1), true},
		{"lives of 0 are not written", 4, n(0), n(0), n(2), n(1), true},
	}
	for _, tt := range tests {
		tray := records.Purchase{Tray: "S", Kind: "k", Cells: 100, Count: records.Known(2), Lasts: tt.lasts, Uses: tt.uses}
		b := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", tt.trays, 100, 0)
		r := moneyOf(&records.Book{Trays: []records.Purchase{tray}}, b)
		got := trayCodes(r)["S"].life
		if got.Uses != tt.wantUses || got.Seasons != tt.wantSeasons || got.Assumed != tt.assumed {
			t.Errorf("%s: %+v", tt.name, got)
		}
	}
}

// Potting on (rules 25, 52), by hand. Plugs p cost 90, 100 usable, 80 potted on to
// q (60 cells) and r (20): share 0.8, 72 given, 54 and 18. q costs 10 itself; its
// 64 go on whole to s, since nothing is known of its usable plants.
func TestPottingOn(t *testing.T) {
	p := newBatch(t, "p", "2025-03-01", "2025-03-21", "S", 1, 100, 100)
	q := newBatch(t, "q", "2025-03-20", "2025-04-20", "S", 0.6, 100, 0)
	r := newBatch(t, "r", "2025-03-20", "2025-04-20", "S", 0.2, 100, 20)
	s := newBatch(t, "s", "2025-04-20", "2025-05-20", "S", 0.6, 100, 50)
	q.From, r.From, s.From = "p", "p", "q"
	q.Usable, q.UsableHow = Num{}, ""
	book := &records.Book{
		Costs: []records.Cost{row(t, "2025-03-01", records.Other, 90, forBatch("p")), row(t, "2025-03-21", records.Mix, 10, forBatch("q"))},
		Outs: []records.Out{{Batch: "p", Date: day(t, "2025-03-20"), Plants: 50, To: records.ToPottedOn},
			{Batch: "p", Date: day(t, "2025-03-20"), Plants: 30, To: records.ToPottedOn}},
	}
	rep := moneyOf(book, p, q, r, s)
	for _, tt := range []struct {
		b              *Batch
		carried, total float64
	}{{p, -72, 18}, {q, 54 - 64, 0}, {r, 18, 18}, {s, 64, 64}} {
		near(t, tt.b.Code+" carried", tt.b.Parts.Carried, tt.carried, 1e-9)
		near(t, tt.b.Code+" cost", tt.b.Cost.Value, tt.total, 1e-9)
	}
	known(t, "p, 20 plants left", p.PerTransplant, 18.0/20, 1e-9)
	balanced(t, rep)
}

// Without potted-on rows the heirs' cells move, at most all that was usable.
func TestPottingOnByCells(t *testing.T) {
	for usable, carried := range map[float64]float64{80: -45, 30: -60, 0: -60} {
		p := newBatch(t, "p", "2025-03-01", "2025-03-21", "S", 1, 100, usable)
		q := newBatch(t, "q", "2025-03-20", "2025-04-20", "S", 0.6, 100, 50)
		q.From = "p"
		r := moneyOf(&records.Book{Costs: []records.Cost{row(t, "2025-03-01", records.Other, 60, forBatch("p"))}}, p, q)
		near(t, "p", p.Parts.Carried, carried, 1e-9)
		if usable <= 60 && p.PerTransplant.Known {
			t.Errorf("a cost for plants that are all potted on: %v", p.PerTransplant)
		}
		balanced(t, r)
	}
}

// Rules 27 and 60 beside 26: 30 + 70 are borne by two ended batches of 60 + 80
// usable plants, of which 80 are a guess; the open batch's 50 stand in the
// money columns alone.
func TestCostTable(t *testing.T) {
	a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 60)
	b := newBatch(t, "b", "2025-03-01", "2025-03-11", "S", 1, 100, 80)
	c := newBatch(t, "c", "2025-03-01", "2025-03-11", "S", 1, 100, 40)
	b.UsableHow, c.EndHow = Estimated, Open
	r := moneyOf(&records.Book{Costs: []records.Cost{row(t, "2025-03-02", records.Mix, 30, forBatch("a")),
		row(t, "2025-03-02", records.Mix, 70, forBatch("b")), row(t, "2025-03-02", records.Mix, 50, forBatch("c"))}}, a, b, c)
	got := r.Cost[0]
	if len(r.Cost) != 1 || got.Batches != 3 || got.Open != 1 || got.Rests != 2 {
		t.Fatalf("%+v", r.Cost)
	}
	known(t, "total", got.Total, 150, 1e-9)
	known(t, "usable", got.Usable, 140, 0)
	known(t, "a transplant", got.PerTransplant, 100.0/140, 1e-12)
	known(t, "estimated", got.EstimatedShare, 80.0/140, 1e-12)
	known(t, "failed: 30 x 0.4 + 70 x 0.2 of 100", got.FailedShare, 0.26, 1e-12)
	if c.PerTransplant.Known {
		t.Error("a running batch has a cost of a transplant")
	}
	balanced(t, r)
}

// Check C15 of the trade (own arithmetic): 128 cells with seed at 0.03, mix 0.555, a
// tray of 2.00 over 2 uses, 9 minutes at 20 an hour, room for 2.05: 10.445 a tray,
// 0.0995 for each of 105 plants used.
func TestCostOfAPlantUsed(t *testing.T) {
	tray := records.Purchase{Tray: "S", Kind: "x", Cells: 128, Count: records.Known(1), Price: records.Known(2.0), Uses: records.Known(2.0), Bought: day(t, "2025-01-01")}
	book := &records.Book{Trays: []records.Purchase{tray}, Costs: []records.Cost{
		row(t, "2025-03-01", records.Seed, 128*0.03), row(t, "2025-03-01", records.Mix, 0.555),
		row(t, "2025-03-01", records.Labour, 0, hours(0.15)), row(t, "2025-03-01", records.Other, 2.05)}}
	book.Settings.Wage = records.Known(20.0)
	r := moneyOf(book, newBatch(t, "a", "2025-03-01", "2025-04-05", "S", 1, 128, 105))
	known(t, "a tray", r.Cost[0].Total, 10.445, 1e-9)
	known(t, "a plant used", r.Cost[0].PerTransplant, 0.0995, 0.00005)
	balanced(t, r)
}

// Seeds bought, as written or from grams; the trade table gives lettuce 600 to 1200 seeds a
// gram (growers' secondary lists), of which the middle stands, marked; unknown is not 0.
func TestSeedsBought(t *testing.T) {
	n := func(v float64) Num { return records.Known(v) }
	tests := []struct {
		lot     records.Lot
		want    Num
		guessed bool
	}{
		{records.Lot{Seeds: n(500), Grams: n(9)}, n(500), false},
		{records.Lot{Grams: n(2), SeedsPerGram: n(800)}, n(1600), false},
		{records.Lot{Crop: "lettuce", Grams: n(2)}, n(1800), true},
		{records.Lot{Crop: "moonroot", Grams: n(2)}, Num{}, false},
		{records.Lot{Crop: "lettuce"}, Num{}, false},
	}
	for _, tt := range tests {
		if got, guessed := seedsBought(tt.lot); got != tt.want || guessed != tt.guessed {
			t.Errorf("%+v: %v, guessed %v", tt.lot, got, guessed)
		}
	}
}

// Shared seed where every batch from seed has a priced lot: all bear it, and a batch that was
// potted on, without seed of its own, none (rule 20).
func TestSharedSeedPassesPottedBatches(t *testing.T) {
	a := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", 1, 100, 50)
	b := newBatch(t, "b", "2025-03-05", "2025-03-11", "S", 1, 100, 50)
	a.Lot, b.FromSeed = "L1", false
	book := &records.Book{Lots: []records.Lot{{Code: "L1", Price: records.Known(10.0)}}, Costs: []records.Cost{row(t, "2025-03-01", records.Seed, 8)}}
	balanced(t, moneyOf(book, a, b))
	near(t, "a", a.Parts.Seed, 18, 1e-12)
	near(t, "b", b.Parts.Seed, 0, 0)
}
