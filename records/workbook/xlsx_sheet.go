package workbook

import (
	"encoding/xml"
	"strconv"
	"strings"
)

// xlsxSheet reads the cells of a sheet as its file goes by.
type xlsxSheet struct {
	*xlsx
	*Sheet
	row     Row
	col     int // of the cell at hand, from 0; -1 before the first of a row
	is      xlsxCell
	reading bool // text is part of the cell
}

// xlsxCell is a cell as the file writes it.
type xlsxCell struct {
	kind, style    string
	value, inline  strings.Builder
	inText         bool // what is read goes to inline
	solved, worked bool // a value is written; a formula is
}

// readSheet reads a sheet's file into it.
func (x *xlsx) readSheet(s *Sheet, name string) error {
	if !x.has(partName(name)) {
		return damaged("a sheet is missing")
	}
	if err := x.once(name); err != nil {
		return err
	}
	b, err := x.bytes(name)
	if err != nil {
		return err
	}
	if err := x.left.spend(0, 0); err != nil { // in a sheet before
		return err
	}
	return walk(b, &xlsxSheet{xlsx: x, Sheet: s})
}

// enter takes up what begins. Phonetic text, and what stands beside the cells, is
// passed over.
func (s *xlsxSheet) enter(d *xml.Decoder, e xml.StartElement) error {
	switch e.Name.Local {
	case "worksheet", "sheetData", "mergeCells", "is", "r":
		return nil
	case "row":
		return s.startRow(attr(e, "r"))
	case "c":
		s.is = xlsxCell{kind: attr(e, "t"), style: attr(e, "s")}
		return s.startCell(attr(e, "r"))
	case "v":
		s.is.solved, s.reading, s.is.inText = true, true, false
		return nil
	case "t":
		s.reading, s.is.inText = true, true
		return nil
	case "f":
		s.is.worked = true
	case "mergeCell":
		return s.merge(attr(e, "ref"))
	}
	return d.Skip()
}

// startRow begins a row: the one that is named, else the next.
func (s *xlsxSheet) startRow(ref string) error {
	n := s.row.Number + 1
	if ref != "" {
		if named, err := strconv.Atoi(ref); err != nil || named < n {
			return damaged("row " + strconv.Quote(ref) + " stands after row " + strconv.Itoa(s.row.Number))
		} else {
			n = named
		}
	}
	if n > mostRows {
		return tooLarge("the sheet has more than 1,048,576 rows")
	}
	s.row, s.col = Row{Number: n}, -1
	return nil
}

// startCell begins a cell: the one that is named, else the next.
func (s *xlsxSheet) startCell(ref string) error {
	col := s.col + 1
	if ref != "" {
		c, row, ok := splitRef(ref)
		if !ok || c < col || row != s.row.Number {
			return damaged("cell " + strconv.Quote(ref) + " stands in the wrong place")
		}
		col = c
	}
	if col >= mostColumns {
		return tooLarge("the sheet has more than 16,384 columns")
	}
	s.col = col
	return nil
}

// text collects what a cell holds.
func (s *xlsxSheet) text(b []byte) {
	switch {
	case !s.reading:
	case s.is.inText:
		collect(&s.is.inline, b)
	default:
		collect(&s.is.value, b)
	}
}

// leave ends a cell or a row.
func (s *xlsxSheet) leave(name string) error {
	switch name {
	case "v", "t":
		s.reading = false
	case "c":
		return s.endCell()
	case "row":
		if len(s.row.Cells) > 0 {
			s.Rows = append(s.Rows, s.row)
		}
	}
	return nil
}

// endCell adds the cell to its row.
func (s *xlsxSheet) endCell() error {
	c, err := s.cell(&s.is)
	if err != nil || c.Kind == Blank {
		return err
	}
	if err := s.left.spend(s.col+1-len(s.row.Cells), len(c.Text)); err != nil {
		return err
	}
	s.row.add(s.col, c)
	return nil
}

// cell is what a cell holds, by the type that the file writes. A formula that was never
// worked out has no value, or an empty one that is no text.
func (x *xlsx) cell(c *xlsxCell) (Cell, error) {
	v := c.value.String()
	if c.worked && (!c.solved || v == "" && c.kind != "str") {
		return Cell{Kind: Unsolved}, nil
	}
	switch c.kind {
	case "s":
		if v == "" {
			return Cell{}, nil
		}
		i, err := strconv.Atoi(strings.TrimSpace(v))
		if err != nil || i < 0 || i >= len(x.texts) {
			return Cell{}, damaged("a cell's text is missing")
		}
		return x.texts[i], nil
	case "inlineStr":
		return textCell(unescaped(c.inline.String())), nil
	case "str":
		return textCell(unescaped(v)), nil
	case "b":
		return boolCell(v == "1" || v == "true"), nil
	case "e":
		return faultCell(v), nil
	case "d":
		return isoCell(v), nil
	}
	return x.number(v, c.style), nil
}

// number is a number by the style in which it is shown.
func (x *xlsx) number(v, style string) Cell {
	n, ok := finite(v)
	if !ok {
		return textCell(v)
	}
	form := asNumber
	if i, err := strconv.Atoi(style); err == nil && i >= 0 && i < len(x.shown) {
		form = x.shown[i]
	}
	switch form {
	case asPercent:
		return percentCell(n)
	case asDay, asTime:
		return serialCell(n, x.from1904, form == asDay)
	}
	return numberCell(n)
}

// merge notes an area of merged cells, such as B2:C4.
func (s *xlsxSheet) merge(ref string) error {
	from, to, two := strings.Cut(ref, ":")
	if !two {
		to = from
	}
	col, row, ok1 := splitRef(from)
	lastCol, lastRow, ok2 := splitRef(to)
	if !ok1 || !ok2 {
		return damaged("merged cells " + strconv.Quote(ref))
	}
	if len(s.Merged) >= mostMerged {
		return Unread{"the sheet has more than 1000 areas of merged cells", "unmerge them"}
	}
	s.Merged = append(s.Merged, Area{min(row, lastRow), min(col, lastCol), max(row, lastRow), max(col, lastCol)})
	return nil
}

// splitRef takes the name of a cell apart: column from 0, row from 1.
func splitRef(ref string) (col, row int, ok bool) {
	ref = strings.ReplaceAll(ref, "$", "")
	i := 0
	for ; i < len(ref) && col <= mostColumns; i++ {
		c := ref[i] &^ 0x20 // in capitals
		if c < 'A' || c > 'Z' {
			break
		}
		col = col*26 + int(c-'A') + 1
	}
	row, err := strconv.Atoi(ref[i:])
	return col - 1, row, i > 0 && err == nil && row > 0 && col <= mostColumns
}
