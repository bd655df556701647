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
	alike := map[*row]bool{}
	for e := range alive(l.costs) {
		alike[e.row] = e.is.Category == Labour
	}
	for e := range alive(l.counts) {
		alike[e.row] = true
	}
	for e := range alive(l.chamber) {
		alike[e.row] = !e.is.Minute.Known
	}
	for _, log := range l.logs {
		if log.Name == "book.csv" {
			continue
		}
		for _, b := range repeated(log) {
			single := slices.ContainsFunc(b.rows, func(r *row) bool { return !alike[r] })
			if single || len(b.rows) >= fewestTwice {
				b.report()
			}
		}
	}
}

// block is rows on end that stand above already: in of, as far as that is one stretch.
type block struct {
	rows []*row
	of   []*row
}

// repeated finds the blocks of rows that stand above already.
func repeated(l *log) []block {
	var rows []*row
	for i := range l.rows {
		if !l.rows[i].out {
			rows = append(rows, &l.rows[i])
		}
	}
	keys, above := make([]string, len(rows)), map[string][]int{}
	for i, r := range rows {
		keys[i] = r.everything()
	}
	var all []block
	var last block
	end := func() {
		if len(last.rows) > 0 {
			all = append(all, last)
		}
		last = block{}
	}
	for i := 0; i < len(rows); {
		from, n := longestAbove(keys, above[keys[i]], i)
		if n == 0 {
			end()
			n = 1
		} else {
			last.rows = append(last.rows, rows[i:i+n]...)
			last.of = append(last.of, rows[from:from+n]...)
		}
		for ; n > 0; n-- {
			above[keys[i]] = append(above[keys[i]], i)
			i++
		}
	}
	end()
	return all
}

// longestAbove finds, among the places above of a row, where most rows on end are as
// from that row on. Of many places the first are tried.
func longestAbove(keys []string, places []int, i int) (from, n int) {
	for _, at := range places[:min(len(places), 20)] {
		k := 0
		for i+k < len(keys) && keys[at+k] == keys[i+k] {
			k++
		}
		if k > n {
			from, n = at, k
		}
	}
	return from, n
}

// everything is all that stands in a row, cell for cell.
func (r *row) everything() string {
	cells := make([]string, len(r.rec.fields))
	for i, f := range r.rec.fields {
		cells[i] = strings.TrimSpace(f)
	}
	return strings.TrimRight(strings.Join(cells, "\x00"), "\x00")
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
		if b.of[i].rec.row <= b.of[i-1].rec.row {
			return false
		}
	}
	return b.of[0].rec.row+len(b.of)-1 >= b.of[len(b.of)-1].rec.row
}
