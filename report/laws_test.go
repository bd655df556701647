package report

import (
	"reflect"
	"strings"
	"testing"

	"traybook/report/germination"
	"traybook/report/internal/booktest"
	"traybook/report/rate"
)

// rates lists every rate with an interval of a report.
func rates(r *Report) []rate.Rate {
	var all []rate.Rate
	for _, e := range r.Germination.Emergence {
		all = append(all, e.Rate)
	}
	for _, l := range r.Germination.Lots {
		all = append(all, l.Rate)
	}
	for _, q := range r.Plants.Quality {
		all = append(all, q.Rate)
	}
	for _, l := range r.Plants.Leeway {
		all = append(all, l.Rate)
	}
	for _, u := range r.Plants.Usable {
		all = append(all, u.Rate)
	}
	for _, w := range r.Germination.Weeks {
		all = append(all, w.Rate)
	}
	return append(all, r.Germination.Seasons[r.Season])
}

// Of any book: 0 <= low <= rate <= high <= 1, no more usable plants than cells, batches
// of the groups add up, and the money balances.
func TestLawsOfAnyBook(t *testing.T) {
	for seed := range uint64(8) {
		r := reportOf(booktest.Farm(t, seed, 3, 40))
		booktest.Finite(t, r, "report")
		for _, s := range rates(r) {
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
		total := 0
		for _, u := range r.Plants.Usable {
			total += u.Batches + u.LeftOut
		}
		if total != len(r.Records) {
			t.Errorf("usable: %d batches of %d", total, len(r.Records))
		}
		for _, b := range r.Records {
			if b.Usable.Known && b.Usable.Value > float64(b.CellsSown.Value) {
				t.Errorf("%s: %v usable of %d", b.Code, b.Usable.Value, b.CellsSown.Value)
			}
		}
		balanced(t, r)
	}
}

// figures are the parts of a report that a person reads, without the book itself.
func figures(r *Report) map[string]any {
	return map[string]any{"inputs": r.Inputs, "batches": r.Records, "emergence": r.Germination.Emergence, "differences": r.Germination.Differences, "lots": r.Germination.Lots,
		"timing": r.Germination.Timing, "losses": r.Germination.Losses, "weeks": r.Germination.Weeks, "chambers": r.Germination.Chambers, "quality": r.Plants.Quality, "leeway": r.Plants.Leeway,
		"usable": r.Plants.Usable, "room": r.Room.Load, "in use": r.Room.InUse, "week": r.Week, "missing": r.Missing, "matches": r.Trays.Matches,
		"years": r.Years, "sowing": r.Sowing}
}

// The order of rows changes no figure, to the last digit.
func TestOrderOfRowsOfTheBook(t *testing.T) {
	plain := booktest.Farm(t, 3, 3, 60)
	mixed := booktest.Farm(t, 3, 3, 60)
	mixed.Shuffle(9)
	want, got := figures(reportOf(plain)), figures(reportOf(mixed))
	for name := range want {
		if !reflect.DeepEqual(got[name], want[name]) {
			t.Errorf("%s: another order of rows gives other figures", name)
		}
	}
}

// The name of a crop that the trade table does not know changes no number.
func TestNameOfACropChangesNothing(t *testing.T) {
	plain := booktest.Farm(t, 5, 2, 60)
	renamed := booktest.Farm(t, 5, 2, 60)
	for i := range renamed.Sowings {
		renamed.Sowings[i].Crop = rename(renamed.Sowings[i].Crop)
	}
	for i := range renamed.Lots {
		renamed.Lots[i].Crop = rename(renamed.Lots[i].Crop)
	}
	want, got := reportOf(plain), reportOf(renamed)
	for _, e := range want.Germination.Emergence {
		g := e.Group
		g.Crop = rename(g.Crop)
		same := booktest.Find(t, "emergence", got.Germination.Emergence, func(e germination.Emergence) bool { return e.Group == g })
		if same.Group = e.Group; !reflect.DeepEqual(same, e) {
			t.Errorf("got %+v, want %+v", same, e)
		}
	}
	for i, b := range want.Records {
		if got.Records[i].Usable != b.Usable || got.Records[i].TrayDays != b.TrayDays {
			t.Errorf("%s: usable %v, want %v", b.Code, got.Records[i].Usable, b.Usable)
		}
	}
	for _, d := range want.Germination.Differences {
		same := booktest.Find(t, "difference", got.Germination.Differences, func(o germination.Difference) bool {
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
	one, two := booktest.Farm(t, 7, 2, 60), booktest.Farm(t, 7, 2, 60)
	for _, s := range one.Sowings {
		s.Code, s.Crop, s.Lot = "x"+s.Code, "x"+s.Crop, ""
		two.Sowings = append(two.Sowings, s)
	}
	two.CountsOf(one.Book(), "x", 0)
	want, got := reportOf(one), reportOf(two)
	for _, e := range want.Germination.Emergence {
		same := booktest.Find(t, "emergence", got.Germination.Emergence, func(o germination.Emergence) bool { return o.Group == e.Group })
		if !reflect.DeepEqual(same, e) {
			t.Errorf("got %+v, want %+v", same, e)
		}
	}
}

// Every gap names the log and column to fill.
func TestGapsNameTheirRemedy(t *testing.T) {
	for seed := range uint64(4) {
		for _, m := range reportOf(booktest.Farm(t, seed, 2, 40)).Missing {
			if !strings.Contains(m.Remedy, ".csv") || m.What == "" || m.Costs == "" {
				t.Errorf("%+v", m)
			}
		}
	}
}
