package records

import (
	"bytes"
	"encoding/csv"
	"errors"
	"io"
	"strings"
)

// place is where a cell starts: line and byte column, both from 1.
type place struct{ line, col int }

// record is one row of a file with anything in it.
type record struct {
	fields []string
	places []place
	row    int // as a spreadsheet counts
}

// fault is a row that is no CSV.
type fault struct {
	line, col, row int
	open           bool // a quote was opened and never closed
}

// scanner reads the records of a text one by one. It goes on after a row that
// is no CSV, and knows where every cell stands. Package csv skips blank lines
// without a word; spreadsheets show them, so rows are counted here.
type scanner struct {
	text   text
	csv    *csv.Reader
	base   int // lines before the first that csv sees
	end    int // last line of the record before
	row    int // row of the record before
	faults []fault
	spare  []place // room for the places of the next records
}

// newScanner begins at the header, behind the line that names the separator.
func newScanner(t text) *scanner {
	s := &scanner{text: t}
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
	rest := s.text.body[len(s.text.body):]
	if lines < len(s.text.lines) {
		rest = s.text.body[s.text.lines[lines]:]
	}
	s.csv = csv.NewReader(bytes.NewReader(rest))
	s.csv.Comma = s.text.sep
	s.csv.FieldsPerRecord = -1
}

// next returns the next record with anything in it; false at the end.
func (s *scanner) next() (record, bool) {
	for {
		before := s.csv.InputOffset()
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
	from := len(s.text.body)
	if s.base < len(s.text.lines) {
		from = s.text.lines[s.base]
	}
	raw := s.text.body[from+int(before) : from+int(s.csv.InputOffset())]
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

// stumble notes a row that is no CSV. An open quote swallows what follows, so
// reading goes on in the line after the one where it was opened.
func (s *scanner) stumble(err error) {
	var bad *csv.ParseError
	if !errors.As(err, &bad) {
		s.start(len(s.text.lines))
		return
	}
	line := bad.StartLine + s.base
	s.row += line - s.end
	s.end = line
	f := fault{line: line, col: bad.Column, row: s.row, open: bad.StartLine != bad.Line || s.openAt(bad)}
	if f.open {
		f.col = 1
	}
	s.faults = append(s.faults, f)
	s.start(line)
}

// openAt reports whether the quote opened in the bad line is never closed.
func (s *scanner) openAt(bad *csv.ParseError) bool {
	return strings.Count(string(s.text.lineText(bad.StartLine+s.base)), `"`)%2 == 1 && errors.Is(bad.Err, csv.ErrQuote)
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
