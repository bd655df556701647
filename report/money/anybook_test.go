package money

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// anyBook is a farm by chance with all that money can do beside its bills: batches
// potted on, bills for one batch, crop or tray, refunds, written periods, outdoor
// readings with gaps, volumes, trays gone or of unknown number, codes that nobody bought.
func anyBook(t testing.TB, seed uint64) *records.Book {
	t.Helper()
	b, rng := booktest.Farm(t, seed, 3, 40), rand.New(rand.NewPCG(seed, 7))
	b.Settings.DiscountRate = 0.05 * rng.Float64()
	for i := range b.House {
		if low := 25*rng.Float64() - 5; rng.IntN(60) > 0 {
			b.House[i].OutLow, b.House[i].OutHigh = records.Known(low), records.Known(low+8)
		}
	}
	moreTrays(b, rng)
	morePottingOn(b, rng)
	for range 40 {
		moreCosts(b, rng)
	}
	return b.Book()
}

// moreTrays buys a code that is never sown, breaks some of one, and leaves a count blank.
func moreTrays(b *booktest.Book, rng *rand.Rand) {
	for i := range 2 {
		b.Trays[i].CellML = records.Known(10 + 20*rng.Float64())
	}
	b.Trays[rng.IntN(2)].CellML = Num{Known: rng.IntN(2) > 0, Value: 25}
	gone := b.Tray("AIR", "air-pruning", 100)
	gone.Bought, gone.Count = records.NewDate(2020+rng.IntN(3), 5, 1), records.Known(-rng.IntN(60))
	idle := b.Tray("IDLE", "third", 72)
	idle.Price, idle.Count, idle.Uses = records.Known(3.0), records.Known(10), records.Known(20.0)
	blank := b.Tray("WALL", "solid-wall", 100)
	blank.Price, blank.Bought = records.Known(2.0), records.NewDate(2021, 1, 1+rng.IntN(300))
}

// morePottingOn lets one batch of six come of another, some sown in a code that nobody
// bought.
func morePottingOn(b *booktest.Book, rng *rand.Rand) {
	for i := range b.Sowings {
		s := &b.Sowings[i]
		if s.From = ""; rng.IntN(6) > 0 || i == 0 {
			continue
		}
		if from := b.Sowings[rng.IntN(i)]; from.Sown < s.Sown {
			s.From = from.Code
			if rng.IntN(2) > 0 {
				b.Out(from.Code, (from.Sown + 20).String(), rng.IntN(80), records.ToPottedOn, rng.IntN(2) > 0)
			}
		}
		if rng.IntN(5) == 0 {
			s.Tray, s.Cells = "NOWHERE", records.Maybe[int]{Known: rng.IntN(2) > 0, Value: 50}
		}
	}
}

// moreCosts adds a row for something: a period, a batch, a crop, a tray, or all.
func moreCosts(b *booktest.Book, rng *rand.Rand) {
	c := records.Categories[rng.IntN(len(records.Categories))]
	day := records.NewDate(2020+rng.IntN(3), 1, 1) + records.Date(rng.IntN(365))
	row := b.Cost(day.String(), c, 60*rng.Float64()-10)
	if c == records.Labour {
		row.Task = []records.Task{"", records.SowingTask, records.OutTask, records.CareTask}[rng.IntN(4)]
	}
	switch rng.IntN(5) {
	case 0:
		row.Batch = b.Sowings[rng.IntN(len(b.Sowings))].Code
	case 1:
		row.Crop = b.Sowings[rng.IntN(len(b.Sowings))].Crop
	case 2:
		row.Tray = []string{"AIR", "WALL", "IDLE"}[rng.IntN(3)]
	case 3:
		row.From = day - records.Date(rng.IntN(200))
		row.Until = row.From + records.Date(rng.IntN(60))
	}
}

// Of any book (rule "Ledger"): every line and the tables balance to the cent, category by
// category; every priced row stands in the ledger once, of which batches bear a part or
// nobody; no number is none; and what stands behind a transplant is its cost times the
// usable plants.
func TestMoneyOfAnyBook(t *testing.T) {
	for seed := range uint64(40) {
		book := anyBook(t, seed)
		m := figures(book)
		booktest.Finite(t, m, "figures")
		balanced(t, m)
		entered(t, book, m)
		total := 0
		for _, c := range m.Cost {
			if total += c.Batches; c.PerTransplant.Known {
				booktest.Near(t, fmt.Sprint(c.Group), c.PerTransplant.Value*c.Usable.Value, c.Behind.Total(), 1e-9)
			}
		}
		if total != len(m.Borne) {
			t.Errorf("%d batches of %d", total, len(m.Borne))
		}
		for _, b := range m.Borne {
			if b.Cost.Value != b.Parts.Total() {
				t.Errorf("%s: %v, parts of %v", b.Code, b.Cost, b.Parts.Total())
			}
		}
	}
}

