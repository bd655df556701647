package records

import (
	"errors"
	"io/fs"
	"slices"
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"

	"traybook/records/workbook"
)

// LoadWorkbook reads a record book that is one workbook, .xlsx or .ods, with a sheet
// for each log. name is how messages call the file, raw what it holds; beside is the
// folder that holds the folder notes, nil for none. All else is as with Load.
func LoadWorkbook(name string, raw []byte, beside fs.FS) (*Book, []Problem) {
	book, err := workbook.Read(raw, func(sheet string) bool { return logOfSheet(sheet) != "" })
	return readBook(&sheetsOf{name, book, err, beside})
}

// sheetsOf is a book in a workbook.
type sheetsOf struct {
	name  string
	book  *workbook.Book
	err   error
	notes fs.FS
}

// beside holds the folder notes.
func (w *sheetsOf) beside() fs.FS {
	if w.notes == nil {
		return nowhere{}
	}
	return w.notes
}

// words calls logs by their sheets.
func (w *sheetsOf) words(s string) string { return AsSheets(s) }

// AsSheets calls the logs of a text by their sheets: sheet counts for counts.csv.
func AsSheets(s string) string { return asSheets.Replace(s) }

var asSheets = func() *strings.Replacer {
	var pairs []string
	for _, l := range Logs {
		pairs = append(pairs, l.Name, "sheet "+l.Sheet())
	}
	return strings.NewReplacer(pairs...)
}()

// nowhere is a folder that is not there.
type nowhere struct{}

// Open finds nothing.
func (nowhere) Open(name string) (fs.File, error) {
	return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrNotExist}
}

// logOfSheet is the log that a sheet is named as, without regard to case and spaces;
// empty for none.
func logOfSheet(sheet string) string {
	folded := norm.NFC.String(strings.ToLower(sheet))
	folded = strings.Map(func(r rune) rune {
		if unicode.IsSpace(r) {
			return -1
		}
		return r
	}, folded)
	for _, l := range Logs {
		if l.Sheet() == folded {
			return l.Name
		}
	}
	return ""
}

// Sheet is what the log's sheet is called: its name without the ending.
func (l Log) Sheet() string { return strings.TrimSuffix(l.Name, ".csv") }

// find matches the workbook's sheets with the logs. A sheet that is called exactly as
// its log goes before one that is nearly. One without a row is no log yet: a starter
// workbook has them all.
func (w *sheetsOf) find(l *loader) {
	if w.err != nil {
		l.unreadable(Pos{File: w.name}, w.err)
		return
	}
	for _, s := range w.book.Sheets {
		if log := logOfSheet(s.Name); log != "" && !empty(s) && (l.found[log] == "" || s.Name == logOf(log).Sheet()) {
			l.found[log] = s.Name
		}
	}
	for _, s := range w.book.Sheets {
		if !empty(s) || logOfSheet(s.Name) == "" {
			w.passedOver(l, s.Name)
		}
	}
	if l.found["sowings.csv"] == "" {
		l.report("no-sowings", Pos{File: w.name}, "the workbook has no sheet sowings with anything in it", "a sheet sowings, a row per batch, is expected",
			"name the sheet of the sowings so; see the book's format")
	}
}

// empty reports whether a sheet that was read has no row below its header; of sowings,
// which every book has, not even that.
func empty(s workbook.Sheet) bool {
	if s.Bad != nil || logOfSheet(s.Name) == "sowings.csv" {
		return s.Bad == nil && len(s.Rows) == 0
	}
	return len(s.Rows) <= 1
}

// unreadable reports what the reader of workbooks says.
func (l *loader) unreadable(at Pos, err error) {
	remedy := ""
	var u workbook.Unread
	if errors.As(err, &u) {
		remedy = u.Remedy
	}
	l.report("file", at, err.Error(), "a workbook with a sheet for each log is expected", remedy)
}

// passedOver warns of a sheet that is likely meant to be read, and notes any other that the
// grower made.
func (w *sheetsOf) passedOver(l *loader, name string) {
	log := logOfSheet(name)
	if l.found[log] == name && log != "" || name == workbook.ListsSheet {
		return
	}
	if log == "" {
		log = takenFor(name + ".csv")
	}
	switch {
	case log != "" && l.found[log] != "":
		l.report("near-file", Pos{File: name}, "the sheet is not read; it is taken for a copy of "+quote(l.found[log]),
			"one sheet for each log is expected", "put what is right into one of them, and rename the other")
	case log != "":
		l.report("near-file", Pos{File: name}, "the sheet is not read; it is taken for "+logOf(log).Sheet(), "a log's name is expected",
			"did you mean "+quote(logOf(log).Sheet())+"? Rename it")
	default:
		l.others = append(l.others, printable(name))
	}
}

// open opens a log's sheet.
func (w *sheetsOf) open(l *loader, log Log) (source, bool) {
	name := l.found[log.Name]
	if name == "" {
		return nil, false
	}
	i := slices.IndexFunc(w.book.Sheets, func(s workbook.Sheet) bool { return s.Name == name })
	s := &w.book.Sheets[i]
	if s.Bad != nil {
		l.unreadable(Pos{File: s.Name}, s.Bad)
		return nil, false
	}
	return &sheetRows{sheet: s}, true
}
