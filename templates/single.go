package templates

import (
	"bytes"
	"crypto/sha256"
	"encoding/base64"
	"fmt"
	"html/template"

	"traybook/report"
)

// SingleFile is the name of a season's review as one file.
const SingleFile = "review.html"

// single is what stands around the text of a review in one file.
type single struct {
	shell
	Main   template.HTML
	Style  template.CSS
	Policy string // of its one style sheet, by its hash
}

// Single returns the review of the season reviewed as one file that holds all it
// needs: its style, its drawings, no link to another page. Its policy names the style
// by its hash (Content Security Policy Level 3, section 2.3.1).
func Single(r *report.Report, charts Charts) (File, error) {
	s := newSite(r, charts)
	s.paths = map[string]bool{}
	s.single = true
	sp := reviewSpec(r.Season)
	sp.path, sp.logs = SingleFile, nil
	p := newPage(s, sp)
	view := sp.view(p)
	if p.err != nil {
		return File{}, fmt.Errorf("page %s: %w", sp.path, p.err)
	}
	text, err := s.written(func() error { return pages.ExecuteTemplate(&s.out, "index.html", view) })
	if err != nil {
		return File{}, fmt.Errorf("page %s: %w", sp.path, err)
	}
	style, err := files.ReadFile("static/site.css")
	if err != nil {
		return File{}, err
	}
	one := single{shell: s.frame(p, view), Main: template.HTML(text), Style: template.CSS(append(style, s.paper()...))}
	sum := sha256.Sum256([]byte(one.Style))
	one.Policy = "sha256-" + base64.StdEncoding.EncodeToString(sum[:])
	var out bytes.Buffer
	if err := pages.ExecuteTemplate(&out, "single.html", one); err != nil {
		return File{}, fmt.Errorf("page %s: %w", sp.path, err)
	}
	return File{Path: SingleFile, Body: s.inSheets(out.Bytes())}, nil
}
