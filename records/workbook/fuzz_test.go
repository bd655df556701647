package workbook

import (
	"strings"
	"testing"
	"unicode/utf8"
)

// FuzzXLSX reads any rows beside any texts and styles, without the net that Read holds
// under damaged files: no panic, what comes out holds together, and it is the same when it
// is written and read again.
func FuzzXLSX(f *testing.F) {
	f.Add(someRows, someTexts, `<numFmts><numFmt numFmtId="170" formatCode="[h]:mm;@"/></numFmts><cellXfs><xf numFmtId="14"/><xf numFmtId="170"/></cellXfs>`)
	f.Add(`<row><c t="str"><v> </v></c><c/><c t="str"><v>&#160;</v></c><c t="e"><v></v></c></row><row/><row r="9"><c r="XFD9" t="inlineStr"><is><t>_x005F_x0041_ _x0001_</t></is></c></row><mergeCells><mergeCell ref="A1:B2"/></mergeCells>`, "<si><t> </t></si>", "")
	f.Add(`<row r="2"><c r="A2" s="1"><v>60</v></c></row>`, "", `<cellXfs><xf numFmtId="9"/></cellXfs>`)
	f.Fuzz(func(t *testing.T, rows, texts, styles string) {
		p, err := unpack(archive(t, map[string]string{
			"xl/workbook.xml":            `<workbook><sheets><sheet name="one" id="a"/></sheets></workbook>`,
			"xl/_rels/workbook.xml.rels": `<R><Relationship Id="a" Type="/worksheet" Target="one.xml"/><Relationship Type="/sharedStrings" Target="t.xml"/><Relationship Type="/styles" Target="s.xml"/></R>`,
			"xl/one.xml":                 "<worksheet>" + rows + "</worksheet>",
			"xl/t.xml":                   "<sst>" + texts + "</sst>",
			"xl/s.xml":                   "<styleSheet>" + styles + "</styleSheet>",
		}))
		if err != nil {
			t.Fatal(err)
		}
		b, err := readXLSX(p, all)
		holds(t, b, err)
	})
}

// FuzzODS does the same with any content of a spreadsheet.
func FuzzODS(f *testing.F) {
	f.Add(someTables)
	f.Add(`<table:table table:name="a"><table:table-row table:number-rows-repeated="9"><table:table-cell office:value-type="time" office:time-value="PT36H00M01,5S"/></table:table-row></table:table>`)
	f.Add(`<table:table table:name="a"><table:table-row><table:table-cell table:number-columns-repeated="3" table:number-columns-spanned="2"><text:p> </text:p></table:table-cell><table:covered-table-cell><text:p>x</text:p></table:covered-table-cell><table:table-cell office:value-type="percentage" office:value="1e-300"/></table:table-row></table:table>`)
	f.Fuzz(func(t *testing.T, content string) {
		p, err := unpack(odsOf(t, content))
		if err != nil {
			t.Fatal(err)
		}
		b, err := readODS(p, all)
		holds(t, b, err)
	})
}

// holds checks that a book is in order: rows and cells where they can stand, texts of
// characters alone, and each kind written in its own way.
func holds(t *testing.T, b *Book, err error) {
	t.Helper()
	if err != nil {
		if u := unread(err).(Unread); u.Found == "" || u.Remedy == "" {
			t.Errorf("no clear message: %v", u)
		}
		return
	}
	for _, s := range b.Sheets {
		last := 0
		for _, r := range s.Rows {
			if r.Number <= last || r.Number > mostRows || len(r.Cells) == 0 || len(r.Cells) > mostColumns || r.Cells[len(r.Cells)-1].Kind == Blank {
				t.Fatalf("row %d after %d has %d cells", r.Number, last, len(r.Cells))
			}
			last = r.Number
			for _, c := range r.Cells {
				cellHolds(t, c)
			}
		}
	}
	if cells := cellsOf(b); cells < 10_000 {
		readTwice(t, b)
	}
}

// cellsOf counts the cells of a book.
func cellsOf(b *Book) (n int) {
	for _, s := range b.Sheets {
		for _, r := range s.Rows {
			n += len(r.Cells)
		}
	}
	return n
}

func cellHolds(t *testing.T, c Cell) {
	t.Helper()
	ok := utf8.ValidString(c.Text) && !strings.ContainsAny(c.Text, "\r\x00")
	switch c.Kind {
	case Blank, Unsolved:
		ok = c.Text == ""
	case Number:
		_, ok = finite(c.Text)
		ok = ok && strings.Trim(c.Text, "0123456789.-") == ""
	case Percent:
		_, ok = finite(strings.TrimSuffix(c.Text, "%"))
	case Moment:
		ok = strings.Trim(c.Text, "0123456789-: ") == ""
	case Text, Fault:
		ok = ok && strings.TrimSpace(c.Text) != ""
	}
	if !ok {
		t.Errorf("kind %d holds %q", c.Kind, c.Text)
	}
}
