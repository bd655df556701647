package records

import (
	"slices"
	"strings"
)

var headerMarks = strings.NewReplacer(" ", "", "_", "", "-", "", "\n", "", "\u00a0", "")

// foldHeader brings a column's name into the form in which it is compared:
// without case, spaces, underscores and hyphens.
func foldHeader(s string) string {
	return headerMarks.Replace(strings.ToLower(strings.TrimSpace(s)))
}

// canonicalHeader returns the contract's spelling of a column, empty if the
// log has no such column.
func canonicalHeader(s string, log Log) string {
	folded := foldHeader(s)
	for _, c := range log.Columns {
		if foldHeader(c.Name) == folded {
			return c.Name
		}
	}
	return ""
}

// readHeader finds the contract's columns; false where a required one is
// missing or a name stands twice.
func (l *log) readHeader() bool {
	l.at = map[string]int{}
	ok := true
	for i, written := range l.head.fields {
		name := canonicalHeader(written, l.Log)
		if first, twice := l.at[name]; twice && name != "" {
			l.report("double-column", l.place(&l.head, i), "column "+quote(name)+" stands twice, first in column "+columnName(first),
				"one column of a name is expected", "rename or delete one of them")
			ok, name = false, ""
		}
		l.header = append(l.header, name)
		if name != "" {
			l.at[name] = i
		}
	}
	l.nearColumns()
	if !l.missingColumns() || l.missingChoice() {
		return false
	}
	return ok
}

// nearColumns warns of columns whose name is nearly one of the contract's.
func (l *log) nearColumns() {
	for i, written := range l.head.fields {
		if canonicalHeader(written, l.Log) != "" || strings.TrimSpace(written) == "" {
			continue
		}
		if name := l.nearColumn(written); name != "" {
			l.report("near-column", l.place(&l.head, i), "column "+quote(written)+" is not read",
				"a name of the format is expected", "did you mean "+quote(name)+"?")
		}
	}
}

// nearColumn is the column not in the header that a name is nearly.
func (l *log) nearColumn(written string) string {
	var free []string
	for _, c := range l.Columns {
		if !l.has(c.Name) && !c.Required { // a required one that is missing is an error that says as much
			free = append(free, c.Name)
		}
	}
	return nearest(foldHeader(written), free, foldHeader)
}

// missingColumns reports each required column that is missing, with the column that
// may have been meant; true where none is.
func (l *log) missingColumns() bool {
	ok := true
	for _, name := range requiredOf(l.Log) {
		if l.has(name) {
			continue
		}
		remedy := "write " + quote(name) + " above the column that holds " + l.Columns[l.column(name)].What
		for _, written := range l.head.fields {
			if canonicalHeader(written, l.Log) == "" && nearest(foldHeader(written), []string{name}, foldHeader) != "" {
				remedy = "did you mean " + quote(name) + " where it says " + quote(written) + "?"
			}
		}
		at := l.place(&l.head, 0)
		at.Column, at.Cell = 0, ""
		l.report("missing-column", at, "no column "+quote(name), "the columns "+strings.Join(requiredOf(l.Log), ", ")+" are expected", remedy)
		ok = false
	}
	return ok
}

// oneOfColumns are the columns of which a log needs any: without them every row
// would be left out for the same reason.
var oneOfColumns = map[string][]string{
	"counts.csv": {"emerged", "empty"},
	"scores.csv": {"looked", "s1", "s2", "s3", "s4", "s5", "score"},
	"costs.csv":  {"amount", "hours"},
	"book.csv":   {"value"},
}

// missingChoice reports that a log has none of the columns of which it needs one.
func (l *log) missingChoice() bool {
	choice := oneOfColumns[l.Name]
	if len(choice) == 0 || slices.ContainsFunc(choice, l.has) {
		return false
	}
	at := l.place(&l.head, 0)
	at.Column, at.Cell = 0, ""
	what, _, _ := strings.Cut(l.Columns[l.column(choice[0])].What, ";")
	l.report("missing-column", at, "none of the columns "+strings.Join(choice, ", "), "one of them is expected",
		"write "+quote(choice[0])+" above the column that holds "+what)
	return true
}

// columnName is a spreadsheet's name of a column from 0.
func columnName(col int) string {
	return strings.TrimRight(cellName(col, 1), "1")
}
