package workbook

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"
)

const someRows = `<sheetData>
		<row><c t="inlineStr"><is><t>in</t><r><t xml:space="preserve"> runs</t></r><rPh><t>spoken</t></rPh></is></c><c t="s"><v>1</v></c><c t="s"><v> 0 </v></c><c s="1"><v>45747.5</v></c></row>
		<row r="4"><c r="C4" t="d"><v>2025-03-31T00:00:00</v></c><c t="d"><v>2025-03-31T06:59:59.9999</v></c><c t="e"><f>1/0</f><v>#DIV/0!</v></c><c t="str"><f>""</f><v></v></c>
			<c t="b"><v>0</v></c><c><f>A1*2</f><v>1.20E2</v></c><c><f>A1</f></c><c s="2"><v>0.5</v></c><c s="77"><v>5</v></c></row>
		<row r="9"><c r="A9"/><c r="B9" t="s"/><c r="C9" t="n"><v></v></c></row>
	</sheetData><mergeCells><mergeCell ref="$B$12:A11"/></mergeCells><extLst><c t="e"/></extLst>`

const someTexts = `<si><r><t>two</t></r><r><t> runs</t></r><rPh><t>spoken</t></rPh></si><si><t>line_x000D__x000A_end _x005F_x0041_ _xZ</t></si>`

// What other makers write: parts in places of their own, cells and rows without names,
// texts in the cell, in runs or by number, days as text, stored results of formulas.
func TestXLSXHabits(t *testing.T) {
	s := sheetOf(t, xlsxOf(t, someRows, someTexts))
	wantRow(t, s.Rows[0], 1, Cell{Text, "in runs"}, Cell{Text, "line\nend _x0041_ _xZ"}, Cell{Text, "two runs"}, Cell{Moment, "2025-03-31 12:00"})
	wantRow(t, s.Rows[1], 4, Cell{}, Cell{}, Cell{Moment, "2025-03-31"}, Cell{Moment, "2025-03-31 07:00"}, Cell{Fault, "#DIV/0!"}, Cell{},
		Cell{Bool, "no"}, Cell{Number, "120"}, Cell{Unsolved, ""}, Cell{Number, "0.5"}, Cell{Number, "5"})
	if len(s.Rows) != 2 || !slices.Equal(s.Merged, []Area{{11, 0, 12, 1}}) {
		t.Errorf("rows %v, merged %v", s.Rows[2:], s.Merged)
	}
}

// Files that do not hold together, or hold more than a sheet can.
func TestXLSXBadSheets(t *testing.T) {
	for rows, want := range map[string]string{
		`<row r="5"/><row r="5"/>`:                                                `row "5" stands after row 5`,
		`<row r="x"/>`:                                                            `row "x"`,
		`<row r="1048577"/>`:                                                      "more than 1,048,576 rows",
		`<row r="1"><c r="B1"/><c r="A1"/></row>`:                                 `cell "A1" stands in the wrong place`,
		`<row r="1"><c r="A2"/></row>`:                                            `cell "A2"`,
		`<row>` + strings.Repeat("<c/>", mostColumns+1):                           "more than 16,384 columns",
		`<row r="1"><c r="ZZZZZZZZZZZZZZZ1"/></row>`:                              `"ZZZZZZZZZZZZZZZ1"`,
		`<row r="1"><c r="11"/></row>`:                                            `"11"`,
		`<row r="1"><c t="s"><v>3</v></c></row>`:                                  "text is missing",
		`<row r="1"><c><v>3</v>`:                                                  "element <c> closed by </worksheet>",
		`<mergeCells><mergeCell ref="A1:"/></mergeCells>`:                         `merged cells "A1:"`,
		`<mergeCells>` + strings.Repeat(`<mergeCell ref="A1:B1"/>`, mostMerged+1): "more than 1000 areas",
		farOut(245): "more than 4 million cells",
	} {
		b, err := Read(xlsxOf(t, rows, ""), all)
		if err != nil {
			t.Fatal(err)
		}
		if bad := b.Sheets[0].Bad; bad == nil || !strings.Contains(bad.Error(), want) {
			t.Errorf("got %v, want %q", bad, want)
		}
	}
}

// farOut is so many rows with one cell, in the last column that a sheet can have.
func farOut(rows int) string {
	var b strings.Builder
	for n := range rows {
		fmt.Fprintf(&b, `<row><c r="XFD%d"><v>1</v></c></row>`, n+1)
	}
	return b.String()
}

// Forms as spreadsheets write them, by what they show.
func TestForms(t *testing.T) {
	for code, want := range map[string]shown{
		"General": asNumber, "0.00E+00": asNumber, `0 "dozen"`: asNumber, `0\d`: asNumber, `[Red]0;[Blue]-0`: asNumber, "@": asNumber, `_-* #,##0.00\ [$€-407]_-`: asNumber,
		"0%": asPercent, `0.0\ %`: asPercent, `0"%"`: asNumber, "0;0%": asNumber,
		"yyyy-mm-dd": asDay, `[$-409]mmm\ d;@`: asDay, "DD.MM.YY": asDay, "mmm": asDay, "m/d/yy h:mm": asDay,
		"h:mm AM/PM": asTime, "[h]:mm": asTime, "[mm]:ss": asTime, "mm:ss.0": asTime, `"unclosed`: asNumber, "[": asNumber, `\`: asNumber, "": asNumber,
	} {
		if got := formOf(code); got != want {
			t.Errorf("%q: got %d, want %d", code, got, want)
		}
	}
}

// Numbers have the 15 digits of a spreadsheet, and no exponent.
func TestNumbers(t *testing.T) {
	tenth, fifth := 0.1, 0.2
	for _, c := range []struct {
		x    float64
		want string
	}{
		{0, "0"}, {math.Copysign(1e-300, -1), "0"}, {tenth + fifth, "0.3"}, {59.99999999999999, "60"}, {1.0 / 810, "0.001234567901235"},
		{-5.0 / 700, "-0.007142857142857"}, {1e15, "1000000000000000"}, {1 + tenth - 1 - tenth, "0"}, {123456789.125, "123456789.125"},
	} {
		if got := numberText(c.x); got != c.want {
			t.Errorf("%v: got %s, want %s", c.x, got, c.want)
		}
	}
	if got := percentCell(0.57); got.Text != "57%" { // 0.57 x 100 is 56.99999999999999
		t.Error(got)
	}
	if _, ok := finite("1e999"); ok {
		t.Error("infinity is no number")
	}
}
