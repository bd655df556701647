package templates

import (
	"html/template"
	"slices"

	"traybook/report"
	"traybook/report/chart"
)

// stillFit is the share from which plants count as still fit in a sentence (rule 17).
const stillFit = report.StillFit

// bandWords are the bands of days past the planned day in a sentence; in a head they
// are named as in the chart.
var bandWords = map[int]string{
	0:  "up to the planned day",
	1:  "1 to 3 days late",
	4:  "4 to 7 days late",
	8:  "8 to 14 days late",
	15: "15 days late or more",
}

func bandHead(band int) string { return capital(chart.LeewayNames[band]) }

// leewayOf are the bands of a crop (empty: all) in a kind of tray.
func (p *place) leewayOf(crop, kind string) []report.Leeway {
	return slices.DeleteFunc(slices.Clone(p.r.Leeway), func(l report.Leeway) bool { return l.Crop != crop || l.Kind != kind })
}

// leewayKinds are the kinds of tray with looks of a crop (empty: of any).
func (p *place) leewayKinds(crop string) []string {
	var kinds []string
	for _, l := range p.r.Leeway {
		if l.Crop == crop && !slices.Contains(kinds, l.Kind) {
			kinds = append(kinds, l.Kind)
		}
	}
	return kinds
}

// leewaySentences say, kind by kind, how late plants may be set out.
func (p *place) leewaySentences() []template.HTML {
	var out []template.HTML
	for _, kind := range p.leewayKinds("") {
		out = append(out, leewaySentence(kind, p.leewayOf("", kind)))
	}
	return out
}

// leewaySentence names the last band in which enough are still fit, and the next.
func leewaySentence(kind string, bands []report.Leeway) template.HTML {
	bands = slices.DeleteFunc(slices.Clone(bands), func(l report.Leeway) bool { return !l.Share.Known })
	trays := kindWords(kind)
	if len(bands) == 0 {
		return say("In %s the records cannot tell: no stretch of days past the planned one has looks at %s.", trays, batchCount(report.FewBatches))
	}
	last := report.LastFit(bands)
	if last < 0 {
		return say("In %s fewer than %s were fit at any time: %s %s, %s.", trays, percent(stillFit), bandWords[bands[0].DaysLate], shareText(bands[0].Rate), batchCount(bands[0].Batches))
	}
	out := say("In %s, <strong>%s</strong> still left %s of the plants fit, %s", trays, bandWords[bands[last].DaysLate],
		shareText(bands[last].Rate), batchCount(bands[last].Batches))
	if last+1 < len(bands) {
		next := bands[last+1]
		return say("%s; %s left %s, %s.", out, bandWords[next.DaysLate], shareText(next.Rate), batchCount(next.Batches))
	}
	if bands[last].DaysLate < report.LeewayBands[len(report.LeewayBands)-1] {
		return say("%s; fewer than %s were looked at later than that.", out, batchCount(report.FewBatches))
	}
	return out + "."
}

// leewayFigure is "still fit to set out" at a glance: a row for each stretch of
// days, a column for each kind of tray.
func (p *place) leewayFigure() *figure {
	kinds := p.leewayKinds("")
	heads := make([]string, len(kinds))
	for i, kind := range kinds {
		heads[i] = kindHead(kind)
	}
	t := p.table("leeway", "Still fit to set out, all seasons and crops", "leeway", plain("Looked at"), nums(heads...))
	for _, band := range report.LeewayBands {
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
		say("A dash: fewer than %s. At least %s still fit is set in green, less in red.", batchCount(report.FewBatches), percent(stillFit)), t)
}

func kindHead(kind string) string {
	if kind == "" {
		return "Kind unknown"
	}
	return kind
}

// leewayIn is a band of a crop in a kind of tray, if anything was looked at in it.
func (p *place) leewayIn(crop, kind string, band int) (report.Leeway, bool) {
	for _, l := range p.leewayOf(crop, kind) {
		if l.DaysLate == band {
			return l, true
		}
	}
	return report.Leeway{}, false
}

// fitCell is a share over its interval and sample, coloured by whether enough are
// still fit; a dash where too few batches were looked at.
func fitCell(s report.Rate) cell {
	c := shareCell(s)
	switch {
	case s.Share.Known:
		c.Class = map[bool]string{true: "good", false: "bad"}[s.Share.Value >= stillFit]
		c.Sub = say("%s,<br>%s", c.Sub, batchCount(s.Batches))
	case s.Batches > 0:
		c.Sub = markup(batchCount(s.Batches))
	}
	return c
}

// leewayByCrop is the same crop by crop, where any stretch can be told.
func (p *place) leewayByCrop() more {
	var heads []string
	for _, band := range report.LeewayBands {
		heads = append(heads, bandHead(band))
	}
	t := p.table("leeway-crops", "Still fit to set out by crop, all seasons", "leeway", plain("Crop", "Kind"), nums(heads...))
	for _, crop := range p.leewayCrops() {
		for _, kind := range p.leewayKinds(crop) {
			cells, told := []any{name(crop), name(orDash(kind))}, false
			for _, band := range report.LeewayBands {
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

func (p *place) leewayCrops() []string {
	var crops []string
	for _, l := range p.r.Leeway {
		if l.Crop != "" && !slices.Contains(crops, l.Crop) {
			crops = append(crops, l.Crop)
		}
	}
	return crops
}
