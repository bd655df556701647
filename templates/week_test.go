package templates

import (
	"slices"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report"
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/plants"
	"traybook/report/words"
)

// What is left and due stands large, then a line a batch by tray code, then the trays that
// come free and are left.
func TestWeek(t *testing.T) {
	full := changedHouse(t, func(b *records.Book) { b.Settings.BenchPlaces = records.Known(7.0) })
	expect(t, textOf(t, buildOf(t, full, nil), "week.html"),
		"The week of 10 June 2025", "As the book stands on Tuesday.",
		"2.5 trays too many for 7 bench places", "2 of 2 chamber places left", "1 batch to count", "2 past their day",
		"batches to see to", "By tray code.", "dot: a count", "To do",
		"A72, 72 air-pruning", "LA25-4", "lettuce Fenwimple", "2.5", "set out: 8 days late", "3 batches",
		"S72, 72 solid-wall", "LS25-7", "count: 14 days old",
		"LS25-8", "set out: 8 days late",
		"Count: not counted yet", "Fit: so many of the same crop",
		"free in the next two weeks", "Thu 19 Jun", "1 S72", "Trays free on the coming Mondays", "16 Jun", "A72", "Washed, 3 days after the batch has left.", "week.csv")
}

// A batch has one line, whatever there is to do with it.
func TestOneLineABatch(t *testing.T) {
	r := changedHouse(t, func(b *records.Book) {
		for i := range b.Sowings {
			if b.Sowings[i].Code == "LA25-4" {
				b.Sowings[i].Wanted = records.Known(1000) // late, and short too
			}
		}
	})
	p := pageOf(t, r)
	seen := map[string]int{}
	for _, j := range p.jobsOn(report.ToCount, report.Late, report.Short) {
		seen[j.batch.Code]++
	}
	lines := len(r.Lines(report.ToCount)) + len(r.Lines(report.Late)) + len(r.Lines(report.Short))
	if len(seen) >= lines {
		t.Fatalf("%d batches, %d lines: no batch has two", len(seen), lines)
	}
	rows := 0
	for _, g := range p.weekWork().Rows.Groups {
		rows += len(g.Rows)
	}
	if want := len(seen) + len(r.Lines(report.Fell)); rows != want {
		t.Errorf("%d rows, want %d", rows, want)
	}
	for code, n := range seen {
		if n > 1 {
			t.Errorf("%s has %d rows", code, n)
		}
	}
}

// Each line says what to do and what that rests on, whichever way it stands.
func TestTodoWords(t *testing.T) {
	at := func(wanted int, planned string) *report.Record {
		r := *houseReport(t).Record("LS25-9")
		counted, plant := *r.Plants.Counted, *r.Plants
		one := *counted.Batch
		one.Wanted, one.Planned = records.Known(wanted), 0
		if planned != "" {
			one.Planned = day(t, planned)
		}
		counted.Batch, plant.Counted, r.Plants = &one, &counted, &plant
		return &r
	}
	resow := report.WeekLine{What: report.Short, Batch: at(130, "2025-07-20"), Value: num(33.6), Date: day(t, "2025-06-13"), ResowPossible: true,
		Rests: report.Rests{Of: "crop", Batches: []string{"a", "b", "c"}}}
	late, blind, few, book := resow, resow, resow, resow
	late.ResowPossible, blind.ResowPossible, blind.Batch = false, false, at(130, "")
	few.TooFewSown, few.Rests.Of = true, "crop, variety, cells and kind"
	book.Rests.Of = "book"
	fit := &plants.Leeway{Rate: rateOf(9, 10, 4, 0.7, 0.97)}
	for _, tt := range []struct {
		line report.WeekLine
		want string
	}{
		{resow, "sow again by 13 June: 34 of 130 short (3 batches of the crop)"},
		{late, "34 of 130 short, too late to sow again (3 batches of the crop)"},
		{blind, "34 of 130 short, no planned day is written (3 batches of the crop)"},
		{few, "sow again by 13 June: sown too few, 34 of 130 short (3 batches of its variety and tray)"},
		{book, "sow again by 13 June: 34 of 130 short (3 batches of all crops)"},
		{report.WeekLine{What: report.ToCount, Value: num(1)}, "count: 1 day old"},
		{report.WeekLine{What: report.ToCount, Value: num(20), Again: true}, "count again: 20 days old"},
		{report.WeekLine{What: report.Late, Value: num(2)}, "set out: 2 days late"},
		{report.WeekLine{What: report.Late, Value: num(2), Leeway: fit}, "set out: 2 days late 90 % (70 to 97) fit, 4 batches"},
		{report.WeekLine{What: report.Fell, Value: num(26), Batch: at(100, ""), Date: day(t, "2025-05-02")}, "26 of 100 lacking, gone 2 May in S72"},
	} {
		if got := bare(todoWords[tt.line.What](tt.line)); got != tt.want {
			t.Errorf("got %q, want %q", got, tt.want)
		}
	}
	for of := range restOf {
		if restOf[of] == "" {
			t.Errorf("%s has no words", of)
		}
	}
}

