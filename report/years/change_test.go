package years

import (
	"fmt"
	"math"
	"testing"

	"traybook/report/internal/booktest"
	"traybook/report/rate"
)

// Worked by hand. In 2024 200 cells of orache x and 200 of mibuna m came up 80 and 60 in a
// hundred; in 2025 200 of orache x 90, 200 of orache y 70, and 100 of mibuna m 50.
//
//	orache: before .8, after .8. Its x: mean(w) = (1 + 1/2)/2 = .75, same = .75 x .1 = .075, the rest -.075, share .75
//	mibuna: before .6, after .5: same -.1, share 1
//	farm:   before .7, after 370/500 = .74. w of orache 1/2 and 4/5, mean .65; of mibuna 1/2 and 1/5, mean .35
//	        same = .65 x .075 - .35 x .1 = .01375; other kinds = .65 x -.075 = -.04875
//	        other crops = .8 x .3 + .55 x -.3 = .075; together .04
//	        share = .65 x .75 + .35 = .8375
func byHand(t *testing.T) *booktest.Book {
	b := booktest.New(t)
	grown(b, 2024, "orache", "x", "AIR", 2, 80)
	grown(b, 2024, "mibuna", "m", "AIR", 2, 60)
	grown(b, 2025, "orache", "x", "AIR", 2, 90)
	grown(b, 2025, "orache", "y", "AIR", 2, 70)
	grown(b, 2025, "mibuna", "m", "AIR", 1, 50)
	return b
}

func TestChangesByHand(t *testing.T) {
	f := figures(t, byHand(t).Book(), over)
	if len(f.Years) != 3 {
		t.Fatalf("%+v", f.Years)
	}
	for _, want := range []struct {
		crop                                            string
		before, after, same, kinds, crops, share, n, to float64
	}{
		{"", .7, .74, .01375, -.04875, .075, .8375, 400, 500},
		{"mibuna", .6, .5, -.1, 0, 0, 1, 200, 100},
		{"orache", .8, .8, .075, -.075, 0, .75, 200, 400},
	} {
		c := f.row(t, Emergence, want.crop, 2025)
		known(t, want.crop+" before", c.Before.Figure, want.before, 1e-12)
		known(t, want.crop+" after", c.After.Figure, want.after, 1e-12)
		near(t, want.crop+" same", c.Same, want.same, 1e-12)
		near(t, want.crop+" other kinds", c.OtherKinds, want.kinds, 1e-12)
		near(t, want.crop+" other crops", c.OtherCrops.Value, want.crops, 1e-12)
		near(t, want.crop+" share", c.Share, want.share, 1e-12)
		near(t, want.crop+" cells before", c.Before.N, want.n, 0)
		near(t, want.crop+" cells after", c.After.N, want.to, 0)
		c.adds(t)
		if c.Verdict != rate.TooFew || c.Low.Known || c.From != 2024 {
			t.Errorf("%s: %+v", want.crop, c)
		}
	}
	known(t, "like for like", f.row(t, Emergence, "orache", 2025).LikeForLike(), .1, 1e-12)
}

// What drove it, worked out above, the largest first. Orache's part in other crops is
// (.8 - .72) x .3, mibuna's (.55 - .72) x -.3.
func TestDrivers(t *testing.T) {
	f := figures(t, byHand(t).Book(), over)
	want := []Driver{{"mibuna", OtherCrops, .051}, {"orache", LikeSowings, .04875}, {"orache", OtherKinds, -.04875},
		{"mibuna", LikeSowings, -.035}, {"orache", OtherCrops, .024}}
	got, sum := f.Drivers(2025, Emergence), 0.0
	for i, d := range got {
		if i >= len(want) || d.Crop != want[i].Crop || d.Piece != want[i].Piece || math.Abs(d.Value-want[i].Value) > 1e-12 {
			t.Errorf("%d: got %+v, want %+v", i, got, want)
			break
		}
		sum += d.Value
	}
	near(t, "sum", sum, .04, 1e-12)
	if _, ok := f.Farm(2025, Emergence); !ok {
		t.Error("no change of the farm")
	}
	if _, ok := f.Farm(2025, Cost); ok {
		t.Error("a change of a book without money")
	}
	if more := f.Drivers(2024, Emergence); len(got) != len(want) || more != nil || len(f.Crops(2025, Emergence)) != 2 {
		t.Errorf("of the first season: %+v", more)
	}
}

// The parts say which sowings they are and what they did on either side; what a season
// lacks is missing there, not 0.
func TestGroupsOfACrop(t *testing.T) {
	c := figures(t, byHand(t).Book(), over).row(t, Emergence, "orache", 2025)
	y := booktest.Find(t, "y", c.Groups, func(p Part) bool { return p.Variety == "y" })
	missing(t, "y before", y.Before.Figure)
	known(t, "y after", y.After.Figure, .7, 0)
	near(t, "weight of y", y.After.Weight, .5, 0)
	if y.Before.Batches != 0 || y.After.Batches != 1 || y.Kind != "air-pruning" || y.Cells.Value != 100 || y.SeedsPerCell != 1 || y.Same != 0 {
		t.Errorf("%+v", y)
	}
	// (.7 - .8) x .5: less than the crop as a whole did.
	near(t, "other kinds of y", y.OtherKinds, -.05, 1e-12)
}

