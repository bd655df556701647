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
		s := l.batchOf(e.is.Batch)
		if s == nil || !e.is.Tray.Known {
			continue
		}
		if most := WholeTrays(s.is.Trays); int(e.is.Tray.Value) > most {
			e.problem("tray-number", "tray", fmt.Sprintf("tray %d of a batch of %s", e.is.Tray.Value, plural(most, "tray")),
				fmt.Sprintf("a number from 1 to %d is expected", most), "trays are numbered anew within each batch")
		}
	}
}

// holds is how many cells a count can look at: those of the batch, or of the
// tray counted (rule "Cells sown"). The tray's number was found to be one of the
// batch's before.
func (l *loader) holds(c *Count) Maybe[int] {
	s := l.batchOf(c.Batch)
	if s == nil {
		return Maybe[int]{}
	}
	of := l.hold(s)
	if !c.Tray.Known || !of.sown.Known || of.tray == 0 {
		return of.sown
	}
	return Known(CellsOfTray(*s.is, of.tray, int(c.Tray.Value)))
}

// checkCellsLookedAt reports counts of more cells than were sown, in the tray or, where
// trays are not counted apart, in the batch.
func (l *loader) checkCellsLookedAt() {
	for e := range alive(l.counts) {
		most := l.holds(e.is)
		if most.Known && e.is.Cells.Known && int(e.is.Cells.Value) > most.Value {
			e.problem("cells-above-sown", "cells", fmt.Sprintf("%d cells looked at, %d sown", e.is.Cells.Value, most.Value),
				"no more cells than were sown are expected", "")
		}
	}
}

// looked is the cells a count looked at, where known.
func (l *loader) looked(c *Count) Maybe[int] {
	if c.Cells.Known {
		return Known(int(c.Cells.Value))
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
			Maybe[int32]
		}{{"emerged", e.is.Emerged}, {"empty", e.is.Empty}} {
			if n.Known && int(n.Value) > looked.Value {
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
	rows := map[Ref][]entry[Count]{}
	var batches []Ref
	for e := range alive(l.counts) {
		if e.is.Lost.Known {
			batches = append(batches, e.is.Batch)
			rows[e.is.Batch] = append(rows[e.is.Batch], e)
		}
	}
	for _, code := range unique(batches) {
		s := l.batchOf(code)
		if s == nil || !l.cellsSown(s.is).Known {
			continue
		}
		slices.SortStableFunc(rows[code], func(a, b entry[Count]) int { return cmp.Compare(a.is.Date, b.is.Date) })
		sown, lost := l.cellsSown(s.is).Value, 0
		for _, e := range rows[code] {
			if n := lost + int(e.is.Lost.Value); n > sown {
				e.problem("lost-above-sown", "lost", fmt.Sprintf("%d cells lost so far, %d sown", n, sown),
					"no more lost cells than were sown are expected", "write into lost how many died since the last count")
				continue
			}
			lost += int(e.is.Lost.Value)
		}
	}
}

// series hands over the counts of each batch and tray by day, the last row of a day
// standing for it. They stand in one slice, which the next ones take over.
func (l *loader) series(see func([]entry[Count])) {
	if l.ordered == nil {
		l.ordered = l.byBatch(func(a, b *Count) int {
			return cmp.Or(cmp.Compare(a.Tray.Value, b.Tray.Value), cmp.Compare(a.Date, b.Date))
		})
	}
	var of []entry[Count]
	for _, i := range l.ordered {
		e := l.counts.entry(int(i))
		if len(of) > 0 && (of[0].is.Batch != e.is.Batch || of[0].is.Tray.Value != e.is.Tray.Value) {
			see(of)
			of = of[:0]
		}
		of = append(of, e)
	}
	if len(of) > 0 {
		see(of)
	}
}

// checkFalls warns where fewer stand than at the count before and fewer were written as
// lost. A count that shares its day with another is not compared: which of them came
// first is not known.
func (l *loader) checkFalls() {
	l.series(func(s []entry[Count]) {
		lost := 0
		for i := 1; i < len(s); i++ {
			lost += int(s[i].is.Lost.Value)
			if i+1 < len(s) && s[i+1].is.Date == s[i].is.Date || s[i-1].is.Date == s[i].is.Date {
				continue
			}
			l.checkFall(s[i-1].is, s[i], lost)
			lost = 0
		}
	})
}

// checkFall compares a count with the one before; lost is what was written as lost
// since. Counts of unlike numbers of cells are not compared.
func (l *loader) checkFall(before *Count, e entry[Count], lost int) {
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
func standing(c *Count, looked Maybe[int]) int {
	if c.Empty.Known {
		return looked.Value - int(c.Empty.Value)
	}
	return int(c.Emerged.Value)
}

// checkNumbered warns of counts without a tray's number in a batch that has some with
// one: only the numbered are used, so that no cell counts twice.
func (l *loader) checkNumbered() {
	numbered := make([]bool, l.refs())
	for e := range alive(l.counts) {
		if e.is.Tray.Known {
			numbered[e.is.Batch] = true
		}
	}
	for e := range alive(l.counts) {
		if numbered[e.is.Batch] && !e.is.Tray.Known {
			e.problem("unnumbered-count", "tray", "other counts of batch "+quote(l.code(e.is.Batch))+" have a tray's number, this one has none",
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
