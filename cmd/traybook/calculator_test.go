package main

import (
	"encoding/csv"
	"fmt"
	"html"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"gonum.org/v1/gonum/stat/distuv"
)

// A reader with a calculator: from the data files beside the review to the words
// on its front page, by the arithmetic that the method page describes and none of
// the program's own.
func TestTrayAnswerByCalculator(t *testing.T) {
	site := exampleSite(t).site
	const tray, other = "A128", "S128"
	p := one(t, site, "payback", tray, other)
	difference, money := matchedByHand(t, site, tray, other, parse(t, p["cells"]))
	// Student's t as gonum has it, which the program's own quantile is not.
	quantile := distuv.StudentsT{Sigma: 1, Nu: float64(len(difference) - 1)}.Quantile(0.975)
	mean, half := meanAndHalf(difference, quantile)
	same(t, "difference", p["difference"], mean)
	same(t, "difference_low", p["difference_low"], mean-half)
	same(t, "difference_high", p["difference_high"], mean+half)

	// What one use gains: a use of the other saved, plants, less the longer handling and
	// the extra mix.
	wage := parse(t, inputs(t, site)["wage"])
	worth, worthHalf := meanAndHalf(money, quantile)
	rest := parse(t, p["other_price"])/parse(t, p["other_life_uses"]) - (parse(t, p["minutes"])-parse(t, p["other_minutes"]))*wage/60 - parse(t, p["mix_a_use"])
	gain := rest + worth
	same(t, "gain", p["gain"], gain)
	uses := parse(t, p["price"]) / gain
	same(t, "payback_uses", p["payback_uses"], uses)
	same(t, "payback_seasons", p["payback_seasons"], uses/parse(t, p["uses_per_season"]))

	ends := buyingByHand(t, site, tray, other)
	d := one(t, site, "decision", tray, other)
	same(t, "buy", d["buy"], float64(ends["pays"]))
	same(t, "outlay", d["outlay"], float64(ends["pays"])*parse(t, p["price"]))
	page := textOf(t, filepath.Join(site, "index.html"))
	for _, sentence := range []string{
		fmt.Sprintf("Buy %d more %s", ends["pays"], tray),
		fmt.Sprintf("%s to %s", d["buy_low"], d["buy_high"]),
		fmt.Sprintf("USD %.2f over %s (%.2f to %.2f)", gain, other, gain-worthHalf, gain+worthHalf),
		fmt.Sprintf("%d matched sowings", len(difference)),
	} {
		if !strings.Contains(page, sentence) {
			t.Errorf("the front page does not say %q", sentence)
		}
	}
}

// matchedByHand is how many more plants of a hundred cells each matched sowing had,
// and what those of a whole tray were worth.
func matchedByHand(t *testing.T, site, tray, other string, cells float64) (difference, money []float64) {
	t.Helper()
	value := inputs(t, site)
	for _, row := range pairRows(t, site, "matches", tray, other) {
		d := parse(t, row["usable_tray"])/parse(t, row["cells_tray"]) - parse(t, row["usable_other"])/parse(t, row["cells_other"])
		difference = append(difference, d)
		money = append(money, d*cells*parse(t, value["value_of_a_plant "+row["crop"]]))
	}
	return difference, money
}

// buyingByHand is how many more trays pay at each end: in the middle as long as
// the next one adds to the sum of what they are worth.
func buyingByHand(t *testing.T, site, tray, other string) map[string]int {
	t.Helper()
	buy, sum, best := 0, 0.0, 0.0
	ends := map[string]int{}
	for i, row := range pairRows(t, site, "next_tray", tray, other) {
		if sum += parse(t, row["worth_today"]); sum > best {
			buy, best = i+1, sum
		}
		for _, end := range []string{"pays", "pays_low", "pays_high"} {
			if row[end] == "yes" {
				ends[end]++
			}
		}
	}
	if ends["pays"] != buy || buy == 0 {
		t.Errorf("%d trays marked as paying, the sum says %d", ends["pays"], buy)
	}
	return ends
}

// inputs are the settings and computed values that figures rest on, by name.
func inputs(t *testing.T, site string) map[string]string {
	t.Helper()
	values := map[string]string{}
	for _, row := range dataRows(t, site, "inputs") {
		values[row["name"]] = row["value"]
	}
	return values
}

// meanAndHalf is a mean and half the width of its interval.
func meanAndHalf(xs []float64, quantile float64) (mean, half float64) {
	for _, x := range xs {
		mean += x / float64(len(xs))
	}
	squares := 0.0
	for _, x := range xs {
		squares += (x - mean) * (x - mean)
	}
	n := float64(len(xs))
	return mean, quantile * math.Sqrt(squares/(n-1)) / math.Sqrt(n)
}

func same(t *testing.T, name, cell string, want float64) {
	t.Helper()
	if got := parse(t, cell); math.Abs(got-want) > 1e-9*max(1, math.Abs(want)) {
		t.Errorf("%s: the file says %v, the calculator %v", name, got, want)
	}
}

func parse(t *testing.T, cell string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(cell, 64)
	if err != nil {
		t.Fatalf("%q is not a number", cell)
	}
	return v
}

// dataRows reads a data file, a map from column to cell for each row.
func dataRows(t *testing.T, site, name string) []map[string]string {
	t.Helper()
	f, err := os.Open(filepath.Join(site, "data", name+".csv"))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	all, err := csv.NewReader(f).ReadAll()
	if err != nil || len(all) == 0 {
		t.Fatalf("%s: %v", name, err)
	}
	var rows []map[string]string
	for _, cells := range all[1:] {
		row := map[string]string{}
		for i, column := range all[0] {
			row[column] = cells[i]
		}
		rows = append(rows, row)
	}
	return rows
}

func pairRows(t *testing.T, site, name, tray, other string) (rows []map[string]string) {
	t.Helper()
	for _, row := range dataRows(t, site, name) {
		if row["tray"] == tray && row["other"] == other {
			rows = append(rows, row)
		}
	}
	return rows
}

func one(t *testing.T, site, name, tray, other string) map[string]string {
	t.Helper()
	rows := pairRows(t, site, name, tray, other)
	if len(rows) != 1 {
		t.Fatalf("%d rows of %s in %s", len(rows), tray, name)
	}
	return rows[0]
}

var tag = regexp.MustCompile(`(?s)<[^>]*>`)

// textOf is a page's text as a reader sees it: no tags, single spaces.
func textOf(t *testing.T, file string) string {
	t.Helper()
	b, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	text := html.UnescapeString(tag.ReplaceAllString(string(b), ""))
	for _, hidden := range []string{"\u2068", "\u2069", "\u200b"} {
		text = strings.ReplaceAll(text, hidden, "")
	}
	return strings.Join(strings.Fields(text), " ")
}
