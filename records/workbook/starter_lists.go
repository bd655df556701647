package workbook

import (
	"slices"
	"strconv"
	"strings"

	"github.com/xuri/excelize/v2"
)

// ListsSheet is the hidden sheet of a starter workbook that holds what its drop-down lists
// offer, each word once. It is nobody's log.
const ListsSheet = "drop-down lists"

// mostListed is how many words such a list has.
const mostListed = 500

// A drop-down list is a range of cells, and a range repeats what was typed twice. So each
// column that repeats has two of formulas in ListsSheet: how many different words stand in
// its rows so far, and the words, in the order in which they were first typed. They are of
// functions that every program of 2007 and later knows, work for rows typed later, and
// point to whole columns, as a reference to a row is lost with the row.

// listed is the range that a column offers to choose from. It ends with what is typed
// there, so that the list shows no blanks. A column without repeats is such a range itself.
func (w *writer) listed(c Column) string {
	if !c.Once {
		sheet, col := ofColumn(c.From)
		return "OFFSET(" + sheet + "!$" + col + "$1,1,0,MAX(1,COUNTA(" + sheet + "!$" + col + ":$" + col + ")-1),1)"
	}
	if !slices.Contains(w.lists, c.From) {
		w.lists = append(w.lists, c.From)
	}
	count, word := w.columnsOf(c.From)
	from := "'" + ListsSheet + "'!$"
	return "OFFSET(" + from + word + "$1,1,0,MAX(1,MIN(" + strconv.Itoa(mostListed) + "," + from + count + "$" + strconv.Itoa(lastListed) + ")),1)"
}

// ofColumn takes trays!A apart.
func ofColumn(from string) (sheet, col string) {
	sheet, col, _ = strings.Cut(from, "!")
	return sheet, col
}

// columnsOf are the two columns of a list in ListsSheet.
func (w *writer) columnsOf(from string) (count, word string) {
	i := 2 * slices.Index(w.lists, from)
	var err, err2 error
	count, err = excelize.ColumnNumberToName(i + 1)
	word, err2 = excelize.ColumnNumberToName(i + 2)
	w.try(err)
	w.try(err2)
	return count, word
}

// listsSheet writes ListsSheet, if a list asks for it. Its results are left to the program
// that opens the workbook.
func (w *writer) listsSheet() {
	if len(w.lists) == 0 {
		return
	}
	_, err := w.NewSheet(ListsSheet)
	w.try(err)
	for _, from := range w.lists {
		w.words(from)
	}
	w.try(w.SetSheetVisible(ListsSheet, false))
	always := true
	w.try(w.SetCalcProps(&excelize.CalcPropsOptions{FullCalcOnLoad: &always}))
}

// words writes the two columns of a list.
func (w *writer) words(from string) {
	sheet, col := ofColumn(from)
	count, word := w.columnsOf(from)
	column := sheet + "!$" + col + ":$" + col
	w.try(w.SetCellStr(ListsSheet, count+"1", "different so far"))
	w.try(w.SetCellStr(ListsSheet, word+"1", from))
	before := "0"
	for row := 2; row <= lastListed; row++ {
		at := count + strconv.Itoa(row)
		// A blank cell counts nothing, a word where it stands for the first time one.
		w.try(w.SetCellFormula(ListsSheet, at, before+"+IFERROR(IF(INDEX("+column+",ROW())=\"\",0,IF(MATCH(INDEX("+column+",ROW()),"+column+",0)=ROW(),1,0)),0)"))
		before = at
	}
	counts := "$" + count + "$1:$" + count + "$" + strconv.Itoa(lastListed)
	for row := 2; row <= mostListed+1; row++ {
		w.try(w.SetCellFormula(ListsSheet, word+strconv.Itoa(row), "IF(ROW()-1>"+before+",\"\",INDEX("+column+",MATCH(ROW()-1,"+counts+",0)))"))
	}
}
