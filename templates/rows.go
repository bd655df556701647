package templates

import (
	"html/template"
	"slices"
)

// rows is a table that tells each row's story in its row: names, a figure with its
// range and a drawing of both on the axis in the head, a few numbers. Groups are set
// apart by a hairline.
type rows struct {
	ID      string
	Title   template.HTML // of the section, where it stands on a page of its own
	Class   string        // crops, germ, lots ...; the style sheet has the widths
	Caption template.HTML
	Cols    []col
	Groups  []rowGroup
	Notes   []template.HTML
	Data    string // address of the data file; empty: none
	File    string // its name
	page    *pen   // of the page that it is written into
}

// col is a column: Width the class of its width, Class that of its cells (n a number,
// st a drawing behind its figure, vd a verdict, dr a drawing alone), Head its word,
// Axis the drawing in the head. Quiet hides the word from sight, not from a reader.
type col struct {
	Width, Class string
	Head         template.HTML
	Axis         template.HTML
	Quiet        bool
}

// rowGroup is some rows under a line of their own, where it has one. Class is theirs.
type rowGroup struct {
	Sub   template.HTML
	Class string
	Crop  string // that all its rows belong to; empty: to none in particular
	Rows  []rowOf
}

// rowOf is one row: the first cell names it.
type rowOf struct {
	ID, Class string
	Cells     []template.HTML
}

// rows starts a table of a data file (cost for data/cost.csv; empty for none) with its
// columns.
func (p *page) rows(id, class string, caption template.HTML, file string, cols ...col) *rows {
	t := &rows{ID: p.id("rows-" + id), Class: class, Caption: caption, Cols: cols, page: &p.out}
	if file != "" && !p.single {
		t.File = file + ".csv"
		t.Data = p.href("data/" + t.File)
	}
	t.note(p.leftOutNote())
	p.pieces = append(p.pieces, t)
	return t
}

// under starts a group of rows, under a line with words where there are some.
func (t *rows) under(sub template.HTML, class string) {
	t.Groups = append(t.Groups, rowGroup{Sub: sub, Class: class})
}

// add adds a row to the last group. Cells are HTML made by say, names or plain text.
func (t *rows) add(id, class string, cells ...any) {
	made := make([]template.HTML, len(cells))
	for i, c := range cells {
		made[i] = markup(c)
	}
	t.addCells(id, class, made)
}

// addCells is add of cells that are HTML already.
func (t *rows) addCells(id, class string, cells []template.HTML) {
	if len(t.Groups) == 0 {
		t.under("", "")
	}
	last := &t.Groups[len(t.Groups)-1]
	last.Rows = append(last.Rows, rowOf{ID: id, Class: class, Cells: cells})
}

// room makes room for so many rows more in the last group.
func (t *rows) room(n int) {
	last := &t.Groups[len(t.Groups)-1]
	last.Rows = slices.Grow(last.Rows, n)
}

// note adds a remark under the table; an empty one is none.
func (t *rows) note(words template.HTML) {
	if words != "" {
		t.Notes = append(t.Notes, words)
	}
}

// Empty reports whether the table has no row.
func (t *rows) Empty() bool {
	if t == nil {
		return true
	}
	for _, g := range t.Groups {
		if len(g.Rows) > 0 {
			return false
		}
	}
	return true
}

// ClassOf is the class of the cells of column i.
func (t *rows) ClassOf(i int) string { return t.Cols[min(i, len(t.Cols)-1)].Class }

// told is a figure, its range in grey, and the drawing of both.
func told(value, rangeOf any, drawing template.HTML) template.HTML {
	return say("<b>%s</b> <i>%s</i> %s", value, rangeOf, drawing)
}

// dataLink links to data/NAME.csv; nothing in a review of one file.
func (p *page) dataLink(name string) template.HTML {
	if p.single {
		return ""
	}
	return say(`<a href="%s">%s.csv</a>`, p.href("data/"+name+".csv"), name)
}

// size is about how many bytes of a page the rows take.
func (t *rows) size() int {
	n := 0
	for _, g := range t.Groups {
		n += 80 + len(g.Sub)
		for _, r := range g.Rows {
			n += r.size()
		}
	}
	return n
}

// size is about how many bytes of a page the row takes.
func (r rowOf) size() int {
	n := 40 + len(r.ID)
	for _, c := range r.Cells {
		n += 24 + len(c)
	}
	return n
}
