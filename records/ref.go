package records

// Ref stands for a batch's code in a log of very many rows: the place of the code among
// those of its book, from 1. 0 is none.
type Ref uint32

// Said is what few counts have: why seedlings were lost, and a note.
type Said struct{ Cause, Note string }

// told is what rows name by its place. They hold no pointer then, and a million of them
// are not looked through each time that memory is cleared.
type told struct {
	codes []string
	said  []Said
	refs  map[string]Ref // of codes; none in a book that was read
}

// Code is the code that a row names; empty where it names none.
func (b *Book) Code(r Ref) string {
	if r == 0 {
		return ""
	}
	return b.told.codes[r-1]
}

// Ref is how a row names a code. It is for books made in Go: among the codes of one that was
// read are names of all kinds, and the same one may stand for a crop too. Such rows are
// compared by Code.
func (b *Book) Ref(code string) Ref {
	if code == "" {
		return 0
	}
	if b.told == nil {
		b.told = &told{}
	}
	t := b.told
	if t.refs == nil {
		t.refs = make(map[string]Ref, len(t.codes))
		for i, c := range t.codes {
			t.refs[c] = Ref(i + 1)
		}
	}
	if _, ok := t.refs[code]; !ok {
		t.codes = append(t.codes, code)
		t.refs[code] = Ref(len(t.codes))
	}
	return t.refs[code]
}

// Said is what a count says in words.
func (b *Book) Said(c *Count) Said {
	if c.said == 0 {
		return Said{}
	}
	return b.told.said[c.said-1]
}

// Say writes words to a count of the book.
func (b *Book) Say(c *Count, s Said) {
	if b.told == nil {
		b.told = &told{}
	}
	b.told.said = append(b.told.said, s)
	c.said = uint32(len(b.told.said))
}