// Only sowings of one variety, cells, kind and seeds a cell are alike.
func TestLikeSowings(t *testing.T) {
	for what, share := range map[string]float64{"nothing": 1, "variety": 0, "kind": 0, "cells": 0, "seeds": 0} {
		b := booktest.New(t)
		b.Tray("SMALL", "air-pruning", 50)
		grown(b, 2024, "orache", "x", "AIR", 1, 80)
		switch what {
		case "variety":
			grown(b, 2025, "orache", "y", "AIR", 1, 90)
		case "kind":
			grown(b, 2025, "orache", "x", "WALL", 1, 90)
		case "cells":
			grown(b, 2025, "orache", "x", "SMALL", 1, 45).Cells.Value = 0
		case "seeds":
			grown(b, 2025, "orache", "x", "AIR", 1, 90).SeedsPerCell = 2
		default:
			grown(b, 2025, "orache", "x", "AIR", 1, 90)
		}
		c := figures(t, b.Book(), over).row(t, Emergence, "orache", 2025)
		if near(t, "share: other "+what, c.Share, share, 0); share == 0 {
			missing(t, "like for like", c.LikeForLike())
			near(t, "same: other "+what, c.Same, 0, 0)
		}
		near(t, "change: other "+what, c.Change, .1, 1e-12)
		c.adds(t)
	}
}

// A season without a figure is passed over: a crop not grown for a year is compared with
// the last time it was, in a row of its own.
func TestSeasonsWithoutAFigure(t *testing.T) {
	b := booktest.New(t)
	for _, season := range []int{2022, 2023, 2025} {
		grown(b, season, "orache", "x", "AIR", 1, 80)
	}
	grown(b, 2022, "mibuna", "m", "AIR", 1, 60)
	grown(b, 2025, "mibuna", "m", "AIR", 1, 70)
	b.Sow("uncounted", "2024-03-01", "orache", "x", "AIR", 1)
	var got []string
	for _, c := range figures(t, b.Book(), over).Years {
		got = append(got, fmt.Sprint(c.Measure, " ", c.Crop, " ", c.From, "-", c.To))
		c.adds(t)
	}
	want := "[emergence  2022-2023 emergence  2023-2025 emergence mibuna 2022-2025 emergence orache 2022-2023 emergence orache 2023-2025]"
	if fmt.Sprint(got) != want {
		t.Errorf("got %v, want %v", got, want)
	}
}

// One season, no sowing at all, one batch a season, no crop in common: no fault, and
// nothing said of like sowings.
func TestScantSeasons(t *testing.T) {
	b := booktest.New(t)
	if f := figures(t, b.Book(), over); len(f.Years)+len(f.Seasons)+len(f.Heating) != 0 {
		t.Errorf("%+v", f)
	}
	grown(b, 2024, "orache", "x", "AIR", 1, 80)
	if f := figures(t, b.Book(), over); len(f.Years) != 0 || len(f.Seasons) != 1 || f.Seasons[0].Batches != 1 {
		t.Errorf("one season: %+v", f)
	}
	grown(b, 2025, "mibuna", "m", "AIR", 1, 60)
	f := figures(t, b.Book(), over)
	c := f.row(t, Emergence, "", 2025)
	if len(f.Years) != 1 || c.Same != 0 || c.OtherKinds != 0 || c.Share != 0 || c.Verdict != rate.TooFew || c.Low.Known {
		t.Errorf("no crop in common: %+v", f.Years)
	}
	known(t, "other crops", c.OtherCrops, -.2, 1e-12)
	booktest.Finite(t, f, "figures")
}

// Usable plants: measured batches with cells, from seed or not; how many are not is said.
// Cost: ended ones of any kind, less what was potted on; a group that gave no plant has no
// cost a plant and is named.
func TestWhatTheMeasuresRestOn(t *testing.T) {
	b := booktest.New(t)
	for season := 2024; season <= 2025; season++ {
		day := fmt.Sprintf("%d-04-10", season)
		b.Leave(grown(b, season, "orache", "x", "AIR", 1, 90), day, 80, 0)
		s := grown(b, season, "orache", "x", "AIR", 1, 90)
		s.Start = "plug"
		b.Leave(s, day, 60, 0)
		b.Leave(grown(b, season, "orache", "failed", "AIR", 1, 90), day, 0, 0)
		estimated := grown(b, season, "orache", "x", "AIR", 1, 90)
		estimated.SetOut = b.Day(day)
	}
	b.Cost("2024-05-01", "other", 40)
	b.Cost("2025-05-01", "other", 80)
	f := figures(t, b.Book(), over)
	u := f.row(t, Usable, "", 2025)
	if u.Before.Batches != 3 || u.Before.LeftOut != 1 {
		t.Errorf("usable: %+v", u.Before)
	}
	known(t, "usable", u.Before.Figure, 140.0/300, 1e-12)
	c := f.row(t, Cost, "", 2025)
	if c.Before.Batches != 3 || len(c.Before.NoPlant) != 1 || c.Before.NoPlant[0] != b.Sowings[2].Code || c.Verdict != "" || c.Low.Known {
		t.Errorf("cost: %+v", c.Before)
	}
	// Four batches bear 10 each in 2024; three have plants: 80 + 60, and 100 at the group's 140/200.
	known(t, "cost", c.Before.Figure, 30.0/(140+70), 1e-12)
	known(t, "cost after", c.After.Figure, 60.0/(140+70), 1e-12)
	near(t, "same", c.Same, c.Change, 1e-15)
	c.adds(t)
}

