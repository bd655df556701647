package records

import (
	"bufio"
	"bytes"
	"encoding/csv"
	"errors"
	"io"
	"sort"
	"strings"
)

// place is where a cell starts: line and byte column, both from 1.
type place struct{ line, col int }

// scanner reads the records of a CSV file one by one. It goes on after a row that
// is no CSV, and knows where every cell stands. Package csv skips blank lines
// without a word; spreadsheets show them, so rows are counted here.
type scanner struct {
	file   string // its name as found in the folder
	text   text
	csv    *csv.Reader
	base   int // lines before the first that csv sees
	end    int // last line of the record before
	row    int // row of the record before
	bad    []fault
	found  located      // the row that was looked for last
	search bufio.Reader // of that row
	recall func() text  // reads the file once more
	lost   int          // bytes of the text that was let go
}

// located is a row that was looked for again, with the places of its cells.
type located struct {
	record
	places []place
}

// newScanner begins at the header, behind the line that names the separator.
func newScanner(file string, t text, recall func() text) *scanner {
	s := &scanner{file: file, text: t, recall: recall}
	line := 0
	for t.skip > 0 && line < len(t.lines) && strings.TrimSpace(string(t.lineText(line+1))) == "" {
		line++
	}
	s.end = line + t.skip
	s.row = line
	s.start(s.end)
	return s
}

// start begins anew after so many lines.
func (s *scanner) start(lines int) {
	s.base = lines
	s.csv = s.reader(bytes.NewReader(s.text.body[s.from():]))
}

// reader reads records of any width, parted as the file's are.
func (s *scanner) reader(from io.Reader) *csv.Reader {
	r := csv.NewReader(from)
	r.Comma = s.text.sep
	r.FieldsPerRecord = -1
	return r
}

// from is the byte at which csv began.
func (s *scanner) from() int {
	if s.base < len(s.text.lines) {
		return int(s.text.lines[s.base])
	}
	return len(s.text.body)
}

// faults are the rows that are no CSV.
func (s *scanner) faults() []fault { return s.bad }

// next returns the next record with anything in it; false at the end.
func (s *scanner) next() (record, bool) {
	for len(s.bad) < mostFaults { // else it is no CSV, which is said of the whole
		before := s.csv.InputOffset()
		if s.tooLarge(before) {
			continue
		}
		fields, err := s.csv.Read()
		if err == io.EOF {
			return record{}, false
		}
		if err != nil {
			s.stumble(err)
			continue
		}
		line, _ := s.csv.FieldPos(0)
		s.step(line+s.base, before)
		if !blankRow(fields) {
			return record{At: At{uint32(line + s.base), uint32(s.row)}, fields: fields}, true
		}
	}
	return record{}, false
}

// step counts the spreadsheet's rows up to a record that starts in a line:
// blank lines between are rows too.
func (s *scanner) step(line int, before int64) {
	s.row += line - s.end
	s.end = line + s.lineBreaks(before)
}

// lineBreaks counts those inside the record just read.
func (s *scanner) lineBreaks(before int64) int {
	raw := s.text.body[s.from()+int(before) : s.from()+int(s.csv.InputOffset())]
	raw = bytes.TrimLeft(raw, "\n")
	return bytes.Count(bytes.TrimSuffix(raw, []byte("\n")), []byte("\n"))
}

// again reads the row at a spot once more. The last one is kept: several cells of a row
// are often asked for.
func (s *scanner) again(at At) record { return s.locate(at).record }

// locate finds a row and where its cells stand; no cells if the file was changed since.
func (s *scanner) locate(at At) located {
	if s.found.At == at && s.found.fields != nil {
		return s.found
	}
	s.remember()
	before := int(at.Line) - 1
	if before >= len(s.text.lines) {
		return located{record: record{At: at}}
	}
	s.search.Reset(bytes.NewReader(s.text.body[s.text.lines[before]:]))
	again := s.reader(&s.search)
	fields, err := again.Read()
	if err != nil { // of a file that has changed in between: it was read before
		return located{record: record{At: at}}
	}
	s.found = located{record{At: at, fields: fields}, make([]place, len(fields))}
	for i := range fields {
		line, col := again.FieldPos(i)
		s.found.places[i] = place{line + before, col}
	}
	return s.found
}

// largeLog is from how many bytes on a log's text is let go once its rows are read, and
// read again only if a problem needs a cell of it.
const largeLog = 1_000_000

// rest lets the text of a large log go.
func (s *scanner) rest() {
	if len(s.text.body) > largeLog {
		s.lost, s.text, s.csv = len(s.text.body), text{sep: s.text.sep}, nil
	}
}

