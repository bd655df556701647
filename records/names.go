package records

import (
	"strings"

	"golang.org/x/text/cases"
	"golang.org/x/text/unicode/norm"
)

// names gives each name of a kind one spelling: the first that was written.
// Names are compared in NFC, without case, surrounding or repeated spaces.
// A book may have a hundred thousand, of batches most of all.
type names struct {
	kinds     map[kind]uint32
	known     map[asWritten]int32 // as written -> place among spellings, -1 for a blank
	shown     map[asWritten]int32 // by key, likewise
	warned    map[asWritten]bool
	spellings []spelling
	keys      map[string]string // as looked for -> key

	last   asWritten // that was asked for, and its place among spellings
	lastAt int32
	asked  kind // that was asked for last, and its number
	number uint32
}

// kind is a kind of names, of one owner where they are compared only with his: varieties
// are with those of their crop.
type kind struct{ of, owner string }

// asWritten is a name as it stands in a cell, or its key, with the number of its kind.
type asWritten struct {
	name string
	kind uint32
}

// spelling is a name as first written, and where.
type spelling struct {
	name    string // as shown
	written string // trimmed
	at      inLog
}

// inLog is a line of a log.
type inLog struct {
	*log
	line uint32
}

// pos is that place, of no cell in particular.
func (at inLog) pos() Pos {
	return Pos{File: printable(at.file), Line: int(at.line), Sheet: at.sheet}
}

// newNames knows no name yet.
func newNames() *names {
	return &names{kinds: map[kind]uint32{}, known: map[asWritten]int32{}, shown: map[asWritten]int32{}, warned: map[asWritten]bool{}, keys: map[string]string{}}
}

// asWritten is a name as it stands in a cell.
func (n *names) asWritten(of, owner, name string) asWritten {
	asked := kind{of, owner}
	if asked != n.asked { // row after row names a batch
		k, ok := n.kinds[asked]
		if !ok {
			k = uint32(len(n.kinds))
			n.kinds[asked] = k
		}
		n.asked, n.number = asked, k
	}
	return asWritten{name, n.number}
}

// has reports whether there is such a name of a kind, of no owner.
func (n *names) has(of, name string) bool {
	_, known := n.shown[n.asWritten(of, "", n.key(name))]
	return known
}

// key is the form in which a name is compared; empty for a blank. Names that are compared
// with many others are kept.
func (n *names) key(name string) string {
	k, ok := n.keys[name]
	if !ok {
		k = keyOf(name)
		n.keys[name] = k
	}
	return k
}

// keyOf makes the form in which a name is compared.
func keyOf(name string) string {
	return norm.NFC.String(cases.Fold().String(spelt(name)))
}

// spelt is a name as it is shown: NFC, trimmed, spaces folded.
func spelt(name string) string {
	return norm.NFC.String(strings.Join(strings.Fields(name), " "))
}

// place is the place among spellings of a name that was written before, -1 for a blank;
// many rows name the batch of the row above.
func (n *names) place(w asWritten) (i int32, ok bool) {
	switch {
	case w.name == "":
		return -1, true
	case w == n.last:
		return n.lastAt, true
	}
	if i, ok = n.known[w]; ok {
		n.last, n.lastAt = w, i
	}
	return i, ok
}

// shownAt is how the name at a place among spellings is shown.
func (n *names) shownAt(i int32) string {
	if i < 0 {
		return ""
	}
	return n.spellings[i].name
}

// all lists every name as it is shown, by its place.
func (n *names) all() []string {
	names := make([]string, len(n.spellings))
	for i := range n.spellings {
		names[i] = n.spellings[i].name
	}
	return names
}

// canonical gives a name the one spelling in which it is shown, the place of which it
// returns, and warns once of each other spelling. of is its kind in words, line where it
// stands, at the very cell.
func (l *loader) canonical(w asWritten, of string, line inLog, at func() Pos) int32 {
	if i, ok := l.names.place(w); ok {
		return i
	}
	w.name = strings.Clone(w.name) // not the whole row
	i := l.spelling(w, of, line, at)
	l.names.known[w] = i
	return i
}

// spelling is the place of the spelling in which a name was first written, which a name
// new to the book becomes; -1 for a blank. Each other spelling is warned of once.
func (l *loader) spelling(w asWritten, of string, line inLog, at func() Pos) int32 {
	key := asWritten{keyOf(w.name), w.kind}
	if key.name == "" {
		return -1
	}
	trimmed := norm.NFC.String(strings.TrimSpace(w.name))
	i, ok := l.names.shown[key]
	if !ok {
		i = int32(len(l.names.spellings))
		l.names.shown[key] = i
		l.names.spellings = append(l.names.spellings, spelling{spelt(w.name), trimmed, line})
		return i
	}
	first, other := l.names.spellings[i], asWritten{trimmed, w.kind}
	if trimmed != first.written && !l.names.warned[other] {
		l.names.warned[other] = true
		l.report("spelling", at(), "read "+quote(trimmed), quote(first.written)+", as first written in "+first.at.pos().File+", "+first.at.pos().inWords()+", is expected",
			"both are taken for one "+of)
	}
	return i
}
