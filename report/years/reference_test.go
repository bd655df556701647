package years

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"traybook/records"
	"traybook/report/batch"
	"traybook/report/estimate"
	"traybook/report/germination"
	"traybook/report/money"
	"traybook/report/plants"
)

// read reads a file of testdata, its header left out; sources are in testdata/README.txt.
func read(t *testing.T, name string) [][]string {
	t.Helper()
	f, err := os.Open(filepath.Join("testdata", name))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return rows[1:]
}

func number(t *testing.T, s string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// expected reads the value of a case and quantity: the columns case, quantity, value.
func expected(t *testing.T, name, of, quantity string) float64 {
	t.Helper()
	for _, row := range read(t, name+"_expected.csv") {
		if row[0] == of && row[1] == quantity {
			return number(t, row[2])
		}
	}
	t.Fatalf("%s: no %s of %s", name, quantity, of)
	return 0
}

// made is a batch of a crop and variety in a season that does so well in n cells.
func made(season int, crop, variety string, n, share float64) entry {
	sown := batch.Sowing{Season: season, Sowing: &records.Sowing{Crop: crop, Variety: variety}}
	borne := &money.Borne{Plants: &plants.Plants{Counted: &germination.Counted{Batch: &batch.Batch{Sowing: sown}}}}
	return entry{borne, estimate.Count{X: n * share, N: n}}
}

// seasonOf pools the batches of a season.
func seasonOf(entries []entry) *pool {
	var sown []*batch.Sowing
	for i, e := range entries {
		e.Nth = i
		sown = append(sown, &e.Batch.Sowing)
	}
	batch.Rank(sown)
	return poolsBy(entries, ofSeason)[0]
}

func noRho(before, after *pool) split { return splitCrop(before, after, 0, nil) }

// Heads of households by age (Das Gupta 1993, Table 5.1): the ages as varieties of one
// crop, then as crops of a farm.
func TestSplitAgreesWithDasGupta(t *testing.T) {
	var kinds, crops [2][]entry
	for _, r := range read(t, "dasgupta_headship.csv") {
		for i, season := range []int{1970, 1985} {
			size, percent := number(t, r[1+2*i]), number(t, r[2+2*i])
			kinds[i] = append(kinds[i], made(season, "persons", r[0], size, percent))
			crops[i] = append(crops[i], made(season, r[0], "", size, percent))
		}
	}
	want := func(quantity string) float64 { return expected(t, "dasgupta_headship", "headship", quantity) }
	crop := noRho(seasonOf(kinds[0]), seasonOf(kinds[1]))
	near(t, "same, of one crop", crop.same, want("kitagawa_rate_component"), 1e-9)
	near(t, "other kinds, of one crop", crop.kinds, want("kitagawa_composition_component"), 1e-9)
	near(t, "share", crop.share, 1, 1e-12)
	farm := splitFarm(seasonOf(crops[0]), seasonOf(crops[1]), noRho)
	near(t, "same, of a farm", farm.same, want("kitagawa_rate_component"), 1e-9)
	near(t, "other kinds, of a farm", farm.kinds, 0, 0)
	near(t, "other crops, of a farm", farm.crops, want("kitagawa_composition_component"), 1e-9)
	near(t, "before", seasonOf(crops[0]).ratio(), want("crude_standardised_1970"), 1e-9)
	near(t, "after", seasonOf(crops[1]).ratio(), want("crude_standardised_1985"), 1e-9)
}

// Earnings a person = earnings an earner x share of earners (Das Gupta 1993, Table 2.1):
// earners and others are two crops, of which the second has a rate of 0.
func TestSplitOfAProduct(t *testing.T) {
	rows := read(t, "dasgupta_product.csv")
	var season [2][]entry
	for i := range season {
		earns, share := number(t, rows[0][2+i]), number(t, rows[1][2+i])
		season[i] = []entry{made(i, "earners", "", share, earns), made(i, "others", "", 1-share, 0)}
	}
	want := func(quantity string) float64 {
		return expected(t, "dasgupta_product", "table2_1_earnings", quantity)
	}
	s := splitFarm(seasonOf(season[0]), seasonOf(season[1]), noRho)
	near(t, "same", s.same, want("avg_earnings_effect"), 1e-6)
	near(t, "other crops", s.crops, want("earner_share_effect"), 1e-6)
	near(t, "change", s.same+s.kinds+s.crops, want("crude_effect"), 1e-6)
}

// Births a thousand persons (Das Gupta 1993, Table 2.2): women are a crop, those of 15 to
// 49 years a variety of it. The parts are not his, who takes the factors in all orders;
// their sum is.
func TestSplitOfThreeFactors(t *testing.T) {
	rows := read(t, "dasgupta_product.csv")
	var season [2][]entry
	for i := range season {
		births, young, women := number(t, rows[2][2+i]), number(t, rows[3][2+i]), number(t, rows[4][2+i])
		season[i] = []entry{made(i, "women", "15-49", young*women, births), made(i, "women", "others", (1-young)*women, 0), made(i, "men", "", 1-women, 0)}
	}
	s := splitFarm(seasonOf(season[0]), seasonOf(season[1]), noRho)
	near(t, "change", s.same+s.kinds+s.crops, expected(t, "dasgupta_product", "table2_2_birth_rate", "crude_effect"), 1e-9)
	if !(s.same > 0 && s.kinds > 0 && s.crops < 0) {
		t.Errorf("more births a woman, more young women, fewer women: %+v", s)
	}
}
