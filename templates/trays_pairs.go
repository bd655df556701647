package templates

import (
	"fmt"
	"html/template"

	"traybook/report/words"
)

// pairsOnPage is how many pairs of trays a page tells of: at most about 15 kB each.
const pairsOnPage = 12

// pairPath is the page on which the pair with number i, from 0, is told of.
func pairPath(i int) string {
	if n := i / pairsOnPage; n > 0 {
		return fmt.Sprintf("trays/pairs-%d.html", n+1)
	}
	return "trays.html"
}

// pairPages are the pages of the pairs past the first.
func pairPages(s *site, page spec) (specs []spec) {
	n := len(newPage(s, page).pairs())
	for i := pairsOnPage; i < n; i += pairsOnPage {
		of := page
		of.path, of.label, of.top, of.parent = pairPath(i), "", "", page.path
		of.title = fmt.Sprintf("%s, pairs %d to %d", page.title, i+1, min(i+pairsOnPage, n))
		of.view = pairsView(i)
		specs = append(specs, of)
	}
	return specs
}

// pairsView tells of some pairs of trays, from number first on.
func pairsView(first int) func(*page) any {
	return func(p *page) any {
		all := p.pairs()
		v := traysPage{Heading: markup(p.spec.title), Lead: p.to("trays.html", "Trays and room"), Part: true, Others: p.pairLinks(len(all), first)}
		p.addPairs(&v, all[first:min(len(all), first+pairsOnPage)])
		return v
	}
}

// addPairs adds the answers of pairs, and what stands behind each.
func (p *page) addPairs(v *traysPage, pairs []pairOf) {
	for _, a := range pairs {
		v.Answers = append(v.Answers, p.pairFinding(a))
		if part := p.trayPair(a); part != nil {
			v.Pairs = append(v.Pairs, *part)
		}
		v.Owned = append(v.Owned, p.ownedSentences(a)...)
	}
}

// pairLinks leads to the pages of n pairs, but for the one that begins with number here;
// nothing where there is one.
func (p *page) pairLinks(n, here int) template.HTML {
	if n <= pairsOnPage {
		return ""
	}
	var parts []part
	for i := 0; i < n; i += pairsOnPage {
		parts = append(parts, part{path: pairPath(i), word: say("%s to %s", words.Whole(i+1), words.Whole(min(i+pairsOnPage, n)))})
	}
	return linksTo(p.root, parts, here/pairsOnPage)
}

// firstPairs are the pairs on the first page.
func (p *page) firstPairs() []pairOf {
	all := p.pairs()
	return all[:min(len(all), pairsOnPage)]
}

// withRest says on the last of some figures of pairs that there are more pairs.
func (p *page) withRest(figures []*figure) []*figure {
	if more := len(p.pairs()) - pairsOnPage; more > 0 && len(figures) > 0 {
		figures[len(figures)-1].Caption = say("%s on the %s.", words.Plural(more, "more pair stands", "more pairs stand"), p.to("trays.html", "pages of trays"))
	}
	return figures
}
