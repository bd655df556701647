package money

import (
	"cmp"
	"slices"
)

type ledgerKey struct {
	season   int
	category Category
}

// ledgerSum is a line while it is added up.
type ledgerSum struct{ ledger, borne, unborne tally }

// enter writes money of a season and category into the ledger (rule "Ledger"): all of
// it is borne by batches, of whatever season, or none is.
func (a *accounts) enter(season int, c Category, amount float64, borne bool) {
	key := ledgerKey{season, c}
	line := a.lines[key]
	if line == nil {
		line = &ledgerSum{}
		a.lines[key] = line
	}
	line.ledger.add(amount)
	if borne {
		line.borne.add(amount)
	} else {
		line.unborne.add(amount)
	}
}

// ledger returns the lines by season and category.
func (a *accounts) ledger() []LedgerLine {
	var lines []LedgerLine
	for key, sum := range a.lines {
		lines = append(lines, LedgerLine{key.season, key.category, sum.ledger.value(), sum.borne.value(), sum.unborne.value()})
	}
	slices.SortFunc(lines, func(x, y LedgerLine) int {
		return cmp.Or(cmp.Compare(x.Season, y.Season), cmp.Compare(x.Category, y.Category))
	})
	return lines
}