// Plants potted on are taken off the usable plants of their first batch: they cost once.
func TestPlantsMovedAreTakenOff(t *testing.T) {
	b := booktest.New(t)
	for season := 2024; season <= 2025; season++ {
		from := grown(b, season, "orache", "x", "AIR", 1, 90)
		b.Leave(from, fmt.Sprintf("%d-04-10", season), 80, 0)
		code := from.Code
		to := b.Sow(fmt.Sprint(season, " potted"), fmt.Sprintf("%d-04-10", season), "orache", "x", "WALL", 1)
		to.From, to.Start, to.Cells.Value, to.Cells.Known = code, "plug", 30, true
		b.Leave(to, fmt.Sprintf("%d-05-01", season), 30, 0)
	}
	b.Cost("2024-05-01", "other", 40)
	b.Cost("2025-05-01", "other", 40)
	c := figures(t, b.Book(), over).row(t, Cost, "", 2025)
	near(t, "plants", c.Before.N, 50+30, 1e-12)
	known(t, "cost", c.Before.Figure, 40.0/80, 1e-12)
}

// What a side leaves out is told of its own season and, of a crop, of the crop alone.
func TestLeftOutOfASide(t *testing.T) {
	b := byHand(t)
	b.Sow("uncounted 24", "2024-03-01", "orache", "x", "AIR", 1)
	b.Sow("uncounted 25", "2025-03-01", "mibuna", "m", "AIR", 1)
	b.Sow("uncounted too", "2025-03-01", "orache", "x", "AIR", 1)
	b.Sow("plugs", "2025-03-01", "orache", "x", "AIR", 1).Start = "plug" // nobody counts those
	f := figures(t, b.Book(), over)
	for crop, want := range map[string][2]int{"": {1, 2}, "orache": {1, 1}, "mibuna": {0, 1}} {
		if c := f.row(t, Emergence, crop, 2025); c.Before.LeftOut != want[0] || c.After.LeftOut != want[1] {
			t.Errorf("%s: %d and %d left out, want %v", crop, c.Before.LeftOut, c.After.LeftOut, want)
		}
	}
}

// Cost is of ended batches with usable plants: an open one bears money and has no plants
// to bear it by.
func TestOpenBatchesHaveNoCost(t *testing.T) {
	b := booktest.New(t)
	for season := 2024; season <= 2025; season++ {
		b.Leave(grown(b, season, "orache", "x", "AIR", 1, 90), fmt.Sprintf("%d-04-10", season), 80, 0)
	}
	s := grown(b, 2025, "orache", "x", "AIR", 1, 90)
	s.Sown = b.Day("2025-12-20") // open on the day looked at, and estimated
	s = grown(b, 2025, "mibuna", "unknown", "AIR", 1, 90)
	s.SetOut = b.Day("2025-05-01")
	b.Cost("2024-05-01", "other", 40)
	b.Cost("2025-05-01", "other", 40)
	f := figures(t, b.Book(), "2026-01-05")
	for _, crop := range []string{"", "orache"} {
		c := f.row(t, Cost, crop, 2025)
		if c.After.Batches != 1 || c.After.N != 80 || c.After.LeftOut != map[string]int{"": 2, "orache": 1}[crop] {
			t.Errorf("%s: %+v", crop, c.After)
		}
	}
}

// Groups without a plant are named of the season and crop that they are of.
func TestNoPlantOfItsOwnCrop(t *testing.T) {
	b := booktest.New(t)
	for season := 2024; season <= 2025; season++ {
		for _, crop := range []string{"orache", "mibuna"} {
			b.Leave(grown(b, season, crop, "x", "AIR", 1, 90), fmt.Sprintf("%d-04-10", season), 80, 0)
		}
	}
	b.Leave(grown(b, 2025, "mibuna", "failed", "AIR", 1, 90), "2025-04-10", 0, 0)
	b.Cost("2024-05-01", "other", 40)
	b.Cost("2025-05-01", "other", 40)
	f := figures(t, b.Book(), over)
	for crop, want := range map[string]int{"": 1, "mibuna": 1, "orache": 0} {
		if c := f.row(t, Cost, crop, 2025); len(c.After.NoPlant) != want || len(c.Before.NoPlant) != 0 {
			t.Errorf("%s: %+v", crop, c)
		}
	}
}
