package templates

import (
	"fmt"
	"html/template"
	"slices"

	"traybook/report"
	"traybook/report/batch"
	"traybook/report/words"
)

// mostPlaces is how many places of each gap the page of what is missing names: only those
// that stand open where all of them would be too long.
func (p *page) mostPlaces() int {
	n := 0
	for _, m := range p.r.Missing {
		n += gapBytes(m, mostPlaces)
	}
	if n > mostBytes {
		return openPlaces
	}
	return mostPlaces
}

// gapPages makes the pages that name all places, a season each or, where that is too long,
// several, and leads to them; nothing where the page itself names them. A gap of all
// seasons has a page of its own among them.
func (p *page) gapPages() template.HTML {
	if p.mostPlaces() == mostPlaces {
		return ""
	}
	var parts []part
	var gaps [][]report.Missing
	seasons, of := batch.GroupBy(p.r.Missing, func(m report.Missing) int { return m.Season })
	slices.Sort(seasons)
	slices.Reverse(seasons)
	for _, season := range seasons {
		for i, some := range chunks(of[season], func(m report.Missing) int { return gapBytes(m, allPlaces) }, mostBytes, mostBytes) {
			file, word := fmt.Sprint(season), markup(seasonWord(season))
			if season == 0 {
				file = "all-seasons"
			}
			if i > 0 {
				file, word = fmt.Sprintf("%s-%d", file, i+1), say("%s, part %s", word, words.Whole(i+1))
			}
			parts, gaps = append(parts, part{path: p.below(file), word: word}), append(gaps, some)
		}
	}
	for i := range parts {
		p.addGapPage(parts, i, gaps[i])
	}
	return linksTo(p.root, parts, -1)
}

// addGapPage is one of those pages.
func (p *page) addGapPage(parts []part, i int, gaps []report.Missing) {
	sp := p.spec
	sp.path, sp.label, sp.top, sp.parent = parts[i].path, "", "", p.spec.path
	sp.title = p.spec.title + ": " + bareText(parts[i].word)
	at := newPage(p.site, sp)
	v := missingPage{Part: true, Heading: say("What is missing: %s", parts[i].word), Lead: at.to(p.spec.path, "What is missing, the costliest first"), Seasons: linksTo(at.root, parts, i)}
	v.ToDo, v.Past = at.toMend(gaps, allPlaces)
	p.extras = append(p.extras, extra{sp, v})
}