// Alarms stand first, days on end as one, and the heading says what was wrong.
func TestWeekAlarms(t *testing.T) {
	high, low := germination.Alarm{High: true}, germination.Alarm{}
	for _, tt := range []struct {
		alarms []germination.Alarm
		want   string
	}{
		{[]germination.Alarm{high}, "Too warm where batches stood"},
		{[]germination.Alarm{low, low}, "Too cold where batches stood"},
		{[]germination.Alarm{high, low}, "Too warm and too cold where batches stood"},
	} {
		if got := string(alarmTitle(tt.alarms)); got != tt.want {
			t.Errorf("%q, want %q", got, tt.want)
		}
	}
	b, problems := records.Load(house)
	for i := range b.Chamber {
		if b.Chamber[i].Date >= day(t, "2025-03-12") {
			b.Chamber[i].Temp = 45 // above what any crop stands
		}
	}
	hot := reportOfBook(t, b, problems, report.Options{Today: day(t, "2025-03-13")})
	expect(t, textOf(t, buildOf(t, hot, nil), "week.html"), "As the book stands on Thursday.", "Too warm where batches stood", "The chamber warm box was too warm on 2 days", "bench places left")
	if pageOf(t, houseReport(t)).weekAlarms() != nil {
		t.Error("an alarm in a house without one of late")
	}
}

// A week with nothing to do says so and shows what stands, else what left last.
func TestEmptyWeek(t *testing.T) {
	gone := func(b *records.Book) {
		b.Settings.BenchPlaces, b.Settings.ChamberPlaces = records.Maybe[float64]{}, records.Maybe[float64]{}
		b.Sowings = slices.DeleteFunc(b.Sowings, func(s records.Sowing) bool {
			return !s.SetOut.Known() || s.Wanted.Known && s.Wanted.Value > s.PlantsOut.Value
		})
	}
	b := buildOf(t, changedHouse(t, gone), nil)
	text := textOf(t, b, "week.html")
	expect(t, text, "? bench places left: write bench_places into book.csv", "0 batches to count",
		"No batch is open", "Everything that was sown has left the house", "These were the last to leave, in the 30 days to today.", "Gone", "LS25-6", "1 June, 6 days past its day")
	if strings.Contains(text, "Count:") || strings.Contains(text, "to see to") {
		t.Errorf("work in a week without any:\n%s", text)
	}
	expect(t, textOf(t, b, "sheets.html"), "No batch is due: the forms are blank.", "Germination counts")
	young := changedHouse(t, func(b *records.Book) {
		gone(b)
		b.Sowings = append(b.Sowings, records.Sowing{Code: "S25-1", Sown: today - 2, Crop: "spinach", Variety: "Larkleaf", Tray: "S72", Trays: 1, SeedsPerCell: 1,
			Start: records.FromSeed, Planned: today + 30})
	})
	expect(t, textOf(t, buildOf(t, young, nil), "week.html"), "Nothing to do this week", "This is what stands.", "S25-1", "for 10 July")
}

