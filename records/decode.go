package records

import (
	"bytes"
	"strings"
	"unicode/utf8"

	"golang.org/x/text/encoding/charmap"
	"golang.org/x/text/encoding/unicode"
)

// decoded is a file's text: UTF-8 without a mark, line ends LF.
type decoded struct {
	body   []byte
	bad    string // what it is instead of text that can be read; empty if it is that
	line   int    // of what is bad
	legacy int    // first line with bytes read as Windows-1252; 0: none
	sample string // the word of the first such byte, as read
}

// decode reads a file's bytes as text, or says what they are instead.
func decode(raw []byte) decoded {
	if what := foreign(raw); what != "" {
		return decoded{bad: what, line: 1}
	}
	raw, whole := fromUTF16(raw)
	if !whole {
		return decoded{bad: "the file is UTF-16 text of which a part is missing", line: 1}
	}
	body := unixLines(bytes.TrimPrefix(raw, byteOrderMark))
	if i := bytes.IndexByte(body, 0); i >= 0 {
		return decoded{bad: withNUL(body), line: lineAt(body, i)}
	}
	if utf8.Valid(body) {
		return decoded{body: body}
	}
	return fromWindows1252(body)
}

// signatures are the first bytes of files that are often saved under a log's name and
// are no CSV, the longer before the shorter that begins alike. Sources: the Unicode
// Standard, chapter 23.8 (marks); PKWARE's APPNOTE 4.3.7; [MS-CFB] 2.2; ISO 32000-1,
// 7.5.2; RFC 1952, 2.3.1.
var signatures = []struct{ first, what string }{
	{"\xff\xfe\x00\x00", "the file is UTF-32 text"},
	{"\x00\x00\xfe\xff", "the file is UTF-32 text"},
	{"PK\x03\x04", "the file is a workbook (.xlsx or .ods), or another kind of packed file"},
	{"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1", "the file is a workbook of an older kind (.xls)"},
	{"%PDF-", "the file is a PDF"},
	{"{\\rtf", "the file is RTF, a text with its layout"},
	{"\x1f\x8b", "the file is packed (gzip)"},
	{"\x84\x31\x95\x33", "the file is GB18030 text"},
	{"+/v8", "the file is UTF-7 text"},
	{"+/v9", "the file is UTF-7 text"},
	{"+/v+", "the file is UTF-7 text"},
	{"+/v/", "the file is UTF-7 text"},
}

// foreign names what begins as no CSV file does; empty for anything else.
func foreign(raw []byte) string {
	for _, s := range signatures {
		if bytes.HasPrefix(raw, []byte(s.first)) {
			return s.what
		}
	}
	head := strings.ToLower(strings.TrimSpace(string(raw[:min(len(raw), 100)])))
	for _, tag := range []string{"<!doctype html", "<html", "<?xml"} {
		if strings.HasPrefix(head, tag) {
			return "the file is a web page or XML"
		}
	}
	return ""
}

// fromUTF16 turns UTF-16 that begins with a mark into UTF-8; whole is false where half
// a character is left over or stands alone.
func fromUTF16(raw []byte) (body []byte, whole bool) {
	order := unicode.LittleEndian
	switch {
	case bytes.HasPrefix(raw, []byte("\xfe\xff")):
		order = unicode.BigEndian
	case !bytes.HasPrefix(raw, []byte("\xff\xfe")):
		return raw, true
	}
	body, err := unicode.UTF16(order, unicode.UseBOM).NewDecoder().Bytes(raw)
	return body, err == nil && !bytes.ContainsRune(body, utf8.RuneError)
}

// withNUL names a file that holds NUL bytes, which no text in UTF-8 does: Latin letters
// in UTF-16 have one beside each letter, in UTF-32 three.
func withNUL(body []byte) string {
	nul := bytes.Count(body[:min(len(body), 1000)], []byte{0})
	switch n := min(len(body), 1000); {
	case nul*10 >= n*7:
		return "the file is UTF-32 text without a mark"
	case nul*10 >= n*4:
		return "the file is UTF-16 text without a mark"
	}
	return "the file holds a NUL byte: it is no text"
}

// undefined are the bytes that Windows-1252 has no character for.
const undefined = "\x81\x8d\x8f\x90\x9d"

// fromWindows1252 reads every byte that is no UTF-8 as Windows-1252. What is UTF-8
// stays, as in a file to which two programs wrote.
func fromWindows1252(raw []byte) decoded {
	d := decoded{body: make([]byte, 0, len(raw)+len(raw)/8)}
	first := -1
	for i := 0; i < len(raw); {
		r, n := utf8.DecodeRune(raw[i:])
		if r == utf8.RuneError && n == 1 {
			if strings.IndexByte(undefined, raw[i]) >= 0 {
				return decoded{bad: "the file holds bytes that are neither UTF-8 nor Windows-1252", line: lineAt(raw, i)}
			}
			if first < 0 {
				first, d.legacy = len(d.body), lineAt(raw, i)
			}
			r = charmap.Windows1252.DecodeByte(raw[i])
		}
		d.body = utf8.AppendRune(d.body, r)
		i += n
	}
	d.sample = wordAt(d.body, first)
	return d
}

// wordAt is the word around a byte, cut to what a message can show.
func wordAt(body []byte, at int) string {
	apart := func(r rune) bool { return strings.ContainsRune(" ,;\t\n\"", r) }
	from := bytes.LastIndexFunc(body[:at], apart) + 1
	word, _, _ := strings.Cut(string(body[from:min(len(body), at+40)]), "\n")
	if end := strings.IndexFunc(word[at-from:], apart); end > 0 {
		word = word[:at-from+end]
	}
	return strings.ToValidUTF8(word, "")
}

// lineAt is the line, from 1, in which a byte stands.
func lineAt(body []byte, i int) int { return 1 + bytes.Count(body[:i], []byte("\n")) }

// unixLines turns CRLF and lone CR into LF.
func unixLines(raw []byte) []byte {
	if bytes.IndexByte(raw, '\r') < 0 {
		return raw
	}
	raw = bytes.ReplaceAll(raw, []byte("\r\n"), []byte("\n"))
	return bytes.ReplaceAll(raw, []byte("\r"), []byte("\n"))
}
