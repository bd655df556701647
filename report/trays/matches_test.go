package trays

import (
	"fmt"
	"strings"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// What is no pair has no answer, and of equal prices the later code by bytes is the tray.
func TestPairs(t *testing.T) {
	for name, change := range map[string]func(*pairBook){
		"one kind":     func(pb *pairBook) { pb.thin.Kind = pb.heavy.Kind },
		"blank price":  func(pb *pairBook) { pb.thin.Price = Num{} },
		"unlike cells": func(pb *pairBook) { pb.thin.Cells = 72 },
	} {
		pb := newPairBook(1, 2, 3, 1, 2, 3)
		change(&pb)
		if f := pb.tell(t); len(f.Payback)+len(f.Matches)+len(f.Trial) != 0 {
			t.Errorf("%s: %+v", name, f.Payback)
		}
	}
	pb := newPairBook(1)
	pb.heavy.Price = pb.thin.Price
	if back := pb.back(t); back.Tray != "THIN" || back.Other != "HEAVY" {
		t.Errorf("%s against %s", back.Tray, back.Other)
	}
	b := pb.book(t)
	third := b.Tray("MIDDLE", "third kind", 100)
	third.Price = records.Known(5.0)
	unsown := b.Tray("UNSOWN", "fourth kind", 100)
	unsown.Price = records.Known(6.0)
	sow(b, "m1", "2025-06-01", "MIDDLE", 1, 80)
	var got []string
	for _, back := range tell(b.Book()).Payback {
		got = append(got, back.Tray+"/"+back.Other)
	}
	if want := "[MIDDLE/HEAVY MIDDLE/THIN THIN/HEAVY]"; fmt.Sprint(got) != want {
		t.Errorf("pairs %v, want %s", got, want)
	}
}

// A match takes what is sown up to seven days after its first sowing, of one crop,
// variety, lot and number of seeds a cell; batches whose usable is a guess, or that were
// not sown from seed, are not in it.
func TestMatchesTakeSevenDays(t *testing.T) {
	b := newPairBook().book(t)
	sow(b, "h1", "2025-03-01", "HEAVY", 1, 80)
	sow(b, "t1", "2025-03-08", "THIN", 1, 70)
	sow(b, "h2", "2025-03-09", "HEAVY", 1, 10)
	sow(b, "t2", "2025-03-09", "THIN", 1, 10).PlantsOut = records.Maybe[int]{} // estimated
	sow(b, "t3", "2025-03-01", "THIN", 1, 10).SeedsPerCell = 2
	sow(b, "t4", "2025-03-01", "THIN", 1, 10).Lot = "L9"
	sow(b, "t5", "2025-03-01", "THIN", 1, 10).Start = records.FromPlug
	sow(b, "t6", "2025-03-01", "THIN", 1, 10).From = "t1"
	f := tell(b.Book())
	if len(f.Matches) != 1 || fmt.Sprint(f.Matches[0].Batches) != "[h1 t1]" {
		t.Fatalf("%+v", f.Matches)
	}
	booktest.Near(t, "difference", f.Matches[0].Difference, 0.1, 1e-12)
}

// Batches of a code in one match are added up, cells and plants; matches are numbered
// by day, then crop, variety, lot and seeds a cell.
func TestMatchesAddUpAndAreNumbered(t *testing.T) {
	b := newPairBook().book(t)
	for _, row := range []struct {
		code, sown, variety, lot string
		seeds                    int
		tray                     string
		usable                   float64
	}{
		{"b1", "2025-03-01", "Brun", "", 1, "HEAVY", 90},
		{"b2", "2025-03-02", "Brun", "", 1, "HEAVY", 60},
		{"b3", "2025-03-05", "Brun", "", 1, "THIN", 70},
		{"a1", "2025-03-01", "Arvo", "L1", 2, "HEAVY", 50},
		{"a2", "2025-03-01", "Arvo", "L1", 2, "THIN", 50},
		{"a3", "2025-03-01", "Arvo", "L1", 1, "HEAVY", 50},
		{"a4", "2025-03-01", "Arvo", "L1", 1, "THIN", 50},
		{"a5", "2025-03-01", "Arvo", "", 1, "HEAVY", 50},
		{"a6", "2025-03-01", "Arvo", "", 1, "THIN", 50},
		{"c1", "2025-02-01", "Cass", "", 1, "THIN", 50},
		{"c2", "2025-02-01", "Cass", "", 1, "HEAVY", 50},
	} {
		s := sow(b, row.code, row.sown, row.tray, 1, row.usable)
		s.Variety, s.Lot, s.SeedsPerCell = row.variety, row.lot, row.seeds
	}
	f := tell(b.Book())
	var got []string
	for _, m := range f.Matches {
		got = append(got, strings.ReplaceAll(fmt.Sprintf("%d %s/%s/%d %v", m.Number, m.Variety, m.Lot, m.SeedsPerCell, m.Batches), "//", "/"))
	}
	if want := "[1 Cass/1 [c1 c2] 2 Arvo/1 [a5 a6] 3 Arvo/L1/1 [a3 a4] 4 Arvo/L1/2 [a1 a2] 5 Brun/1 [b1 b2 b3]]"; fmt.Sprint(got) != want {
		t.Errorf("got  %v\nwant %s", got, want)
	}
	m := f.Matches[4]
	booktest.Near(t, "150 of 200 less 70 of 100", m.Difference, 0.05, 1e-12)
	if m.CellsTray != 200 || m.CellsOther != 100 || m.LastSown != b.Day("2025-03-05") {
		t.Errorf("%+v", m)
	}
}

// The mean of matched differences and its interval against R 4.2.2:
// t.test(c(.81, .82, .84, .80, .83, .82), rep(.8, 6), paired = TRUE)$conf.int is
// 0.00515873885221 to 0.03484126114779.
func TestMatchedDifference(t *testing.T) {
	f := newPairBook(1, 2, 4, 0, 3, 2).tell(t)
	back := f.Payback[0]
	booktest.Known(t, "difference", back.Difference, 0.02, 1e-12)
	booktest.Known(t, "low", back.DifferenceLow, 0.00515873885221, 1e-12)
	booktest.Known(t, "high", back.DifferenceHigh, 0.03484126114779, 1e-12)
	if back.Matches != 6 || back.Dates != 6 || len(f.Matches) != 6 || f.Matches[2].Number != 3 {
		t.Errorf("%+v", f.Matches)
	}
}
