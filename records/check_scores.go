package records

import "fmt"

// checkMarks reports marks that are not on the scale of 1 to 5.
func (l *loader) checkMarks() {
	for e := range alive(l.scores) {
		if m := e.is.Score; m.Known && (m.Value < 1 || m.Value > 5) {
			e.misread("score-range", "score", "a mark from 1 to 5 is expected", "")
		}
	}
}

// checkLookForms reports looks that are of no form, or of several: plants looked at and
// usable, plants at each score, or a mark alone.
func (l *loader) checkLookForms() {
	for e := range alive(l.scores) {
		scored, plants := false, 0
		for _, n := range e.is.S {
			scored = scored || n.Known
			plants += int(n.Value)
		}
		if col, found := lookFault(e.is, scored, plants); found != "" {
			e.problem("look-form", col, found, "looked and usable, or s1 to s5, or score are expected", "")
		}
	}
}

// lookFault says what is wrong with the form of a look, and in which column.
func lookFault(s *Score, scored bool, plants int) (col, found string) {
	looked, usable := s.Looked.Known, s.Usable.Known
	switch {
	case scored && (looked || usable):
		return "looked", "both looked or usable and s1 to s5 are written"
	case looked && !usable:
		return "usable", "looked is written, usable is not"
	case usable && !looked:
		return "looked", "usable is written, looked is not"
	case scored && plants == 0:
		return "s1", "s1 to s5 add up to no plant"
	case !scored && !looked && !s.Score.Known:
		return "looked", "neither looked and usable nor s1 to s5 nor score is written"
	}
	return "", ""
}

// checkUsable reports more plants usable than looked at.
func (l *loader) checkUsable() {
	for e := range alive(l.scores) {
		if e.is.Usable.Known && e.is.Usable.Value > e.is.Looked.Value {
			e.problem("usable-above-looked", "usable", fmt.Sprintf("%d usable of %d looked at", e.is.Usable.Value, e.is.Looked.Value),
				"no more than the plants looked at are expected", "")
		}
	}
}

// checkLooked reports more plants looked at than cells were sown of the batch: a cell
// gives one plant.
func (l *loader) checkLooked() {
	for e := range alive(l.scores) {
		s := l.batchOf(e.is.ref)
		if s == nil {
			continue
		}
		col, plants := "looked", int(e.is.Looked.Value)
		for i, n := range e.is.S {
			if plants += int(n.Value); n.Known && col == "looked" {
				col = "s" + itoa(i+1)
			}
		}
		if cells := l.cellsSown(s.is); cells.Known && plants > cells.Value {
			e.problem("looked-above-sown", col, fmt.Sprintf("%d plants looked at of %d cells sown", plants, cells.Value),
				"no more plants than cells are expected", "")
		}
	}
}
