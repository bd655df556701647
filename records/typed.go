package records

import (
	"strings"

	"traybook/records/workbook"
)

// typed is the cell of a column as a workbook holds it; blank for one of a CSV file.
func (r row) typed(col string) workbook.Cell {
	i := r.index(col)
	if i < 0 || !r.sheet {
		return workbook.Cell{}
	}
	cells := r.found().cells
	if i >= len(cells) {
		return workbook.Cell{}
	}
	return cells[i]
}

// unknown reports whether the cell of a column is unknown.
func (r row) unknown(col string) bool { return unknown(r.typed(col)) }

// formulas reports the cells of the log's columns that are unknown.
func (r row) formulas() {
	if !r.sheet {
		return
	}
	for _, c := range r.Columns {
		if !r.unknown(c.Name) {
			continue
		}
		if word := r.typed(c.Name).Text; word != "" {
			r.problem("formula", c.Name, "the cell holds the error "+quote(word), "a value, or a formula that has one, is expected", "mend the formula, or type the value")
		} else {
			r.problem("formula", c.Name, "the cell holds a formula without a result", "a formula with its result is expected",
				"open the workbook in the spreadsheet and save it again")
		}
	}
}

// asWritten turns a typed number into the one that the book's own sign before
// fractions makes of it: what a number is, its cell knows and no setting.
func (r row) asWritten(col, s string) string {
	if !r.sheet {
		return s
	}
	k := r.typed(col).Kind
	switch {
	case r.unknown(col):
		return ""
	case (k == workbook.Number || k == workbook.Percent) && r.decimal == comma:
		return strings.Replace(s, string(point), string(comma), 1)
	}
	return s
}
