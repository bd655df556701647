package workbook

import (
	"fmt"
	"strings"
	"testing"
)

// sheetsIn is a workbook of so many sheets with the same rows.
func sheetsIn(n int, rows, texts string) map[string]string {
	files := map[string]string{"xl/t.xml": "<sst>" + texts + "</sst>"}
	list, links := "", `<Relationship Id="t" Type="/sharedStrings" Target="t.xml"/>`
	for i := range n {
		id := string(rune('a' + i))
		list += `<sheet name="` + id + `" id="` + id + `"/>`
		links += `<Relationship Id="` + id + `" Type="/worksheet" Target="` + id + `.xml"/>`
		files["xl/"+id+".xml"] = "<worksheet><sheetData>" + rows + "</sheetData></worksheet>"
	}
	files["xl/workbook.xml"], files["xl/_rels/workbook.xml.rels"] = "<workbook><sheets>"+list+"</sheets></workbook>", "<R>"+links+"</R>"
	return files
}

// What small files stand for is counted over all sheets: cells far out, texts that many
// cells share, spaces by their number. A sheet before the limit is read.
func TestSmallFilesOfLargeBooks(t *testing.T) {
	far := ""
	for n := range 50 {
		far += fmt.Sprintf(`<row><c r="XFD%d"><v>1</v></c></row>`, n+1)
	}
	for name, c := range map[string]struct {
		files map[string]string
		want  string // of the last sheet, or of the book
	}{
		"cells far out":        {sheetsIn(6, far, ""), "the workbook has more than 4 million cells"},
		"shared texts":         {sheetsIn(2, "<row>"+strings.Repeat(`<c t="s"><v>0</v></c>`, 400)+"</row>", "<si><t>"+strings.Repeat("x", mostText)+"</t></si>"), "the cells of the workbook hold more than 64 MB of text"},
		"texts without end":    {sheetsIn(1, "", strings.Repeat("<si/>", mostTexts+1)), "the workbook has more than a million texts"},
		"styles without end":   {sheetsIn(1, "", ""), "a list inside the workbook is larger than 8 MB"},
		"spaces by number":     {nil, "the cells of the workbook hold more than 64 MB of text"},
		"a text in many cells": {nil, "the cells of the workbook hold more than 64 MB of text"},
	} {
		raw := []byte(nil)
		switch name {
		case "spaces by number":
			raw = odsOf(t, `<table:table table:name="a"><table:table-row>`+strings.Repeat(`<table:table-cell><text:p>x<text:s text:c="99999999"/></text:p></table:table-cell>`, 700)+`</table:table-row></table:table>`)
		case "a text in many cells":
			raw = odsOf(t, `<table:table table:name="a"><table:table-row table:number-rows-repeated="1000"><table:table-cell table:number-columns-repeated="100"><text:p>`+strings.Repeat("x", 1000)+`</text:p></table:table-cell></table:table-row></table:table>`)
		case "styles without end":
			c.files["xl/_rels/workbook.xml.rels"] = strings.Replace(c.files["xl/_rels/workbook.xml.rels"], "/sharedStrings", "/styles", 1)
			c.files["xl/t.xml"] = "<styleSheet>" + strings.Repeat("<xf/>", mostOfList/5) + "</styleSheet>"
			raw = archive(t, c.files)
		default:
			raw = archive(t, c.files)
		}
		b, err := Read(raw, all)
		if err == nil && len(b.Sheets) > 0 {
			err = b.Sheets[len(b.Sheets)-1].Bad
			if len(b.Sheets) > 1 && (b.Sheets[0].Bad != nil || len(b.Sheets[0].Rows) == 0) {
				t.Errorf("%s: the first sheet has %d rows, %v", name, len(b.Sheets[0].Rows), b.Sheets[0].Bad)
			}
		}
		got := ""
		if err != nil {
			got = err.Error()
		}
		if !strings.HasPrefix(got, c.want) {
			t.Errorf("%s: got %q, want %q", name, got, c.want)
		}
	}
}
