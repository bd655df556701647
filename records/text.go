package records

import (
	"bytes"
	"strings"
	"unicode/utf8"
)

// text is a file as the reader wants it: UTF-8 without a mark, line ends LF.
type text struct {
	body  []byte
	lines []uint32 // where each line starts
	skip  int      // lines before the header that no spreadsheet shows as a row
	sep   rune
}

var byteOrderMark = []byte("\xef\xbb\xbf")

// newText lays out decoded text for the reader.
func newText(body []byte, log Log) text {
	t := text{body: body, lines: lineStarts(body)}
	first := t.firstLine()
	if sep, ok := sepLine(first); ok {
		t.sep, t.skip = sep, 1
		return t
	}
	t.sep = separator(first, log)
	return t
}

// lineStarts is the byte at which each line begins; a line end that ends the text
// begins none.
func lineStarts(body []byte) []uint32 {
	starts := make([]uint32, 1, bytes.Count(body, []byte{'\n'})+1)
	for i := 0; ; {
		n := bytes.IndexByte(body[i:], '\n') + 1
		if i += n; n == 0 || i >= len(body) {
			return starts
		}
		starts = append(starts, uint32(i))
	}
}

// firstLine is the first line with anything in it.
func (t text) firstLine() string {
	for line := range bytes.Lines(t.body) {
		if strings.TrimSpace(string(line)) != "" {
			return strings.Trim(string(line), " \n")
		}
	}
	return ""
}

// sepLine reads the line by which some spreadsheets name the separator.
func sepLine(line string) (sep rune, ok bool) {
	line = strings.Trim(strings.TrimRight(line, " "), `"`)
	if rest, found := strings.CutPrefix(strings.ToLower(line), "sep="); found && len(rest) == 1 && strings.Contains(",;\t|", rest) {
		return rune(rest[0]), true
	}
	return 0, false
}

// separator tells comma, semicolon and tab apart by which of them finds the
// most column names in the header.
func separator(header string, log Log) rune {
	best, most := ',', -1
	for _, sep := range []rune{',', ';', '\t'} {
		known := 0
		names := strings.Split(header, string(sep))
		for _, n := range names {
			if log.column(canonicalHeader(strings.Trim(n, `" `), log)) >= 0 {
				known++
			}
		}
		if score := known*1000 + len(names); score > most {
			best, most = sep, score
		}
	}
	return best
}

// column turns a byte column of a line into characters, both from 1.
func (t text) column(line, col int) int {
	start := int(t.lines[min(line, len(t.lines))-1])
	end := min(start+col-1, len(t.body))
	return utf8.RuneCount(t.body[start:end]) + 1
}
