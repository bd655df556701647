package chart

import (
	"strings"
	"testing"

	"traybook/report/plants"
	"traybook/report/words"
)

// A description rounds as its table does: 825 of 1000 are 83 %.
func TestLeewayByKind(t *testing.T) {
	b := newBook(t)
	b.late(4, "kale", "AIR", map[int]int{0: 95, 8: 90})
	b.late(4, "leek", "WALL", map[int]int{9: 60})
	b.late(1, "leek", "WALL", map[int]int{20: 50}) // one batch is too few for a share
	b.late(2, "leek", "WALL", map[int]int{4: 82})
	b.late(2, "leek", "WALL", map[int]int{4: 83})
	s := only(t, leeway(b.report()))
	same(t, "legend", legend(s), "air-pruning", "solid-wall")
	bands := s.Option["xAxis"].(map[string]any)["data"].([]string)
	if got := strings.ReplaceAll(bands[3], "\n", " "); got != "8 to 14 days late: 4, 4 batches" {
		t.Errorf("band %q", got)
	}
	if level := items(t, s, "still fit: 80 %"); level[0][0] != 80.0 {
		t.Errorf("line at %v", level)
	}
	ends(t, s, ". air-pruning, up to the planned day: 95 %; air-pruning, 8 to 14 days late: 90 %; "+
		"solid-wall, 4 to 7 days late: 83 %; solid-wall, 8 to 14 days late: 60 %.")
}

// Every band of days late has its words.
func TestBandsAreNamed(t *testing.T) {
	for _, first := range plants.LeewayBands {
		if words.DaysLate(first) == "" {
			t.Errorf("the band from day %d has no name", first)
		}
	}
}
