package templates

// emergenceFigure is a season's emergence by crop and group, as its page has it.
func emergenceFigure(p *page, season int) *figure {
	return p.rowsFigure("What came up", "", p.groupRows(season))
}

// costFigure is what a plant of each crop cost in a season and of what, as its page has
// it.
func costFigure(p *page, season int) *figure {
	return p.rowsFigure("What a transplant cost", "", p.costCrops(season))
}

// ledgerFigure is a season's money by category.
func ledgerFigure(p *page, season int) *figure {
	return p.rowsFigure("Where the money went", "", p.ledgerRows(season))
}

// qualityFigure is the plants fit to set out in a season, and those at each score.
func qualityFigure(p *page, season int) *figure {
	return p.rowsFigure("How good the plants were", "", p.qualityRows(season))
}

// leewayFigure is how late plants stayed fit, of all seasons.
func leewayFigure(p *page, _ int) *figure {
	return p.rowsFigure("How late plants stayed fit", "", p.leewayRows())
}
