package plants

import (
	"math"
	"os"
	"reflect"
	"slices"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
	"traybook/report/rate"
)

// rates lists every rate with an interval.
func (f *Figures) rates() []rate.Rate {
	var all []rate.Rate
	for _, q := range f.Quality {
		all = append(all, q.Rate)
	}
	for _, l := range f.Leeway {
		all = append(all, l.Rate)
	}
	for _, u := range slices.Concat(f.Usable, f.UsableCrops) {
		all = append(all, u.Rate)
	}
	for _, q := range f.QualityCrops {
		all = append(all, q.Rate)
	}
	for _, seasons := range []map[int]rate.Rate{f.QualitySeasons, f.UsableSeasons} {
		for _, r := range seasons {
			all = append(all, r)
		}
	}
	return all
}

// Of any book: the groups of a season, its crops, and the season itself hold the same
// batches and plants.
func TestSeasonsAddUp(t *testing.T) {
	for seed := range uint64(4) {
		f := figures(t, booktest.Farm(t, seed, 3, 40).Book())
		for season := 2020; season <= 2022; season++ {
			quality := [][]rate.Rate{ratesIn(f.Quality, season, qualityRate), ratesIn(f.QualityCrops, season, qualityRate), {f.QualitySeasons[season]}}
			usable := [][]rate.Rate{ratesIn(f.Usable, season, usableRate), ratesIn(f.UsableCrops, season, usableRate), {f.UsableSeasons[season]}}
			for _, levels := range [][][]rate.Rate{quality, usable} {
				want := total(levels[2])
				for _, level := range levels[:2] {
					got := total(level)
					if got.Batches != want.Batches || got.N != want.N || math.Abs(got.X-want.X) > 1e-9 || want.Batches == 0 {
						t.Errorf("seed %d, season %d: %+v, want %+v", seed, season, got, want)
					}
				}
			}
		}
	}
}

func qualityRate(q Quality) (int, rate.Rate) { return q.Season, q.Rate }
func usableRate(u Usable) (int, rate.Rate)   { return u.Season, u.Rate }

// ratesIn are the rates of a season.
func ratesIn[T any](table []T, season int, of func(T) (int, rate.Rate)) (all []rate.Rate) {
	for _, row := range table {
		if in, r := of(row); in == season {
			all = append(all, r)
		}
	}
	return all
}

// total adds rates up.
func total(rates []rate.Rate) (sum rate.Rate) {
	for _, r := range rates {
		sum.Batches, sum.X, sum.N = sum.Batches+r.Batches, sum.X+r.X, sum.N+r.N
	}
	return sum
}

// Of any book: 0 <= low <= rate <= high <= 1, no more usable plants than cells, and the
// batches of the groups add up.
func TestLawsOfAnyBook(t *testing.T) {
	for seed := range uint64(8) {
		f := figures(t, booktest.Farm(t, seed, 3, 40).Book())
		booktest.Finite(t, f, "figures")
		for _, r := range f.rates() {
			if r.Share.Known && !(r.X >= 0 && r.X <= r.N) {
				t.Fatalf("rate: %+v", r)
			}
			if r.Low.Known && !(0 <= r.Low.Value && r.Low.Value <= r.Share.Value && r.Share.Value <= r.High.Value && r.High.Value <= 1) {
				t.Fatalf("interval: %+v", r)
			}
			if r.Low.Known != r.Rho.Known || r.Low.Known && !r.Share.Known {
				t.Fatalf("scatter: %+v", r)
			}
		}
		total := 0
		for _, u := range f.Usable {
			total += u.Batches + u.LeftOut
		}
		if total != len(f.Plants) {
			t.Errorf("usable: %d batches of %d", total, len(f.Plants))
		}
		for _, p := range f.Plants {
			if p.Usable.Known && p.Usable.Value > float64(p.CellsSown.Value) {
				t.Errorf("%s: %v usable of %d", p.Code, p.Usable.Value, p.CellsSown.Value)
			}
			if p.Usable.Known != (p.UsableHow != "") {
				t.Errorf("%s: usable %v, %q", p.Code, p.Usable, p.UsableHow)
			}
		}
	}
}

// The order of rows changes no figure, to the last digit.
func TestOrderOfRows(t *testing.T) {
	plain, mixed := booktest.Farm(t, 3, 3, 60), booktest.Farm(t, 3, 3, 60)
	mixed.Shuffle(9)
	want, got := figures(t, plain.Book()), figures(t, mixed.Book())
	if !reflect.DeepEqual(got, want) {
		t.Error("another order of rows gives other figures")
	}
}

// tiny is examples/tiny, whose figures are worked out by hand in its comments.
func tiny(t testing.TB) *Figures {
	t.Helper()
	book, _ := records.Load(os.DirFS("../../examples/tiny"))
	return figures(t, book)
}

// Usable: A 85 + 5; C 150 + 40, cleared; E cleared with nothing.
func TestTinyUsable(t *testing.T) {
	f := tiny(t)
	for code, want := range map[string]float64{"A": 90, "B": 80, "C": 190, "D": 40, "E": 0} {
		if got := of(t, f, code); got.UsableHow != ByOut {
			t.Errorf("%s: usable %s", code, got.UsableHow)
		}
		booktest.Known(t, code, of(t, f, code).Usable, want, 0)
	}
	u := booktest.Find(t, "usable in walls", f.Usable, func(u Usable) bool { return u.Crop == "lettuce" && u.Kind == "solid-wall" })
	booktest.Known(t, "usable rate", u.Share, 80.0/150, 1e-15)
}

// B: scores 3 and more are fit: 7 + 8 + 2 = 17 of 20. Looks a day before planned, one
// batch of a kind: no share.
func TestTinyQuality(t *testing.T) {
	f := tiny(t)
	q := booktest.Find(t, "B", f.Quality, func(q Quality) bool { return q.Kind == "solid-wall" })
	booktest.Known(t, "usable share", q.Share, 0.85, 1e-15)
	for i, want := range []float64{1, 2, 7, 8, 2} {
		booktest.Known(t, "score", q.S[i], want, 0)
	}
	for _, l := range f.Leeway {
		booktest.Missing(t, "leeway", l.Share)
		if l.DaysLate != 0 || l.Batches != 1 {
			t.Errorf("leeway: %+v", l)
		}
	}
	if len(f.Leeway) != 4 { // lettuce and all crops, each by kind
		t.Errorf("leeway: %d rows", len(f.Leeway))
	}
}
