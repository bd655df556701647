package templates

import (
	"traybook/records"
	"traybook/report"
)

// What a story tells of the rows of the logs, one row a line.

// countWords tells the counts that are used.
func (t *teller) countWords(b *report.Record) {
	t.lineList(len(b.Counts.Rows), func(i int) {
		c := &b.Counts.Rows[i]
		t.countLine(b, c, t.r.Book.Said(c))
	})
}

// countLine is one count: day, tray, what was up or empty, what was lost.
func (w *pen) countLine(b *report.Record, c *records.Count, said records.Said) {
	w.put("day ")
	w.whole(int(c.Date - b.Sown))
	if c.Tray.Known {
		w.put(", tray ")
		w.whole(int(c.Tray.Value))
	}
	w.counted(c)
	if c.Lost.Known && c.Lost.Value > 0 {
		w.put("; ")
		w.whole(int(c.Lost.Value))
		w.put(" lost since")
	}
	if cause := said.Cause; cause != "" {
		w.put(" (")
		w.name(cause)
		w.put(")")
	}
	w.remark(said.Note)
}

// counted is what was up or empty of how many cells.
func (w *pen) counted(c *records.Count) {
	switch {
	case c.Emerged.Known:
		w.put(": ")
		w.whole(int(c.Emerged.Value))
		w.put(" up")
	case c.Empty.Known:
		w.put(": ")
		w.whole(int(c.Empty.Value))
		w.put(" empty")
	default:
		return
	}
	if c.Cells.Known {
		w.put(" of ")
		w.plural(float64(c.Cells.Value), "cell", "cells")
	}
}

// remark is the note of a row, at the end of its line.
func (w *pen) remark(note string) {
	if note != "" {
		w.put(" ")
		w.note(note)
	}
}

// countRemark says why a batch's counts tell nothing of what came up.
func (t *teller) countRemark(b *report.Record) {
	switch {
	case b.Early:
		t.put("Its last count came too early to stand for the batch.")
	case b.FromSeed && !b.Looked.Known:
		t.put("No count.")
	}
}

// lookWords tells the looks at a batch's quality.
func (t *teller) lookWords(b *report.Record) {
	t.lineList(len(b.Looks), func(i int) { t.lookLine(b, b.Looks[i]) })
}

// lookLine is one look: day, how late, and how many were fit, in whichever way it was
// written.
func (w *pen) lookLine(b *report.Record, s *records.Score) {
	w.put("day ")
	w.whole(int(s.Date - b.Sown))
	w.put(": ")
	switch {
	case s.Looked.Known && s.Usable.Known:
		w.whole(int(s.Usable.Value))
		w.put(" of ")
		w.whole(int(s.Looked.Value))
		w.put(" fit")
	case s.Score.Known:
		w.put("marked ")
		w.whole(int(s.Score.Value))
		w.put(" overall")
	default:
		w.scores(s)
	}
	w.remark(s.Note)
}

// scores writes the plants at each score: 2 at 1, 7 at 3.
func (w *pen) scores(s *records.Score) {
	between := ""
	for i, n := range s.S {
		if n.Known && n.Value > 0 {
			w.put(between)
			w.whole(int(n.Value))
			w.put(" at ")
			w.whole(i + 1)
			between = ", "
		}
	}
}

// outWords tells what left the house, from sowings.csv or from out.csv.
func (t *teller) outWords(b *report.Record) {
	outs, first := t.outs.Of(b.Nth), 0
	if b.SetOut.Known() || b.PlantsOut.Known {
		first = 1
	}
	t.lineList(first+len(outs), func(i int) {
		if i < first {
			t.setOutLine(b)
		} else {
			t.outLine(outs[i-first])
		}
	})
}

// setOutLine is what sowings.csv tells of setting out.
func (w *pen) setOutLine(b *report.Record) {
	w.put("set out on ")
	w.date(b.SetOut)
	if b.PlantsOut.Known {
		w.put(": ")
		w.plural(float64(b.PlantsOut.Value), "plant", "plants")
	}
	if b.Surplus.Known {
		w.put("; ")
		w.whole(b.Surplus.Value)
		w.put(" left over")
	}
}

// outLine is one row of out.csv.
func (t *teller) outLine(o *records.Out) {
	w := t.pen
	w.date(o.Date)
	w.put(": ")
	w.plural(float64(o.Plants), "plant", "plants")
	w.put(", ")
	w.text(string(o.To))
	if o.Money.Known {
		w.put(", for ")
		w.amount(t.money.AppendSum, o.Money.Value)
	}
	if o.Last {
		w.put("; the batch is cleared")
	}
	w.remark(o.Note)
}
