package templates

import (
	"bytes"
	"fmt"
	"html/template"
	"slices"
	"strings"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/renderer"
	"github.com/yuin/goldmark/text"
	"github.com/yuin/goldmark/util"

	"traybook/records"
)

// noteIDs makes the ids of a note's headings: note- and the heading's letters.
type noteIDs struct{ page *place }

func (n noteIDs) Generate(value []byte, _ ast.NodeKind) []byte {
	id := "note"
	if s := slug(string(value)); s != "" {
		id += "-" + s
	}
	return []byte(n.page.id(id))
}

func (n noteIDs) Put([]byte) {}

// noteHTML turns the Markdown of a season's note into HTML for a page. Raw HTML
// in it is dropped; pictures become their words, and are remarked upon, because
// a site is written from the logs and notes alone; a fenced block "figure NAME"
// becomes that figure.
func (p *place) noteHTML(n records.Note, season int) (template.HTML, error) {
	source := []byte(strings.ReplaceAll(n.Text, "\r\n", "\n"))
	reader := &noteReader{place: p, note: n, season: season, source: source}
	md := goldmark.New(
		goldmark.WithExtensions(extension.Table, extension.Strikethrough),
		goldmark.WithParserOptions(parser.WithAutoHeadingID(),
			parser.WithASTTransformers(util.Prioritized(reader, 1000))),
		goldmark.WithRendererOptions(renderer.WithNodeRenderers(util.Prioritized(reader, 100))),
	)
	var out bytes.Buffer
	err := md.Convert(source, &out, parser.WithContext(parser.NewContext(parser.WithIDs(noteIDs{p}))))
	return template.HTML(out.String()), err
}

// noteText is the note as HTML; what goes wrong ends the page.
func (p *place) noteText(n records.Note, season int) template.HTML {
	html, err := p.noteHTML(n, season)
	if err != nil {
		p.err = fmt.Errorf("%s: %w", n.File, err)
	}
	return html
}

// note returns the note of a season, if there is one.
func (s *site) note(season int) (records.Note, bool) {
	i := slices.IndexFunc(s.r.Book.Notes, func(n records.Note) bool { return n.Year == season })
	if i < 0 {
		return records.Note{}, false
	}
	return s.r.Book.Notes[i], true
}

// noteReader mends the tree of one note and renders what is ours in it.
type noteReader struct {
	place  *place
	note   records.Note
	season int
	source []byte
	tables int
}

// Transform lowers headings below the page's own, takes pictures out and turns
// styles of table cells into classes.
func (n *noteReader) Transform(doc *ast.Document, _ text.Reader, _ parser.Context) {
	level, pictures := 2, []*ast.Image(nil)
	_ = ast.Walk(doc, func(node ast.Node, entering bool) (ast.WalkStatus, error) {
		if !entering {
			return ast.WalkContinue, nil
		}
		switch node := node.(type) {
		case *ast.Heading:
			level = min(node.Level+2, level+1, 6)
			node.Level = level
		case *ast.Image:
			pictures = append(pictures, node)
		default:
			cellClass(node)
		}
		return ast.WalkContinue, nil
	})
	for _, picture := range pictures {
		n.takeOut(picture)
	}
}

// takeOut puts a picture's words in its place.
func (n *noteReader) takeOut(picture *ast.Image) {
	found, expected := "a picture from elsewhere", "pages that load nothing from elsewhere"
	if !remote(string(picture.Destination)) {
		found, expected = "a picture", "words, tables and figures: pictures are not copied to the site"
	}
	n.remark(n.lineOf(picture), "note picture", found+" "+quote(string(picture.Destination)), expected+" are expected",
		"its words are shown in its place; say it in words, or take it out")
	words := ast.NewEmphasis(1)
	for child := picture.FirstChild(); child != nil; {
		next := child.NextSibling()
		words.AppendChild(words, child)
		child = next
	}
	picture.Parent().ReplaceChild(picture.Parent(), picture, words)
}

// remote tells an address with a scheme or a host.
func remote(address string) bool {
	before, _, _ := strings.Cut(address, "/")
	return strings.HasPrefix(address, "//") || strings.Contains(before, ":")
}

// remark adds a warning about a line of the note.
func (n *noteReader) remark(line int, check, found, expected, remedy string) {
	n.place.remarks = append(n.place.remarks, records.Problem{
		Pos:      records.Pos{File: n.note.File, Line: line, Column: 1},
		Severity: records.Warning, Check: check, Found: found, Expected: expected, Remedy: remedy,
	})
}

// lineOf is the line of the note on which the block around a node begins.
func (n *noteReader) lineOf(node ast.Node) int {
	for ; node != nil; node = node.Parent() {
		if node.Type() != ast.TypeInline && node.Lines() != nil && node.Lines().Len() > 0 {
			return n.lineAt(node.Lines().At(0).Start)
		}
	}
	return 1
}

func (n *noteReader) lineAt(offset int) int {
	return 1 + bytes.Count(n.source[:min(offset, len(n.source))], []byte("\n"))
}

func quote(s string) string { return `"` + s + `"` }
