package templates

import (
	"cmp"
	"html/template"
	"path"
	"slices"
	"strconv"
	"strings"

	"traybook/report/words"
)

// A page stays below 400 kB, of which frame, findings and prose take a part. What its
// tables and charts would take beyond that stands on pages of its own below the page's
// address: first what belongs to one crop, by crop; then the rows past the first, by number.
const (
	mostBytes  = 280_000 // of tables and charts on a page
	mostOfRest = 240_000 // of a table past its first page, whose links grow longer there
	leastBytes = 60_000  // that a table keeps when it is cut by number
	chartBytes = 28_000  // about what a chart takes, drawn twice
)

// extra is a page that holds what another is too small for.
type extra struct {
	spec spec
	view any
}

// piece is a table or a figure of a page. Its key is the crop that it belongs to, where
// it belongs to one as a whole.
type piece interface {
	size() int                         // about the bytes that it takes
	byCrop() []string                  // the crops that it has something of, in order
	take(crop string, at string) piece // what it has of a crop; what it leaves leads to at
	rest(most int) ([]piece, int)      // what it leaves of the rows past so many bytes, and how many rows it keeps
	moved(from string) piece           // as it stands one folder below the page from
	note(template.HTML)
}

// block is a piece as a template shows it, under a heading where it has one.
type block struct {
	Title  template.HTML
	Rows   *rows
	Table  *table
	Figure *figure
}

// blockOf is how a template shows a piece.
func blockOf(of piece) block {
	switch of := of.(type) {
	case *rows:
		return block{Title: of.Title, Rows: of}
	case *table:
		return block{Title: of.Title, Table: of}
	case *figure:
		return block{Figure: of}
	}
	return block{}
}

// partPage is a page that holds pieces of another.
type partPage struct {
	Heading, Lead template.HTML
	Blocks        []block
	Others        template.HTML // links to the other parts
	before, after *navLink
}

func (v partPage) head() (heading, lead template.HTML) { return v.Heading, v.Lead }
func (v partPage) turn() (before, after *navLink)      { return v.before, v.after }

// cutLong moves what the page is too small for to pages of their own.
func (p *page) cutLong() {
	if p.single || p.laidOut() || p.said+sizeOf(p.pieces) <= mostBytes {
		return
	}
	p.cutByCrop()
	p.cutByNumber(p.spec.path, p.pieces)
}

// laidOut reports a page of lots: where each lot stands was settled before any page was
// written, and links lead there.
func (p *page) laidOut() bool {
	lots := seasonFile("lots", p.season)
	return p.season != 0 && (p.spec.path == lots || p.spec.parent == lots)
}

func sizeOf(pieces []piece) (n int) {
	for _, of := range pieces {
		n += of.size()
	}
	return n
}

// part is one page of several that share what was too long.
type part struct {
	path   string
	word   template.HTML // in a list of links
	pieces []piece
}

// cutByCrop moves what belongs to a crop to a page of the crop, where there are several.
func (p *page) cutByCrop() {
	var crops []string
	for _, of := range p.pieces {
		crops = append(crops, of.byCrop()...)
	}
	slices.Sort(crops)
	if crops = slices.Compact(crops); len(crops) < 2 {
		return
	}
	parts := make([]part, len(crops))
	for i, crop := range crops {
		parts[i] = part{path: p.below(p.cropFile(crop)), word: markup(name(capital(crop)))}
	}
	for _, of := range p.pieces {
		has, all := of.byCrop(), rowsIn(of) // before anything is taken
		for i, crop := range crops {
			if slices.Contains(has, crop) {
				parts[i].pieces = append(parts[i].pieces, of.take(crop, p.href(parts[i].path)))
			}
		}
		if here := rowsIn(of); here < all {
			of.note(say("%s of %s: the first of each crop. The others stand on a page for each crop.%s", words.Whole(here), words.Plural(all, "row", "rows"), allIn(of)))
		}
	}
	p.byCrop = linksTo(p.root, parts, -1)
	for i := range parts {
		p.addPart(parts, i)
	}
}

// addPart adds the page of one part, which leads to the others.
func (p *page) addPart(parts []part, i int) {
	of, base := parts[i], path.Base(p.spec.path)
	sp := p.spec
	sp.path, sp.name, sp.parent, sp.same, sp.label, sp.top = of.path, "part", cmp.Or(p.spec.parent, p.spec.path), "", "", ""
	sp.title = p.spec.title + ": " + bareText(of.word)
	v := partPage{Heading: say("%s: %s", p.heading(), of.word), Lead: say(`<a href="../%s">%s</a>`, base, p.spec.title)}
	root := p.root + "../"
	v.Others = linksTo(root, parts, i)
	v.before, v.after = partLink(root, parts, i-1), partLink(root, parts, i+1)
	// The page stands one folder below, so every link in what moves leads from elsewhere.
	var moved []piece
	for _, piece := range of.pieces {
		moved = append(moved, piece.moved(base))
	}
	sub := newPage(p.site, sp)
	sub.cutByNumber(sp.path, moved)
	for _, piece := range moved {
		v.Blocks = append(v.Blocks, blockOf(piece))
	}
	p.extras = append(p.extras, extra{sp, v})
	p.extras = append(p.extras, sub.extras...)
}

// partLink leads to the part of a number; nil where there is none.
func partLink(root string, parts []part, i int) *navLink {
	if i < 0 || i >= len(parts) {
		return nil
	}
	return &navLink{root + parts[i].path, capital(bareText(parts[i].word))}
}

// heading is the page's title as its heading, the season with it.
func (p *page) heading() template.HTML { return markup(p.spec.title) }

// linksTo are links to parts, but for the one that stands here.
func linksTo(root string, parts []part, here int) template.HTML {
	size := 0
	for _, of := range parts {
		size += len(root) + len(of.path) + len(of.word) + len(`, <strong></strong>`)
	}
	w := pen{out: make([]byte, 0, size)}
	for i, of := range parts {
		w.put(between(i, len(parts)))
		if i == here {
			w.put("<strong>", string(of.word), "</strong>")
			continue
		}
		w.put(`<a href="`, root, of.path, `">`, string(of.word), "</a>")
	}
	return template.HTML(w.out)
}

// below is the address of a page that hangs below this one.
func (p *page) below(name string) string {
	stem := strings.TrimSuffix(p.spec.path, ".html") + "/" + name
	at := stem + ".html"
	for i := 2; p.paths[at]; i++ {
		at = stem + "-" + strconv.Itoa(i) + ".html"
	}
	return at
}
