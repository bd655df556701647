package templates

import (
	"embed"
	"html/template"
	"io/fs"
	"iter"
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

// Pages gives every page and static file of the site, the front page first, one after
// the other, so that no page is kept longer than it takes to write it. It ends at the
// first error.
func Pages(r *report.Report, charts Charts) iter.Seq2[File, error] {
	return func(yield func(File, error) bool) {
		s := newSite(r, charts)
		each := func(f File) bool { return yield(f, nil) }
		page := func(f File) bool { return each(File{f.Path, s.inSheets(f.Body)}) }
		for _, sp := range s.plan {
			more, err := s.render(sp, page)
			if err != nil {
				yield(File{}, err)
			}
			if !more {
				return
			}
		}
		static, err := staticFiles()
		if err != nil {
			yield(File{}, err)
			return
		}
		for _, f := range append([]File{{"static/paper.css", s.paper()}}, static...) {
			if !each(f) {
				return
			}
		}
	}
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
