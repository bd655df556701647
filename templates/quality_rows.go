package templates

import (
	"html/template"

	"traybook/report"
	"traybook/report/batch"
	"traybook/report/plants"
	"traybook/report/rate"
	"traybook/report/words"
	"traybook/templates/draw"
)

func ofQuality(q *plants.Quality) (*batch.Group, *rate.Rate) { return &q.Group, &q.Rate }
func ofUsable(u *plants.Usable) (*batch.Group, *rate.Rate)   { return &u.Group, &u.Rate }

// qualityCrops and usableCrops are the crops of a season that have a rate.
func (p *page) qualityCrops(season int) []cropRate {
	return cropRatesOf(p.r.Plants.QualityCrops, season, ofQuality)
}
func (p *page) usableCrops(season int) []cropRate {
	return cropRatesOf(p.r.Plants.UsableCrops, season, ofUsable)
}

// cropRatesOf picks the crops of a season out of a table of either measure, each with its
// rate.
func cropRatesOf[T any](table []T, season int, of func(*T) (*batch.Group, *rate.Rate)) (out []cropRate) {
	for i := range table {
		if g, r := of(&table[i]); g.Season == season && r.Share.Known {
			out = append(out, cropRate{g.Crop, *r})
		}
	}
	return out
}

// qualityRows is the share fit to set out at the last look of each batch, and the plants
// by score, crop by crop. The column of scores stands only where any plant of the season
// was scored one by one: a farm that writes just how many are fit would have an empty one.
func (p *page) qualityRows(season int) *rows {
	from, unfit, scored := p.r.Book.Settings.UsableFrom, 0.0, false
	for _, q := range p.r.Plants.Quality {
		if share, ok := unfitShare(q.S, from); ok && q.Season == season {
			unfit, scored = max(unfit, share), true
		}
	}
	ramp := draw.Scores(p.id("gs"), unfit)
	ratesOf := func(table []plants.Quality) (out []groupRate) {
		before := ratesBefore(p, table, season, ofQuality)
		for _, q := range picked(table, func(q *plants.Quality) bool { return q.Season == season && q.Share.Known }) {
			out = append(out, groupRate{&q.Group, &q.Rate, before[q.Group], func(w *inPieces) {
				if scored {
					p.writeRamp(&w.pen, ramp, q.S)
					w.cut()
				}
				w.rounded(q.N)
				w.cut()
				w.whole(q.Batches)
				w.cut()
			}})
		}
		return out
	}
	crops, groups := ratesOf(p.r.Plants.QualityCrops), ratesOf(p.r.Plants.Quality)
	axis := draw.Shares(p.id("gq"), lowestShare(groups))
	t := p.rows("quality", "germ qual", p.qualityCaption(season, scored), "quality", col{Width: "c-name3", Head: "Crop, variety, tray"}, col{Class: "st", Head: "Fit, %", Axis: axis.Head()})
	if scored {
		t.Cols = append(t.Cols, col{Width: "c-ramp", Class: "dr c3", Head: "Plants by score", Quiet: true, Axis: ramp.Head()})
	}
	t.Cols = append(t.Cols, number("Plants"), number("Batches"))
	t.Title = "Fit to set out, by variety and tray"
	p.cropTable(t, axis, "Looked at", crops, groups)
	t.note(p.marksNote(season))
	return t
}

// unfitShare is the share of plants scored below fit; ok is false where none was scored.
// from is the score, counted from 1, at which the farm calls a plant fit.
func unfitShare(s [5]rate.Num, from int) (share float64, ok bool) {
	total, unfit := 0.0, 0.0
	for i, n := range s {
		total += n.Or(0)
		if i+1 < from {
			unfit += n.Or(0)
		}
	}
	if !(total > 0) {
		return 0, false
	}
	return unfit / total, true
}

