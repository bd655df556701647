package templates

// spec is one page of the site.
type spec struct {
	path   string // costs.html
	name   string // of its template without .html: costs
	title  string // of the window
	group  string // part of the navigation in which it stands
	label  string // its word in the navigation; empty: it is not there
	parent string // path of the page in the navigation that it belongs to
	logs   []string
	view   func(*page) any
}

// chapter is a page, or a family of pages, that a site may have.
type chapter struct {
	spec
	has    func(*site) bool   // nil: always
	lack   string             // what to write down to get it
	family func(*site) []spec // nil: the one page
}

// specs are the pages of a chapter.
func (c chapter) specs(s *site) []spec {
	if c.family != nil {
		return c.family(s)
	}
	return []spec{c.spec}
}

// The parts of the navigation.
const (
	inReview = "Review"
	inHouse  = "In the house"
	inMoney  = "Money"
	inBook   = "The book"
)

// Logs by what they tell; the end of a page tells the gaps in its logs.
var (
	logsOfEmergence = []string{"counts.csv", "chamber.csv", "house.csv", "trays.csv"}
	logsOfLots      = []string{"lots.csv", "counts.csv", "sowings.csv"}
	logsOfQuality   = []string{"scores.csv", "sowings.csv", "out.csv", "counts.csv"}
	logsOfWeek      = []string{"sowings.csv", "counts.csv", "book.csv"}
	logsOfTrays     = []string{"trays.csv", "sowings.csv", "out.csv", "book.csv"}
	logsOfCost      = []string{"costs.csv", "trays.csv", "lots.csv", "out.csv", "sowings.csv", "book.csv"}
	allLogs         = []string{"sowings.csv", "out.csv", "counts.csv", "scores.csv", "trays.csv", "lots.csv", "costs.csv",
		"chamber.csv", "house.csv", "book.csv"}
)

// chapters are all pages that a site may have, in the order of the navigation.
// Each page's row names the data without which it is left out.
var chapters = []chapter{
	{family: reviewPages},
	{spec: spec{path: "week.html", name: "week", title: "This week", group: inHouse, label: "This week", logs: logsOfWeek, view: weekView},
		has: hasBatches, lack: "Write a row for each batch into sowings.csv."},
	{spec: spec{path: "sheets.html", name: "sheets", title: "Sheets to print", group: inHouse, label: "Sheets to print", view: sheetsView},
		has: hasBatches, lack: "Write a row for each batch into sowings.csv."},
	{spec: spec{path: "germination.html", name: "germination", title: "Germination", group: inHouse, label: "Germination", logs: logsOfEmergence, view: germinationView},
		has: hasGermination, lack: "Write germination counts into counts.csv: batch, date, emerged."},
	{spec: spec{path: "lots.html", name: "lots", title: "Seed lots", group: inHouse, label: "Seed lots", logs: logsOfLots, view: lotsView},
		has: hasLots, lack: "Write a row for each packet into lots.csv, and its code under lot in sowings.csv."},
	{spec: spec{path: "quality.html", name: "quality", title: "Quality and leeway", group: inHouse, label: "Quality", logs: logsOfQuality, view: qualityView},
		has: hasQuality, lack: "Write looks at the plants into scores.csv (batch, date, looked, usable), or plants_out and surplus into sowings.csv."},
	{spec: spec{path: "trays.html", name: "trays", title: "Trays and room", group: inMoney, label: "Trays", logs: logsOfTrays, view: traysView},
		has: hasTrays, lack: "Write a row for each tray code into trays.csv: tray, kind, cells, count, price, lasts or uses."},
	{spec: spec{path: "costs.html", name: "costs", title: "What a transplant cost", group: inMoney, label: "Costs",
		logs: logsOfCost, view: costsView},
		has: hasCosts, lack: "Write money and hours in costs.csv (with a wage in book.csv), prices in trays.csv, or prices of seed in lots.csv."},
	{family: recordsPages},
	{spec: spec{path: "missing.html", name: "missing", title: "What is missing", group: inBook, label: "Missing", view: missingView}},
	{spec: spec{path: "method.html", name: "method", title: "How the figures are made", group: inBook, label: "Method", view: methodView}},
	{spec: spec{path: "glossary.html", name: "glossary", title: "Glossary", group: inBook, label: "Glossary", view: glossaryView}},
}
