package chart

import (
	"math"
	"testing"

	"traybook/records"
	"traybook/report/rate"
)

func TestNothingIsDrawnFromNothing(t *testing.T) {
	if specs := Specs(newBook(t).report()); len(specs) != 0 {
		t.Errorf("%d charts, the first %q", len(specs), specs[0].Name)
	}
	b := newBook(t)
	b.Trays[0].Price, b.Trays[1].Price = records.Known(12.0), records.Known(2.0) // a pair without a matched sowing
	b.up(rate.FewBatches-1, "2025-03-03", "kale", "Ruff", "AIR", 90)
	b.late(rate.FewBatches-1, "kale", "AIR", map[int]int{0: 90})
	b.Scores = append(b.Scores, records.Score{Batch: "b000", Date: b.Day("2025-04-20"), Score: records.Known[int32](4)}) // one overall mark
	b.lost("2025-04-10", 0, "slugs")
	b.Lot("unsown", "kale", 0.9)
	b.Lot("balls", "chard", 0.9)
	b.sow("2025-03-03", "chard", "Wide", "WALL").Lot = "balls"
	b.Count("b004", "2025-04-03", 90)
	if got := namesOf(b.report()); len(got) != 0 {
		t.Errorf("charts of figures that say nothing: %q", got)
	}
}

// weeksBook is lettuce sown on the days given, each time a tenth less up, with the
// house at 21 C, 22 C, ... after all sowings but the first; seasons begin in October.
func weeksBook(t *testing.T, days ...string) book {
	b := newBook(t)
	b.Settings.Fahrenheit, b.Settings.SeasonStarts = true, 10
	for i, day := range days {
		b.up(1, day, "lettuce", "Leaf", "AIR", 90-10*i)
		if i > 0 {
			warm := records.Known(20 + float64(i))
			b.House = append(b.House, records.HouseReading{Date: b.Day(day) + 1, Low: warm, High: warm})
		}
	}
	return b
}

func TestWeeksWithTemperatures(t *testing.T) {
	// ISO 8601: week 1 of 2025 begins on 2024-12-30, week 10 on 3 March, week 28 on 7 July.
	days := []string{"2025-01-01", "2025-03-04", "2025-03-20", "2025-05-12", "2025-07-09"}
	s := only(t, weeks(weeksBook(t, days...).report(), 2025))
	ends(t, s, "5 weeks with sowings, from 50 % up of those sown in the week of 7 July to 90 % in the week of 30 December.")
	if got := items(t, s, "temperature, house")[0][1].(float64); math.Abs(got-69.8) > 1e-9 { // 21 C
		t.Errorf("temperature %v", got)
	}
	if from := s.Option["yAxis"].([]any)[1].(map[string]any)["min"].(float64); from < 60 || from > 69.8 {
		t.Errorf("the temperatures' axis begins at %v", from)
	}
	same(t, "legend", legend(s), "emergence, 5 batches", "temperature, house")
	if len(weeks(weeksBook(t, days[1:]...).report(), 2025)) != 0 {
		t.Error("a crop sown in four weeks has a chart")
	}
}

func TestMondays(t *testing.T) {
	// ISO 8601: known first days of weeks.
	for week, want := range map[string]string{"2020-W53": "2020-12-28", "2021-W01": "2021-01-04", "2026-W01": "2025-12-29", "2016-W01": "2016-01-04"} {
		if got := mondayOf(week).String(); got != want {
			t.Errorf("%s begins on %s, got %s", week, want, got)
		}
	}
	if mondayOf("soon").Known() {
		t.Error("a week that is none has a first day")
	}
}

func TestLossesByMonth(t *testing.T) {
	b := newBook(t)
	for i, cause := range []string{"slugs", "mice", "", "frost", "rot", "wind", "heat"} {
		b.sow("2025-02-20", "kale", "Ruff", "AIR")
		b.lost("2025-03-20", 15-i, cause)
		b.lost("2025-05-20", 5, cause)
	}
	b.lost("2025-06-20", 1, "slugs")
	s := only(t, losses(b.report(), 2025))
	names, notes := rowsOf(s)
	same(t, "months", names, "March", "May", "June")
	same(t, "notes", notes, "84 cells", "35 cells", "1 cell") // 15+14+...+9, 7 times 5
	same(t, "legend", legend(s), "slugs", "mice", "no cause written", "frost", "rot", "other causes")
}
