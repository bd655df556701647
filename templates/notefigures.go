package templates

import (
	"traybook/report/batch"
	"traybook/report/germination"
	"traybook/report/years"
)

// namedFigure is what a season's note can ask for by a name: rows, tables and drawings,
// as their own pages have them.
type namedFigure struct {
	Name, Shows string
	of          func(p *page, season int) []*figure
}

// namedFigures are the names a fenced block "figure NAME" may use, as the method
// page lists them. It is filled in init, because the figures use the pages.
var namedFigures []namedFigure

func init() {
	namedFigures = []namedFigure{
		{"crops", "what came up, what was usable and what a plant cost, crop by crop", rowsOf("Crop by crop", (*page).cropRows)},
		{"year", "each day of the season in the house", (*page).yearFigure},
		{"emergence", "what came up, by variety and tray", rowsOf("What came up", (*page).groupRows)},
		{"varieties", "each variety beside the others of its crop", rowsOf("Varieties compared", (*page).verdictRows)},
		{"weeks", "what came up by week of sowing, of crops sown often", (*page).weekFigures},
		{"timing", "how fast it came up", tableOf("How fast it came up", (*page).timingTable)},
		{"losses", "cells lost, by cause and month", func(p *page, season int) []*figure { return []*figure{p.lossFigure(season)} }},
		{"chambers", "the chambers beside one another", (*page).chamberFigure},
		{"quality", "plants fit to set out, by variety and tray", rowsOf("How good the plants were", (*page).qualityRows)},
		{"usable", "usable plants of the cells sown, by variety and tray", rowsOf("Usable plants", (*page).usableRows)},
		{"leeway", "how late plants stayed fit, by kind of tray, over all seasons", rowsOf("How late plants stayed fit", always((*page).leewayRows))},
		{"costs", "what a plant cost, crop by crop", rowsOf("What a transplant cost", (*page).costCrops)},
		{"groups", "what a plant cost, by variety and tray", rowsOf("What a transplant cost, by variety and tray", (*page).costGroups)},
		{"months", "what a plant cost, by the month in which it left", rowsOf("What a transplant cost, by month", (*page).costMonths)},
		{"ledger", "the season’s money, by what it was for", rowsOf("Where the money went", (*page).ledgerRows)},
		{"lots", "seed lots beside their packets", rowsOf("Seed lots", func(p *page, season int) *rows { return p.lotRows(p.lotsOf(season)) })},
		{"trail", "where each seed lot came from and went", rowsOf("The trail of each lot", func(p *page, season int) *rows { return p.trailRows(p.lotsOf(season), p.unsownLots(season)) })},
		{"matches", "matched sowings in two kinds of tray, over all seasons", (*page).matchFigures},
		{"trays", "what a use of the dearer tray gains, part by part", (*page).gainFigures},
		{"room", "room in the house through the season", tableOf("Room", (*page).roomOf)},
		{"years", "each season beside the one before, in three parts", (*page).yearsFigures},
		{"changes", "what was done differently, season by season", tableOf("What was done differently", always((*page).changesTable))},
		{"heating", "fuel and its cost beside how cold it was", tableOf("Heating", always((*page).heatingTable))},
		{"sowing", "how many cells to sow", rowsOf("How much to sow", always((*page).sowRows))},
		{"wishes", "what the fields want, and what to sow for it", tableOf("What the fields want", always((*page).wishTable))},
		{"reorder", "seed in hand, and seed to buy", tableOf("Seed to buy", always((*page).reorderTable))},
		{"balance", "plants wanted and given, crop by crop", tableOf("What was short and what was over", always((*page).balanceTable))},
	}
}

// rowsOf shows rows that tell their story under a title.
func rowsOf(title string, of func(*page, int) *rows) func(*page, int) []*figure {
	return func(p *page, season int) []*figure { return []*figure{p.rowsFigure(title, of(p, season))} }
}

// tableOf shows a table under a title.
func tableOf(title string, of func(*page, int) *table) func(*page, int) []*figure {
	return func(p *page, season int) []*figure { return []*figure{p.figure("", title, "", of(p, season))} }
}

// always makes what is the same in every season.
func always[T any](of func(*page) T) func(*page, int) T {
	return func(p *page, _ int) T { return of(p) }
}

// noteFigures makes what a name asks for; known is false for a name that is none. A name
// that is right and has nothing to show gives none, which is told to the writer as another
// thing than a name that is wrong.
func (p *page) noteFigures(wanted string, season int) (all []*figure, known bool) {
	for _, n := range namedFigures {
		if n.Name == wanted {
			for _, f := range n.of(p, season) {
				if f.Filled() {
					all = append(all, f)
				}
			}
			return all, true
		}
	}
	return nil, false
}

// figureNames are the names that a note may ask for, in the order of the method page.
func figureNames() []string {
	out := make([]string, len(namedFigures))
	for i, n := range namedFigures {
		out[i] = n.Name
	}
	return out
}

// yearFigure is the year in the house.
func (p *page) yearFigure(season int) []*figure {
	year := p.yearPart(season)
	if year == nil {
		return nil
	}
	title := bareText(year.Title)
	return []*figure{{ID: p.id("figure-" + slug(title)), Title: title, Caption: year.Caption, Drawing: year.Drawing}}
}

// weekFigures are the crops sown often by week of sowing, each chart with its numbers.
func (p *page) weekFigures(season int) (all []*figure) {
	for _, w := range p.weekParts(season) {
		w.Figure.Table = w.Table.Tables[0]
		all = append(all, w.Figure)
	}
	return all
}

// chamberFigure is the season's chambers, where it had any.
func (p *page) chamberFigure(season int) []*figure {
	of := batch.Filter(p.r.Germination.Chambers, func(c germination.Chamber) bool { return c.Season == season })
	if len(of) == 0 {
		return nil
	}
	return []*figure{p.figure("", "The chambers", "", p.chamberTable(season, of))}
}

// matchFigures are the matched sowings of each pair of trays.
func (p *page) matchFigures(int) (all []*figure) {
	for _, a := range p.firstPairs() {
		if a.Matches > 0 {
			all = append(all, p.rowsFigure(bareText(p.matchTitle(a)), p.matchRows(a)))
		}
	}
	return p.withRest(all)
}

// gainFigures are what a use of each dearer tray gains, where it is known.
func (p *page) gainFigures(int) (all []*figure) {
	for _, a := range p.firstPairs() {
		if a.Gain.Known {
			all = append(all, p.rowsFigure("What a use of "+a.tray()+" gains", p.gainRows(a)))
		}
	}
	return p.withRest(all)
}

// roomOf is the room in a season, place by place.
func (p *page) roomOf(season int) *table {
	return p.roomTable("room", season, loadsOf(p.r.Room.Load, season), "room")
}

// yearsFigures are the changes of each measure in their three parts.
func (p *page) yearsFigures(int) (all []*figure) {
	for _, m := range years.Measures {
		farm := batch.Filter(p.r.Years.Years, func(c years.Change) bool { return c.Measure == m && c.Crop == "" })
		if len(farm) > 0 {
			of := p.measureOf(m)
			all = append(all, p.rowsFigure(of.title, p.splitRows(of, farm)))
		}
	}
	return all
}
