package report

import (
	"cmp"
	"slices"

	"traybook/records"
)

// matchDays is the number of days after its first sowing within which a match
// takes sowings (rules 29, 70).
const matchDays = 7

// pair is two codes of the same cells and different kind, both priced; tray is
// the dearer (rules 28, 70).
type pair struct {
	tray, other *trayCode
	matches     []Match
}

// pairsOf returns the pairs by code.
func pairsOf(codes map[string]*trayCode) []*pair {
	var pairs []*pair
	names := sortedKeys(codes)
	for i, a := range names {
		for _, b := range names[i+1:] {
			if one, two := codes[a], codes[b]; mayPair(one, two) {
				pairs = append(pairs, dearerFirst(one, two))
			}
		}
	}
	slices.SortFunc(pairs, func(a, b *pair) int {
		return cmp.Or(cmp.Compare(a.tray.code, b.tray.code), cmp.Compare(a.other.code, b.other.code))
	})
	return pairs
}

func mayPair(a, b *trayCode) bool {
	return a.cells == b.cells && a.kind != b.kind && a.price.Known && b.price.Known
}

// dearerFirst takes the later code by bytes as the dearer of equal prices.
func dearerFirst(a, b *trayCode) *pair {
	if a.price.Value > b.price.Value {
		return &pair{tray: a, other: b}
	}
	return &pair{tray: b, other: a}
}

// sameSeed is what batches of a match share.
type sameSeed struct {
	crop, variety, lot string
	seedsPerCell       int
}

// match finds the matched sowings of a pair (rules 29, 70).
func (pr *pair) match(batches []*Batch, values map[string]Num) {
	of := map[sameSeed][]*Batch{}
	for _, b := range batches {
		if (b.Tray == pr.tray.code || b.Tray == pr.other.code) && b.Measured() && b.CellsSown.Or(0) > 0 {
			key := sameSeed{b.Crop, b.Variety, b.Lot, b.SeedsPerCell}
			of[key] = append(of[key], b)
		}
	}
	for key, batches := range of {
		slices.SortFunc(batches, sownOrder)
		for len(batches) > 0 {
			n := 1
			for n < len(batches) && batches[n].Sown <= batches[0].Sown+matchDays {
				n++
			}
			pr.add(key, batches[:n], values[key.crop])
			batches = batches[n:]
		}
	}
	slices.SortFunc(pr.matches, func(a, b Match) int {
		return cmp.Or(cmp.Compare(a.FirstSown, b.FirstSown), cmp.Compare(a.Crop, b.Crop), cmp.Compare(a.Variety, b.Variety),
			cmp.Compare(a.Lot, b.Lot), cmp.Compare(a.SeedsPerCell, b.SeedsPerCell))
	})
	for i := range pr.matches {
		pr.matches[i].Number = i + 1
	}
}

// sownOrder is by day sown, then batch.
func sownOrder(a, b *Batch) int {
	return cmp.Or(cmp.Compare(a.Sown, b.Sown), cmp.Compare(a.Code, b.Code))
}

// add makes a match of batches sown within its days, if both codes are in it.
func (pr *pair) add(key sameSeed, batches []*Batch, value Num) {
	m := Match{Tray: pr.tray.code, Other: pr.other.code, Crop: key.crop, Variety: key.variety, Lot: key.lot,
		SeedsPerCell: key.seedsPerCell, FirstSown: batches[0].Sown, LastSown: batches[len(batches)-1].Sown, Value: value}
	for _, b := range batches {
		cells, usable := &m.CellsTray, &m.UsableTray
		if b.Tray == pr.other.code {
			cells, usable = &m.CellsOther, &m.UsableOther
		}
		*cells += float64(b.CellsSown.Value)
		*usable += b.Usable.Value
		m.Batches = append(m.Batches, b.Code)
	}
	if m.CellsTray == 0 || m.CellsOther == 0 {
		return
	}
	m.Difference = m.UsableTray/m.CellsTray - m.UsableOther/m.CellsOther
	pr.matches = append(pr.matches, m)
}

// firstDates is the number of different days on which matches begin.
func (pr *pair) firstDates() int {
	days := map[records.Date]bool{}
	for _, m := range pr.matches {
		days[m.FirstSown] = true
	}
	return len(days)
}

// differences are those of all matches.
func (pr *pair) differences() []float64 {
	var d []float64
	for _, m := range pr.matches {
		d = append(d, m.Difference)
	}
	return d
}

// enough reports whether the matches may tell anything, or why not (rule 29).
func (pr *pair) enough() Reason {
	switch {
	case len(pr.matches) == 0:
		return NoMatches
	case len(pr.matches) < EnoughMatches:
		return FewMatches
	case pr.firstDates() < EnoughDates:
		return FewDates
	}
	return ""
}
