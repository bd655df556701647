package templates

import (
	"strings"
	"testing"

	"traybook/records"
	"traybook/report/plants"
	"traybook/report/rate"
)

// What the leeway says, kind by kind: the last stretch of days in which at least
// 80 of 100 plants are still fit, and how it goes on.
func TestLeewaySentence(t *testing.T) {
	band := func(late int, fit float64, batches int) plants.Leeway {
		l := plants.Leeway{Kind: "air-pruning", DaysLate: late, Rate: rate.Rate{Batches: batches}}
		if batches >= rate.FewBatches {
			l.Rate = rateOf(fit, 100, batches, 0.5, 0.9)
		}
		return l
	}
	tests := []struct {
		name string
		fit  plants.Fit
		want string
	}{
		{"all fit", plants.Fit{Case: plants.FitEvery, Last: band(15, 80, 4)}, "In air-pruning trays plants were still fit in every band looked at: 15 days late or more still left 80 % (50 to 90) of them fit, 4 batches."},
		{"then not", plants.Fit{Case: plants.FitUntil, Last: band(4, 85, 5), Below: band(8, 79.4, 6)}, "4 to 7 days late still left 85 % (50 to 90) of the plants fit, 5 batches; 8 to 14 days late left 79 % (50 to 90), 6 batches."},
		{"then too few", plants.Fit{Case: plants.FitEvery, Last: band(1, 85, 5)}, "1 to 3 days late still left 85 % (50 to 90) of them fit, 5 batches; fewer than 3 batches were looked at later than that."},
		{"never", plants.Fit{Case: plants.FitNever, Below: band(0, 60, 5)}, "In air-pruning trays fewer than four in five were fit at any time: up to the planned day 60 % (50 to 90), 5 batches."},
		{"too few throughout", plants.Fit{}, "In air-pruning trays the records cannot tell: no stretch of days past the planned one has looks at 3 batches."},
	}
	for _, tt := range tests {
		tt.fit.Kind = "air-pruning"
		if got := bare(leewaySentence(tt.fit)); !strings.Contains(got, tt.want) {
			t.Errorf("%s: got %q, want %q", tt.name, got, tt.want)
		}
	}
}

// Quality: the farm's own words, plants by score, and groups looked at too seldom
// below a line. Solid-wall trays 8 days late or more had 14, 15 and 13 of 20 fit.
func TestQualityPage(t *testing.T) {
	r := changedHouse(t, func(b *records.Book) {
		b.Scores = append(b.Scores, records.Score{Batch: "LR25-1", Date: day(t, "2025-04-09"), Looked: records.Known(20), Usable: records.Known(9)})
	})
	expect(t, textOf(t, buildOf(t, r, nil), "quality.html"),
		"In air-pruning trays plants were still fit in every band looked at: 8 to 14 days late still left 88 %", "of them fit, 3 batches; fewer than 3 batches were looked at later than that.",
		"In solid-wall trays, 4 to 7 days late still left 80 %", "8 to 14 days late left 70 %", "3 batches.",
		"8 to 14 days late", "70 %", "3: will do – fit to set out from here up",
		"Fenwimple", "83 %", "Looked at too seldom to judge: fewer than 3 batches", "Ragamuffin", "45 %",
		"1 look with one overall mark only", "1 compost", "4", "10", "24", "30", "12", "Usable plants of the cells sown", "What the records could not tell")
}
