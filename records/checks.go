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
	{"file", Fatal, "each log is a file that can be read", nil},
	{"encoding", Fatal, "each log is UTF-8 text", nil},
	{"header", Fatal, "each log has a header", nil},
	{"missing-column", Fatal, "each log has its required columns", nil},
	{"double-column", Fatal, "no column stands twice", nil},
	{"near-column", Warning, "no further column is nearly one of the format's", nil},
	{"near-file", Warning, "no other file is nearly called as a log", nil},
	{"notes", Warning, "notes are called notes/YEAR.md and are UTF-8 text", nil},
	{"csv", Error, "quotation marks stand around whole cells", nil},
	{"ragged", Error, "no row has more cells than the header", nil},
	{"unnamed-column", Warning, "a column with cells has a name", nil},
	{"setting", Fatal, "each setting is one of its values", nil},
	{"setting-name", Fatal, "no setting is misspelt or stands twice", nil},
	{"setting-unknown", Warning, "each setting is known", nil},
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
	{"score-range", Error, "an overall mark is from 1 to 5", (*loader).checkMarks},
	{"look-form", Error, "a look has looked and usable, or s1 to s5, or a mark", (*loader).checkLookForms},
	{"usable-above-looked", Error, "no more plants are usable than were looked at", (*loader).checkUsable},
	{"amount-or-hours", Error, "a cost has either an amount or hours, hours being labour", (*loader).checkCostForms},
	{"from-after-until", Error, "a cost's period begins before it ends", (*loader).checkPeriods},
	{"repeats", Warning, "no cost repeats a purchase of trays or a lot; one that does is left out", (*loader).checkRepeats},
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
