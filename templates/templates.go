package templates

import (
	"embed"
	"html/template"
	"io/fs"
	"iter"
	"path"
	"slices"

	"traybook/report"
	"traybook/report/chart"
)

// File is one file of the site: its path, with slashes, below the site's folder. The body is
// its taker's, until that says Written.
type File struct {
	Path string
	Body []byte

	spare spare // where the body may go; nil: nowhere
}

// Written says that the body is written down and nobody reads it any more: a later page may
// take its memory. It may be said once, in any goroutine, and need not be said at all.
func (f File) Written() { f.spare.put(f.Body) }

// spare is memory of pages that are written down, for those to come: all pages of a large
// book are larger than its figures.
type spare chan []byte

// mostSpare is how many are kept; whoever writes pages holds few at a time.
const mostSpare = 16

func (s spare) put(body []byte) {
	select {
	case s <- body:
	default:
	}
}

// copyOf is a page in memory of its own.
func (s spare) copyOf(page []byte) []byte {
	select {
	case body := <-s:
		return append(body[:0], page...)
	default:
		return slices.Clone(page)
	}
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
		s.spare = make(spare, mostSpare)
		each := func(f File) bool { return yield(f, nil) }
		page := func(f File) bool {
			f.Body = s.inSheets(f.Body)
			return each(f)
		}
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
		for _, f := range append([]File{{Path: "static/paper.css", Body: s.paper()}}, static...) {
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
		out = append(out, File{Path: name, Body: body})
	}
	return out, nil
}
