package workbook

// Book is a workbook: its sheets in the order of its tabs.
type Book struct {
	Sheets []Sheet
}

// Sheet is one sheet. Rows and Merged are empty where the sheet was not asked for.
type Sheet struct {
	Name   string
	Rows   []Row // those with anything in them, in order
	Merged []Area
	Bad    error // an Unread: why the sheet cannot be read
}

// Row is one row. Number counts from 1, as a spreadsheet does; Cells[0] stands in
// column A; nothing follows the last cell with anything in it.
type Row struct {
	Number int
	Cells  []Cell
}

// Cell is what a cell holds; the zero Cell is blank.
type Cell struct {
	Kind Kind
	Text string
}

// Kind is the type of what is stored.
type Kind uint8

// The kinds of cells; how Cell.Text writes each is said in the package comment.
const (
	Blank Kind = iota
	Text
	Number
	Percent
	Moment
	Bool
	Fault
	Unsolved
)

// Area is a rectangle of merged cells: rows from 1, columns from 0, both ends in it.
type Area struct {
	Row, Col, LastRow, LastCol int
}

// Unread says why a workbook, or a sheet of it, cannot be read, and what to do.
type Unread struct {
	Found, Remedy string
}

// Error is what was found.
func (u Unread) Error() string { return u.Found }

// again is the remedy where a spreadsheet may still understand what we do not.
const again = "open it in the spreadsheet and save it again as .xlsx or .ods"

// damaged says that a workbook does not hold together.
func damaged(why string) Unread {
	return Unread{"the workbook is damaged: " + why, again}
}

// add puts a cell into a column of the row; a blank one adds nothing.
func (r *Row) add(col int, c Cell) {
	if c.Kind == Blank {
		return
	}
	for len(r.Cells) < col {
		r.Cells = append(r.Cells, Cell{})
	}
	r.Cells = append(r.Cells, c)
}
