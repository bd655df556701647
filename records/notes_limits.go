package records

import "strings"

// What a note may hold. Reading Markdown takes the square of each of these, and no note of
// a season comes near them.
const (
	mostNesting  = 50   // lists and quotations within each other
	mostMarks    = 1000 // brackets, stars, dashes and the like in one paragraph
	mostHeadings = 1000
	mostFigures  = 100
	mostInTables = 50_000 // cells: short rows of a table are filled up to its width
)

// crowd is what is counted of a note, line by line.
type crowd struct {
	marks, headings, figures int
	widest, rows             int // of the paragraph, were it a table
	cells                    int // of the paragraphs before
}

// crowded is where a note has too much of something, what, and what may be; line is 0
// where it has not. A paragraph reaches to the next blank line.
func crowded(text string) (line int, found, expected string) {
	var c crowd
	for rest := range strings.Lines(text) {
		line++
		if found, expected := c.add(strings.TrimRight(rest, "\r\n")); found != "" {
			return line, found, expected
		}
	}
	return 0, "", ""
}

// add counts a line, and says what is too much by it.
func (c *crowd) add(line string) (found, expected string) {
	depth, words := nesting(line)
	if words == "" {
		c.marks, c.cells = 0, c.cells+c.widest*c.rows
		c.widest, c.rows = 0, 0
	}
	if bars := strings.Count(words, "|"); bars > 0 || c.widest > 0 {
		c.widest, c.rows = max(c.widest, bars+1), c.rows+1
	}
	c.marks += countAny(words, "[]*_~`<&!\\")
	if words != "" && (words[0] == '#' || strings.Trim(words, "= ") == "" || strings.Trim(words, "- ") == "") {
		c.headings++
	}
	if fence := strings.TrimLeft(words, "`~"); len(words)-len(fence) >= 3 && strings.HasPrefix(strings.TrimSpace(fence), "figure") {
		c.figures++
	}
	for _, limit := range []struct {
		n, most         int
		found, expected string
	}{
		{depth, mostNesting, "lists or quotations nested too deep", "within each other"},
		{c.marks, mostMarks, "too many marks such as [ and * without a blank line", "in a paragraph"},
		{c.cells + c.widest*c.rows, mostInTables, "too many cells of tables", "in a note"},
		{c.headings, mostHeadings, "too many headings", "in a note"},
		{c.figures, mostFigures, "too many figures", "in a note"},
	} {
		if limit.n > limit.most {
			return limit.found, "at most " + itoa(limit.most) + " " + limit.expected + " are expected"
		}
	}
	return "", ""
}

// nesting is how deep a line may stand by the marks before its words and the words. A space
// belongs to the mark before it; of further ones two may be one list.
func nesting(line string) (depth int, words string) {
	spaces := 0
	for i := 0; i < len(line); i++ {
		mark := i + 1 + len(line[i+1:]) - len(strings.TrimLeft(line[i+1:], "0123456789"))
		switch c := line[i]; {
		case c == ' ':
			spaces++
		case c == '\t':
			spaces += 4
		case c == '>':
			depth++
			if spaceAt(line, i+1) {
				i++
			}
		case strings.IndexByte("-+*", c) >= 0 && spaceAt(line, i+1):
			depth, i = depth+1, i+1
		case c >= '0' && c <= '9' && mark < len(line) && strings.IndexByte(".)", line[mark]) >= 0 && spaceAt(line, mark+1):
			depth, i = depth+1, mark+1
		default:
			return depth + spaces/2, line[i:]
		}
	}
	return depth, ""
}

// spaceAt reports whether a space stands at a place of a line.
func spaceAt(line string, i int) bool { return i < len(line) && (line[i] == ' ' || line[i] == '\t') }

// countAny counts the bytes of a text that are among some.
func countAny(s, any string) (n int) {
	for i := range len(s) {
		if strings.IndexByte(any, s[i]) >= 0 {
			n++
		}
	}
	return n
}
