package templates

import (
	"strings"
	"testing"

	"traybook/report/rate"
	"traybook/report/years"
)

// A change's verdict, and whether it is more than this farm's seasons differ; cost has none.
func TestVerdictTails(t *testing.T) {
	cost := aChange("", 0)
	cost.Measure = years.Cost
	for want, c := range map[string]years.Change{
		": clearly higher": aChange(rate.ClearlyHigher, 0),
		": clearly higher, no more than this farm’s seasons differ": aChange(rate.ClearlyHigher, 0.05),
		": clearly lower, more than they usually differ":            aChange(rate.ClearlyLower, 0.02),
		": no clear difference":                                     aChange(rate.NoDifference, 0.05),
		"":                                                          cost,
	} {
		if got := verdictTail(c); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
	for want, v := range map[string]rate.Verdict{`<span class="good">clearly higher</span>`: rate.ClearlyHigher, `<span class="bad">clearly lower</span>`: rate.ClearlyLower,
		"no clear difference": rate.NoDifference, "too few batches": rate.TooFew, "": ""} {
		if got := string(changeVerdict(aChange(v, 0))); got != want {
			t.Errorf("got %q, want %q", got, want)
		}
	}
}

// What made a season worse is red: fewer plants, a higher cost.
func TestSignClass(t *testing.T) {
	for _, tt := range []struct {
		v    float64
		m    years.Measure
		want string
	}{{-1, years.Emergence, "neg"}, {1, years.Emergence, ""}, {0, years.Usable, ""}, {1, years.Cost, "neg"}, {-1, years.Cost, ""}, {0, years.Cost, ""}} {
		if got := signClass(tt.v, tt.m); got != tt.want {
			t.Errorf("%s %g: %q", tt.m, tt.v, got)
		}
	}
}

// A cold spring told apart from waste: the cold of the last season beside that of the one
// before, and what a degree-day took. By hand: 1100 degree-days are a tenth more than 1000.
func TestHeatingWords(t *testing.T) {
	r := houseReport(t)
	r.Years.Heating = []years.Heating{{Season: 2023, DegreeDays: 1000, PerDegreeDay: num(0.5)}, {Season: 2024, DegreeDays: 1100, PerDegreeDay: num(0.4)}}
	if got := bare(pageOf(t, r).heatingWords()); got != "2024 was colder than 2023, by 10 % in the cold; a degree-day took USD 0.400, against USD 0.500." {
		t.Error(got)
	}
	r.Years.Heating[1].DegreeDays = 900
	if got := bare(pageOf(t, r).heatingWords()); !strings.Contains(got, "2024 was milder than 2023, by 10 %") {
		t.Error(got)
	}
	r.Years.Heating = append(r.Years.Heating, years.Heating{Season: 2025, DegreeDays: 300, PerDegreeDay: num(0.6)})
	if got := bare(pageOf(t, r).heatingWords()); got != "In 2025 so far, a degree-day took USD 0.600 of heat, against USD 0.400 in 2024." {
		t.Error(got)
	}
	r.Years.Heating = r.Years.Heating[1:2]
	if got := pageOf(t, r).heatingWords(); got != "" {
		t.Errorf("one season: %s", got)
	}
}

// The page of years: the answer, the measures with their parts, and never a cause.
func TestYearsPage(t *testing.T) {
	text := textOf(t, buildOf(t, houseReport(t), nil), "years.html")
	expect(t, text, "Year over year", "Each season beside the one before it", "against 2024", "What came up, of the cells looked at", "2024", "2025", "Like sowings", "Other varieties and trays", "Growing other crops", "The change")
}