// entered checks that the ledger holds every row of costs.csv, by season and category;
// seed of lots and the charges of trays stand beside them. The reasons why money is
// unborne add up to what is.
func entered(t *testing.T, book *records.Book, m *Figures) {
	t.Helper()
	rows, reasons := map[ledgerKey]float64{}, map[ledgerKey]float64{}
	for _, c := range book.Costs {
		if c.Category != records.Seed {
			rows[ledgerKey{book.Settings.Season(c.Date), c.Category}] += c.Amount.Or(20 * c.Hours.Value)
		}
	}
	for key, want := range rows {
		booktest.Near(t, fmt.Sprint(key), ledgerLine(t, m, key.season, key.category).Ledger, want, 1e-9)
	}
	for _, u := range m.Unborne {
		reasons[ledgerKey{u.Season, u.Category}] += u.Amount
	}
	for _, l := range m.Ledger {
		booktest.Near(t, fmt.Sprint(l), reasons[ledgerKey{l.Season, l.Category}], l.Unborne, 1e-9)
		if _, written := rows[ledgerKey{l.Season, l.Category}]; !written && l.Category != records.Seed && l.Category != TrayCharge {
			t.Errorf("a line without a row: %+v", l)
		}
	}
}

// Without refunds no batch bears less than nothing of its own, and the share of failed
// cells is one.
func TestNoRefundNoGain(t *testing.T) {
	for seed := range uint64(20) {
		book := anyBook(t, seed)
		for i := range book.Costs {
			book.Costs[i].Amount.Value = max(0, book.Costs[i].Amount.Value)
		}
		m := figures(book)
		for _, b := range m.Borne {
			for i, part := range b.Parts.By {
				if part < 0 {
					t.Errorf("%s bears %v of %s", b.Code, part, Categories[i])
				}
			}
			if b.Cost.Value < 0 {
				t.Errorf("%s handed on more than it had: %v", b.Code, b.Cost)
			}
		}
		for _, c := range m.Cost {
			if c.FailedShare.Known && !(0 <= c.FailedShare.Value && c.FailedShare.Value <= 1) {
				t.Errorf("%v: failed %v", c.Group, c.FailedShare)
			}
		}
	}
}

// periods are ten bills of a category with written periods.
func periods(t testing.TB, seed uint64, c Category) []records.Cost {
	t.Helper()
	rng := rand.New(rand.NewPCG(seed, 11))
	var rows []records.Cost
	for range 10 {
		first := records.NewDate(2020+rng.IntN(3), 1, 1) + records.Date(rng.IntN(365))
		row := booktest.Row(t, first.String(), c, 10+50*rng.Float64())
		row.From, row.Until = first, first+records.Date(rng.IntN(60))
		rows = append(rows, row)
	}
	return rows
}

// Heat as a second person would reckon it, batch by batch and day by day (rule "Heat").
func TestHeatReckonedTwice(t *testing.T) {
	for seed := range uint64(20) {
		book := anyBook(t, seed)
		book.Costs = periods(t, seed, records.Heat)
		m := figures(book)
		want := map[string]float64{}
		for _, row := range book.Costs {
			heatByHand(book, row, m.Borne, want)
		}
		for _, b := range m.Borne {
			booktest.Near(t, fmt.Sprint(seed, " ", b.Code), b.Parts.Of(records.Heat), want[b.Code], 1e-9)
		}
	}
}

// heatByHand adds what each batch bears of a row of heat.
func heatByHand(book *records.Book, row records.Cost, batches []*Borne, to map[string]float64) {
	outside, known := map[records.Date]float64{}, true
	for _, h := range book.House {
		if h.OutLow.Known && h.OutHigh.Known {
			outside[h.Date] = (h.OutLow.Value + h.OutHigh.Value) / 2
		}
	}
	heated := func(d records.Date) bool { return book.Settings.Heating(int(d.Month())) }
	some := false
	for d := row.From; d <= row.Until; d++ {
		some = some || heated(d)
	}
	counts := func(d records.Date) bool { return row.From <= d && d <= row.Until && (!some || heated(d)) }
	for d := row.From; d <= row.Until; d++ {
		_, read := outside[d]
		known = known && (read || !counts(d))
	}
	weights := func(cold func(records.Date) float64) (of map[string]float64, all float64) {
		of = map[string]float64{}
		for _, b := range batches {
			for d := b.Sown; d < b.End; d++ {
				if counts(d) {
					of[b.Code] += b.Trays * cold(d)
				}
			}
			all += of[b.Code]
		}
		return of, all
	}
	of, all := weights(func(d records.Date) float64 { return max(0, 15-outside[d]) })
	if !known || all == 0 {
		of, all = weights(func(records.Date) float64 { return 1 })
	}
	for code, w := range of {
		if all > 0 {
			to[code] += row.Amount.Value * w / all
		}
	}
}

// Power and water as a second person would reckon them: trays x days of the period
// on which a batch stood (rule "Bills over a period").
func TestBillsReckonedTwice(t *testing.T) {
	for seed := range uint64(12) {
		book := anyBook(t, seed)
		book.Costs = append(periods(t, seed, records.Power), periods(t, seed+99, records.Water)...)
		m := figures(book)
		want := map[string]float64{}
		for _, row := range book.Costs {
			days := func(b *Borne) float64 {
				return b.Trays * float64(max(0, min(b.End, row.Until+1)-max(b.Sown, row.From)))
			}
			all := 0.0
			for _, b := range m.Borne {
				all += days(b)
			}
			for _, b := range m.Borne {
				if all > 0 {
					want[b.Code] += row.Amount.Value * days(b) / all
				}
			}
		}
		for _, b := range m.Borne {
			booktest.Near(t, fmt.Sprint(seed, " ", b.Code), b.Parts.Of(records.Power)+b.Parts.Of(records.Water), want[b.Code], 1e-9)
		}
	}
}
