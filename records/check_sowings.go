package records

import (
	"fmt"
	"strings"
)

// batch finds a sowing by its code: its row, left out or not; nil for none.
func (l *loader) batch(code string) *entry[Sowing] {
	l.findBatches()
	return l.batches[code]
}

// batchOf finds a sowing likewise, as the rows of which there are most name it.
func (l *loader) batchOf(r Ref) *entry[Sowing] {
	l.findBatches()
	return l.byRef[r]
}

// code is the code that a count names.
func (l *loader) code(r Ref) string { return l.names.shownAt(int32(r) - 1) }

// findBatches lists the sowings by code: of several of one code the first that is not
// left out.
func (l *loader) findBatches() {
	if l.batches != nil {
		return
	}
	l.batches = make(map[string]*entry[Sowing], len(l.sowings.is))
	l.byRef = make([]*entry[Sowing], l.refs())
	for i := range l.sowings.is {
		e := l.sowings.entry(i)
		if old := l.byRef[e.is.ref]; e.is.ref != 0 && (old == nil || old.isOut() && !e.isOut()) {
			l.batches[e.is.Code], l.byRef[e.is.ref] = &e, &e
		}
	}
}

// refs is one more than the last place of a name.
func (l *loader) refs() int { return len(l.names.spellings) + 1 }

// lostBatches reads the batch's code out of rows that are no CSV, so that what
// belongs to such a batch can go with it.
func (l *loader) lostBatches() {
	l.lost = map[string]bool{}
	if !l.present["sowings.csv"] {
		return
	}
	log := l.logs[len(l.logs)-1]
	for _, f := range log.src.faults() {
		if i := log.index("batch"); i < len(f.cells) {
			code := strings.Trim(f.cells[i], `" `)
			at := l.canonical(l.names.asWritten("batch", "", code), "batch", inLog{log, uint32(f.Line)}, func() Pos { return f.Pos })
			l.lost[l.names.shownAt(at)] = true
		}
	}
	delete(l.lost, "")
}

// batchCodes lists every batch's code.
func (l *loader) batchCodes() []string {
	if l.codes == nil {
		l.codes = codes(l.sowings, func(s *Sowing) string { return s.Code })
	}
	return l.codes
}

// checkSowingDates reports days of a batch before its sowing: the sowing itself where
// that is what is odd.
func (l *loader) checkSowingDates() {
	late := l.lateSowings()
	for e := range alive(l.sowings) {
		if own := late[e.nth]; own.n > 0 {
			e.problem("before-sown", "sown", fmt.Sprintf("sown %s, and %s of the batch before it, as on %s", e.is.Sown, plural(own.n, "date"), own.last),
				"a day before all others of the batch is expected", "is the year right?")
			continue
		}
		for _, d := range []struct {
			col  string
			date Date
		}{{"chamber_out", e.is.ChamberOut}, {"planned", e.is.Planned}, {"set_out", e.is.SetOut}} {
			if d.date.Known() && d.date < e.is.Sown {
				e.problem("before-sown", d.col, fmt.Sprintf("%s %s is before the sowing, %s", d.col, d.date, e.is.Sown),
					"a day not before sown is expected", "")
			}
		}
	}
}

// lateBy is how many days all other dates of a batch lie before a sowing whose year is
// one too late, if the batch was in the house no longer than usual.
const lateBy = 365 - longStay

// others are the other dates of a batch: how many, and the last of them.
type others struct {
	n    int
	last Date
}

// add takes one more date, if it is known.
func (o *others) add(days ...Date) {
	for _, d := range days {
		if d.Known() {
			o.n++
			o.last = max(o.last, d)
		}
	}
}

// lateSowings lists, with the other dates of the batch, the sowings that must be of
// another year: two dates or more are all so many days before, or one is before and no
// other date of the book is near.
func (l *loader) lateSowings() map[int32]others {
	of := make([]others, len(l.sowings.is))
	for r := range l.batchRows() {
		if s := r.sowing; s != nil {
			of[s.nth].add(r.date)
		}
	}
	last, before := l.latest()
	late := map[int32]others{}
	for e := range alive(l.sowings) {
		own := of[e.nth]
		own.add(e.is.ChamberOut, e.is.Planned, e.is.SetOut)
		alone := e.is.Sown == last && before.Known() && apart(last, before) > oddPause
		if own.n > 1 && e.is.Sown-own.last >= lateBy || own.n == 1 && alone && own.last < e.is.Sown {
			late[e.nth] = own
		}
	}
	return late
}

