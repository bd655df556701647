package templates

import (
	"html/template"

	"traybook/report"
)

// prose is a cell that holds a sentence, which may wrap.
func prose(words any) cell { return cell{Value: markup(words), Class: "words"} }

// with is a value above its interval, its sample or its source.
func with(value, sub any) cell { return cell{Value: markup(value), Sub: markup(sub)} }

// shareCell is a rate above its interval.
func shareCell(s report.Rate) cell { return rateCell(s.Share, s.Low, s.High) }

// rateCell is a share above its interval; a dash where there is none.
func rateCell(rate, low, high report.Num) cell {
	if !rate.Known {
		return cell{Value: noneYet}
	}
	sub := tooFew
	if low.Known && high.Known {
		sub = percentNumber(low.Value) + " to " + percentNumber(high.Value)
	}
	return with(percent(rate.Value), sub)
}

// groupHeads and groupCells are the columns crop, variety, cells and kind. On a
// narrow screen the last two stand under the variety.
var groupHeads = []column{{Head: "Crop"}, {Head: "Variety"}, {Head: "Cells", Num: true, Wide: true}, {Head: "Kind", Wide: true}}

func (p *place) groupCells(g report.Group) []any {
	variety := with(name(g.Variety), trayName(g))
	variety.Room = "narrow"
	return []any{p.crop(g.Season, g.Crop), variety, cellsText(g), name(orDash(g.Kind))}
}

// trayName is a kind of tray in a table: air-pruning 72.
func trayName(g report.Group) template.HTML {
	return say("%s %s", name(orDash(g.Kind)), cellsText(g))
}

func cellsText(g report.Group) string {
	if !g.Cells.Known {
		return noneYet
	}
	return whole(g.Cells.Value)
}

func orDash(s string) string {
	if s == "" {
		return noneYet
	}
	return s
}

// crop links to the records of a crop in a season.
func (p *place) crop(season int, crop string) template.HTML {
	for _, page := range p.crops {
		if page.Season == season && page.Crop == crop {
			return p.to(page.Path, name(crop))
		}
	}
	return markup(name(crop))
}

// leftOutNote says under a table that rows of its logs were left out.
func (p *place) leftOutNote() template.HTML {
	var of []template.HTML
	for _, f := range p.faulty {
		if contains(p.spec.logs, f.name) {
			of = append(of, say("%s of %s", plural(f.rows, "row", "rows"), f.name))
		}
	}
	if len(of) == 0 {
		return ""
	}
	return say("Left out of these figures: %s.", list(of))
}

func contains(list []string, s string) bool {
	for _, l := range list {
		if l == s {
			return true
		}
	}
	return false
}