// The day on which a batch left is told beside the planned one, where both are known.
func TestApartWords(t *testing.T) {
	d := day(t, "2025-05-20")
	for _, tt := range []struct {
		planned records.Date
		want    string
	}{{d - 5, "5 days past its day"}, {d + 1, "1 day before its day"}, {d, "on its day"}} {
		if got := bare(apartWords(d, tt.planned)); got != tt.want {
			t.Errorf("%q, want %q", got, tt.want)
		}
	}
}

// The sowings-only book has a week worth opening: what left last, and the trays that come
// free.
func TestWeekOfPoorBooks(t *testing.T) {
	r := reportOf(t, example("poor/sowings-only"), report.Options{})
	last := slices.MaxFunc(r.Records, func(a, b *report.Record) int { return int(a.End - b.End) })
	expect(t, textOf(t, buildOf(t, r, nil), "week.html"), "No batch is open", last.Code, "free in the next two weeks", dayName(last.End+3))
}

// What was sown a year ago in the days ahead stands with what came of it.
func TestYearAgo(t *testing.T) {
	r := reportOf(t, house, report.Options{Today: day(t, "2026-03-31")})
	expect(t, textOf(t, buildOf(t, r, nil), "week.html"), "A year ago, in the week ahead", "Sown in the 7 days from this day of 2025.", "LA25-3", "1 A72", "Mon 31 Mar",
		"97 % came up, 68 plants", "LS25-3", "122 plants, 120 wanted")
	for how, want := range map[plants.How]string{"": "plants not known", plants.AtLeast: "at least 68 plants", plants.Estimated: "about 68 plants", plants.ByOut: "68 plants"} {
		b := *r.Record("LA25-3")
		plant := *b.Plants
		plant.UsableHow, b.Plants = how, &plant
		if got := bare(plantsWords(&b)); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
}

// Trays that are not there stand in red, below 0.
func TestTraysLeft(t *testing.T) {
	if got := leftText(num(-1.5)); string(got) != `<span class="bad">−1.5</span>` {
		t.Error(got)
	}
	if got := leftText(report.Num{}); got != words.None {
		t.Errorf("unknown is told as %s", got)
	}
	r := changedHouse(t, func(b *records.Book) {
		b.Trays = slices.DeleteFunc(b.Trays, func(p records.Purchase) bool { return p.Count.Known && p.Count.Value == 16 })
	})
	left := pageOf(t, r).mondayRows("left", "")
	if len(left.Cols) != 9 || !strings.Contains(string(left.Groups[0].Rows[1].Cells[1]), "bad") {
		t.Errorf("%+v", left.Groups)
	}
}

// The axis holds every life in whole weeks, and has today on it.
func TestLifeAxis(t *testing.T) {
	p := pageOf(t, houseReport(t))
	one := func(sown, planned records.Date) []job {
		return []job{{batch: &report.Record{Plants: &plants.Plants{Counted: &germination.Counted{Batch: &batch.Batch{Sowing: batch.Sowing{Sowing: &records.Sowing{Sown: sown, Planned: planned}}}}}}}}
	}
	for _, tt := range []struct {
		jobs          []job
		before, after float64 // weeks
	}{
		{nil, 4, 2},
		{one(today-50, today+20), 8, 3},
		{one(today-500, today+200), 24, 6},
		{one(today-3, 0), 4, 2},
	} {
		a := p.lifeAxis(tt.jobs).axis
		if a.Min != float64(today)-7*tt.before || a.Max != float64(today)+7*tt.after {
			t.Errorf("from %v to %v weeks, want %v to %v", (a.Min-float64(today))/7, (a.Max-float64(today))/7, -tt.before, tt.after)
		}
		named := false
		for _, tick := range a.Ticks {
			named = named || tick.Zero && tick.Word == "today" && tick.At == float64(today)
		}
		if !named {
			t.Errorf("today is not on %+v", a.Ticks)
		}
	}
}
