package templates

import (
	"bytes"

	"traybook/records"
)

// Pages name a log where something is to be written or was left out: into costs.csv. Who
// keeps the book in a workbook has no such file but a sheet costs. The sentences come from
// everywhere, so they are put into the words of sheets in one place, on the finished page.

// inSheets returns a page, or a figure within a note, as its reader knows the logs: of a
// workbook by their sheets, of a folder as it is.
func (s *site) inSheets(page []byte) []byte {
	if !s.r.Book.Workbook() {
		return page
	}
	return asSheets(page)
}

// keptWords are where words stand that are not ours, or that name a file which is there,
// and what ends them: values of the logs, a season's note, a style (its policy names it by
// its hash), and links to the data files, of which two have the name of a log.
var keptWords = []struct{ from, to string }{
	{"<bdi", "</bdi>"},
	{noteStart, noteEnd},
	{"<style", "</style>"},
	{"<a ", ">"},
}

// A season's note on its page, as index.html opens and closes it. No note can hold the
// end, as HTML in notes is dropped.
const (
	noteStart = `<div class="say note">`
	noteEnd   = `<div class="side"></div></section>`
)

// asSheets names logs by their sheets in the text of HTML made here: not within a tag,
// where addresses and anchors stand, and not in keptWords.
func asSheets(html []byte) []byte {
	var out bytes.Buffer
	out.Grow(len(html) + len(html)/64)
	for len(html) > 0 {
		tag := bytes.IndexByte(html, '<')
		if tag < 0 {
			tag = len(html)
		}
		out.WriteString(records.AsSheets(string(html[:tag])))
		html = html[tag:]
		kept := keptLength(html)
		out.Write(html[:kept])
		html = html[kept:]
	}
	return out.Bytes()
}

// keptLength is how many bytes from a tag on stay as they are: the tag, and all to its end
// where what it opens is not to be touched. A link to a data file is kept with its words.
func keptLength(html []byte) int {
	for _, k := range keptWords {
		if !bytes.HasPrefix(html, []byte(k.from)) {
			continue
		}
		end := endOf(html, k.to)
		if k.from == "<a " && bytes.Contains(html[:end], []byte(`.csv"`)) {
			return endOf(html, "</a>")
		}
		return end
	}
	return endOf(html, ">")
}

// endOf is where a mark ends; all there is where it does not stand.
func endOf(html []byte, mark string) int {
	if i := bytes.Index(html, []byte(mark)); i >= 0 {
		return i + len(mark)
	}
	return len(html)
}
