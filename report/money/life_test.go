package money

import (
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/internal/booktest"
	"traybook/report/plants"
)

// Life (rule "Life of a tray"): 4 of 2 owned trays sown are 2 uses a season; 3 years
// hold 6 uses, 5 uses hold 2.5 years; the smaller ends it.
func TestLife(t *testing.T) {
	none, n := Num{}, func(v float64) Num { return records.Known(v) }
	tests := []struct {
		name                  string
		trays                 float64 // sown
		lasts, uses           Num
		wantUses, wantSeasons Num
		assumed               bool
	}{
		{"years alone", 4, n(3), none, n(6), n(3), false},
		{"uses alone", 4, none, n(5), n(5), n(2.5), false},
		{"uses end first", 4, n(3), n(5), n(5), n(2.5), false},
		{"years end first", 4, n(2), n(5), n(4), n(2), false},
		{"neither", 4, none, none, n(2), n(1), true},
		{"never sown", 0, n(3), n(5), n(5), n(3), false},
		{"never sown, neither", 0, none, none, none, n(1), true},
		{"lives of 0 are not written", 4, n(0), n(0), n(2), n(1), true},
	}
	for _, tt := range tests {
		tray := records.Purchase{Tray: "S", Kind: "k", Cells: 100, Count: records.Known(2), Lasts: tt.lasts, Uses: tt.uses}
		b := newBatch(t, "a", "2025-03-01", "2025-03-11", "S", tt.trays, 100, 0)
		got := moneyOf(&records.Book{Trays: []records.Purchase{tray}}, b).Lives["S"]
		if got.Uses != tt.wantUses || got.Seasons != tt.wantSeasons || got.Assumed != tt.assumed {
			t.Errorf("%s: %+v", tt.name, got)
		}
	}
}

// Uses a season are the mean of the yearly ratios over those of the last three finished
// seasons in which trays were owned: 2021 is too long ago, in 2022 none was owned, 8 of
// 4 were sown in 2023 and 2 of 4 in 2024; 2025 runs. (2 + 0.5) / 2.
func TestUsesPerSeason(t *testing.T) {
	var list []*plants.Plants
	for sown, trays := range map[string]float64{"2021": 100, "2022": 9, "2023": 8, "2024": 2, "2025": 100} {
		list = append(list, newBatch(t, "b"+sown, sown+"-03-01", sown+"-03-11", "S", trays, 100, 0))
	}
	for _, p := range list {
		if p.Code == "b2025" {
			p.EndHow = batch.Open
		}
	}
	book := &records.Book{Trays: []records.Purchase{bought(t, "S", "2021-01-01", 4, 1, 3), bought(t, "S", "2021-12-31", -4, 0, 0), bought(t, "S", "2023-01-01", 4, 1, 3)}}
	booktest.Known(t, "uses a season", moneyOf(book, list...).Lives["S"].UsesPerSeason, 1.25, 1e-12)
}
