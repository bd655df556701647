package records

import "slices"

// Where is the place of a column in a row of a log, be its cell blank: file and line and,
// where the log has the column, the cell. Column counts characters, which nobody has
// counted here: 0. Nowhere at all for a row that stands nowhere.
func (b *Book) Where(row At, log, column string) Pos {
	if row == (At{}) {
		return Pos{}
	}
	i := slices.IndexFunc(b.Files, func(f File) bool { return f.Name == log })
	if i < 0 {
		return Pos{File: log, Line: int(row.Line)}
	}
	f := &b.Files[i]
	at := Pos{File: f.As, Line: int(row.Line), Sheet: f.sheet}
	if col := slices.Index(f.heads, column); col >= 0 {
		at.Cell = cellName(col, int(row.Row))
	}
	return at
}
