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
	expect(t, textOf(t, b, "2025/germination.html"), "Germination, 2025", "Ragamuffin came up badly",
		"Ragamuffin and Fenwimple stand apart from their crops", "lettuce Ragamuffin", "−28", "question it", "lettuce Fenwimple", "+27", "keep it", "too few batches on either side to judge: lettuce Pellow.",
		"What came up, by variety and tray", "Ragamuffin", "60 %", "Fenwimple", "87 %", "11 of 12", "Sown too seldom to judge: fewer than 3 batches", "Thistlebeet",
		"what came up of one seed", "4", "58 %", "Heat beside emergence",
		"Lettuce by week of sowing", "the week of 7 April", "How fast it came up", "4.5", "3 counted early",
		"21 cells that had come up were lost again. Causes: mice (18 cells in 2 batches, most of it lettuce) and no cause written (3 cells in 1 batch, most of it lettuce).",
		"Most trays stood in the chambers on 17 February 2025: 1 tray of the 2 that they hold.", "warm box", "24 to 33 °C", "tomato", "21 to 30 °C", "26 °C", "17 %",
		"Harrington and Minges (1954)", "Mains electricity beside water", "licensed electrician", "residual-current", "over-temperature cut-out", "Propane")
	dry := changedHouse(t, func(b *records.Book) {
		b.Chamber = nil
		for i := range b.Sowings {
			b.Sowings[i].Chamber, b.Sowings[i].ChamberOut = "", 0
		}
	})
	if strings.Contains(textOf(t, buildOf(t, dry, nil), "2025/germination.html"), "electrician") {
		t.Error("a caution about chambers where there is none")
	}
}

// The lowest week is the one with the lowest share and the highest that with the highest,
// of those with three batches or more, be they first, last or between; of equals the first.
func TestLowestAndHighestWeek(t *testing.T) {
	week := func(name string, up float64, batches int) germination.Week {
		return germination.Week{Week: name, Rate: rateOf(up, 100, batches, up/100-0.02, up/100+0.02)}
	}
	tests := []struct {
		weeks []germination.Week
		want  string
	}{
		{[]germination.Week{week("2025-W10", 80, 3), week("2025-W12", 61, 3), week("2025-W13", 94, 3), week("2025-W15", 30, 2)},
			"Lowest was the week of 17 March with 61 % (59 to 63), 3 batches; highest the week of 24 March with 94 % (92 to 96), 3 batches."},
		{[]germination.Week{week("2025-W10", 50, 3), week("2025-W11", 50, 3), week("2025-W12", 90, 4), week("2025-W13", 90, 3)},
			"Lowest was the week of 3 March with 50 % (48 to 52), 3 batches; highest the week of 17 March with 90 % (88 to 92), 4 batches."},
		{[]germination.Week{week("2025-W10", 95, 2), week("2025-W12", 40, 4)}, "No two weeks hold 3 batches, so none is named best or worst."},
	}
	for _, tt := range tests {
		if got := bare(weekWords(tt.weeks)); got != tt.want {
			t.Errorf("got %q, want %q", got, tt.want)
		}
	}
}
