package report

import (
	"math/rand/v2"
	"reflect"
	"strings"
	"testing"
)

// shares lists every rate with an interval of a report.
func (r *Report) shares() []Rate {
	var all []Rate
	for _, e := range r.Emergence {
		all = append(all, e.Rate)
	}
	for _, l := range r.Lots {
		all = append(all, l.Rate)
	}
	for _, q := range r.Quality {
		all = append(all, q.Rate)
	}
	for _, l := range r.Leeway {
		all = append(all, l.Rate)
	}
	for _, u := range r.Usable {
		all = append(all, u.Rate)
	}
	for _, w := range r.Weeks {
		all = append(all, w.Rate)
	}
	return append(all, r.SeasonEmergence(r.Season))
}

// Of any book: 0 <= low <= rate <= high <= 1, no more usable plants than cells, batches
// of the groups add up, and the money balances.
func TestLawsOfAnyBook(t *testing.T) {
	for seed := range uint64(8) {
		r := randomFarm(t, seed, 3, 40).report()
		finite(t, reflect.ValueOf(*r), "report")
		for _, s := range r.shares() {
			if s.Share.Known && !(s.X >= 0 && s.X <= s.N) {
				t.Fatalf("rate: %+v", s)
			}
			if s.Low.Known && !(0 <= s.Low.Value && s.Low.Value <= s.Share.Value && s.Share.Value <= s.High.Value && s.High.Value <= 1) {
				t.Fatalf("interval: %+v", s)
			}
			if s.Low.Known != s.Rho.Known || s.Low.Known && (s.Rho.Value < 0 || s.Rho.Value > 0.5 || s.DF.Value < minDF) {
				t.Fatalf("scatter: %+v", s)
			}
		}
		total := 0
		for _, u := range r.Usable {
			total += u.Batches + u.LeftOut
		}
		if total != len(r.Batches) {
			t.Errorf("usable: %d batches of %d", total, len(r.Batches))
		}
		for _, b := range r.Batches {
			if b.Usable.Known && b.Usable.Value > float64(b.CellsSown.Value) {
				t.Errorf("%s: %v usable of %d", b.Code, b.Usable.Value, b.CellsSown.Value)
			}
		}
		balanced(t, r)
	}
}

// figures are the parts of a report that a person reads, without the book itself.
func figures(r *Report) map[string]any {
	return map[string]any{"inputs": r.Inputs, "batches": r.Batches, "emergence": r.Emergence, "differences": r.Differences, "lots": r.Lots,
		"timing": r.Timing, "losses": r.Losses, "weeks": r.Weeks, "chambers": r.Chambers, "quality": r.Quality, "leeway": r.Leeway,
		"usable": r.Usable, "room": r.Room, "in use": r.InUse, "week": r.Week, "missing": r.Missing, "matches": r.Matches}
}

// The order of rows changes no figure, to the last digit.
func TestOrderOfRowsOfTheBook(t *testing.T) {
	plain := randomFarm(t, 3, 3, 60)
	mixed := randomFarm(t, 3, 3, 60)
	rng := rand.New(rand.NewPCG(9, 9))
	shuffle(rng, mixed.Sowings)
	shuffle(rng, mixed.Outs)
	shuffle(rng, mixed.Counts)
	shuffle(rng, mixed.Scores)
	shuffle(rng, mixed.Trays)
	shuffle(rng, mixed.Lots)
	shuffle(rng, mixed.Chamber)
	shuffle(rng, mixed.House)
	want, got := figures(plain.report()), figures(mixed.report())
	for name := range want {
		if !reflect.DeepEqual(got[name], want[name]) {
			t.Errorf("%s: another order of rows gives other figures", name)
		}
	}
}

func shuffle[T any](rng *rand.Rand, rows []T) {
	rng.Shuffle(len(rows), func(i, j int) { rows[i], rows[j] = rows[j], rows[i] })
}

// The name of a crop that the trade table does not know changes no number.
func TestNameOfACropChangesNothing(t *testing.T) {
	plain := randomFarm(t, 5, 2, 60)
	renamed := randomFarm(t, 5, 2, 60)
	for i := range renamed.Sowings {
		renamed.Sowings[i].Crop = rename(renamed.Sowings[i].Crop)
	}
	for i := range renamed.Lots {
		renamed.Lots[i].Crop = rename(renamed.Lots[i].Crop)
	}
	want, got := plain.report(), renamed.report()
	for _, e := range want.Emergence {
		g := e.Group
		g.Crop = rename(g.Crop)
		same := find(t, "emergence", got.Emergence, func(e Emergence) bool { return e.Group == g })
		if same.Group = e.Group; !reflect.DeepEqual(same, e) {
			t.Errorf("got %+v, want %+v", same, e)
		}
	}
	for i, b := range want.Batches {
		if got.Batches[i].Usable != b.Usable || got.Batches[i].TrayDays != b.TrayDays {
			t.Errorf("%s: usable %v, want %v", b.Code, got.Batches[i].Usable, b.Usable)
		}
	}
	for _, d := range want.Differences {
		same := find(t, "difference", got.Differences, func(o Difference) bool {
			return o.Season == d.Season && o.Variety == d.Variety && o.Crop == rename(d.Crop)
		})
		if same.Crop = d.Crop; same != d {
			t.Errorf("got %+v, want %+v", same, d)
		}
	}
}

// rename turns the order of the crops round.
func rename(crop string) string {
	return map[string]string{"agretti": "zz agretti", "mibuna": "mm mibuna", "orache": "aa orache"}[crop]
}

// A book written twice over in a further crop leaves the first crop's own figures
// as they were: only what leans on the whole book may move.
func TestAnotherCropLeavesTheFirst(t *testing.T) {
	one, two := randomFarm(t, 7, 2, 60), randomFarm(t, 7, 2, 60)
	for _, s := range one.Sowings {
		s.Code, s.Crop, s.Lot = "x"+s.Code, "x"+s.Crop, ""
		two.Sowings = append(two.Sowings, s)
	}
	for _, c := range one.Counts {
		c.Batch = "x" + c.Batch
		two.Counts = append(two.Counts, c)
	}
	want, got := one.report(), two.report()
	for _, e := range want.Emergence {
		same := find(t, "emergence", got.Emergence, func(o Emergence) bool { return o.Group == e.Group })
		if !reflect.DeepEqual(same, e) {
			t.Errorf("got %+v, want %+v", same, e)
		}
	}
}

// Every gap names the log and column to fill.
func TestGapsNameTheirRemedy(t *testing.T) {
	for seed := range uint64(4) {
		for _, m := range randomFarm(t, seed, 2, 40).report().Missing {
			if !strings.Contains(m.Remedy, ".csv") || m.What == "" || m.Costs == "" {
				t.Errorf("%+v", m)
			}
		}
	}
}
