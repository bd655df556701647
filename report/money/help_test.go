package money

import (
	"cmp"
	"slices"
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/internal/booktest"
	"traybook/report/plants"
)

// newBatch is a batch with its figures set by hand: sown and end are ISO dates, its
// usable plants are out, its end is written.
func newBatch(t testing.TB, code, sown, end, tray string, trays float64, cells int, usable float64) *plants.Plants {
	t.Helper()
	s := batch.Sowing{
		Sowing: &records.Sowing{Code: code, Sown: booktest.Day(t, sown), Crop: "leek", Variety: "Arvo", Tray: tray, Trays: trays,
			SeedsPerCell: 1, Start: records.FromSeed},
		FromSeed: true, Kind: tray, TrayCells: records.Known(cells), CellsSown: records.Known(int(trays*float64(cells) + 0.5)),
	}
	b := &batch.Batch{Sowing: s, End: booktest.Day(t, end), EndHow: batch.Written}
	return &plants.Plants{Counted: &germination.Counted{Batch: b}, Usable: records.Known(usable), UsableHow: plants.ByOut}
}

// moneyOf fills what hangs together and computes the figures of money.
func moneyOf(book *records.Book, list ...*plants.Plants) *Figures {
	return New(batchesOf(book, list), &plants.Figures{Plants: list}, book)
}

// accountsOf is moneyOf before any money is shared out.
func accountsOf(book *records.Book, list ...*plants.Plants) *accounts {
	return newAccounts(batchesOf(book, list), &plants.Figures{Plants: list}, book)
}

// batchesOf puts batches in order and says what follows from their sowings and ends.
// Today is the last day on which any was sown or ended.
func batchesOf(book *records.Book, list []*plants.Plants) *batch.Batches {
	book.Settings.SeasonStarts = cmp.Or(book.Settings.SeasonStarts, 1)
	if book.Settings.HeatingFrom == 0 {
		book.Settings.HeatingFrom, book.Settings.HeatingUntil = 10, 4
	}
	all := batch.New(book, nil, nil, 0) // for the tray codes
	slices.SortFunc(list, func(a, b *plants.Plants) int { return cmp.Compare(a.Code, b.Code) })
	var sown []*batch.Sowing
	for i, p := range list {
		b := p.Batch
		b.Nth = i
		b.Season = book.Settings.Season(b.Sown)
		b.TrayDays = b.Trays * float64(max(0, b.End-b.Sown))
		b.SeedsSown = records.Known(0.0)
		if b.FromSeed {
			b.SeedsSown = records.Known(float64(b.CellsSown.Value * b.SeedsPerCell))
		}
		if all.Today = max(all.Today, b.Sown); b.EndHow == batch.Written {
			all.Today = max(all.Today, b.End)
		}
		all.List, all.Seasons, sown = append(all.List, b), append(all.Seasons, b.Season), append(sown, &b.Sowing)
	}
	batch.Rank(sown)
	slices.Sort(all.Seasons)
	all.Seasons = slices.Compact(all.Seasons)
	return all
}

// of finds what a batch bears, or fails.
func of(t testing.TB, m *Figures, code string) *Borne {
	t.Helper()
	return booktest.Find(t, code, m.Borne, func(b *Borne) bool { return b.Code == code })
}

// bears checks what a batch bears in all, carried cost included.
func bears(t testing.TB, what string, m *Figures, code string, want float64) {
	t.Helper()
	booktest.Near(t, what+": "+code, of(t, m, code).Parts.Total(), want, 1e-9)
}

// ledgerLine finds a line, or fails.
func ledgerLine(t testing.TB, m *Figures, season int, c Category) LedgerLine {
	t.Helper()
	return booktest.Find(t, string(c), m.Ledger, func(l LedgerLine) bool { return l.Season == season && l.Category == c })
}

// balanced checks that the money balances to the cent (rule "Ledger"): borne + unborne
// = ledger line by line; borne over the book = each table of cost, by category.
func balanced(t testing.TB, m *Figures) {
	t.Helper()
	borne := map[Category]float64{}
	for _, l := range m.Ledger {
		booktest.Near(t, string(l.Category)+" balance", l.Borne+l.Unborne, l.Ledger, 0.005)
		borne[l.Category] += l.Borne
		why := 0.0
		for _, u := range m.Unborne {
			if u.Season == l.Season && u.Category == l.Category {
				why += u.Amount
			}
		}
		booktest.Near(t, string(l.Category)+" unborne, told why", why, l.Unborne, 0.005)
	}
	for name, table := range map[string][]Cost{"group": m.Cost, "crop": m.Crops, "season": m.Seasons, "size": m.Sizes} {
		var sums partsTally
		for _, c := range table {
			sums.add(&c.Parts)
		}
		all := sums.parts()
		for _, c := range Categories {
			booktest.Near(t, string(c)+" by "+name, all.Of(c), borne[c], 0.005)
		}
		booktest.Near(t, "carried by "+name, all.Carried, 0, 0.005)
	}
}

// Each of these changes one thing about a row of costs.csv.
func from(t testing.TB, s string) func(*records.Cost) {
	return func(c *records.Cost) { c.From = booktest.Day(t, s) }
}
func until(t testing.TB, s string) func(*records.Cost) {
	return func(c *records.Cost) { c.Until = booktest.Day(t, s) }
}
func task(k records.Task) func(*records.Cost) { return func(c *records.Cost) { c.Task = k } }
func forBatch(b string) func(*records.Cost)   { return func(c *records.Cost) { c.Batch = b } }
func forCrop(b string) func(*records.Cost)    { return func(c *records.Cost) { c.Crop = b } }
func forTray(b string) func(*records.Cost)    { return func(c *records.Cost) { c.Tray = b } }
func hours(h float64) func(*records.Cost) {
	return func(c *records.Cost) { c.Amount, c.Hours = Num{}, records.Known(h) }
}
