package templates

import (
	"crypto/sha256"
	"encoding/base64"
	"html/template"

	"traybook/records"
	"traybook/report"
)

// Sheets is a file of forms and labels, without its doctype line, and what it holds.
type Sheets struct {
	Body    []byte
	Batches int // that have a row on a form; with none the forms are blank
	Labels  int
}

// SheetFile makes the forms and labels as one self-contained HTML file: labels of what was
// sown since a day, where that is known, else in the last seven days.
func SheetFile(r *report.Report, since records.Date) (Sheets, error) {
	style, err := files.ReadFile("static/sheets.css")
	if err != nil {
		return Sheets{}, err
	}
	s := newSite(r, nil)
	v := newPage(s, spec{path: "sheets.html"}).sheets(since)
	sum := sha256.Sum256(style)
	v.Policy = "default-src 'none'; style-src 'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'; base-uri 'none'; form-action 'none'"
	v.Style = template.HTML("<style>") + template.HTML(style) + "</style>"
	out, err := s.written(func() error { return pages.ExecuteTemplate(&s.out, "sheetfile.html", v) })
	return Sheets{s.inSheets(out), v.Batches, len(v.Labels)}, err
}
