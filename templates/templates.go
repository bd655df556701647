package templates

import (
	"embed"
	"html/template"
	"io/fs"
	"path"

	"traybook/report"
	"traybook/report/chart"
)

// File is one file of the site: its path, with slashes, below the site's folder.
type File struct {
	Path string
	Body []byte
}

// Charts are the drawn charts by name.
type Charts map[string]chart.Drawing

//go:embed html static
var files embed.FS

var pages = template.Must(template.New("").ParseFS(files, "html/*.html"))

// Pages returns every page and static file of the site, the front page first.
func Pages(r *report.Report, charts Charts) ([]File, error) {
	s := newSite(r, charts)
	var out []File
	for _, sp := range s.plan {
		body, err := s.render(sp)
		if err != nil {
			return nil, err
		}
		out = append(out, File{sp.path, body})
	}
	out = append(out, File{"static/paper.css", s.paper()})
	static, err := staticFiles()
	return append(out, static...), err
}

// staticFiles are the files that go to the site as they are.
func staticFiles() ([]File, error) {
	entries, err := fs.ReadDir(files, "static")
	if err != nil {
		return nil, err
	}
	var out []File
	for _, e := range entries {
		name := path.Join("static", e.Name())
		body, err := files.ReadFile(name)
		if err != nil {
			return nil, err
		}
		out = append(out, File{name, body})
	}
	return out, nil
}
