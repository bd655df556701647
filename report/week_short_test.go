package report

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/estimate"
	"traybook/report/internal/booktest"
)

// kept sows batches of 100 cells that came up so and gave so many, 40 days each.
func kept(b *booktest.Book, prefix, crop, variety, tray string, upAndGave ...[2]int) {
	b.Helper()
	for i, n := range upAndGave {
		code := fmt.Sprint(prefix, i)
		b.Leave(b.Sow(code, "2025-01-10", crop, variety, tray, 1), "2025-02-19", n[1], 0)
		b.Count(code, "2025-01-30", n[0])
	}
}

// open sows a batch of 100 cells on 1 March of which so many plants are wanted.
func open(b *booktest.Book, code, crop, variety, tray string, wanted int) *records.Sowing {
	b.Helper()
	s := b.Sow(code, "2025-03-01", crop, variety, tray, 1)
	s.Wanted = records.Known(wanted)
	return s
}

// Orache kept (70 + 60 + 50) of (90 + 80 + 80) that came up: .72. Of 90 that came up 64.8
// are to be expected.
func TestLikelyShort(t *testing.T) {
	b := booktest.New(t)
	kept(b, "past", "orache", "x", "AIR", [2]int{90, 70}, [2]int{80, 60}, [2]int{80, 50})
	for code, s := range map[string]struct {
		wanted  int
		planned string
	}{"covered": {64, "2025-05-15"}, "short": {65, "2025-05-15"}, "today": {80, "2025-05-11"}, "past it": {80, "2025-05-10"}, "unplanned": {80, ""}} {
		one := open(b, code, "orache", "y", "WALL", s.wanted)
		if s.planned != "" {
			one.Planned = b.Day(s.planned)
		}
		b.Count(code, "2025-03-20", 90)
	}
	got := map[string]WeekLine{}
	for _, l := range reportOf(b, "2025-04-01").Lines(Short) {
		got[l.Subject] = l
		booktest.Known(t, "forecast", l.Expected, 64.8, 1e-12)
		if l.Rests.Of != "crop" || l.Note != "rests on 3 batches: past0, past1, past2" || l.TooFewSown || l.Batch.Code != l.Subject {
			t.Errorf("%+v", l)
		}
	}
	booktest.Known(t, "short of", got["short"].Value, .2, 1e-12)
	// 40 days before the planned day; without one as many before sown + 40: the sowing itself.
	for code, day := range map[string]string{"short": "2025-04-05", "today": "2025-04-01", "past it": "2025-03-31", "unplanned": "2025-03-01"} {
		if l := got[code]; l.Date != b.Day(day) || l.ResowPossible != (l.Date >= b.Day("2025-04-01")) || l.TooLate() == l.ResowPossible {
			t.Errorf("%s: %+v, want %s", code, l, day)
		}
	}
	if len(got) != 4 {
		t.Errorf("%d lines", len(got))
	}
}

// A crop with too few batches of its own takes the book's; a book with too few says nothing.
// No more is kept than came up. What was never cleared in writing, came up not at all or is
// counted too early tells nothing.
func TestRateKept(t *testing.T) {
	b := booktest.New(t)
	kept(b, "a", "orache", "x", "AIR", [2]int{80, 40}, [2]int{80, 40})
	open(b, "one", "orache", "x", "AIR", 80)
	b.Count("one", "2025-03-20", 90)
	if lines := reportOf(b, "2025-04-01").Lines(Short); len(lines) != 0 {
		t.Errorf("two batches: %+v", lines)
	}
	kept(b, "none up", "orache", "x", "AIR", [2]int{0, 0})
	assumed := b.Sow("assumed", "2024-01-10", "orache", "x", "AIR", 1)
	assumed.PlantsOut, assumed.Surplus = records.Known(10), records.Known(0)
	b.Count("assumed", "2024-01-30", 80)
	if lines := reportOf(b, "2025-04-01").Lines(Short); len(lines) != 0 {
		t.Errorf("none up, or never cleared: %+v", lines)
	}
	kept(b, "m", "mibuna", "x", "AIR", [2]int{80, 78})
	l := booktest.Find(t, "one", reportOf(b, "2025-04-01").Lines(Short), func(l WeekLine) bool { return l.Subject == "one" })
	booktest.Known(t, "the book's", l.Expected, 90*158.0/240, 1e-12)
	if l.Rests.Of != "book" || len(l.Rests.Batches) != 3 {
		t.Errorf("%+v", l.Rests)
	}
	more := booktest.New(t)
	kept(more, "a", "orache", "x", "AIR", [2]int{80, 90}, [2]int{80, 90}, [2]int{80, 90})
	open(more, "one", "orache", "x", "AIR", 95)
	more.Count("one", "2025-03-20", 90)
	l = booktest.Find(t, "one", reportOf(more, "2025-04-01").Lines(Short), func(l WeekLine) bool { return l.Subject == "one" })
	booktest.Known(t, "all that came up", l.Expected, 90, 0)
}

