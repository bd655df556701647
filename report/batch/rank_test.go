package batch

import (
	"cmp"
	"slices"
	"testing"

	"traybook/records"
	"traybook/report/internal/booktest"
)

// Groups stand in the order of ranks, each in that of the list, and are met in the list's;
// one may be added to without a change to the next.
func TestSplitBy(t *testing.T) {
	split := SplitBy([]int{31, 12, 33, -21, 11}, func(x int) int32 { return int32(x / 10) })
	want := [][]int{{-21}, {12, 11}, {31, 33}}
	if !slices.EqualFunc(split.Groups, want, slices.Equal) || !slices.Equal(split.List, slices.Concat(want...)) {
		t.Errorf("got %v, %v", split.Groups, split.List)
	}
	if met := slices.Collect(split.Met()); !slices.EqualFunc(met, [][]int{{31, 33}, {12, 11}, {-21}}, slices.Equal) {
		t.Errorf("met %v", met)
	}
	if grown := append(split.Groups[1], 99); len(grown) != 3 || split.Groups[2][0] != 31 {
		t.Errorf("got %v, %v", grown, split.Groups)
	}
	if none := SplitBy(nil, func(x int) int32 { return int32(x) }); len(none.Groups) != 0 || len(slices.Collect(none.Met())) != 0 {
		t.Errorf("of nothing: %v", none)
	}
}

// SplitByKey splits as GroupBy does, and asks once of each rank.
func TestSplitByKey(t *testing.T) {
	asked := 0
	key := func(x int) string { asked++; return string(rune('a' + x/20)) }
	list := []int{31, 12, 33, 25, 11, 17, 34}
	keys, groups := SplitByKey(list, func(x int) int32 { return int32(x / 10) }, key)
	if asked != 3 {
		t.Errorf("asked %d times of three ranks", asked)
	}
	wantKeys, want := GroupBy(list, key)
	if !slices.Equal(keys, wantKeys) {
		t.Fatalf("got %v, want %v", keys, wantKeys)
	}
	for i, k := range keys {
		if !slices.Equal(groups[i], want[k]) {
			t.Errorf("%s: got %v, want %v", k, groups[i], want[k])
		}
	}
	if keys, groups := SplitByKey(nil, func(x int) int32 { return int32(x) }, key); len(keys)+len(groups) != 0 {
		t.Errorf("of nothing: %v, %v", keys, groups)
	}
}

// Batches have one rank where, and only where, they have one key, and ranks stand in the
// order of keys. Two codes of the same cells and kind make no two groups.
func TestRanks(t *testing.T) {
	b := booktest.Farm(t, 3, 3, 60)
	b.Trays = append(b.Trays, records.Purchase{Tray: "TWIN", Kind: b.Trays[0].Kind, Cells: b.Trays[0].Cells})
	for i := range b.Sowings {
		s := &b.Sowings[i]
		s.SeedsPerCell = 1 + i%2
		switch i % 7 {
		case 0:
			s.Tray = "TWIN"
		case 1:
			s.Tray = "no such code"
		}
	}
	sown := Sowings(b.Book())
	for i := range sown {
		for j := range sown {
			x, y := &sown[i], &sown[j]
			seasons, crops := cmp.Compare(x.Season, y.Season), cmp.Compare(x.Crop, y.Crop)
			groups := Order(x.Group(), y.Group())
			for what, of := range map[string][2]int{
				"season":      {cmp.Compare(x.SeasonRank(), y.SeasonRank()), seasons},
				"season crop": {cmp.Compare(x.SeasonCropRank(), y.SeasonCropRank()), cmp.Or(seasons, crops)},
				"group":       {cmp.Compare(x.GroupRank(), y.GroupRank()), groups},
				"like":        {cmp.Compare(x.LikeRank(), y.LikeRank()), cmp.Or(groups, cmp.Compare(x.SeedsPerCell, y.SeedsPerCell))},
				"crop":        {cmp.Compare(x.CropRank(), y.CropRank()), crops},
				"tray":        {cmp.Compare(x.TrayRank(), y.TrayRank()), cmp.Compare(x.Tray, y.Tray)},
			} {
				if of[0] != of[1] {
					t.Fatalf("%s of %s and %s: ranks %d, keys %d", what, x.Code, y.Code, of[0], of[1])
				}
			}
		}
	}
}
