package records

import (
	"fmt"
	"strings"

	"golang.org/x/text/cases"
	"golang.org/x/text/unicode/norm"
)

// names gives each name of a kind one spelling: the first that was written.
// Names are compared in NFC, without case, surrounding or repeated spaces.
type names struct {
	fold   map[string]string // as written -> key
	shown  map[string]spelling
	warned map[string]bool
}

// spelling is a name as first written, and where.
type spelling struct {
	name    string // as shown
	written string // trimmed
	at      Pos
}

func newNames() *names {
	return &names{map[string]string{}, map[string]spelling{}, map[string]bool{}}
}

// key is the form in which a name is compared; empty for a blank.
func (n *names) key(written string) string {
	k, ok := n.fold[written]
	if !ok {
		k = cases.Fold().String(norm.NFC.String(strings.Join(strings.Fields(written), " ")))
		k = norm.NFC.String(k)
		n.fold[written] = k
	}
	return k
}

// spelt is a name as it is shown: NFC, trimmed, spaces folded.
func spelt(written string) string {
	return norm.NFC.String(strings.Join(strings.Fields(written), " "))
}

// canonical gives a name the one spelling in which it is shown, and warns once
// of each other spelling.
func (l *loader) canonical(kind, owner, written string, at func() Pos) string {
	key := l.names.key(written)
	if key == "" {
		return ""
	}
	id := kind + "\x00" + owner + "\x00" + key
	trimmed := norm.NFC.String(strings.TrimSpace(written))
	first, ok := l.names.shown[id]
	if !ok {
		l.names.shown[id] = spelling{spelt(written), trimmed, at()}
		return spelt(written)
	}
	if trimmed != first.written && !l.names.warned[id+"\x00"+trimmed] {
		l.names.warned[id+"\x00"+trimmed] = true
		l.report("spelling", at(), "read "+quote(trimmed), fmt.Sprintf("%s, as first written in %s, line %d, is expected", quote(first.written), first.at.File, first.at.Line),
			"both are taken for one "+kind)
	}
	return first.name
}
