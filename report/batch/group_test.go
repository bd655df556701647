package batch

import (
	"slices"
	"testing"

	"traybook/records"
)

// Groups sort by their columns from left to right, unknown cells first.
func TestOrderOfGroups(t *testing.T) {
	known := records.Known[int]
	want := []Group{
		{2024, "orache", "x", known(72), "solid-wall"},
		{2025, "mibuna", "x", records.Maybe[int]{}, ""},
		{2025, "mibuna", "x", known(0), ""},
		{2025, "mibuna", "x", known(50), "air-pruning"},
		{2025, "mibuna", "x", known(50), "solid-wall"},
		{2025, "mibuna", "y", known(50), "air-pruning"},
		{2025, "orache", "a", known(50), "air-pruning"},
	}
	got := slices.Clone(want)
	slices.Reverse(got)
	if slices.SortFunc(got, Order); !slices.Equal(got, want) {
		t.Errorf("got %v", got)
	}
}

// Keys come in the order in which they are met, and each list keeps its own.
func TestGroupByKeepsTheOrder(t *testing.T) {
	keys, groups := GroupBy([]int{31, 12, 33, 21, 11}, func(x int) int { return x / 10 })
	if !slices.Equal(keys, []int{3, 1, 2}) || !slices.Equal(groups[3], []int{31, 33}) || !slices.Equal(groups[1], []int{12, 11}) {
		t.Errorf("got %v, %v", keys, groups)
	}
	odd := Filter([]int{1, 2, 3}, func(x int) bool { return x%2 > 0 })
	if !slices.Equal(odd, []int{1, 3}) {
		t.Errorf("odd: %v", odd)
	}
}
