package batch

import (
	"cmp"
	"slices"

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

// GroupBy splits a list by a key; keys come in the order in which they are met. The
// groups stand one behind another in one list of their own.
func GroupBy[T any, K comparable](list []T, key func(T) K) (keys []K, groups map[K][]T) {
	in, keys := placed(list, key)
	sizes := make([]int, len(keys))
	for _, g := range in {
		sizes[g]++
	}
	split := cut(make([]T, len(list)), sizes)
	for i, x := range list {
		split[in[i]] = append(split[in[i]], x)
	}
	groups = make(map[K][]T, len(keys))
	for g, k := range keys {
		groups[k] = split[g]
	}
	return keys, groups
}

// placed is the group of each of a list, by its place among the keys. What stands beside
// each other is often of one key.
func placed[T any, K comparable](list []T, key func(T) K) (in []int32, keys []K) {
	in, at := make([]int32, len(list)), map[K]int32{}
	for i, x := range list {
		k := key(x)
		if i > 0 && k == keys[in[i-1]] {
			in[i] = in[i-1]
			continue
		}
		g, met := at[k]
		if !met {
			g = int32(len(keys))
			at[k], keys = g, append(keys, k)
		}
		in[i] = g
	}
	return in, keys
}

// cut cuts a list into empty parts with room for so many each.
func cut[T any](list []T, sizes []int) [][]T {
	parts, from := make([][]T, len(sizes)), 0
	for i, n := range sizes {
		parts[i] = list[from : from : from+n]
		from += n
	}
	return parts
}

// Filter returns what of a list a thing is true of. The result doubles as it grows, up to
// the room that the rest of the list could take: of a long list much or little is kept.
func Filter[T any](list []T, keep func(T) bool) []T {
	var some []T
	for i, x := range list {
		if !keep(x) {
			continue
		}
		if len(some) == cap(some) {
			some = slices.Grow(some, min(max(len(some), leastGrown), len(list)-i))
		}
		some = append(some, x)
	}
	return some
}

// leastGrown is for how many of a list room is first made.
const leastGrown = 8
