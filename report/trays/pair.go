package trays

import (
	"cmp"
	"slices"

	"traybook/records"
	"traybook/report/batch"
)

// pair is two tray codes that may be compared (rule "Pair"); tray is the dearer.
type pair struct {
	tray, other *batch.TrayCode
	settings    records.Settings
	matches     []Match
}

// pairsOf returns the pairs of a book, by tray, then other.
func pairsOf(b *batch.Batches) []*pair {
	var pairs []*pair
	names := b.Codes.Sorted()
	for i, name := range names {
		for _, later := range names[i+1:] {
			if one, two := b.Codes[name], b.Codes[later]; mayPair(one, two) {
				pr := dearerFirst(one, two)
				pr.settings = b.Settings
				pairs = append(pairs, pr)
			}
		}
	}
	slices.SortFunc(pairs, func(a, b *pair) int {
		return cmp.Or(cmp.Compare(a.tray.Code, b.tray.Code), cmp.Compare(a.other.Code, b.other.Code))
	})
	return pairs
}

func mayPair(a, b *batch.TrayCode) bool {
	return a.Cells == b.Cells && a.Kind != b.Kind && a.Price.Known && b.Price.Known
}

// dearerFirst takes the later code by bytes, b, as the dearer of equal prices.
func dearerFirst(a, b *batch.TrayCode) *pair {
	if a.Price.Value > b.Price.Value {
		return &pair{tray: a, other: b}
	}
	return &pair{tray: b, other: a}
}
