package main

import (
	"bytes"
	"encoding/csv"
	"slices"
	"strconv"
	"strings"

	"traybook/records"
	"traybook/records/workbook"
)

// forms are how the cells of a column take what is typed; those of one log go before
// those of all. A column that is not here takes numbers.
var forms = map[string]workbook.Form{
	"sown": workbook.Day, "chamber_out": workbook.Day, "planned": workbook.Day, "set_out": workbook.Day, "date": workbook.Day,
	"bought": workbook.Day, "tested": workbook.Day, "until": workbook.Day, "costs.from": workbook.Day, "time": workbook.DayAndTime,

	"batch": workbook.AsTyped, "crop": workbook.AsTyped, "variety": workbook.AsTyped, "lot": workbook.AsTyped, "tray": workbook.AsTyped,
	"counts.tray": workbook.General, "from": workbook.AsTyped, "replaces": workbook.AsTyped, "start": workbook.AsTyped, "chamber": workbook.AsTyped,
	"kind": workbook.AsTyped, "to": workbook.AsTyped, "last": workbook.AsTyped, "cause": workbook.AsTyped, "supplier": workbook.AsTyped,
	"lot_number": workbook.AsTyped, "organic": workbook.AsTyped, "treated": workbook.AsTyped, "category": workbook.AsTyped, "task": workbook.AsTyped,
	"unit": workbook.AsTyped, "setting": workbook.AsTyped, "what": workbook.AsTyped, "note": workbook.AsTyped,
}

var yesNo = []string{"yes", "no"}

// choices are the words to choose from in a column.
var choices = map[string][]string{
	"start": {string(records.FromSeed), string(records.FromPlug), string(records.FromCutting)},
	"to": {string(records.ToField), string(records.Sold), string(records.Given), string(records.ToSurplus),
		string(records.ToPottedOn), string(records.Dead)},
	"kind": {"air-pruning", "solid-wall"}, "category": wordsOf(records.Categories),
	"task": {string(records.SowingTask), string(records.CareTask), string(records.OutTask)},
	"last": yesNo, "organic": yesNo, "treated": yesNo,
}

// sources are the columns of other sheets to choose from: what was typed there. An empty
// one is a column that names things of its own, and so offers none.
var sources = map[string]string{
	"tray": "trays!tray", "trays.tray": "", "counts.tray": "", "crop": "sowings!crop", "lot": "lots!lot", "lots.lot": "",
	"batch": "sowings!batch", "sowings.batch": "", "sowings.from": "sowings!batch", "replaces": "sowings!batch",
}

// repeating are those of them where a word stands in many rows.
var repeating = []string{"trays!tray", "sowings!crop"}

// wide are the widths of columns of words, in characters.
var wide = map[string]float64{"note": 44, "setting": 18, "what": 24, "crop": 14, "variety": 18, "supplier": 22}

// wordsOf are words as plain text.
func wordsOf[T ~string](words []T) (all []string) {
	for _, w := range words {
		all = append(all, string(w))
	}
	return all
}

// of is what a table says of a log's column: of the log's own, else of any.
func of[T any](table map[string]T, log, column string) T {
	if v, ok := table[log+"."+column]; ok {
		return v
	}
	return table[column]
}

// tables are the sheets of a record book: every log with its columns, and the rows that
// its CSV file has, if there is one.
func tables(files map[string][]byte) ([]workbook.Table, error) {
	var all []workbook.Table
	for _, log := range records.Logs {
		t := workbook.Table{Name: log.Sheet()}
		for _, c := range log.Columns {
			t.Columns = append(t.Columns, column(t.Name, c))
		}
		if err := fill(&t, files[log.Name]); err != nil {
			return nil, err
		}
		all = append(all, t)
	}
	for i := range all {
		for j := range all[i].Columns {
			c := &all[i].Columns[j]
			c.From = lettered(all, c.From)
		}
	}
	return all, nil
}

// column is a column of the format as a sheet has it.
func column(log string, c records.Column) workbook.Column {
	from := of(sources, log, c.Name)
	w := workbook.Column{Head: c.Name, Says: records.AsSheets(c.What), Required: c.Required, Form: of(forms, log, c.Name),
		Words: of(choices, log, c.Name), From: from, Once: slices.Contains(repeating, from), Width: of(wide, log, c.Name)}
	if c.Required {
		w.Says += "\n\nNeeded: a row without it is left out."
	}
	if w.Width == 0 {
		w.Width = max(12, float64(len(c.Name)+4))
	}
	if w.Form == workbook.DayAndTime {
		w.Width = 18
	}
	return w
}

// lettered names a column as spreadsheets do: trays!tray is trays!A.
func lettered(all []workbook.Table, from string) string {
	sheet, name, _ := strings.Cut(from, "!")
	for _, t := range all {
		i := slices.IndexFunc(t.Columns, func(c workbook.Column) bool { return c.Head == name })
		if t.Name == sheet && i >= 0 {
			return sheet + "!" + string(rune('A'+i)) // no log has more than 26 columns
		}
	}
	return ""
}

// fill adds the rows of a CSV file, and its columns that are not the format's. A column
// that the format does not know is kept at the end, so that nothing a grower typed is lost
// on the way into a workbook.
func fill(t *workbook.Table, file []byte) error {
	rows, err := csv.NewReader(bytes.NewReader(file)).ReadAll()
	if err != nil || len(rows) == 0 {
		return err
	}
	at := make([]int, len(rows[0]))
	for i, head := range rows[0] {
		at[i] = slices.IndexFunc(t.Columns, func(c workbook.Column) bool { return c.Head == head })
		if at[i] < 0 {
			at[i] = len(t.Columns)
			t.Columns = append(t.Columns, column(t.Name, records.Column{Name: head}))
		}
	}
	for _, row := range rows[1:] {
		cells := make([]workbook.Cell, len(t.Columns))
		for i, s := range row {
			cells[at[i]] = typed(t.Columns[at[i]].Form, s)
		}
		t.Rows = append(t.Rows, cells)
	}
	return nil
}

// typed is a cell of a column of that form, as a spreadsheet takes what is typed. A text
// stays a text even where it looks like a number: 007 is a batch.
func typed(form workbook.Form, s string) workbook.Cell {
	day, clock, _ := strings.Cut(strings.Replace(s, "T", " ", 1), " ")
	_, err := strconv.ParseFloat(s, 64)
	_, isDay := records.ParseISO(day)
	switch {
	case s == "":
		return workbook.Cell{}
	case form == workbook.Day && isDay && clock == "":
		return workbook.Cell{Kind: workbook.Moment, Text: day}
	case form == workbook.DayAndTime && isDay:
		return workbook.Cell{Kind: workbook.Moment, Text: strings.TrimSpace(day + " " + clock)}
	case form == workbook.General && err == nil:
		return workbook.Cell{Kind: workbook.Number, Text: s}
	}
	return workbook.Cell{Kind: workbook.Text, Text: s}
}
