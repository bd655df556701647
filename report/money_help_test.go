package report

import (
	"math"
	"slices"
	"testing"

	"traybook/records"
)

// day reads an ISO date of a test book.
func day(t testing.TB, s string) records.Date {
	t.Helper()
	d, ok := records.ParseISO(s)
	if !ok {
		t.Fatalf("no date: %q", s)
	}
	return d
}

// batch is a sowing with its figures set by hand: sown and end ISO dates, all
// cells usable shares counted out.
func newBatch(t testing.TB, code, sown, end, tray string, trays float64, cells int, usable float64) *Batch {
	t.Helper()
	b := &Batch{Sowing: records.Sowing{Code: code, Sown: day(t, sown), Crop: "leek", Variety: "Arvo", Tray: tray, Trays: trays,
		SeedsPerCell: 1, Start: records.FromSeed}}
	b.End, b.EndHow, b.FromSeed = day(t, end), Written, true
	b.TrayCells, b.Kind = records.Known(cells), tray
	b.CellsSown = records.Known(int(trays*float64(cells) + 0.5))
	b.Usable, b.UsableHow = records.Known(usable), ByOut
	return b
}

// moneyOf fills what hangs together and computes the money figures.
func moneyOf(book *records.Book, batches ...*Batch) *Report {
	if book.Settings.SeasonStarts == 0 {
		book.Settings.SeasonStarts = 1
	}
	if book.Settings.Confidence == 0 {
		book.Settings.Confidence = 0.95
	}
	if book.Settings.HeatingFrom == 0 {
		book.Settings.HeatingFrom, book.Settings.HeatingUntil = 10, 4
	}
	r := &Report{Book: book, byCode: map[string]*Batch{}}
	for _, b := range batches {
		b.Season = book.Settings.Season(b.Sown)
		b.TrayDays = b.Trays * float64(max(0, b.End-b.Sown))
		if b.FromSeed && b.CellsSown.Known {
			b.SeedsSown = records.Known(float64(b.CellsSown.Value * b.SeedsPerCell))
		} else if !b.FromSeed {
			b.SeedsSown = records.Known(0.0)
		}
		r.byCode[b.Code] = b
		r.Seasons = append(r.Seasons, b.Season)
		r.LastDate = max(r.LastDate, b.Sown)
		if b.EndHow == Written {
			r.LastDate = max(r.LastDate, b.End)
		}
	}
	r.Batches = slices.SortedFunc(slices.Values(batches), func(a, b *Batch) int {
		if a.Code < b.Code {
			return -1
		}
		return 1
	})
	slices.Sort(r.Seasons)
	r.Seasons = slices.Compact(r.Seasons)
	r.scatterUsable()
	r.money()
	return r
}

func near(t *testing.T, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s: got %v, want %v", what, got, want)
	}
}

// known fails where a figure is missing.
func known(t *testing.T, what string, got Num, want, within float64) {
	t.Helper()
	if !got.Known {
		t.Errorf("%s: missing, want %v", what, want)
		return
	}
	near(t, what, got.Value, want, within)
}

// row is a cost; each of with changes one thing about it.
func row(t testing.TB, date string, c records.Category, amount float64, with ...func(*records.Cost)) records.Cost {
	t.Helper()
	cost := records.Cost{Date: day(t, date), Category: c, Amount: records.Known(amount)}
	for _, w := range with {
		w(&cost)
	}
	return cost
}

// ledgerLine finds a line, or fails.
func ledgerLine(t *testing.T, r *Report, season int, c records.Category) LedgerLine {
	t.Helper()
	for _, l := range r.Ledger {
		if l.Season == season && l.Category == string(c) {
			return l
		}
	}
	t.Errorf("no ledger line %d %s", season, c)
	return LedgerLine{}
}

// balanced checks that the money balances to the cent (rule 26): borne + unborne =
// ledger line by line, and borne over the book = the cost table, by category.
func balanced(t *testing.T, r *Report) {
	t.Helper()
	borne := map[string]float64{}
	for _, l := range r.Ledger {
		near(t, l.Category+" balance", l.Borne+l.Unborne, l.Ledger, 0.005)
		borne[l.Category] += l.Borne
	}
	var table Parts
	for _, c := range r.Cost {
		table = table.plus(c.Parts)
	}
	for c, part := range partsOf {
		near(t, string(c)+" in the cost table", *part(&table), borne[string(c)], 0.005)
	}
	near(t, "carried over the book", table.Carried, 0, 0.005)
}
