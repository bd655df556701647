package data

import (
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/rate"
	"traybook/report/sowing"
	"traybook/report/trays"
	"traybook/report/years"
)

func is(v float64) batch.Num { return records.Known(v) }

func whole(v int) records.Maybe[int] { return records.Known(v) }

// made is a report of figures made up so that no two of a row are alike: each must stand
// in its own column.
func made() *report.Report {
	change := years.Change{Measure: years.Usable, Crop: "leek", From: 2024, To: 2025, Before: years.Side{Figure: is(.11)}, After: years.Side{Figure: is(.12)},
		Change: .13, Same: .14, OtherKinds: .15, Share: .17, Low: is(.18), High: is(.19), Usual: is(.2), Verdict: rate.ClearlyHigher}
	farm := years.Change{Measure: years.Cost, From: 2024, To: 2025, Before: years.Side{Figure: is(.11)}, After: years.Side{Figure: is(.12)}, OtherCrops: is(.16)}
	group := batch.Group{Crop: "leek", Variety: "Arvo", Cells: whole(72), Kind: "k"}
	chance := sowing.Chance{Rate: rate.Rate{Batches: 3, Share: is(.4)}, RateUsed: is(.41), Rho: is(.42)}
	wish := records.Wish{Crop: "leek", Variety: "Arvo", Plants: 90, Planned: records.NewDate(2026, 5, 1), Tray: "written"}
	buy := trays.Buy{Owned: 9, N: 5, Low: 4, High: 6, Outlay: 60, Worth: 8, WorthLow: 7, WorthHigh: 10,
		First: trays.Flips{Price: is(11), Value: is(12), Life: is(13), OtherLife: is(14), LifeSeasons: is(99)},
		Last:  trays.Flips{Price: is(15), Value: is(16), Life: is(17), OtherLife: is(18)}, HalfLifePays: records.Known(true)}
	return &report.Report{
		Years: &years.Figures{Years: []years.Change{change, farm}, Heating: []years.Heating{
			{Season: 2025, DegreeDays: 400, Heat: is(80), PerDegreeDay: is(.2), Fuel: is(40), Unit: "l", FuelPerDegreeDay: is(.1)},
			{Season: 2024, DegreeDays: 300}}},
		Sowing: &sowing.Figures{
			Sowing: []sowing.Row{{Group: group, Chance: chance, Target: whole(80), CellsToSow: whole(101), TraysToSow: whole(2), CellsPer100: whole(126),
				TraysPer100: whole(4), LeftOver: is(7.5)}},
			Balance: []sowing.Balance{{Season: 2025, Crop: "leek", Batches: 3, Sums: sowing.Sums{Wanted: 240, Usable: 230, ShortBatches: 1, Short: 20, LeftOver: 10}}},
			Wishes: []sowing.Wish{
				{Wish: wish, Chance: chance, Row: 2, Code: "T72", Basis: sowing.OfCrop, Cells: whole(120), Trays: whole(5), Seeds: is(121), SowBy: records.NewDate(2026, 3, 1)},
				{Wish: records.Wish{Crop: "chard", Plants: 10}, Row: 10}}},
		Germination: &germination.Figures{Climate: []germination.Climate{{Crop: "leek", Band: 25, Rate: rate.Rate{Batches: 3, N: 300, X: 270, Share: is(.9), Low: is(.8), High: is(.95)}},
			{Crop: "leek", Band: germination.BelowAllBands}}},
		Trays: &trays.Figures{
			Decisions: []trays.Decision{{Tray: "A", Other: "B", Owned: whole(9), Buy: &buy}, {Tray: "A", Other: "C"}},
			BuyIf:     []trays.BuyIf{{Tray: "A", Other: "B", Factor: .5, Value: "half", Low: 1, N: 2, High: 3}},
			Trial:     []trays.Trial{{Tray: "A", Other: "B", Difference: .05, Trays: 4, S: is(.1), Sowings: whole(34)}}},
	}
}

func TestEveryFigureInItsColumn(t *testing.T) {
	r := made()
	for _, tt := range []struct {
		file File
		want string
	}{
		{changes(r), "cost,,2024,2025,0.11,0.12,0,0,0,0.16,0,,,,\nusable,leek,2024,2025,0.11,0.12,0.13,0.14,0.15,,0.17,0.18,0.19,0.2,clearly higher"},
		{heating(r), "2024,300,,,,,\n2025,400,80,0.2,40,l,0.1"},
		{sow(r), "leek,Arvo,72,k,3,0.4,0.41,0.42,80,101,2,126,4,7.5"},
		{balance(r), "2025,leek,3,240,230,1,20,10"},
		{wishes(r), "2,leek,Arvo,2026-05-01,T72,90,120,5,121,2026-03-01,3\n10,chard,,,,10,,,,,"},
		{climate(r), "leek,high,-99,0,0,0,,,\nleek,high,25,3,300,270,0.9,0.8,0.95"},
		{decision(r), "A,B,9,4,5,6,60,7,8,10,11,12,13,14,15,16,17,18,yes\nA,C,,,,,,,,,,,,,,,,,"},
		{buyIf(r), "A,B,0.5,half,1,2,3"},
		{trial(r), "A,B,0.05,4,0.1,34"},
	} {
		csv, err := tt.file.CSV()
		_, rows, _ := strings.Cut(strings.TrimSpace(strings.ReplaceAll(string(csv), "\r\n", "\n")), "\n")
		if err != nil || rows != tt.want {
			t.Errorf("%s: got\n%s\nwant\n%s", tt.file.Name, rows, tt.want)
		}
	}
}
