package templates

import (
	"html/template"
	"slices"

	"traybook/report/batch"
	"traybook/report/plants"
	"traybook/report/rate"
	"traybook/report/words"
)

// bandHead is a band of days past the planned day as a head.
func bandHead(band int) string { return capital(words.DaysLate(band)) }

// leewayOf are the bands of a crop (empty: all) in a kind of tray.
func (p *page) leewayOf(crop, kind string) []plants.Leeway {
	return batch.Filter(p.r.Plants.Leeway, func(l plants.Leeway) bool { return l.Crop == crop && l.Kind == kind })
}

// leewayKinds are the kinds of tray with looks of a crop (empty: of any).
func (p *page) leewayKinds(crop string) []string {
	var kinds []string
	for _, l := range p.r.Plants.Leeway {
		if l.Crop == crop && !slices.Contains(kinds, l.Kind) {
			kinds = append(kinds, l.Kind)
		}
	}
	return kinds
}

// leewaySentences say, kind by kind, how late plants may be set out.
func (p *page) leewaySentences() []template.HTML {
	var out []template.HTML
	for _, kind := range p.leewayKinds("") {
		out = append(out, leewaySentence(kind, p.leewayOf("", kind)))
	}
	return out
}

// leewaySentence names the last band in which enough are still fit, and the next.
func leewaySentence(kind string, bands []plants.Leeway) template.HTML {
	bands = batch.Filter(bands, func(l plants.Leeway) bool { return l.Share.Known })
	trays := kindWords(kind)
	if len(bands) == 0 {
		return say("In %s the records cannot tell: no stretch of days past the planned one has looks at %s.", trays, words.Batches(rate.FewBatches))
	}
	last := plants.LastFit(bands)
	if last < 0 {
		return say("In %s fewer than %s were fit at any time: %s %s, %s.", trays, words.Percent(plants.StillFit), words.DaysLate(bands[0].DaysLate), words.ShareText(bands[0].Rate), words.Batches(bands[0].Batches))
	}
	out := say("In %s, <strong>%s</strong> still left %s of the plants fit, %s", trays, words.DaysLate(bands[last].DaysLate),
		words.ShareText(bands[last].Rate), words.Batches(bands[last].Batches))
	if last+1 < len(bands) {
		next := bands[last+1]
		return say("%s; %s left %s, %s.", out, words.DaysLate(next.DaysLate), words.ShareText(next.Rate), words.Batches(next.Batches))
	}
	if bands[last].DaysLate < plants.LeewayBands[len(plants.LeewayBands)-1] {
		return say("%s; fewer than %s were looked at later than that.", out, words.Batches(rate.FewBatches))
	}
	return out + "."
}

// leewayFigure is "still fit to set out" at a glance: a row for each stretch of
// days, a column for each kind of tray.
func (p *page) leewayFigure() *figure {
	kinds := p.leewayKinds("")
	heads := make([]string, len(kinds))
	for i, kind := range kinds {
		heads[i] = kindHead(kind)
	}
	t := p.table("leeway", "Still fit to set out, all seasons and crops", "leeway", plain("Looked at"), nums(heads...))
	for _, band := range plants.LeewayBands {
		cells, some := []any{bandHead(band)}, false
		for _, kind := range kinds {
			l, ok := p.leewayIn("", kind, band)
			some = some || ok
			cells = append(cells, fitCell(l.Rate))
		}
		if some {
			t.add(cells...)
		}
	}
	return p.figure("leeway", "Still fit to set out, by days past the planned day",
		say("A dash: fewer than %s. At least %s still fit is set in green, less in red.", words.Batches(rate.FewBatches), words.Percent(plants.StillFit)), t)
}

// kindHead is a kind of tray as the head of a column.
func kindHead(kind string) string {
	if kind == "" {
		return "Kind unknown"
	}
	return kind
}

// leewayIn is a band of a crop in a kind of tray, if anything was looked at in it.
func (p *page) leewayIn(crop, kind string, band int) (plants.Leeway, bool) {
	for _, l := range p.leewayOf(crop, kind) {
		if l.DaysLate == band {
			return l, true
		}
	}
	return plants.Leeway{}, false
}

// fitCell is a share over its interval and sample, coloured by whether enough are
// still fit; a dash where too few batches were looked at.
func fitCell(s rate.Rate) cell {
	c := shareCell(s)
	switch {
	case s.Share.Known:
		c.Class = map[bool]string{true: "good", false: "bad"}[s.Share.Value >= plants.StillFit]
		c.Sub = say("%s,<br>%s", c.Sub, words.Batches(s.Batches))
	case s.Batches > 0:
		c.Sub = markup(words.Batches(s.Batches))
	}
	return c
}

// leewayByCrop is the same crop by crop, where any stretch can be told.
func (p *page) leewayByCrop() more {
	var heads []string
	for _, band := range plants.LeewayBands {
		heads = append(heads, bandHead(band))
	}
	t := p.table("leeway-crops", "Still fit to set out by crop, all seasons", "leeway", plain("Crop", "Kind"), nums(heads...))
	for _, crop := range p.leewayCrops() {
		for _, kind := range p.leewayKinds(crop) {
			cells, told := []any{name(crop), name(orDash(kind))}, false
			for _, band := range plants.LeewayBands {
				l, _ := p.leewayIn(crop, kind, band)
				told = told || l.Share.Known
				cells = append(cells, fitCell(l.Rate))
			}
			if told {
				t.add(cells...)
			}
		}
	}
	return more{Summary: "Crop by crop", Tables: []*table{t}}
}

// leewayCrops are the crops with looks past their planned day, in order.
func (p *page) leewayCrops() []string {
	var crops []string
	for _, l := range p.r.Plants.Leeway {
		if l.Crop != "" && !slices.Contains(crops, l.Crop) {
			crops = append(crops, l.Crop)
		}
	}
	return crops
}
