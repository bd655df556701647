package report

import (
	"cmp"
	"maps"
	"slices"

	"traybook/records"
)

type ledgerKey struct {
	season   int
	category records.Category
}

// enter writes money of a season and category into the ledger (rule 26): all of
// it is borne by batches, of whatever season, or none is.
func (p *accounts) enter(season int, c records.Category, amount float64, borne bool) {
	key := ledgerKey{season, c}
	line := p.lines[key]
	if line == nil {
		line = &LedgerLine{Season: season, Category: string(c)}
		p.lines[key] = line
	}
	line.Ledger += amount
	if borne {
		line.Borne += amount
	} else {
		line.Unborne += amount
	}
}

// ledger returns the lines by season and category.
func (p *accounts) ledger() []LedgerLine {
	var lines []LedgerLine
	for _, line := range p.lines {
		lines = append(lines, *line)
	}
	slices.SortFunc(lines, func(a, b LedgerLine) int {
		return cmp.Or(cmp.Compare(a.Season, b.Season), cmp.Compare(a.Category, b.Category))
	})
	return lines
}

func sortedKeys[K cmp.Ordered, V any](m map[K]V) []K { return slices.Sorted(maps.Keys(m)) }
