package records

import (
	"strings"
)

// setting is one setting of book.csv: its name, its default as shown, and how a
// written value is taken up. take returns the value as used, or else what was
// expected.
type setting struct {
	name, standard string
	take           func(l *loader, s string) (used, expected string)
}

var settingTable = []setting{
	{"farm", "", func(l *loader, s string) (string, string) { l.settings.Farm = s; return s, "" }},
	{"currency", "USD", (*loader).takeCurrency},
	{"season_starts", "1", wholeSetting(1, 12, "a month from 1 to 12", func(s *Settings, n int) { s.SeasonStarts = n })},
	{"dates", "told from the file", (*loader).takeDates},
	{"decimal", "point", (*loader).takeDecimal},
	{"temperature", "C", (*loader).takeTemperature},
	{"wage", "none", amountSetting(func(s *Settings, x float64) { s.Wage = Known(x) })},
	{"discount_rate", "5", shareSetting(0, 99.99, func(s *Settings, x float64) { s.DiscountRate = x })},
	{"usable_from", "3", wholeSetting(1, 5, "a score from 1 to 5", func(s *Settings, n int) { s.UsableFrom = n })},
	{"score_1", "discard", scoreWord(0)},
	{"score_2", "weak", scoreWord(1)},
	{"score_3", "fit", scoreWord(2)},
	{"score_4", "good", scoreWord(3)},
	{"score_5", "ideal", scoreWord(4)},
	{"confidence", "95", shareSetting(50, 99.9, func(s *Settings, x float64) { s.Confidence = x })},
	{"sure_of_target", "90", shareSetting(50, 99.9, func(s *Settings, x float64) { s.SureOfTarget = x })},
	{"transplant_value", "by crop", amountSetting(func(s *Settings, x float64) { s.TransplantValue = Known(x) })},
	{"plug_price", "none", amountSetting(func(s *Settings, x float64) { s.PlugPrice = Known(x) })},
	{"legal_minimum", "", (*loader).takeLegal},
	{"heating_months", "10-4", (*loader).takeHeating},
	{"bench_places", "not judged", placesSetting(func(s *Settings, x float64) { s.BenchPlaces = Known(x) })},
	{"chamber_places", "not judged", placesSetting(func(s *Settings, x float64) { s.ChamberPlaces = Known(x) })},
	{"tray_turnaround", "3", wholeSetting(0, 365, "a number of days from 0 to 365", func(s *Settings, n int) { s.TrayTurnaround = n })},
}

// defaults are the settings of a book that writes none; settingTable shows the same.
func defaults() Settings {
	return Settings{
		Currency: "USD", SeasonStarts: 1, DiscountRate: 0.05, UsableFrom: 3,
		ScoreWords: [5]string{"discard", "weak", "fit", "good", "ideal"},
		Confidence: 0.95, SureOfTarget: 0.90, HeatingFrom: 10, HeatingUntil: 4, TrayTurnaround: 3,
	}
}

// readSettings reads book.csv, if there is one, and fills in the defaults.
func (l *loader) readSettings() {
	l.settings = defaults()
	written := map[string]string{}
	l.readWritten(written)
	if written["legal_minimum"] == "" {
		l.settings.LegalMinimum = l.settings.Currency == "USD"
	}
	for _, s := range settingTable {
		in := Input{s.name, s.standard, "default"}
		if s.name == "legal_minimum" { // the one default that hangs on another setting
			in.Value = yesOrNo(l.settings.LegalMinimum)
		}
		if v, ok := written[s.name]; ok {
			in.Value, in.Source = v, "written"
		}
		l.settings.Inputs = append(l.settings.Inputs, in)
	}
}

// readWritten reads the rows of book.csv; they are taken up in the table's order,
// so that decimal is known before the first number.
func (l *loader) readWritten(written map[string]string) {
	rows := map[string]row{}
	readLog(l, "book.csv", func(r row) string {
		if name := r.settingName(rows); name != "" {
			rows[name] = r
		}
		return ""
	})
	for _, s := range settingTable {
		r, ok := rows[s.name]
		if !ok || r.text("value") == "" {
			continue
		}
		used, expected := s.take(l, r.text("value"))
		if expected == "" {
			written[s.name] = used
		} else {
			r.misread("setting", "value", expected+" is expected", l.settingRemedy(s.name, r.text("value")))
		}
	}
}

// settingName is the setting a row is about; empty where it is none, or stands
// in an earlier row.
func (r row) settingName(before map[string]row) string {
	written := r.text("setting")
	if written == "" {
		if r.text("value") != "" {
			r.problem("setting-name", "setting", "a value without a setting", "a setting is expected", "")
		}
		return ""
	}
	var names []string
	for _, s := range settingTable {
		names = append(names, s.name)
		if foldHeader(s.name) != foldHeader(written) {
			continue
		}
		if first, twice := before[s.name]; twice {
			r.problem("setting-name", "setting", "setting "+quote(s.name)+" stands in "+first.pos().inWords()+" too",
				"each setting once is expected", "delete one of the rows")
			return ""
		}
		return s.name
	}
	if r.told[finding{printable(r.file), "setting-name"}] >= mostOfAKind { // what was meant would not be told
		r.misread("setting-name", "setting", "a setting is expected", "")
		return ""
	}
	if near := nearest(foldHeader(written), names, foldHeader); near != "" {
		r.misread("setting-name", "setting", "a setting is expected", didYouMean(near))
		return ""
	}
	remedy := "delete the row; the settings are " + strings.Join(names, ", ")
	if held := longestHeld(headWords(written), names); held != "" {
		remedy = didYouMean(held)
	}
	r.misread("setting-name", "setting", "a setting is expected", remedy)
	return ""
}

// settingRemedy says how to mend a setting's value, where that can be told.
func (l *loader) settingRemedy(name, value string) string {
	if name == "heating_months" {
		return "format the cell as text, so that the spreadsheet makes no date of it"
	}
	if !strings.ContainsAny(value, "0123456789") {
		return ""
	}
	if remedy := l.settings.remedy(moneyCell, value, l.decimal); remedy != "" {
		return remedy
	}
	return l.settings.remedy(percentCell, value, l.decimal)
}
