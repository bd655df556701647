package workbook

import (
	"errors"
	"strconv"
	"time"

	"github.com/xuri/excelize/v2"
)

// Table is a sheet to write: heads, and the first rows below them.
type Table struct {
	Name    string
	Columns []Column
	Rows    [][]Cell // as wide as the columns, or less
}

// Column is a column to write. Words and From are two ways to a drop-down list, which
// never keeps anyone from typing something else.
type Column struct {
	Head, Says string // what stands in the first row; what the comment there says
	Required   bool
	Width      float64 // characters
	Form       Form
	Words      []string // to choose from
	From       string   // column of another sheet to choose from, such as trays!A
	Once       bool     // From repeats its words; the list does not
}

// Form is how the cells of a column show what is typed.
type Form int

// The forms of columns. AsTyped leaves 3-4 and 007 as they are typed, where a
// spreadsheet would make a day and a 7 of them.
const (
	General Form = iota
	AsTyped
	Day
	DayAndTime
)

var codes = map[Form]string{AsTyped: "@", Day: "yyyy-mm-dd", DayAndTime: "yyyy-mm-dd hh:mm"}

// lastListed is the last row that drop-down lists look at, and that they stand in.
const lastListed = 5000

// Write writes an .xlsx file without macros; the same tables are the same bytes.
func Write(tables []Table, first string) ([]byte, error) {
	f := excelize.NewFile()
	defer f.Close()
	w := &writer{File: f}
	w.properties()
	for i, t := range tables {
		w.sheet(i, t)
	}
	w.listsSheet()
	if i, err := f.GetSheetIndex(first); err == nil {
		f.SetActiveSheet(i)
	}
	if len(w.failed) > 0 {
		return nil, errors.Join(w.failed...)
	}
	b, err := f.WriteToBuffer()
	if err != nil {
		return nil, err
	}
	return b.Bytes(), nil
}

// writer writes sheets, notes the columns whose words are to be listed once, and keeps what
// fails.
type writer struct {
	*excelize.File
	lists  []string
	failed []error
}

// try keeps a failure.
func (w *writer) try(err error) {
	if err != nil {
		w.failed = append(w.failed, err)
	}
}

// properties names the program and no day.
func (w *writer) properties() {
	w.try(w.SetDocProps(&excelize.DocProperties{Creator: "traybook", LastModifiedBy: "traybook",
		Title: "Record book", Created: "2000-01-01T00:00:00Z", Modified: "2000-01-01T00:00:00Z"}))
}

// sheet writes one table; the file is made with a sheet, which is the first.
func (w *writer) sheet(i int, t Table) {
	if i == 0 {
		w.try(w.SetSheetName(w.GetSheetName(0), t.Name))
	} else {
		_, err := w.NewSheet(t.Name)
		w.try(err)
	}
	w.try(w.SetPanes(t.Name, &excelize.Panes{Freeze: true, YSplit: 1, TopLeftCell: "A2", ActivePane: "bottomLeft",
		Selection: []excelize.Selection{{SQRef: "A2", ActiveCell: "A2", Pane: "bottomLeft"}}}))
	for col, c := range t.Columns {
		w.column(t.Name, col, c)
	}
	for i, row := range t.Rows {
		for col, c := range row {
			w.cell(t, col, i+2, c)
		}
	}
}

// column writes a head with its comment, and what its cells are.
func (w *writer) column(sheet string, col int, c Column) {
	name, err := excelize.ColumnNumberToName(col + 1)
	w.try(err)
	w.try(w.SetColWidth(sheet, name, name, c.Width))
	w.try(w.SetColStyle(sheet, name, w.style(&excelize.Style{CustomNumFmt: code(c.Form)})))
	w.try(w.SetCellStr(sheet, name+"1", c.Head))
	w.try(w.SetCellStyle(sheet, name+"1", name+"1", w.style(&excelize.Style{
		Font: &excelize.Font{Bold: c.Required, Family: "Calibri", Size: 11}, CustomNumFmt: code(AsTyped),
		Fill: excelize.Fill{Type: "pattern", Pattern: 1, Color: []string{"E4EADF"}}})))
	if c.Says != "" {
		w.try(w.AddComment(sheet, excelize.Comment{Cell: name + "1", Author: "traybook", Text: c.Says,
			Width: 260, Height: uint(40 + 18*(len(c.Says)/36))}))
	}
	w.list(sheet, name, c)
}

// code is the code of a form; nil for the one that every cell has.
func code(f Form) *string {
	if s, ok := codes[f]; ok {
		return &s
	}
	return nil
}

// style makes a style, once for all that are alike.
func (w *writer) style(s *excelize.Style) int {
	id, err := w.NewStyle(s)
	w.try(err)
	return id
}

// list gives the cells of a column a drop-down list.
func (w *writer) list(sheet, name string, c Column) {
	if len(c.Words) == 0 && c.From == "" {
		return
	}
	v := excelize.NewDataValidation(true)
	v.SetSqref(name + "2:" + name + strconv.Itoa(lastListed))
	if len(c.Words) > 0 {
		w.try(v.SetDropList(c.Words))
	} else {
		v.Type, v.Formula1 = "list", w.listed(c)
	}
	w.try(w.AddDataValidation(sheet, v))
}

// cell writes a typed cell in the form of its column.
func (w *writer) cell(t Table, col, row int, c Cell) {
	at, err := excelize.CoordinatesToCellName(col+1, row)
	w.try(err)
	switch c.Kind {
	case Blank:
		return
	case Number:
		x, ok := finite(c.Text)
		if !ok {
			w.try(errors.New("no number: " + c.Text))
		}
		w.try(w.SetCellFloat(t.Name, at, x, -1, 64))
	case Moment:
		w.try(w.moment(t.Name, at, c.Text))
	default:
		w.try(w.SetCellStr(t.Name, at, c.Text))
	}
	w.try(w.SetCellStyle(t.Name, at, at, w.style(&excelize.Style{CustomNumFmt: code(t.Columns[col].Form)})))
}

// moment writes a day, or a day and a time, as the days since the end of 1899.
func (w *writer) moment(sheet, at, s string) error {
	layout := "2006-01-02 15:04:05"
	t, err := time.Parse(layout[:min(len(s), len(layout))], s)
	if err != nil {
		return err
	}
	days := t.Sub(time.Date(1899, 12, 30, 0, 0, 0, 0, time.UTC)).Seconds() / 86400
	return w.SetCellFloat(sheet, at, days, -1, 64)
}
