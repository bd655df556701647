package templates

import (
	"strings"

	"traybook/records"
	"traybook/report"
)

// The most of a log that a batch's story tells: more is no story, and a batch whose plants
// are looked at tray by tray, or sold by the dozen, has thousands of rows.
const (
	mostLines     = 200
	mostLineBytes = 20_000 // of HTML, for rows with long notes
)

// lineList sets n lines after one another, as many as may be; nothing of no lines. What
// writes a line begins with a digit or a word of ours.
func (w *pen) lineList(n int, line func(i int)) {
	if n == 0 {
		return
	}
	from, told := len(w.out), 0
	for told < min(n, mostLines) {
		end := len(w.out)
		if told > 0 {
			w.put("; ")
		}
		line(told)
		if told > 0 && len(w.out)-from > mostLineBytes {
			w.out = w.out[:end]
			break
		}
		told++
	}
	if first := &w.out[from]; 'a' <= *first && *first <= 'z' {
		*first -= 'a' - 'A'
	}
	if more := n - told; more > 0 {
		w.put("; and ")
		w.whole(more)
		w.put(" more; all are in the log")
	}
	w.put(".")
}

// About how many bytes a batch takes on a page of records, its row in the table on top and
// the first rows of out.csv with it, and a row of a log.
const (
	storyBytes = 2200
	lineBytes  = 70
	firstOuts  = 8
)

// storySize is about how many bytes of a page the story of a batch takes.
func storySize(book *records.Book, b *report.Record, outs []*records.Out) int {
	return storyBytes + textSize(b.Note) +
		linesSize(len(b.Counts.Rows), func(i int) string { return book.Said(&b.Counts.Rows[i]).Note }) +
		linesSize(len(b.Looks), func(i int) string { return b.Looks[i].Note }) +
		max(0, linesSize(len(outs), func(i int) string { return outs[i].Note })-firstOuts*lineBytes)
}

// linesSize is about what lineList takes of so many lines with their notes.
func linesSize(lines int, note func(int) string) (n int) {
	for i := 0; i < min(lines, mostLines) && n < mostLineBytes; i++ {
		n += lineBytes + textSize(note(i))
	}
	return n
}

// textSize is what a text takes in HTML, where some characters are written in five letters.
func textSize(s string) (n int) {
	for i := range len(s) {
		if strings.IndexByte(`&<>"'`, s[i]) >= 0 {
			n += 4
		}
	}
	return n + len(s)
}
