package templates

import (
	"testing"

	"traybook/records"
	"traybook/report/plants"
	"traybook/report/rate"
)

// How late plants stayed fit, in the words of each case.
func TestFitWords(t *testing.T) {
	band := func(late int) plants.Leeway { return plants.Leeway{DaysLate: late} }
	every, last := plants.Fit{Kind: "air-pruning", Case: plants.FitEvery, Last: band(4)}, plants.Fit{Kind: "pot", Case: plants.FitEvery, Last: band(15)}
	until := plants.Fit{Kind: "solid-wall", Case: plants.FitUntil, Last: band(4), Below: band(8)}
	never, none := plants.Fit{Kind: "open flat", Case: plants.FitNever, Below: band(0)}, plants.Fit{Kind: "", Case: ""}
	for want, f := range map[string]plants.Fit{
		"fit 4 to 7 days late at least": every, "fit 15 days late or more": last, "fit 4 to 7 days late, not 8 to 14 days late": until,
		"fewer than four in five at any time": never, "too few looks": none,
	} {
		if got := bare(fitWords(f)); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
	for _, tt := range []struct {
		want string
		fits []plants.Fit
	}{
		{"How late plants stay fit cannot be told yet", []plants.Fit{none}},
		{"Plants were still fit 4 to 7 days late in air-pruning trays", []plants.Fit{every, none}},
		{"Plants were still fit 4 to 7 days late in air-pruning trays and 4 to 7 days late in solid-wall trays", []plants.Fit{every, until}},
		{"Plants were still fit 15 days late or more in pot trays, and at no time in open flat trays", []plants.Fit{never, last}},
		{"In open flat trays fewer than four plants in five were fit at any time", []plants.Fit{never}},
		{"How late plants stayed fit, by kind of tray", []plants.Fit{every, until, last}},
	} {
		if got := bare(fitTitle(tt.fits)); got != tt.want {
			t.Errorf("got %q, want %q", got, tt.want)
		}
	}
}

// A crop stands apart where its range lies wholly below or above the season's share, and
// three batches or more stand behind it.
func TestStandApart(t *testing.T) {
	all := rateOf(80, 100, 20, 0.76, 0.84)
	crop := func(name string, x float64, batches int, low, high float64) cropRate {
		return cropRate{name, rateOf(x, 100, batches, low, high)}
	}
	low, lower, high := crop("low", 70, 3, 0.6, 0.79), crop("lower", 60, 3, 0.5, 0.7), crop("high", 90, 5, 0.81, 0.95)
	few, across, touching := crop("few", 10, 2, 0.05, 0.2), crop("across", 78, 9, 0.7, 0.81), crop("touching", 70, 4, 0.6, 0.8)
	wording := apartFindings{"%s below", "%s above", "none", "too few"}
	unsure := rateOf(80, 100, 2, 0, 0)
	for _, tt := range []struct {
		want  string
		total rate.Rate
		crops []cropRate
	}{
		{"Lower below", all, []cropRate{low, high, lower, few}},
		{"High above", all, []cropRate{few, across, touching, high}},
		{"none", all, []cropRate{few, across, touching}},
		{"too few", unsure, []cropRate{{"a", unsure}}},
	} {
		below, above := standApart(tt.total, tt.crops)
		if got := bare(apartTitle(tt.total, below, above, wording)); got != tt.want {
			t.Errorf("got %q, want %q", got, tt.want)
		}
	}
}

// Quality: the farm's own words, plants by score, usable plants with why batches are left
// out, and groups looked at too seldom below a line. Solid-wall trays 8 days late or more
// had 14, 15 and 13 of 20 fit; Ragamuffin gave 288 plants of 576 cells.
func TestQualityPage(t *testing.T) {
	r := changedHouse(t, func(b *records.Book) {
		b.Scores = append(b.Scores, records.Score{Batch: "LR25-1", Date: day(t, "2025-04-09"), Looked: records.Known[int32](20), Usable: records.Known[int32](9)})
	})
	expect(t, textOf(t, buildOf(t, r, nil), "2025/quality.html"),
		"Quality and leeway, 2025", "of the plants looked at were fit to set out", "plants scored one by one, in 100", "3 will do", "Fit to set out: below the line, from 3 up.",
		"Fit to set out, by variety and tray", "Right, in 100 plants scored:", "1 compost", "lettuce", "Ragamuffin", "45 %", "not scored", "Fenwimple", "83 %", "4, 10, 24, 30 and 12",
		"1 look with one overall mark only",
		"of the cells sown gave a usable plant", "Left out: 6 batches still open, 1 batch of which only a part of the plants is written and 1 batch of which no one wrote how many plants there were.", "24 of 32 batches enter it",
		"Usable plants, by variety and tray", "Ragamuffin", "50 %", "576", "4", "Sown too seldom to judge: fewer than 3 batches", "beet",
		"Plants were still fit 8 to 14 days late in air-pruning trays and 4 to 7 days late in solid-wall trays",
		"air-pruning trays", "15 days late or more", "–", "solid-wall trays", "4 to 7 days late", "80 %", "8 to 14 days late", "70 %",
		"Crop by crop", "fit 8 to 14 days late at least", "fit 4 to 7 days late, not 8 to 14 days late")
}

// A book without a look says what to write, and names no figure.
func TestQualityWithoutLooks(t *testing.T) {
	r := changedHouse(t, func(b *records.Book) { b.Scores = nil })
	expect(t, textOf(t, buildOf(t, r, nil), "2025/quality.html"), "No plants were looked at", "?", "no batch of 2025 has a look", "scores.csv",
		"How late plants stay fit cannot be told yet", "No batch with a planned day was looked at.")
}
