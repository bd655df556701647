package records

// Check is one named check: how grave a finding is and what it looks at.
type Check struct {
	Name     string
	Severity Severity
	What     string
	run      func(*loader) // none: made while the cells are read
}

// Checks is the table of all checks, those across logs in the order in which
// they run: a row left out by one is not looked at by the next.
var Checks = []Check{
	{"folder", Fatal, "the folder of the book can be listed", nil},
	{"no-sowings", Fatal, "the folder holds sowings.csv", nil},
	{"file", Fatal, "each log is a file that can be read, with no more in it than a farm has", nil},
	{"encoding", Fatal, "each log is text in UTF-8, or in UTF-16 with a mark", nil},
	{"header", Fatal, "each log has a header in its first line", nil},
	{"missing-column", Fatal, "each log has its required columns", nil},
	{"double-column", Fatal, "no column stands twice", nil},
	{"other-unit", Fatal, "a unit in a column's name is the book's", nil},
	{"near-column", Warning, "no further column's name holds, means or is nearly one of the format's", nil},
	{"near-file", Warning, "no other file is called nearly as a log, or as a copy of one", nil},
	{"workbook", Warning, "no workbook stands beside the logs", nil},
	{"windows-1252", Warning, "no log holds bytes that are read as Windows-1252", nil},
	{"note-size", Error, "a season's notes are no more than 1 MB, with headings, tables and marks in measure", nil},
	{"size", Error, "a row is no more than 200 cells, a cell no more than 10 kB", nil},
	{"csv", Error, "quotation marks stand around whole cells", nil},
	{"merged", Error, "no cells of a sheet are merged", nil},
	{"formula", Error, "no cell of a sheet holds an error, or a formula without a result", nil},
	{"ragged", Error, "no row has more cells than the header", nil},
	{"unnamed-column", Warning, "a column with cells has a name", nil},
	{"setting", Fatal, "each setting is one of its values", nil},
	{"setting-name", Fatal, "each setting is one of the format's and stands once", nil},
	{"total-row", Error, "no row adds up others", nil},
	{"blank", Error, "required cells are filled in", nil},
	{"whole-number", Error, "counts are whole numbers", nil},
	{"number", Error, "numbers are numbers", nil},
	{"out-of-range", Error, "numbers are within their range", nil},
	{"date", Error, "dates are days of the calendar", nil},
	{"date-order", Error, "the order of day, month and year is known", nil},
	{"time", Error, "times are times of day", nil},
	{"yes-no", Error, "yes or no", nil},
	{"word", Error, "words are of their list", nil},
	{"spelling", Warning, "a name is always spelt alike", nil},

	{"tray-differs", Error, "kind, cells and cell_ml of a tray code are the same in all its rows", (*loader).checkTrayCodes},
	{"double-lot", Error, "a lot's code stands for one lot", (*loader).checkDoubleLots},
	{"double-batch", Error, "a batch's code stands for one batch", (*loader).checkDoubleBatches},
	{"cells-above-trays", Error, "no more cells are sown than the whole trays hold", (*loader).checkCellsOfTrays},
	{"bought-late", Error, "nothing is bought more than a year after every other date", (*loader).checkBought},
	{"before-sown", Error, "nothing of a batch happens before it is sown", (*loader).checkSowingDates},
	{"unknown-from", Error, "the batch in from is in sowings.csv", (*loader).checkFromKnown},
	{"from-later", Error, "the batch in from was sown before", (*loader).checkFromEarlier},
	{"from-left-out", Error, "the batch in from is not left out (said of that batch alone)", (*loader).leaveOutAfterFrom},
	{"unknown-batch", Error, "the batch is in sowings.csv", (*loader).checkBatches},
	{"row-before-sown", Error, "no count, look or plant out comes before the sowing", (*loader).checkRowDates},
	{"emerged-or-empty", Error, "a count has either emerged or empty", (*loader).checkCountForms},
	{"tray-number", Error, "the number of a counted tray is one of the batch's", (*loader).checkTrayNumbers},
	{"cells-above-sown", Error, "no more cells are looked at than were sown", (*loader).checkCellsLookedAt},
	{"emerged-above-cells", Error, "no more cells have emerged, or are empty, than were looked at", (*loader).checkEmerged},
	{"lost-above-sown", Error, "no more cells are lost than were sown", (*loader).checkLost},
	{"score-range", Error, "an overall mark is from 1 to 5", (*loader).checkMarks},
	{"look-form", Error, "a look has looked and usable, or s1 to s5, or a mark", (*loader).checkLookForms},
	{"usable-above-looked", Error, "no more plants are usable than were looked at", (*loader).checkUsable},
	{"looked-above-sown", Error, "no more plants are looked at than cells were sown", (*loader).checkLooked},
	{"low-above-high", Error, "a day's lowest temperature is no higher than its highest", (*loader).checkHouse},
	{"amount-or-hours", Error, "a cost has either an amount or hours, hours being labour", (*loader).checkCostForms},
	{"from-after-until", Error, "a period begins before it ends", (*loader).checkPeriods},
	{"repeats", Warning, "no cost repeats a purchase of trays or a lot; one that does is left out", (*loader).checkRepeats},
	{"rows-twice", Warning, "no row stands twice", (*loader).checkTwice},
	{"swallowed", Warning, "no quoted cell holds rows of the log", (*loader).checkSwallowed},
	{"unknown-tray", Warning, "the tray is in trays.csv, where there is one", (*loader).checkTrays},
	{"unknown-lot", Warning, "the lot is in lots.csv, where there is one", (*loader).checkLots},
	{"unknown-crop", Warning, "the crop of a cost is in sowings.csv", (*loader).checkCrops},
	{"unknown-replaces", Warning, "the batch in replaces is in sowings.csv", (*loader).checkReplaces},
	{"other-lot", Warning, "the lot is of the batch's crop and variety", (*loader).checkLotCrops},
	{"count-falls", Warning, "a count falls by no more than lost", (*loader).checkFalls},
	{"unnumbered-count", Warning, "counts of a batch all have a tray's number, or none", (*loader).checkNumbered},
	{"out-above-cells", Warning, "no more plants go out than cells were sown", (*loader).checkPlantsOut},
	{"out-twice", Warning, "a batch's plants out stand in sowings.csv or in out.csv", (*loader).checkOutTwice},
	{"no-wage", Warning, "hours have a wage", (*loader).checkWage},
	{"task", Warning, "only labour has a task", (*loader).checkTasks},
	{"trays-in-use", Warning, "no more trays of a code are in use than owned", (*loader).checkTraysInUse},
	{"odd-price", Warning, "prices of a tray code, and of a crop's seeds, are alike", (*loader).checkPrices},
	{"odd-amount", Warning, "no amount is ten times the largest other of its category", (*loader).checkAmounts},
	{"odd-number", Warning, "no number is far above what is usual in its column", (*loader).checkNumbers},
	{"odd-wanted", Warning, "cells sown and plants wanted are not many times each other", (*loader).checkWanted},
	{"shifted", Warning, "no cell seems to have slipped into the next column", (*loader).checkShifted},
	{"long-period", Warning, "no cost covers more than a year", (*loader).checkLongPeriods},
	{"moves-today", Warning, "no date lies long after every other", (*loader).checkAhead},
	{"long-stay", Warning, "no batch is in the house for more than 200 days", (*loader).checkStays},
	{"row-after-end", Warning, "no count, look or plant out comes after the batch's end", (*loader).checkAfterEnd},
	{"another-year", Warning, "no date jumps to another year and back", (*loader).checkYears},
	{"notes", Warning, "notes are called notes/YEAR.md, are UTF-8 text, and of a season with sowings", (*loader).checkNotes},
	{"season", Warning, "dates lie in a season that has sowings", (*loader).checkSeasons},
	{"near-name", Warning, "no two crops, or varieties of a crop, are nearly the same", (*loader).checkNearNames},
}

// severities maps each check to its severity.
func severities() map[string]Severity {
	m := map[string]Severity{}
	for _, c := range Checks {
		m[c.Name] = c.Severity
	}
	return m
}