// remember reads the text again that was let go. If the file has changed since, what is
// in it is not what was read: its cells are then blank, and have no columns.
func (s *scanner) remember() {
	if s.lost == 0 {
		return
	}
	if t := s.recall(); len(t.body) == s.lost {
		s.text = t
	}
	s.lost = 0
}

// anew begins again at the header.
func (s *scanner) anew() source {
	return newScanner(s.file, s.text, s.recall)
}

// most is how many lines there are.
func (s *scanner) most() int { return len(s.text.lines) }

// place is where the i-th cell of a row stands; just past the end of a row that is too
// short for it.
func (s *scanner) place(at At, i int) Pos {
	places := s.locate(at).places
	if len(places) == 0 {
		return Pos{File: s.file, Line: int(at.Line), Cell: cellName(i, int(at.Row))}
	}
	last := len(places) - 1
	cell := places[min(i, last)]
	if i > last {
		cell.col = len(s.text.lineText(cell.line)) + 1
	}
	return s.pos(cell, cellName(i, int(at.Row)))
}

// pos is a place as an editor and a spreadsheet show it.
func (s *scanner) pos(at place, cell string) Pos {
	return Pos{File: s.file, Line: at.line, Column: s.text.column(at.line, at.col), Cell: cell}
}

// stumble notes a row that is no CSV. An open quote swallows what follows, so
// reading goes on in the line after the one where it was opened.
func (s *scanner) stumble(err error) {
	var bad *csv.ParseError
	if !errors.As(err, &bad) {
		s.start(len(s.text.lines))
		return
	}
	at := place{bad.StartLine + s.base, bad.Column}
	found, remedy := "a quotation mark stands inside a cell", `write "" for a quotation mark inside a quoted cell`
	if bad.StartLine != bad.Line || s.openAt(bad) {
		found, remedy = "a quotation mark is opened and not closed", "close the quotation mark, or take it away"
		at.col = 1
	}
	s.passOver("csv", at, found, "quotation marks around the whole cell are expected", remedy)
}

// passOver notes a row that is left out whole, and reads on in the line after the one
// where it began. Its cells are told by the separators of that line alone.
func (s *scanner) passOver(check string, at place, found, expected, remedy string) {
	s.row += at.line - s.end
	s.end = at.line
	cells := strings.SplitN(string(s.text.lineText(at.line)), string(s.text.sep), mostCells)
	s.bad = append(s.bad, fault{errorAt(s.pos(at, cellName(0, s.row)), check, found, expected, remedy), cells})
	s.start(at.line)
}

// openAt reports whether the quote opened in the bad line is never closed.
func (s *scanner) openAt(bad *csv.ParseError) bool {
	return strings.Count(string(s.text.lineText(bad.StartLine+s.base)), `"`)%2 == 1 && errors.Is(bad.Err, csv.ErrQuote)
}

// tooLarge notes the next record, which begins so many bytes after start, if it goes
// beyond the limits; package csv would take it into memory first.
func (s *scanner) tooLarge(before int64) bool {
	rest := s.text.body[s.from()+int(before):]
	begin := len(s.text.body) - len(bytes.TrimLeft(rest, "\n"))
	cell, why := oversize(s.text.body[begin:], byte(s.text.sep))
	if why == fits {
		return false
	}
	line := s.text.lineOf(begin)
	at := place{line, 1}
	if of := s.text.lineOf(begin + cell); of == line { // else the record is told by its first line
		at.col = begin + cell - int(s.text.lines[line-1]) + 1
	}
	switch {
	case why == tooWide:
		s.passOver("size", at, "the row has more than "+plural(mostCells, "cell"), "a row of the log is expected", "is this the right file?")
	case bytes.HasPrefix(s.text.body[begin+cell:], []byte(`"`)):
		s.passOver("size", at, "the quoted cell is longer than 10 kB", "a cell of at most 10 kB is expected", "close the quotation mark in this row, or shorten the text")
	default:
		s.passOver("size", at, "the cell is longer than 10 kB", "a cell of at most 10 kB is expected", "shorten the text, or put it into notes")
	}
	return true
}

// lineOf is the line, from 1, in which a byte of the body stands.
func (t text) lineOf(i int) int {
	return sort.Search(len(t.lines), func(line int) bool { return int(t.lines[line]) > i })
}

// lineText is one line, from 1, without its end.
func (t text) lineText(line int) []byte {
	end := len(t.body)
	if line < len(t.lines) {
		end = int(t.lines[line]) - 1
	}
	return bytes.TrimSuffix(t.body[t.lines[line-1]:end], []byte("\n"))
}

// blankRow reports whether a row has nothing in it but separators and space.
func blankRow(fields []string) bool {
	for _, f := range fields {
		if strings.TrimSpace(f) != "" {
			return false
		}
	}
	return true
}
