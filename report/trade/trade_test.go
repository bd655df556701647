package trade

import (
	"math"
	"os"
	"strings"
	"testing"
)

// Every legal minimum of the crop table is that of a kind in the regulation's own
// list (7 CFR 201.31), under the regulation's name for it.
func TestMinimumIsTheRegulations(t *testing.T) {
	kinds := map[string]string{ // crop table: regulation
		"scallion (bunching onion)": "onion, welsh", "kale": "kale", "collard": "collards", "bok choy (pak-choi)": "pak-choi",
		"mustard greens": "mustard, india", "chard": "chard, swiss", "summer squash": "squash", "winter squash": "squash",
		"melon (muskmelon)": "melon", "chicory and radicchio": "chicory", "sweet corn": "corn, sweet", "bean, snap": "bean, garden",
	}
	for _, r := range read("crops.csv") {
		crop := strings.ToLower(r["crop"])
		facts, ok := Crop(crop)
		if !ok {
			t.Errorf("%s: not found", crop)
		}
		kind, other := kinds[crop]
		if !other {
			kind = crop
		}
		listed := minimums()[key(kind)]
		if facts.MinimumGermination.Known != (r["fsa_min_germ_pct"] != "") {
			t.Errorf("%s: minimum known %v, cell %q", crop, facts.MinimumGermination.Known, r["fsa_min_germ_pct"])
		}
		if facts.MinimumGermination.Known && facts.MinimumGermination != listed {
			t.Errorf("%s: minimum %v, regulation %v", crop, facts.MinimumGermination, listed)
		}
	}
}

// 7 CFR 201.31: lettuce 80, pepper 55, beet 65, chard 65; radish (of no transplant table)
// 75; basil is not listed.
func TestMinimum(t *testing.T) {
	for crop, want := range map[string]float64{"Lettuce": 0.80, "pepper": 0.55, "beet": 0.65, "chard": 0.65, "radish": 0.75, "Lettuces": 0.80,
		"Swiss chard": 0.65, "broad beans": 0.75, "squash": 0.75} {
		if got := Minimum(crop); !got.Known || got.Value != want {
			t.Errorf("%s: got %v, want %v", crop, got, want)
		}
	}
	if got := Minimum("basil"); got.Known {
		t.Errorf("basil: got %v", got)
	}
}

// Harrington and Minges (1954): lettuce up in 3 days at 20 C with 99 % normal, none at 35 C;
// a temperature that was not tested has no row.
func TestEmergenceDays(t *testing.T) {
	at := map[float64]EmergenceDay{}
	last := math.Inf(-1)
	for _, d := range EmergenceDays("lettuce") {
		at[d.TempC] = d
		if d.TempC <= last {
			t.Errorf("%v after %v", d.TempC, last)
		}
		last = d.TempC
	}
	if d := at[20]; d.Days.Value != 3 || d.Normal.Value != 0.99 {
		t.Errorf("20 C: got %+v", d)
	}
	if d := at[35]; d.Days.Known {
		t.Errorf("35 C: got %+v", d)
	}
	if len(EmergenceDays("melon")) == 0 || EmergenceDays("zinnia") != nil {
		t.Error("names before a parenthesis")
	}
}

// Every range runs from low to high, and each column of every table is named in
// the sources.
func TestTablesAreSound(t *testing.T) {
	for name, c := range crops() {
		for _, r := range [][2]float64{{c.ChamberLowC, c.ChamberHighC}, {c.GermLowC, c.GermHighC}, {c.GermHighC, c.GermMaxC}, {c.WeeksLow, c.WeeksHigh}, {c.SeedsPerGramLow, c.SeedsPerGramHigh}} {
			if !(r[0] > 0 && r[0] <= r[1]) {
				t.Errorf("%s: range %v", name, r)
			}
		}
		if m := c.SeedsPerGram(); m < c.SeedsPerGramLow || m > c.SeedsPerGramHigh {
			t.Errorf("%s: middle %v", name, m)
		}
	}
	sources, err := os.ReadFile("SOURCES.md")
	if err != nil {
		t.Fatal(err)
	}
	for column := range read("crops.csv")[0] {
		if column != "crop" && !strings.Contains(string(sources), column) {
			t.Errorf("column %s has no source", column)
		}
	}
}
