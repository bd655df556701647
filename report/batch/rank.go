package batch

import (
	"cmp"
	"iter"
	"slices"
	"strings"

	"traybook/records"
)

// Ranks are the places of a batch's keys among those of the book, ascending: of its season;
// of season and crop; of its Group; of that with the seeds in a cell, which makes like
// sowings; of its crop and of its tray code alone. Most tables split batches by one of them,
// and a number is sooner compared than five columns. Sowings makes them, once.
type Ranks struct{ Season, SeasonCrop, Group, Like, Crop, Tray int32 }

// SeasonRank and its like are the ranks of a batch, or of what holds one, as SplitBy asks
// for them.
func (s *Sowing) SeasonRank() int32 { return s.Ranks.Season }

// SeasonCropRank is that of season and crop.
func (s *Sowing) SeasonCropRank() int32 { return s.Ranks.SeasonCrop }

// GroupRank is that of the Group.
func (s *Sowing) GroupRank() int32 { return s.Ranks.Group }

// LikeRank is that of the Group and the seeds in a cell.
func (s *Sowing) LikeRank() int32 { return s.Ranks.Like }

// CropRank is that of the crop alone.
func (s *Sowing) CropRank() int32 { return s.Ranks.Crop }

// TrayRank is that of the tray code alone.
func (s *Sowing) TrayRank() int32 { return s.Ranks.Tray }

// likeKey is what Ranks numbers: a season, and the places of the others among their own.
type likeKey struct {
	season                     int
	crop, variety, body, seeds int32 // body: cells and kind
}

// compare sets keys in the order of groups, then by seeds in a cell.
func (k likeKey) compare(o likeKey) int {
	return cmp.Or(k.compareGroups(o), cmp.Compare(k.seeds, o.seeds))
}

func (k likeKey) compareGroups(o likeKey) int {
	return cmp.Or(cmp.Compare(k.season, o.season), cmp.Compare(k.crop, o.crop), cmp.Compare(k.variety, o.variety), cmp.Compare(k.body, o.body))
}

// Rank gives sowings, which stand by Nth, their ranks.
func Rank(all []*Sowing) {
	crop, _ := RankBy(all, func(s *Sowing) string { return s.Crop }, strings.Compare)
	variety, _ := RankBy(all, func(s *Sowing) string { return s.Variety }, strings.Compare)
	tray, codes := RankBy(all, func(s *Sowing) string { return s.Tray }, strings.Compare)
	body := bodies(all, tray, len(codes))
	like, keys := RankBy(all, func(s *Sowing) likeKey {
		return likeKey{s.Season, crop[s.Nth], variety[s.Nth], body[tray[s.Nth]], int32(s.SeedsPerCell)}
	}, likeKey.compare)
	ranks := ranksOf(keys)
	for i, s := range all {
		s.Ranks = ranks[like[i]]
		s.Ranks.Crop, s.Ranks.Tray = crop[i], tray[i]
	}
}

// ranksOf are the ranks of keys in order, crops and tray codes apart.
func ranksOf(keys []likeKey) []Ranks {
	ranks := make([]Ranks, len(keys))
	for i := 1; i < len(keys); i++ {
		r, k, before := ranks[i-1], keys[i], keys[i-1]
		r.Like++
		if k.compareGroups(before) != 0 {
			r.Group++
		}
		if k.season != before.season || k.crop != before.crop {
			r.SeasonCrop++
		}
		if k.season != before.season {
			r.Season++
		}
		ranks[i] = r
	}
	return ranks
}

// bodies is the place of each tray code's cells and kind among those of all; unknown cells
// come first. tray is the code of each sowing.
func bodies(all []*Sowing, tray []int32, codes int) []int32 {
	type body struct {
		cells records.Maybe[int]
		kind  string
	}
	of := make([]body, codes)
	for i, s := range all {
		of[tray[i]] = body{s.TrayCells, s.Kind}
	}
	place, _ := RankBy(of, func(b body) body { return b }, func(a, b body) int {
		return cmp.Or(cmp.Compare(a.cells.Or(-1), b.cells.Or(-1)), cmp.Compare(a.kind, b.kind))
	})
	return place
}

