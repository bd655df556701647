package templates

import (
	"encoding/xml"
	"errors"
	"io"
	"path"
	"slices"
	"strings"
	"testing"
)

// element is an element of a page with its place among the others.
type element struct {
	name  string
	attrs map[string]string
	text  string // all text inside it
	under []string
}

// elements reads a page. Pages are written so that an XML reader, told of HTML's
// void elements and entities, reads them: a page on which it fails is not well
// formed.
func elements(t *testing.T, page, body string) []*element {
	t.Helper()
	d := xml.NewDecoder(strings.NewReader(body))
	d.Strict, d.AutoClose, d.Entity = false, xml.HTMLAutoClose, xml.HTMLEntity
	var all, open []*element
	for {
		token, err := d.Token()
		if errors.Is(err, io.EOF) {
			break
		}
		if err != nil {
			t.Fatalf("%s: %v", page, err)
		}
		switch token := token.(type) {
		case xml.StartElement:
			e := &element{name: token.Name.Local, attrs: map[string]string{}}
			for _, a := range token.Attr {
				e.attrs[a.Name.Local] = a.Value
			}
			for _, o := range open {
				e.under = append(e.under, o.name)
			}
			all, open = append(all, e), append(open, e)
		case xml.EndElement:
			open = open[:len(open)-1]
		case xml.CharData:
			for _, o := range open {
				o.text += string(token)
			}
		}
	}
	if len(open) > 0 {
		t.Errorf("%s: %s is not closed", page, open[len(open)-1].name)
	}
	return all
}

// Every page of every book is what a page must be.
func TestLaws(t *testing.T) {
	for book, b := range builds(t) {
		parsed := map[string][]*element{}
		for page, body := range b.pages {
			if path.Ext(page) == ".html" {
				parsed[page] = elements(t, book+": "+page, body)
			}
		}
		for page, all := range parsed {
			at := book + ": " + page
			lawHead(t, at, b.pages[page])
			lawInline(t, at, all)
			lawHeadings(t, at, all)
			lawTables(t, at, all)
			lawNavigation(t, at, all)
			lawLinks(t, at, page, all, b.pages, parsed)
		}
	}
}

func lawHead(t *testing.T, at, body string) {
	t.Helper()
	const start = "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n" +
		"<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'self'; img-src 'self' data:; base-uri 'none'; form-action 'none'\">\n"
	if !strings.HasPrefix(body, start) {
		t.Errorf("%s does not begin with its charset and its policy", at)
	}
}

// lawInline: no script, no style but the sheet's, no handler, nothing from
// elsewhere.
func lawInline(t *testing.T, at string, all []*element) {
	t.Helper()
	for _, e := range all {
		if slices.Contains([]string{"script", "style", "iframe", "object", "embed", "img", "form", "base"}, e.name) {
			t.Errorf("%s has an element %s", at, e.name)
		}
		for name, value := range e.attrs {
			if name == "style" || strings.HasPrefix(name, "on") {
				t.Errorf("%s: %s has %s=%q", at, e.name, name, value)
			}
			if (name == "href" || name == "src") && !staysHere(e, value) {
				t.Errorf("%s: %s leads away: %q", at, e.name, value)
			}
		}
	}
}

// staysHere reports whether an address is a file of the site, the icon, which stands in
// the page itself, or a link of a note, which tells no one where the reader comes from.
func staysHere(e *element, address string) bool {
	switch {
	case e.name == "link" && e.attrs["rel"] == "icon":
		return strings.HasPrefix(address, "data:image/svg+xml,")
	case e.name == "a" && e.attrs["rel"] == "noreferrer":
		return strings.HasPrefix(address, "https://") || strings.HasPrefix(address, "http://") || strings.HasPrefix(address, "mailto:")
	}
	return !strings.Contains(address, ":") && !strings.HasPrefix(address, "/")
}

// lawHeadings: one of the first rank, none skipped, no id twice.
func lawHeadings(t *testing.T, at string, all []*element) {
	t.Helper()
	first, last := 0, 0
	ids := map[string]bool{}
	for _, e := range all {
		if id, ok := e.attrs["id"]; ok {
			if ids[id] || id == "" || strings.ContainsAny(id, " \t\n") {
				t.Errorf("%s: id %q stands twice, or is none", at, id)
			}
			ids[id] = true
		}
		if len(e.name) != 2 || e.name[0] != 'h' || e.name[1] < '1' || e.name[1] > '6' {
			continue
		}
		rank := int(e.name[1] - '0')
		if rank == 1 {
			first++
		}
		if rank > last+1 || strings.TrimSpace(e.text) == "" {
			t.Errorf("%s: %s %q follows a heading of rank %d", at, e.name, e.text, last)
		}
		last = rank
	}
	if first != 1 {
		t.Errorf("%s has %d first headings", at, first)
	}
}

