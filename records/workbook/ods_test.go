package workbook

import (
	"slices"
	"strings"
	"testing"
)

const someTables = `<table:tracked-changes><table:table-cell/></table:tracked-changes>
		<table:table table:name="one"><table:shapes><table:table-row><table:table-cell/></table:table-row></table:shapes>
		<table:table-header-rows><table:table-row table:visibility="collapse">
			<table:table-cell office:value-type="string" calcext:value-type="string"><text:p>two  <text:s text:c="2"/>
 lines<office:annotation><text:p>a comment</text:p></office:annotation></text:p><text:p><text:span>of</text:span><text:tab/>text<text:line-break/>!</text:p></table:table-cell>
			<table:table-cell office:value-type="float" office:value="1234.5"><text:p>1,235</text:p></table:table-cell>
			<table:table-cell office:value-type="percentage" office:value="0.575"><text:p>58%</text:p></table:table-cell>
			<table:table-cell office:value-type="currency" office:currency="EUR" office:value="-3"><text:p>-3,00 €</text:p></table:table-cell>
			<table:table-cell office:value-type="date" office:date-value="2025-03-31"><text:p>31.3.25</text:p></table:table-cell>
			<table:table-cell office:value-type="date" office:date-value="2025-03-31T06:59:59.999999999"><text:p>31.3.25</text:p></table:table-cell>
			<table:table-cell office:value-type="time" office:time-value="PT07H30M00S"/>
			<table:table-cell office:value-type="boolean" office:boolean-value="false"><text:p>FALSCH</text:p></table:table-cell>
		</table:table-row></table:table-header-rows>
		<table:table-row table:number-rows-repeated="3"><table:table-cell table:number-columns-repeated="16384"/></table:table-row>
		<table:table-row-group><table:table-row table:number-rows-repeated="2">
			<table:table-cell table:number-columns-repeated="2"/>
			<table:table-cell table:number-columns-repeated="2" office:value-type="float" office:value="7"><text:p>7</text:p></table:table-cell>
		</table:table-row></table:table-row-group>
		<table:table-row>
			<table:table-cell table:formula="of:=1/0" office:value-type="string" office:string-value="" calcext:value-type="error"><text:p>#DIV/0!</text:p></table:table-cell>
			<table:table-cell table:formula="of:=X" office:value-type="float" office:value="0"><text:p>Err:502</text:p></table:table-cell>
			<table:table-cell table:formula="of:=&quot;&quot;" office:value-type="string" office:string-value=""><text:p/></table:table-cell>
			<table:table-cell table:formula="of:=A1"/>
			<table:table-cell table:formula="of:=A1" office:value-type="string" office:string-value="result"/>
			<table:table-cell table:number-columns-spanned="2" table:number-rows-spanned="3" office:value-type="string"><text:p>#3</text:p></table:table-cell>
			<table:covered-table-cell office:value-type="string"><text:p>under it</text:p></table:covered-table-cell>
			<table:table-cell><text:p>untyped</text:p><draw:frame><text:p>a picture</text:p></draw:frame></table:table-cell>
		</table:table-row>
		<table:table-row table:number-rows-repeated="1048569"><table:table-cell/></table:table-row>
		</table:table>
		<table:named-expressions/>
		<table:table table:name="'file:///other.ods'#x"><table:table-source/><table:table-row><table:table-cell office:value-type="float" office:value="1"/></table:table-row></table:table>`

// Cells of every kind as OpenDocument writes them, with what stands for many, what a
// merge covers, comments, and a copy of another file's cells.
func TestODSKinds(t *testing.T) {
	s := sheetOf(t, odsOf(t, someTables))
	wantRow(t, s.Rows[0], 1, Cell{Text, "two    lines\nof\ttext\n!"}, Cell{Number, "1234.5"}, Cell{Percent, "57.5%"}, Cell{Number, "-3"},
		Cell{Moment, "2025-03-31"}, Cell{Moment, "2025-03-31 07:00"}, Cell{Moment, "07:30"}, Cell{Bool, "no"})
	wantRow(t, s.Rows[1], 5, Cell{}, Cell{}, Cell{Number, "7"}, Cell{Number, "7"})
	wantRow(t, s.Rows[2], 6, s.Rows[1].Cells...)
	wantRow(t, s.Rows[3], 7, Cell{Fault, "#DIV/0!"}, Cell{Fault, "Err:502"}, Cell{}, Cell{Unsolved, ""}, Cell{Text, "result"}, Cell{Text, "#3"}, Cell{}, Cell{Text, "untyped"})
	if len(s.Rows) != 4 || !slices.Equal(s.Merged, []Area{{7, 5, 9, 6}}) {
		t.Errorf("rows %v, merged %v", s.Rows[4:], s.Merged)
	}
}

// What stands for more than a sheet can hold is refused, and blanks are no more than
// counted.
func TestODSLimits(t *testing.T) {
	const cell = `<table:table-cell office:value-type="float" office:value="1"`
	for content, want := range map[string]string{
		`<table:table-row table:number-rows-repeated="9999999999">` + cell + `/></table:table-row>`:                                "more than 1,048,576 rows",
		`<table:table-row>` + cell + ` table:number-columns-repeated="16385"/></table:table-row>`:                                  "more than 16,384 columns",
		`<table:table-row table:number-rows-repeated="1000000">` + cell + ` table:number-columns-repeated="5"/></table:table-row>`: "more than 4 million cells",
		`<table:table-row table:number-rows-repeated="300">` + cell + ` table:number-columns-repeated="16000"/></table:table-row>`: "more than 4 million cells",
		`<table:table-row>` + strings.Repeat(cell+` table:number-columns-spanned="2"/>`, mostMerged+1) + `</table:table-row>`:      "more than 1000 areas",
		`<table:table-row><table:table-cell><table:table table:name="two"/></table:table-cell></table:table-row>`:                  "",
		`<table:table-rows><table:table table:name="two"/></table:table-rows>`:                                                     "a sheet within a sheet",
		`</table:table>` + strings.Repeat(`<table:table/>`, mostParts) + `<table:table table:name="more">`:                         "more than 10,000 sheets",
		`<table:table-row>` + cell: "damaged",
		`<table:table-row table:number-rows-repeated="-4"><table:table-cell table:number-columns-repeated="x"/>` + cell + `/></table:table-row>`: "",
	} {
		b, err := Read(odsOf(t, `<table:table table:name="one">`+content+`</table:table>`), all)
		if got := ""; err != nil || want != "" {
			if err != nil {
				got = err.Error()
			}
			if want == "" || !strings.Contains(got, want) {
				t.Errorf("got %q, want %q", got, want)
			}
		} else if len(b.Sheets) != 1 {
			t.Errorf("got %v", b.Sheets)
		}
	}
}

// Spaces that stand for a text without end are cut off where no cell is read any more.
func TestODSLongText(t *testing.T) {
	s := sheetOf(t, odsOf(t, `<table:table table:name="one"><table:table-row><table:table-cell><text:p>x`+
		strings.Repeat(`<text:s text:c="99999999"/>`, 5000)+`</text:p></table:table-cell></table:table-row></table:table>`))
	if n := len(s.Rows[0].Cells[0].Text); n != mostText {
		t.Errorf("%d bytes", n)
	}
}
