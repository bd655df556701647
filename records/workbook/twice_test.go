package workbook

import (
	"encoding/xml"
	"fmt"
	"slices"
	"strings"
	"testing"
)

// readTwice writes every sheet that was read as plainly as an .xlsx file can, each value in
// the type it was read as, and reads it once more: no row and no cell is lost or becomes
// another. Of a moment the words are compared, since a day and a length of time have more
// than one way to be written.
func readTwice(t *testing.T, b *Book) {
	t.Helper()
	for _, s := range b.Sheets {
		if s.Bad != nil || len(s.Rows) == 0 {
			continue
		}
		got := sheetOf(t, archive(t, map[string]string{
			"xl/workbook.xml":            `<workbook><sheets><sheet name="one" id="a"/></sheets></workbook>`,
			"xl/_rels/workbook.xml.rels": `<R><Relationship Id="a" Type="/worksheet" Target="one.xml"/><Relationship Type="/styles" Target="s.xml"/></R>`,
			"xl/one.xml":                 "<worksheet><sheetData>" + plainRows(s.Rows) + "</sheetData></worksheet>",
			"xl/s.xml":                   `<styleSheet><cellXfs><xf numFmtId="0"/><xf numFmtId="9"/></cellXfs></styleSheet>`,
		}))
		if len(got.Rows) != len(s.Rows) {
			t.Fatalf("%d rows, then %d", len(s.Rows), len(got.Rows))
		}
		for i, r := range s.Rows {
			if got := got.Rows[i]; got.Number != r.Number || !slices.EqualFunc(got.Cells, r.Cells, sameCell) {
				t.Errorf("row %d: %q, then row %d: %q", r.Number, r.Cells, got.Number, got.Cells)
			}
		}
	}
}

func sameCell(a, b Cell) bool { return a.Text == b.Text && (a.Kind == b.Kind || b.Kind == Moment) }

// plainRows writes rows of cells.
func plainRows(rows []Row) string {
	var out strings.Builder
	for _, r := range rows {
		fmt.Fprintf(&out, `<row r="%d">`, r.Number)
		for _, c := range r.Cells {
			out.WriteString(plainCell(c))
		}
		out.WriteString("</row>")
	}
	return out.String()
}

func plainCell(c Cell) string {
	switch c.Kind {
	case Blank:
		return "<c/>"
	case Unsolved:
		return "<c><f>A1</f></c>"
	case Number:
		return "<c><v>" + c.Text + "</v></c>"
	case Percent:
		return `<c s="1"><v>` + strings.TrimSuffix(c.Text, "%") + "e-2</v></c>"
	case Bool:
		return `<c t="b"><v>` + map[string]string{"yes": "1", "no": "0"}[c.Text] + "</v></c>"
	case Fault:
		return `<c t="e"><v>` + escaped(c.Text, false) + "</v></c>"
	}
	return `<c t="inlineStr"><is><t>` + escaped(c.Text, true) + "</t></is></c>"
}

// escaped writes a text; what XML cannot hold goes by number, as .xlsx files write it,
// which makes the line that such a number begins with one too.
func escaped(s string, byNumber bool) string {
	var out strings.Builder
	for _, r := range s {
		if byNumber && (r == '_' || r < ' ' && r != '\n' && r != '\t' || r == '\ufffe' || r == '\uffff') {
			fmt.Fprintf(&out, "_x%04X_", r)
		} else {
			_ = xml.EscapeText(&out, []byte(string(r)))
		}
	}
	return out.String()
}
