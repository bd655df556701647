package workbook

import (
	"bytes"
	"encoding/xml"
	"strconv"
	"strings"
)

// officeSpace is the namespace of a cell's value; another one repeats it in a form of
// its own.
const officeSpace = "urn:oasis:names:tc:opendocument:xmlns:office:1.0"

// readODS reads an .ods file.
func readODS(p parts, want func(string) bool) (*Book, error) {
	list, err := p.bytes("META-INF/manifest.xml")
	if err != nil {
		return nil, err
	}
	if bytes.Contains(list, []byte("encryption-data")) {
		return nil, Unread{"the workbook has a password", "save it without a password"}
	}
	content, err := p.bytes("content.xml")
	if err != nil {
		return nil, err
	}
	o := &ods{want: want, left: newBudget()}
	if err := walk(content, o); err != nil {
		return nil, err
	}
	if len(o.book.Sheets) == 0 {
		return nil, damaged("it has no sheets")
	}
	return &o.book, nil
}

// ods reads the sheets as their file goes by.
type ods struct {
	book  Book
	want  func(string) bool
	sheet *odsSheet // at hand; nil between sheets
	left  *budget
}

// odsSheet is a sheet while it is read.
type odsSheet struct {
	Sheet
	wanted bool
	copied bool // of another file: what a formula refers to is kept with the book
	left   *budget
	next   int // number of the row at hand
	times  int // how often it stands there
	row    Row
	bytes  int // of its texts
	col    int // of the next cell, from 0
}

// enter takes up what begins. Only the document, its sheets, their rows and cells
// matter; drawings, changes kept for undoing and the like are passed over.
func (o *ods) enter(d *xml.Decoder, e xml.StartElement) error {
	switch e.Name.Local {
	case "document-content", "body", "spreadsheet", "table-header-rows", "table-rows", "table-row-group":
		return nil
	case "table":
		return o.start(attr(e, "name"))
	}
	if o.sheet == nil {
		return d.Skip()
	}
	o.sheet.copied = o.sheet.copied || e.Name.Local == "table-source"
	if !o.sheet.wanted {
		return d.Skip()
	}
	switch e.Name.Local {
	case "table-row":
		o.sheet.startRow(e)
		return nil
	case "table-cell", "covered-table-cell":
		return o.sheet.cell(d, e)
	}
	return d.Skip()
}

// start begins a sheet.
func (o *ods) start(name string) error {
	if o.sheet != nil {
		return damaged("a sheet within a sheet")
	}
	if len(o.book.Sheets) >= mostParts {
		return tooLarge("the workbook has more than 10,000 sheets")
	}
	o.sheet = &odsSheet{Sheet: Sheet{Name: name}, wanted: o.want(name), left: o.left, next: 1}
	return nil
}

// leave ends a row or a sheet.
func (o *ods) leave(name string) error {
	switch {
	case o.sheet == nil:
	case name == "table-row":
		return o.sheet.endRow()
	case name == "table":
		if !o.sheet.copied && !strings.HasPrefix(o.sheet.Name, "'file:") {
			o.book.Sheets = append(o.book.Sheets, o.sheet.Sheet)
		}
		o.sheet = nil
	}
	return nil
}

// text is of no use outside cells, which read on to their own end.
func (o *ods) text([]byte) {}

// startRow begins a row, which may stand for many alike.
func (s *odsSheet) startRow(e xml.StartElement) {
	s.row, s.bytes, s.col = Row{}, 0, 0
	s.times = count(e, "number-rows-repeated")
}

// endRow adds the row as often as it stands there; blank ones are only counted.
func (s *odsSheet) endRow() error {
	first := s.next
	s.next += s.times
	if len(s.row.Cells) == 0 {
		return nil
	}
	if s.next-1 > mostRows {
		return tooLarge("the sheet has more than 1,048,576 rows")
	}
	if err := s.left.spend((s.times-1)*len(s.row.Cells), (s.times-1)*s.bytes); err != nil {
		return err
	}
	for n := first; n < s.next; n++ {
		s.Rows = append(s.Rows, Row{n, s.row.Cells})
	}
	return nil
}

// cell adds a cell as often as it stands there. What a merge covers holds nothing.
func (s *odsSheet) cell(d *xml.Decoder, e xml.StartElement) error {
	content, err := readContent(d)
	if err != nil {
		return err
	}
	col, times := s.col, count(e, "number-columns-repeated")
	s.col += times
	if wide, high := count(e, "number-columns-spanned"), count(e, "number-rows-spanned"); wide > 1 || high > 1 {
		if len(s.Merged) >= mostMerged {
			return Unread{"the sheet has more than 1000 areas of merged cells", "unmerge them"}
		}
		s.Merged = append(s.Merged, Area{s.next, col, s.next + high - 1, col + wide - 1})
	}
	c := valueOf(e, content)
	if c.Kind == Blank || e.Name.Local == "covered-table-cell" {
		return nil
	}
	if s.col > mostColumns {
		return tooLarge("the sheet has more than 16,384 columns")
	}
	s.bytes += times * len(c.Text)
	if err := s.left.spend(s.col-len(s.row.Cells), times*len(c.Text)); err != nil {
		return err
	}
	for i := range times {
		s.row.add(col+i, c)
	}
	return nil
}

// count reads how often something stands there: once where nothing is written. What is
// no such number, or beyond every sheet, is taken down to where the limits hold.
func count(e xml.StartElement, name string) int {
	n, err := strconv.Atoi(attr(e, name))
	if err != nil || n < 1 {
		return 1
	}
	return min(n, 1<<24)
}
