package records

import (
	"strings"
	"testing"
	"testing/fstest"
	"unicode/utf16"
)

// utf16Text writes a text as UTF-16 with its mark.
func utf16Text(s string, little bool) string {
	var b strings.Builder
	for _, unit := range utf16.Encode([]rune("\ufeff" + s)) {
		high, low := byte(unit>>8), byte(unit)
		if little {
			high, low = low, high
		}
		b.Write([]byte{high, low})
	}
	return b.String()
}

// The same rows in every encoding that is read, with letters beyond ASCII and beyond
// sixteen bits; Windows-1252 by its table of the Unicode Consortium (CP1252.TXT).
func TestEncodings(t *testing.T) {
	rows := "batch,sown,crop,variety,tray,trays\nA,2025-03-03,chicorée,Œil “€” \U0001F331,A50,2\n"
	legacy := "batch,sown,crop,variety,tray,trays\nA,2025-03-03,chicor\xe9e,\x8cil \x93\x80\x94 \U0001F331,A50,2\n"
	for name, raw := range map[string]string{
		"UTF-8": rows, "UTF-8 with a mark": "\ufeff" + rows, "UTF-16, little end first": utf16Text(rows, true), "UTF-16, big end first": utf16Text(rows, false),
		"UTF-16, CRLF": utf16Text(strings.ReplaceAll(rows, "\n", "\r\n"), true), "Windows-1252 beside UTF-8": legacy, "CR": strings.ReplaceAll(legacy, "\n", "\r"),
	} {
		b, problems := Load(fstest.MapFS{"sowings.csv": {Data: []byte(raw)}})
		if len(b.Sowings) != 1 || b.Sowings[0].Crop != "chicorée" || b.Sowings[0].Variety != "Œil “€” \U0001F331" {
			t.Errorf("%s: %+v", name, b.Sowings)
		}
		warned := len(problems) == 1 && problems[0].Check == "windows-1252" && problems[0].Severity == Warning && problems[0].Line == 2 &&
			strings.Contains(problems[0].Found, `"chicorée"`)
		if old := strings.Contains(raw, "\xe9e"); warned != old || !old && len(problems) > 0 {
			t.Errorf("%s: %v", name, problems)
		}
	}
}

// What is no text that is read is refused by its right name, without guessing.
func TestRefused(t *testing.T) {
	for raw, want := range map[string]string{
		"\xff\xfe\x00\x00b\x00\x00\x00":    "UTF-32 text",
		"\x00\x00\xfe\xff\x00\x00\x00b":    "UTF-32 text",
		"b\x00a\x00t\x00c\x00h\x00":        "UTF-16 text without a mark",
		"\x00b\x00a\x00t\x00c\x00h":        "UTF-16 text without a mark",
		"b\x00\x00\x00a\x00\x00\x00":       "UTF-32 text without a mark",
		"batch,date\nA\x00,x\n":            "a NUL byte",
		"\xff\xfeb\x00a":                   "UTF-16 text of which a part is missing",
		"\xff\xfeb\x00\x00\xd8":            "UTF-16 text of which a part is missing",
		"\xff\xfeb\x00a\x00t\x00\x00\x00":  "a NUL byte",
		"batch\ncaf\x9d\n":                 "neither UTF-8 nor Windows-1252",
		"+/v8-batch":                       "UTF-7 text",
		"\x84\x31\x95\x33batch":            "GB18030 text",
		"PK\x03\x04":                       "a workbook (.xlsx or .ods)",
		"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1": "a workbook of an older kind (.xls)",
		"%PDF-1.7":                         "a PDF",
		"{\\rtf1":                          "RTF",
		"\x1f\x8b\x08":                     "packed (gzip)",
		" \n<HTML><td>":                    "a web page or XML",
	} {
		_, problems := Load(fstest.MapFS{"sowings.csv": {Data: []byte(raw)}})
		if len(problems) != 1 || problems[0].Check != "encoding" || problems[0].Severity != Fatal || problems[0].Line == 0 || !strings.Contains(problems[0].Found, want) {
			t.Errorf("%q: %v, want %s", raw, problems, want)
		}
	}
}
