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
	for _, c := range f.Climate {
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

// Of any book: a verdict says what its interval does, and only of 3 batches or more on
// both sides; of two varieties that are all of a crop each is the other's mirror, whatever
// lots they rest on.
func TestVerdictsOfAnyBook(t *testing.T) {
	clear, mirrored, byLots := 0, 0, 0
	for seed := range uint64(40) {
		b := booktest.Farm(t, seed, 2, 60)
		twoVarieties(b, int(seed))
		of := map[string][]Difference{}
		for _, d := range figures(b, "2023-01-01").Differences {
			if judged := d.Low.Known; judged != (d.Verdict != rate.TooFew) || judged && (d.Batches < 3 || d.OtherBatches < 3) {
				t.Fatalf("got %+v", d)
			}
			if d.Verdict == rate.TooFew {
				continue
			}
			if side(d) != 0 {
				clear++
			}
			if d.Verdict == rate.HigherByLot || d.Verdict == rate.LowerByLot {
				byLots++
			}
			if got, want := side(d), sign(d.Low.Value, d.High.Value); got != want {
				t.Fatalf("%+v says %d, its interval %d", d, got, want)
			}
			key := fmt.Sprint(d.Season, d.Crop)
			of[key] = append(of[key], d)
		}
		for key, pair := range of {
			if len(pair) != 2 {
				t.Fatalf("%s: %d judged of two varieties", key, len(pair))
			}
			one, other := pair[0], pair[1]
			mirrored++
			if side(one) != -side(other) || one.Low.Value != -other.High.Value || one.High.Value != -other.Low.Value || one.Batches != other.OtherBatches {
				t.Errorf("no mirrors: %+v and %+v", one, other)
			}
		}
	}
	if clear < 10 || mirrored < 20 || byLots < 3 {
		t.Errorf("%d clear, %d mirrored, %d by one lot: the books tell too little", clear, mirrored, byLots)
	}
}

// twoVarieties leaves each crop two varieties; the second of some crops comes up worse.
func twoVarieties(b *booktest.Book, seed int) {
	worse := map[string]bool{}
	for i := range b.Sowings {
		s := &b.Sowings[i]
		second := s.Variety[len(s.Variety)-1]%2 > 0
		s.Variety = fmt.Sprint(s.Crop, " ", second)
		worse[s.Code] = second && (len(s.Crop)+seed)%3 == 0
	}
	for i := range b.Counts {
		if c := &b.Counts[i]; worse[b.Code(c.Batch)] {
			c.Emerged.Value /= 2
		}
	}
}

// side is where a verdict puts a variety: above 0, below, or neither.
func side(d Difference) int {
	return map[rate.Verdict]int{rate.ClearlyHigher: 1, rate.HigherByLot: 1, rate.ClearlyLower: -1, rate.LowerByLot: -1}[d.Verdict]
}

func sign(low, high float64) int {
	switch {
	case low > rate.Equal:
		return 1
	case high < -rate.Equal:
		return -1
	}
	return 0
}

// The order of rows changes no figure, to the last digit (rule "Ties").
func TestOrderOfRowsOfTheBook(t *testing.T) {
	plain, mixed := booktest.Farm(t, 3, 3, 60), booktest.Farm(t, 3, 3, 60)
	for _, b := range []*booktest.Book{plain, mixed} {
		for i := 0; i < len(b.Chamber); i += 7 {
			b.Chamber[i].Temp, b.House[i].Low = 45, records.Known(0.0)
		}
	}
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
	two.CountsOf(one.Book(), "x", 0)
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
		"no cell":             func(b *booktest.Book) { some(b, 0, 0, 0); b.Counts[0].Cells = records.Known[int32](0) },
		"too high":            func(b *booktest.Book) { some(b, 140, 140, 140) },
		"falling":             func(b *booktest.Book) { some(b, 90, 90); b.Count("a", "2025-03-25", 30); b.Count("a", "2025-03-28", 0) },
		"strange tray":        func(b *booktest.Book) { some(b, 90, 90, 90); b.Trays = nil },
		"unknown batch":       func(b *booktest.Book) { b.Count("nobody", "2025-03-20", 4) },
		"no other lots":       func(b *booktest.Book) { b.Lot("L", "orache", 0.9); sowLot(b, "L", "orache", 50, 9, 3) },
		"a lot of nothing":    func(b *booktest.Book) { b.Lot("L", "orache", 0) },
		"a lot without label": func(b *booktest.Book) { b.Lot("L", "", 0).GermLabel = Num{}; sowLot(b, "L", "orache", 50, 9, 3) },
		"two varieties":       func(b *booktest.Book) { some(b, 0, 0, 0); alike(b, "y", "orache", "y", 100, 100, 100) },
		"chamber without stays": func(b *booktest.Book) {
			b.Sow("a", "2025-03-01", "lettuce", "x", "AIR", 1).Chamber = "box"
			b.Reading("box", "2025-03-01", 60)
		},
		"a house log of three days": func(b *booktest.Book) { some(b, 50, 60, 70); highs(b, "2025-03-01", 41, 3) },
		"no such tray":              func(b *booktest.Book) { some(b, 5); b.CountTray("a", "2025-03-25", 9, 40) },
		"before sowing":             func(b *booktest.Book) { some(b, 5); b.Count("a", "2024-03-25", 4); b.Count("a", "2024-03-27", 5) },
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
