package templates

import (
	"html/template"
	"strconv"
	"strings"

	"traybook/report"
	"traybook/report/words"
)

// placesOf are the places of a gap in one column of a log: what is to be written there,
// and each cell or row. More stand behind a line that can be opened.
type placesOf struct {
	File, Column string
	What         string // before the places: column set_out; a new row for
	Places       []template.HTML
	More         []template.HTML
	Rest         string // how many stand nowhere on the page
}

// How many places of a column stand open on the page, and at most with those behind the
// line, for a gap of a season.
const (
	openPlaces = 24
	mostPlaces = 400
	allPlaces  = 2000 // on a page of one season
)

// placeBytes is about what a place takes.
const placeBytes = 150

// gapBytes is about what a gap takes on the page, with so many places of each column.
func gapBytes(m report.Missing, most int) int {
	columns := map[string]int{}
	n := 400
	for _, at := range m.Places {
		if key := at.File + " " + at.Column; columns[key] < most {
			columns[key]++
			n += placeBytes
		}
	}
	return n
}

// placesOf gathers the places of a gap by log and column, rows to add apart from cells to
// fill, in their order, at most so many of each. A place that is the setting itself, or a
// whole log, is told by the words before it alone.
func (p *page) placesOf(m report.Missing, most int) []placesOf {
	type key struct {
		file, column string
		add          bool
	}
	var out []placesOf
	at, shown := map[key]int{}, map[key]int{}
	for _, place := range m.Places {
		k := key{place.File, place.Column, place.Line == 0}
		i, known := at[k]
		if !known {
			i = len(out)
			at[k] = i
			out = append(out, placesOf{File: place.File, Column: place.Column, What: placeWhat(m, place)})
		}
		shown[k]++
		of := &out[i]
		if place.Line == 0 && (place.Of == "" || place.Of == m.What) {
			continue // there is one place, and its words say all
		}
		switch n := shown[k]; {
		case n <= openPlaces:
			of.Places = append(of.Places, p.place(place))
		case n <= most:
			of.More = append(of.More, p.place(place))
		default:
			of.Rest = "and " + words.Whole(n-most) + " more like it"
		}
	}
	return out
}

// placeWhat says what is to be written: a cell of a column, a new column, or a row. A
// column that the log does not have yet is told apart from a blank cell in one that it
// has.
func placeWhat(m report.Missing, at report.Place) string {
	switch {
	case at.Line == 0 && at.File == "book.csv":
		return "a new row"
	case at.Line == 0 && at.Of == m.What:
		return "column " + at.Column
	case at.Line == 0 && at.Of == "":
		return "new rows"
	case at.Line == 0:
		return "a new row for"
	case at.Cell == "":
		return "a new column " + at.Column + ":"
	}
	return at.Column + ":"
}

// place is one cell or row, with what it is about.
func (p *page) place(at report.Place) template.HTML {
	of := markup(name(at.Of))
	if p.r.Record(at.Of) != nil {
		of = p.batch(at.Of)
	}
	where := cellWords(at)
	if where == "" {
		return of
	}
	return say(`<span class="pc">%s <i>%s</i></span>`, where, of)
}

// cellWords is where a cell stands: G45, which is in line 45; where the two differ or
// there is no cell, the line too. Empty for a row to add.
func cellWords(at report.Place) template.HTML {
	line := strconv.Itoa(at.Line)
	switch {
	case at.Line == 0:
		return ""
	case at.Cell == "":
		return say("line %s", line)
	case strings.TrimLeft(at.Cell, "ABCDEFGHIJKLMNOPQRSTUVWXYZ") == line:
		return say("<b>%s</b>", at.Cell)
	}
	return say("line %s, <b>%s</b>", line, at.Cell)
}
