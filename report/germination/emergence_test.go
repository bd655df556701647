package germination

import (
	"slices"
	"testing"

	"traybook/records"
	"traybook/report/estimate"
	"traybook/report/internal/booktest"
	"traybook/report/rate"
)

// Rule "Per seed": 3 seeds a cell, 7 of 8 cells up: 1 - (1/8)^(1/3) = 1/2 a seed. Two
// numbers of seeds in a group: none.
func TestSeedsPerCell(t *testing.T) {
	b := booktest.New(t)
	s := b.Sow("three", "2025-03-01", "orache", "x", "AIR", 1)
	s.Cells, s.SeedsPerCell, s.Lot = records.Known(80), 3, "L"
	b.Count("three", "2025-03-20", 70)
	b.Lot("L", "orache", 0.9)
	f := figures(b, "2025-04-10")
	known(t, "per seed", f.Emergence[0].SeedRate, 0.5, 1e-12)
	missing(t, "rate of the lot", f.Lots[0].SeedRate)
	known(t, "seeds sown", f.Lots[0].SeedsSown, 240, 0)
	b.Sow("one", "2025-03-01", "orache", "x", "AIR", 1).Lot = "L"
	b.Count("one", "2025-03-20", 70)
	f = figures(b, "2025-04-10")
	missing(t, "per seed of one and three", f.Emergence[0].SeedRate)
	missing(t, "rate of the lot", f.Lots[0].SeedRate)
}

// scattered is a crop that scatters much and one that scatters little, the wild one in
// two varieties, and the scatter of each, which leans on the book's.
func scattered(t *testing.T) (b *booktest.Book, wild, calm rate.Spread, all estimate.Scatter) {
	b = booktest.New(t)
	alike(b, "p", "orache", "P", 40, 90, 65)
	alike(b, "q", "orache", "Q", 30, 80, 99)
	alike(b, "r", "mibuna", "R", 70, 74, 66, 70)
	count := func(up ...float64) (counts []estimate.Count) {
		for _, x := range up {
			counts = append(counts, estimate.Count{X: x, N: 100})
		}
		return counts
	}
	ofWild := estimate.ScatterOf([][]estimate.Count{count(40, 90, 65), count(30, 80, 99)})
	ofCalm := estimate.ScatterOf([][]estimate.Count{count(70, 74, 66, 70)})
	all = ofWild.Add(ofCalm)
	wild.Rho, wild.DF = ofWild.Leaning(all)
	calm.Rho, calm.DF = ofCalm.Leaning(all)
	if wild.DF != 7 || calm.DF != 6 || all.Rho() == wild.Rho || all.Rho() == calm.Rho {
		t.Fatal("the crops scatter like the book")
	}
	return b, wild, calm, all
}

// Rule "Scatter": a crop of a season, pooled over its groups, rests on the crop's own
// scatter, all crops together on the book's.
func TestCropRestsOnItsScatterAndSeasonOnTheBooks(t *testing.T) {
	b, wild, calm, book := scattered(t)
	b.Lot("L", "orache", 0.9)
	b.Sowings[0].Lot = "L"
	f := figures(b, "2025-04-10")
	if len(f.Crops) != 2 || f.Crops[0].Crop != "mibuna" || f.Crops[1].Crop != "orache" {
		t.Fatalf("crops: %+v", f.Crops)
	}
	for i, want := range []rate.Spread{calm, wild} {
		known(t, f.Crops[i].Crop+" rho", f.Crops[i].Rho, want.Rho, 1e-12)
		known(t, f.Crops[i].Crop+" df", f.Crops[i].DF, want.DF, 0)
	}
	if row := f.Crops[1]; row.Season != 2025 || row.Batches != 6 || row.X != 404 || row.N != 600 || row.Trays != 6 || row.Variety != "" {
		t.Errorf("orache: %+v", row)
	}
	known(t, "rho of a lot", f.Lots[0].Rho, wild.Rho, 1e-12)
	season := f.Seasons[2025]
	known(t, "rho of the season", season.Rho, book.Rho(), 1e-12)
	known(t, "df of the season", season.DF, 7, 0)
	if season.Batches != 10 || season.X != 684 || season.N != 1000 {
		t.Errorf("season: %+v", season)
	}
}

