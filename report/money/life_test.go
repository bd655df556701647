package money

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/plants"
)

// Life (rule "Life of a tray"): 4 of 2 owned trays sown are 2 uses a season; 3 years
// hold 6 uses, 5 uses hold 2.5 years; the smaller ends it. Years not written are 15
// beside uses, else 1.
func TestLife(t *testing.T) {
	none, n := Num{}, func(v float64) Num { return records.Known(v) }
	tests := []struct {
		name                  string
		trays                 float64 // sown
		lasts, uses           Num
		wantUses, wantSeasons Num
		assumed, years        bool
	}{
		{"years alone", 4, n(3), none, n(6), n(3), false, false},
		{"uses alone", 4, none, n(5), n(5), n(2.5), false, true},
		{"many uses alone", 4, none, n(50), n(30), n(15), false, true},
		{"uses end first", 4, n(3), n(5), n(5), n(2.5), false, false},
		{"years end first", 4, n(2), n(5), n(4), n(2), false, false},
		{"more than 15 years written", 4, n(20), n(50), n(40), n(20), false, false},
		{"neither", 4, none, none, n(2), n(1), true, false},
		{"never sown", 0, n(3), n(5), n(5), n(3), false, false},
		{"never sown, years alone", 0, n(3), none, none, n(3), false, false},
		{"never sown, uses alone", 0, none, n(5), n(5), n(15), false, true},
		{"never sown, neither", 0, none, none, none, n(1), true, false},
		{"lives of 0 are not written", 4, n(0), n(0), n(2), n(1), true, false},
	}
	for _, tt := range tests {
		tray := records.Purchase{Tray: "S", Kind: "k", Cells: 100, Count: records.Known(2), Lasts: tt.lasts, Uses: tt.uses}
		b := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", tt.trays, 100, 0)
		got := moneyOf(&records.Book{Trays: []records.Purchase{tray}}, b).Lives["S"]
		if got.Uses != tt.wantUses || got.Seasons != tt.wantSeasons || got.Assumed != tt.assumed || got.YearsAssumed != tt.years {
			t.Errorf("%s: %+v", tt.name, got)
		}
		if got.EndsByAssumedYears() != (tt.years && got.Seasons == n(15)) {
			t.Errorf("%s: ends by the years taken: %v", tt.name, got.EndsByAssumedYears())
		}
		if got.UsesPerSeason.Known != (tt.trays > 0) {
			t.Errorf("%s: %v uses a season", tt.name, got.UsesPerSeason)
		}
	}
}

// seasonsSown is a batch of each season in code S, ended but for those of 2025.
func seasonsSown(t *testing.T, trays map[int]float64) []*plants.Plants {
	t.Helper()
	var list []*plants.Plants
	for _, season := range []int{2021, 2022, 2023, 2024, 2025} {
		code, of := "S", trays[season]
		if of == 0 {
			code, of = "else", 1
		}
		p := newBatch(t, fmt.Sprint("b", season), fmt.Sprint(season, "-03-01"), fmt.Sprint(season, "-03-11"), code, of, 100, 0)
		if season == 2025 {
			p.EndHow = batch.Open
		}
		list = append(list, p)
	}
	return list
}

// Uses a season are the mean of the yearly ratios over those of the last three finished
// seasons, 2022 to 2024, in which trays were owned; where that is 0 or none was owned,
// the ratio of the season at hand, 2025.
func TestUsesPerSeason(t *testing.T) {
	blank := bought(t, "S", "2024-12-01", 1, 1, 3)
	blank.Count = records.Maybe[int]{}
	for _, tt := range []struct {
		name  string
		sown  map[int]float64
		trays []records.Purchase
		want  float64 // 0: unknown
	}{
		{"2021 is too long ago, none owned in 2022: 8/4 and 2/4", map[int]float64{2021: 100, 2022: 9, 2023: 8, 2024: 2, 2025: 100},
			[]records.Purchase{bought(t, "S", "2021-01-01", 4, 1, 3), bought(t, "S", "2021-12-31", -4, 0, 0), bought(t, "S", "2023-01-01", 4, 1, 3)}, 1.25},
		{"a season without use counts as one: 0, 0 and 3/4", map[int]float64{2024: 3, 2025: 100}, []records.Purchase{bought(t, "S", "2021-01-01", 4, 1, 3)}, 0.25},
		{"first sown in the running season, owned before", map[int]float64{2025: 6}, []records.Purchase{bought(t, "S", "2021-01-01", 4, 1, 3)}, 1.5},
		{"first owned in the running season", map[int]float64{2025: 6}, []records.Purchase{bought(t, "S", "2025-02-01", 4, 1, 3)}, 1.5},
		{"owned, not sown for four seasons", map[int]float64{2021: 6}, []records.Purchase{bought(t, "S", "2021-02-01", 4, 1, 3)}, 0},
		{"none left in the running season", map[int]float64{2021: 6, 2025: 6}, []records.Purchase{bought(t, "S", "2021-02-01", 4, 1, 3), bought(t, "S", "2021-12-01", -4, 0, 0)}, 0},
		{"nobody knows how many are owned", map[int]float64{2023: 4, 2024: 4, 2025: 4}, []records.Purchase{bought(t, "S", "2021-02-01", 4, 1, 3), blank}, 0},
	} {
		life := moneyOf(&records.Book{Trays: tt.trays}, seasonsSown(t, tt.sown)...).Lives["S"]
		if life.UsesPerSeason.Known != (tt.want > 0) || life.UsesPerSeason.Value != tt.want {
			t.Errorf("%s: %v uses a season, want %v", tt.name, life.UsesPerSeason, tt.want)
		}
	}
}

// What the book shows of a life: 3 of 16 trays are gone after 15 tray-uses, in seasons
// finished or not. A blank count leaves what was bought unknown, not what is gone.
func TestShownLife(t *testing.T) {
	rows := []records.Purchase{bought(t, "S", "2021-02-01", 10, 1, 3), bought(t, "S", "2022-02-01", 6, 1, 3), bought(t, "S", "2023-12-01", -1, 0, 0),
		bought(t, "S", "2024-12-01", -2, 0, 0), bought(t, "T", "", 5, 1, 3)}
	m := moneyOf(&records.Book{Trays: rows}, seasonsSown(t, map[int]float64{2021: 6, 2023: 6.5, 2025: 2.5})...)
	if got, want := m.Lives["S"].Shown, (Shown{Gone: 3, Bought: records.Known(16), Uses: 15}); got != want {
		t.Errorf("%+v, want %+v", got, want)
	}
	if got, want := m.Lives["T"].Shown, (Shown{Bought: records.Known(5)}); got != want {
		t.Errorf("never sown, none gone: %+v, want %+v", got, want)
	}
	rows[1].Count = records.Maybe[int]{}
	m = moneyOf(&records.Book{Trays: rows}, seasonsSown(t, map[int]float64{2021: 6})...)
	if got := m.Lives["S"].Shown; got.Bought.Known || got.Gone != 3 || got.Uses != 6 {
		t.Errorf("a blank count: %+v", got)
	}
}
