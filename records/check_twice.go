package records

import (
	"slices"
	"strings"
)

// fewestTwice is how many rows on end must stand above already until it is told, where a
// row may well be like another: two people each work two hours, two trays have as many
// seedlings, a chamber is as warm in the evening. Three such rows are a block pasted
// again.
const fewestTwice = 3

// checkTwice warns of rows that stand twice in a log, cell for cell, a block of them
// once. A double batch or lot is an error of its own and left out.
func (l *loader) checkTwice() {
	for _, log := range l.logs {
		if log.Name == "book.csv" {
			continue
		}
		for _, b := range repeated(log) {
			single := slices.ContainsFunc(b.rows, func(r row) bool { return !l.mayBeAlike(r) })
			if single || len(b.rows) >= fewestTwice {
				b.report()
			}
		}
	}
}

// mayBeAlike reports whether a row may well be like another.
func (l *loader) mayBeAlike(r row) bool {
	switch r.log {
	case l.counts.log:
		return true
	case l.costs.log:
		return l.costs.is[r.nth].Category == Labour
	case l.chamber.log:
		return !l.chamber.is[r.nth].Minute.Known
	}
	return false
}

// block is rows on end that stand above already: in of, as far as that is one stretch.
type block struct {
	rows []row
	of   []row
}

// repeated finds the blocks of rows that stand above already. Few rows do in any book, so
// that first their sums are looked at: of nearly all of them none is there twice.
func repeated(l *log) []block {
	if l.sums == nil {
		return nil
	}
	above := l.sumsTwice()
	rows := l.alive()
	var all []block
	var last block
	end := func() {
		if len(last.rows) > 0 {
			all = append(all, last)
		}
		last = block{}
	}
	for i := 0; i < len(rows); {
		from, n := longestAbove(rows, above[rows[i].sum()], i)
		if n = sameRows(rows[from:], rows[i:i+n]); n == 0 {
			end()
			n = 1
		} else {
			last.rows = append(last.rows, rows[i:i+n]...)
			last.of = append(last.of, rows[from:from+n]...)
		}
		for ; n > 0; n-- {
			if places, twice := above[rows[i].sum()]; twice {
				above[rows[i].sum()] = append(places, i)
			}
			i++
		}
	}
	end()
	return all
}

// alive lists the rows that are not left out.
func (l *log) alive() []row {
	all := make([]row, 0, len(l.flags))
	for i := range l.flags {
		if r := (row{l, int32(i)}); !r.isOut() {
			all = append(all, r)
		}
	}
	return all
}

// sumsTwice lists the sums that several rows have which are not left out, with no place
// of such a row yet.
func (l *log) sumsTwice() map[uint64][]int {
	sums := make([]uint64, 0, len(l.sums))
	for i, sum := range l.sums {
		if l.flags[i]&out == 0 {
			sums = append(sums, sum)
		}
	}
	slices.Sort(sums)
	twice := map[uint64][]int{}
	for i := 1; i < len(sums); i++ {
		if sums[i] == sums[i-1] {
			twice[sums[i]] = nil
		}
	}
	return twice
}

// longestAbove finds, among the places above of a row, where most rows on end are as
// from that row on. Of many places the first are tried.
func longestAbove(rows []row, places []int, i int) (from, n int) {
	for _, at := range places[:min(len(places), 20)] {
		k := 0
		for i+k < len(rows) && rows[at+k].sum() == rows[i+k].sum() {
			k++
		}
		if k > n {
			from, n = at, k
		}
	}
	return from, n
}

// sameRows counts the rows of the second that are, cell for cell, as those of the first:
// sums that are equal nearly always say so, and this makes sure.
func sameRows(above, rows []row) int {
	for i, r := range rows {
		if !slices.Equal(bare(above[i].found().fields), bare(r.found().fields)) {
			return i
		}
	}
	return len(rows)
}

// sum is the row's sum.
func (r row) sum() uint64 { return r.sums[r.nth] }

// bare is the cells of a row without space around them, nor blank ones at its end.
func bare(fields []string) []string {
	all := make([]string, len(fields))
	n := 0
	for i, f := range fields {
		if all[i] = strings.TrimSpace(f); all[i] != "" {
			n = i + 1
		}
	}
	return all[:n]
}

// checksum is one number for all that stands in a row: rows that are alike have the same.
// It is FNV-1a of 64 bits (IETF draft-eastlake-fnv), over the cells as bare tells them.
func checksum(fields []string) uint64 {
	const prime = 1099511628211
	sum, blank := uint64(14695981039346656037), 0
	for _, f := range fields {
		f = strings.TrimSpace(f)
		if f == "" {
			blank++
			continue
		}
		for ; blank > 0; blank-- {
			sum *= prime
		}
		for i := range len(f) {
			sum = (sum ^ uint64(f[i])) * prime
		}
		blank = 1
	}
	return sum
}

// report tells a block once, at its first row.
func (b block) report() {
	first, last := b.rows[0], b.rows[len(b.rows)-1]
	found := "the row stands in " + b.of[0].pos().inWords() + " too, cell for cell"
	if len(b.rows) > 1 {
		found = first.pos().span(last.pos()) + " stand above too, cell for cell"
		if b.onEnd() {
			found = first.pos().span(last.pos()) + " are " + b.of[0].pos().span(b.of[len(b.of)-1].pos()) + " once more, cell for cell"
		}
	}
	first.report("rows-twice", first.pos(), found, "each row once is expected", "both are taken: delete what was pasted twice")
}

// onEnd reports whether the rows above are one stretch too.
func (b block) onEnd() bool {
	for i := 1; i < len(b.of); i++ {
		if b.of[i].spot().Row <= b.of[i-1].spot().Row {
			return false
		}
	}
	return int(b.of[0].spot().Row)+len(b.of)-1 >= int(b.of[len(b.of)-1].spot().Row)
}
