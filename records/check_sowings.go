package records

import (
	"fmt"
	"strings"
)

// batch finds a sowing by its code: its row, left out or not.
func (l *loader) batch(code string) *entry[Sowing] {
	if l.batches == nil {
		l.batches = map[string]*entry[Sowing]{}
		for i := range l.sowings {
			e := &l.sowings[i]
			if old, ok := l.batches[e.is.Code]; e.is.Code != "" && (!ok || old.out && !e.out) {
				l.batches[e.is.Code] = e
			}
		}
	}
	return l.batches[code]
}

// lostBatches reads the batch's code out of rows that are no CSV, so that what
// belongs to such a batch can go with it.
func (l *loader) lostBatches() {
	l.lost = map[string]bool{}
	if !l.present["sowings.csv"] {
		return
	}
	log := l.logs[len(l.logs)-1]
	for _, f := range log.scan.faults {
		cells := strings.Split(string(log.text.lineText(f.line)), string(log.text.sep))
		if i := log.at["batch"]; i < len(cells) {
			code := strings.Trim(cells[i], `" `)
			l.lost[l.canonical("batch", "", code, func() Pos { return Pos{File: log.file, Line: f.line} })] = true
		}
	}
	delete(l.lost, "")
}

// batchCodes lists every batch's code.
func (l *loader) batchCodes() []string {
	if l.codes == nil {
		l.codes = codes(l.sowings, func(s Sowing) string { return s.Code })
	}
	return l.codes
}

// checkSowingDates reports days of a batch before its sowing.
func (l *loader) checkSowingDates() {
	for e := range alive(l.sowings) {
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
			if from := l.batch(e.is.From); l.lost[e.is.From] || from != nil && from.out {
				e.out, again = true, true
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
	lots := map[string]Lot{}
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

// cellsSown is the cells sown of a batch (rule "Cells sown").
func (l *loader) cellsSown(s Sowing) Maybe[int] { return CellsSown(s, l.trayCells(s.Tray)) }

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
