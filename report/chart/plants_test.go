package chart

import (
	"math"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report/plants"
	"traybook/report/words"
)

func TestQualityLeastFitFirst(t *testing.T) {
	b := newBook(t)
	b.sow("2025-03-03", "kale", "Ruff", "WALL")
	b.scored("2025-04-10", 1, 1, 2, 8, 8)
	b.sow("2025-03-03", "leek", "Long", "a code that trays.csv lacks")
	b.scored("2025-04-10", 5, 0, 5)
	s := only(t, quality(b.report(), 2025))
	names, notes := rowsOf(s)
	same(t, "names", names, "leek, Long", "kale, Ruff, 100 solid-wall")
	same(t, "notes", notes, "10 plants", "20 plants")
	same(t, "legend", legend(s), "1 waste", "2 poor", "3 fit", "4 good", "5 best")
	ends(t, s, "the highest 90 % (kale, Ruff, 100 solid-wall), the lowest 50 % (leek, Long).")
}

// A description rounds as its table does: 825 of 1000 are 83 %.
func TestLeewayByKind(t *testing.T) {
	b := newBook(t)
	b.late(4, "kale", "AIR", map[int]int{0: 95, 8: 90})
	b.late(4, "leek", "WALL", map[int]int{9: 60})
	b.late(1, "leek", "WALL", map[int]int{20: 50}) // one batch is too few for a share
	b.late(2, "leek", "WALL", map[int]int{4: 82})
	b.late(2, "leek", "WALL", map[int]int{4: 83})
	s := only(t, leeway(b.report()))
	same(t, "legend", legend(s), "air-pruning", "solid-wall")
	bands := s.Option["xAxis"].(map[string]any)["data"].([]string)
	if got := strings.ReplaceAll(bands[3], "\n", " "); got != "8 to 14 days late: 4, 4 batches" {
		t.Errorf("band %q", got)
	}
	if level := items(t, s, "still fit: 80 %"); level[0][0] != 80.0 {
		t.Errorf("line at %v", level)
	}
	ends(t, s, ". air-pruning, up to the planned day: 95 %; air-pruning, 8 to 14 days late: 90 %; "+
		"solid-wall, 4 to 7 days late: 83 %; solid-wall, 8 to 14 days late: 60 %.")
}

// Every band of days late has its words.
func TestBandsAreNamed(t *testing.T) {
	for _, first := range plants.LeewayBands {
		if words.DaysLate(first) == "" {
			t.Errorf("the band from day %d has no name", first)
		}
	}
}

// tomatoes is one batch in a tray that is worn out in a year, with 100 plants out,
// that bears 30.00 over all categories that a chart tells apart and two others.
func tomatoes(t *testing.T) book {
	b := newBook(t)
	b.Trays[0].Price, b.Trays[0].Count, b.Trays[0].Lasts = records.Known(1.0), records.Known(1), records.Known(1.0)
	b.Leave(b.sow("2025-03-03", "tomato", "Ember", "AIR"), "2025-04-20", 100, 0)
	of := func(c *records.Cost) { c.Batch = "b000" }
	for c, amount := range map[records.Category]float64{records.Seed: 10, records.Mix: 5, records.Labour: 10, records.Heat: 2, records.Power: 1, records.Other: 1} {
		b.Cost("2025-03-10", c, amount, of)
	}
	return b
}

// costOf is the bar of the crop in 2025.
func costOf(t *testing.T, b book) StackRow {
	t.Helper()
	for _, c := range b.report().Money.Crops {
		if row, ok := costRow(c, words.NewMoney("EUR")); ok && c.Season == 2025 {
			return row
		}
	}
	t.Fatal("no bar")
	return StackRow{}
}

func TestCostRows(t *testing.T) {
	s := only(t, costs(tomatoes(t).report(), 2025))
	same(t, "legend", legend(s), "seed", "mix", "labour", "heat", "trays", "everything else")
	row := costOf(t, tomatoes(t))
	if row.Name != "tomato" || row.Note != "0.300, 1 batch" || math.Abs(stacked(row)-0.3) > 1e-12 {
		t.Errorf("%+v, parts add up to %g", row, stacked(row))
	}
	for i, want := range []float64{0.1, 0.05, 0.1, 0.02, 0.01, 0.02} {
		if math.Abs(*row.Parts[i]-want) > 1e-12 {
			t.Errorf("part %d is %g, want %g", i, *row.Parts[i], want)
		}
	}
	if specs := costs(newBook(t).report(), 2025); len(specs) != 0 {
		t.Errorf("a book without money has the chart %q", specs[0].Name)
	}
}

// Half of the plants are potted on in the season after and take half of all cost
// along: what stayed has every part half as large, over half the plants.
func TestCostRowsAfterPottingOn(t *testing.T) {
	b := tomatoes(t)
	child := b.sow("2026-01-10", "tomato", "Ember", "WALL")
	child.From, child.Cells = "b000", records.Known(50)
	row := costOf(t, b)
	if row.Name != "tomato, after potting on" || row.Note != "0.300, 1 batch" || math.Abs(stacked(row)-0.3) > 1e-12 || math.Abs(*row.Parts[0]-0.1) > 1e-12 {
		t.Errorf("%+v, parts add up to %g", row, stacked(row))
	}
}

// A refund larger than what else is in its part cannot be stacked.
func TestCostRowsWithACredit(t *testing.T) {
	b := tomatoes(t)
	b.Cost("2025-04-10", records.Other, -6, func(c *records.Cost) { c.Batch = "b000" })
	if row := costOf(t, b); row.Parts != nil || row.Note != "0.240, 1 batch, a credit: no bar" {
		t.Errorf("%+v", row)
	}
}

func stacked(r StackRow) (sum float64) {
	for _, p := range r.Parts {
		sum += value(p)
	}
	return sum
}
