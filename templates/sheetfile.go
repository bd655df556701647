package templates

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"html/template"

	"traybook/report"
)

// SheetFile returns the forms and labels as one self-contained HTML file, without
// its doctype line, and for how many batches of the week's list they have a row.
// With none the forms are blank.
func SheetFile(r *report.Report) (body []byte, batches int, err error) {
	style, err := files.ReadFile("static/sheets.css")
	if err != nil {
		return nil, 0, err
	}
	p := newPage(newSite(r, nil), spec{path: "sheets.html", title: "Sheets to print"})
	v, batches := p.sheets()
	sum := sha256.Sum256(style)
	v.Policy = "default-src 'none'; style-src 'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'; base-uri 'none'; form-action 'none'"
	v.Style = template.HTML("<style>") + template.HTML(style) + "</style>"
	var out bytes.Buffer
	err = pages.ExecuteTemplate(&out, "sheetfile.html", v)
	return out.Bytes(), batches, err
}
