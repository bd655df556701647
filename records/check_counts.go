package records

import (
	"cmp"
	"fmt"
	"slices"
)

// checkCountForms reports counts that say both, or neither, of what came up and what
// is empty: which of them is wrong cannot be told.
func (l *loader) checkCountForms() {
	for e := range alive(l.counts) {
		switch both, neither := e.is.Emerged.Known && e.is.Empty.Known, !e.is.Emerged.Known && !e.is.Empty.Known; {
		case both:
			e.problem("emerged-or-empty", "empty", "both emerged and empty are written", "exactly one of them is expected", "delete one of them")
		case neither:
			e.problem("emerged-or-empty", "emerged", "neither emerged nor empty is written", "exactly one of them is expected", "write 0 where nothing has come up")
		}
	}
}

// checkTrayNumbers reports counts of a tray that the batch has not (rule "Cells sown").
func (l *loader) checkTrayNumbers() {
	for e := range alive(l.counts) {
		s := l.batch(e.is.Batch)
		if s == nil || !e.is.Tray.Known {
			continue
		}
		if most := WholeTrays(s.is.Trays); e.is.Tray.Value > most {
			e.problem("tray-number", "tray", fmt.Sprintf("tray %d of a batch of %s", e.is.Tray.Value, plural(most, "tray")),
				fmt.Sprintf("a number from 1 to %d is expected", most), "trays are numbered anew within each batch")
		}
	}
}

// holds is how many cells a count can look at: those of the batch, or of the
// tray counted (rule "Cells sown"). The tray's number was found to be one of the
// batch's before.
func (l *loader) holds(c Count) Maybe[int] {
	s := l.batch(c.Batch)
	if s == nil {
		return Maybe[int]{}
	}
	sown := l.cellsSown(s.is)
	tray := l.trayCells(s.is.Tray)
	if !c.Tray.Known || !sown.Known || tray == 0 {
		return sown
	}
	return Known(CellsOfTray(s.is, tray, c.Tray.Value))
}

// checkCellsLookedAt reports counts of more cells than were sown, in the tray or, where
// trays are not counted apart, in the batch.
func (l *loader) checkCellsLookedAt() {
	for e := range alive(l.counts) {
		most := l.holds(e.is)
		if most.Known && e.is.Cells.Known && e.is.Cells.Value > most.Value {
			e.problem("cells-above-sown", "cells", fmt.Sprintf("%d cells looked at, %d sown", e.is.Cells.Value, most.Value),
				"no more cells than were sown are expected", "")
		}
	}
}

// looked is the cells a count looked at, where known.
func (l *loader) looked(c Count) Maybe[int] {
	if c.Cells.Known {
		return c.Cells
	}
	return l.holds(c)
}

// checkEmerged reports more cells up, or empty, than were looked at.
func (l *loader) checkEmerged() {
	for e := range alive(l.counts) {
		looked := l.looked(e.is)
		if !looked.Known {
			continue
		}
		for _, n := range []struct {
			col string
			Maybe[int]
		}{{"emerged", e.is.Emerged}, {"empty", e.is.Empty}} {
			if n.Known && n.Value > looked.Value {
				e.problem("emerged-above-cells", n.col, fmt.Sprintf("%d cells %s of %d looked at", n.Value, n.col, looked.Value),
					"no more than the cells looked at are expected", "")
			}
		}
	}
}

// checkLost reports the count with which more cells of a batch were lost than were sown,
// by all its counts together. Counts without a tray's number beside some with one are not
// used, and not added.
func (l *loader) checkLost() {
	rows := map[string][]*entry[Count]{}
	var batches []string
	for e := range alive(l.counts) {
		if e.is.Lost.Known {
			batches = append(batches, e.is.Batch)
			rows[e.is.Batch] = append(rows[e.is.Batch], e)
		}
	}
	for _, code := range unique(batches) {
		s := l.batch(code)
		if s == nil || !l.cellsSown(s.is).Known {
			continue
		}
		slices.SortStableFunc(rows[code], func(a, b *entry[Count]) int { return cmp.Compare(a.is.Date, b.is.Date) })
		sown, lost := l.cellsSown(s.is).Value, 0
		for _, e := range rows[code] {
			if lost+e.is.Lost.Value > sown {
				e.problem("lost-above-sown", "lost", fmt.Sprintf("%d cells lost so far, %d sown", lost+e.is.Lost.Value, sown),
					"no more lost cells than were sown are expected", "write into lost how many died since the last count")
				continue
			}
			lost += e.is.Lost.Value
		}
	}
}

// series sorts the counts of each batch and tray by day, the last row of a day
// standing for it.
func (l *loader) series() [][]*entry[Count] {
	type key struct {
		batch string
		tray  int
	}
	at := map[key]int{}
	var all [][]*entry[Count]
	for e := range alive(l.counts) {
		k := key{e.is.Batch, e.is.Tray.Value}
		i, ok := at[k]
		if !ok {
			i = len(all)
			at[k], all = i, append(all, nil)
		}
		all[i] = append(all[i], e)
	}
	for _, s := range all {
		slices.SortStableFunc(s, func(a, b *entry[Count]) int { return cmp.Compare(a.is.Date, b.is.Date) })
	}
	return all
}

// checkFalls warns where fewer stand than at the count before and fewer were written as
// lost. A count that shares its day with another is not compared: which of them came
// first is not known.
func (l *loader) checkFalls() {
	for _, s := range l.series() {
		lost := 0
		for i := 1; i < len(s); i++ {
			lost += s[i].is.Lost.Value
			if i+1 < len(s) && s[i+1].is.Date == s[i].is.Date || s[i-1].is.Date == s[i].is.Date {
				continue
			}
			l.checkFall(s[i-1].is, s[i], lost)
			lost = 0
		}
	}
}

// checkFall compares a count with the one before; lost is what was written as lost
// since. Counts of unlike numbers of cells are not compared.
func (l *loader) checkFall(before Count, e *entry[Count], lost int) {
	looked, now := l.looked(before), l.looked(e.is)
	if looked != now || !now.Known && (before.Empty.Known || e.is.Empty.Known) {
		return
	}
	fall := standing(before, looked) - standing(e.is, now)
	if fall > lost {
		e.problem("count-falls", "lost", fmt.Sprintf("%s fewer than on %s, %d written as lost", plural(fall, "cell"), before.Date, lost),
			"a count that falls by no more than lost is expected", "write into lost how many died since the last count")
	}
}

// standing is the cells with a seedling at a count, of those looked at.
func standing(c Count, looked Maybe[int]) int {
	if c.Empty.Known {
		return looked.Value - c.Empty.Value
	}
	return c.Emerged.Value
}

// checkNumbered warns of counts without a tray's number in a batch that has some with
// one: only the numbered are used, so that no cell counts twice.
func (l *loader) checkNumbered() {
	numbered := map[string]bool{}
	for e := range alive(l.counts) {
		if e.is.Tray.Known {
			numbered[e.is.Batch] = true
		}
	}
	for e := range alive(l.counts) {
		if numbered[e.is.Batch] && !e.is.Tray.Known {
			e.problem("unnumbered-count", "tray", "other counts of batch "+quote(e.is.Batch)+" have a tray's number, this one has none",
				"a tray's number is expected", "this count is not used")
		}
	}
}

// plural is a number with its noun, for messages.
func plural(n int, noun string) string {
	if n == 1 {
		return "1 " + noun
	}
	return fmt.Sprintf("%d %ss", n, noun)
}
