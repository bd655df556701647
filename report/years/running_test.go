package years

import (
	"fmt"
	"slices"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// Two seasons sown in March and in June; today is 1 May of the second, in which a batch
// stands open. Set beside it are the March sowings alone, and of these not the one counted
// again in July.
func halfway(t *testing.T) *booktest.Book {
	b := booktest.New(t)
	sow := func(code, sown, counted string, up int) *records.Sowing {
		b.Count(code, counted, up)
		return b.Sow(code, sown, "orache", "x", "AIR", 1)
	}
	b.Leave(sow("24 march", "2024-03-01", "2024-03-20", 60), "2024-04-20", 50, 0)
	b.Leave(sow("24 recounted", "2024-03-01", "2024-03-20", 15), "2024-07-02", 5, 0)
	b.Count("24 recounted", "2024-07-01", 20)
	b.Leave(sow("24 june", "2024-06-01", "2024-06-20", 90), "2024-07-20", 90, 0)
	b.Leave(sow("25 march", "2025-03-01", "2025-03-20", 70), "2025-04-20", 65, 0)
	sow("25 open", "2025-04-01", "2025-04-20", 74)
	b.Cost("2024-05-01", "other", 40)
	b.Cost("2025-04-01", "other", 40)
	return b
}

func TestRunningSeason(t *testing.T) {
	f := figures(t, halfway(t).Book(), "2025-05-01")
	for _, crop := range []string{"", "orache"} {
		c := f.row(t, Emergence, crop, 2025)
		known(t, "before", c.Before.Figure, .6, 1e-12)
		known(t, "after", c.After.Figure, .72, 1e-12)
		if got := fmt.Sprint(c.Before.Later, c.After.Later); got != "[24 june 24 recounted] []" || c.Before.Batches != 1 || c.After.Batches != 2 {
			t.Errorf("left out: %s of %+v", got, c)
		}
		if c.FromDay != booktest.Day(t, "2024-05-01") || c.ToDay != booktest.Day(t, "2025-05-01") {
			t.Errorf("up to %v and %v", c.FromDay, c.ToDay)
		}
		u := f.row(t, Usable, crop, 2025)
		known(t, "usable before", u.Before.Figure, .5, 1e-12)
		known(t, "usable after", u.After.Figure, .65, 1e-12)
		c.adds(t)
	}
	if slices.ContainsFunc(f.Years, func(c Change) bool { return c.Measure == Cost }) {
		t.Error("cost was compared while its bills are half paid")
	}
}

// Once the season is over, its comparison is whole and has no day; cost has one too.
func TestFinishedSeasonIsWhole(t *testing.T) {
	f := figures(t, halfway(t).Book(), "2026-01-15")
	c := f.row(t, Emergence, "", 2025)
	known(t, "before", c.Before.Figure, 170.0/300, 1e-12)
	if c.FromDay.Known() || c.Before.Later != nil {
		t.Errorf("%+v", c)
	}
	f.row(t, Cost, "", 2025)
}

// The seasons are chosen first: where nothing of one stood by the day there is no row, nor
// one against a season before it.
func TestNothingStoodByTheDay(t *testing.T) {
	b := halfway(t)
	b.Leave(b.Sow("23", "2023-03-01", "orache", "x", "AIR", 1), "2023-04-10", 50, 0)
	b.Count("23", "2023-03-20", 60)
	for _, c := range figures(t, b.Book(), "2025-03-19").Years {
		if c.To == 2025 {
			t.Errorf("%s %s: %d to %d", c.Measure, c.Crop, c.From, c.To)
		}
	}
}

// A side alone without a figure is enough for no row; a count of the very day stands.
func TestOneSideStoodByTheDay(t *testing.T) {
	b := booktest.New(t)
	for code, days := range map[string][2]string{"24": {"2024-03-01", "2024-03-18"}, "25": {"2025-03-01", "2025-03-20"}} {
		b.Sow(code, days[0], "orache", "x", "AIR", 1)
		b.Count(code, days[1], 60)
	}
	for today, rows := range map[string]int{"2025-03-19": 0, "2025-03-20": 2} {
		if got := figures(t, b.Book(), today).Years; len(got) != rows {
			t.Errorf("%s: %+v", today, got)
		}
	}
}

// The book read as of a day before its last season: no season is today's and the last.
func TestTodayBeforeTheLastSeason(t *testing.T) {
	f := figures(t, halfway(t).Book(), "2024-06-01")
	if c := f.row(t, Emergence, "", 2025); c.ToDay.Known() || c.Before.Batches != 3 {
		t.Errorf("%+v", c)
	}
}

// Earlier seasons stay whole while the last one runs.
func TestEarlierSeasonsStayWhole(t *testing.T) {
	b := halfway(t)
	b.Leave(b.Sow("23", "2023-06-01", "orache", "x", "AIR", 1), "2023-07-10", 50, 0)
	b.Count("23", "2023-06-20", 60)
	c := figures(t, b.Book(), "2025-05-01").row(t, Emergence, "", 2024)
	known(t, "after", c.After.Figure, 170.0/300, 1e-12)
	if c.ToDay.Known() || c.After.Later != nil {
		t.Errorf("%+v", c)
	}
}

// A season that begins in October: the day and month of today lie in its own seasons.
func TestRunningSeasonOverTheNewYear(t *testing.T) {
	b := booktest.New(t)
	b.Settings.SeasonStarts = 10
	for code, day := range map[string]string{"24 nov": "2023-11-01", "24 dec": "2023-12-10", "24 feb": "2024-02-01", "25 nov": "2024-11-01"} {
		b.Sow(code, day, "orache", "x", "AIR", 1)
		b.Count(code, (b.Day(day) + 19).String(), 80)
	}
	c := figures(t, b.Book(), "2024-12-15").row(t, Emergence, "", 2025)
	if got := fmt.Sprint(c.Before.Later); got != "[24 dec 24 feb]" || c.FromDay != booktest.Day(t, "2023-12-15") {
		t.Errorf("left out %s, up to %v", got, c.FromDay)
	}
}
