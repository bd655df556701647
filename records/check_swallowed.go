package records

import (
	"slices"
	"strings"
)

// checkSwallowed warns of quoted cells that hold what looks like rows of their log: a
// quotation mark left open, or closed late, takes rows into a note without a word.
func (l *loader) checkSwallowed() {
	for _, log := range l.logs {
		for _, i := range log.lined {
			r := row{log, i}
			for col, cell := range r.found().fields {
				if strings.Contains(cell, "\n") {
					r.checkLines(col, cell)
				}
			}
		}
	}
}

// checkLines warns where the lines of a cell behind its first look like rows.
func (r row) checkLines(col int, cell string) {
	at := r.place(col)
	first, last := 0, 0
	for i, line := range strings.Split(cell, "\n") {
		if i > 0 && r.looksLikeRow(line) {
			last = at.Line + i
			if first == 0 {
				first = last
			}
		}
	}
	if first == 0 {
		return
	}
	rows := "row " + itoa(first)
	if last > first {
		rows = "rows " + itoa(first) + " to " + itoa(last)
	}
	r.report("swallowed", at, "a quotation mark may have swallowed "+rows, "a cell that ends in its own row is expected",
		"they are not read: close the quotation mark in this row")
}

// looksLikeRow reports whether a line inside a cell could be a row of the log: it has a
// cell in each required column, and days and numbers where those belong.
func (l *log) looksLikeRow(line string) bool {
	for _, sep := range []string{",", ";", "\t", "|"} {
		cells := strings.Split(line, sep)
		if len(cells) > 1 && l.couldBe(cells) {
			return true
		}
	}
	return false
}

// numbers are the required columns that hold numbers.
var numbers = map[string][]string{
	"sowings.csv": {"trays"}, "out.csv": {"plants"}, "trays.csv": {"cells"}, "chamber.csv": {"temp"}, "wishes.csv": {"plants"},
}

// couldBe reports whether cells are those of a row of the log.
func (l *log) couldBe(cells []string) bool {
	told := false // by more than words, which a note has too
	for _, name := range requiredOf(l.Log) {
		if l.index(name) >= len(cells) {
			return false
		}
		cell := strings.Trim(cells[l.index(name)], ` "`)
		day, number := slices.Contains(dateColumns[l.Name], name), slices.Contains(numbers[l.Name], name)
		if cell == "" || day && !isDay(cell) || number && !isNumber(cell) {
			return false
		}
		told = told || day || number
	}
	return told || l.isCrop(cells)
}

// isCrop reports whether the cell of a row's crop is one of the book's: a lot has
// neither a day nor a number that it must have.
func (l *log) isCrop(cells []string) bool {
	i := l.index("crop")
	if i < 0 {
		return false
	}
	return l.names.has("crop", strings.Trim(cells[i], ` "`))
}

// isDay reports whether a cell is a day, in whatever order.
func isDay(s string) bool {
	day, _ := splitTime(s)
	_, iso := ParseISO(day)
	_, slashed := parseSlashed(day)
	return iso || slashed
}

// isNumber reports whether a cell is a number, with whatever sign before its fraction.
func isNumber(s string) bool {
	_, withPoint := parseNumber(s, point)
	_, withComma := parseNumber(s, comma)
	return withPoint || withComma
}
