package records

import (
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
	file  string // its name as found in the folder
	text  text
	csv   *csv.Reader
	base  int // lines before the first that csv sees
	end   int // last line of the record before
	row   int // row of the record before
	bad   []fault
	spare []place // room for the places of the next records
}

// newScanner begins at the header, behind the line that names the separator.
func newScanner(file string, t text) *scanner {
	s := &scanner{file: file, text: t}
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
	s.csv = csv.NewReader(bytes.NewReader(s.text.body[s.from():]))
	s.csv.Comma = s.text.sep
	s.csv.FieldsPerRecord = -1
}

// from is the byte at which csv began.
func (s *scanner) from() int {
	if s.base < len(s.text.lines) {
		return s.text.lines[s.base]
	}
	return len(s.text.body)
}

// faults are the rows that are no CSV.
func (s *scanner) faults() []fault { return s.bad }

// next returns the next record with anything in it; false at the end.
func (s *scanner) next() (record, bool) {
	for {
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
		r := record{fields: fields, places: s.places(len(fields))}
		s.step(r.places[0].line, before)
		r.row = s.row
		if !blankRow(fields) {
			return r, true
		}
	}
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

// places tells where the cells of the record just read stand. Room is taken for many
// records at once, as a book has tens of thousands.
func (s *scanner) places(n int) []place {
	if len(s.spare) < n {
		s.spare = make([]place, max(n, 4096))
	}
	ps := s.spare[:n:n]
	s.spare = s.spare[n:]
	for i := range ps {
		line, col := s.csv.FieldPos(i)
		ps[i] = place{line + s.base, col}
	}
	return ps
}

// place is where the i-th cell of a record stands; just past the end of a row that is
// too short for it.
func (s *scanner) place(rec *record, i int) Pos {
	last := len(rec.places) - 1
	at := rec.places[min(i, last)]
	if i > last {
		at.col = len(s.text.lineText(at.line)) + 1
	}
	return s.pos(at, cellName(i, rec.row))
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
	s.bad = append(s.bad, fault{Problem{s.pos(at, cellName(0, s.row)), Error, check, found, expected, remedy}, cells})
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
		at.col = begin + cell - s.text.lines[line-1] + 1
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
	return sort.Search(len(t.lines), func(line int) bool { return t.lines[line] > i })
}

// lineText is one line, from 1, without its end.
func (t text) lineText(line int) []byte {
	end := len(t.body)
	if line < len(t.lines) {
		end = t.lines[line] - 1
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