// A batch without a count, or counted too early, is held against what was sown: 12 batches
// of two crops, orache in AIR at .6 and in WALL at .9.
func TestSownTooFew(t *testing.T) {
	b := booktest.New(t)
	kept(b, "air", "orache", "x", "AIR", [2]int{90, 60}, [2]int{80, 55}, [2]int{80, 65})
	kept(b, "wall", "orache", "x", "WALL", [2]int{95, 90}, [2]int{95, 85}, [2]int{95, 95})
	kept(b, "m", "mibuna", "x", "AIR", [2]int{90, 60}, [2]int{80, 55}, [2]int{80, 65})
	open(b, "sparse", "orache", "x", "AIR", 80).Planned = b.Day("2025-05-15")
	open(b, "enough", "orache", "x", "WALL", 80)
	open(b, "beyond its cells", "orache", "x", "WALL", 101)
	open(b, "early", "orache", "x", "AIR", 95)
	b.Count("early", "2025-03-08", 20)
	open(b, "plugs", "orache", "x", "AIR", 95).Start = records.FromPlug
	r := reportOf(b, "2025-03-10")
	got := map[string]WeekLine{}
	for _, l := range r.Lines(Short) {
		got[l.Subject] = l
		if !l.TooFewSown || l.Rests.Of != "crop, variety, cells and kind" {
			t.Errorf("%+v", l)
		}
	}
	if len(got) != 3 {
		t.Fatalf("%+v", got)
	}
	spread, _ := r.Sowing.Scatter.Of("orache")
	l := got["sparse"]
	booktest.Known(t, "chance", l.Chance, estimate.BetaBinomialAtLeast(80, 100, .6, spread.Rho), 1e-12)
	booktest.Known(t, "short of", l.Value, 80-60, 1e-9)
	booktest.Known(t, "chance beyond its cells", got["beyond its cells"].Chance, 0, 0)
	if l.Date != b.Day("2025-04-05") || l.Note != "sown too few; rests on 3 batches: air0, air1, air2" || got["early"].Subject == "" {
		t.Errorf("%+v", l)
	}
}

// The nearest batches that are enough: of the crop in such cells, else of the crop.
func TestSownTooFewRestsOn(t *testing.T) {
	b := booktest.New(t)
	b.Tray("SMALL", "air-pruning", 50)
	kept(b, "x", "orache", "x", "AIR", [2]int{90, 60}, [2]int{80, 55})
	kept(b, "y", "orache", "y", "WALL", [2]int{95, 50})
	kept(b, "m", "mibuna", "x", "AIR", [2]int{90, 60}, [2]int{80, 55}, [2]int{80, 65}, [2]int{80, 60})
	open(b, "cells", "orache", "x", "AIR", 95)
	small := open(b, "crop", "orache", "x", "SMALL", 49)
	small.Cells = records.Known(50)
	open(b, "none", "celeriac", "x", "AIR", 95)
	lines := reportOf(b, "2025-03-02").Lines(Short)
	got := map[string]string{}
	for _, l := range lines {
		got[l.Subject] = l.Rests.Of
	}
	if fmt.Sprint(got) != "map[cells:crop and cells crop:crop]" {
		t.Errorf("%v", got)
	}
}

// Without any scatter only what cannot be is told: more plants than cells.
func TestSownTooFewWithoutScatter(t *testing.T) {
	b := booktest.New(t)
	kept(b, "x", "orache", "x", "AIR", [2]int{90, 60}, [2]int{80, 55}, [2]int{80, 65})
	open(b, "hardly", "orache", "x", "AIR", 99)
	open(b, "never", "orache", "x", "AIR", 101)
	if lines := reportOf(b, "2025-03-02").Lines(Short); len(lines) != 1 || lines[0].Subject != "never" {
		t.Errorf("%+v", lines)
	}
}

// Ended of late, fewer than wanted, and not sown again.
func TestFellShort(t *testing.T) {
	b := booktest.New(t)
	end := func(code, day string, usable int) *records.Sowing {
		s := open(b, code, "orache", "x", "AIR", 80)
		b.Leave(s, day, usable, 0)
		return s
	}
	end("today", "2025-05-30", 70)
	end("29 days", "2025-05-01", 70)
	end("30 days", "2025-04-30", 70)
	end("enough", "2025-05-20", 80)
	end("again", "2025-05-20", 10)
	end("floor", "2025-05-20", 10).Surplus = records.Maybe[int]{}
	end("unwanted", "2025-05-20", 10).Wanted = records.Maybe[int]{}
	open(b, "new", "orache", "x", "AIR", 80).Replaces = "again"
	lines := reportOf(b, "2025-05-30").Lines(Fell)
	if len(lines) != 2 || lines[0].Subject != "29 days" || lines[1].Subject != "today" || lines[1].Date != b.Day("2025-05-30") {
		t.Fatalf("%+v", lines)
	}
	booktest.Known(t, "short of", lines[0].Value, 10, 0)
}

// Of any book: what is called short is not covered by its forecast, and has a reason.
func TestShortIsNeverCovered(t *testing.T) {
	named := 0
	for seed := range uint64(12) {
		farm := booktest.Farm(t, seed, 2, 60)
		for i := range farm.Sowings {
			s := &farm.Sowings[i]
			s.Wanted = records.Known(10 + int(seed+uint64(i))*37%120)
			if i%3 == 0 {
				s.SetOut, s.PlantsOut, s.Surplus = 0, records.Maybe[int]{}, records.Maybe[int]{}
			}
		}
		for _, today := range []string{"2021-04-01", "2021-06-20"} {
			r := reportOf(farm, today)
			booktest.Finite(t, r.Week, "week")
			for _, l := range r.Lines(Short) {
				named++
				wanted := float64(l.Batch.Wanted.Value)
				if l.Expected.Value >= wanted || !(l.Value.Value > 0) || l.Batch.Ended() || len(l.Rests.Batches) < 3 {
					t.Errorf("%+v of %v", l, wanted)
				}
				booktest.Near(t, "value", l.Value.Value, wanted-l.Expected.Value, 1e-9)
				if l.TooFewSown != l.Chance.Known || l.TooFewSown && l.Chance.Value >= .1 {
					t.Errorf("chance: %+v", l)
				}
			}
		}
	}
	if named < 20 {
		t.Errorf("%d named", named)
	}
}
