package batch

import (
	"cmp"

	"traybook/records"
)

// Group is the key of most tables. Cells is unknown where the tray code is.
type Group struct {
	Season        int
	Crop, Variety string
	Cells         records.Maybe[int]
	Kind          string
}

// Group returns the group that the batch belongs to.
func (s *Sowing) Group() Group {
	return Group{s.Season, s.Crop, s.Variety, s.TrayCells, s.Kind}
}

// Order sorts groups by their key columns; unknown cells come first.
func Order(a, b Group) int {
	return cmp.Or(cmp.Compare(a.Season, b.Season), cmp.Compare(a.Crop, b.Crop), cmp.Compare(a.Variety, b.Variety),
		cmp.Compare(a.Cells.Or(-1), b.Cells.Or(-1)), cmp.Compare(a.Kind, b.Kind))
}

// GroupBy splits a list by a key; keys come in the order in which they are met.
func GroupBy[T any, K comparable](list []T, key func(T) K) (keys []K, groups map[K][]T) {
	groups = map[K][]T{}
	for _, x := range list {
		k := key(x)
		if groups[k] == nil {
			keys = append(keys, k)
		}
		groups[k] = append(groups[k], x)
	}
	return keys, groups
}

// Filter returns what of a list a thing is true of.
func Filter[T any](list []T, keep func(T) bool) []T {
	var some []T
	for _, x := range list {
		if keep(x) {
			some = append(some, x)
		}
	}
	return some
}
