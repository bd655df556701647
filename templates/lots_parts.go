package templates

import (
	"fmt"
	"html/template"
	"slices"
	"strings"

	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/words"
)

// lotPart is the lots of one crop in a season, or some of them, on a page of their own.
type lotPart struct {
	path  string
	title string // Lettuce
	codes map[string]bool
	lots  []germination.Lot // those sown, as lotsOf orders them
	new   []germination.Lot // those bought and not sown yet
}

// lotSeason is a lot in a season.
type lotSeason struct {
	lot    string
	season int
}

// lotSize is about how many bytes a lot takes in both tables: what it is called stands there
// several times, and a name may be long.
func lotSize(l germination.Lot) int {
	names := len(l.Code) + len(l.Crop) + len(l.Variety) + len(l.Supplier) + len(l.LotNumber)
	return 1000 + 10*names + 105*min(len(l.Sown), manyBatches)
}

// lotParts cuts the lots of a season by crop where they are too long for one page, and a
// crop that is still too long by number; none where all fit. Sizes are estimates by the
// number of batches, made before any page is written, since every page must know where a
// lot stands.
func (s *site) lotParts(season int) (parts []lotPart) {
	p := newPage(s, spec{season: season})
	lots := slices.Concat(p.lotsOf(season), p.unsownLots(season))
	if len(chunks(lots, lotSize, mostBytes, mostBytes)) < 2 {
		return nil
	}
	crops, of := batch.GroupBy(lots, func(l germination.Lot) string { return l.Crop })
	slices.Sort(crops)
	for _, crop := range crops {
		stem, title := strings.TrimSuffix(seasonFile("lots", season), ".html")+"/"+s.cropFile(crop), capital(crop)
		for i, some := range chunks(of[crop], lotSize, mostBytes, mostBytes) {
			part := lotPart{path: stem + ".html", title: title, codes: make(map[string]bool, len(some))}
			if i > 0 {
				part.path, part.title = fmt.Sprintf("%s/%d.html", stem, i+1), fmt.Sprintf("%s, part %d", title, i+1)
			}
			for _, l := range some {
				part.codes[l.Code] = true
			}
			sown := len(some) // those come first
			for sown > 0 && len(some[sown-1].Sown) == 0 {
				sown--
			}
			part.lots, part.new = some[:sown:sown], some[sown:]
			parts = append(parts, part)
		}
	}
	return parts
}

// lotPartPages are the parts of a season's page of lots.
func lotPartPages(s *site, page spec) (specs []spec) {
	for i, part := range s.lotPages[page.season] {
		of := page
		of.path, of.title, of.same, of.label, of.parent = part.path, page.title+": "+part.title, "", "", page.path
		of.view = lotPartView(i)
		specs = append(specs, of)
	}
	return specs
}

// planLots lays out the pages of lots, and says on which of them each lot stands.
func (s *site) planLots() {
	s.lotPages, s.lotAt = map[int][]lotPart{}, map[lotSeason]string{}
	for _, season := range s.r.Batches.Seasons {
		if !hasLots(s, season) {
			continue
		}
		s.lotPages[season] = s.lotParts(season)
		for _, part := range s.lotPages[season] {
			for code := range part.codes {
				s.lotAt[lotSeason{code, season}] = part.path
			}
		}
	}
}

// lotAddress is where a lot stands on the pages of a season. Where a season's lots fit on
// one page that is the page; id is the same on both.
func (s *site) lotAddress(season int, id, code string) string {
	return s.lotPage(season, code) + "#" + id
}

// lotPage is the one of a season's pages on which a lot stands.
func (s *site) lotPage(season int, code string) string {
	if at, ok := s.lotAt[lotSeason{code, season}]; ok {
		return at
	}
	return seasonFile("lots", season)
}

// lotPartView tells the lots of one part.
func lotPartView(i int) func(*page) any {
	return func(p *page) any {
		part := p.lotPages[p.season][i]
		return lotsPage{season: p.season, part: part.title, Lots: p.lotRows(part.lots), Trail: p.trailRows(part.lots, part.new), Parts: p.lotLinks(i), Data: p.dataFile("lots")}
	}
}

// lotLinks leads to the parts of a season's lots, but for the one with number here.
func (p *page) lotLinks(here int) template.HTML {
	var parts []part
	for _, of := range p.lotPages[p.season] {
		parts = append(parts, part{path: of.path, word: say("%s (%s)", name(of.title), words.Whole(len(of.codes)))})
	}
	return linksTo(p.root, parts, here)
}
