package templates

import (
	"fmt"
	"strconv"
)

// spec is one page of the site.
type spec struct {
	path   string // 2025/costs.html
	name   string // of its template without .html: costs
	kind   string // of page, for its running head on paper: cost
	title  string // of the window
	head   string // its running head on paper; empty: the title
	group  string // part of the contents in which it stands
	label  string // its word in the contents; empty: it is not there
	top    string // its word above each page; empty: it is not there
	season int    // the season that it speaks of; 0: of none in particular
	same   string // what its sister page of another season is called: germination; empty: it has none
	parent string // path of the page in the contents that it belongs to
	logs   []string
	view   func(*page) any
}

// chapter is a page, or a family of pages, that a site may have.
type chapter struct {
	spec
	has    func(*site, int) bool    // of a season, 0 for the book; nil: always
	lack   string                   // what to write down to get it
	season bool                     // one page for each season
	parts  func(*site, spec) []spec // pages that hang below one; nil: none
	own    bool                     // of the farm's own work: not in a public edition
	family func(*site) []spec       // nil: the one page, or one a season
}

// specs are the pages of a chapter that the book has data for.
func (c chapter) specs(s *site) []spec {
	switch {
	case c.family != nil:
		return c.family(s)
	case !c.season:
		if c.has != nil && !c.has(s, 0) {
			return nil
		}
		return c.withParts(s, c.spec)
	}
	var out []spec
	for _, season := range s.r.Batches.Seasons {
		if c.has == nil || c.has(s, season) {
			out = append(out, c.withParts(s, c.of(season))...)
		}
	}
	return out
}

// withParts is a page and those that hang below it.
func (c chapter) withParts(s *site, page spec) []spec {
	if c.parts == nil {
		return []spec{page}
	}
	return append([]spec{page}, c.parts(s, page)...)
}

// of is a chapter's page of a season.
func (c chapter) of(season int) spec {
	sp := c.spec
	sp.season, sp.same = season, c.path
	sp.path = seasonFile(c.path, season)
	sp.title = fmt.Sprintf("%s, %d", c.title, season)
	return sp
}

// seasonFile is where a page of a season stands: 2025/germination.html.
func seasonFile(name string, season int) string { return strconv.Itoa(season) + "/" + name + ".html" }

// The parts of the contents.
const (
	ofSeason  = "season" // headed by the season's year
	inSeasons = "Over the seasons"
	inHouse   = "In the house"
	inBook    = "The book"
)

// Logs by what they tell; the foot of a page tells the gaps in its logs.
var (
	logsOfEmergence = []string{"counts.csv", "chamber.csv", "house.csv", "trays.csv"}
	logsOfLots      = []string{"lots.csv", "counts.csv", "sowings.csv"}
	logsOfQuality   = []string{"scores.csv", "sowings.csv", "out.csv", "counts.csv"}
	logsOfTrays     = []string{"trays.csv", "sowings.csv", "out.csv", "book.csv"}
	logsOfCost      = []string{"costs.csv", "trays.csv", "lots.csv", "out.csv", "sowings.csv", "book.csv"}
	logsOfSowing    = []string{"sowings.csv", "out.csv", "lots.csv"}
	allLogs         = []string{"sowings.csv", "out.csv", "counts.csv", "scores.csv", "trays.csv", "lots.csv", "costs.csv",
		"chamber.csv", "house.csv", "book.csv"}
)

// What to write down to get a page.
const (
	lackBatches = "Write a row for each batch into sowings.csv."
	lackCounts  = "Write germination counts into counts.csv: batch, date, emerged."
	lackLots    = "Write a row for each packet into lots.csv, and its code under lot in sowings.csv."
	lackQuality = "Write looks at the plants into scores.csv (batch, date, looked, usable), or plants_out and surplus into sowings.csv."
	lackTrays   = "Write a row for each tray code into trays.csv: tray, kind, cells, count, price, lasts or uses."
	lackYears   = "A second season, counted or set out as the first, gives this page."
	lackSowing  = "Write plants_out and surplus into sowings.csv, three batches of a crop, variety and tray or more; and what the fields want into wishes.csv."
	lackCosts   = "Write money and hours in costs.csv (with a wage in book.csv), prices in trays.csv, or prices of seed in lots.csv."
)

// chapters are all pages that a site may have, in the order of the contents. Each
// page's row names the data without which it is left out. It is filled in init,
// because the pages link to each other.
var chapters []chapter

func init() {
	chapters = []chapter{
		{family: reviewPages},
		{season: true, has: hasGermination, lack: lackCounts, spec: spec{path: "germination", name: "germination", kind: "germ", title: "Germination",
			group: ofSeason, label: "Germination", top: "Germination", logs: logsOfEmergence, view: germinationView}},
		{season: true, has: hasQuality, lack: lackQuality, spec: spec{path: "quality", name: "quality", kind: "qual", title: "Quality and leeway",
			group: ofSeason, label: "Quality", logs: logsOfQuality, view: qualityView}},
		{season: true, has: hasLots, parts: lotPartPages, lack: lackLots, spec: spec{path: "lots", name: "lots", kind: "lots", title: "Seed lots",
			group: ofSeason, label: "Seed lots", logs: logsOfLots, view: lotsView}},
		{season: true, has: hasCosts, lack: lackCosts, spec: spec{path: "costs", name: "costs", kind: "cost", title: "What a transplant cost", head: "Costs",
			group: ofSeason, label: "Costs", logs: logsOfCost, view: costsView}},
		{has: hasTrays, parts: pairPages, lack: lackTrays, spec: spec{path: "trays.html", name: "trays", kind: "trays", title: "Trays and room", head: "Trays",
			group: inSeasons, label: "Trays and room", top: "Trays", logs: logsOfTrays, view: traysView}},
		{has: hasYears, lack: lackYears, spec: spec{path: "years.html", name: "years", kind: "years", title: "Year over year",
			group: inSeasons, label: "Year over year", logs: allLogs, view: yearsView}},
		{has: hasSowing, lack: lackSowing, spec: spec{path: "sowing.html", name: "sowing", kind: "sow", title: "How much to sow",
			group: inSeasons, label: "How much to sow", logs: logsOfSowing, view: sowingView}},
		{own: true, has: hasBatches, lack: lackBatches, spec: spec{path: "week.html", name: "week", kind: "week", title: "This week",
			group: inHouse, label: "This week", top: "Week", view: weekView}},
		{own: true, has: hasBatches, lack: lackBatches, spec: spec{path: "sheets.html", name: "sheets", kind: "sheets", title: "Sheets to print",
			group: inHouse, label: "Sheets to print", view: sheetsView}},
		{family: recordsPages},
		{own: true, spec: spec{path: "missing.html", name: "missing", kind: "missing", title: "What is missing", group: inBook, label: "What is missing", view: missingView}},
		{spec: spec{path: "method.html", name: "method", kind: "book", title: "How figures are made", group: inBook, label: "How figures are made", view: methodView}},
		{spec: spec{path: "glossary.html", name: "glossary", kind: "book", title: "Words", group: inBook, label: "Words", view: glossaryView}},
	}
}
