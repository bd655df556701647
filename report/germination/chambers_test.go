package germination

import (
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
	"traybook/report/trade"
)

// Rule "Losses, weeks, chambers": readings belong to the season of their own date; a
// crop's readings are those while its batches stood there, each once, beside the usual
// range (lettuce 15.6 to 21.1 C).
func TestChambers(t *testing.T) {
	b := booktest.New(t)
	for _, code := range []string{"a", "b"} {
		s := b.Sow(code, "2025-03-01", "lettuce", "x", "AIR", 1)
		s.Chamber, s.ChamberOut = "box", b.Day("2025-03-03")
		b.Count(code, "2025-03-20", 90)
	}
	b.Sowings[1].ChamberOut = b.Day("2025-03-02")
	moved := b.Sow("e", "2025-03-01", "lettuce", "x", "AIR", 1)
	moved.Chamber, moved.From = "box", "a"
	b.Count("e", "2025-03-20", 10)
	b.Sow("c", "2025-03-01", "lettuce", "x", "AIR", 1).Chamber = "box" // not counted
	b.Sow("d", "2025-03-01", "lettuce", "x", "AIR", 1)                 // never in it
	b.Reading("box", "2025-03-01", 18)
	b.Reading("box", "2025-03-02", 24)
	b.Reading("box", "2025-03-03", 20)
	b.Reading("box", "2025-03-09", 30)
	b.Reading("box", "2024-12-31", 5)
	f := figures(b, "2025-04-20")
	if len(f.Chambers) != 2 || f.Chambers[0].Season != 2024 || f.Chambers[0].Readings != 1 || f.Chambers[0].Batches != 0 {
		t.Fatalf("chambers: %+v", f.Chambers)
	}
	c := f.Chambers[1]
	if c.Readings != 4 || c.Batches != 2 || c.X != 180 {
		t.Errorf("chamber: %+v", c)
	}
	known(t, "mean", c.MeanTemp, 23, 1e-12)
	known(t, "low", c.LowTemp, 18, 0)
	known(t, "high", c.HighTemp, 30, 0)
	known(t, "days in", c.DaysIn, 1.5, 0)
	if len(c.Crops) != 1 || c.Crops[0].Batches != 4 {
		t.Fatalf("crops: %+v", c.Crops)
	}
	known(t, "usual low (University of Delaware: 60 F)", c.Crops[0].UsualLow, 15.6, 1e-12)
	known(t, "mean while it stood there", c.Crops[0].MeanTemp, 62.0/3, 1e-12)
	known(t, "outside", c.Crops[0].Outside, 1.0/3, 1e-12)
	if !f.of(t, "a").Warmed || f.of(t, "d").Warmed {
		t.Error("a batch with readings of its chamber is not told from one without")
	}
}

// The ends of the usual range are usual: a reading exactly on the upper or lower limit
// is not outside, one a hair beyond is.
func TestReadingsOnTheLimits(t *testing.T) {
	lettuce, _ := trade.Crop("lettuce")
	low, high := lettuce.ChamberLowC, lettuce.ChamberHighC
	for name, c := range map[string]struct {
		temp, outside float64
	}{
		"on the lower": {low, 0}, "on the upper": {high, 0},
		"below": {low - 1e-6, 1}, "above": {high + 1e-6, 1}, "between": {(low + high) / 2, 0},
	} {
		b := booktest.New(t)
		s := b.Sow("a", "2025-03-01", "lettuce", "x", "AIR", 1)
		s.Chamber, s.ChamberOut = "box", b.Day("2025-03-03")
		b.Reading("box", "2025-03-02", c.temp)
		known(t, name, figures(b, "2025-04-20").Chambers[0].Crops[0].Outside, c.outside, 0)
	}
}

// The order of the readings of a day moves no digit (rule "Ties"): 0.1 + 0.2 + 0.3 and
// 0.3 + 0.2 + 0.1 differ in their last.
func TestReadingsOfADayInAnyOrder(t *testing.T) {
	means := map[Num]bool{}
	for _, temps := range [][]float64{{0.1, 0.2, 0.3}, {0.3, 0.2, 0.1}} {
		b := booktest.New(t)
		for _, temp := range temps {
			b.Reading("box", "2025-03-02", temp)
		}
		means[figures(b, "2025-04-20").Chambers[0].MeanTemp] = true
	}
	if len(means) != 1 {
		t.Errorf("two means: %v", means)
	}
}