// A group is split by seeds a cell where batches are compared for their scatter, not
// where they are told together.
func TestScatterIsTakenWithinSeedsPerCell(t *testing.T) {
	b := booktest.New(t)
	alike(b, "one", "orache", "x", 60, 80, 70)
	alike(b, "two", "orache", "x", 90, 99, 95)
	for i := range 3 {
		b.Sowings[3+i].SeedsPerCell = 2
	}
	b.Sow("moved", "2025-03-01", "orache", "x", "AIR", 1).From = "onea" // is in no figure
	b.Count("moved", "2025-03-20", 3)
	f := figures(b, "2025-04-20")
	if len(f.Emergence) != 1 || f.Emergence[0].Batches != 6 {
		t.Fatalf("emergence: %+v", f.Emergence)
	}
	known(t, "df", f.Emergence[0].DF, 4+3, 0)
}

// Every season with a sowing has a rate, be it none; crops of several seasons stand by
// season, then crop.
func TestSeasonsAndCropsOfAll(t *testing.T) {
	b := booktest.New(t)
	alike(b, "b", "orache", "x", 60)
	b.Sow("a", "2024-03-01", "orache", "x", "AIR", 2)
	b.Count("a", "2024-03-20", 150)
	b.Sow("c", "2023-03-01", "orache", "x", "AIR", 2)
	b.Sow("d", "2024-03-01", "agretti", "x", "AIR", 0.5)
	b.Count("d", "2024-03-20", 20)
	f := figures(b, "2025-06-01")
	missing(t, "2023", f.Seasons[2023].Share)
	known(t, "2024", f.Seasons[2024].Share, 170.0/250, 1e-15)
	known(t, "2025", f.Seasons[2025].Share, 0.6, 1e-15)
	var got []string
	for _, c := range f.Crops {
		got = append(got, c.Crop+" "+string(rune('0'+c.Season-2020)))
	}
	if len(f.Seasons) != 3 || len(got) != 3 || got[0] != "agretti 4" || got[1] != "orache 4" || got[2] != "orache 5" {
		t.Errorf("seasons %v, crops %v", f.Seasons, got)
	}
}

// Rule "Named crops": only of 3 batches or more, one seed a cell, and with its whole
// interval on one side of the season's rate over all crops is a crop named; the one
// furthest off first.
func TestNamedCrops(t *testing.T) {
	b := booktest.New(t)
	alike(b, "a", "agretti", "x", 30, 31, 29, 30, 30, 31)
	alike(b, "b", "beans", "x", 45, 44, 46, 45, 45, 44)
	alike(b, "m", "mibuna", "x", 95, 96, 94, 95, 95, 96)
	alike(b, "n", "nettle", "x", 98, 99, 98, 97, 98, 99)
	alike(b, "o", "orache", "x", 60, 59, 61, 60, 60, 59) // like all
	alike(b, "few", "purslane", "x", 10, 11)
	alike(b, "balls", "quinoa", "x", 10, 11, 10, 11)
	b.Sowings[len(b.Sowings)-1].SeedsPerCell = 2
	alike(b, "wide", "rampion", "x", 30, 99, 60, 20)
	f := figures(b, "2025-04-20")
	worst, best := f.NamedCrops(2025)
	names := func(rows []Emergence) (all []string) {
		for _, e := range rows {
			all = append(all, e.Crop)
		}
		return all
	}
	if got := names(worst); !slices.Equal(got, []string{"agretti", "beans"}) {
		t.Errorf("worst: %v", got)
	}
	if got := names(best); !slices.Equal(got, []string{"nettle", "mibuna"}) {
		t.Errorf("best: %v", got)
	}
	if worst, best := f.NamedCrops(2024); worst != nil || best != nil {
		t.Errorf("of a season without sowings: %v, %v", worst, best)
	}
}

// A season of one crop, or of crops alike, names none; nor does a book of too few batches
// for an interval.
func TestNoCropStoodApart(t *testing.T) {
	b := booktest.New(t)
	alike(b, "a", "agretti", "x", 10, 11, 10)
	if worst, best := figures(b, "2025-04-20").NamedCrops(2025); worst != nil || best != nil {
		t.Errorf("without an interval: %v, %v", worst, best)
	}
	alike(b, "b", "agretti", "x", 90, 91, 90)
	if worst, best := figures(b, "2025-04-20").NamedCrops(2025); worst != nil || best != nil {
		t.Errorf("of one crop: %v, %v", worst, best)
	}
}
