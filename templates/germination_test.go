package templates

import (
	"strings"
	"testing"

	"traybook/records"
	"traybook/report/germination"
)

// Germination: verdicts in words, groups sown too seldom below a line, the rate of
// one seed, losses, and the caution wherever there is a chamber.
func TestGerminationPage(t *testing.T) {
	b := buildOf(t, houseReport(t), houseCharts())
	expect(t, textOf(t, b, "germination.html"), "Ragamuffin", "60 %", "Fenwimple", "87 %", "11 of 12", "Sown too seldom to judge: fewer than 3 batches", "Thistlebeet",
		"what came up of one seed", "4", "58 %",
		"clearly worse", "−28", "clearly better", "+27", "Too few batches to judge: fewer than 3 on either side", "Pellow", "too few batches",
		"Lettuce by week of sowing", "lettuce, week by week", "2025-W15", "The middle batch", "4.5", "3 counted early",
		"21 cells that had come up were lost again. Causes: mice (18 cells in 2 batches, most of it lettuce) and no cause written (3 cells in 1 batch, most of it lettuce).",
		"Most trays stood in the chambers on 17 February 2025: 1 tray of the 2 that they hold.", "warm box", "24 to 33 °C", "tomato", "21 to 27 °C", "26 °C", "23 %",
		"Harrington and Minges (1954)", "Follow the local code", "licensed electrician", "residual-current", "over-temperature cut-out", "Earlier seasons")
	dry := changedHouse(t, func(b *records.Book) {
		b.Chamber = nil
		for i := range b.Sowings {
			b.Sowings[i].Chamber, b.Sowings[i].ChamberOut = "", 0
		}
	})
	if strings.Contains(textOf(t, buildOf(t, dry, nil), "germination.html"), "electrician") {
		t.Error("a caution about chambers where there is none")
	}
}

// The worst week is the one with the lowest share and the best that with the highest,
// be they first, last or between; of equals the first.
func TestWorstAndBestWeek(t *testing.T) {
	week := func(name string, up float64, batches int) germination.Week {
		return germination.Week{Week: name, Rate: rateOf(up, 100, batches, 0, 0)}
	}
	tests := []struct {
		weeks []germination.Week
		want  string
	}{
		{[]germination.Week{week("W10", 80, 3), week("W12", 61, 1), week("W13", 94, 2), week("W15", 70, 1)}, "The worst week was W12 (61 %, 1 batch), the best W13 (94 %, 2 batches)."},
		{[]germination.Week{week("W10", 95, 1), week("W11", 80, 1), week("W12", 40, 4)}, "The worst week was W12 (40 %, 4 batches), the best W10 (95 %, 1 batch)."},
		{[]germination.Week{week("W10", 50, 1), week("W11", 50, 2), week("W12", 90, 1), week("W13", 90, 2)}, "The worst week was W10 (50 %, 1 batch), the best W12 (90 %, 1 batch)."},
	}
	for _, tt := range tests {
		if got := bare(weekWords(tt.weeks)); got != tt.want {
			t.Errorf("got %q, want %q", got, tt.want)
		}
	}
	// On the page: 88 of 144 cells in week 15, 170 of 180 in week 18.
	expect(t, textOf(t, buildOf(t, houseReport(t), houseCharts()), "germination.html"), "The worst week was 2025-W15 (61 %, 1 batch), the best 2025-W18 (94 %, 1 batch).")
}
