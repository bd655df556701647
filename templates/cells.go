package templates

import (
	"html/template"

	"traybook/report/batch"
	"traybook/report/rate"
	"traybook/report/words"
)

// prose is a cell that holds a sentence, which may wrap.
func prose(words any) cell { return cell{Value: markup(words), Class: "words"} }

// with is a value above its interval, its sample or its source.
func with(value, sub any) cell { return cell{Value: markup(value), Sub: markup(sub)} }

// shareCell is a rate above its interval.
func shareCell(s rate.Rate) cell { return rateCell(s.Share, s.Low, s.High) }

// rateCell is a share above its interval; a dash where there is none.
func rateCell(rate, low, high rate.Num) cell {
	if !rate.Known {
		return cell{Value: words.None}
	}
	sub := words.TooFew
	if low.Known && high.Known {
		sub = words.PercentNumber(low.Value) + " to " + words.PercentNumber(high.Value)
	}
	return with(words.Percent(rate.Value), sub)
}

// groupHeads and groupCells are the columns crop, variety, cells and kind. On a
// narrow screen the last two stand under the variety.
var groupHeads = []column{{Head: "Crop"}, {Head: "Variety"}, {Head: "Cells", Num: true, Wide: true}, {Head: "Kind", Wide: true}}

// groupCells are the cells of groupHeads.
func (p *page) groupCells(g batch.Group) []any {
	variety := with(name(g.Variety), trayName(g))
	variety.Room = "narrow"
	return []any{p.crop(g.Season, g.Crop), variety, cellsText(g), name(orDash(g.Kind))}
}

// trayName is a kind of tray in a table: air-pruning 72.
func trayName(g batch.Group) template.HTML {
	return say("%s %s", name(orDash(g.Kind)), cellsText(g))
}

// cellsText is how many cells a tray has; a dash where its code is unknown.
func cellsText(g batch.Group) string {
	if !g.Cells.Known {
		return words.None
	}
	return words.Whole(g.Cells.Value)
}

// orDash is a word of the book, or a dash for a blank.
func orDash(s string) string {
	if s == "" {
		return words.None
	}
	return s
}

// writeCrop links to the records of a crop in a season.
func (p *page) writeCrop(w *pen, season int, crop string) {
	at, ok := p.cropAt[cropSeason{crop, season}]
	if !ok || !p.paths[at] || p.single {
		w.name(crop)
		return
	}
	w.put(`<a href="`, p.root)
	w.text(at)
	w.put(`">`)
	w.name(crop)
	w.put("</a>")
}

// crop is that in a sentence.
func (p *page) crop(season int, crop string) template.HTML {
	w := pen{out: make([]byte, 0, linkBytes)}
	p.writeCrop(&w, season, crop)
	return template.HTML(w.out)
}

// leftOutNote says under a table that rows of its logs were left out.
func (p *page) leftOutNote() template.HTML {
	var of []template.HTML
	for _, f := range p.faulty {
		if contains(p.spec.logs, f.name) {
			of = append(of, say("%s of %s", words.Plural(f.rows, "row", "rows"), f.name))
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
