package records

import (
	"slices"
	"strings"
)

// open reads the header of a log; false where no row of it can be read.
func (l *log) open() bool {
	head, ok := l.src.next()
	if !ok || len(l.src.faults()) > 0 {
		l.noHeader()
		return false
	}
	l.head = head
	if len(head.fields) > mostCells { // the rest is blank: the reader sees to it
		l.head.fields = head.fields[:mostCells]
	}
	return !l.titled() && l.readHeader()
}

// noHeader reports a log of which not even the header can be read.
func (l *log) noHeader() {
	if faults := l.src.faults(); len(faults) > 0 {
		l.reportFaults()
		l.report("header", Pos{File: l.file, Line: faults[0].Line, Sheet: faults[0].Sheet}, "the header cannot be read", "a first line with the columns' names is expected", "")
		return
	}
	l.report("header", Pos{File: l.file}, "the file is empty", "a first line with the columns' names is expected",
		"write "+strings.Join(requiredOf(l.Log), ",")+" into the first line, or delete the file")
}

// titleLines is how far down the columns' names are looked for below a title.
const titleLines = 5

// titled reports that the columns' names stand below a title. Rows that are read
// looking for them are not missed: a log without its columns is not read at all.
func (l *log) titled() bool {
	if len(l.unmet(l.head.fields)) == 0 {
		return false
	}
	here := l.ours(l.head.fields)
	for {
		rec, ok := l.src.next()
		if !ok || int(rec.Row) > titleLines {
			return false
		}
		fields := rec.fields
		if len(fields) == 1 { // the title tells nothing of what parts the cells
			fields = strings.Split(fields[0], string(separator(fields[0], l.Log)))
		}
		if n := l.ours(fields); n > here && n > 1 {
			at := l.src.place(rec.At, 0)
			l.report("header", at, "the columns' names stand in "+at.inWords(), "", "delete what stands above")
			return true
		}
	}
}

// unmet lists the required columns that a header lacks.
func (l Log) unmet(header []string) []string {
	return slices.DeleteFunc(requiredOf(l), func(name string) bool {
		return slices.ContainsFunc(header, func(written string) bool { return canonicalHeader(written, l) == name })
	})
}

// ours counts the cells of a row that are names of columns.
func (l Log) ours(fields []string) int {
	n := 0
	for _, f := range fields {
		if canonicalHeader(f, l) != "" {
			n++
		}
	}
	return n
}

// readHeader finds the contract's columns; false where a required one is
// missing or a name stands twice.
func (l *log) readHeader() bool {
	ok := true
	for i, written := range l.head.fields {
		name := canonicalHeader(written, l.Log)
		if first := l.index(name); first >= 0 && name != "" {
			l.report("double-column", l.headCell(i), "column "+quote(name)+" stands twice, first in column "+columnName(first),
				"one column of a name is expected", "rename or delete one of them")
			ok, name = false, ""
		}
		ok = l.sameUnit(i, written) && ok
		l.header = append(l.header, name)
		if strings.TrimSpace(written) == "" {
			l.unnamed = append(l.unnamed, i)
		}
	}
	l.unreadColumns()
	if !l.missingColumns() || l.missingChoice() {
		return false
	}
	return ok
}

// unreadColumns notes the columns that are not ours, and warns of those whose name
// holds, means or is nearly one that is missing.
func (l *log) unreadColumns() {
	for i, written := range l.head.fields {
		if canonicalHeader(written, l.Log) != "" || strings.TrimSpace(written) == "" {
			continue
		}
		l.unread = append(l.unread, strings.TrimSpace(written))
		if name := l.meant(written, l.free(false)); name != "" {
			l.report("near-column", l.headCell(i), "column "+quote(written)+" is not read",
				"a name of the format is expected", "did you mean "+quote(name)+"?")
		}
	}
}

// free lists the columns that the header lacks, the required ones or the others.
func (l *log) free(required bool) []string {
	var free []string
	for _, c := range l.Columns {
		if !l.has(c.Name) && c.Required == required {
			free = append(free, c.Name)
		}
	}
	return free
}

// missingColumns reports each required column that is missing, with the column that
// may have been meant; true where none is.
func (l *log) missingColumns() bool {
	missing := l.free(true)
	for _, name := range missing {
		remedy := "write " + quote(name) + " above the column that holds " + l.Columns[l.column(name)].What
		for _, written := range l.head.fields {
			if canonicalHeader(written, l.Log) == "" && l.meant(written, []string{name}) != "" {
				remedy = "did you mean " + quote(name) + " where it says " + quote(written) + "?"
			}
		}
		l.report("missing-column", l.headLine(), "no column "+quote(name), "the columns "+strings.Join(requiredOf(l.Log), ", ")+" are expected", remedy)
	}
	return len(missing) == 0
}

// headLine is where the header stands, of no cell in particular.
func (l *log) headLine() Pos {
	at := l.headCell(0)
	at.Column, at.Cell = 0, ""
	return at
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
	what, _, _ := strings.Cut(l.Columns[l.column(choice[0])].What, ";")
	l.report("missing-column", l.headLine(), "none of the columns "+strings.Join(choice, ", "), "one of them is expected",
		"write "+quote(choice[0])+" above the column that holds "+what)
	return true
}

// columnName is a spreadsheet's name of a column from 0.
func columnName(col int) string {
	return strings.TrimRight(cellName(col, 1), "1")
}