// checkFromKnown reports batches that came from one that is nowhere; one whose row is no
// CSV is somewhere.
func (l *loader) checkFromKnown() {
	for e := range alive(l.sowings) {
		if e.is.From != "" && l.batch(e.is.From) == nil && !l.lost[e.is.From] {
			e.problem("unknown-from", "from", "batch "+quote(e.is.From)+" is not in sowings.csv", "a batch of sowings.csv is expected",
				didYouMean(l.nearKey(e.is.From, l.batchCodes())))
		}
	}
}

// checkFromEarlier reports batches not sown after the one they came from. So no batch
// comes from itself, by however many steps, and costs can be handed on in order.
func (l *loader) checkFromEarlier() {
	for e := range alive(l.sowings) {
		if e.is.From == "" {
			continue
		}
		from := l.batch(e.is.From)
		if from != nil && from.is.Sown.Known() && from.is.Sown >= e.is.Sown {
			e.problem("from-later", "from", fmt.Sprintf("batch %s was sown on %s, this one on %s", quote(e.is.From), from.is.Sown, e.is.Sown),
				"a batch sown before this one is expected", "")
		}
	}
}

// leaveOutAfterFrom leaves out, without a word of their own, the batches that
// came from one left out, and those that came from them.
func (l *loader) leaveOutAfterFrom() {
	for again := true; again; {
		again = false
		for e := range alive(l.sowings) {
			if from := l.batch(e.is.From); l.lost[e.is.From] || from != nil && from.isOut() {
				e.leaveOut()
				again = true
			}
		}
	}
}

// checkReplaces warns of batches that re-sow one that is nowhere.
func (l *loader) checkReplaces() {
	for e := range alive(l.sowings) {
		if e.is.Replaces != "" && l.batch(e.is.Replaces) == nil && !l.lost[e.is.Replaces] {
			e.problem("unknown-replaces", "replaces", "batch "+quote(e.is.Replaces)+" is not in sowings.csv", "a batch of sowings.csv is expected",
				didYouMean(l.nearKey(e.is.Replaces, l.batchCodes())))
		}
	}
}

// checkLotCrops warns of batches of another crop or variety than their lot is.
func (l *loader) checkLotCrops() {
	lots := map[string]*Lot{}
	for e := range alive(l.lots) {
		lots[e.is.Code] = e.is
	}
	for e := range alive(l.sowings) {
		lot, ok := lots[e.is.Lot]
		if ok && (lot.Crop != e.is.Crop || lot.Variety != e.is.Variety) {
			e.problem("other-lot", "lot", fmt.Sprintf("lot %s is %s, this batch %s", quote(lot.Code), quote(lot.Crop+" "+lot.Variety),
				quote(e.is.Crop+" "+e.is.Variety)), "a lot of the batch's crop and variety is expected", "")
		}
	}
}

// hold is what a batch's counts are held against: its cells sown, its trays' cells.
type hold struct {
	sown Maybe[int]
	tray int
}

// hold is that of a batch. A million counts ask for it.
func (l *loader) hold(of *entry[Sowing]) hold {
	if l.holdings == nil {
		l.holdings = make([]hold, len(l.sowings.is))
		for i := range l.sowings.is {
			l.holdings[i] = hold{l.cellsSown(&l.sowings.is[i]), l.trayCells(l.sowings.is[i].Tray)}
		}
	}
	return l.holdings[of.nth]
}

// cellsSown is the cells sown of a batch (rule "Cells sown").
func (l *loader) cellsSown(s *Sowing) Maybe[int] { return CellsSown(*s, l.trayCells(s.Tray)) }

// trayCells is the cells of a tray code, 0 where unknown.
func (l *loader) trayCells(code string) int {
	if l.cellsOf == nil {
		l.cellsOf = map[string]int{}
		for e := range alive(l.trays) {
			l.cellsOf[e.is.Tray] = e.is.Cells
		}
	}
	return l.cellsOf[code]
}
