package trays

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// `lasts` of either code is turned into uses with the uses a season of the tray: 6 sown
// in 2 HEAVY are 3 a season, though THIN was used but once.
func TestLastsAtTheUsesOfTheTray(t *testing.T) {
	pb := newPairBook(1, 2, 4, 0, 3, 2)
	pb.thin.Uses, pb.thin.Lasts = Num{}, records.Known(2.0)
	pb.heavy.Lasts = records.Known(8.0)
	back := pb.back(t)
	booktest.Known(t, "THIN: 2 seasons of 3 uses", back.OtherLife.Uses, 6, 1e-12)
	booktest.Known(t, "in seasons", back.OtherLife.Seasons, 2, 1e-12)
	booktest.Known(t, "HEAVY: 8 seasons of 3, less than its 30", back.Life.Uses, 24, 1e-12)
	booktest.Known(t, "in seasons", back.Life.Seasons, 8, 1e-12)

	pb.heavy.Count = uncounted // each by its own
	back = pb.back(t)
	booktest.Known(t, "THIN: 2 seasons of 1", back.OtherLife.Uses, 2, 1e-12)
	booktest.Known(t, "HEAVY by uses alone", back.Life.Uses, 30, 0)
}

// No tray lasts less than the one use in which it dies.
func TestALifeIsOneUseAtLeast(t *testing.T) {
	pb := newPairBook(1, 2, 4, 0, 3, 2)
	pb.thin.Uses, pb.heavy.Uses, pb.heavy.Lasts = records.Known(0.25), Num{}, records.Known(0.1)
	back := pb.back(t)
	booktest.Known(t, "THIN", back.OtherLife.Uses, 1, 0)
	booktest.Known(t, "HEAVY", back.Life.Uses, 1, 0)
	booktest.Known(t, "HEAVY, of 3 uses a season", back.Life.Seasons, 1.0/3, 1e-12)
}

// Trays that have stood 3 uses each, 12 sown in 4 bought, do not last but 2: the written
// life is raised, and that is said.
func TestWrittenLifeBelowWhatTheBookShows(t *testing.T) {
	pb := newPairBook(1, 2, 4, 0, 3, 2)
	pb.trays, pb.thin.Count = 2, records.Known(4)
	back := pb.back(t)
	booktest.Known(t, "life in uses", back.OtherLife.Uses, 3, 1e-12)
	booktest.Known(t, "in seasons of 6 uses of HEAVY", back.OtherLife.Seasons, 0.5, 1e-12)
	if !back.OtherRaised || fmt.Sprintf("%+v", back.OtherLife.Shown) != "{Gone:0 Bought:{Value:4 Known:true} Uses:12}" {
		t.Errorf("%v %+v", back.OtherRaised, back.OtherLife.Shown)
	}
	pb.thin.Count = uncounted
	back = pb.back(t)
	booktest.Known(t, "nobody knows of how many", back.OtherLife.Uses, 2, 0)
	if back.OtherRaised || back.OtherLife.Shown.Bought.Known {
		t.Errorf("%v %+v", back.OtherRaised, back.OtherLife.Shown)
	}
}

// The lives of the other over which the number to buy runs, of THIN with a written life
// of 4: 12 uses of those bought and of those gone.
func TestOtherLives(t *testing.T) {
	for _, tt := range []struct {
		bought, gone int
		want         string
	}{
		{6, 0, "[4 2]"},
		{24, 0, "[4 1]"},    // half a use is no life
		{6, 2, "[4 2]"},     // two gone tell nothing
		{6, 3, "[4 2 4]"},   // 12 / 3 is as written
		{100, 4, "[4 1 4]"}, // 12 / 4 is below the written
		{2, 0, "[6 6]"},     // raised
		{2, 3, "[6 6 6]"},   // more gone than bought
	} {
		pb := newPairBook(1, 2, 4, 0, 3, 2)
		pb.trays, pb.thin.Uses, pb.thin.Count = 2, records.Known(4.0), records.Known(tt.bought)
		if got := fmt.Sprint(pb.withGone(t, tt.gone).Decisions[0].Buy.OtherLives); got != tt.want {
			t.Errorf("%d bought, %d gone: %s, want %s", tt.bought, tt.gone, got, tt.want)
		}
	}
	blank := newPairBook(1, 2, 4, 0, 3, 2)
	blank.thin.Count = uncounted
	if got := fmt.Sprint(blank.withGone(t, 3).Decisions[0].Buy.OtherLives); got != "[2]" {
		t.Errorf("nobody knows how many were bought: %s", got)
	}
	long := newPairBook(1, 2, 4, 0, 3, 2)
	long.trays, long.thin.Count = 6, records.Known(40)
	if got := fmt.Sprint(long.withGone(t, 3).Decisions[0].Buy.OtherLives); got != "[2 1 12]" { // 36 uses to 3 gone
		t.Errorf("longer than written: %s", got)
	}
}

// withGone tells the book with so many trays of THIN gone.
func (pb pairBook) withGone(t testing.TB, gone int) told {
	b := pb.book(t)
	row := pb.thin
	row.Bought, row.Count = b.Day("2025-01-01"), records.Known(-gone)
	if gone > 0 {
		b.Trays = append(b.Trays, row)
	}
	return tell(b.Book())
}
