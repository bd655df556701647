package templates

import (
	"fmt"
	"strings"

	"traybook/report/words"
)

// paper is the style sheet of the running heads: on paper each page carries the farm's
// name, its own and its season's, and its number. A kind of page and a season have one
// name between them, which the body's class gives.
func (s *site) paper() []byte {
	var b strings.Builder
	fmt.Fprintf(&b, "@page{@top-left{content:%s;font:9pt serif}@bottom-right{content:counter(page) \" of \" counter(pages);font:9pt serif}}\n", cssString(s.farm()))
	seen := map[string]bool{}
	for _, sp := range s.plan {
		page := runningPage(sp)
		if seen[page] {
			continue
		}
		seen[page] = true
		head := sp.head
		switch {
		case sp.kind == "week":
			head = "The week of " + words.LongDate(s.r.Batches.Today)
		case head == "":
			head = sp.title
		case sp.season != 0:
			head = fmt.Sprintf("%s, %d", head, sp.season)
		}
		fmt.Fprintf(&b, "@page %s{@top-right{content:%s;font:9pt serif}}\n.%s{page:%s}\n", page, cssString(head), page, page)
	}
	return []byte(b.String())
}

// cssString writes words of the book as a string of a style sheet: whatever could end
// it is escaped.
func cssString(text string) string {
	var b strings.Builder
	b.WriteByte('"')
	for _, r := range text {
		if r < ' ' || strings.ContainsRune(`"\<>&`, r) || r == 0x7f {
			fmt.Fprintf(&b, `\%x `, r)
			continue
		}
		b.WriteRune(r)
	}
	b.WriteByte('"')
	return b.String()
}
