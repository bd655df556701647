package records

import (
	"strings"
	"testing"
	"testing/fstest"
)

// A note that reading Markdown would take the square of is not read, with the line where it
// is too much; one just within the limits, and any plain one of 1 MB, is.
func TestCrowdedNotes(t *testing.T) {
	many := strings.Repeat
	for name, tt := range map[string]struct {
		text, want string
	}{
		"plain":                   {many("Sown by hand. ", 70000), ""},
		"a table":                 {many("|a", 100) + "|\n" + many("|-", 100) + "|\n" + many(many("|b", 100)+"|\n", 50), ""},
		"a table as wide as long": {many("|a", 1000) + "|\n" + many("|-", 1000) + "|\n" + many("|\n", 1000), ":50: too many cells of tables"},
		"many tables":             {many(many("|a", 100)+"|\n"+many("|-", 100)+"|\n"+many("|\n", 8)+"\n", 100), ":540: too many cells of tables"},
		"short paragraphs":        {many("*a* [b](index)\n\n", 60000), ""},
		"nested":                  {many("> ", 50) + "a\n", ""},
		"quotations":              {"a\n" + many(">", 51) + "a\n", ":2: lists or quotations nested too deep; at most 50 within each other are expected"},
		"lists on a line":         {many("- ", 51) + "a\n", ":1: lists or quotations"},
		"numbered":                {many("12. ", 51) + "a\n", ":1: lists or quotations"},
		"lists line by line":      {many(" ", 100) + "- a\n", ":1: lists or quotations"},
		"brackets":                {many("[", 1001), ":1: too many marks"},
		"marks over lines":        {many("a *b* _c_\n", 251), ":251: too many marks"},
		"headings":                {many("# A\n\n", 1000), ""},
		"too many headings":       {many("# A\n\n", 1001), ":2001: too many headings"},
		"underlined":              {many("A\n=\n", 1001), ":2002: too many headings"},
		"figures":                 {many("```figure emergence\n```\n\n", 100), ""},
		"too many figures":        {many("~~~ figure emergence\n~~~\n\n", 101), ":301: too many figures"},
	} {
		book, problems := Load(fstest.MapFS{
			"sowings.csv":   {Data: []byte("batch,sown,crop,variety,tray,trays\nA1,2025-03-01,kale,North,T72,1\n")},
			"notes/2025.md": {Data: []byte(tt.text)},
		})
		said := ""
		for _, p := range problems {
			if strings.HasPrefix(p.String(), "notes/") {
				said += p.String()
			}
		}
		if (said == "") != (tt.want == "") || !strings.Contains(said, tt.want) || (len(book.Notes) == 1) != (tt.want == "") {
			t.Errorf("%s: %d notes, %q, want %q", name, len(book.Notes), said, tt.want)
		}
	}
}
