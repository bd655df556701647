package money

import (
	"cmp"
	"slices"
)

type ledgerKey struct {
	season   int
	category Category
}

// enter writes money of a season and category into the ledger (rule "Ledger"): all of
// it is borne by batches, of whatever season, or none is.
func (a *accounts) enter(season int, c Category, amount float64, borne bool) {
	key := ledgerKey{season, c}
	line := a.lines[key]
	if line == nil {
		line = &LedgerLine{Season: season, Category: c}
		a.lines[key] = line
	}
	line.Ledger += amount
	if borne {
		line.Borne += amount
	} else {
		line.Unborne += amount
	}
}

// ledger returns the lines by season and category.
func (a *accounts) ledger() []LedgerLine {
	var lines []LedgerLine
	for _, line := range a.lines {
		lines = append(lines, *line)
	}
	slices.SortFunc(lines, func(x, y LedgerLine) int {
		return cmp.Or(cmp.Compare(x.Season, y.Season), cmp.Compare(x.Category, y.Category))
	})
	return lines
}
