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
		for _, w := range log.words {
			log.checkWords(w)
		}
	}
	l.checkNamesBeside()
	l.checkLoneEmpty()
	l.checkSurplus()
	l.checkMarkBeside()
}

// shifted warns of a cell that seems to belong into the column on its left.
func (r row) shifted(col, found, remedy string) {
	r.doubt("shifted", col, found, "each cell below its own column's name is expected", remedy)
}

// words is a column of words and the rows with something in it.
type words struct {
	col  string
	rows []worded
}

// worded is a row with something in a column of words; bare where that is a number, a day
// or an answer.
type worded struct {
	nth  int32
	bare bool
}

// noticeWords keeps, while the row is read, what its columns of words hold.
func (r row) noticeWords() {
	for i := range r.words {
		w := &r.words[i]
		if s := strings.ToLower(r.text(w.col)); s != "" {
			w.rows = append(w.rows, worded{r.nth, s == "yes" || s == "no" || isNumber(s) || isDay(s)})
		}
	}
}

// checkWords warns of numbers, days and answers in a column of words, unless they are
// a habit of it: more than a tenth of what is written there.
func (l *log) checkWords(in words) {
	var bare []row
	filled := 0
	for _, w := range in.rows {
		r := row{l, w.nth}
		if r.isOut() {
			continue
		}
		filled++
		if w.bare {
			bare = append(bare, r)
		}
	}
	if len(bare) > 1+filled/10 {
		return
	}
	for _, r := range bare {
		r.shifted(in.col, in.col+" reads "+quote(r.text(in.col)), "has the cell slipped to the right?")
	}
}

// slip is a column of names and, to its left, the one into which they may belong.
type slip struct{ left, col, kind string }

// namesBeside are columns in which may stand, by a slip, a name that belongs into the
// column to the left.
var namesBeside = map[string]slip{
	"costs.csv": {"tray", "note", "tray"}, "counts.csv": {"cause", "note", "cause"}, "sowings.csv": {"from", "chamber", "batch"},
}

// checkNamesBeside warns of names in a column that stand elsewhere in the column on its
// left, where that is blank: a tray's code among notes, a batch among chambers.
func (l *loader) checkNamesBeside() {
	for _, log := range l.logs {
		c := log.slips
		for _, i := range log.beside {
			r := row{log, i}
			if !r.isOut() && l.names.has(c.kind, l.nameBeside(r, c.col)) {
				r.shifted(c.col, c.col+" reads "+quote(r.text(c.col))+", which is a "+c.kind, "does it belong into "+c.left+"?")
			}
		}
	}
}

// nameBeside is what stands in a column, without a look into the file where it was read.
func (l *loader) nameBeside(r row, col string) string {
	if r.log == l.sowings.log {
		return l.sowings.is[r.nth].Chamber
	}
	return r.text(col)
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
	if !slices.ContainsFunc(l.counts.is, func(c Count) bool { return c.Empty.Known }) {
		return
	}
	today, _ := l.latest()
	emerged, empty := make([]int, l.refs()), make([]int, l.refs()) // counts of each batch; of all under 0
	for e := range alive(l.counts) {
		of := emerged
		if e.is.Empty.Known {
			of = empty
		}
		of[e.is.Batch]++
		of[0]++
	}
	l.series(func(s []entry[Count]) {
		e := s[len(s)-1]
		n, looked, code := e.is.Empty, l.looked(e.is), e.is.Batch
		lone := empty[code] == 1 && emerged[code] > 0 || emerged[code] == 0 && emerged[0] >= otherForm*empty[0]
		if n.Known && lone && looked.Known && 2*int(n.Value) > looked.Value && int(today-e.is.Date) >= lastCount {
			e.shifted("empty", itoa(int(n.Value))+" of "+itoa(looked.Value)+" cells empty, where other counts are by those emerged", "does it belong into emerged?")
		}
	})
}

// checkSurplus warns of plants left over of a batch of which none were set out, here or
// in out.csv.
func (l *loader) checkSurplus() {
	out := make([]bool, l.refs())
	for e := range alive(l.outs) {
		out[e.is.ref] = true
	}
	for e := range alive(l.sowings) {
		if e.is.Surplus.Value > 0 && !e.is.PlantsOut.Known && !out[e.is.ref] {
			e.shifted("surplus", "surplus "+itoa(e.is.Surplus.Value)+" without plants_out", "does it belong into plants_out?")
		}
	}
}

// checkMarkBeside warns of a mark beside plants at each score: it is then not used.
func (l *loader) checkMarkBeside() {
	for e := range alive(l.scores) {
		scored := slices.ContainsFunc(e.is.S[:], func(n Maybe[int32]) bool { return n.Known })
		if scored && e.is.Score.Known {
			e.shifted("score", "a mark of "+itoa(int(e.is.Score.Value))+" beside s1 to s5", "does it belong into s5?")
		}
	}
}
