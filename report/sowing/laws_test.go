package sowing

import (
	"math/rand/v2"
	"os"
	"reflect"
	"testing"

	"traybook/records"
	"traybook/report/estimate"
	"traybook/report/internal/booktest"
)

// farm is a book by chance of sowings that do well, with a wish of 100 plants for every
// row of its table and some odd ones.
func farm(t testing.TB, seed uint64) *booktest.Book {
	b, _ := house{crops: 3, batches: 4 + int(seed), rho: 0.02, rhoSeason: 0.01}.book(t, rand.New(rand.NewPCG(seed, 5)))
	for _, r := range figures(t, b.Book()).Sowing {
		tray := map[string]string{"air-pruning": "AIR", "solid-wall": "WALL"}[r.Kind]
		wish(b, r.Crop, r.Variety, tray, "2023-05-01", 100)
	}
	wish(b, "crop 0", "", "", "2023-06-15", 333)
	wish(b, "crop 1", "variety 0", "", "", 1)
	wish(b, "never sown", "", "", "2023-06-15", 50)
	return b
}

// Of any book: the cells told are the smallest that do, a wish of 100 plants takes the
// table's cells per 100, and no number is none.
func TestLawsOfAnyBook(t *testing.T) {
	tried := 0
	for seed := range uint64(6) {
		b := farm(t, seed)
		f := figures(t, b.Book())
		booktest.Finite(t, f, "figures")
		sure := b.Settings.SureOfTarget
		for i, r := range f.Sowing {
			w := f.Wishes[i]
			if w.Cells != r.CellsPer100 || w.Trays != r.TraysPer100 || w.Basis != OfVariety || w.Rate != r.Rate {
				t.Fatalf("a wish of 100 takes %+v, the table says %+v", w, r)
			}
			used, ok := f.Scatter.Of(r.Crop)
			if !ok || r.Rate.Rho.Value != used.Rho || r.Rate.DF.Value != used.DF {
				t.Fatalf("scatter %+v, the crop's is %+v", r.Rate, used)
			}
			if !r.CellsPer100.Known {
				continue
			}
			tried++
			chance := func(n int) float64 {
				return estimate.BetaBinomialAtLeast(100, n, r.RateUsed.Value, r.Rho.Value)
			}
			if n := r.CellsPer100.Value; chance(n) < sure-1e-11 || chance(n-1) >= sure || n > 300 {
				t.Fatalf("%d cells: %v, one less %v", n, chance(n), chance(n-1))
			}
			if !(r.Rho.Value > used.Rho && r.Rho.Value < 1 && r.LeftOver.Value > 0) {
				t.Fatalf("row: %+v", r)
			}
		}
		for _, s := range f.Balance {
			near(t, "over less short", s.LeftOver-s.Short, s.Usable-s.Wanted, 1e-6)
			if s.Short < 0 || s.LeftOver < 0 || s.ShortBatches > s.Batches || (s.ShortBatches == 0) != (s.Short == 0) {
				t.Fatalf("balance: %+v", s)
			}
		}
	}
	if tried < 25 {
		t.Errorf("%d rows tried", tried)
	}
}

// The order of rows changes no figure, to the last digit; wishes stand in the order of
// their file.
func TestOrderOfRows(t *testing.T) {
	plain, mixed := farm(t, 3), farm(t, 3)
	mixed.Shuffle(9)
	want, got := figures(t, plain.Book()), figures(t, mixed.Book())
	if !reflect.DeepEqual(got, want) {
		t.Error("another order of rows gives other figures")
	}
}

// More plants never take fewer cells, nor a book more sure.
func TestMorePlantsTakeMoreCells(t *testing.T) {
	b := farm(t, 1)
	b.Wishes = nil
	for plants := range 120 {
		wish(b, "crop 0", "", "AIR", "", plants)
	}
	last := -1
	for _, w := range figures(t, b.Book()).Wishes {
		if !w.Cells.Known || w.Cells.Value < max(last, w.Plants) {
			t.Fatalf("%d plants: %v cells, %d for one less", w.Plants, w.Cells, last)
		}
		last = w.Cells.Value
	}
}

// Bad input: an empty book, only wishes, only sowings, the smallest example: no fault and
// no number that is none.
func TestPoorBooks(t *testing.T) {
	empty := booktest.New(t)
	empty.Trays = nil
	wishes := booktest.New(t)
	wish(wishes, "lettuce", "", "", "2026-05-01", 100)
	wish(wishes, "", "", "", "", 0)
	bare := booktest.New(t)
	bare.Sow("a", "2025-03-01", "orache", "x", "nowhere", 1).Wanted = records.Known(10)
	wish(bare, "orache", "x", "nowhere", "2026-05-01", 10)
	stray := booktest.Farm(t, 1, 3, 60)
	booktest.Finite(t, figures(t, stray.Book()), "figures of a farm of stray sowings")
	tiny, _ := records.Load(os.DirFS("../../examples/tiny"))
	for name, book := range map[string]*records.Book{"empty": empty.Book(), "wishes": wishes.Book(), "bare": bare.Book(), "tiny": tiny} {
		f := figures(t, book)
		booktest.Finite(t, f, name)
		if len(f.Wishes) != len(book.Wishes) || len(f.Sowing) != 0 || len(f.Weeks) != 0 {
			t.Errorf("%s: %+v", name, f)
		}
		for _, w := range f.Wishes {
			if w.Cells.Known || w.Gap(w.Cells) != FewBatches || w.SowBy.Known() != w.Planned.Known() {
				t.Errorf("%s: %+v", name, w)
			}
		}
	}
}
