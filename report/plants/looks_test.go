package plants

import (
	"fmt"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// Looks of a day are added, the latest day stands; a mark is no look (rule "Looks").
func TestLooks(t *testing.T) {
	b := booktest.New(t)
	for i := range 3 {
		code := fmt.Sprint("b", i)
		b.Sow(code, "2025-03-01", "orache", "x", "AIR", 1)
		b.Look(code, "2025-04-13", 10, 7)
		b.Look(code, "2025-04-11", 10, 9)
		b.Look(code, "2025-04-13", 20, 8)
		b.Scores = append(b.Scores, records.Score{Batch: code, Date: b.Day("2025-04-20"), Score: records.Known[int32](4)})
	}
	f := figures(t, b.Book())
	booktest.Known(t, "looked at, the latest day", of(t, f, "b1").PlantsLooked, 30, 0)
	booktest.Known(t, "fit", of(t, f, "b1").PlantsFit, 15, 0)
	if n := len(of(t, f, "b1").Looks); n != 4 {
		t.Errorf("%d rows are shown, want 4", n)
	}
	q := f.Quality[0]
	if len(f.Quality) != 1 || q.Marks != 3 || q.Batches != 3 || q.S[0].Known {
		t.Errorf("quality: %+v", f.Quality)
	}
	booktest.Known(t, "quality", q.Share, 0.5, 1e-15)
}

// Plants at each score: those from usable_from on are fit, a blank score holds none, and
// a row of looked and usable beside them adds its plants to the day.
func TestScores(t *testing.T) {
	b := booktest.New(t)
	b.Settings.UsableFrom = 4
	b.Sow("a", "2025-03-01", "orache", "x", "AIR", 1)
	b.Scores = append(b.Scores, records.Score{Batch: "a", Date: b.Day("2025-04-11"),
		S: [5]records.Maybe[int32]{records.Known[int32](1), {}, records.Known[int32](3), records.Known[int32](4), records.Known[int32](2)}})
	b.Look("a", "2025-04-11", 10, 5).Score = records.Known[int32](3) // a look with a mark beside it
	b.Look("a", "2025-04-01", 10, 10)
	f := figures(t, b.Book())
	if f.Quality[0].Marks != 0 {
		t.Errorf("%d marks where each row is a look", f.Quality[0].Marks)
	}
	booktest.Known(t, "looked at", of(t, f, "a").PlantsLooked, 20, 0)
	booktest.Known(t, "fit: 4 + 2, and 5", of(t, f, "a").PlantsFit, 11, 0)
	for i, want := range []float64{1, 0, 3, 4, 2} {
		booktest.Known(t, fmt.Sprint("score ", i+1), f.Quality[0].S[i], want, 0)
	}
	b.Settings.UsableFrom = 3
	booktest.Known(t, "fit from 3 on", of(t, figures(t, b.Book()), "a").PlantsFit, 14, 0)
}

// Only batches from seed enter quality; a group without a look has no row.
func TestQualityOfSeedBatches(t *testing.T) {
	b := booktest.New(t)
	b.Sow("plug", "2025-03-01", "orache", "x", "AIR", 1).Start = records.FromPlug
	b.Look("plug", "2025-04-11", 10, 5)
	b.Sow("unseen", "2025-03-01", "orache", "x", "WALL", 1)
	b.Scores = append(b.Scores, records.Score{Batch: "unseen", Date: b.Day("2025-04-20"), Score: records.Known[int32](4)})
	f := figures(t, b.Book())
	if len(f.Quality) != 0 {
		t.Errorf("quality: %+v", f.Quality)
	}
	booktest.Known(t, "its look is known all the same", of(t, f, "plug").PlantsFit, 5, 0)
}
