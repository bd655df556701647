package templates

import (
	"html"
	"html/template"
	"regexp"
	"strings"

	"traybook/report"
)

// Headline is a large number of the front page, ? where the records cannot tell, and
// what it says, as plain text.
type Headline struct {
	Number, Says string
}

// Headlines are the large numbers of the front page in its order.
func Headlines(r *report.Report) []Headline {
	s := newSite(r, nil)
	p := newPage(s, reviewPages(s)[0])
	var all []Headline
	for _, f := range p.findings(r.Season) {
		number := strings.TrimSpace(f.Big + " " + f.Unit)
		all = append(all, Headline{strings.ReplaceAll(number, " %", "%"), bareText(f.What)})
	}
	return all
}

var tags = regexp.MustCompile(`<[^>]*>`)

// bareText is markup as plain text.
func bareText(h template.HTML) string {
	return strings.Join(strings.Fields(html.UnescapeString(tags.ReplaceAllString(string(h), ""))), " ")
}
