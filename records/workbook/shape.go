package workbook

import "bytes"

// The most of a file's shape that is read: package encoding/xml keeps a record of every
// element that is open, and all attributes of one, each many times larger than its text.
const (
	mostDeep = 256       // elements within one another
	mostTag  = 1_000_000 // bytes of the mark that begins or ends an element
)

// What stands in a file beside elements and text, and how it ends. None of it nests.
var asides = []struct{ begin, end string }{{"<!--", "-->"}, {"<![CDATA[", "]]>"}, {"<?", "?>"}, {"<!", ">"}}

// shape looks over a file before it is decoded, mark by mark, and says where elements stand
// too deep within one another or a mark is too long. Whether it is XML at all is found out
// by the decoder.
func shape(b []byte) error {
	deep := 0
	for {
		at := bytes.IndexByte(b, '<')
		if at < 0 {
			return nil
		}
		b = b[at:]
		if end, is := asideEnd(b); is {
			b = b[end:]
			continue
		}
		end := tagEnd(b)
		if end > mostTag {
			return tooLarge("an element inside the workbook has more than 1 MB of attributes")
		}
		switch {
		case end < 3: // nothing, or no element
		case b[1] == '/':
			deep--
		case b[end-2] != '/':
			deep++
		}
		if deep > mostDeep {
			return tooLarge("elements inside the workbook stand more than 256 deep in one another")
		}
		b = b[end:]
	}
}

// asideEnd is where a comment or the like ends with which b begins, all of b if it does not
// end; false where b begins with none.
func asideEnd(b []byte) (end int, is bool) {
	for _, a := range asides {
		if !bytes.HasPrefix(b, []byte(a.begin)) {
			continue
		}
		at := bytes.Index(b[len(a.begin):], []byte(a.end))
		if at < 0 {
			return len(b), true
		}
		return len(a.begin) + at + len(a.end), true
	}
	return 0, false
}

// tagEnd is where the mark of an element ends with which b begins; where it does not, all of
// b, or just more than is read. What is quoted may hold the character that ends it.
func tagEnd(b []byte) int {
	quote := byte(0)
	for i, c := range b[:min(len(b), mostTag+1)] {
		switch {
		case quote != 0:
			if c == quote {
				quote = 0
			}
		case c == '"' || c == '\'':
			quote = c
		case c == '>':
			return i + 1
		}
	}
	return min(len(b), mostTag+1)
}
