package templates

import (
	"bytes"
	"fmt"
	"html/template"
	"slices"
	"strconv"

	"traybook/records"
	"traybook/report/words"
)

// A season's note may be a book of its own, or ask for a hundred figures. Beyond so many
// bytes the review of its season has the beginning alone, and the whole stands on pages
// below the season, cut at headings.
const (
	mostOfNote      = 100_000 // of HTML, on the review
	mostOfBeginning = 15_000  // of a longer one
	mostOfNotePage  = 240_000
)

// noteBlock is a part of a note that is not cut: a heading, a paragraph, a list, a table, a
// figure. size is about its bytes, a chart counted whether it is drawn or not.
type noteBlock struct {
	html    template.HTML
	heading bool
	size    int
}

// notePage is a page of a note too long for the review of its season.
type notePage struct {
	Heading, Lead, Title, Note template.HTML
	Others                     template.HTML
	before, after              *navLink
}

func (v notePage) head() (heading, lead template.HTML) { return v.Heading, v.Lead }
func (v notePage) turn() (before, after *navLink)      { return v.before, v.after }

// noteText is the note of a season for its review; what goes wrong ends the page. The
// first page that shows a note settles whether it is too long, as the front page and the
// season's own must say the same.
func (p *page) noteText(n records.Note, season int) template.HTML {
	blocks, err := p.noteBlocks(n, season)
	if err != nil {
		p.err = fmt.Errorf("%s: %w", n.File, err)
		return ""
	}
	long, settled := p.longNotes[season]
	if !settled {
		long = sizeOfBlocks(blocks) > mostOfNote
		p.longNotes[season] = long
	}
	if !long {
		p.said = sizeOfBlocks(blocks)
		return joined(blocks)
	}
	begin := beginning(blocks)
	p.said = sizeOfBlocks(begin)
	return joined(begin) + p.wholeNote(n, season, len(begin) > 0)
}

// wholeNote leads from the beginning of a long note, where so much as its first block could
// begin here, to all of it; the season's own review makes those pages. A review in one file
// has no other.
func (p *page) wholeNote(n records.Note, season int, begun bool) template.HTML {
	goes := template.HTML("The note goes on")
	if !begun {
		goes = "The note is too long for this page, and stands"
	}
	if p.single {
		return say("<p>%s in %s.</p>", goes, name(n.File))
	}
	at := seasonFile("notes", season)
	if p.spec.path == p.seasonPath(season) {
		p.addNotePages(n, season, at)
	}
	if !begun {
		return say(`<p>%s <a href="%s">on one of its own</a>.</p>`, goes, p.href(at))
	}
	return say(`<p>%s: <a href="%s">all of it</a>.</p>`, goes, p.href(at))
}

// addNotePages makes the pages of a long note. All are in one folder, so that its links
// lead right from each.
func (p *page) addNotePages(n records.Note, season int, at string) {
	sp := spec{path: at, name: "notes", kind: "index", title: fmt.Sprintf("The season %d in words", season), season: season, parent: p.spec.path}
	first := newPage(p.site, sp)
	blocks, err := first.noteBlocks(n, season)
	if err != nil {
		p.err = fmt.Errorf("%s: %w", n.File, err)
		return
	}
	all := chunks(sections(blocks), sizeOfBlocks, mostOfNotePage, mostOfNotePage)
	parts := make([]part, len(all))
	for i := range all {
		path := at
		if i > 0 {
			path = seasonFile("notes-"+strconv.Itoa(i+1), season)
		}
		parts[i] = part{path: path, word: say("part %s", words.Whole(i+1))}
	}
	for i, some := range all {
		v := notePage{Heading: markup(sp.title), Lead: first.to(p.spec.path, "The review of the season"), Title: "The whole note", Note: joined(slices.Concat(some...))}
		of := sp
		of.path = parts[i].path
		if len(parts) > 1 {
			v.Title, v.Others = say("Part %s of %s", words.Whole(i+1), words.Whole(len(parts))), linksTo(first.root, parts, i)
			of.title += ", " + bareText(parts[i].word)
			v.before, v.after = partLink(first.root, parts, i-1), partLink(first.root, parts, i+1)
		}
		p.extras = append(p.extras, extra{of, v})
	}
}

// sections are the blocks from a heading to the next; one too long for a page falls into
// its blocks.
func sections(blocks []noteBlock) (all [][]noteBlock) {
	add := func(of []noteBlock) {
		if len(of) > 0 && sizeOfBlocks(of) <= mostOfNotePage {
			all = append(all, of)
			return
		}
		for _, b := range of {
			all = append(all, []noteBlock{b})
		}
	}
	from := 0
	for i, b := range blocks {
		if b.heading {
			add(blocks[from:i])
			from = i
		}
	}
	add(blocks[from:])
	return all
}

// beginning is the first sections of a long note or, where the first is long itself, its
// first blocks.
func beginning(blocks []noteBlock) []noteBlock {
	whole, size := 0, 0
	for i, b := range blocks {
		if size += b.size; size > mostOfBeginning {
			if whole == 0 {
				whole = i
			}
			break
		}
		if i+1 < len(blocks) && blocks[i+1].heading && !b.heading {
			whole = i + 1
		}
	}
	for whole > 0 && blocks[whole-1].heading { // of what does not begin here
		whole--
	}
	return blocks[:whole]
}

func sizeOfBlocks(blocks []noteBlock) (n int) {
	for _, b := range blocks {
		n += b.size
	}
	return n
}

// joined is blocks one after the other.
func joined(blocks []noteBlock) template.HTML {
	var out bytes.Buffer
	for _, b := range blocks {
		out.WriteString(string(b.html))
	}
	return template.HTML(out.String())
}
