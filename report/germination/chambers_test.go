package germination

import (
	"testing"

	"traybook/records"
	"traybook/report/estimate"
	"traybook/report/internal/booktest"
	"traybook/report/trade"
)

// Rule "Losses, weeks, chambers": readings belong to the season of their own date; a
// crop's readings are those of the days on which its batches stood there, each once,
// beside the temperatures at which it comes up well (lettuce 40 to 80 F).
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
	b.Reading("box", "2025-03-02", 28)
	b.Reading("box", "2025-03-03", 20) // the day they left
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
	known(t, "mean", c.MeanTemp, 24, 1e-12)
	known(t, "low", c.LowTemp, 18, 0)
	known(t, "high", c.HighTemp, 30, 0)
	known(t, "days in", c.DaysIn, 1.5, 0)
	if len(c.Crops) != 1 || c.Crops[0].Batches != 4 {
		t.Fatalf("crops: %+v", c.Crops)
	}
	known(t, "usual low (Knott: 40 F)", c.Crops[0].UsualLow, 40.0/9, 1e-12)
	known(t, "usual high (Knott: 80 F)", c.Crops[0].UsualHigh, 240.0/9, 1e-12)
	known(t, "mean while it stood there", c.Crops[0].MeanTemp, 23, 1e-12)
	known(t, "outside", c.Crops[0].Outside, 0.5, 1e-12)
	if !f.of(t, "a").Warmed || f.of(t, "d").Warmed {
		t.Error("a batch with readings of its chamber is not told from one without")
	}
}

// The ends of the usual range are usual: a reading exactly on the upper or lower limit
// is not outside, one a hair beyond is. Kale at 73 F comes up well, though not as fast as
// it might: no fault.
func TestReadingsOnTheLimits(t *testing.T) {
	facts, _ := trade.Crop("kale")
	low, high := facts.Usual()
	for name, c := range map[string]struct {
		temp, outside float64
	}{
		"on the lower": {low, 0}, "on the upper": {high, 0},
		"below": {low - 1e-6, 1}, "above": {high + 1e-6, 1}, "73 F": {(73.0 - 32) / 1.8, 0},
	} {
		b := booktest.New(t)
		s := b.Sow("a", "2025-03-01", "kale", "x", "AIR", 1)
		s.Chamber, s.ChamberOut = "box", b.Day("2025-03-03")
		b.Reading("box", "2025-03-02", c.temp)
		known(t, name, figures(b, "2025-04-20").Chambers[0].Crops[0].Outside, c.outside, 0)
	}
}

