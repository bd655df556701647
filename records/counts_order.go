package records

import (
	"cmp"
	"slices"
)

// byBatch lists the counts by batch, in the order in which those were first named, then
// as compare has them, then by row. Those of a batch are few, and mostly in order.
func (l *loader) byBatch(compare func(a, b *Count) int) []int32 {
	next := make([]int32, l.refs()+1) // of each batch
	for e := range alive(l.counts) {
		next[e.is.Batch+1]++
	}
	for r := range l.refs() {
		next[r+1] += next[r]
	}
	all := make([]int32, next[l.refs()], len(l.counts.is))
	for e := range alive(l.counts) {
		all[next[e.is.Batch]] = e.nth
		next[e.is.Batch]++
	}
	from := int32(0)
	for _, to := range next[:l.refs()] {
		slices.SortFunc(all[from:to], func(x, y int32) int {
			return cmp.Or(compare(&l.counts.is[x], &l.counts.is[y]), cmp.Compare(x, y))
		})
		from = to
	}
	return all
}

// keptCounts lists the counts that are not left out by batch, day and tray. They are put
// in order where they stand: a million of them is much to hold twice.
func (l *loader) keptCounts() []Count {
	order := l.byBatch(func(a, b *Count) int {
		return cmp.Or(cmp.Compare(a.Date, b.Date), cmp.Compare(a.Tray.Value, b.Tray.Value))
	})
	n := len(order)
	if n == 0 {
		return nil
	}
	for i, found := range l.counts.flags {
		if found&out > 0 {
			order = append(order, int32(i))
		}
	}
	reorder(l.counts.is, order)
	return l.counts.is[:n:n]
}

// reorder puts the element of each place that order names into the place where it is named.
// It goes round after round, each place taking what stands where its own comes from, and
// leaves order sorted.
func reorder[T any](is []T, order []int32) {
	for begin := range order {
		first, to := is[begin], int32(begin)
		for order[to] != to {
			from := order[to]
			order[to] = to
			if from == int32(begin) {
				is[to] = first
				break
			}
			is[to], to = is[from], from
		}
	}
}
