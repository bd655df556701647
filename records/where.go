package records

import (
	"slices"
	"strconv"
	"strings"
)

// Where is the place of a column in a row of a log, be its cell blank: of the row's own
// place its file, line and, where the log has the column, the cell. Column counts
// characters, which nobody has counted here: 0.
func (b *Book) Where(row Pos, log, column string) Pos {
	at := Pos{File: row.File, Line: row.Line, Sheet: row.Sheet}
	i := slices.IndexFunc(b.Files, func(f File) bool { return f.Name == log })
	n, err := strconv.Atoi(strings.TrimLeft(row.Cell, "ABCDEFGHIJKLMNOPQRSTUVWXYZ"))
	if i < 0 || err != nil {
		return at
	}
	if col := slices.Index(b.Files[i].heads, column); col >= 0 {
		at.Cell = cellName(col, n)
	}
	return at
}