// writeRamp draws the plants of a group by score, with the numbers for a reader. A drawing
// alone tells nothing to who hears the page, so the five numbers stand beside it, hidden
// from sight.
func (p *page) writeRamp(w *pen, axis draw.Axis, s [5]rate.Num) {
	total := 0.0
	for _, n := range s {
		total += n.Or(0)
	}
	if !(total > 0) {
		w.put(`<span class="soft">not scored</span>`)
		return
	}
	w.put(`<span class="vh">`)
	for i, n := range s {
		w.put(between(i, len(s)))
		w.rounded(n.Or(0))
	}
	w.put("</span>")
	w.out = axis.AppendRow(w.out, draw.Ramp(s, p.r.Book.Settings.UsableFrom))
}

// qualityCaption says what is drawn; where plants were scored it is the key to the colours
// too, in the farm's own words for each score.
func (p *page) qualityCaption(season int, scored bool) template.HTML {
	out := say("Plants fit to set out at the last look of each batch, %s; the least fit crop first. Black: the crop as a whole%s. Hollow: fewer than %s.",
		words.Year(season), p.tickWords(season), words.Batches(rate.FewBatches))
	if !scored {
		return out
	}
	swatches := template.HTML("")
	for i, word := range p.r.Book.Settings.ScoreWords {
		swatches += say(` <span class="kd"><span class="sw q%s"></span> %s</span>`, words.Whole(i+1), p.scoreWord(i, word))
	}
	return join(out, say("Right, in 100 plants scored:%s", swatches))
}

// marksNote says how many looks gave one overall mark only. One mark for a whole tray
// cannot be turned into a share of its plants.
func (p *page) marksNote(season int) template.HTML {
	marks := 0
	for _, q := range p.r.Plants.QualityCrops {
		if q.Season == season {
			marks += q.Marks
		}
	}
	if marks == 0 {
		return ""
	}
	return say("%s with one overall mark only: shown in the records, never turned into a share.", words.Plural(marks, "look", "looks"))
}

// usableRows is the share of the cells sown that gave a usable plant, crop by crop. Cells
// are those sown, looked at or not, so it lies below what came up.
func (p *page) usableRows(season int) *rows {
	ratesOf := func(table []plants.Usable) (out []groupRate) {
		before := ratesBefore(p, table, season, ofUsable)
		for _, u := range picked(table, func(u *plants.Usable) bool { return u.Season == season && u.Share.Known }) {
			out = append(out, groupRate{&u.Group, &u.Rate, before[u.Group], func(w *inPieces) {
				w.rounded(u.N)
				w.cut()
				w.outOf(u.Batches, u.Batches+u.LeftOut)
				w.cut()
			}})
		}
		return out
	}
	crops, groups := ratesOf(p.r.Plants.UsableCrops), ratesOf(p.r.Plants.Usable)
	axis := draw.Shares(p.id("gu"), lowestShare(groups))
	t := p.rows("usable", "germ", say("Usable plants of the cells sown, %s; the lowest crop first. Black: the crop as a whole%s. Hollow: fewer than %s.", words.Year(season), p.tickWords(season), words.Batches(rate.FewBatches)),
		"usable", col{Width: "c-name3", Head: "Crop, variety, tray"}, col{Class: "st", Head: "Usable, %", Axis: axis.Head()}, number("Cells"), number("Batches"))
	t.Title = "Usable plants, by variety and tray"
	p.cropTable(t, axis, "Sown", crops, groups)
	return t
}

// leftOutWords say which batches of a season enter no usable rate, and why. The reasons do
// not overlap: each batch is counted under the first that holds, so the numbers add up to
// the batches that the rate lacks.
func (p *page) leftOutWords(season int) template.HTML {
	var open, part, unwritten, cells int
	for _, b := range batch.Filter(p.seasons[season], func(b *report.Record) bool { return !b.EntersUsable() }) {
		switch {
		case b.Measured():
			cells++
		case !b.Ended():
			open++
		case b.UsableHow == plants.AtLeast:
			part++
		default:
			unwritten++
		}
	}
	var out []template.HTML
	for _, left := range []struct {
		n   int
		why string
	}{{open, "still open"}, {part, "of which only a part of the plants is written"}, {unwritten, "of which no one wrote how many plants there were"}, {cells, "of unknown cells"}} {
		if left.n > 0 {
			out = append(out, say("%s %s", words.Batches(left.n), left.why))
		}
	}
	if len(out) == 0 {
		return ""
	}
	return say("Left out: %s.", list(out))
}
