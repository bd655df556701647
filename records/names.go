package records

import (
	"strings"

	"golang.org/x/text/cases"
	"golang.org/x/text/unicode/norm"
)

// names gives each name of a kind one spelling: the first that was written.
// Names are compared in NFC, without case, surrounding or repeated spaces.
type names struct {
	fold   map[string]string    // as written -> key
	known  map[asWritten]string // as written -> as shown
	shown  map[string]spelling
	warned map[string]bool
}

// spelling is a name as first written, and where.
type spelling struct {
	name    string // as shown
	written string // trimmed
	at      Pos
}

// asWritten is a name of a kind as it stands in a cell.
type asWritten struct{ kind, owner, name string }

// newNames knows no name yet.
func newNames() *names {
	return &names{map[string]string{}, map[asWritten]string{}, map[string]spelling{}, map[string]bool{}}
}

// key is the form in which a name is compared; empty for a blank.
func (n *names) key(name string) string {
	k, ok := n.fold[name]
	if !ok {
		k = cases.Fold().String(norm.NFC.String(strings.Join(strings.Fields(name), " ")))
		k = norm.NFC.String(k)
		n.fold[name] = k
	}
	return k
}

// spelt is a name as it is shown: NFC, trimmed, spaces folded.
func spelt(name string) string {
	return norm.NFC.String(strings.Join(strings.Fields(name), " "))
}

// canonical gives a name the one spelling in which it is shown, and warns once
// of each other spelling.
func (l *loader) canonical(kind, owner, name string, at func() Pos) string {
	w := asWritten{kind, owner, name}
	shown, ok := l.names.known[w]
	if !ok {
		shown = l.firstSpelling(w, at)
		l.names.known[w] = shown
	}
	return shown
}

// firstSpelling is the spelling in which a name was first written, which a name new to
// the book becomes. Each other spelling is warned of once.
func (l *loader) firstSpelling(w asWritten, at func() Pos) string {
	key := l.names.key(w.name)
	if key == "" {
		return ""
	}
	id := w.kind + "\x00" + w.owner + "\x00" + key
	trimmed := norm.NFC.String(strings.TrimSpace(w.name))
	first, ok := l.names.shown[id]
	if !ok {
		l.names.shown[id] = spelling{spelt(w.name), trimmed, at()}
		return spelt(w.name)
	}
	if trimmed != first.written && !l.names.warned[id+"\x00"+trimmed] {
		l.names.warned[id+"\x00"+trimmed] = true
		l.report("spelling", at(), "read "+quote(trimmed), quote(first.written)+", as first written in "+first.at.File+", "+first.at.inWords()+", is expected",
			"both are taken for one "+w.kind)
	}
	return first.name
}
