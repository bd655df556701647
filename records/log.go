package records

import (
	"fmt"
	"slices"
	"strings"

	"github.com/gocarina/gocsv"
)

// log is one file while it is read and checked.
type log struct {
	Log
	*loader
	file     string // its name as found
	src      source
	sheet    bool     // it is a workbook's, with typed cells
	header   []string // column names in the file's order; empty: none of ours
	required []string // columns without which no row can be read
	head     record
	unread   []string // names of the columns that are not ours
	unnamed  []int    // columns without a name
	dates    dateOrder
	untold   int     // rows with a date of unknown order
	first    Problem // the first of them

	now   row      // the row that is being read, and its cells
	rec   record   // as found
	cells []string // as wide as the header
	ahead []record // rows that gocsv was given and did not hand back yet

	// What is kept of each row, by its number.
	flags []state
	spots []At     // none as long as row after row stands in a line of its own
	sums  []uint64 // of all that stands in it, cell for cell; none where no two are alike
	// Rows that few checks look at, so that these need not look at all.
	words  []words // of each column of words, those with something in it
	slips  slip
	beside []int32 // with a name in a column beside a blank one
	lined  []int32 // with a cell of several lines
}

// state is what was found of a row.
type state uint8

const (
	out   state = 1 << iota // left out of every figure
	vague                   // a date of it has no known order
)

// row is one row of a log, by its number from 0.
type row struct {
	*log
	nth int32
}

// isOut reports whether the row is left out; leaveOut leaves it out.
func (r row) isOut() bool { return r.flags[r.nth]&out > 0 }
func (r row) leaveOut()   { r.flags[r.nth] |= out }

// spot is where the row stands.
func (r row) spot() At {
	if r.spots == nil {
		return below(r.nth)
	}
	return r.spots[r.nth]
}

// below is where a row stands if each, like the header, has a line of its own.
func below(nth int32) At { return At{uint32(nth) + 2, uint32(nth) + 2} }

// put keeps where the next row stands.
func (l *log) put(at At) {
	nth := int32(len(l.flags))
	l.flags = append(l.flags, 0)
	if l.spots == nil && at == below(nth) {
		return
	}
	if l.spots == nil {
		l.spots = make([]At, 0, cap(l.flags))
		for i := range nth {
			l.spots = append(l.spots, below(i))
		}
	}
	l.spots = append(l.spots, at)
}

// found is the row as it stands in the file.
func (r row) found() record {
	if r.nth == r.now.nth && r.cells != nil {
		return r.rec
	}
	return r.src.again(r.spot())
}

// field is the text of the i-th column, empty where the row is shorter.
func (r row) field(i int) string {
	fields := r.cells
	if r.nth != r.now.nth || fields == nil {
		fields = r.found().fields
	}
	if i >= len(fields) {
		return ""
	}
	return fields[i]
}

// cells are those of one row. gocsv hands them over as text, in the order of the header;
// what they mean is read by the functions of cell.go.
type cells struct {
	Of []string
}

// UnmarshalCSVWithFields takes the next cell of the row.
func (c *cells) UnmarshalCSVWithFields(_, value string) error {
	if c.Of == nil {
		c.Of = make([]string, 0, 12)
	}
	c.Of = append(c.Of, value)
	return nil
}

// rowsAhead is how many rows gocsv is given at a time: few enough to stay in the
// processor's memory, and many enough that its own beginning does not count.
const rowsAhead = 256

// ReadAll gives gocsv the header and the next rows, each as wide as the header.
func (l *log) ReadAll() ([][]string, error) {
	all := append(make([][]string, 0, rowsAhead+1), l.header)
	for len(all) <= rowsAhead {
		fields, err := l.Read()
		if err != nil {
			break
		}
		all = append(all, fields)
	}
	return all, nil
}

// Read gives the next row, padded or trimmed to the header.
func (l *log) Read() ([]string, error) {
	rec, ok := l.src.next()
	if !ok {
		return nil, errEnd
	}
	l.ahead = append(l.ahead, rec)
	fields := rec.fields
	for len(fields) < len(l.header) {
		fields = append(fields, "")
	}
	return fields[:len(l.header)], nil
}

