package chart

import (
	"slices"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
)

// reportOf is a report of one season, 2025, without figures.
func reportOf() *report.Report {
	return &report.Report{
		Book:    &records.Book{Settings: records.Settings{SeasonStarts: 1, Currency: "EUR", ScoreWords: [5]string{"waste", "poor", "fit", "good", "best"}}},
		Seasons: []int{2025}, Season: 2025, LastDate: records.NewDate(2025, 12, 31),
	}
}

func known(v float64) report.Num { return records.Known(v) }

// share is a share of 100 cells with an interval of 5 points to either side.
func share(rate float64, batches int) report.Rate {
	return report.Rate{Batches: batches, X: 100 * rate, N: 100, Share: known(rate), Low: known(rate - 0.05), High: known(rate + 0.05)}
}

func group(crop, variety, kind string) report.Group {
	return report.Group{Season: 2025, Crop: crop, Variety: variety, Cells: records.Known(72), Kind: kind}
}

// only returns the one chart of a list.
func only(t *testing.T, specs []Spec) Spec {
	t.Helper()
	if len(specs) != 1 {
		t.Fatalf("%d charts, want 1", len(specs))
	}
	if _, err := specs[0].check(); err != nil {
		t.Fatal(err)
	}
	return specs[0]
}

// rowsOf returns the names and the notes of a chart of rows, broken lines joined.
func rowsOf(s Spec) (names, notes []string) {
	column := func(i int) []string {
		var out []string
		for _, n := range s.Option["yAxis"].([]any)[i].(map[string]any)["data"].([]string) {
			out = append(out, strings.ReplaceAll(n, "\n", " "))
		}
		return out
	}
	return column(0), column(1)
}

// same fails unless the rows of a chart are those wanted, in order.
func same(t *testing.T, what string, got []string, want ...string) {
	t.Helper()
	if !slices.Equal(got, want) {
		t.Errorf("%s: %q, want %q", what, got, want)
	}
}

// items returns the items of a series of own shapes, by its name.
func items(t *testing.T, s Spec, name string) [][]any {
	t.Helper()
	var out [][]any
	for _, each := range s.Option["series"].([]any) {
		if one := each.(map[string]any); one["name"] == name {
			for _, item := range one["data"].([]any) {
				v, _ := item.(map[string]any)["value"].([]any)
				out = append(out, v)
			}
			return out
		}
	}
	t.Fatalf("no series %q", name)
	return nil
}

// legend returns the names that a chart's legend has.
func legend(s Spec) []string {
	o, _ := s.Option["legend"].(map[string]any)
	var out []string
	for _, k := range asList(o["data"]) {
		if name := k.(map[string]any)["name"].(string); name != "\n" { // a break between two lines of the legend
			out = append(out, name)
		}
	}
	return out
}
