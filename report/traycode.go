package report

import (
	"slices"

	"traybook/records"
)

// trayCode is a code of trays.csv over all its purchases (rule 5).
type trayCode struct {
	code    string
	kind    string
	cells   int
	rows    []records.Purchase // by date bought; those without one first
	price   Num
	lasts   Num // seasons, above 0
	uses    Num // above 0
	minutes Num
	places  float64
	life    Life
}

// trayCodes returns the codes of trays.csv with their lives (rules 24, 54).
func trayCodes(r *Report) map[string]*trayCode {
	rows := slices.Clone(r.Book.Trays)
	slices.SortStableFunc(rows, byBought)
	codes := map[string]*trayCode{}
	for _, row := range rows {
		c := codes[row.Tray]
		if c == nil {
			c = &trayCode{code: row.Tray, kind: row.Kind, cells: row.Cells, places: 1}
			codes[row.Tray] = c
		}
		c.rows = append(c.rows, row)
		latest(&c.price, row.Price)
		latest(&c.lasts, above0(row.Lasts))
		latest(&c.uses, above0(row.Uses))
		latest(&c.minutes, row.Minutes)
		c.places = row.Places.Or(c.places)
	}
	for code, uses := range usesPerSeason(r, codes) {
		codes[code].life = codes[code].lifeAt(uses)
	}
	return codes
}

// byBought orders purchases by date; of one day's the dearer, then the one with the
// larger other values counts as the later, so that the order of rows moves nothing.
func byBought(a, b records.Purchase) int {
	values := func(p records.Purchase) []float64 {
		return []float64{float64(p.Bought), p.Price.Or(-1), p.Lasts.Or(-1), p.Uses.Or(-1), p.Minutes.Or(-1), p.Places.Or(-1), float64(p.Count.Or(0))}
	}
	return slices.Compare(values(a), values(b))
}

func latest(have *Num, row Num) {
	if row.Known {
		*have = row
	}
}

// above0 takes a life of 0 or less as not written: no tray dies before its first use.
func above0(n Num) Num {
	if n.Known && !(n.Value > 0) {
		return Num{}
	}
	return n
}

// ownedOn returns the trays owned on a day (rule 5): bought by then, a blank date
// as always, a blank count as none (rule 54).
func (c *trayCode) ownedOn(d records.Date) int {
	owned := 0
	for _, row := range c.rows {
		if row.Bought <= d {
			owned += row.Count.Or(0)
		}
	}
	return max(owned, 0)
}

// ownedIn returns the most owned on any day from first until the day before after.
func (c *trayCode) ownedIn(first, after records.Date) int {
	most := c.ownedOn(first)
	for _, row := range c.rows {
		if row.Bought > first && row.Bought < after {
			most = max(most, c.ownedOn(row.Bought))
		}
	}
	return most
}

// counted reports whether any purchase of the code has its count.
func (c *trayCode) counted() bool {
	return slices.ContainsFunc(c.rows, func(row records.Purchase) bool { return row.Count.Known })
}