// readRows reads every row that can be read, and hands each over.
func (l *log) readRows(read func(row)) {
	most := l.src.most()
	l.flags, l.sums = make([]state, 0, most), make([]uint64, 0, most)
	for _, col := range wordColumns[l.Name] {
		l.words = append(l.words, words{col: col})
	}
	l.slips = namesBeside[l.Name]
	var rows []cells
	for {
		l.ahead = l.ahead[:0]
		if err := gocsv.UnmarshalCSV(l, &rows); err != nil {
			l.report("file", Pos{File: l.file}, err.Error(), "rows of a CSV file are expected", "")
		}
		for i, rec := range l.ahead {
			r := row{l, int32(len(l.flags))}
			l.now, l.rec, l.cells = r, rec, rows[i].Of
			l.put(rec.At)
			l.sums = append(l.sums, checksum(rec.fields))
			r.notice()
			read(r)
		}
		if len(l.ahead) < rowsAhead || l.tooManyNames() {
			break
		}
	}
	l.rec, l.cells, l.ahead = record{}, nil, nil
	l.src.rest()
	if len(l.sumsTwice()) == 0 {
		l.sums = nil
	}
	l.reportFaults()
}

// notice keeps what checks look for later: words, cells of several lines, cells below no
// name.
func (r row) notice() {
	r.noticeWords()
	if c := r.slips; c.col != "" && r.text(c.col) != "" && r.text(c.left) == "" && r.has(c.left) {
		r.beside = append(r.beside, r.nth)
	}
	if slices.ContainsFunc(r.rec.fields, func(s string) bool { return strings.Contains(s, "\n") }) {
		r.lined = append(r.lined, r.nth)
	}
	r.unnamedColumns()
}

// tooWide reports cells beyond the header's last.
func (r row) tooWide() {
	width := len(r.header)
	for i := width; i < len(r.rec.fields); i++ {
		if strings.TrimSpace(r.rec.fields[i]) == "" {
			continue
		}
		r.leaveOut()
		r.report("ragged", r.place(i), fmt.Sprintf("the row has %d cells, the header %d", len(r.rec.fields), width),
			"no more cells than the header has are expected", "put quotation marks around a cell with a separator in it")
		return
	}
}

// unnamedColumns warns, once of each, of columns that have cells and no name.
func (r row) unnamedColumns() {
	r.unnamed = slices.DeleteFunc(r.unnamed, func(i int) bool {
		written := strings.TrimSpace(r.field(i)) != ""
		if written {
			r.report("unnamed-column", r.headCell(i), "column "+columnName(i)+" has cells and no name", "a name in the header is expected", "the column is not read")
		}
		return written
	})
}

// reportFaults reports the rows that cannot be read.
func (l *log) reportFaults() {
	for _, f := range l.src.faults() {
		l.report(f.Check, f.Pos, f.Found, f.Expected, f.Remedy)
	}
	if len(l.src.faults()) >= mostFaults {
		l.report("file", Pos{File: l.file}, plural(mostFaults, "row")+" or more cannot be read, and the rest was not tried", "a CSV file is expected", "is this the right file?")
	}
}

// place is where the i-th cell of the row stands.
func (r row) place(i int) Pos { return r.src.place(r.spot(), i) }

// headCell is where the i-th cell of the header stands.
func (l *log) headCell(i int) Pos { return l.src.place(l.head.At, i) }

// cellName is a spreadsheet's name of a cell: column from 0, row from 1.
func cellName(col, row int) string {
	name := ""
	for n := col + 1; n > 0; n = (n - 1) / 26 {
		name = string(rune('A'+(n-1)%26)) + name
	}
	return name + itoa(row)
}

// requiredOf lists the columns without which a log cannot be read.
func requiredOf(l Log) []string {
	var names []string
	for _, c := range l.Columns {
		if c.Required {
			names = append(names, c.Name)
		}
	}
	return names
}

// index is the place of a column, -1 where the file has none. It is asked for each cell, and
// a look along two dozen names is faster than a map.
func (l *log) index(col string) int {
	for i, name := range l.header {
		if name == col {
			return i
		}
	}
	return -1
}

// has reports whether the file has the column.
func (l *log) has(col string) bool { return l.index(col) >= 0 }

// columns lists the contract's columns present, in the contract's order.
func (l *log) columns() []string {
	var names []string
	for _, c := range l.Columns {
		if slices.Contains(l.header, c.Name) {
			names = append(names, c.Name)
		}
	}
	return names
}
