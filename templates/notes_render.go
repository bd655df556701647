package templates

import (
	"bytes"
	"html/template"
	"slices"
	"strconv"
	"strings"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	east "github.com/yuin/goldmark/extension/ast"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/renderer"
	"github.com/yuin/goldmark/util"

	"traybook/records"
)

// note returns the note of a season, if there is one.
func (s *site) note(season int) (records.Note, bool) {
	i := slices.IndexFunc(s.r.Book.Notes, func(n records.Note) bool { return n.Year == season })
	if i < 0 {
		return records.Note{}, false
	}
	return s.r.Book.Notes[i], true
}

// noteBlocks turns the Markdown of a season's note into the HTML of a page, block by block.
// Raw HTML in it is dropped, pictures and links that lead to no page become their words, and
// a fenced block "figure NAME" becomes that figure; Notes and Unfilled have told what is
// left out. A block too long for any page becomes a sentence that says where it stands.
func (p *page) noteBlocks(n records.Note, season int) (blocks []noteBlock, err error) {
	defer func(own []piece) { p.pieces = own }(p.pieces) // a note is cut by its blocks
	tree := readNote(n, parser.WithIDs(noteIDs{p}))
	tree.fit()
	tree.setLinks(p)
	setter := &noteSetter{page: p, season: season}
	md := markdown(goldmark.WithRendererOptions(renderer.WithNodeRenderers(util.Prioritized(setter, 100)))).Renderer()
	for node := tree.doc.FirstChild(); node != nil; node = node.NextSibling() {
		var out bytes.Buffer
		setter.undrawn = 0
		if err := md.Render(&out, tree.source, node); err != nil {
			return nil, err
		}
		b := noteBlock{template.HTML(out.String()), node.Kind() == ast.KindHeading, out.Len() + setter.undrawn}
		if b.size > mostOfNotePage {
			b.html = say("<p>What stands at line %s of %s is too long for a page.</p>\n", strconv.Itoa(tree.lineOf(node)), name(n.File))
			b.size = len(b.html)
		}
		blocks = append(blocks, b)
	}
	return blocks, nil
}

// noteIDs makes the ids of a note's headings: note- and the heading's letters.
type noteIDs struct{ page *page }

// Generate makes the id of a heading.
func (n noteIDs) Generate(value []byte, _ ast.NodeKind) []byte {
	id := "note"
	if s := slug(string(value)); s != "" {
		id += "-" + s
	}
	return []byte(n.page.id(id))
}

// Put is told of ids that the note gives itself, which it may not.
func (n noteIDs) Put([]byte) {}

// fit makes a note fit for a page: headings stand below the page's own and skip no
// rank, styles of table cells become classes, and pictures their words.
func (t noteTree) fit() {
	level := 2
	t.each(func(node ast.Node) {
		if heading, ok := node.(*ast.Heading); ok {
			level = min(heading.Level+2, level+1, 6)
			heading.Level = level
		}
		cellClass(node)
	})
	for _, picture := range t.pictures() {
		emphasis := ast.NewEmphasis(1)
		picture.Parent().InsertBefore(picture.Parent(), picture, emphasis)
		emphasis.AppendChild(emphasis, picture)
		unwrap(picture)
	}
	for _, raw := range t.rawHTML() {
		raw.Parent().RemoveChild(raw.Parent(), raw)
	}
}

// unwrap puts what stands inside a node in its place.
func unwrap(node ast.Node) {
	for child := node.FirstChild(); child != nil; {
		next := child.NextSibling()
		node.Parent().InsertBefore(node.Parent(), node, child)
		child = next
	}
	node.Parent().RemoveChild(node.Parent(), node)
}

// cellClass says in a class what a table cell's style would say, which the
// page's policy does not allow.
func cellClass(node ast.Node) {
	c, ok := node.(*east.TableCell)
	if !ok {
		return
	}
	if c.Alignment == east.AlignRight {
		c.SetAttributeString("class", []byte("num"))
	}
	c.Alignment = east.AlignNone
	if c.Parent() != nil && c.Parent().Kind() == east.KindTableHeader {
		c.SetAttributeString("scope", []byte("col"))
	}
}

// noteSetter writes what is ours in a note.
type noteSetter struct {
	page   *page
	season int
	tables int // set so far

	undrawn int // bytes that charts would take beyond what they do, in the block at hand
}

// RegisterFuncs takes over what the Markdown reader would write otherwise:
// fenced blocks, for figures, and tables, which get a caption and a box that
// scrolls.
func (n *noteSetter) RegisterFuncs(to renderer.NodeRendererFuncRegisterer) {
	to.Register(ast.KindFencedCodeBlock, n.fenced)
	to.Register(east.KindTable, n.table)
}

// table sets a table into a box with a caption.
func (n *noteSetter) table(w util.BufWriter, _ []byte, _ ast.Node, entering bool) (ast.WalkStatus, error) {
	if !entering {
		_, err := w.WriteString("</table></div>\n")
		return ast.WalkContinue, err
	}
	n.tables++
	caption := "Table " + strconv.Itoa(n.tables) + " of the notes"
	_, err := w.WriteString(`<div class="scroll" tabindex="0" role="region" aria-label="` + caption + `"><table><caption>` + caption + "</caption>\n")
	return ast.WalkContinue, err
}

// fenced writes a fenced block: a figure of the season, with the block's words for its
// caption where it has some, nothing where there is no such figure, or else the block's
// text as it stands.
func (n *noteSetter) fenced(w util.BufWriter, source []byte, node ast.Node, entering bool) (ast.WalkStatus, error) {
	if !entering {
		return ast.WalkContinue, nil
	}
	block := node.(*ast.FencedCodeBlock)
	wanted, ok := figureWanted(block, source)
	if !ok {
		return ast.WalkSkipChildren, plainBlock(w, source, block)
	}
	all, _ := n.page.noteFigures(wanted, n.season)
	for i, f := range all {
		if caption := strings.TrimSpace(string(block.Lines().Value(source))); caption != "" && i == 0 {
			f.Caption = markup(name(caption))
		}
		if f.chart {
			n.undrawn += f.size() - len(f.Drawing)
		}
		s := n.page.site
		figure, err := s.written(func() error { return pages.ExecuteTemplate(&s.out, "figure", f) })
		if err != nil {
			return ast.WalkStop, err
		}
		if _, err := w.Write(s.inSheets(figure)); err != nil {
			return ast.WalkStop, err
		}
	}
	return ast.WalkSkipChildren, nil
}

// plainBlock writes a fenced block as text.
func plainBlock(w util.BufWriter, source []byte, block *ast.FencedCodeBlock) error {
	if _, err := w.WriteString("<pre><code>"); err != nil {
		return err
	}
	for i := range block.Lines().Len() {
		line := block.Lines().At(i)
		if _, err := w.Write(util.EscapeHTML(line.Value(source))); err != nil {
			return err
		}
	}
	_, err := w.WriteString("</code></pre>\n")
	return err
}
