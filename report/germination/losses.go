package germination

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/batch"
)

// lossKey is a row of the losses.
type lossKey struct {
	season      int
	crop, cause string
}

// lossRow is a count in which cells were lost, and the batch that lost them.
type lossRow struct {
	*Counted
	row   *records.Count
	cause string
}

func (l lossRow) key() lossKey { return lossKey{l.Season, l.Crop, l.cause} }

// losses adds up the cells lost by cause, over the counts that are used (rule
// "Losses, weeks, chambers").
func losses(all []*Counted, book *records.Book) []Loss {
	var rows []lossRow
	for _, c := range all {
		for i := range c.Rows {
			if row := &c.Rows[i]; row.Lost.Or(0) > 0 {
				rows = append(rows, lossRow{c, row, book.Said(row).Cause})
			}
		}
	}
	keys, groups := batch.GroupBy(rows, lossRow.key)
	slices.SortFunc(keys, func(a, b lossKey) int {
		return cmp.Or(cmp.Compare(a.season, b.season), cmp.Compare(a.crop, b.crop), cmp.Compare(a.cause, b.cause))
	})
	var table []Loss
	for _, k := range keys {
		table = append(table, lossOf(k, groups[k]))
	}
	return table
}

func lossOf(k lossKey, rows []lossRow) Loss {
	l := Loss{Season: k.season, Crop: k.crop, Cause: k.cause}
	batches, _ := batch.GroupBy(rows, func(r lossRow) int { return r.Nth })
	l.Batches = len(batches)
	for _, r := range rows {
		l.Cells += int(r.row.Lost.Value)
		l.ByMonth[r.row.Date.Month()] += int(r.row.Lost.Value)
	}
	return l
}
