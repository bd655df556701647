package records

import "unicode"

// excess is what a record is too large in.
type excess int

const (
	fits excess = iota
	tooLong
	tooWide
)

// mostBlank is how many cells a row may have if the last of them are blank: some
// programs save a row as wide as their sheets can be.
const mostBlank = 20_000

// oversize walks over the record at the beginning of a text as far as it is within the
// limits. It returns the first cell that is too long, or one too many, by the byte at
// which that begins.
func oversize(b []byte, sep byte) (cell int, why excess) {
	cells, start, quoted := 1, 0, opens(b, 0)
	for i := 0; i < len(b); i++ {
		c := b[i]
		switch {
		case i-start > mostOfCell:
			return start, tooLong
		case cells > mostCells && c != sep && !unicode.IsSpace(rune(c)):
			return start, tooWide
		case quoted:
			quoted = i == start || c != '"' // a pair of marks inside closes and opens again
		case c == '"' && !opens(b, start):
			return 0, fits // and no CSV, which the reader will say
		case c == '"':
			quoted = true
		case c == '\n':
			return 0, fits
		case c == sep:
			cells++
			start, quoted = i+1, opens(b, i+1)
			if cells > mostBlank {
				return start, tooWide
			}
		}
	}
	return 0, fits
}

// opens reports whether the cell that begins at a byte is quoted.
func opens(b []byte, i int) bool { return i < len(b) && b[i] == '"' }
