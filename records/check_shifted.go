package records

import (
	"slices"
	"strings"
)

// wordColumns are the columns of words, log by log, in which a number or a yes is what
// belongs into the column to the left.
var wordColumns = map[string][]string{
	"sowings.csv": {"note"}, "out.csv": {"note"}, "counts.csv": {"cause", "note"}, "scores.csv": {"note"}, "trays.csv": {"note"},
	"lots.csv": {"supplier", "note"}, "costs.csv": {"unit", "note"}, "house.csv": {"note"}, "wishes.csv": {"note"}, "changes.csv": {"note"},
}

// checkShifted warns of cells that seem to have slipped into the column on their right.
func (l *loader) checkShifted() {
	for _, log := range l.logs {
		for _, col := range wordColumns[log.Name] {
			log.checkWords(col)
		}
	}
	l.checkNamesBeside()
	l.checkLoneEmpty()
	l.checkSurplus()
	l.checkMarkBeside()
}

// shifted warns of a cell that seems to belong into the column on its left.
func (r *row) shifted(col, found, remedy string) {
	r.doubt("shifted", col, found, "each cell below its own column's name is expected", remedy)
}

// checkWords warns of numbers, days and answers in a column of words, unless they are
// a habit of it: more than a tenth of what is written there.
func (l *log) checkWords(col string) {
	var bare []*row
	filled := 0
	for i := range l.rows {
		r := &l.rows[i]
		s := strings.ToLower(r.text(col))
		if r.out || s == "" {
			continue
		}
		filled++
		if s == "yes" || s == "no" || isNumber(s) || isDay(s) {
			bare = append(bare, r)
		}
	}
	if len(bare) > 1+filled/10 {
		return
	}
	for _, r := range bare {
		r.shifted(col, col+" reads "+quote(r.text(col)), "has the cell slipped to the right?")
	}
}

// checkNamesBeside warns of names in a column that stand elsewhere in the column on its
// left, where that is blank: a tray's code among notes, a batch among chambers.
func (l *loader) checkNamesBeside() {
	for _, c := range []struct{ log, left, col, kind string }{
		{"costs.csv", "tray", "note", "tray"}, {"counts.csv", "cause", "note", "cause"}, {"sowings.csv", "from", "chamber", "batch"},
	} {
		at := slices.IndexFunc(l.logs, func(read *log) bool { return read.Name == c.log })
		if at < 0 || !l.logs[at].has(c.left) || !l.logs[at].has(c.col) {
			continue
		}
		for i := range l.logs[at].rows {
			r := &l.logs[at].rows[i]
			s := r.text(c.col)
			if r.out || s == "" || r.text(c.left) != "" {
				continue
			}
			if _, known := l.names.shown[c.kind+"\x00\x00"+l.names.key(s)]; known {
				r.shifted(c.col, c.col+" reads "+quote(s)+", which is a "+c.kind, "does it belong into "+c.left+"?")
			}
		}
	}
}

// otherForm is how many counts by emerged cells a log has for each by empty ones until
// one by empty cells is odd by itself.
const otherForm = 10

// lastCount is how many days after a count no other is waited for.
const lastCount = 14

// checkLoneEmpty warns of a batch's last count if it is by empty cells where the others
// of the batch, or nearly all of the log, are by those emerged, and is of more than half
// the cells: at the end few are empty, and those are counted. An earlier count that is
// the wrong way round falls, or is fallen below, which is told as that; and a count of
// these days is perhaps not the last.
func (l *loader) checkLoneEmpty() {
	today, _ := latest(l.events())
	emerged, empty := map[string]int{}, map[string]int{} // counts of each batch; of all under ""
	for e := range alive(l.counts) {
		of := emerged
		if e.is.Empty.Known {
			of = empty
		}
		of[e.is.Batch]++
		of[""]++
	}
	for _, s := range l.series() {
		e := s[len(s)-1]
		n, looked, code := e.is.Empty, l.looked(e.is), e.is.Batch
		lone := empty[code] == 1 && emerged[code] > 0 || emerged[code] == 0 && emerged[""] >= otherForm*empty[""]
		if n.Known && lone && looked.Known && 2*n.Value > looked.Value && int(today-e.is.Date) >= lastCount {
			e.shifted("empty", itoa(n.Value)+" of "+itoa(looked.Value)+" cells empty, where other counts are by those emerged", "does it belong into emerged?")
		}
	}
}

// checkSurplus warns of plants left over of a batch of which none were set out, here or
// in out.csv.
func (l *loader) checkSurplus() {
	out := map[string]bool{}
	for e := range alive(l.outs) {
		out[e.is.Batch] = true
	}
	for e := range alive(l.sowings) {
		if e.is.Surplus.Value > 0 && !e.is.PlantsOut.Known && !out[e.is.Code] {
			e.shifted("surplus", "surplus "+itoa(e.is.Surplus.Value)+" without plants_out", "does it belong into plants_out?")
		}
	}
}

// checkMarkBeside warns of a mark beside plants at each score: it is then not used.
func (l *loader) checkMarkBeside() {
	for e := range alive(l.scores) {
		scored := slices.ContainsFunc(e.is.S[:], func(n Maybe[int]) bool { return n.Known })
		if scored && e.is.Score.Known {
			e.shifted("score", "a mark of "+itoa(e.is.Score.Value)+" beside s1 to s5", "does it belong into s5?")
		}
	}
}
