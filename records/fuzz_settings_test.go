package records

import (
	"encoding/csv"
	"reflect"
	"slices"
	"strings"
	"testing"
)

// bookOf writes settings as book.csv does.
func bookOf(rows ...[]string) string {
	var out strings.Builder
	_ = csv.NewWriter(&out).WriteAll(append([][]string{{"setting", "value"}}, rows...))
	return out.String()
}

// someSettings are values that a book may have, each setting with the ends of its range
// and with what lies beyond.
var someSettings = map[string][]string{
	"farm": {"Hollow Lane", "\u202e", "=1+1", "a\nb"}, "currency": {"eur", "€", "$", "XXX", "EURO"},
	"season_starts": {"1", "12", "13", "0", "7.0"}, "dates": {"dmy", "MDY", "ydm"}, "decimal": {"comma", ",", ".", "dot"},
	"temperature": {"F", "°c", "K"}, "wage": {"19.50", "$ 19.50", "1e9", "-1", "999999999999999", "19,50"}, "discount_rate": {"0", "99.99", "100", "5 %", "-1"},
	"usable_from": {"1", "5", "6"}, "score_1": {"dead"}, "score_2": {"weak"}, "score_3": {""}, "score_4": {"good"}, "score_5": {"5"},
	"confidence": {"50", "99.9", "100", "0.95"}, "sure_of_target": {"50%", "99.9", "49.9"}, "transplant_value": {"0", "0.40"}, "plug_price": {".25"},
	"legal_minimum": {"yes", "N", "maybe"}, "heating_months": {"10-4", "4 to 4", "1–12", "13-1", "Oct-4"},
	"bench_places": {"0.5", "0", "1,000"}, "chamber_places": {"1e3", "12"}, "tray_turnaround": {"0", "365", "366"},
}

// FuzzSettings reads any book.csv beside one sowing: no panic, every problem inside the
// file, every setting within its range, and the same again when it is written as it was
// taken.
func FuzzSettings(f *testing.F) {
	for _, name := range settingNames(f) {
		for _, value := range someSettings[name] {
			f.Add(bookOf([]string{name, value}))
		}
	}
	f.Add("setting;value;note\nDecimal;comma;\nwage;1.234,5;\nWage;2;\nwages;3\n;4\n")
	f.Add("\r\x00")
	f.Fuzz(func(t *testing.T, text string) {
		files := map[string]string{"sowings.csv": oneSowing, "book.csv": text}
		b, problems := load(files)
		for _, p := range problems {
			inside(t, p, files)
		}
		if wrong := outOfRange(b.Settings); wrong != "" {
			t.Errorf("%s: %+v of %q", wrong, b.Settings, text)
		}
		if !slices.ContainsFunc(problems, func(p Problem) bool { return p.Severity == Fatal }) {
			sameSettings(t, b.Settings)
		}
	})
}

// settingNames are those of a book that writes none, which lists them all.
func settingNames(t testing.TB) (names []string) {
	t.Helper()
	b, _ := load(map[string]string{"sowings.csv": oneSowing})
	for _, in := range b.Settings.Inputs {
		names = append(names, in.Name)
	}
	if len(names) != len(someSettings) {
		t.Fatalf("%d settings, %d with seeds", len(names), len(someSettings))
	}
	return names
}

// outOfRange names a setting beyond what the format allows, and one that a later figure
// could not reckon with.
func outOfRange(s Settings) string {
	month := func(m int) bool { return m >= 1 && m <= 12 }
	share := func(x float64) bool { return x >= 0.5 && x <= 0.9990001 }
	amount := func(m Maybe[float64]) bool { return !m.Known || m.Value >= 0 && m.Value < 1e15 }
	places := func(m Maybe[float64]) bool { return !m.Known || m.Value > 0 && m.Value < 1e15 }
	for name, ok := range map[string]bool{
		"currency": len(s.Currency) == 3, "season_starts": month(s.SeasonStarts), "discount_rate": s.DiscountRate >= 0 && s.DiscountRate < 1,
		"usable_from": s.UsableFrom >= 1 && s.UsableFrom <= 5, "confidence": share(s.Confidence), "sure_of_target": share(s.SureOfTarget),
		"heating_months": month(s.HeatingFrom) && month(s.HeatingUntil), "tray_turnaround": s.TrayTurnaround >= 0 && s.TrayTurnaround <= 365,
		"amounts": amount(s.Wage) && amount(s.TransplantValue) && amount(s.PlugPrice), "places": places(s.BenchPlaces) && places(s.ChamberPlaces),
		"inputs": len(s.Inputs) == len(someSettings), "score words": !slices.Contains(s.ScoreWords[:], ""),
	} {
		if !ok {
			return name
		}
	}
	return ""
}

// sameSettings writes settings as they are shown, which is with a point before
// fractions, and reads them again.
func sameSettings(t *testing.T, want Settings) {
	t.Helper()
	var rows [][]string
	for i, in := range want.Inputs {
		if in.Name == "decimal" {
			want.Inputs[i] = Input{"decimal", "point", "default"}
		} else if in.Source == "written" {
			rows = append(rows, []string{in.Name, in.Value})
		}
	}
	b, problems := load(map[string]string{"sowings.csv": oneSowing, "book.csv": bookOf(rows...)})
	if got := b.Settings; !reflect.DeepEqual(got, want) {
		t.Errorf("got %+v\nwant %+v: %v", got, want, problems)
	}
}
