package templates

import (
	"strconv"
	"strings"

	"github.com/yuin/goldmark/ast"
	east "github.com/yuin/goldmark/extension/ast"
	"github.com/yuin/goldmark/renderer"
	"github.com/yuin/goldmark/util"
)

// RegisterFuncs takes over what the Markdown reader would write otherwise:
// fenced blocks, for figures, and tables, which get a caption and a box that
// scrolls.
func (n *noteReader) RegisterFuncs(to renderer.NodeRendererFuncRegisterer) {
	to.Register(ast.KindFencedCodeBlock, n.fenced)
	to.Register(east.KindTable, n.table)
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

func (n *noteReader) table(w util.BufWriter, _ []byte, _ ast.Node, entering bool) (ast.WalkStatus, error) {
	if !entering {
		_, err := w.WriteString("</table></div>\n")
		return ast.WalkContinue, err
	}
	n.tables++
	caption := "Table " + strconv.Itoa(n.tables) + " of the notes"
	_, err := w.WriteString(`<div class="scroll" tabindex="0" role="region" aria-label="` + caption + `"><table><caption>` + caption + "</caption>\n")
	return ast.WalkContinue, err
}

// fenced writes a fenced block: a figure, or else its text as it stands.
func (n *noteReader) fenced(w util.BufWriter, source []byte, node ast.Node, entering bool) (ast.WalkStatus, error) {
	if !entering {
		return ast.WalkContinue, nil
	}
	block := node.(*ast.FencedCodeBlock)
	info := ""
	if block.Info != nil {
		info = string(block.Info.Segment.Value(source))
	}
	words := strings.Fields(info)
	if len(words) == 0 || words[0] != "figure" {
		return ast.WalkSkipChildren, plainBlock(w, source, block)
	}
	return ast.WalkSkipChildren, n.figure(w, block, strings.Join(words[1:], " "))
}

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

// figure writes a figure of the season by name, and remarks on a name that is
// none or a figure for which the book holds nothing.
func (n *noteReader) figure(w util.BufWriter, block *ast.FencedCodeBlock, wanted string) error {
	line := n.lineAt(block.Info.Segment.Start)
	f, known := n.place.noteFigure(wanted, n.season)
	switch {
	case !known:
		n.remark(line, "note figure", "a figure "+quote(wanted), "one of "+strings.Join(figureNames(), ", ")+" is expected",
			"the block is left out of the page")
	case !f.Shown():
		n.remark(line, "note figure", "the figure "+quote(wanted), "records to make it from are expected",
			"the block is left out of the page; the page of what is missing says what to write down")
	default:
		return pages.ExecuteTemplate(w, "figure", f)
	}
	return nil
}
