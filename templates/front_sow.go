package templates

import (
	"cmp"
	"html/template"
	"slices"

	"traybook/report/batch"
	"traybook/report/sowing"
	"traybook/report/words"
)

// sowFinding answers what to sow more of and less of.
func (p *page) sowFinding(season int) finding {
	of := batch.Filter(p.r.Sowing.Balance, func(b sowing.Balance) bool { return b.Season == season })
	more := p.moreOn("sowing.html", "How much to sow")
	if len(of) == 0 {
		return finding{Title: "What to sow more of cannot be told", Big: "?", What: "batches fell short of the field", Note: more,
			Say: []template.HTML{"No batch that has ended has both the plants wanted and the plants it gave. Write wanted, plants_out and surplus into sowings.csv."}}
	}
	short, batches := 0, 0
	for _, b := range of {
		short, batches = short+b.ShortBatches, batches+b.Batches
	}
	f := finding{Title: p.sowTitle(of), Big: words.Whole(short), What: say("of %s fell short of the field", words.Batches(batches)), Note: join(say("Batches of %s that have ended, with plants wanted and plants given.", words.Year(season)), more)}
	f.Say = []template.HTML{join(p.shortWords(season), p.overLeft(season)), p.byLotWords(of)}
	f.Side = p.sowSide(season)
	return f
}

// sowTitle names the crops to sow more of, else those to sow less of.
func (p *page) sowTitle(of []sowing.Balance) template.HTML {
	more, less := advised(of, sowing.SowMore), advised(of, sowing.SowLess)
	switch {
	case len(more) > 0 && len(less) > 0:
		return say("Sow more %s, less %s", namedList(more), namedList(less))
	case len(more) > 0:
		return say("Sow more %s", namedList(more))
	case len(less) > 0:
		return say("Sow less %s", namedList(less))
	}
	return "No crop was short or over often enough to change what is sown"
}

// advised are the crops of one advice, those with most plants short or left over first.
func advised(of []sowing.Balance, a sowing.Advice) []template.HTML {
	found := batch.Filter(of, func(b sowing.Balance) bool { return b.Advice == a })
	slices.SortStableFunc(found, func(x, y sowing.Balance) int {
		return cmp.Or(cmp.Compare(y.Short, x.Short), cmp.Compare(y.LeftOver, x.LeftOver))
	})
	var out []template.HTML
	for _, b := range found {
		out = append(out, markup(name(b.Crop)))
	}
	return out
}

// shortWords names the crops with most plants short.
func (p *page) shortWords(season int) template.HTML {
	short, _ := p.r.Sowing.Named(season)
	if len(short) == 0 {
		return "No batch gave fewer plants than the field wanted."
	}
	return say("Most plants were lacking of %s.", plantList(short, func(b sowing.Balance) float64 { return b.Short }))
}

// overLeft names the crops with most plants left over.
func (p *page) overLeft(season int) template.HTML {
	_, over := p.r.Sowing.Named(season)
	if len(over) == 0 {
		return ""
	}
	return say("Most were left over of %s.", plantList(over, func(b sowing.Balance) float64 { return b.LeftOver }))
}

func plantList(of []sowing.Balance, plants func(sowing.Balance) float64) template.HTML {
	var out []template.HTML
	for _, b := range of {
		out = append(out, say("%s (%s)", name(b.Crop), words.Whole(words.RoundPlants(plants(b)))))
	}
	return list(out)
}

// byLotWords names the crops that were short by one seed lot alone. More of the same seed
// would not have helped, so these are not among what to sow more of.
func (p *page) byLotWords(of []sowing.Balance) template.HTML {
	var out []template.HTML
	for _, b := range of {
		if b.ByLot.Known {
			lot := markup(name(b.ByLot.Value))
			if b.ByLot.Value == "" {
				lot = "sowings without a lot"
			}
			out = append(out, say("%s (%s)", name(b.Crop), lot))
		}
	}
	if len(out) == 0 {
		return ""
	}
	return say("Short by one seed lot alone, so question the lot before sowing more: %s.", list(out))
}

// sowSide is the cells that being sure of 100 plants takes, of the crops most short. The
// line marks the hundred plants: what lies beyond it is sown to be sure, and mostly left
// over.
func (p *page) sowSide(season int) template.HTML {
	short, _ := p.r.Sowing.Named(season)
	var bars []bar
	for _, b := range short {
		if cells, ok := p.cellsPer100(b.Crop); ok {
			bars = append(bars, bar{markup(name(b.Crop)), words.Whole(cells), float64(cells)})
		}
	}
	if len(bars) == 0 {
		return ""
	}
	return barTable(say("Cells to sow to be sure of 100 plants, %s times in 100; the line marks 100", words.Fixed(100*p.r.Book.Settings.SureOfTarget, 0)), bars, 100)
}

// cellsPer100 is the most cells that any group of a crop takes for 100 plants. The worst
// of its trays and varieties is told, so that it is enough in any.
func (p *page) cellsPer100(crop string) (cells int, ok bool) {
	for _, r := range p.r.Sowing.Sowing {
		if r.Crop == crop && r.CellsPer100.Known {
			cells, ok = max(cells, r.CellsPer100.Value), true
		}
	}
	return cells, ok
}
