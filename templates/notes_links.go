package templates

import (
	"net/url"
	"slices"
	"strings"

	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/util"

	"traybook/records"
)

// rawHTML are the pieces of HTML in a note, which no page shows.
func (t noteTree) rawHTML() (all []ast.Node) {
	t.each(func(node ast.Node) {
		if k := node.Kind(); k == ast.KindHTMLBlock || k == ast.KindRawHTML {
			all = append(all, node)
		}
	})
	return all
}

// htmlProblems tells of the HTML in a note, once a line.
func (t noteTree) htmlProblems() (all []records.Problem) {
	told := 0
	for _, node := range t.rawHTML() {
		line := t.lineOf(node)
		if raw, ok := node.(*ast.RawHTML); ok {
			line = t.lineAt(raw.Segments.At(0).Start)
		}
		if line != told {
			all = append(all, t.problem(line, "note html", "HTML", "Markdown alone is expected", "the HTML is left out of the page"))
		}
		told = line
	}
	return all
}

// noteLink is a link of a note: an ast.Link, or an ast.AutoLink, whose address is its
// words.
type noteLink struct {
	node    ast.Node
	address string
}

// links are the links of a note, in order.
func (t noteTree) links() (all []noteLink) {
	t.each(func(node ast.Node) {
		switch link := node.(type) {
		case *ast.Link:
			all = append(all, noteLink{link, plainAddress(link.Destination)})
		case *ast.AutoLink:
			address := string(link.URL(t.source))
			if link.AutoLinkType == ast.AutoLinkEmail {
				address = "mailto:" + address
			}
			all = append(all, noteLink{link, address})
		}
	})
	return all
}

// plainAddress is an address with its entities and backslashes resolved.
func plainAddress(written []byte) string {
	resolved := util.ResolveEntityNames(util.ResolveNumericReferences(util.UnescapePunctuations(written)))
	return strings.TrimSpace(string(resolved))
}

// schemesThatPass are the only ones that a link may lead away by.
var schemesThatPass = []string{"http", "https", "mailto"}

// leadsAway reports whether an address leads away from the site as a link may.
func leadsAway(address string) bool {
	u, err := url.Parse(address)
	return err == nil && slices.Contains(schemesThatPass, strings.ToLower(u.Scheme)) && (u.Host != "" || u.Opaque != "")
}

// pageNames are the names of pages that a link of a note may lead to, besides those of
// the season's crops.
func pageNames() []string {
	out := []string{"index"}
	for _, c := range chapters {
		if c.family == nil {
			out = append(out, strings.TrimSuffix(c.path, ".html"))
		}
	}
	return append(out, "records")
}

// linkedPage is the page that a link by name leads to, as spec.path has it, for a note
// of a season; empty for a name that is none. A crop's name leads to its records.
func linkedPage(address string, season int, crop func(string) string) string {
	wanted, err := url.PathUnescape(address)
	if err != nil {
		return ""
	}
	for _, c := range chapters {
		if c.season && c.path == wanted {
			return seasonFile(wanted, season)
		}
	}
	if wanted == "index" {
		return seasonFile(wanted, season)
	}
	if slices.Contains(pageNames(), wanted) {
		return wanted + ".html"
	}
	return crop(wanted)
}

// linkProblems tells of the links of a note that lead nowhere: to no page by name, or
// away by an address that may run something or hide where it leads.
func (t noteTree) linkProblems(crops []string) (all []records.Problem) {
	anyCrop := func(wanted string) string {
		if slices.Contains(crops, wanted) {
			return wanted
		}
		return ""
	}
	for _, link := range t.links() {
		switch {
		case leadsAway(link.address) || linkedPage(link.address, t.note.Year, anyCrop) != "":
		case remote(link.address):
			all = append(all, t.linkProblem(link, "an address that begins with http, https or mailto is expected"))
		default:
			all = append(all, t.linkProblem(link, "a page’s name ("+strings.Join(pageNames(), ", ")+" or a crop of the season) is expected"))
		}
	}
	return all
}

// linkProblem is a warning about a link, which becomes plain words.
func (t noteTree) linkProblem(link noteLink, expected string) records.Problem {
	return t.problem(t.lineOf(link.node), "note link", "a link to "+quote(link.address), expected, "its words stand without a link")
}

// emptyLinks tells of the links to pages that the book has no data for.
func (t noteTree) emptyLinks(s *site) (all []records.Problem) {
	for _, link := range t.links() {
		page := linkedPage(link.address, t.note.Year, s.cropPath(t.note.Year))
		if page != "" && !s.paths[page] {
			all = append(all, t.linkProblem(link, "records to make this page from are expected"))
		}
	}
	return all
}

// cropPath finds the page of a crop's records in a season; empty for none.
func (s *site) cropPath(season int) func(crop string) string {
	return func(crop string) string {
		for _, c := range s.crops {
			if c.Season == season && c.Crop == crop {
				return c.Path
			}
		}
		return ""
	}
}

// setLinks makes the links of a note lead where they may: to a page by its name, away by
// an address that can do no harm. The others become plain words.
func (t noteTree) setLinks(p *page) {
	for _, link := range t.links() {
		target := linkedPage(link.address, t.note.Year, p.cropPath(t.note.Year))
		switch l, isLink := link.node.(*ast.Link); {
		case leadsAway(link.address):
			link.node.SetAttributeString("rel", []byte("noreferrer"))
		case isLink && target != "" && p.paths[target] && !p.single:
			l.Destination = []byte(p.href(target))
		case isLink:
			unwrap(link.node)
		default:
			words := ast.NewString(util.EscapeHTML([]byte(link.address)))
			words.SetCode(true) // it is escaped
			link.node.Parent().ReplaceChild(link.node.Parent(), link.node, words)
		}
	}
}
