package germination

import (
	"testing"

	"traybook/records"
	"traybook/report/estimate"
	"traybook/report/internal/booktest"
)

// highs writes the house's high of so many days on end.
func highs(b *booktest.Book, from string, high float64, days int) {
	for d := range days {
		b.House = append(b.House, records.HouseReading{Date: b.Day(from) + records.Date(d), High: records.Known(high)})
	}
}

// Rule "Climate": bands of 5 C from 20 C on, the mean of the highs first rounded half up to
// a tenth; the first band has no lower end.
func TestBands(t *testing.T) {
	for mean, want := range map[float64]int{-5: -99, 19.949: -99, 19.95: 20, 20: 20, 24.949: 20, 24.95: 25, 29.95: 30, 34.94: 30, 34.95: 35, 47: 35} {
		if got := band(mean); got != want {
			t.Errorf("%v: band %d, want %d", mean, got, want)
		}
	}
}

// By crop and band, all seasons together, with the interval of the crop's scatter; where
// it was warm and where it was cold each batch counts in its own.
func TestClimate(t *testing.T) {
	b := booktest.New(t)
	for _, c := range []struct {
		code, sown string
		up         int
	}{{"a", "2024-03-01", 90}, {"b", "2025-03-01", 80}, {"c", "2025-05-01", 50}, {"d", "2025-05-01", 60}} {
		b.Sow(c.code, c.sown, "orache", "x", "AIR", 1)
		b.Count(c.code, (b.Day(c.sown) + 20).String(), c.up)
	}
	alike(b, "m", "mibuna", "x", 70, 80, 90, 60)
	highs(b, "2024-03-01", 18, 7)
	highs(b, "2025-03-01", 19.9, 7)
	highs(b, "2025-05-01", 33, 7)
	f := figures(b, "2025-06-10")
	if len(f.Climate) != 3 || f.Climate[0].Crop != "mibuna" || f.Climate[1].Band != BelowAllBands || f.Climate[2].Band != 30 {
		t.Fatalf("climate: %+v", f.Climate)
	}
	cold, warm := f.Climate[1], f.Climate[2]
	if cold.Batches != 2 || cold.X != 170 || cold.N != 200 || warm.X != 110 {
		t.Errorf("cold %+v, warm %+v", cold, warm)
	}
	used, _ := f.Scatter.Of("orache")
	want := estimate.WilsonCorrected(0.85, 200/(1+99*used.Rho), estimate.T(0.95, used.DF))
	known(t, "low", cold.Low, want.Low, 1e-12)
	known(t, "high", cold.High, want.High, 1e-12)
}

// A batch counts where the house was read on 5 or more of the 7 days from its sowing, or
// from the day it left the chamber, an assumed stay too; of a day its last row stands, high
// or none.
func TestDaysOfTheClimate(t *testing.T) {
	last := func(b *booktest.Book, date string, high records.Maybe[float64]) {
		b.House = append(b.House, records.HouseReading{Date: b.Day(date), High: high, Low: records.Known(2.0)})
	}
	for name, c := range map[string]struct {
		write func(*booktest.Book, *records.Sowing)
		want  int // band; 0: in none
	}{
		"seven days":   {func(b *booktest.Book, _ *records.Sowing) { highs(b, "2025-03-01", 22, 7) }, 20},
		"five of them": {func(b *booktest.Book, _ *records.Sowing) { highs(b, "2025-03-03", 22, 5) }, 20},
		"four of them": {func(b *booktest.Book, _ *records.Sowing) { highs(b, "2025-03-04", 22, 7) }, 0},
		"none":         {func(*booktest.Book, *records.Sowing) {}, 0},
		"those after": {func(b *booktest.Book, _ *records.Sowing) {
			highs(b, "2025-03-01", 22, 7)
			highs(b, "2025-03-08", 99, 7)
		}, 20},
		"the mean": {func(b *booktest.Book, _ *records.Sowing) {
			highs(b, "2025-03-01", 22, 4)
			highs(b, "2025-03-05", 30, 3)
		}, 25},
		"last row stands": {func(b *booktest.Book, _ *records.Sowing) {
			highs(b, "2025-03-01", 50, 7)
			highs(b, "2025-03-01", 22, 7)
		}, 20},
		"last row is without": {func(b *booktest.Book, _ *records.Sowing) {
			highs(b, "2025-03-01", 22, 5)
			last(b, "2025-03-02", Num{})
		}, 0},
		"several seeds": {func(b *booktest.Book, s *records.Sowing) { highs(b, "2025-03-01", 22, 7); s.SeedsPerCell = 2 }, 0},
		"out of the chamber": {func(b *booktest.Book, s *records.Sowing) {
			s.ChamberOut = b.Day("2025-03-04")
			highs(b, "2025-03-01", 50, 3)
			highs(b, "2025-03-04", 22, 7)
		}, 20},
		"an assumed stay": {func(b *booktest.Book, s *records.Sowing) { // 3 days
			s.Chamber = "box"
			highs(b, "2025-03-01", 50, 3)
			highs(b, "2025-03-04", 22, 7)
		}, 20},
		"not counted": {func(b *booktest.Book, _ *records.Sowing) { highs(b, "2025-03-01", 22, 7); b.Counts = nil }, 0},
	} {
		b := booktest.New(t)
		s := b.Sow("a", "2025-03-01", "orache", "x", "AIR", 1)
		b.Count("a", "2025-03-20", 90)
		c.write(b, s)
		switch got := figures(b, "2025-06-10").Climate; {
		case c.want == 0 && len(got) > 0:
			t.Errorf("%s: %+v", name, got)
		case c.want != 0 && (len(got) != 1 || got[0].Band != c.want || got[0].X != 90):
			t.Errorf("%s: %+v, want band %d", name, got, c.want)
		}
	}
}
