package records

import (
	"fmt"
	"slices"
	"strings"
	"testing"
)

// defaultInputs is the contract's list of settings, in its order, with what
// stands for each that is not written.
const defaultInputs = `farm=
currency=USD
season_starts=1
dates=told from the file
decimal=point
temperature=C
wage=none
discount_rate=5
usable_from=3
score_1=discard
score_2=weak
score_3=fit
score_4=good
score_5=ideal
confidence=95
sure_of_target=90
transplant_value=by crop
plug_price=none
legal_minimum=yes
heating_months=10-4
bench_places=not judged
chamber_places=not judged
tray_turnaround=3
`

func inputs(s Settings, source string) string {
	var all strings.Builder
	for _, in := range s.Inputs {
		if in.Source == source {
			fmt.Fprintf(&all, "%s=%s\n", in.Name, in.Value)
		}
	}
	return all.String()
}

func TestDefaultSettings(t *testing.T) {
	b, problems := load(map[string]string{"sowings.csv": oneSowing})
	if got := inputs(b.Settings, "default"); len(problems) > 0 || got != defaultInputs {
		t.Errorf("%v\n%s", problems, got)
	}
	got := b.Settings
	got.Inputs = nil
	want := Settings{Currency: "USD", SeasonStarts: 1, DiscountRate: 0.05, UsableFrom: 3, ScoreWords: [5]string{"discard", "weak", "fit", "good", "ideal"},
		Confidence: 0.95, SureOfTarget: 0.9, LegalMinimum: true, HeatingFrom: 10, HeatingUntil: 4, TrayTurnaround: 3}
	if fmt.Sprint(got) != fmt.Sprint(want) {
		t.Errorf("got %+v\nwant %+v", got, want)
	}
}

// Written settings are shown as used, and decimal holds for numbers above it.
func TestWrittenSettings(t *testing.T) {
	b, problems := load(map[string]string{"sowings.csv": oneSowing, "book.csv": `Setting;Value;Note
Farm;Seven Acres;
currency;eur;
season starts;11;
dates;DMY;
wage;€ 19,50;
decimal;comma;
temperature;°f;
discount_rate;4,5 %;
usable_from;2;
score_1;compost;
confidence;90;
sure_of_target;95%;
transplant_value;0,2;
plug_price;0,32;
heating_months;2 to 5;
bench_places;106;
chamber_places;14;
tray_turnaround;0;
;;only a remark
score_2;;left blank
`})
	want := `farm=Seven Acres
currency=EUR
season_starts=11
dates=dmy
decimal=comma
temperature=F
wage=19.5
discount_rate=4.5
usable_from=2
score_1=compost
confidence=90
sure_of_target=95
transplant_value=0.2
plug_price=0.32
heating_months=2-5
bench_places=106
chamber_places=14
tray_turnaround=0
`
	if got := inputs(b.Settings, "written"); got != want {
		t.Errorf("got\n%s", got)
	}
	if len(problems) > 0 {
		t.Error(problems)
	}
	s := b.Settings
	if s.Wage != Known(19.5) || s.DiscountRate != 0.045 || !s.Fahrenheit || s.ScoreWords[0] != "compost" || s.TrayTurnaround != 0 {
		t.Errorf("got %+v", s)
	}
	if s.Season(NewDate(2024, 11, 1)) != 2025 || s.Season(NewDate(2024, 10, 31)) != 2024 {
		t.Error("a season carries the year in which it ends")
	}
	if first, after := s.SeasonDays(2025); first != NewDate(2024, 11, 1) || after != NewDate(2025, 11, 1) {
		t.Error(first, after)
	}
	if !s.Heating(2) || !s.Heating(5) || s.Heating(6) || s.Heating(1) {
		t.Error("heated from February to May")
	}
}

// The legal minimum of the United States is shown where money is in its dollars, and
// where the book says so.
func TestLegalMinimum(t *testing.T) {
	for rows, want := range map[string]Input{
		"":                                  {"legal_minimum", "yes", "default"},
		"currency,eur\n":                    {"legal_minimum", "no", "default"},
		"currency,EUR\nlegal_minimum,Yes\n": {"legal_minimum", "yes", "written"},
		"legal_minimum,no\ncurrency,USD\n":  {"legal_minimum", "no", "written"},
	} {
		b, problems := load(map[string]string{"sowings.csv": oneSowing, "book.csv": "setting,value\n" + rows})
		i := slices.IndexFunc(b.Settings.Inputs, func(in Input) bool { return in.Name == "legal_minimum" })
		if len(problems) > 0 || b.Settings.Inputs[i] != want || b.Settings.LegalMinimum != (want.Value == "yes") {
			t.Errorf("%q: %v, %v %v", rows, b.Settings.Inputs[i], b.Settings.LegalMinimum, problems)
		}
	}
}

// An error in book.csv, whatever its kind, lets nothing be built.
func TestErrorsInBookAreFatal(t *testing.T) {
	for _, row := range []string{"wage,lots,", "wage,20,cheap, really", `wage,2"0,`, "wgae,20,", "hourly pay,20,", ",20,"} {
		b, problems := load(map[string]string{"sowings.csv": oneSowing, "book.csv": "setting,value,note\n" + row + "\n"})
		if len(problems) != 1 || problems[0].Severity != Fatal || problems[0].Severity.String() != "error" || b.Settings.Wage.Known && !strings.HasPrefix(row, "wage,20") {
			t.Errorf("%s: %v", row, problems)
		}
	}
}
