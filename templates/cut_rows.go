package templates

import (
	"cmp"
	"html/template"
	"slices"
	"strconv"
	"strings"

	"traybook/report/words"
)

// cutByNumber leaves of the largest pieces the first rows, until the page is short enough.
// It is the last resort, after the pieces of single crops have moved to pages of their
// own.
func (p *page) cutByNumber(at string, pieces []piece) {
	for range pieces { // each is cut once at most: what is left of it is small enough
		total := p.said + sizeOf(pieces)
		if total <= mostBytes {
			return
		}
		largest := slices.MaxFunc(pieces, func(a, b piece) int { return cmp.Compare(a.size(), b.size()) })
		p.cutRows(largest, max(leastBytes, mostBytes-(total-largest.size())))
	}
}

// cutRows moves the rows past so many bytes to pages of their own. Each page links to all
// its sisters, with the numbers of the rows that it holds.
func (p *page) cutRows(of piece, most int) {
	others, kept := of.rest(most)
	if len(others) == 0 {
		return
	}
	// All paths are known before the first page is made, since each leads to the others.
	var parts []part
	from, base := kept+1, pieceName(of)
	for i, other := range others {
		n := rowsIn(other)
		word := say("%s to %s", words.Whole(from), words.Whole(from+n-1))
		if n == 1 {
			word = markup(words.Whole(from))
		}
		parts = append(parts, part{p.below(base + "-" + strconv.Itoa(i+2)), word, []piece{other}})
		from += n
	}
	of.note(say("The first %s of %s; the others: %s.%s", words.Whole(kept), words.Plural(from-1, "row", "rows"), linksTo(p.root, parts, -1), allIn(of)))
	for i := range parts {
		p.addPart(parts, i)
	}
}

// pieceName is what a table is called in an address.
func pieceName(of piece) string {
	switch of := of.(type) {
	case *rows:
		return strings.TrimPrefix(of.ID, "rows-")
	case *table:
		return strings.TrimPrefix(of.ID, "table-")
	}
	return "part"
}

// allIn says where all rows of a table stand as data; nothing where they stand nowhere.
func allIn(of piece) template.HTML {
	data, file := "", ""
	switch of := of.(type) {
	case *rows:
		data, file = of.Data, of.File
	case *table:
		data, file = of.Data, of.File
	}
	if data == "" {
		return ""
	}
	return say(` All are in <a href="%s">%s</a>.`, data, file)
}

// rowsIn is how many rows a piece has.
func rowsIn(of piece) (n int) {
	switch of := of.(type) {
	case *rows:
		for _, g := range of.Groups {
			n += len(g.Rows)
		}
	case *table:
		for _, b := range of.Bodies {
			n += len(b.Rows)
		}
	}
	return n
}

// chunks cuts things in order into parts of so many bytes at most, the first of fewer. None
// is empty: what is too long by itself is a part by itself.
func chunks[T any](things []T, size func(T) int, first, most int) [][]T {
	var out [][]T
	from, n, room := 0, 0, first
	for i, t := range things {
		if s := size(t); i > from && n+s > room {
			out, from, n, room = append(out, things[from:i]), i, s, most
		} else {
			n += s
		}
	}
	if from < len(things) {
		out = append(out, things[from:])
	}
	return out
}

// deeper is HTML as it stands one folder below the page from, where its links lead up.
func deeper(h template.HTML, from string) template.HTML {
	s := string(h)
	if !strings.Contains(s, `<a href="`) {
		return h
	}
	s = strings.ReplaceAll(s, `<a href="#`, `<a href="`+from+`#`)
	return template.HTML(strings.ReplaceAll(s, `<a href="`, `<a href="../`))
}

// deeperAll is deeper for each of some, which are left as they are.
func deeperAll(all []template.HTML, from string) []template.HTML {
	out := all
	for i, h := range all {
		there := deeper(h, from)
		if there == h {
			continue
		}
		if &out[0] == &all[0] {
			out = slices.Clone(all)
		}
		out[i] = there
	}
	return out
}
