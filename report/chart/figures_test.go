package chart

import (
	"math"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
)

func TestNothingIsDrawnFromNothing(t *testing.T) {
	if specs := Specs(reportOf()); len(specs) != 0 {
		t.Errorf("%d charts, the first %q", len(specs), specs[0].Name)
	}
	r := reportOf()
	unknown := report.Rate{Batches: 5}
	r.Emergence = []report.Emergence{{Group: group("kale", "A", "thin"), Rate: unknown}, {Group: group("kale", "B", "thin"), Rate: share(0.9, 2)}}
	r.Weeks = []report.SowingWeek{{Season: 2025, Crop: "kale", Week: "2025-W10", Rate: share(0.9, 1)}}
	r.Losses = []report.Loss{{Season: 2025, Crop: "kale", Cause: "slugs"}}
	r.Quality = []report.Quality{{Group: group("kale", "A", "thin"), Rate: share(0.9, 3)}} // overall marks only
	r.Leeway = []report.Leeway{{Kind: "thin", Rate: unknown}}
	r.Lots = []report.LotFigure{{SeedRate: known(0.9)}, {SeedRate: known(0.9), Label: known(0.95), Cluster: true}}
	r.Payback = []report.Payback{{Tray: "A72", Other: "S72"}}
	if specs := Specs(r); len(specs) != 0 {
		t.Errorf("%d charts of figures that say nothing, the first %q", len(specs), specs[0].Name)
	}
}

func TestEmergenceLowestFirst(t *testing.T) {
	r := reportOf()
	r.Emergence = []report.Emergence{
		{Group: group("kale", "Ruff", "thin"), Rate: share(0.9, 4)}, {Group: group("leek", "Long", "air"), Rate: share(0.6, 3)},
		{Group: group("leek", "Few", "air"), Rate: share(0.1, report.FewBatches-1)},
		{Group: report.Group{Season: 2024, Crop: "leek", Variety: "Old", Kind: "air"}, Rate: share(0.2, 9)},
		{Group: report.Group{Season: 2025, Crop: "chard", Variety: "Wide"}, Rate: share(0.7, 12)},
	}
	s := only(t, emergence(r, 2025))
	names, notes := rowsOf(s)
	same(t, "names", names, "leek, Long, 72", "chard, Wide", "kale, Ruff, 72")
	same(t, "notes", notes, "3 batches", "12 batches", "4 batches")
	same(t, "legend", legend(s), "kind unknown", "air", "thin")
	if !strings.Contains(s.Label, "60 % (leek, Long, 72)") {
		t.Errorf("label %q", s.Label)
	}
}

func TestTooManyRowsAreSaidToBeLeftOut(t *testing.T) {
	r := reportOf()
	for i := range mostRows + 5 {
		r.Emergence = append(r.Emergence, report.Emergence{Group: group("kale", strings.Repeat("v", i+1), "thin"), Rate: share(0.9-float64(i)/100, 4)})
	}
	s := only(t, emergence(r, 2025))
	if names, _ := rowsOf(s); len(names) != mostRows || !strings.HasPrefix(names[0], "kale, "+strings.Repeat("v", 20)) {
		t.Errorf("%d rows, the first %q", len(names), names[0])
	}
	if !strings.Contains(s.Title, "the lowest 30 of 35") {
		t.Errorf("title %q", s.Title)
	}
}

