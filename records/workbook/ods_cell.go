package workbook

import (
	"encoding/xml"
	"regexp"
	"strconv"
	"strings"
)

// valueOf is what a cell of an .ods file holds: its typed value, else its text.
func valueOf(e xml.StartElement, content string) Cell {
	kind, calculated := "", ""
	for _, a := range e.Attr {
		if a.Name.Local == "value-type" && a.Name.Space == officeSpace {
			kind = a.Value
		} else if a.Name.Local == "value-type" {
			calculated = a.Value // LibreOffice's own word beside it: error
		}
	}
	formula := attr(e, "formula") != ""
	switch {
	case calculated == "error", formula && isFault(content):
		return faultCell(content)
	case kind == "" && formula && content == "":
		return Cell{Kind: Unsolved}
	}
	return typed(kind, e, content)
}

// typed is a cell of one of the types of OpenDocument 1.3, part 3, 19.387.
func typed(kind string, e xml.StartElement, content string) Cell {
	switch kind {
	case "float", "currency", "percentage":
		x, ok := finite(attr(e, "value"))
		switch {
		case !ok:
			return textCell(content)
		case kind == "percentage":
			return percentCell(x)
		}
		return numberCell(x)
	case "date":
		return isoCell(attr(e, "date-value"))
	case "time":
		return lengthCell(attr(e, "time-value"))
	case "boolean":
		return boolCell(attr(e, "boolean-value") == "true")
	}
	if content == "" {
		content = attr(e, "string-value")
	}
	return textCell(content)
}

// isFault reports whether a formula shows one of the words for an error.
func isFault(s string) bool {
	return strings.HasPrefix(s, "Err:") || strings.HasPrefix(s, "#") && (strings.HasSuffix(s, "!") || strings.HasSuffix(s, "?") || s == "#N/A")
}

var lengthOfTime = regexp.MustCompile(`^PT(\d{1,6})H(\d{1,2})M(\d{1,2})(?:[.,]\d*)?S$`)

// lengthCell reads a time of day, which OpenDocument writes as a length of time.
func lengthCell(s string) Cell {
	m := lengthOfTime.FindStringSubmatch(s)
	if m == nil {
		return textCell(s)
	}
	seconds := 0
	for _, part := range m[1:] {
		n, _ := strconv.Atoi(part) // digits, by the expression
		seconds = seconds*60 + n
	}
	return Cell{Moment, clockText(seconds)}
}

// readContent reads on to the end of a cell and returns its paragraphs, a line each.
// Comments and drawings in the cell are passed over.
func readContent(d *xml.Decoder) (string, error) {
	c := content{}
	for {
		token, err := d.Token()
		if err != nil {
			return "", err
		}
		switch t := token.(type) {
		case xml.StartElement:
			if !c.begin(t) {
				err = d.Skip()
			}
		case xml.EndElement:
			if c.open == 0 {
				return c.String(), nil
			}
			c.open--
		case xml.CharData:
			c.add(oneSpace.ReplaceAllString(string(t), " "))
		}
		if err != nil {
			return "", err
		}
	}
}

// oneSpace finds what stands for one space: files may break lines where they like.
var oneSpace = regexp.MustCompile(`[ \t\r\n]+`)

// content is the text of a cell as far as it is read.
type content struct {
	strings.Builder
	paragraphs int
	open       int // elements begun below the cell's own
}

// begin takes up an element of a text; false for one that is none.
func (c *content) begin(e xml.StartElement) bool {
	c.open++
	switch e.Name.Local {
	case "p", "h":
		if c.paragraphs++; c.paragraphs > 1 {
			c.add("\n")
		}
	case "s":
		c.add(strings.Repeat(" ", min(count(e, "c"), mostText)))
	case "tab":
		c.add("\t")
	case "line-break":
		c.add("\n")
	case "span", "a":
	default:
		c.open--
		return false
	}
	return true
}

// add adds to the text of a paragraph, up to the limit.
func (c *content) add(s string) {
	if c.open > 0 && c.Len() < mostText {
		c.WriteString(s)
	}
}
