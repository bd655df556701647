package workbook

import (
	"strings"
	"testing"
)

// Elements up to the limit are read, however deep; beyond it one line says so, whatever
// stands between them. What only looks like an element counts for none.
func TestShape(t *testing.T) {
	deep, long := "elements inside the workbook stand more than 256 deep", "an element inside the workbook has more than 1 MB of attributes"
	nested := func(n int, open, shut string) string { return strings.Repeat(open, n) + strings.Repeat(shut, n) }
	for name, c := range map[string]struct{ text, want string }{
		"nothing":            {"", ""},
		"no element":         {"a > b", ""},
		"the end of a file":  {"<", ""},
		"an end alone":       {"<a", ""},
		"deep":               {nested(mostDeep, "<a>", "</a>"), ""},
		"too deep":           {nested(mostDeep+1, "<a>", "</a>"), deep},
		"too deep, never up": {strings.Repeat(`<a b="/>">x<!-- </a> -->`, mostDeep+1), deep},
		"side by side":       {strings.Repeat("<a><b/></a>", 10_000), ""},
		"empty ones":         {strings.Repeat("<a b='>'/>", 10_000), ""},
		"in a comment":       {"<a><!--" + strings.Repeat("<a>", 10_000) + "--></a>", ""},
		"in CDATA":           {"<a><![CDATA[" + strings.Repeat("<a>", 10_000) + "]]></a>", ""},
		"an endless comment": {"<a><!--" + strings.Repeat("<a>", 10_000), ""},
		"long":               {"<a " + strings.Repeat(" ", mostTag-4) + ">", ""},
		"too long":           {"<a " + strings.Repeat(" ", mostTag-3) + ">", long},
		"never ends":         {`<a b="` + strings.Repeat(">", mostTag), long},
		"many attributes":    {"<a " + strings.Repeat(`b="" `, mostTag/5) + ">", long},
	} {
		got := ""
		if err := shape([]byte(c.text)); err != nil {
			got = err.Error()
		}
		if !strings.HasPrefix(got, c.want) || c.want == "" && got != "" {
			t.Errorf("%s: got %q, want %q", name, got, c.want)
		}
	}
}

// Both kinds of workbook say so, of the sheet or of the book.
func TestShapeOfAWorkbook(t *testing.T) {
	thicket := strings.Repeat("<r>", mostDeep)
	b, err := Read(archive(t, sheetsIn(1, thicket, "")), all)
	if err != nil || len(b.Sheets) != 1 || b.Sheets[0].Bad == nil || !strings.HasPrefix(b.Sheets[0].Bad.Error(), "elements inside") {
		t.Errorf("xlsx: %v, %+v", err, b)
	}
	if _, err := Read(odsOf(t, strings.Repeat("<text:p>", mostDeep)), all); err == nil || !strings.HasPrefix(err.Error(), "elements inside") {
		t.Errorf("ods: %v", err)
	}
	files := sheetsIn(1, "", "")
	files["xl/workbook.xml"] = "<workbook " + strings.Repeat(`a="" `, mostTag/5) + "/>"
	if _, err := Read(archive(t, files), all); err == nil || !strings.HasPrefix(err.Error(), "an element inside") {
		t.Errorf("the list of sheets: %v", err)
	}
}

// A file inside that stands for two sheets, or for the texts twice, is read once: a small
// workbook could else ask for it 10,000 times.
func TestOneFileForManySheets(t *testing.T) {
	const twice = "the workbook is damaged: two of its parts are the same file"
	sheets := sheetsIn(2, `<row><c t="s"><v>0</v></c></row>`, "<si><t>x</t></si>")
	sheets["xl/_rels/workbook.xml.rels"] = strings.Replace(sheets["xl/_rels/workbook.xml.rels"], "b.xml", "a.xml", 1)
	b, err := Read(archive(t, sheets), all)
	if err != nil || len(b.Sheets) != 2 || b.Sheets[0].Bad != nil || b.Sheets[1].Bad == nil || b.Sheets[1].Bad.Error() != twice {
		t.Errorf("%v, %+v", err, b)
	}
	texts := sheetsIn(1, "", "<si><t>x</t></si>")
	texts["xl/_rels/workbook.xml.rels"] = strings.Replace(texts["xl/_rels/workbook.xml.rels"], "<R>", `<R><Relationship Id="u" Type="/sharedStrings" Target="t.xml"/>`, 1)
	if _, err := Read(archive(t, texts), all); err == nil || err.Error() != twice {
		t.Errorf("texts: %v", err)
	}
	many := sheetsIn(1, "", "")
	many["xl/workbook.xml"] = "<workbook><sheets>" + strings.Repeat(`<sheet name="a" id="a"/>`, mostParts+1) + "</sheets></workbook>"
	if _, err := Read(archive(t, many), all); err == nil || !strings.HasPrefix(err.Error(), "the workbook has more than 10,000 sheets") {
		t.Errorf("sheets: %v", err)
	}
}