func TestWeeksWithTemperatures(t *testing.T) {
	r := reportOf()
	r.Book.Settings.Fahrenheit = true
	// ISO 8601: week 1 of 2025 begins on 2024-12-30, week 10 on 3 March, week 28 on 7 July.
	for i, week := range []string{"2025-W01", "2025-W10", "2025-W12", "2025-W20", "2025-W28"} {
		w := report.SowingWeek{Season: 2025, Crop: "lettuce", Week: week, Rate: share(0.9-0.1*float64(i), 2)}
		if i > 0 {
			w.Temp, w.TempOf = known(20+float64(i)), "house"
		}
		r.Weeks = append(r.Weeks, w)
	}
	s := only(t, weeks(r, 2025))
	if want := "5 weeks with sowings, from 50 % up of those sown in the week of 7 July to 90 % in the week of 30 December."; !strings.Contains(s.Label, want) {
		t.Errorf("label %q", s.Label)
	}
	if got := items(t, s, "temperature, house")[0][1].(float64); math.Abs(got-69.8) > 1e-9 { // 21 C
		t.Errorf("temperature %v", got)
	}
	if from := s.Option["yAxis"].([]any)[1].(map[string]any)["min"].(float64); from < 60 || from > 69.8 {
		t.Errorf("the temperatures' axis begins at %v", from)
	}
	same(t, "legend", legend(s), "emergence, 10 batches", "temperature, house")
	r.Weeks = r.Weeks[1:]
	if len(weeks(r, 2025)) != 0 {
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
	r := reportOf()
	for i, cause := range []string{"slugs", "mice", "", "frost", "rot", "wind", "heat"} {
		l := report.Loss{Season: 2025, Crop: "kale", Cause: cause, Cells: 20 - i}
		l.ByMonth[3], l.ByMonth[5] = 15-i, 5
		r.Losses = append(r.Losses, l)
	}
	s := only(t, losses(r, 2025))
	names, notes := rowsOf(s)
	same(t, "months", names, "March", "May")
	same(t, "notes", notes, "84 cells", "35 cells") // 15+14+...+9, 7 times 5
	same(t, "legend", legend(s), "slugs", "mice", "no cause written", "frost", "rot", "other causes")
}

func TestLotsAgainstTheirPackets(t *testing.T) {
	r := reportOf()
	lot := func(code string, rate, label float64, below bool) report.LotFigure {
		return report.LotFigure{Lot: records.Lot{Code: code, Crop: "kale", Variety: "Ruff"}, Counted: 3, SeedRate: known(rate), SeedLow: known(rate - 0.1),
			SeedHigh: known(rate + 0.05), Label: known(label), Below: records.Known(below)}
	}
	r.Lots = []report.LotFigure{lot("A", 0.9, 0.92, false), lot("B", 0.5, 0.9, true), lot("C", 0.8, 0.9, false), lot("D", 0.4, 0.9, true)}
	r.Lots[2].SeedsPerCell, r.Lots[3].SeedsPerCell = records.Known(6), records.Known(6)
	s := only(t, lots(r))
	names, notes := rowsOf(s)
	same(t, "names", names, "D, kale, Ruff", "B, kale, Ruff", "A, kale, Ruff") // C: several seeds to a cell say little, unless flagged
	same(t, "notes", notes, "3 batches, 6 seeds a cell", "3 batches", "3 batches")
	if marks := items(t, s, "packet"); len(marks) != 3 || marks[0][0] != 90.0 || marks[2][0] != 92.0 {
		t.Errorf("marks %v", marks)
	}
	if want := "Of 3 lots with a packet's figure 2 came up worse than a mix allows. Furthest below its packet: D, Ruff, 40 % against 90 %."; !strings.Contains(s.Label, want) {
		t.Errorf("label %q", s.Label)
	}
}

func TestQualityLeastFitFirst(t *testing.T) {
	r := reportOf()
	scores := func(n ...float64) (s [5]report.Num) {
		for i, v := range n {
			s[i] = known(v)
		}
		return s
	}
	r.Quality = []report.Quality{
		{Group: group("kale", "Ruff", "thin"), Rate: share(0.9, 3), S: scores(1, 1, 2, 8, 8)},
		{Group: group("leek", "Long", ""), Rate: share(0.5, 1), S: scores(5, 0, 5)},
	}
	s := only(t, quality(r, 2025))
	names, notes := rowsOf(s)
	same(t, "names", names, "leek, Long, 72", "kale, Ruff, 72 thin")
	same(t, "notes", notes, "10 plants", "20 plants")
	same(t, "legend", legend(s), "1 waste", "2 poor", "3 fit", "4 good", "5 best")
	if !strings.Contains(s.Label, "highest 90 % (kale, Ruff, 72 thin), the lowest 50 % (leek, Long, 72)") {
		t.Errorf("label %q", s.Label)
	}
}

func TestLeewayByKind(t *testing.T) {
	r := reportOf()
	r.Leeway = []report.Leeway{
		{Kind: "air", DaysLate: 0, Rate: share(0.95, 9)}, {Kind: "air", DaysLate: 8, Rate: share(0.9, 4)}, {Kind: "thin", DaysLate: 8, Rate: share(0.6, 3)},
		{Crop: "kale", Kind: "thin", DaysLate: 0, Rate: share(0.1, 3)}, // a crop's own is for the table
	}
	s := only(t, leeway(r))
	same(t, "legend", legend(s), "air", "thin")
	bands := s.Option["xAxis"].(map[string]any)["data"].([]string)
	if got := strings.ReplaceAll(bands[3], "\n", " "); got != "8 to 14 days late: 4, 3 batches" {
		t.Errorf("band %q", got)
	}
	if level := items(t, s, "still fit: 80 %"); level[0][0] != 80.0 {
		t.Errorf("line at %v", level)
	}
	if want := "air, up to the day: 95 %; air, 8 to 14 days late: 90 %; thin, 8 to 14 days late: 60 %."; !strings.HasSuffix(s.Label, want) {
		t.Errorf("label %q", s.Label)
	}
}

func TestCostRows(t *testing.T) {
	cost := report.Cost{Group: report.Group{Crop: "tomato"}, Rests: 10, Usable: known(100), PerTransplant: known(0.3),
		Behind: report.Parts{Seed: 10, Mix: 5, Labour: 10, Heat: 2, TrayCharge: 1, Power: 1, Other: 1}}
	row, ok := costRow(cost)
	if !ok || row.Name != "tomato" || row.Note != "0.300, 10 batches" || math.Abs(stacked(row)-0.3) > 1e-12 || math.Abs(*row.Parts[0]-0.1) > 1e-12 {
		t.Errorf("%+v, parts add up to %g", row, stacked(row))
	}
	// Half is handed on to what was potted on: every part is half as large.
	cost.Behind.Carried, cost.PerTransplant = -15, known(0.15)
	row, ok = costRow(cost)
	if !ok || row.Name != "tomato, after potting on" || math.Abs(stacked(row)-0.15) > 1e-12 || math.Abs(*row.Parts[0]-0.05) > 1e-12 {
		t.Errorf("%+v, parts add up to %g", row, stacked(row))
	}
	// A refund larger than what else is in its part cannot be stacked.
	cost.Behind.Carried, cost.Behind.Other = 0, -6
	row, ok = costRow(cost)
	if !ok || row.Parts != nil || !strings.HasSuffix(row.Note, "no bar") {
		t.Errorf("%+v", row)
	}
	if _, ok := costRow(report.Cost{}); ok {
		t.Error("a crop without a cost has a row")
	}
}

func stacked(r StackRow) (sum float64) {
	for _, p := range r.Parts {
		sum += value(p)
	}
	return sum
}
