package templates

import (
	"fmt"
	"html/template"
	"slices"
	"strings"

	"traybook/report"
	"traybook/report/batch"
	"traybook/report/words"
)

// batchList is some batches under a line that opens.
type batchList struct {
	Title, Batches template.HTML
}

// mostListed is how many batches one line opens; more are cut into several.
const mostListed = 1000

// mostOfLists is how many bytes of lists stand on a page; they are all there is on it.
const mostOfLists = 340_000

// listed sorts batches under a title each, in the order of the titles' keys; those with an
// empty key under none.
func (p *page) listed(batches []*report.Record, key func(*report.Record) string, title func(key string) template.HTML) []batchList {
	keys, of := batch.GroupBy(batches, key)
	slices.Sort(keys)
	var out []batchList
	var w pen
	for _, k := range keys {
		if k == "" {
			continue
		}
		for some := range slices.Chunk(of[k], mostListed) {
			w.out = w.out[:0]
			for i, b := range some {
				w.put(between(i, len(some)))
				p.writeBatch(&w, b)
			}
			out = append(out, batchList{say("%s: %s", title(k), words.Batches(len(some))), template.HTML(w.out)})
		}
	}
	return out
}

func (p *page) byMonth(batches []*report.Record) []batchList {
	return p.listed(batches, monthOf, func(k string) template.HTML { return markup(k) })
}

func (p *page) byLot(batches []*report.Record) []batchList {
	return p.listed(batches, func(b *report.Record) string { return b.Lot }, func(k string) template.HTML { return markup(name(k)) })
}

// seasonLists is where the batches of a season stand by month and by lot.
func seasonLists(season int) string { return fmt.Sprintf("records/%d.html", season) }

// recordsOfSeason is the page of a season's crops and lists.
func recordsOfSeason(season int) spec {
	return spec{path: seasonLists(season), name: "records", kind: "book", title: fmt.Sprint("Records of ", season), season: season, same: "records", parent: "records.html", view: seasonListView}
}

// seasonListView is a season's crops, then its batches by month and by lot. What is too
// long for the page goes on to further ones.
func seasonListView(p *page) any {
	months, lots := p.byMonth(p.seasons[p.season]), p.byLot(p.seasons[p.season])
	pages := chunks(slices.Concat(months, lots), func(l batchList) int { return len(l.Title) + len(l.Batches) + 80 }, mostOfLists, mostOfLists)
	first := recordsPage{Seasons: []seasonRecords{p.seasonRecords(p.season)}}
	done := 0
	at := func(i int) string { return strings.TrimSuffix(p.spec.path, ".html") + fmt.Sprintf("-%d.html", i+1) }
	for i, lists := range pages {
		cut := min(max(len(months)-done, 0), len(lists))
		done += len(lists)
		if i == 0 {
			first.Months, first.Lots = lists[:cut], lists[cut:]
			continue
		}
		sp := p.spec
		sp.path, sp.title, sp.same = at(i), fmt.Sprintf("Records of %d, part %d", p.season, i+1), ""
		v := recordsPage{Months: lists[:cut], Lots: lists[cut:], Parts: p.listParts(at, len(pages), i)}
		p.extras = append(p.extras, extra{sp, v})
	}
	first.Parts = p.listParts(at, len(pages), 0)
	return first
}

// listParts leads to the parts of a season's lists; nothing where there is one.
func (p *page) listParts(at func(int) string, n, here int) template.HTML {
	if n < 2 {
		return ""
	}
	var parts []part
	for i := range n {
		path := p.spec.path
		if i > 0 {
			path = at(i)
		}
		parts = append(parts, part{path: path, word: say("part %s", words.Whole(i+1))})
	}
	return linksTo(p.root, parts, here)
}
