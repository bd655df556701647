package batch

import (
	"reflect"
	"slices"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// seasonsBook has sowings in the seasons 2023, 2025 and 2026, which begin in October:
// 2026 has an open batch.
func seasonsBook(t *testing.T) *booktest.Book {
	b := booktest.New(t)
	b.Settings.SeasonStarts = 10
	b.Leave(b.Sow("a", "2022-10-01", "orache", "x", "AIR", 1), "2022-12-01", 60, 0)
	b.Leave(b.Sow("b", "2025-09-30", "orache", "x", "AIR", 1), "2025-11-20", 60, 0)
	b.Sow("c", "2026-08-30", "orache", "x", "AIR", 1)
	return b
}

// Rule "Seasons": a season carries the year in which it ends and is finished after
// its last day; one without a sowing is none.
func TestSeasons(t *testing.T) {
	all := settled(seasonsBook(t), "2026-09-05", nil)
	if !slices.Equal(all.Seasons, []int{2023, 2025, 2026}) {
		t.Fatalf("seasons %v", all.Seasons)
	}
	for season, want := range map[int]bool{2023: true, 2025: true, 2026: false} {
		if all.Finished(season) != want {
			t.Errorf("%d finished: %v", season, !want)
		}
	}
	if got := all.FinishedSeasons(1); !slices.Equal(got, []int{2025}) {
		t.Errorf("the last one: %v", got)
	}
	if got := all.FinishedSeasons(3); !slices.Equal(got, []int{2023, 2025}) {
		t.Errorf("finished: %v", got)
	}
	if got := slices.Collect(all.Through()); !slices.Equal(got, []int{2023, 2024, 2025, 2026}) {
		t.Errorf("through: %v", got)
	}
}

// In its last 90 days, the last of them included, a season is finished where none of its
// own batches is open: of 2026, which ends on 30 September, from 3 July. Before that an
// empty house may only be a pause.
func TestASeasonsLast90Days(t *testing.T) {
	b := booktest.New(t)
	b.Settings.SeasonStarts = 10
	b.Leave(b.Sow("a", "2026-04-01", "orache", "x", "AIR", 1), "2026-05-20", 60, 0)
	for today, want := range map[string]bool{"2026-05-21": false, "2026-07-02": false, "2026-07-03": true, "2026-09-30": true, "2026-10-01": true} {
		if settled(b, today, nil).Finished(2026) != want {
			t.Errorf("%s: finished %v", today, !want)
		}
	}
	b.Sow("b", "2026-08-30", "orache", "x", "AIR", 1)
	for today, want := range map[string]bool{"2026-09-30": false, "2026-10-01": true} {
		if settled(b, today, nil).Finished(2026) != want {
			t.Errorf("with an open batch, %s: finished %v", today, !want)
		}
	}
	if all := settled(seasonsBook(t), "2025-10-20", nil); all.Of("b").EndHow != Written || !all.Finished(2025) {
		t.Error("a batch of another season keeps a season open")
	}
}

// Where no season is finished the season at hand stands in: today's, where anything was
// sown in it, else the last one sown.
func TestTheSeasonAtHand(t *testing.T) {
	b := booktest.New(t)
	b.Settings.SeasonStarts = 10
	b.Sow("a", "2025-09-20", "orache", "x", "AIR", 1)
	b.Sow("b", "2026-09-20", "orache", "x", "AIR", 1)
	for today, want := range map[string]int{"2025-09-30": 2025, "2024-09-30": 2026} {
		all := settled(b, today, nil)
		if season, ok := all.AtHand(); season != want || !ok || !slices.Equal(all.FinishedSeasons(3), []int{want}) {
			t.Errorf("%s: %d at hand, %v finished; want %d", today, season, all.FinishedSeasons(3), want)
		}
	}
	if got := settled(b, "2025-10-01", nil).FinishedSeasons(3); !slices.Equal(got, []int{2025}) {
		t.Errorf("not finished after its last day: %v", got)
	}
}

// A book with nothing in it has no season and no fault.
func TestNothingSown(t *testing.T) {
	all := New(&records.Book{}, nil, nil, 0)
	if _, ok := all.AtHand(); ok {
		t.Error("a season at hand of nothing sown")
	}
	if len(all.List)+len(all.Seasons)+len(all.FinishedSeasons(3))+len(slices.Collect(all.Through())) > 0 || all.Of("a") != nil {
		t.Errorf("got %+v", all)
	}
	if LastDate(&records.Book{}).Known() {
		t.Error("a last date of nothing")
	}
}

// Whoever walks through the seasons may stop.
func TestThroughMayBeLeft(t *testing.T) {
	met := []int{}
	for season := range settled(seasonsBook(t), "2026-09-05", nil).Through() {
		if met = append(met, season); season == 2024 {
			break
		}
	}
	if !slices.Equal(met, []int{2023, 2024}) {
		t.Errorf("met %v", met)
	}
}

// Rule "Today": the latest date that tells of a batch, whichever log it stands in;
// a plan, a bill or a reading tells of none.
func TestToday(t *testing.T) {
	early, late := "2025-03-01", "2025-06-30"
	for name, add := range map[string]func(*booktest.Book){
		"sown":        func(b *booktest.Book) { b.Sow("b", late, "orache", "x", "AIR", 1) },
		"chamber_out": func(b *booktest.Book) { b.Sowings[0].ChamberOut = b.Day(late) },
		"set_out":     func(b *booktest.Book) { b.Sowings[0].SetOut = b.Day(late) },
		"out":         func(b *booktest.Book) { b.Out("a", late, 5, records.Sold, false) },
		"count":       func(b *booktest.Book) { b.Count("a", late, 5) },
		"score":       func(b *booktest.Book) { b.Look("a", late, 5, 5) },
		"":            func(b *booktest.Book) { b.Sowings[0].Planned = b.Day(late) },
		"no bill":     func(b *booktest.Book) { b.Cost(late, records.Water, 3) },
		"no reading":  func(b *booktest.Book) { b.Reading("box", late, 20) },
	} {
		b := booktest.New(t)
		b.Sow("a", early, "orache", "x", "AIR", 1)
		add(b)
		want := b.Day(late)
		if slices.Contains([]string{"", "no bill", "no reading"}, name) {
			want = b.Day(early)
		}
		if got := LastDate(b.Book()); got != want {
			t.Errorf("%s: %v, want %v", name, got, want)
		}
	}
}

// Rule "Chamber stays": trays stood in a chamber until chamber_out where that is
// written. "If" the farm grew and switched codes, trays are more and in the other.
func TestStandings(t *testing.T) {
	b := booktest.New(t)
	b.Sow("a", "2025-03-01", "orache", "x", "AIR", 3).ChamberOut = b.Day("2025-03-04")
	b.Sow("b", "2025-03-02", "mibuna", "x", "WALL", 1)
	all := settled(b, "2025-03-20", nil)
	out := b.Day("2025-03-04")
	want := []Standing{
		{2025, "AIR", "orache", 3, b.Day("2025-03-01"), out, b.Day("2025-03-20")},
		{2025, "WALL", "mibuna", 1, b.Day("2025-03-02"), 0, b.Day("2025-03-20")},
	}
	if got := all.Standings(1, nil); !reflect.DeepEqual(got, want) {
		t.Errorf("got %+v", got)
	}
	want[0].Trays, want[0].Code, want[1].Trays = 4.5, "WALL", 1.5
	if got := all.Standings(1.5, []Switch{{"AIR", "WALL"}}); !reflect.DeepEqual(got, want) {
		t.Errorf("grown and switched: %+v", got)
	}
}

// The order of the rows of sowings.csv and trays.csv changes nothing (rule "Ties").
func TestOrderOfRows(t *testing.T) {
	plain, mixed := booktest.Farm(t, 3, 3, 60), booktest.Farm(t, 3, 3, 60)
	mixed.Shuffle(9)
	want, got := settled(plain, "2022-10-01", nil), settled(mixed, "2022-10-01", nil)
	if !reflect.DeepEqual(got, want) {
		t.Error("another order of rows gives other batches")
	}
}