// RankBy is the place of each of a list among its keys, and the keys, in their order.
func RankBy[T any, K comparable](list []T, key func(T) K, compare func(a, b K) int) (in []int32, keys []K) {
	in, keys = placed(list, key)
	met := make([]int32, len(keys)) // the keys, as they were met, in order
	for i := range met {
		met[i] = int32(i)
	}
	slices.SortFunc(met, func(a, b int32) int { return compare(keys[a], keys[b]) })
	sorted, at := make([]K, len(keys)), make([]int32, len(keys))
	for i, m := range met {
		sorted[i], at[m] = keys[m], int32(i)
	}
	for i, m := range in {
		in[i] = at[m]
	}
	return in, sorted
}

// Split is a list split by a rank. Groups are in the order of ranks, none is empty, and each
// keeps the order of the list.
type Split[T any] struct {
	Groups [][]T
	List   []T     // all of them, one behind another: the list sorted by rank
	met    []int32 // the groups' places as they are met in the list
}

// SplitBy splits a list by a rank, in time of the list and of the ranks between its lowest
// and its highest.
func SplitBy[T any](list []T, rank func(T) int32) Split[T] {
	ranks, many := ranksIn(list, rank)
	return splitIn(list, ranks, many)
}

// SplitByKey is GroupBy where all of one rank have one key: it is asked for once of each
// rank. Groups stand in the order of keys, which is that in which they are met.
func SplitByKey[T any, K comparable](list []T, rank func(T) int32, key func(T) K) (keys []K, groups [][]T) {
	in, many := ranksIn(list, rank)
	at, of := map[K]int32{}, make([]int32, many) // the group of a key, and of a rank, from 1; 0: not met yet
	for i, x := range list {
		group := &of[in[i]]
		if *group == 0 {
			k := key(x)
			if at[k] == 0 {
				keys = append(keys, k)
				at[k] = int32(len(keys))
			}
			*group = at[k]
		}
		in[i] = *group - 1
	}
	return keys, splitIn(list, in, len(keys)).Groups
}

// ranksIn is the rank of each of a list, counted from the lowest, and how many there may be.
func ranksIn[T any](list []T, rank func(T) int32) (ranks []int32, many int) {
	if len(list) == 0 {
		return nil, 0
	}
	ranks = make([]int32, len(list))
	lowest, highest := rank(list[0]), rank(list[0])
	for i, x := range list {
		ranks[i] = rank(x)
		lowest, highest = min(lowest, ranks[i]), max(highest, ranks[i])
	}
	for i := range ranks {
		ranks[i] -= lowest
	}
	return ranks, int(highest-lowest) + 1
}

// splitIn splits a list by the rank of each, below many.
func splitIn[T any](list []T, ranks []int32, many int) Split[T] {
	var met []int32
	sizes := make([]int32, many) // of each rank, then its group's place
	for _, r := range ranks {
		if sizes[r] == 0 {
			met = append(met, r)
		}
		sizes[r]++
	}
	split := Split[T]{make([][]T, 0, len(met)), make([]T, len(list)), met}
	rest := split.List
	for r, n := range sizes {
		if n > 0 {
			sizes[r] = int32(len(split.Groups))
			split.Groups, rest = append(split.Groups, rest[:0:n]), rest[n:]
		}
	}
	for i, r := range met {
		met[i] = sizes[r]
	}
	for i, x := range list {
		of := &split.Groups[sizes[ranks[i]]]
		*of = append(*of, x)
	}
	return split
}

// Met yields the groups as they are met in the list.
func (s Split[T]) Met() iter.Seq[[]T] {
	return func(yield func([]T) bool) {
		for _, g := range s.met {
			if !yield(s.Groups[g]) {
				return
			}
		}
	}
}
