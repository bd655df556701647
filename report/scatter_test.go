package report

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/estimate"
)

// A crop with three degrees of freedom or more has its own scatter, one with fewer
// the book's, which adds numerators, denominators and degrees up (rule 6); groups are
// split by seeds a cell (rule 43).
func TestScatterOfCropAndBook(t *testing.T) {
	b := newBook(t)
	counts := map[string][]estimate.Count{}
	add := func(crop string, seeds int, up ...int) {
		for _, n := range up {
			code := fmt.Sprint("b", len(b.Sowings))
			b.sow(code, "2025-03-01", crop, "x", "AIR", 1).SeedsPerCell = seeds
			b.count(code, "2025-03-20", n)
			key := fmt.Sprint(crop, seeds)
			counts[key] = append(counts[key], estimate.Count{X: float64(n), N: 100})
		}
	}
	add("orache", 1, 60, 80, 70)
	add("orache", 2, 90, 99, 95)
	add("mibuna", 1, 40, 75)
	r := b.report("2025-04-20")
	orache := estimate.ScatterOf([][]estimate.Count{counts["orache1"], counts["orache2"]})
	book := orache.Add(estimate.ScatterOf([][]estimate.Count{counts["mibuna1"]}))
	for _, e := range r.Emergence {
		want := orache
		if e.Crop == "mibuna" {
			want = book
		}
		known(t, e.Crop+" df", e.DF, float64(want.DF), 0)
		known(t, e.Crop+" rho", e.Rho, want.Rho(), 1e-12)
	}
	if orache.DF != 4 || book.DF != 5 {
		t.Errorf("df %d and %d", orache.DF, book.DF)
	}
	season := r.SeasonEmergence(2025)
	known(t, "df of the season", season.DF, 5, 0)
	if season.Batches != 8 {
		t.Errorf("season: %+v", season)
	}
	rate, rho := r.bookUsable()
	missing(t, "usable rate", rate)
	missing(t, "usable rho", rho)
}

// Inputs end with what the book gave rise to.
func TestComputedInputs(t *testing.T) {
	b := newBook(t)
	b.Settings.Inputs = []records.Input{{Name: "farm", Value: "Tiny", Source: "written"}}
	b.alike(4, 80)
	b.Trays[0].Count = records.Known(12)
	b.count("a0", "2025-03-21", 60)
	r := b.report("2025-04-20")
	if r.Inputs[0].Name != "farm" {
		t.Errorf("got %+v", r.Inputs)
	}
	for name, value := range map[string]string{"last_date": "2025-04-20", "seasons": "2025", "batches": "4", "scatter_emergence_df": "3",
		"median_stay_days orache": "56", "trays_owned AIR": "12"} {
		in := find(t, name, r.Inputs, func(i records.Input) bool { return i.Name == name })
		if in.Value != value || in.Source != "computed" {
			t.Errorf("got %+v, want %s", in, value)
		}
	}
}