// A farm with one chamber need not name it; without readings no chamber is made up, and
// of a crop that the trade table lacks nothing is usual.
func TestUnnamedChamber(t *testing.T) {
	b := booktest.New(t)
	b.Sow("a", "2025-03-01", "orache", "x", "AIR", 1).ChamberOut = b.Day("2025-03-03")
	b.Count("a", "2025-03-20", 90)
	if f := figures(b, "2025-04-20"); len(f.Chambers) != 0 {
		t.Errorf("made up: %+v", f.Chambers)
	}
	b.Reading("", "2025-03-02", 20)
	f := figures(b, "2025-04-20")
	if len(f.Chambers) != 1 || f.Chambers[0].Batches != 1 || f.Chambers[0].Crops[0].UsualLow.Known {
		t.Fatalf("got %+v", f.Chambers)
	}
	known(t, "mean", f.Chambers[0].Crops[0].MeanTemp, 20, 0)
	missing(t, "outside of nothing usual", f.Chambers[0].Crops[0].Outside)
}

// A date of leaving mistyped by years asks for no reading after 60 days; one before the
// sowing counts as no day.
func TestMistypedChamberOut(t *testing.T) {
	b := booktest.New(t)
	for code, out := range map[string]string{"late": "2825-03-03", "back": "2025-02-20"} {
		s := b.Sow(code, "2025-03-01", code, "x", "AIR", 1)
		s.Chamber, s.ChamberOut = code, b.Day(out)
	}
	b.Reading("late", "2025-04-30", 20) // 60 days after
	b.Reading("late", "2025-05-01", 30)
	c := booktest.Find(t, "late", figures(b, "2025-05-20").Chambers, func(c Chamber) bool { return c.Chamber == "late" })
	known(t, "mean of 60 days", c.Crops[0].MeanTemp, 20, 0)
	c = booktest.Find(t, "back", figures(b, "2025-05-20").Chambers, func(c Chamber) bool { return c.Chamber == "back" })
	known(t, "days in", c.DaysIn, 0, 0)
	missing(t, "mean of no reading", c.MeanTemp)
}

// Weeks are ISO weeks, of the year that owns them: 29 December 2025 is in 2026-W01.
func TestIsoWeek(t *testing.T) {
	for date, want := range map[string]string{"2025-12-28": "2025-W52", "2025-12-29": "2026-W01", "2027-01-03": "2026-W53"} { // ISO 8601
		if got := isoWeek(booktest.Day(t, date)); got != want {
			t.Errorf("%s: %s, want %s", date, got, want)
		}
	}
}

// Beside a sowing week stands the chamber where there are readings, else the house; of
// two rows of a day in the house their median.
func TestTemperatureBesideAWeek(t *testing.T) {
	b := booktest.New(t)
	b.Sow("a", "2025-03-03", "orache", "x", "AIR", 1)
	b.Count("a", "2025-03-20", 90)
	house := func(date string, low, high float64) {
		b.House = append(b.House, records.HouseReading{Date: b.Day(date), Low: records.Known(low), High: records.Known(high)})
	}
	w := figures(b, "2025-04-20").Weeks[0]
	if missing(t, "nothing read", w.Temp); w.TempOf != "" || w.Low.Known {
		t.Errorf("of %q", w.TempOf)
	}
	house("2025-03-03", 10, 20)
	house("2025-03-10", 8, 20)
	house("2025-03-10", 12, 32)
	house("2025-03-11", 30, 30)
	b.House = append(b.House, records.HouseReading{Date: b.Day("2025-03-05"), Low: records.Known(-30.0)})
	w = figures(b, "2025-04-20").Weeks[0]
	if known(t, "house", w.Temp, 16.5, 1e-12); w.TempOf != "house" {
		t.Errorf("of %q", w.TempOf)
	}
	b.Sowings[0].Chamber, b.Sowings[0].ChamberOut = "box", b.Day("2025-03-05")
	b.Reading("box", "2025-03-04", 22)
	b.Reading("box", "2025-03-06", 40)
	w = figures(b, "2025-04-20").Weeks[0]
	if known(t, "chamber", w.Temp, 22, 1e-12); w.TempOf != "chamber" {
		t.Errorf("of %q", w.TempOf)
	}
}
