package germination

import (
	"fmt"
	"slices"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// told writes alarms one a line: date, place, value, limit, batches.
func told(alarms []Alarm) (lines []string) {
	for _, a := range alarms {
		over := "<"
		if a.High {
			over = ">"
		}
		lines = append(lines, fmt.Sprintf("%s %s %.1f%s%.1f %v", a.Date, a.Place, a.Value, over, a.Limit, a.Batches))
	}
	return lines
}

// kept sows a batch in a chamber and takes it out after so many days.
func kept(b *booktest.Book, code, sown, crop, chamber string, days int) {
	s := b.Sow(code, sown, crop, "x", "AIR", 1)
	s.Chamber, s.ChamberOut = chamber, s.Sown+records.Date(days)
}

// Rule "Alarms": a reading on a day on which a batch stood in the chamber, above the
// temperature at which little of a crop in it comes up (IFAS: lettuce 85 F, tomato 95 F),
// the warmest of the day; which batches it was too warm for. The day a batch left, and a
// chamber with nothing in it, give no alarm.
func TestChamberAlarms(t *testing.T) {
	b := booktest.New(t)
	kept(b, "a", "2025-03-01", "lettuce", "box", 2)
	kept(b, "b", "2025-03-02", "Lettuces", "box", 2)
	kept(b, "c", "2025-03-01", "tomato", "box", 5)
	kept(b, "d", "2025-03-01", "tomato", "shed", 5)
	for day, temp := range map[string]float64{"2025-03-01": 29.5, "2025-03-02": 36, "2025-03-03": 29.4, "2025-03-04": 34.9, "2025-03-05": 35.1, "2025-03-06": 60} {
		b.Reading("box", day, 20)
		b.Reading("box", day, temp)
		b.Reading("box", day, 21)
		b.Reading("idle", day, 60)
		b.Reading("shed", day, 35) // exactly what tomato bears
	}
	got := told(figures(b, "2025-03-10").Alarms)
	want := []string{"2025-03-01 box 29.5>29.4 [a]", "2025-03-02 box 36.0>29.4 [a b c]", "2025-03-05 box 35.1>35.0 [c]"}
	if !slices.Equal(got, want) {
		t.Errorf("got %q", got)
	}
}

// Where the trade table knows no crop in the chamber 40 C is the limit; where it knows one
// that one's, and the others are told where it is above 40 C too. Assumed stays count, and
// an open batch's runs on past today.
func TestChamberAlarmsOfUnknownCrops(t *testing.T) {
	b := booktest.New(t)
	kept(b, "a", "2025-03-01", "orache", "box", 1)
	b.Reading("box", "2025-03-01", 40)
	kept(b, "b", "2025-03-05", "orache", "box", 1)
	b.Reading("box", "2025-03-05", 40.1)
	kept(b, "c", "2025-03-07", "orache", "box", 1)
	kept(b, "d", "2025-03-07", "cucumber", "box", 1) // 106 F
	b.Reading("box", "2025-03-07", 41)
	kept(b, "e", "2025-03-09", "orache", "box", 1)
	kept(b, "f", "2025-03-09", "cucumber", "box", 1)
	b.Reading("box", "2025-03-09", 41.2)
	b.Sow("g", "2025-03-20", "orache", "x", "AIR", 1).Chamber = "other" // 1 day, as its crop
	b.Reading("other", "2025-03-20", 45)
	b.Reading("other", "2025-03-21", 45)
	got := told(figures(b, "2025-03-20").Alarms)
	want := []string{"2025-03-05 box 40.1>40.0 [b]", "2025-03-09 box 41.2>41.1 [e f]", "2025-03-20 other 45.0>40.0 [g]"}
	if !slices.Equal(got, want) {
		t.Errorf("got %q", got)
	}
}

// A chamber without a name holds the batches of which only the day of leaving is written.
func TestAlarmsOfAnUnnamedChamber(t *testing.T) {
	b := booktest.New(t)
	kept(b, "a", "2025-03-01", "lettuce", "", 2)
	b.Sow("b", "2025-03-01", "lettuce", "x", "AIR", 1)
	b.Reading("", "2025-03-01", 33)
	got := figures(b, "2025-03-10").Alarms
	if len(got) != 1 || got[0].Place != "chamber" || got[0].Chamber != "" || got[0].House || !slices.Equal(got[0].Batches, []string{"a"}) {
		t.Errorf("got %+v", got)
	}
}

// In the house a low below 1 C or a high above 40 C, a day once, frost first; the batches
// are those that stood there and not in a chamber. Alarms have the season of their date.
func TestHouseAlarms(t *testing.T) {
	b := booktest.New(t)
	b.Settings.SeasonStarts = 10
	b.Leave(b.Sow("a", "2025-09-20", "orache", "x", "AIR", 1), "2025-10-02", 50, 0)
	kept(b, "b", "2025-09-25", "orache", "box", 8)
	b.Sow("c", "2025-09-30", "orache", "x", "AIR", 1)
	house := func(date string, low, high Num) {
		b.House = append(b.House, records.HouseReading{Date: b.Day(date), Low: low, High: high})
	}
	at := records.Known[float64]
	house("2025-09-19", at(-3), at(20)) // an empty house
	house("2025-09-21", at(1), at(40))
	house("2025-09-22", Num{}, at(40.2))
	house("2025-09-30", at(0.9), at(45))
	house("2025-10-01", at(3), Num{})
	house("2025-10-02", at(5), at(20))
	house("2025-10-02", at(0.2), at(19)) // two rows of a day: the coldest
	house("2025-10-03", Num{}, Num{})
	f := figures(b, "2025-10-05")
	want := []string{"2025-09-19 house -3.0<1.0 []", "2025-09-22 house 40.2>40.0 [a]", "2025-09-30 house 0.9<1.0 [a c]", "2025-10-02 house 0.2<1.0 [c]"}
	if got := told(f.Alarms); !slices.Equal(got, want) {
		t.Errorf("got %q", got)
	}
	for i, season := range []int{2025, 2025, 2025, 2026} {
		if a := f.Alarms[i]; a.Season != season || !a.House || a.Chamber != "" {
			t.Errorf("%+v", a)
		}
	}
}

// The rows of one day stand by place.
func TestAlarmsOfADay(t *testing.T) {
	b := booktest.New(t)
	kept(b, "a", "2025-03-01", "orache", "shed", 2)
	kept(b, "b", "2025-03-01", "orache", "attic", 2)
	highs(b, "2025-03-01", 44, 1)
	b.Reading("shed", "2025-03-01", 41)
	b.Reading("attic", "2025-03-01", 42)
	var places []string
	for _, a := range figures(b, "2025-03-10").Alarms {
		places = append(places, a.Place)
	}
	if !slices.Equal(places, []string{"attic", "house", "shed"}) {
		t.Errorf("got %v", places)
	}
}
