package money

import (
	"traybook/records"
	"traybook/report/batch"
)

// remaining is what remains of each purchase of a tray code as seasons pass.
type remaining struct {
	code     *batch.TrayCode
	settings records.Settings
	trays    []int // of each row of the code; none for a row of trays broken or sold
	next     int   // first row not yet looked at for trays broken or sold
	oldest   int   // first row of which any may be left
}

func newRemaining(c *batch.TrayCode, s records.Settings) *remaining {
	left := &remaining{code: c, settings: s, trays: make([]int, len(c.Rows))}
	for i, row := range c.Rows {
		left.trays[i] = max(row.Count.Or(0), 0)
	}
	return left
}

// in returns what is left in a season: rows with a negative count take from the
// oldest purchase, from the season of their date on; more than was bought by then
// takes from what was bought later, as it does from the trays owned (rules
// "Tray charge", "Tray codes"). Seasons are asked for in ascending order.
func (left *remaining) in(season int) []int {
	for ; left.next < len(left.code.Rows); left.next++ {
		row := left.code.Rows[left.next]
		if row.Bought.Known() && left.settings.Season(row.Bought) > season {
			break
		}
		left.take(row)
	}
	return left.trays
}

// take takes the trays of a row with a negative count.
func (left *remaining) take(gone records.Purchase) {
	broken := -min(gone.Count.Or(0), 0)
	for broken > 0 && left.oldest < len(left.trays) {
		taken := min(broken, left.trays[left.oldest])
		left.trays[left.oldest] -= taken
		if broken -= taken; broken > 0 {
			left.oldest++
		}
	}
}
