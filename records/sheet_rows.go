package records

import (
	"fmt"
	"slices"

	"traybook/records/workbook"
)

// sheetRows hands out the rows of a sheet.
type sheetRows struct {
	sheet *workbook.Sheet
	read  int // rows so far, blank ones too
	given int // rows handed out
	bad   []fault
}

// faults are the rows that merged cells make unreadable, or that go beyond the limits.
func (s *sheetRows) faults() []fault { return s.bad }

// place is where a cell stands: line and column are those of the sheet.
func (s *sheetRows) place(r At, i int) Pos { return s.at(int(r.Row), i) }

// again is a row of the sheet once more.
func (s *sheetRows) again(at At) record {
	i, _ := slices.BinarySearchFunc(s.sheet.Rows, int(at.Row), func(r workbook.Row, n int) int { return r.Number - n })
	return recordOf(s.sheet.Rows[i])
}

// recordOf is a row of a sheet with its cells as text.
func recordOf(row workbook.Row) record {
	r := record{At: At{uint32(row.Number), uint32(row.Number)}, cells: row.Cells}
	for _, c := range row.Cells {
		r.fields = append(r.fields, fieldOf(c))
	}
	return r
}

// rest keeps the sheet: the workbook has it anyway.
func (s *sheetRows) rest() {}

// anew begins again at the header.
func (s *sheetRows) anew() source { return &sheetRows{sheet: s.sheet} }

// most is how many rows the sheet has.
func (s *sheetRows) most() int { return len(s.sheet.Rows) }

func (s *sheetRows) at(row, col int) Pos {
	return Pos{File: printable(s.sheet.Name), Line: row, Column: col + 1, Cell: cellName(col, row), Sheet: true}
}

// next is the next row that can be read.
func (s *sheetRows) next() (record, bool) {
	for s.read < len(s.sheet.Rows) && len(s.bad) < mostFaults {
		row := s.sheet.Rows[s.read]
		s.read++
		r := recordOf(row)
		if blankRow(r.fields) && !slices.ContainsFunc(row.Cells, unknown) {
			continue // nothing but space
		}
		if s.given++; s.given == 1 { // columns without a name are columns too
			for n := min(s.width(), mostCells); len(r.fields) < n; {
				r.fields = append(r.fields, "")
			}
		}
		if p, ok := s.unfit(&r); ok {
			s.bad = append(s.bad, fault{p, r.fields})
			continue
		}
		return r, true
	}
	return record{}, false
}

// width is how many columns have anything in them.
func (s *sheetRows) width() (n int) {
	for _, r := range s.sheet.Rows {
		n = max(n, len(r.Cells))
	}
	return n
}

// unknown reports whether a cell holds an error of the spreadsheet or a formula that
// was never worked out: there is something, and nobody knows what.
func unknown(c workbook.Cell) bool { return c.Kind == workbook.Fault || c.Kind == workbook.Unsolved }

// fieldOf is a cell as text. A formula that was never worked out is no blank.
func fieldOf(c workbook.Cell) string {
	if c.Kind == workbook.Unsolved {
		return "="
	}
	return c.Text
}

// unfit finds why a row cannot be read.
func (s *sheetRows) unfit(r *record) (Problem, bool) {
	if p, ok := s.merged(r); ok {
		return p, true
	}
	if len(r.fields) > mostCells {
		return errorAt(s.at(int(r.Row), mostCells), "size", "the row has more than "+plural(mostCells, "cell"),
			"a row of the log is expected", "is this the right sheet?"), true
	}
	for i, f := range r.fields {
		if len(f) > mostOfCell {
			return errorAt(s.at(int(r.Row), i), "size", "the cell is longer than 10 kB", "a cell of at most 10 kB is expected",
				"shorten the text, or put it into notes"), true
		}
	}
	return Problem{}, false
}

// merged finds merged cells in a row: whose they are cannot be told. A title above the
// header may be merged; it is told for what it is.
func (s *sheetRows) merged(r *record) (Problem, bool) {
	for _, m := range s.sheet.Merged {
		if row := int(r.Row); row < m.Row || row > m.LastRow || s.read <= titleLines && m.Row == m.LastRow && alone(r) {
			continue
		}
		area := cellName(m.Col, m.Row) + ":" + cellName(m.LastCol, m.LastRow)
		return errorAt(s.at(int(r.Row), m.Col), "merged", fmt.Sprintf("the cells %s are merged", area),
			"a cell of its own for each row and column is expected", "unmerge them, and write into each what belongs there"), true
	}
	return Problem{}, false
}

// alone reports whether a row has one cell with anything in it.
func alone(r *record) bool {
	n := 0
	for _, f := range r.fields {
		if f != "" {
			n++
		}
	}
	return n == 1
}
