package trays

import (
	"cmp"
	"maps"
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

// MostCodes is the number of tray codes that are set side by side (rule "Pair"): pairs grow
// with its square, and no house works in so many.
const MostCodes = 40

// pairsOf returns the pairs of a book, by tray, then other, and how many codes were left
// out of them because there are more than MostCodes.
func pairsOf(b *batch.Batches) (pairs []*pair, leftOut int) {
	of := varietiesOf(b)
	names := mostSown(of)
	for i, name := range names {
		for _, later := range names[i+1:] {
			if one, two := b.Codes[name], b.Codes[later]; mayPair(one, two) && of[name].shares(of[later]) {
				pr := dearerFirst(one, two)
				pr.settings = b.Settings
				pairs = append(pairs, pr)
			}
		}
	}
	slices.SortFunc(pairs, func(a, b *pair) int {
		return cmp.Or(cmp.Compare(a.tray.Code, b.tray.Code), cmp.Compare(a.other.Code, b.other.Code))
	})
	return pairs, len(of) - len(names)
}

// variety is what both codes of a pair were sown with.
type variety struct{ crop, name string }

// sownWith is the batches from seed of a tray code, by variety.
type sownWith map[variety]int

// varietiesOf is what each code with a price was sown with, by code.
func varietiesOf(b *batch.Batches) map[string]sownWith {
	of := map[string]sownWith{}
	for _, one := range b.List {
		if code := b.Codes[one.Tray]; code == nil || !code.Price.Known || !one.FromSeed {
			continue
		}
		if of[one.Tray] == nil {
			of[one.Tray] = sownWith{}
		}
		of[one.Tray][variety{one.Crop, one.Variety}]++
	}
	return of
}

// batches is how many there are, of all varieties.
func (s sownWith) batches() (n int) {
	for _, of := range s {
		n += of
	}
	return n
}

// shares reports whether two codes were sown with one variety.
func (s sownWith) shares(other sownWith) bool {
	for v := range s {
		if other[v] > 0 {
			return true
		}
	}
	return false
}

// mostSown is the MostCodes codes with the most batches, of as many the earlier by bytes; by
// bytes.
func mostSown(of map[string]sownWith) []string {
	names := slices.Sorted(maps.Keys(of))
	if len(names) <= MostCodes {
		return names
	}
	slices.SortStableFunc(names, func(a, b string) int { return cmp.Compare(of[b].batches(), of[a].batches()) })
	names = names[:MostCodes]
	slices.Sort(names)
	return names
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
