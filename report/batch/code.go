package batch

import (
	"maps"
	"slices"

	"traybook/records"
)

// TrayCode is a code of trays.csv over all its purchases (rule "Tray codes").
type TrayCode struct {
	Code   string
	Kind   string
	Cells  int
	CellML Num
	// Rows are its purchases by date; those without one first.
	Rows    []records.Purchase
	Price   Num
	Lasts   Num // seasons, above 0
	Uses    Num // above 0
	Minutes Num
	Places  float64 // on a bench
}

// Codes is the tray codes of trays.csv by code.
type Codes map[string]*TrayCode

// Sorted returns the codes by bytes.
func (c Codes) Sorted() []string { return slices.Sorted(maps.Keys(c)) }

// Places returns the bench places that a tray of a code takes, 1 where the code is
// unknown.
func (c Codes) Places(code string) float64 {
	if of := c[code]; of != nil {
		return of.Places
	}
	return 1
}

func codesOf(purchases []records.Purchase) Codes {
	rows := slices.Clone(purchases)
	slices.SortStableFunc(rows, byBought)
	codes := Codes{}
	for _, row := range rows {
		c := codes[row.Tray]
		if c == nil {
			c = &TrayCode{Code: row.Tray, Kind: row.Kind, Cells: row.Cells, Places: 1}
			codes[row.Tray] = c
		}
		c.Rows = append(c.Rows, row)
		c.CellML = latest(c.CellML, row.CellML)
		c.Price = latest(c.Price, row.Price)
		c.Lasts = latest(c.Lasts, above0(row.Lasts))
		c.Uses = latest(c.Uses, above0(row.Uses))
		c.Minutes = latest(c.Minutes, row.Minutes)
		c.Places = row.Places.Or(c.Places)
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

// latest is a row's value where it has one.
func latest(have, row Num) Num {
	if row.Known {
		return row
	}
	return have
}

// above0 takes a life of 0 or less as not written: no tray dies before its first use.
func above0(n Num) Num {
	if n.Known && !(n.Value > 0) {
		return Num{}
	}
	return n
}

// OwnedOn returns the trays owned on a day: bought by then, a blank date as always,
// never below 0; unknown where any count of the code is blank (rule "Tray codes").
func (c *TrayCode) OwnedOn(d records.Date) records.Maybe[int] {
	if !c.Counted() {
		return records.Maybe[int]{}
	}
	owned := 0
	for _, row := range c.Rows {
		if row.Bought <= d {
			owned += row.Count.Value
		}
	}
	return records.Known(max(owned, 0))
}

// OwnedIn returns the most owned on any day from first until the day before after;
// unknown where OwnedOn is.
func (c *TrayCode) OwnedIn(first, after records.Date) records.Maybe[int] {
	most := c.OwnedOn(first)
	if !most.Known {
		return most
	}
	owned := 0
	for i, row := range c.Rows {
		owned += row.Count.Value
		dayDone := i+1 == len(c.Rows) || c.Rows[i+1].Bought > row.Bought
		if row.Bought > first && row.Bought < after && dayDone {
			most.Value = max(most.Value, owned)
		}
	}
	return most
}

// Counted reports whether every purchase of the code has its count.
func (c *TrayCode) Counted() bool {
	return !slices.ContainsFunc(c.Rows, func(row records.Purchase) bool { return !row.Count.Known })
}

// Bought returns the trays ever bought of the code; ok is false where any of its counts
// is blank.
func (c *TrayCode) Bought() (trays int, ok bool) {
	for _, row := range c.Rows {
		trays += max(row.Count.Or(0), 0)
	}
	return trays, c.Counted()
}

// Gone returns the trays of the code written as broken or sold: its negative counts.
func (c *TrayCode) Gone() int {
	gone := 0
	for _, row := range c.Rows {
		gone -= min(row.Count.Or(0), 0)
	}
	return gone
}

// BrokenBeyondBought reports whether on any day fewer than no trays were owned. Where a
// count is blank nobody knows.
func (c *TrayCode) BrokenBeyondBought() bool {
	owned := 0
	for i, row := range c.Rows {
		owned += row.Count.Value
		if owned < 0 && (i+1 == len(c.Rows) || c.Rows[i+1].Bought > row.Bought) {
			return c.Counted()
		}
	}
	return false
}
