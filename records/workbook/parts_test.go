package workbook

import (
	"archive/zip"
	"bytes"
	"compress/flate"
	"errors"
	"maps"
	"slices"
	"strings"
	"testing"
)

// archive packs files.
func archive(t testing.TB, files map[string]string) []byte {
	t.Helper()
	var b bytes.Buffer
	z := zip.NewWriter(&b)
	for _, name := range slices.Sorted(maps.Keys(files)) {
		w, err := z.Create(name)
		if err == nil {
			_, err = w.Write([]byte(files[name]))
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	if err := z.Close(); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// lyingArchive packs a thousand bytes and says that they are as many as size.
func lyingArchive(t *testing.T, name string, size uint64) []byte {
	t.Helper()
	var packed, b bytes.Buffer
	f, err := flate.NewWriter(&packed, flate.BestSpeed)
	if err != nil {
		t.Fatal(err)
	}
	_, err = f.Write(make([]byte, 1000))
	err = errors.Join(err, f.Close())
	z := zip.NewWriter(&b)
	w, e := z.CreateRaw(&zip.FileHeader{Name: name, Method: zip.Deflate, UncompressedSize64: size, CompressedSize64: uint64(packed.Len())})
	if err := errors.Join(err, e); err != nil {
		t.Fatal(err)
	}
	_, err = w.Write(packed.Bytes())
	if err := errors.Join(err, z.Close()); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// xlsxOf is the smallest .xlsx file with these rows and texts; the namespaces are those
// of the strict kind.
func xlsxOf(t testing.TB, rows, texts string) []byte {
	t.Helper()
	const office = ` xmlns="http://purl.oclc.org/ooxml/spreadsheetml/main" xmlns:r="http://purl.oclc.org/ooxml/officeDocument/relationships"`
	const link = `<Relationship Id="I" Type="http://purl.oclc.org/ooxml/officeDocument/relationships/T" Target="P"/>`
	links := func(of ...string) string {
		s := "<Relationships>"
		for i := 0; i < len(of); i += 3 {
			s += strings.NewReplacer(`"I"`, `"`+of[i]+`"`, `/T"`, "/"+of[i+1]+`"`, `"P"`, `"`+of[i+2]+`"`).Replace(link)
		}
		return s + "</Relationships>"
	}
	return archive(t, map[string]string{
		"[Content_Types].xml":          `<Types/>`,
		"_rels/.rels":                  links("a", "officeDocument", "/book/list.xml"),
		"book/list.xml":                `<workbook` + office + `><workbookPr date1904="false"/><sheets><sheet name="one" sheetId="4" r:id="b"/></sheets></workbook>`,
		"book/_rels/list.xml.rels":     links("b", "worksheet", "pages/first.xml", "c", "sharedStrings", "texts.xml", "d", "styles", "../styles.xml"),
		"book/texts.xml":               "<sst" + office + ">" + texts + "</sst>",
		"Styles.xml":                   `<styleSheet` + office + `><numFmts><numFmt numFmtId="9" formatCode="0.00"/></numFmts><cellXfs><xf numFmtId="0"/><xf numFmtId="22"/><xf numFmtId="9"/></cellXfs><dxfs><dxf><numFmt numFmtId="22" formatCode="0"/></dxf></dxfs></styleSheet>`,
		`book\pages\first.xml`:         `<?xml version="1.0" encoding="UTF-8"?><s:worksheet xmlns:s="http://purl.oclc.org/ooxml/spreadsheetml/main"><s:sheetViews><s:sheetView/></s:sheetViews>` + rows + `</s:worksheet>`,
		"book/pages/_rels/nothing.xml": "x",
	})
}

// odsOf is the smallest .ods file with this content of a spreadsheet.
func odsOf(t testing.TB, content string) []byte {
	t.Helper()
	return archive(t, map[string]string{"mimetype": "application/vnd.oasis.opendocument.spreadsheet", "content.xml": odsContent(content)})
}

func odsContent(content string) string {
	return `<office:document-content xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0" xmlns:draw="urn:oasis:names:tc:opendocument:xmlns:drawing:1.0" xmlns:calcext="urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0"><office:automatic-styles><table:table name="no sheet"/></office:automatic-styles><office:body><office:spreadsheet>` +
		content + `</office:spreadsheet></office:body></office:document-content>`
}