// A stay that no one wrote down counts as any other, that of an open batch past today:
// 3 days where no stay is known. A chamber in which nothing is known to have stood has
// readings and no crop.
func TestAssumedStaysCount(t *testing.T) {
	b := booktest.New(t)
	b.Sow("a", "2025-03-01", "orache", "x", "AIR", 1).Chamber = "box"
	for i, temp := range []float64{20, 22, 24, 50} {
		b.Reading("box", (b.Day("2025-03-01") + records.Date(i)).String(), temp)
	}
	b.Reading("idle", "2025-03-01", 9)
	f := figures(b, "2025-03-02")
	if len(f.Chambers) != 2 || len(f.Chambers[1].Crops) != 0 || f.Chambers[1].Readings != 1 {
		t.Fatalf("chambers: %+v", f.Chambers)
	}
	known(t, "mean of three days", f.Chambers[0].Crops[0].MeanTemp, 22, 1e-12)
	missing(t, "days in, of none written", f.Chambers[0].DaysIn)
	b.Chamber = nil
	for name, temp := range map[string]Num{"low": figures(b, "2025-03-02").Chambers[0].LowTemp, "high": figures(b, "2025-03-02").Chambers[0].HighTemp} {
		missing(t, name+" of no reading", temp)
	}
	if !f.of(t, "a").Warmed {
		t.Error("no reading stands beside an assumed stay")
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

// A chamber without a name has no batches of its own in the table, only its readings,
// and, crop by crop, those while batches stood in it; without readings it has no row. Of a
// crop that the trade table lacks nothing is usual.
func TestUnnamedChamber(t *testing.T) {
	b := booktest.New(t)
	b.Sow("a", "2025-03-01", "orache", "x", "AIR", 1).ChamberOut = b.Day("2025-03-03")
	b.Count("a", "2025-03-20", 90)
	if f := figures(b, "2025-04-20"); len(f.Chambers) != 0 {
		t.Errorf("made up: %+v", f.Chambers)
	}
	b.Reading("", "2025-03-02", 20)
	f := figures(b, "2025-04-20")
	if len(f.Chambers) != 1 || f.Chambers[0].Batches != 0 || f.Chambers[0].Readings != 1 || f.Chambers[0].Crops[0].UsualLow.Known {
		t.Fatalf("got %+v", f.Chambers)
	}
	missing(t, "emergence", f.Chambers[0].Share)
	known(t, "mean", f.Chambers[0].Crops[0].MeanTemp, 20, 0)
	missing(t, "outside of nothing usual", f.Chambers[0].Crops[0].Outside)
}

// A date of leaving mistyped by years asks for no reading after the batch's end; one
// before the sowing counts as no day.
func TestMistypedChamberOut(t *testing.T) {
	b := booktest.New(t)
	for code, out := range map[string]string{"late": "2825-03-03", "back": "2025-02-20"} {
		s := b.Sow(code, "2025-03-01", code, "x", "AIR", 1)
		s.Chamber, s.ChamberOut = code, b.Day(out)
		b.Leave(s, "2025-04-30", 50, 0)
	}
	b.Reading("late", "2025-04-29", 20)
	b.Reading("late", "2025-04-30", 30)
	c := booktest.Find(t, "late", figures(b, "2025-05-20").Chambers, func(c Chamber) bool { return c.Chamber == "late" })
	known(t, "mean of its days", c.Crops[0].MeanTemp, 20, 0)
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

// Beside a sowing week stands the chamber where there are readings, else the house, over
// the 7 days from sowing; of two rows of a day in the house the last.
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
	house("2025-03-09", 8, 20)
	house("2025-03-09", 12, 32)
	house("2025-03-10", 30, 30)
	b.House = append(b.House, records.HouseReading{Date: b.Day("2025-03-05"), Low: records.Known(-30.0)})
	w = figures(b, "2025-04-20").Weeks[0]
	if known(t, "house", w.Temp, 18.5, 1e-12); w.TempOf != "house" {
		t.Errorf("of %q", w.TempOf)
	}
	b.Sowings[0].Chamber, b.Sowings[0].ChamberOut = "box", b.Day("2025-03-05")
	b.Reading("box", "2025-03-04", 22)
	b.Reading("box", "2025-03-05", 40)
	w = figures(b, "2025-04-20").Weeks[0]
	if known(t, "chamber", w.Temp, 22, 1e-12); w.TempOf != "chamber" {
		t.Errorf("of %q", w.TempOf)
	}
}

// A week has the interval of its own batches by the crop's scatter: 3 batches of 100 in
// each of two weeks.
func TestWeeksHaveTheirInterval(t *testing.T) {
	b := booktest.New(t)
	alike(b, "a", "orache", "x", 60, 70, 80)
	alike(b, "b", "orache", "x", 85, 95, 90)
	for i := 3; i < 6; i++ {
		b.Sowings[i].Sown = b.Day("2025-03-04")
	}
	f := figures(b, "2025-04-20")
	used, _ := f.Scatter.Of("orache")
	if len(f.Weeks) != 2 || used.Rho == 0 {
		t.Fatalf("weeks %+v, rho %v", f.Weeks, used.Rho)
	}
	want := estimate.WilsonCorrected(0.9, 300/(1+99*used.Rho), estimate.T(0.95, used.DF))
	known(t, "low", f.Weeks[1].Low, want.Low, 1e-12)
	known(t, "high", f.Weeks[1].High, want.High, 1e-12)
}