// lawTables: every table has a caption, every head a scope, every row as many
// cells as the head, and every table stands in a box that scrolls.
func lawTables(t *testing.T, at string, all []*element) {
	t.Helper()
	captions, tables := 0, 0
	for _, e := range all {
		switch e.name {
		case "table":
			tables++
		case "caption":
			captions++
			if strings.TrimSpace(e.text) == "" {
				t.Errorf("%s: an empty caption", at)
			}
		case "th":
			if e.attrs["scope"] == "" {
				t.Errorf("%s: %q is a head without scope", at, e.text)
			}
		}
	}
	if tables != captions {
		t.Errorf("%s has %d tables and %d captions", at, tables, captions)
	}
	for _, e := range all {
		if class, region := e.attrs["class"], e.attrs["role"]; strings.HasPrefix(class, "scroll") &&
			(region != "region" || e.attrs["tabindex"] != "0" || e.attrs["aria-label"]+e.attrs["aria-labelledby"] == "") {
			t.Errorf("%s: a box that scrolls cannot be reached by keyboard or has no name", at)
		}
	}
}

// lawNavigation: the page, or the page above it, is marked once among the links at its
// head and once in the contents at its foot, where it stands in them.
func lawNavigation(t *testing.T, at string, all []*element) {
	t.Helper()
	var labels []string
	current := 0
	for _, e := range all {
		if e.name == "nav" {
			labels = append(labels, e.attrs["aria-label"])
		}
		if e.attrs["aria-current"] != "" && slices.Contains(e.under, "footer") {
			current++
		}
	}
	for _, want := range []string{"Pages", "Contents"} {
		if n := len(slices.DeleteFunc(slices.Clone(labels), func(l string) bool { return l != want })); n != 1 {
			t.Errorf("%s has %d navigations called %s", at, n, want)
		}
	}
	if current > 1 || current == 0 && !strings.HasSuffix(at, "empty: index.html") {
		t.Errorf("%s is marked %d times in the contents", at, current)
	}
}

// lawLinks: every link leads to a file of the site, and to an id on it.
func lawLinks(t *testing.T, at, page string, all []*element, files map[string]string, parsed map[string][]*element) {
	t.Helper()
	for _, e := range all {
		target, ok := e.attrs["href"]
		if !ok || e.name == "image" || target == "" || e.attrs["rel"] == "icon" || e.attrs["rel"] == "noreferrer" {
			continue
		}
		file, id, _ := strings.Cut(target, "#")
		if file == "" {
			file = page
		} else {
			file = path.Join(path.Dir(page), file)
		}
		if _, ok := files[file]; !ok {
			t.Errorf("%s: %q leads to %s, which is not there", at, target, file)
		}
		if id != "" && !slices.ContainsFunc(parsed[file], func(e *element) bool { return e.attrs["id"] == id }) {
			t.Errorf("%s: %q leads to no id of %s", at, target, file)
		}
	}
	for _, e := range all {
		for _, id := range strings.Fields(e.attrs["aria-labelledby"]) {
			if !slices.ContainsFunc(all, func(e *element) bool { return e.attrs["id"] == id }) {
				t.Errorf("%s: labelled by %q, which is not there", at, id)
			}
		}
	}
}

// Every page of a season has the same links at its head and the same contents.
func TestOneNavigation(t *testing.T) {
	b := buildOf(t, houseReport(t), nil)
	of := map[string]string{}
	for _, page := range b.html() {
		season, _, below := strings.Cut(page, "/")
		if !below {
			season = "2025" // the season reviewed
		}
		var labels []string
		for _, e := range elements(t, page, b.pages[page]) {
			if e.name == "a" && slices.Contains(e.under, "li") && slices.Contains(e.under, "nav") && !slices.Contains(e.under, "main") {
				labels = append(labels, e.text)
			}
		}
		if got := strings.Join(labels, "|"); of[season] == "" {
			of[season] = got
		} else if got != of[season] {
			t.Errorf("%s: %s\nelsewhere: %s", page, got, of[season])
		}
	}
}
