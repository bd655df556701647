package records

import (
	"cmp"
	"maps"
	"slices"
)

// mostOfAKind is how many findings of one check in one log are told: where there are more,
// it is not the single cell that is wrong, and telling takes memory without end.
const mostOfAKind = 10_000

// finding is what findings of one kind have in common.
type finding struct{ file, check string }

// untold counts a finding, and reports whether it is one that is not told any more. What
// repeats a cost is always told: rows that are left out are counted by it.
func (l *loader) untold(k finding) bool {
	l.told[k]++
	return l.told[k] > mostOfAKind && k.check != "repeats"
}

// enough counts a finding of which so many were told that its place need not be found.
func (l *log) enough(check string) bool {
	k := finding{printable(l.file), check}
	return l.told[k] >= mostOfAKind && l.loader.untold(k)
}

// reportMore says how many findings were not told. They are of the same severity: their
// rows are left out, or used, as those of the others.
func (l *loader) reportMore() {
	kinds := slices.SortedFunc(maps.Keys(l.told), func(a, b finding) int { return cmp.Or(cmp.Compare(a.file, b.file), cmp.Compare(a.check, b.check)) })
	for _, k := range kinds {
		if n := l.told[k]; n > mostOfAKind && k.check != "repeats" {
			delete(l.told, k)
			l.report(k.check, Pos{File: k.file}, grouped(n)+" cells or rows have this mistake, of which the first "+grouped(mostOfAKind)+" are listed", "a log of this kind is expected", "is this the right file?")
			l.problems[len(l.problems)-1].More = n - mostOfAKind - 1 // it stands for one itself
		}
	}
}

// grouped writes a count with a comma before each three digits.
func grouped(n int) string {
	s := itoa(n)
	for i := len(s) - 3; i > 0; i -= 3 {
		s = s[:i] + "," + s[i:]
	}
	return s
}
