package records

import (
	"fmt"
	"iter"
	"maps"
	"slices"
)

// alive goes through the rows that are not left out so far.
func alive[T any](all entries[T]) iter.Seq[entry[T]] {
	return func(yield func(entry[T]) bool) {
		for i := range all.is {
			if all.flags[i]&out == 0 && !yield(all.entry(i)) {
				return
			}
		}
	}
}

// checkTrayCodes reports purchases of one code that are not the same tray: a batch
// names the code alone, and so must know its cells from any of its rows. A blank
// cell_ml differs from nothing.
func (l *loader) checkTrayCodes() {
	first := map[string]entry[Purchase]{}
	for e := range alive(l.trays) {
		f, again := first[e.is.Tray]
		if !again || !f.is.CellML.Known {
			first[e.is.Tray] = e
		}
		if !again {
			continue
		}
		if col := trayDiffers(f.is, e.is); col != "" {
			e.problem("tray-differs", col, "tray "+quote(e.is.Tray)+" has another "+col+" than in "+f.inWords(),
				"the same kind, cells and cell_ml in all rows of a code are expected", "give one of the two trays a code of its own")
		}
	}
}

// trayDiffers names the first column in which two purchases are unlike trays.
func trayDiffers(a, b *Purchase) string {
	switch {
	case a.Kind != b.Kind:
		return "kind"
	case a.Cells != b.Cells:
		return "cells"
	case a.CellML.Known && b.CellML.Known && a.CellML != b.CellML:
		return "cell_ml"
	}
	return ""
}

// checkDoubleLots reports a lot's code written twice.
func (l *loader) checkDoubleLots() {
	checkDouble(l.lots, "double-lot", "lot", func(x *Lot) string { return x.Code })
}

// checkDoubleBatches reports a batch's code written twice.
func (l *loader) checkDoubleBatches() {
	checkDouble(l.sowings, "double-batch", "batch", func(s *Sowing) string { return s.Code })
}

// checkDouble leaves out every row whose code an earlier row has; a row that is
// left out holds its code too.
func checkDouble[T any](all entries[T], check, col string, code func(*T) string) {
	first := make(map[string]int32, len(all.is))
	for i := range all.is {
		e := all.entry(i)
		c := code(e.is)
		if at, again := first[c]; again && c != "" {
			if !e.isOut() {
				e.problem(check, col, col+" "+quote(c)+" stands in "+row{all.log, at}.inWords()+" too", "a code of its own for each "+col+" is expected", "")
			}
			continue
		}
		first[c] = e.nth
	}
}

// checkTrays warns of tray codes that trays.csv lacks. Without that log nothing is
// known of any tray, and nothing is said.
func (l *loader) checkTrays() {
	if !l.present["trays.csv"] {
		return
	}
	known := codes(l.trays, func(p *Purchase) string { return p.Tray })
	places := map[string][]row{}
	for e := range alive(l.sowings) {
		places[e.is.Tray] = append(places[e.is.Tray], e.row)
	}
	for e := range alive(l.costs) {
		places[e.is.Tray] = append(places[e.is.Tray], e.row)
	}
	for e := range alive(l.wishes) {
		places[e.is.Tray] = append(places[e.is.Tray], e.row)
	}
	l.unknown("unknown-tray", "tray", "trays.csv", places, known)
}

// checkLots warns of lots that lots.csv lacks, where there is such a log.
func (l *loader) checkLots() {
	if !l.present["lots.csv"] {
		return
	}
	places := map[string][]row{}
	for e := range alive(l.sowings) {
		places[e.is.Lot] = append(places[e.is.Lot], e.row)
	}
	l.unknown("unknown-lot", "lot", "lots.csv", places, codes(l.lots, func(x *Lot) string { return x.Code }))
}

// checkCrops warns of costs for a crop that was never sown. Bills of the last weeks may
// be for a crop yet to be sown, unless it is nearly one of those that were.
func (l *loader) checkCrops() {
	known := codes(l.sowings, func(s *Sowing) string { return s.Crop })
	today, _ := l.latest()
	places, old := map[string][]row{}, map[string]bool{}
	for e := range alive(l.costs) {
		places[e.is.Crop] = append(places[e.is.Crop], e.row)
		old[e.is.Crop] = old[e.is.Crop] || int(today-e.is.Date) > oddGap
	}
	maps.DeleteFunc(places, func(crop string, _ []row) bool {
		return !old[crop] && !slices.Contains(known, crop) && l.nearKey(crop, known) == ""
	})
	l.unknown("unknown-crop", "crop", "sowings.csv", places, known)
}

// codes lists the codes of a log, those of rows left out too.
func codes[T any](all entries[T], code func(*T) string) []string {
	var once []string
	seen := map[string]bool{}
	for i := range all.is {
		if c := code(&all.is[i]); c != "" && !seen[c] {
			seen[c] = true
			once = append(once, c)
		}
	}
	return once
}

// unknown warns once of each code that a log lacks, where it is first written.
func (l *loader) unknown(check, col, log string, places map[string][]row, known []string) {
	isKnown := map[string]bool{"": true}
	for _, code := range known {
		isKnown[code] = true
	}
	for _, code := range slices.Sorted(maps.Keys(places)) {
		if isKnown[code] {
			continue
		}
		rows := places[code]
		found := fmt.Sprintf("%s %s is not in %s", col, quote(code), log)
		if n := len(rows); n > 1 {
			found += fmt.Sprintf(" (%d rows)", n)
		}
		rows[0].problem(check, col, found, "a "+col+" of "+log+" is expected", didYouMean(l.nearKey(code, known)))
	}
}

// nearKey is the known name that a name is nearly. In a book where hundreds of
// names are unknown no slip of the keys is to blame, and looking takes long.
func (l *loader) nearKey(name string, known []string) string {
	if l.asked++; l.asked > 200 {
		return ""
	}
	alike := func(s string) string { return lookalikes.Replace(l.names.key(s)) }
	if i := slices.IndexFunc(known, func(k string) bool { return alike(k) == alike(name) }); i >= 0 {
		return known[i]
	}
	return nearest(l.names.key(name), known, l.names.key)
}

// didYouMean is the remedy that asks for a near name; empty for none.
func didYouMean(name string) string {
	if name == "" {
		return ""
	}
	return "did you mean " + quote(name) + "?"
}
