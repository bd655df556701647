package templates

import (
	"html/template"
	"slices"
	"strings"

	"traybook/report"
	"traybook/report/words"
)

// missingPage is what is missing as a to-do: what costs most first, where it is to be
// written and how long that takes; then what is wrong in the logs, and what is not there.
type missingPage struct {
	Heading  template.HTML
	Lead     template.HTML
	First    finding
	ToDo     []toMend
	Past     []toMend // what nobody can mend any more
	Problems problemList
	Lacking  []lackingLog
	Left     []leftOut
	Seasons  template.HTML // links to pages with all places of a season, where this one has not
	Part     bool          // it is such a page
}

func (v missingPage) head() (heading, lead template.HTML) {
	if v.Part {
		return v.Heading, v.Lead
	}
	return "What is missing", v.Lead
}

// toMend is a kind of gap with the seasons that have it.
type toMend struct {
	What, Costs  string
	When, Remedy string // Write down, or Next time
	Seasons      []seasonGap
}

// seasonGap is a gap of one season, or of all; ID is its anchor.
type seasonGap struct {
	ID      string
	Season  string
	Touched string // how many batches
	Time    string // to mend it
	Files   []placesOf
	Lost    template.HTML // what of it nobody can mend any more
}

// lackingLog is a log that the book does not have.
type lackingLog struct{ Log, Adds string }

// What each log adds to a book, in the order in which it is worth starting them.
var logsAdd = []lackingLog{
	{"trays.csv", "cells of each tray code, its kind and price: plants a tray, room, and whether dearer trays pay"},
	{"out.csv", "what left the house, event by event: usable plants where set_out, plants_out and surplus in sowings.csv do not serve"},
	{"counts.csv", "emergence by variety and cell size"},
	{"costs.csv", "what a transplant cost"},
	{"lots.csv", "the cost of seed, emergence against the packet, and the trail of a lot"},
	{"scores.csv", "quality, and how long plants stay fit past the planned day"},
	{"chamber.csv", "the temperature of the germination chamber beside what came up"},
	{"house.csv", "heat shared out by the weather, cold spells beside poor emergence"},
	{"wishes.csv", "what the fields want next season: cells, trays, and the day to sow by"},
	{"changes.csv", "what the farm did differently, beside how the seasons differ"},
	{"book.csv", "the farm’s name, wage and other settings; without it the defaults stand"},
}

// missingView tells every gap and every problem of the report. Logs that the book lacks
// and of which a gap has told already are not told a second time.
func missingView(p *page) any {
	v := missingPage{Lead: "A blank is unknown, never 0. Here is each gap, what it takes away, and the cell that would close it.",
		First: p.missingFinding(), Problems: p.problemList(), Left: p.left}
	v.ToDo, v.Past = p.toMend(p.r.Missing, p.mostPlaces())
	v.Seasons = p.gapPages()
	for _, l := range logsAdd {
		if !p.r.Book.Has(l.Log) && !p.toldMissing(l.Log) {
			v.Lacking = append(v.Lacking, l)
		}
	}
	return v
}

// toldMissing reports whether the gaps tell already that the book has no such log.
func (p *page) toldMissing(log string) bool {
	return slices.ContainsFunc(p.r.Missing, func(m report.Missing) bool { return len(m.Batches) == 0 && strings.Contains(m.Remedy, log) })
}

// toMend gathers the gaps by kind, the costliest first, those that can be mended apart
// from those that cannot. A kind's place is that of its costliest season. At most so many
// places of a gap are named.
func (p *page) toMend(gaps []report.Missing, most int) (todo, past []toMend) {
	for i, m := range gaps {
		list, when := &todo, "Write down"
		if len(m.Places) == 0 {
			list, when = &past, "Next time"
		}
		what := gapName(m)
		at := slices.IndexFunc(*list, func(t toMend) bool { return t.What == what && t.Remedy == stopped(m.Remedy) })
		if at < 0 {
			at = len(*list)
			*list = append(*list, toMend{What: what, Costs: sentence(m.Costs), When: when, Remedy: stopped(m.Remedy)})
		}
		(*list)[at].Seasons = append((*list)[at].Seasons, p.seasonGap(i, m, most))
	}
	return todo, past
}

// gapName is what a gap is of, without the codes that its places name.
func gapName(m report.Missing) string {
	what, _, _ := strings.Cut(m.What, ": ")
	return capital(what)
}

// seasonGap is the gap with number i, from 0, of the list of all that is missing.
func (p *page) seasonGap(i int, m report.Missing, most int) seasonGap {
	g := seasonGap{ID: p.id(gapID(i)), Season: seasonWord(m.Season), Time: minutesText(m.Minutes), Files: p.placesOf(m, most), Lost: tooLate(m)}
	if m.Touched > 0 {
		g.Touched = words.Batches(m.Touched)
	}
	return g
}

// seasonWord is the season that a gap touches; 0 stands for all.
func seasonWord(season int) string {
	if season == 0 {
		return "all seasons"
	}
	return words.Year(season)
}

// tooLate says of how many of a gap's batches nobody can write anything any more: those
// that have left, where the others are to be looked at. It is said only where some can
// still be mended and others not.
func tooLate(m report.Missing) template.HTML {
	named := map[string]bool{}
	for _, at := range m.Places {
		named[at.Of] = true
	}
	mended := 0
	for _, code := range m.Batches {
		if named[code] {
			mended++
		}
	}
	if mended == 0 || mended == len(m.Batches) {
		return ""
	}
	return say("It is too late for %s.", words.Batches(len(m.Batches)-mended))
}
