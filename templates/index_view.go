package templates

import (
	"fmt"
	"html/template"

	"traybook/report/words"
)

// review is the page of a season: the front page for the season reviewed.
type review struct {
	Heading, Lead template.HTML
	Answers       []finding
	Note          template.HTML
	Year          *yearPart
	Crops         *rows
}

// head is the season and how much was sown in it.
func (v review) head() (heading, lead template.HTML) { return v.Heading, v.Lead }

// reviewPages are the front page, which is the review of the season reviewed, and the
// review of every season under its year.
func reviewPages(s *site) []spec {
	front := reviewSpec(s.r.Season)
	front.path, front.label, front.top, front.parent = "index.html", "", "", seasonFile("index", s.r.Season)
	if s.r.Season == 0 {
		front.title, front.season = "Transplants", 0
		return []spec{front}
	}
	front.same = ""
	specs := []spec{front}
	for _, season := range s.r.Batches.Seasons {
		specs = append(specs, reviewSpec(season))
	}
	return specs
}

// reviewSpec is the page of a season's review.
func reviewSpec(season int) spec {
	return spec{path: seasonFile("index", season), name: "index", kind: "index", title: fmt.Sprint("Review of ", season), season: season, same: "index",
		group: ofSeason, label: "Review", top: "Review", logs: allLogs, view: reviewView(season)}
}

// reviewView is the review of one season: its answers, each with a number large, the
// season in the grower's words, the year in the house, and the crops.
func reviewView(season int) func(*page) any {
	return func(p *page) any {
		v := review{Heading: say("The season %s", words.Year(season)), Lead: p.seasonState(season)}
		v.Answers = p.findings(season)
		if n, ok := p.note(season); ok {
			v.Note = p.noteText(n, season)
		}
		v.Year = p.yearPart(season)
		v.Crops = p.cropRows(season)
		return v
	}
}

// findings are the grower's questions about a season, in the order in which they are
// asked.
func (p *page) findings(season int) []finding {
	all := []finding{p.upFinding(season)}
	if !p.r.Options.Public || hasCosts(p.site, season) { // else a farm keeps its money to itself
		all = append(all, p.costFinding(season))
	}
	if !p.r.Options.Public || len(p.r.Trays.Payback) > 0 {
		all = append(all, p.traysFinding())
	}
	return append(all, p.yearsFinding(season), p.sowFinding(season))
}

// seasonState says how much was sown in a season and whether it is finished.
func (p *page) seasonState(season int) template.HTML {
	batches, trays := len(p.seasons[season]), 0.0
	for _, b := range p.seasons[season] {
		trays += b.Trays
	}
	if batches == 0 {
		return "Nothing was sown."
	}
	sown := say("%s in %s", words.Batches(batches), words.Plural(trays, "tray", "trays"))
	if p.r.Batches.Finished(season) {
		return say("%s sown.", sown)
	}
	return say("%s sown. The season is still under way: the figures stand as of %s.", sown, words.LongDate(p.r.Batches.Today))
}

// abs is how far a number lies from 0.
func abs(v float64) float64 { return max(v, -v) }
