package templates

import (
	"html/template"
	"unicode/utf8"
)

// table is a table as the partial shows it. The first cell of a row names it.
type table struct {
	ID      string
	Title   template.HTML // of the section, where it stands on a page of its own
	Caption template.HTML
	Columns []column
	Bodies  []body
	Notes   []template.HTML
	Data    string // address of the data file; empty: none
	File    string // its name
	Summed  bool   // the data file holds the rows that the table adds up
	page    *pen   // of the page that it is written into
}

// column is a column's head; Num sets it to the right, Wide leaves it out on a
// narrow screen.
type column struct {
	Head      string
	Num, Wide bool
}

// body is the rows that stand together.
type body struct{ Rows []row }

// row is a row; ID is its anchor, empty for none.
type row struct {
	ID    string
	Crop  string // that it belongs to; empty: to none in particular
	Cells []cell
}

// cell is a value with something smaller under it: its interval or its sample.
type cell struct {
	Value template.HTML
	Sub   template.HTML
	Num   bool
	Wide  bool
	Class string
	Room  string // class of the room it keeps for a Sub, having one or not
}

// plain and nums are column heads: of words, of numbers.
func plain(heads ...string) []column { return columns(false, heads) }
func nums(heads ...string) []column  { return columns(true, heads) }

// columns are heads of one kind.
func columns(num bool, heads []string) []column {
	out := make([]column, len(heads))
	for i, h := range heads {
		out[i] = column{Head: h, Num: num}
	}
	return out
}

// table starts a table that shows what stands in a data file: cost for
// data/cost.csv, empty for none. Its id is unique on the page.
func (p *page) table(id string, caption template.HTML, file string, heads ...[]column) *table {
	t := &table{ID: p.id("table-" + id), Caption: caption, page: &p.out}
	if file != "" && !p.single {
		t.File = file + ".csv"
		t.Data = p.href("data/" + t.File)
	}
	for _, h := range heads {
		t.Columns = append(t.Columns, h...)
	}
	t.note(p.leftOutNote())
	p.pieces = append(p.pieces, t)
	return t
}

// add adds a row. Each value is a cell, HTML made by say, a name, or else plain
// text.
func (t *table) add(values ...any) *row {
	if len(t.Bodies) == 0 {
		t.Bodies = append(t.Bodies, body{})
	}
	last := &t.Bodies[len(t.Bodies)-1]
	last.Rows = append(last.Rows, t.row(values))
	return &last.Rows[len(last.Rows)-1]
}

// row makes cells of values; each takes the kind of its column.
func (t *table) row(values []any) row {
	r := row{Cells: make([]cell, len(values))}
	for i, v := range values {
		c, ok := v.(cell)
		if !ok {
			c = cell{Value: markup(v)}
		}
		if i < len(t.Columns) {
			c.Num, c.Wide = t.Columns[i].Num, t.Columns[i].Wide
		}
		r.Cells[i] = c
	}
	return r
}

// inStep gives every cell of a column of numbers the room that one of them needs for
// something smaller beside its value.
func (t *table) inStep() {
	for i := range t.Columns {
		if !t.Columns[i].Num {
			continue
		}
		room := ""
		t.each(i, func(c *cell) { room = max(room, roomFor(string(c.Sub))) })
		t.each(i, func(c *cell) { c.Room = room })
	}
}

// roomFor is the class of the room that something smaller takes; the greater
// sorts after the smaller.
func roomFor(sub string) string {
	switch n := utf8.RuneCountInString(sub); {
	case n == 0:
		return ""
	case n <= 6:
		return "room-a"
	case n <= 10:
		return "room-b"
	case n <= 16:
		return "room-c"
	case n <= 20:
		return "room-d"
	}
	return "room-e"
}

// each calls do on every cell of a column.
func (t *table) each(column int, do func(*cell)) {
	for _, b := range t.Bodies {
		for _, r := range b.Rows {
			if column < len(r.Cells) {
				do(&r.Cells[column])
			}
		}
	}
}

// Classes are the classes of a cell.
func (c cell) Classes() string { return classes(c.Num, c.Wide, c.Class) }

// Classes are the classes of a head.
func (c column) Classes() string { return classes(c.Num, c.Wide, "") }

// classes joins the classes that hold.
func classes(num, wide bool, more string) string {
	of := ""
	switch {
	case num && wide:
		of = "num wide"
	case num:
		of = "num"
	case wide:
		of = "wide"
	}
	if of != "" && more != "" {
		of += " "
	}
	return of + more
}

// note adds a remark under the table; an empty one is none.
func (t *table) note(words template.HTML) {
	if words != "" {
		t.Notes = append(t.Notes, words)
	}
}

// Empty reports whether the table has no row.
func (t *table) Empty() bool {
	for _, b := range t.Bodies {
		if len(b.Rows) > 0 {
			return false
		}
	}
	return true
}

// size is about how many bytes of a page the rows take.
func (t *table) size() int {
	n := 0
	for _, b := range t.Bodies {
		for _, r := range b.Rows {
			n += r.size()
		}
	}
	return n
}

// size is about how many bytes of a page the row takes.
func (r row) size() int {
	n := 12 + len(r.ID)
	for _, c := range r.Cells {
		n += 40 + len(c.Value) + len(c.Sub)
	}
	return n
}
