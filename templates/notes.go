package templates

import (
	"bytes"
	"slices"
	"strconv"
	"strings"

	"github.com/yuin/goldmark"
	"github.com/yuin/goldmark/ast"
	"github.com/yuin/goldmark/extension"
	"github.com/yuin/goldmark/parser"
	"github.com/yuin/goldmark/text"

	"traybook/records"
	"traybook/report"
)

// Notes tells what no page will show of a book's notes as they are written: pictures,
// raw HTML, links that lead to no page, and figures by a name that is none. It asks for
// no figure, so that these problems stand among those of the logs before the figures are
// made. A note of a year without sowings has no page, and nothing is said of it.
func Notes(b *records.Book) []records.Problem {
	var out []records.Problem
	for _, n := range b.Notes {
		var crops []string
		for _, s := range b.Sowings {
			if b.Settings.Season(s.Sown) == n.Year {
				crops = append(crops, s.Crop)
			}
		}
		if len(crops) == 0 {
			continue
		}
		tree := readNote(n)
		for _, picture := range tree.pictures() {
			out = append(out, tree.pictureProblem(picture))
		}
		out = append(out, tree.htmlProblems()...)
		out = append(out, tree.linkProblems(crops)...)
		for _, f := range tree.figures() {
			if !slices.Contains(figureNames(), f.name) {
				out = append(out, tree.problem(f.line, "note figure", "a figure "+quote(f.name),
					"one of "+strings.Join(figureNames(), ", ")+" is expected", "the block is left out of the page"))
			}
		}
	}
	return out
}

// Unfilled tells which figures the notes of a report's seasons ask for although there
// is nothing to make them from, and which of their links lead to a page that the book
// has no data for. It is asked before any page is set.
func Unfilled(r *report.Report) []records.Problem {
	var out []records.Problem
	s := newSite(r, nil)
	for _, n := range r.Book.Notes {
		if !slices.Contains(r.Batches.Seasons, n.Year) {
			continue
		}
		tree, p := readNote(n), newPage(s, spec{path: s.seasonPath(n.Year), season: n.Year})
		for _, want := range tree.figures() {
			if f, known := p.noteFigures(want.name, n.Year); known && len(f) == 0 {
				out = append(out, tree.problem(want.line, "note figure", "the figure "+quote(want.name), "records to make it from are expected",
					"the block is left out of the page; the page of what is missing says what to write down"))
			}
		}
		out = append(out, tree.emptyLinks(s)...)
	}
	return out
}

// noteTree is a note as the Markdown reader takes it apart.
type noteTree struct {
	note   records.Note
	source []byte
	doc    ast.Node
}

// markdown are the parts of Markdown that a note may use. Raw HTML is dropped.
func markdown(more ...goldmark.Option) goldmark.Markdown {
	return goldmark.New(append(more, goldmark.WithExtensions(extension.Table, extension.Strikethrough),
		goldmark.WithParserOptions(parser.WithAutoHeadingID()))...)
}

// readNote takes a note apart; options may name the ids of its headings.
func readNote(n records.Note, options ...parser.ContextOption) noteTree {
	source := []byte(strings.ReplaceAll(n.Text, "\r\n", "\n"))
	context := parser.WithContext(parser.NewContext(options...))
	return noteTree{n, source, markdown().Parser().Parse(text.NewReader(source), context)}
}

// pictures are the pictures of a note, in order.
func (t noteTree) pictures() (all []*ast.Image) {
	t.each(func(node ast.Node) {
		if picture, ok := node.(*ast.Image); ok {
			all = append(all, picture)
		}
	})
	return all
}

// noteFigure is a fenced block "figure NAME" of a note.
type noteFigure struct {
	name string
	line int
}

// figures are the figures that a note asks for, in order.
func (t noteTree) figures() (all []noteFigure) {
	t.each(func(node ast.Node) {
		if block, ok := node.(*ast.FencedCodeBlock); ok {
			if wanted, ok := figureWanted(block, t.source); ok {
				all = append(all, noteFigure{wanted, t.lineAt(block.Info.Segment.Start)})
			}
		}
	})
	return all
}

// figureWanted is the name behind the word figure on the first line of a fenced
// block; ok is false for any other block.
func figureWanted(block *ast.FencedCodeBlock, source []byte) (wanted string, ok bool) {
	if block.Info == nil {
		return "", false
	}
	info := strings.Fields(string(block.Info.Segment.Value(source)))
	if len(info) == 0 || info[0] != "figure" {
		return "", false
	}
	return strings.Join(info[1:], " "), true
}

// each calls do on every part of a note, those that hold others first.
func (t noteTree) each(do func(ast.Node)) {
	_ = ast.Walk(t.doc, func(node ast.Node, entering bool) (ast.WalkStatus, error) { // no visit fails
		if entering {
			do(node)
		}
		return ast.WalkContinue, nil
	})
}

// pictureProblem says why a picture is not shown: a site is made of the logs and
// notes alone, and loads nothing from elsewhere.
func (t noteTree) pictureProblem(picture *ast.Image) records.Problem {
	address := string(picture.Destination)
	found, expected := "a picture from elsewhere ", "pages that load nothing from elsewhere are expected"
	if !remote(address) {
		found, expected = "a picture ", "words, tables and figures: pictures are not copied to the site are expected"
	}
	return t.problem(t.lineOf(picture), "note picture", found+quote(address), expected,
		"its words are shown in its place; say it in words, or take it out")
}

// remote tells an address with a scheme or a host.
func remote(address string) bool {
	before, _, _ := strings.Cut(address, "/")
	return strings.HasPrefix(address, "//") || strings.Contains(before, ":")
}

// problem is a warning about a line of the note, counted from 1.
func (t noteTree) problem(line int, check, found, expected, remedy string) records.Problem {
	return records.Problem{
		Pos:      records.Pos{File: t.note.File, Line: line, Column: 1},
		Severity: records.Warning, Check: check, Found: found, Expected: expected, Remedy: remedy,
	}
}

// lineOf is the line of the note on which a node's words stand, else that on which the
// block around it begins.
func (t noteTree) lineOf(node ast.Node) int {
	for child := node.FirstChild(); child != nil; child = child.FirstChild() {
		if words, ok := child.(*ast.Text); ok {
			return t.lineAt(words.Segment.Start)
		}
	}
	for ; node != nil; node = node.Parent() {
		if node.Type() != ast.TypeInline && node.Lines() != nil && node.Lines().Len() > 0 {
			return t.lineAt(node.Lines().At(0).Start)
		}
	}
	return 1
}

// lineAt is the line on which a byte of the note stands.
func (t noteTree) lineAt(offset int) int {
	return 1 + bytes.Count(t.source[:min(offset, len(t.source))], []byte("\n"))
}

// quote sets what was read in the note apart, on one line and not too long.
func quote(s string) string {
	if r := []rune(s); len(r) > 60 {
		s = string(r[:59]) + "…"
	}
	return strconv.Quote(s)
}
