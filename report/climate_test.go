package report

import (
	"testing"

	"traybook/records"
)

func (b *book) reading(chamber, date string, temp float64) {
	b.Chamber = append(b.Chamber, records.ChamberReading{Chamber: chamber, Date: day(b, date), Temp: temp})
}

// Readings belong to the season of their own date; a crop's readings are those while
// its batches stood there, each once, beside the usual range (lettuce 15.6 to 21.1 C).
func TestChambers(t *testing.T) {
	b := newBook(t)
	for _, code := range []string{"a", "b"} {
		s := b.sow(code, "2025-03-01", "lettuce", "x", "AIR", 1)
		s.Chamber, s.ChamberOut = "box", day(t, "2025-03-03")
		b.count(code, "2025-03-20", 90)
	}
	b.sow("c", "2025-03-01", "lettuce", "x", "AIR", 1).Chamber = "box" // not counted
	b.sow("d", "2025-03-01", "lettuce", "x", "AIR", 1)                 // never in it
	b.reading("box", "2025-03-01", 18)
	b.reading("box", "2025-03-02", 24)
	b.reading("box", "2025-03-03", 20)
	b.reading("box", "2025-03-09", 30)
	b.reading("box", "2024-12-31", 5)
	r := b.report("2025-04-20")
	if len(r.Chambers) != 2 || r.Chambers[0].Season != 2024 || r.Chambers[0].Readings != 1 || r.Chambers[0].Batches != 0 {
		t.Fatalf("chambers: %+v", r.Chambers)
	}
	c := r.Chambers[1]
	if c.Readings != 4 || c.Batches != 2 || c.X != 180 {
		t.Errorf("chamber: %+v", c)
	}
	known(t, "mean", c.MeanTemp, 23, 1e-12)
	known(t, "low", c.LowTemp, 18, 0)
	known(t, "high", c.HighTemp, 30, 0)
	known(t, "days in", c.DaysIn, 2, 0)
	if len(c.Crops) != 1 || c.Crops[0].Batches != 3 {
		t.Fatalf("crops: %+v", c.Crops)
	}
	known(t, "usual low (University of Delaware: 60 F)", c.Crops[0].UsualLow, 15.6, 1e-12)
	known(t, "mean while it stood there", c.Crops[0].MeanTemp, 62.0/3, 1e-12)
	known(t, "outside", c.Crops[0].Outside, 1.0/3, 1e-12)
}

// A farm with one chamber need not name it; without readings no chamber is made up.
func TestUnnamedChamber(t *testing.T) {
	b := newBook(t)
	b.sow("a", "2025-03-01", "orache", "x", "AIR", 1).ChamberOut = day(t, "2025-03-03")
	b.count("a", "2025-03-20", 90)
	if r := b.report("2025-04-20"); len(r.Chambers) != 0 {
		t.Errorf("made up: %+v", r.Chambers)
	}
	b.reading("", "2025-03-02", 20)
	if r := b.report("2025-04-20"); len(r.Chambers) != 1 || r.Chambers[0].Batches != 1 || r.Chambers[0].Crops[0].UsualLow.Known {
		t.Errorf("got %+v", r.Chambers)
	}
}

// Weeks are ISO weeks, of the year that owns them: 29 December 2025 is in 2026-W01.
func TestIsoWeek(t *testing.T) {
	for date, want := range map[string]string{"2025-12-28": "2025-W52", "2025-12-29": "2026-W01", "2027-01-03": "2026-W53"} { // ISO 8601
		if got := isoWeek(day(t, date)); got != want {
			t.Errorf("%s: %s, want %s", date, got, want)
		}
	}
}

// Beside a sowing week stands the chamber where there are readings, else the house.
func TestTemperatureBesideAWeek(t *testing.T) {
	b := newBook(t)
	b.sow("a", "2025-03-03", "orache", "x", "AIR", 1)
	b.count("a", "2025-03-20", 90)
	b.House = []records.HouseReading{
		{Date: day(t, "2025-03-03"), Low: records.Known(10.0), High: records.Known(20.0)},
		{Date: day(t, "2025-03-10"), Low: records.Known(12.0), High: records.Known(24.0)},
		{Date: day(t, "2025-03-11"), Low: records.Known(30.0), High: records.Known(30.0)},
		{Date: day(t, "2025-03-05"), Low: records.Known(-30.0)},
	}
	w := b.report("2025-04-20").Weeks[0]
	known(t, "house", w.Temp, 16.5, 1e-12)
	b.Sowings[0].Chamber, b.Sowings[0].ChamberOut = "box", day(t, "2025-03-05")
	b.reading("box", "2025-03-04", 22)
	b.reading("box", "2025-03-06", 40)
	w = b.report("2025-04-20").Weeks[0]
	if known(t, "chamber", w.Temp, 22, 1e-12); w.TempOf != "chamber" {
		t.Errorf("of %s", w.TempOf)
	}
}
