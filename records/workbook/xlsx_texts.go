package workbook

import (
	"encoding/xml"
	"regexp"
	"strconv"
	"strings"
)

// xlsxTexts reads the list of texts that cells share, as its file goes by. A text is one
// run of letters or several, each in its own type; how it is to be spoken is left out.
type xlsxTexts struct {
	*xlsx
	is      strings.Builder
	reading bool
}

// readStrings reads the list of texts.
func (x *xlsx) readStrings(name string) error {
	b, err := x.bytes(name)
	if err != nil {
		return err
	}
	return walk(b, &xlsxTexts{xlsx: x})
}

// enter takes up what begins.
func (t *xlsxTexts) enter(d *xml.Decoder, e xml.StartElement) error {
	switch e.Name.Local {
	case "sst", "r":
		return nil
	case "si":
		t.is.Reset()
		return nil
	case "t":
		t.reading = true
		return nil
	}
	return d.Skip()
}

// text collects what a text says.
func (t *xlsxTexts) text(b []byte) {
	if t.reading {
		collect(&t.is, b)
	}
}

// collect adds to a text as far as it is not cut off anyway: a character may be written by
// number, with seven bytes.
func collect(into *strings.Builder, b []byte) {
	into.Write(b[:min(len(b), max(0, 7*mostText-into.Len()))])
}

// leave ends a run or a text.
func (t *xlsxTexts) leave(name string) error {
	switch name {
	case "t":
		t.reading = false
	case "si":
		if len(t.texts) >= mostTexts {
			return tooLarge("the workbook has more than a million texts")
		}
		t.texts = append(t.texts, textCell(unescaped(t.is.String())))
	}
	return nil
}

var byNumber = regexp.MustCompile(`_x[0-9A-Fa-f]{4}_`)

// unescaped puts back the characters that .xlsx files write by number, as _x000D_.
func unescaped(s string) string {
	return byNumber.ReplaceAllStringFunc(s, func(code string) string {
		r, _ := strconv.ParseUint(code[2:6], 16, 16) // four digits, by the expression
		return string(rune(r))
	})
}
