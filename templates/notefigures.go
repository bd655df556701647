package templates

// namedFigure is a figure that a season's note can ask for.
type namedFigure struct {
	Name, Shows string
	Review      bool // it stands on a season's review anyway
	of          func(p *page, season int) *figure
}

// namedFigures are the names a fenced block "figure NAME" may use, as the method
// page lists them. It is filled in init, because the figures use the pages.
var namedFigures []namedFigure

func init() {
	namedFigures = []namedFigure{
		{"emergence", "emergence by variety, cell size and kind in the season", true, emergenceFigure},
		{"cost", "what a transplant cost in the season, by crop, and of what", true, costFigure},
		{"losses", "cells lost in the season, by cause and month", false, (*page).lossFigure},
		{"quality", "plants at each score in the season", false, qualityFigure},
		{"leeway", "how late plants were still fit to set out, by kind of tray", false, leewayFigure},
		{"ledger", "the season's money by category", false, ledgerFigure},
	}
}

// noteFigure makes a named figure; known is false for a name that is none.
func (p *page) noteFigure(wanted string, season int) (f *figure, known bool) {
	for _, n := range namedFigures {
		if n.Name == wanted {
			p.noted[n.Name] = true
			return n.of(p, season), true
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
