package records

import (
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
	name string
	at   Pos
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
