package templates

import (
	"embed"
	"html/template"
	"io/fs"
	"path"

	"traybook/records"
	"traybook/report"
	"traybook/report/chart"
)

// Page is one file of the site: its path, with slashes, below the site's folder.
type Page struct {
	Path string
	Body []byte
}

// Charts are the drawn charts by name.
type Charts map[string]chart.Drawing

//go:embed html static
var files embed.FS

var pages = template.Must(template.New("").ParseFS(files, "html/*.html"))

// Pages returns every page and static file of the site, the front page first,
// and what is to be remarked about the season notes: a figure that there is not,
// an image from elsewhere.
func Pages(r *report.Report, charts Charts) ([]Page, []records.Problem, error) {
	s := newSite(r, charts)
	var out []Page
	for _, sp := range s.plan {
		body, err := s.render(sp)
		if err != nil {
			return nil, nil, err
		}
		out = append(out, Page{sp.path, body})
	}
	static, err := staticFiles()
	records.SortProblems(s.remarks)
	return append(out, static...), s.remarks, err
}

// staticFiles are the files that go to the site as they are.
func staticFiles() ([]Page, error) {
	entries, err := fs.ReadDir(files, "static")
	if err != nil {
		return nil, err
	}
	var out []Page
	for _, e := range entries {
		name := path.Join("static", e.Name())
		body, err := files.ReadFile(name)
		if err != nil {
			return nil, err
		}
		out = append(out, Page{name, body})
	}
	return out, nil
}
