package germination

import (
	"fmt"
	"reflect"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
	"traybook/report/rate"
)

// rates lists every rate of the figures.
func (f *Figures) rates() []rate.Rate {
	var all []rate.Rate
	for _, table := range [][]Emergence{f.Emergence, f.Crops} {
		for _, e := range table {
			all = append(all, e.Rate)
		}
	}
	for _, l := range f.Lots {
		all = append(all, l.Rate)
	}
	for _, w := range f.Weeks {
		all = append(all, w.Rate)
	}
	for _, c := range f.Chambers {
		all = append(all, c.Rate)
	}
	for _, s := range f.Seasons {
		all = append(all, s)
	}
	return all
}

// Of any book: 0 <= low <= rate <= high <= 1, scatter only where there is an interval,
// and groups, crops and weeks add up to their season.
func TestLawsOfAnyBook(t *testing.T) {
	for seed := range uint64(8) {
		f := figures(booktest.Farm(t, seed, 3, 40), "2023-01-01")
		booktest.Finite(t, *f, "figures")
		for _, s := range f.rates() {
			lawful(t, s)
		}
		for season, total := range f.Seasons {
			groups, crops, weeks := 0.0, 0.0, 0.0
			for _, e := range f.Emergence {
				groups += of(season, e.Season, e.X)
			}
			for _, e := range f.Crops {
				crops += of(season, e.Season, e.X)
			}
			for _, w := range f.Weeks {
				weeks += of(season, w.Season, w.X)
			}
			if groups != total.X || crops != total.X || weeks != total.X {
				t.Errorf("%d: %v emerged; groups %v, crops %v, weeks %v", season, total.X, groups, crops, weeks)
			}
		}
	}
}

func of(season, is int, x float64) float64 {
	if season != is {
		return 0
	}
	return x
}

func lawful(t *testing.T, s rate.Rate) {
	t.Helper()
	if s.Share.Known && !(s.X >= 0 && s.X <= s.N) {
		t.Fatalf("rate: %+v", s)
	}
	if s.Low.Known && !(0 <= s.Low.Value && s.Low.Value <= s.Share.Value && s.Share.Value <= s.High.Value && s.High.Value <= 1) {
		t.Fatalf("interval: %+v", s)
	}
	if s.Low.Known != s.Rho.Known || s.Low.Known && (s.Rho.Value < 0 || s.Rho.Value > 0.5 || s.DF.Value < 3) {
		t.Fatalf("scatter: %+v", s)
	}
}

// The order of rows changes no figure, to the last digit (rule "Ties").
func TestOrderOfRowsOfTheBook(t *testing.T) {
	plain, mixed := booktest.Farm(t, 3, 3, 60), booktest.Farm(t, 3, 3, 60)
	mixed.Shuffle(9)
	if want, got := figures(plain, "2023-01-01"), figures(mixed, "2023-01-01"); !reflect.DeepEqual(got, want) {
		t.Error("another order of rows gives other figures")
	}
}

// rename turns the order of the crops round.
func rename(crop string) string {
	return map[string]string{"agretti": "zz agretti", "mibuna": "mm mibuna", "orache": "aa orache"}[crop]
}

// The name of a crop that the trade table does not know changes no number.
func TestNameOfACropChangesNothing(t *testing.T) {
	plain, renamed := booktest.Farm(t, 5, 2, 60), booktest.Farm(t, 5, 2, 60)
	for i := range renamed.Sowings {
		renamed.Sowings[i].Crop = rename(renamed.Sowings[i].Crop)
	}
	for i := range renamed.Lots {
		renamed.Lots[i].Crop = rename(renamed.Lots[i].Crop)
	}
	want, got := figures(plain, "2022-01-01"), figures(renamed, "2022-01-01")
	for _, e := range want.Emergence {
		g := e.Group
		g.Crop = rename(g.Crop)
		same := booktest.Find(t, "emergence", got.Emergence, func(e Emergence) bool { return e.Group == g })
		if same.Group = e.Group; !reflect.DeepEqual(same, e) {
			t.Errorf("got %+v, want %+v", same, e)
		}
	}
	for _, d := range want.Differences {
		same := booktest.Find(t, "difference", got.Differences, func(o Difference) bool {
			return o.Season == d.Season && o.Variety == d.Variety && o.Crop == rename(d.Crop)
		})
		if same.Crop = d.Crop; same != d {
			t.Errorf("got %+v, want %+v", same, d)
		}
	}
}

// A book written twice over in further crops leaves the first crops' own figures as
// they were: only what leans on the whole book may move.
func TestAnotherCropLeavesTheFirst(t *testing.T) {
	one, two := booktest.Farm(t, 7, 2, 60), booktest.Farm(t, 7, 2, 60)
	for _, s := range one.Sowings {
		s.Code, s.Crop, s.Lot = "x"+s.Code, "x"+s.Crop, ""
		two.Sowings = append(two.Sowings, s)
	}
	for _, c := range one.Counts {
		c.Batch = "x" + c.Batch
		two.Counts = append(two.Counts, c)
	}
	got := figures(two, "2022-01-01")
	for _, e := range figures(one, "2022-01-01").Emergence {
		same := booktest.Find(t, "emergence", got.Emergence, func(o Emergence) bool { return o.Group == e.Group })
		if !reflect.DeepEqual(same, e) {
			t.Errorf("got %+v, want %+v", same, e)
		}
	}
}

// Books with next to nothing in them: no fault, no number made up.
func TestScantBooks(t *testing.T) {
	some := func(b *booktest.Book, up ...int) { alike(b, "", "orache", "x", up...) }
	for name, fill := range map[string]func(*booktest.Book){
		"nothing":      func(*booktest.Book) {},
		"sowings only": func(b *booktest.Book) { b.Sow("a", "2025-03-01", "orache", "x", "AIR", 1); b.Trays = nil },
		"one batch":    func(b *booktest.Book) { some(b, 50) },
		"no tray": func(b *booktest.Book) {
			b.Sow("a", "2025-03-01", "orache", "x", "AIR", 0)
			b.Count("a", "2025-03-20", 0)
		},
		"no cell":       func(b *booktest.Book) { some(b, 0, 0, 0); b.Counts[0].Cells = records.Known(0) },
		"too high":      func(b *booktest.Book) { some(b, 140, 140, 140) },
		"falling":       func(b *booktest.Book) { some(b, 90, 90); b.Count("a", "2025-03-25", 30); b.Count("a", "2025-03-28", 0) },
		"strange tray":  func(b *booktest.Book) { some(b, 90, 90, 90); b.Trays = nil },
		"unknown batch": func(b *booktest.Book) { b.Count("nobody", "2025-03-20", 4) },
		"no such tray":  func(b *booktest.Book) { some(b, 5); b.CountTray("a", "2025-03-25", 9, 40) },
		"before sowing": func(b *booktest.Book) { some(b, 5); b.Count("a", "2024-03-25", 4); b.Count("a", "2024-03-27", 5) },
	} {
		t.Run(name, func(t *testing.T) {
			b := booktest.New(t)
			fill(b)
			for _, today := range []string{"2025-04-10", "2025-03-01", "2031-01-01"} {
				f := figures(b, today)
				booktest.Finite(t, *f, fmt.Sprint("figures on ", today))
				for _, s := range f.rates() {
					lawful(t, s)
				}
			}
		})
	}
}
