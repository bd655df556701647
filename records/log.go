package records

import (
	"fmt"
	"slices"
	"strings"

	"github.com/gocarina/gocsv"
)

// log is one file while it is read.
type log struct {
	Log
	*loader
	file    string // its name as found
	src     source
	header  []string // column names in the file's order; empty: none of ours
	at      map[string]int
	head    record
	records []record
	rows    []row
	unread  []string // names of the columns that are not ours
	dates   dateOrder
	untold  int     // rows with a date of unknown order
	first   Problem // the first of them
}

// row is one row of a log. gocsv hands over its cells as text, in the order of
// the header; what they mean is read by the functions of cell.go.
type row struct {
	Cells []string
	*log  `csv:"-"`
	rec   *record
	out   bool // left out of every figure
	vague bool // a date of it has no known order
}

// UnmarshalCSVWithFields takes the next cell of the row.
func (r *row) UnmarshalCSVWithFields(_, value string) error {
	if r.Cells == nil {
		r.Cells = make([]string, 0, 24)
	}
	r.Cells = append(r.Cells, value)
	return nil
}

// ReadAll gives gocsv the header and every row, each as wide as the header.
func (l *log) ReadAll() ([][]string, error) {
	all := [][]string{l.header}
	for {
		fields, err := l.Read()
		if err != nil {
			return all, nil
		}
		all = append(all, fields)
	}
}

// Read gives the next row, padded or trimmed to the header.
func (l *log) Read() ([]string, error) {
	rec, ok := l.src.next()
	if !ok {
		return nil, errEnd
	}
	l.records = append(l.records, rec)
	fields := rec.fields
	for len(fields) < len(l.header) {
		fields = append(fields, "")
	}
	return fields[:len(l.header)], nil
}

// readRows reads every row that is CSV.
func (l *log) readRows() {
	if err := gocsv.UnmarshalCSV(l, &l.rows); err != nil {
		l.report("file", Pos{File: l.file}, err.Error(), "rows of a CSV file are expected", "")
	}
	for i := range l.rows {
		l.rows[i].log, l.rows[i].rec = l, &l.records[i]
	}
	l.reportFaults()
	l.unnamedColumns()
	if l.dates == untold {
		l.dates = l.toldOrder()
	}
}

// tooWide reports cells beyond the header's last.
func (r *row) tooWide() {
	width := len(r.header)
	for i := width; i < len(r.rec.fields); i++ {
		if strings.TrimSpace(r.rec.fields[i]) == "" {
			continue
		}
		r.out = true
		r.report("ragged", r.place(r.rec, i), fmt.Sprintf("the row has %d cells, the header %d", len(r.rec.fields), width),
			"no more cells than the header has are expected", "put quotation marks around a cell with a separator in it")
		return
	}
}

// unnamedColumns warns of columns that have cells and no name.
func (l *log) unnamedColumns() {
	for i, name := range l.head.fields {
		if strings.TrimSpace(name) != "" {
			continue
		}
		for j := range l.rows {
			if strings.TrimSpace(l.rows[j].Cells[i]) != "" {
				l.report("unnamed-column", l.place(&l.head, i), "column "+columnName(i)+" has cells and no name", "a name in the header is expected", "the column is not read")
				break
			}
		}
	}
}

// reportFaults reports the rows that cannot be read.
func (l *log) reportFaults() {
	for _, f := range l.src.faults() {
		l.report(f.Check, f.Pos, f.Found, f.Expected, f.Remedy)
	}
}

// place is where the i-th cell of a record stands.
func (l *log) place(rec *record, i int) Pos { return l.src.place(rec, i) }

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

// has reports whether the file has the column.
func (l *log) has(col string) bool { _, ok := l.at[col]; return ok }

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
